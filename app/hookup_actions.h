// Menus of the Hook-up: the Part menu, its share of the Edit menu, and the menu under the pointer. Their keys
// work while the Hook-up has the focus, and leave the fields of the window alone.
//
//   HookupActions actions(window, document, hookup, wishes);
//   menuBar()->addMenu(actions.partMenu());
//   actions.addToEditMenu(editMenu);
#pragma once

#include "app/hookup_wishes.h"

#include <QKeySequence>
#include <functional>
#include <optional>

class QAction;
class QMenu;

namespace blinkwright::app {

class TypedDialog;

class HookupActions : public QObject {
    Q_OBJECT
  public:
    HookupActions(QWidget& window, Document& document, widgets::HookupView& hookup, HookupWishes& wishes);

    QMenu* partMenu() const { return m_partMenu; }
    void addToEditMenu(QMenu* menu) const;

    /// Dialogs; texts to begin with may be empty.
    void askJoin(const QString& pin);
    void askTakeOff(const QString& pin);
    void askRenameNet(const QString& net);
    void askRemoveNet(const QString& netOrPin);
    void editPart(circuit::PartId part);
    /// The kinds of parts to add, the first of them marked.
    void popUpAdd(QPoint global);

    /// "Remove net", which works in the Pins view too: on the net that this names while it is shown.
    QAction* removeNet() const { return m_removeNet; }
    void showNetName(); ///< in its text
    void setNetOfPins(std::function<std::optional<circuit::NetId>()> net) { m_netOfPins = std::move(net); }

  private:
    template <class Done>
    QAction* action(const QString& text, const QKeySequence& keys, const QString& meaning, Done done);
    void makeEditActions();
    void makePartMenu();
    void showAvailability();
    void showMenu(QPoint global, const widgets::HookupView::Spot& spot);
    void fillForPin(QMenu& menu, circuit::PinRef pin);
    void fillForNet(QMenu& menu, circuit::NetId net);
    /// The net that is chosen, as a wire of the drawing or by its pin in the Pins view; null for none.
    const circuit::Net* chosenNet() const;
    /// The pin to begin with: of the one part that is chosen.
    QString chosenPin() const;
    QStringList pins(bool joinedOnly) const;
    QStringList nets() const;

    QWidget& m_window;
    Document& m_document;
    widgets::HookupView& m_hookup;
    HookupWishes& m_wishes;
    QMenu* m_partMenu = nullptr;
    QMenu* m_addMenu = nullptr;
    QAction *m_cut = nullptr, *m_copy = nullptr, *m_paste = nullptr, *m_selectAll = nullptr;
    QAction *m_edit = nullptr, *m_turn = nullptr, *m_mirror = nullptr, *m_duplicate = nullptr,
            *m_delete = nullptr;
    QAction *m_join = nullptr, *m_takeOff = nullptr, *m_renameNet = nullptr, *m_removeNet = nullptr;
    std::function<std::optional<circuit::NetId>()> m_netOfPins;
};

} // namespace blinkwright::app
