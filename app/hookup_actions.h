// Menus of the Hook-up: the Part menu, its share of the Edit menu, and the menu under the pointer. Their keys
// work while the Hook-up has the focus, and leave the fields of the window alone.
//
//   HookupActions actions(window, document, hookup, wishes);
//   menuBar()->addMenu(actions.partMenu());
//   actions.addToEditMenu(editMenu);
#pragma once

#include "app/hookup_wishes.h"

#include <QKeySequence>

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
    void editPart(circuit::PartId part);
    /// The kinds of parts to add, the first of them marked.
    void popUpAdd(QPoint global);

  private:
    template <class Done>
    QAction* action(const QString& text, const QKeySequence& keys, Done done);
    void makeEditActions();
    void makePartMenu();
    void showAvailability();
    void showMenu(QPoint global, const widgets::HookupView::Spot& spot);
    void fillForPin(QMenu& menu, circuit::PinRef pin);
    void fillForNet(QMenu& menu, circuit::NetId net);
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
    QAction *m_join = nullptr, *m_takeOff = nullptr, *m_renameNet = nullptr;
};

} // namespace blinkwright::app
