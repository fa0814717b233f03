// "New from a ready blinker" and "Wiring list": two dialogs with their actions.
//
//   ReadyActions actions(window, document, settings, appearance, {mayLeave, say, tell});
//   actions.addToFileMenu(menu);
#pragma once

#include "app/appearance.h"
#include "app/document.h"
#include "app/settings.h"

#include <QObject>
#include <functional>

class QAction;
class QMenu;

namespace blinkwright::widgets {
class BenchDialog;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class ReadyActions : public QObject {
    Q_OBJECT
  public:
    /// What the window does for them.
    struct Window {
        std::function<bool()> mayLeave; ///< asks about unsaved changes
        std::function<void(const QString&)> say;
        std::function<void(const QString& title, const Fault&)> tell;
    };
    ReadyActions(QWidget& parent, Document& document, Settings& settings, Appearance& appearance,
                 Window window);

    void addNewTo(QMenu* menu);
    void addWiringListTo(QMenu* menu);

    void newFromReady();
    void showWiringList();
    widgets::BenchDialog* wiringList() const { return m_bench; }

    /// Writes the parts list as CSV, or the page as PDF, to a file of that name.
    Result<void> exportParts(const QString& path) const;
    Result<void> exportPage(const QString& path) const;

  private:
    void refresh();
    void copyText();
    void print();
    void askFile(const QString& title, const QString& kind, const QString& ending,
                 Result<void> (ReadyActions::*write)(const QString&) const);

    QWidget& m_parent;
    Document& m_document;
    Settings& m_settings;
    Appearance& m_appearance;
    Window m_window;
    circuit::PartSet m_shownSet = circuit::PartSet::A; ///< in the wiring list
    QAction* m_wiringList = nullptr;
    widgets::BenchDialog* m_bench = nullptr; ///< made when first wanted, then kept
};

} // namespace blinkwright::app
