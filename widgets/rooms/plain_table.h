// Tables that only show: rows are chosen whole, nothing is edited, Tab leaves them.
//
//   prepareTable(*table);
//   table->setItem(0, 1, tableCell(tr("4.7 kΩ"), true));
#pragma once

#include <QTableWidget>

namespace blinkwright::widgets {

void prepareTable(QTableWidget& table);
/// @param number right-aligned
QTableWidgetItem* tableCell(const QString& text, bool number);
/// Makes a table as high as its rows, with no scroll bar of its own.
void fitToRows(QTableWidget& table);

} // namespace blinkwright::widgets
