// Shows pages of the help in the theme's colours: `help:` are pages, `formula:` formulas drawn in the colours
// of the text, `picture:` pictures of the window.
//
//   HelpBrowser browser([] { return keysTable(*menuBar); });
//   browser.setSource(QUrl("help:trend"));
#pragma once

#include "widgets/theme/theme.h"

#include <QTextBrowser>
#include <functional>

namespace blinkwright::app::help {

class HelpBrowser : public QTextBrowser {
    Q_OBJECT
  public:
    /// @param keys the table of all keys, asked for whenever the page of keys is shown
    explicit HelpBrowser(std::function<QString()> keys, QWidget* parent = nullptr);

    void setTheme(const widgets::Theme& theme);
    QString page() const; ///< its name, without a place within it

    QVariant loadResource(int type, const QUrl& name) override;

  private:
    void changeEvent(QEvent* event) override;
    QString html(const QString& page) const;

    std::function<QString()> m_keys;
    const widgets::Theme* m_theme;
};

} // namespace blinkwright::app::help
