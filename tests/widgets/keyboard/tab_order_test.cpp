#include "widgets/keyboard/tab_order.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QTabWidget>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

#include <map>

namespace blinkwright::widgets {

namespace {

class TabOrders : public testing::Test {
  protected:
    void show() {
        window.show();
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    template <class Kind = QPushButton>
    Kind* made(const char* name) {
        auto* control = new Kind;
        control->setObjectName(QLatin1String(name));
        return control;
    }
    /// Where Tab goes from here, as often.
    QStringList way(int times, Qt::Key key = Qt::Key_Tab) {
        QStringList names;
        for (int k = 0; k < times; ++k) {
            QTest::keyClick(QApplication::focusWidget(), key);
            names << QApplication::focusWidget()->objectName();
        }
        return names;
    }

    QWidget window;
    TabOrder order{nullptr};
};

TEST_F(TabOrders, GoByRowsWhateverWasMadeFirst) {
    auto* grid = new QGridLayout(&window);
    for (const auto& [name, row, column] :
         {std::tuple("d", 1, 1), {"c", 1, 0}, {"b", 0, 1}, {"a", 0, 0}, {"e", 2, 0}})
        grid->addWidget(made(name), row, column);
    show();
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("a"))
        << "the first is the first to have it";
    EXPECT_EQ(way(5), (QStringList{"b", "c", "d", "e", "a"}));
    EXPECT_EQ(way(3, Qt::Key_Backtab), (QStringList{"e", "d", "c"}));
}

TEST_F(TabOrders, KeepPanelsAndColumnsTogether) {
    auto* columns = new QHBoxLayout(&window);
    auto *right = new QVBoxLayout, *left = new QVBoxLayout;
    for (const char* name : {"c", "d"}) right->addWidget(made(name));
    for (const char* name : {"a", "b"}) left->addWidget(made(name));
    left->addWidget(new QWidget, 1); // the columns' rows stand at different heights
    auto* panel = new QWidget;
    panel->setLayout(left);
    columns->addWidget(panel);
    columns->addLayout(right);
    show();
    EXPECT_EQ(way(4), (QStringList{"b", "c", "d", "a"}));
}

// The room of causes had it: from Close the way went back to Copy, and never to what stands above.
TEST_F(TabOrders, PassThroughABoxOfButtonsThatIsMadeBeforeWhatStandsAbove) {
    auto* column = new QVBoxLayout(&window);
    auto* box = new QDialogButtonBox(QDialogButtonBox::Close);
    box->button(QDialogButtonBox::Close)->setObjectName(QStringLiteral("close"));
    column->addWidget(box);
    auto* field = made<QLineEdit>("field");
    column->insertWidget(0, field);
    QPushButton* copy = box->addButton(QStringLiteral("Copy"), QDialogButtonBox::ActionRole);
    copy->setObjectName(QStringLiteral("copy"));
    show();
    field->setFocus();
    EXPECT_EQ(way(3), (QStringList{"copy", "close", "field"}));
    copy->setEnabled(false);
    EXPECT_EQ(way(3), (QStringList{"close", "field", "close"}));
    EXPECT_EQ(way(2, Qt::Key_Backtab), (QStringList{"field", "close"}));
}

TEST_F(TabOrders, FollowWhatComesLater) {
    auto* column = new QVBoxLayout(&window);
    column->addWidget(made("b"));
    show();
    column->insertWidget(0, made("a"));
    column->addWidget(made<QSpinBox>("c"));
    QCoreApplication::processEvents();
    EXPECT_EQ(way(4), (QStringList{"c", "a", "b", "c"}));
    EXPECT_EQ(way(3, Qt::Key_Backtab), (QStringList{"b", "a", "c"}))
        << "not held by the text of the spin box";
}

TEST_F(TabOrders, GoThroughTabsAndScrolledPages) {
    auto* column = new QVBoxLayout(&window);
    auto* tabs = new QTabWidget;
    auto* scroll = made<QScrollArea>("scroll");
    auto* page = new QWidget;
    auto* inside = new QVBoxLayout(page);
    auto* lower = made("lower");
    inside->addWidget(lower);
    inside->insertWidget(0, made("upper"));
    scroll->setWidget(page);
    tabs->addTab(scroll, QStringLiteral("one"));
    tabs->addTab(made("hidden"), QStringLiteral("two"));
    column->addWidget(made("below"));
    column->insertWidget(0, tabs);
    show();
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("qt_tabwidget_tabbar"));
    EXPECT_EQ(way(5), (QStringList{"scroll", "upper", "lower", "below", "qt_tabwidget_tabbar"}));
}

} // namespace
} // namespace blinkwright::widgets
