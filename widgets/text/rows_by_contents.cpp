#include "widgets/text/rows_by_contents.h"

#include "widgets/text/text_sized.h"

#include <QHeaderView>
#include <QTableView>
#include <QTimer>

namespace blinkwright::widgets {

void rowsByContents(QTableView& table) {
    // After all that is asked for at once: the columns take their widths late.
    auto* soon = new QTimer(&table);
    soon->setSingleShot(true);
    soon->setInterval(0);
    QObject::connect(soon, &QTimer::timeout, &table, &QTableView::resizeRowsToContents);
    const auto again = [soon] { soon->start(); };
    sizedByText(table, again);
    QObject::connect(table.horizontalHeader(), &QHeaderView::sectionResized, soon, again);
    QObject::connect(table.model(), &QAbstractItemModel::rowsInserted, soon, again);
}

} // namespace blinkwright::widgets
