// Asks where to write a file, and for a table of numbers also how: with decimal points and commas between the
// columns, or with decimal commas and semicolons between them. The choice is remembered; before the first one
// it goes by the language of the window.
//
//   const QString path = askWhere(window, {tr("Export the trend"), "mole-light-trend", kinds}, settings);
//   if (!path.isEmpty()) done = writeTable(path, io::trendCsv(trend), settings);
#pragma once

#include "app/settings.h"
#include "core/base/result.h"
#include "core/io/csv_style.h"

#include <QString>
#include <vector>

class QWidget;

namespace blinkwright::app {

/// How tables are written.
io::CsvStyle tableStyle(const Settings& settings);
void setTableStyle(Settings& settings, const io::CsvStyle& style);

/// @param csv in the style io::pointCsv; it is written in that of the settings.
/// @return a fault that names the file; what stood in its place before is then left alone.
Result<void> writeTable(const QString& path, const std::string& csv, const Settings& settings);

struct SaveQuestion {
    QString title;
    QString name;                                   ///< offered for the file, without its ending
    std::vector<std::pair<QString, QString>> kinds; ///< words and ending; a table's is "csv"
    QString ending = {};                            ///< of the kind that is offered first, else the first one
    QString button = {};                            ///< instead of Save
};

/// What the dialog offers: the kinds with their endings, a table in both styles, its remembered one first.
QStringList filtersOf(const SaveQuestion& question, const io::CsvStyle& style);

/// Remembers the folder and the style of a table. @return empty where nobody answered
QString askWhere(QWidget* over, const SaveQuestion& question, Settings& settings);

} // namespace blinkwright::app
