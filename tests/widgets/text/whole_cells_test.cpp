// The tool tip of a cell that is cut.
#include "widgets/text/whole_cells.h"

#include <QHeaderView>
#include <QHelpEvent>
#include <QTableWidget>
#include <QTest>
#include <QToolTip>

#include <gtest/gtest.h>

namespace blinkwright::widgets {
namespace {

struct WholeCellsOfATable : testing::Test {
    WholeCellsOfATable() {
        table.setItem(0, 0, new QTableWidgetItem(text));
        table.show();
    }
    QString toolTip() {
        QToolTip::showText({}, QStringLiteral("of before"));
        const QPoint at = table.visualItemRect(table.item(0, 0)).center();
        QHelpEvent rests(QEvent::ToolTip, at, table.viewport()->mapToGlobal(at));
        QCoreApplication::sendEvent(table.viewport(), &rests);
        return QToolTip::text();
    }
    const QString text = QStringLiteral("47 kΩ, 5 %, a quarter of a watt");
    QTableWidget table{1, 1};
    WholeCells cells{&table};
};

TEST_F(WholeCellsOfATable, SaysTheWholeWhereItIsCut) {
    table.setColumnWidth(0, 40);
    EXPECT_EQ(toolTip(), text);
    table.item(0, 0)->setToolTip(QStringLiteral("On one reel with R2"));
    EXPECT_EQ(toolTip(), text + QStringLiteral("\n\nOn one reel with R2"));
}

TEST_F(WholeCellsOfATable, LeavesToolTipsOfWholeCellsAlone) {
    table.setColumnWidth(0, 600);
    table.item(0, 0)->setToolTip(QStringLiteral("On one reel with R2"));
    EXPECT_EQ(toolTip(), QStringLiteral("On one reel with R2"));
}

} // namespace
} // namespace blinkwright::widgets
