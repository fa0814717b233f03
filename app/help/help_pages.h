// The pages of the help: which there are, in which order, and which fits what is on the screen.
//
//   setPage(frame, "trend");                       // F1 within the frame opens that page
//   QString page = pageOf(QApplication::focusWidget());
//   QString html = pageText("trend");              // in the language of the window
// Their texts are resources/help/LANGUAGE/NAME.html.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

class QWidget;

namespace blinkwright::app::help {

struct PageGroup {
    QString title; ///< as users see it
    QStringList pages;
};
/// All pages by their names, in the order of reading.
std::vector<PageGroup> pageGroups();
QStringList pageNames();

/// The code of the language that pages are read in: that of the window where there are pages, else English.
QString pageLanguage();
/// The HTML of a page; empty where there is none of that name.
QString pageText(const QString& page, const QString& language = pageLanguage());
/// Its first heading.
QString pageTitle(const QString& page);

/// Says which page is about a widget and all within it.
void setPage(QWidget* widget, const QString& page);
/// The page that is about a widget, or about the nearest around it; `window` where none is.
QString pageOf(const QWidget* widget);

} // namespace blinkwright::app::help
