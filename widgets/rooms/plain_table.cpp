#include "widgets/rooms/plain_table.h"

#include <QHeaderView>
#include <QScrollBar>

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

WholeTable::WholeTable(int columns, QWidget* parent) : QTableWidget(0, columns, parent) {
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void WholeTable::fitToRows() {
    const int rows = rowCount() * verticalHeader()->defaultSectionSize();
    const bool tooWide = horizontalHeader()->length() > viewport()->width();
    setFixedHeight(horizontalHeader()->sizeHint().height() + rows + 2 * frameWidth() +
                   (tooWide ? horizontalScrollBar()->sizeHint().height() : 0));
}

void WholeTable::resizeEvent(QResizeEvent* event) {
    QTableWidget::resizeEvent(event);
    fitToRows();
}

} // namespace blinkwright::widgets
