// The window of the help: the list of pages at the left, the page at the right, back and forward, find in the
// page. It blocks nothing.
//
//   HelpWindow help(settings, appearance, keys, parent);
//   help.open("trend");
#pragma once

#include "app/appearance.h"
#include "app/settings.h"

#include <QDialog>
#include <functional>

class QLabel;
class QLineEdit;
class QListWidget;
class QToolButton;

namespace blinkwright::app::help {

class HelpBrowser;

class HelpWindow : public QDialog {
    Q_OBJECT
  public:
    /// @param keys see HelpBrowser
    HelpWindow(Settings& settings, const Appearance& appearance, std::function<QString()> keys,
               QWidget* parent);
    ~HelpWindow() override;

    /// Brings the window up with a page.
    void open(const QString& page);
    QString page() const;
    HelpBrowser& browser() { return *m_browser; }

  private:
    void makeBar();
    void makeList();
    void makeFind();
    void showPage(const QString& page); ///< what of the window says which page is shown
    void find(bool backward);
    void setTheme(const widgets::Theme& theme);
    void keepSize();
    void hideEvent(QHideEvent* event) override;
    void reject() override; ///< Esc puts the finding away first

    Settings& m_settings;
    HelpBrowser* m_browser;
    QListWidget* m_list = nullptr;
    QToolButton *m_back = nullptr, *m_on = nullptr;
    QWidget *m_bar = nullptr, *m_findBar = nullptr;
    QLineEdit* m_find = nullptr;
    QLabel* m_found = nullptr;
};

} // namespace blinkwright::app::help
