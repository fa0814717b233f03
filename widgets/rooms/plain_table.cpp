#include "widgets/rooms/plain_table.h"

#include <QHeaderView>

namespace blinkwright::widgets {

void prepareTable(QTableWidget& table) {
    table.setEditTriggers(QAbstractItemView::NoEditTriggers);
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.setTabKeyNavigation(false);
    table.setShowGrid(false);
    table.setWordWrap(false);
    table.verticalHeader()->hide();
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    table.horizontalHeader()->setHighlightSections(false);
}

QTableWidgetItem* tableCell(const QString& text, bool number) {
    auto* item = new QTableWidgetItem(text);
    item->setTextAlignment(Qt::AlignVCenter | (number ? Qt::AlignRight : Qt::AlignLeft));
    return item;
}

void fitToRows(QTableWidget& table) {
    const int height = table.horizontalHeader()->sizeHint().height() +
                       table.rowCount() * table.verticalHeader()->defaultSectionSize() +
                       2 * table.frameWidth();
    table.setFixedHeight(height);
    table.setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

} // namespace blinkwright::widgets
