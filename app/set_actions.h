// What the menus and the rows of Values do with Set A and Set B: show B, copy, swap, tie, compare with a
// file.
//
//   SetActions sets(window, document, second, values, settings, {tell, say});
//   sets.addToViewMenu(view);
//   menuBar()->addMenu(sets.menu());
#pragma once

#include "app/second_set.h"
#include "app/settings.h"

#include <functional>

class QAction;
class QActionGroup;
class QMenu;

namespace blinkwright::app {

/// Which curves an export and a copied picture hold while two are shown.
enum class ExportedSets { both, first, second };

class SetActions : public QObject {
    Q_OBJECT
  public:
    /// What the window does for them.
    struct Window {
        std::function<void(const QString& title, const Fault&)> tell;
        std::function<void(const QString&)> say;
    };
    SetActions(QWidget& parent, Document& document, SecondSet& second, widgets::ValuePanel& values,
               Settings& settings, Window window);

    QMenu* menu() const { return m_menu; }
    void addToFileMenu(QMenu* menu);
    void addExportChoiceTo(QMenu* menu);
    void addToViewMenu(QMenu* menu);
    ExportedSets exported() const;
    void setExported(ExportedSets sets);

    /// Compares with a file; says in a dialog why it could not.
    bool compareWith(const QString& path);

  private:
    void makeMenu();
    void connectValues(widgets::ValuePanel& values);
    void apply(const Result<circuit::Edit>& edit);
    void follow(const circuit::ValueRef& which, bool on);
    void askCompare();
    void showAvailability();

    QWidget& m_parent;
    Document& m_document;
    SecondSet& m_second;
    Settings& m_settings;
    Window m_window;
    QMenu* m_menu = nullptr;
    QAction *m_copyToB = nullptr, *m_copyToA = nullptr, *m_swap = nullptr;
    QAction* m_show = nullptr;
    QAction *m_compare = nullptr, *m_stop = nullptr;
    QActionGroup* m_exported = nullptr;
};

} // namespace blinkwright::app
