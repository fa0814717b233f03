#include "widgets/keyboard/focus_outline.h"

#include "widgets/curves/curve_colours.h"
#include "widgets/theme/theme.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace blinkwright::widgets {

namespace {

class FocusOutlines : public testing::Test {
  protected:
    FocusOutlines() {
        auto* column = new QVBoxLayout(&window);
        column->addWidget(button);
        column->addWidget(field);
        window.resize(300, 200);
        window.show();
        window.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
    }
    const QWidget* ring() const { return window.findChild<QWidget*>(QStringLiteral("focusOutline")); }
    bool isSeen() const { return ring() && ring()->isVisible(); }
    static QRect expected(const QWidget& around) {
        constexpr int reach = FocusOutline::line + FocusOutline::gap;
        return QRect(around.mapTo(around.window(), QPoint(0, 0)), around.size())
            .adjusted(-reach, -reach, reach, reach);
    }

    QWidget window;
    QPushButton* button = new QPushButton(QStringLiteral("one"));
    QLineEdit* field = new QLineEdit;
    FocusOutline outline{nullptr};
};

TEST_F(FocusOutlines, StandAroundWhatHasTheFocus) {
    field->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(isSeen());
    EXPECT_EQ(ring()->geometry(), expected(*field));
    button->setFocus(Qt::TabFocusReason);
    EXPECT_EQ(ring()->geometry(), expected(*button));
    button->clearFocus();
    EXPECT_FALSE(isSeen());
}

TEST_F(FocusOutlines, SpareAGroundThatTabPassesOver) {
    auto* ground = new QWidget(&window);
    ground->setGeometry(window.rect());
    ground->setFocusPolicy(Qt::ClickFocus);
    ground->show();
    field->setFocus(Qt::TabFocusReason);
    EXPECT_TRUE(isSeen());
    ground->setFocus();
    ASSERT_EQ(QApplication::focusWidget(), ground);
    EXPECT_FALSE(isSeen());
}

TEST_F(FocusOutlines, GoWhereItGoes) {
    field->setFocus(Qt::TabFocusReason);
    window.resize(500, 300);
    QCoreApplication::processEvents();
    EXPECT_EQ(ring()->geometry(), expected(*field));
    field->hide();
    EXPECT_NE(QApplication::focusWidget(), field);
    EXPECT_TRUE(!isSeen() || ring()->geometry() == expected(*button));
    button->setFocus(Qt::TabFocusReason);
    delete button;
    QCoreApplication::processEvents();
    EXPECT_FALSE(isSeen());
}

TEST_F(FocusOutlines, SpareTheButtonThatIsClickedUntilTheNextKey) {
    field->setFocus(Qt::TabFocusReason);
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_EQ(QApplication::focusWidget(), button);
    EXPECT_FALSE(isSeen());
    QTest::keyClick(button, Qt::Key_Space);
    EXPECT_TRUE(isSeen());
    QTest::mouseClick(field, Qt::LeftButton);
    EXPECT_TRUE(isSeen()) << "keys go there, though nothing but the caret says so";
    EXPECT_EQ(ring()->geometry(), expected(*field));
}

TEST_F(FocusOutlines, EndWhereWhatTheyStandAroundIsScrolledOutOfSight) {
    auto* scroll = new QScrollArea;
    auto* page = new QWidget;
    page->setFixedSize(200, 1000);
    auto* inside = new QPushButton(page);
    inside->setGeometry(20, 100, 100, 30);
    scroll->setWidget(page);
    window.layout()->addWidget(scroll);
    QCoreApplication::processEvents();
    inside->setFocus(Qt::TabFocusReason);
    scroll->verticalScrollBar()->setValue(115); // through its middle
    const QRect viewport(scroll->viewport()->mapTo(&window, QPoint(0, 0)), scroll->viewport()->size());
    ASSERT_TRUE(isSeen());
    EXPECT_EQ(ring()->geometry(), expected(*inside));
    EXPECT_GE(ring()->mask().boundingRect().top() + ring()->y(), viewport.top() - 3);
    scroll->verticalScrollBar()->setValue(400);
    EXPECT_FALSE(isSeen());
}

TEST_F(FocusOutlines, AreSeenInBothThemesOnEveryGround) {
    for (const auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        const Theme& theme = Theme::of(mode);
        QApplication::setPalette(theme.palette());
        field->setFocus(Qt::TabFocusReason);
        QCoreApplication::processEvents();
        const QImage image = window.grab().toImage();
        const QRect at = expected(*field);
        const QColor line = image.pixelColor(at.topLeft() + QPoint(20, 0));
        EXPECT_EQ(line, theme.accent);
        EXPECT_EQ(image.pixelColor(at.topLeft() + QPoint(20, FocusOutline::line)), theme.window);
        for (const QColor& ground : {theme.window, theme.paper}) EXPECT_GE(contrast(line, ground), 3);
    }
}

} // namespace
} // namespace blinkwright::widgets
