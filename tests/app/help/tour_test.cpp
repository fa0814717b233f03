// The tour of the window.
#include "app/help/tour.h"

#include "app/help/help_desk.h"
#include "app/help/tour_card.h"
#include "tests/app/window_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/readings/readings_view.h"

#include <QApplication>
#include <QLabel>
#include <QMenuBar>
#include <QPushButton>
#include <QToolBar>

namespace blinkwright::test {
namespace {

using app::help::besidePlace;
using app::help::Tour;

class TourOfTheWindow : public WindowFixture {
  protected:
    Tour& tour() const { return window->help().tour(); }
    QWidget* underTheOutline() const {
        return window->childAt(tour().outlined().center()); // the outline lets through
    }
};

TEST_F(TourOfTheWindow, DoesNotComeByItselfInATrial) {
    window->offerTour();
    EXPECT_FALSE(tour().isRunning());
}

TEST_F(TourOfTheWindow, ComesOnceAtTheFirstStart) {
    settings.setTourSeen(false);
    window->offerTour();
    EXPECT_TRUE(tour().isRunning());
    EXPECT_TRUE(tour().card().isVisible());
    start();
    window->offerTour();
    EXPECT_FALSE(tour().isRunning());
    action("Tour").trigger();
    EXPECT_TRUE(tour().isRunning()) << "from the menu at any time";
}

TEST_F(TourOfTheWindow, PointsAtWhatItSpeaksOf) {
    open();
    activate();
    tour().begin();
    ASSERT_EQ(tour().count(), 5);
    const auto within = [&](const QWidget& widget) {
        const QRect its(widget.mapTo(window.get(), QPoint()), widget.size());
        return tour().outlined().contains(its.center()) && its.intersects(tour().outlined());
    };
    for (int step = 0; step < tour().count(); ++step) {
        EXPECT_EQ(tour().step(), step);
        const QRect outlined = tour().outlined();
        EXPECT_TRUE(window->rect().contains(outlined)) << step;
        EXPECT_GT(outlined.width(), 20) << step;
        EXPECT_GT(outlined.height(), 10) << step;
        const QRect card = tour().card().geometry();
        EXPECT_TRUE(window->rect().contains(card)) << step;
        EXPECT_FALSE(card.intersects(outlined)) << step;
        ASSERT_NE(underTheOutline(), nullptr) << step;
        EXPECT_TRUE(underTheOutline()->isVisible());
        switch (step) {
        case 0:
            EXPECT_EQ(underTheOutline(), window->menuBar());
            break;
        case 1:
            EXPECT_TRUE(within(window->values()));
            break;
        case 2:
            EXPECT_TRUE(within(window->curves()));
            break;
        case 3:
            EXPECT_TRUE(within(window->readings()));
            break;
        default:
            EXPECT_TRUE(within(*window->findChild<QToolBar*>("tools")));
        }
        picture(QStringLiteral("tour-%1-light").arg(step + 1));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    EXPECT_FALSE(tour().isRunning()) << "the last step ends it";
}

TEST_F(TourOfTheWindow, IsLeftByEscapeAtEachStepWhereverTheFocusIs) {
    open();
    activate();
    for (int step = 0; step < tour().count(); ++step) {
        tour().begin();
        tour().goTo(step);
        if (step % 2 == 1) window->curves().setFocus();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        EXPECT_FALSE(tour().isRunning()) << step;
        EXPECT_FALSE(tour().card().isVisible());
        tour().begin();
        tour().goTo(step);
        tour().card().leave().click();
        EXPECT_FALSE(tour().isRunning()) << step;
    }
}

TEST_F(TourOfTheWindow, GoesBack) {
    tour().begin();
    EXPECT_FALSE(tour().card().back().isEnabled());
    tour().card().next().click();
    EXPECT_EQ(tour().step(), 1);
    tour().card().back().click();
    EXPECT_EQ(tour().step(), 0);
}

TEST_F(TourOfTheWindow, LeavesTheWindowInUse) {
    open();
    activate();
    tour().begin();
    tour().goTo(1);
    const QPoint middle = tour().outlined().center();
    QWidget* under = window->childAt(middle);
    ASSERT_TRUE(under);
    EXPECT_TRUE(window->values().isAncestorOf(under) || under == &window->values())
        << "the outline lets clicks through";
    row("R2").field()->setFocus();
    row("R2").field()->selectAll();
    QTest::keyClicks(row("R2").field(), "33k\r");
    EXPECT_DOUBLE_EQ(ohms("R2"), 33e3);
    EXPECT_TRUE(tour().isRunning());
}

TEST_F(TourOfTheWindow, FollowsAWindowThatChangesItsSize) {
    open();
    tour().begin();
    tour().goTo(2);
    const QRect before = tour().outlined();
    window->resize(1000, 700);
    ASSERT_TRUE(waitFor([&] { return tour().outlined() != before; }));
    EXPECT_TRUE(window->rect().contains(tour().outlined()));
    EXPECT_TRUE(window->rect().contains(tour().card().geometry()));
}

TEST_F(TourOfTheWindow, LooksDark) {
    open();
    action("Dark").trigger();
    tour().begin();
    tour().goTo(2);
    picture("tour-3-dark");
    action("Light").trigger();
}

TEST(PlaceOfACard, IsBesideWhereThereIsRoomAndAlwaysWithin) {
    const QRect room(0, 0, 1000, 700);
    const QSize card(300, 150);
    EXPECT_EQ(besidePlace({100, 100, 200, 200}, card, room).left(), 309);
    EXPECT_LT(besidePlace({600, 100, 390, 200}, card, room).right(), 600);
    EXPECT_GT(besidePlace({0, 0, 1000, 40}, card, room).top(), 40);
    EXPECT_LT(besidePlace({0, 500, 1000, 200}, card, room).bottom(), 500);
    for (int k = 0; k < 200; ++k) {
        const QRect place(k * 4, k * 3, 200 + k, 90 + k);
        EXPECT_TRUE(room.contains(besidePlace(place.intersected(room), card, room)));
    }
    EXPECT_TRUE(room.contains(besidePlace(room, card, room))) << "over it, where it fills everything";
}

} // namespace
} // namespace blinkwright::test
