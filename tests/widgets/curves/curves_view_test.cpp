#include "widgets/curves/curves_view.h"

#include "tests/widgets/formula_curves.h"
#include "tests/widgets/pictures.h"
#include "widgets/curves/strip_plot.h"

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;

namespace {

class CurvesViewTest : public testing::Test {
  protected:
    void SetUp() override {
        view.resize(1200, 800);
        view.show();
        view.setCurves(curves);
        QApplication::processEvents();
    }
    StripPlot* plot() { return view.findChild<StripPlot*>(); }
    QPoint at(double time_s, Strip strip = Strip::output) {
        return {static_cast<int>(std::lround(plot()->pixelAt(time_s))),
                plot()->stripRect(strip).center().y()};
    }
    void key(Qt::Key k, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(plot(), k, modifiers);
        QApplication::processEvents();
    }
    void wheel(double time_s, int notches) {
        const QPointF p = at(time_s);
        QWheelEvent turn(p, plot()->mapToGlobal(p), {}, {0, 120 * notches}, Qt::NoButton, Qt::NoModifier,
                         Qt::NoScrollPhase, false);
        QApplication::sendEvent(plot(), &turn);
        QApplication::processEvents();
    }
    std::shared_ptr<engine::Curves> curves = test::formulaCurves({.pair = true});
    CurvesView view;
};

TEST_F(CurvesViewTest, ShowsTheWholeRunUntilASpanIsChosen) {
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, curves->time_s.back()}));
    const auto longer = test::formulaCurves({.cycles = 9});
    view.setCurves(longer);
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, longer->time_s.back()}));
}

TEST_F(CurvesViewTest, LaysASecondSetOverInItsColourAndFitsBoth) {
    const auto pixels = [&](const QColor& colour) {
        const QImage picture = view.grab().toImage();
        int count = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x) count += picture.pixelColor(x, y) == colour;
        return count;
    };
    const QColor ochre = Theme::of(Theme::Mode::light).setB;
    EXPECT_EQ(pixels(ochre), 0);
    const auto longer = test::formulaCurves({.high_s = 0.9, .cycles = 8, .pair = true});
    view.setSecond(longer, "Set B", "B");
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, longer->time_s.back()}));
    EXPECT_GT(pixels(ochre), 500);
    EXPECT_TRUE(view.accessibleDescription().contains("Set B is laid over"));
    view.setSecond(nullptr);
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, curves->time_s.back()}));
    EXPECT_EQ(pixels(ochre), 0);
}

TEST_F(CurvesViewTest, ShowsASecondSetAlsoWhereTheFirstHasNoCurves) {
    const auto other = test::formulaCurves({});
    view.setSecond(other, "Set B", "B");
    view.setCurves(nullptr);
    QApplication::processEvents();
    EXPECT_TRUE(plot()->hasCurves());
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, other->time_s.back()}));
    EXPECT_FALSE(plot()->moment()) << "the moment line tells of Set A alone";
}

/// How many pixels of an area differ from the paper.
int inkIn(const QImage& picture, QRect area, const QColor& paper) {
    int count = 0;
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x) count += picture.pixelColor(x, y) != paper;
    return count;
}

TEST_F(CurvesViewTest, PaintsTheNumbersOfBothAxesAndTheGrid) {
    const Theme& theme = Theme::of(Theme::Mode::light);
    view.setTheme(theme);
    // As in use: shown, resized, other curves, an echo; what is kept from one picture to the next must stay
    // whole.
    for (int turn = 0; turn < 3; ++turn) {
        view.resize(turn == 1 ? 700 : 1200, turn == 1 ? 420 : 800);
        view.setCurves(test::formulaCurves({.cycles = 4 + turn, .pair = true}));
        view.setEcho(turn == 2 ? curves : nullptr);
        QApplication::processEvents();
        const QImage picture = view.grab().toImage();
        const QPoint origin = plot()->mapTo(&view, QPoint(0, 0));
        for (Strip strip : {Strip::output, Strip::capacitor, Strip::lamps}) {
            const QRect rect = plot()->stripRect(strip).translated(origin);
            EXPECT_GT(inkIn(picture, QRect(6, rect.top(), rect.left() - 12, rect.height()), theme.paper), 40)
                << "numbers beside the strip, turn " << turn;
            int grid = 0;
            for (int y = rect.top(); y <= rect.bottom(); ++y)
                for (int x = rect.left(); x <= rect.right(); ++x)
                    grid += picture.pixelColor(x, y) == theme.grid;
            EXPECT_GT(grid, rect.width()) << "grid lines, turn " << turn;
        }
        const QRect low = plot()->stripRect(Strip::lamps).translated(origin);
        EXPECT_GT(inkIn(picture, QRect(low.left(), low.bottom() + 6, low.width(), 24), theme.paper), 80)
            << "numbers of the time axis, turn " << turn;
    }
}

TEST_F(CurvesViewTest, KeepsAChosenSpanWhenCurvesChange) {
    wheel(3, 4);
    const Span chosen = plot()->visibleSpan();
    EXPECT_LT(chosen.length(), curves->time_s.back() / 2);
    view.setCurves(test::formulaCurves({.high_s = 0.6}));
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), chosen);
    view.fit();
    QApplication::processEvents();
    EXPECT_GT(plot()->visibleSpan().length(), 2 * chosen.length());
}

TEST_F(CurvesViewTest, WheelZoomsAboutTheTimeUnderTheCursor) {
    const QPoint spot = at(2);
    const double before = plot()->timeAt(spot.x());
    wheel(2, 3);
    EXPECT_NEAR(plot()->timeAt(spot.x()), before, 1e-9);
    EXPECT_NEAR(plot()->visibleSpan().length(), curves->time_s.back() / std::pow(1.25, 3), 1e-9);
}

TEST_F(CurvesViewTest, DraggingMovesTheMomentLineAndSaysSo) {
    QSignalSpy moved(&view, &CurvesView::momentMoved);
    QTest::mousePress(plot(), Qt::LeftButton, {}, at(1));
    EXPECT_NEAR(view.moment_s(), 1, 0.01);
    QTest::mouseMove(plot(), at(2.5, Strip::lamps));
    QTest::mouseRelease(plot(), Qt::LeftButton, {}, at(2.5, Strip::lamps));
    EXPECT_NEAR(view.moment_s(), 2.5, 0.01);
    ASSERT_GE(moved.size(), 2);
    EXPECT_DOUBLE_EQ(moved.last().first().toDouble(), view.moment_s());
    QTest::mouseMove(plot(), at(4));
    EXPECT_NEAR(view.moment_s(), 2.5, 0.01) << "moves on without a button";
}

TEST_F(CurvesViewTest, MovingTheLineRepaintsNoCurve) {
    QSignalSpy redrawn(plot(), &StripPlot::redrawn);
    for (int k = 0; k < 20; ++k) view.setMoment(0.1 * k);
    QApplication::processEvents();
    EXPECT_EQ(redrawn.size(), 0);
    view.setCurves(curves);
    QApplication::processEvents();
    EXPECT_EQ(redrawn.size(), 1);
}

TEST_F(CurvesViewTest, LooksTheSameHoweverLittleIsPaintedAnew) {
    const auto picture = [&] {
        QApplication::processEvents();
        return view.grab().toImage();
    };
    view.setEcho(test::formulaCurves({.high_s = 0.6, .pair = true}));
    for (const double high_s : {0.5, 0.45, 0.55}) {
        // Over the ground of the change before, then over the kept picture, then all anew.
        view.setCurves(test::formulaCurves({.high_s = high_s, .pair = true}));
        view.setMoment(1);
        const QImage fresh = view.grab().toImage(); // paints first: nothing has happened since
        EXPECT_EQ(fresh, picture());
        view.setMoment(2);
        EXPECT_NE(fresh, picture());
        view.setMoment(1);
        EXPECT_EQ(fresh, picture());
        view.setTheme(Theme::of(Theme::Mode::light));
        EXPECT_EQ(fresh, picture());
    }
    const QImage before = picture();
    view.setEcho(nullptr);
    EXPECT_NE(before, picture());
    const QImage without = picture();
    view.resize(1000, 700);
    picture();
    view.resize(1200, 800);
    EXPECT_EQ(without, picture());
}

TEST_F(CurvesViewTest, AxesGridCurvesAndEchoAreSeen) {
    view.setEcho(test::formulaCurves({.high_s = 0.6, .pair = true}));
    for (const auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        const Theme& theme = Theme::of(mode);
        view.setTheme(theme);
        QApplication::processEvents();
        const QImage image = plot()->grab().toImage();
        const auto pixelsOf = [&](const QColor& colour, const QRect& within) {
            int found = 0;
            for (int y = within.top(); y <= within.bottom(); ++y)
                for (int x = within.left(); x <= within.right(); ++x)
                    if (image.pixelColor(x, y) == colour) ++found;
            return found;
        };
        for (const Strip strip : {Strip::output, Strip::capacitor, Strip::lamps}) {
            const QRect rect = plot()->stripRect(strip);
            EXPECT_GT(pixelsOf(theme.grid, rect), 3 * rect.width());
            EXPECT_GT(pixelsOf(theme.frame, rect.adjusted(-1, 0, 1, 2)), rect.width());
            const QRect labels(0, rect.top(), rect.left() - 6, rect.height());
            EXPECT_LT(pixelsOf(theme.paper, labels), labels.width() * labels.height() - 50);
        }
        const QRect output = plot()->stripRect(Strip::output);
        EXPECT_GT(pixelsOf(theme.setA, output), output.width() / 2);
        EXPECT_GT(pixelsOf(theme.echo(theme.setA), output), output.width() / 4);
    }
}

TEST_F(CurvesViewTest, BothSwitchingLevelsAreSeen) {
    for (const auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        const Theme& theme = Theme::of(mode);
        view.setTheme(theme);
        QApplication::processEvents();
        const QImage image = plot()->grab().toImage();
        const QRect strip = plot()->stripRect(Strip::capacitor);
        for (const double level_V : {2.0, 4.0}) { // a third and two thirds of 6 V
            const int y = static_cast<int>(std::lround(plot()->valuePixel(Strip::capacitor, level_V)));
            int seen = 0;
            for (int x = strip.left(); x <= strip.right(); ++x)
                for (int row = y - 1; row <= y + 1; ++row)
                    if (image.pixelColor(x, row) == theme.level) {
                        ++seen;
                        break;
                    }
            EXPECT_GT(seen, 0.9 * strip.width())
                << level_V << (mode == Theme::Mode::dark ? " dark" : " light");
        }
    }
}

TEST_F(CurvesViewTest, ManyCurvesInOneTurnArePaintedOnce) {
    QSignalSpy painted(&view, &CurvesView::painted);
    for (int k = 0; k < 5; ++k) view.setCurves(test::formulaCurves({.high_s = 0.5 + 0.01 * k}));
    QApplication::processEvents();
    EXPECT_EQ(painted.size(), 1);
}

TEST_F(CurvesViewTest, SetMomentMovesSilentlyAndStaysInsideTheRun) {
    QSignalSpy moved(&view, &CurvesView::momentMoved);
    view.setMoment(1.25);
    EXPECT_DOUBLE_EQ(view.moment_s(), 1.25);
    view.setMoment(1e6);
    EXPECT_DOUBLE_EQ(view.moment_s(), curves->time_s.back());
    EXPECT_TRUE(moved.isEmpty());
}

TEST_F(CurvesViewTest, KeysGoFromSwitchingToSwitchingAndPixelByPixel) {
    key(Qt::Key_Right, Qt::ControlModifier);
    EXPECT_DOUBLE_EQ(view.moment_s(), curves->switchings_s[0]);
    key(Qt::Key_BracketRight);
    EXPECT_DOUBLE_EQ(view.moment_s(), curves->switchings_s[1]);
    key(Qt::Key_Left);
    const double pixel = plot()->visibleSpan().length() / plot()->stripRect(Strip::output).width();
    EXPECT_NEAR(view.moment_s(), curves->switchings_s[1] - pixel, pixel / 10);
    key(Qt::Key_BracketLeft);
    EXPECT_DOUBLE_EQ(view.moment_s(), curves->switchings_s[0]);
    key(Qt::Key_Home);
    EXPECT_DOUBLE_EQ(view.moment_s(), 0);
    key(Qt::Key_End);
    EXPECT_DOUBLE_EQ(view.moment_s(), curves->time_s.back());
}

TEST_F(CurvesViewTest, TheLineIsKeptInViewWhenKeysLeadItOut) {
    wheel(0.2, 8);
    key(Qt::Key_End);
    EXPECT_GE(plot()->visibleSpan().end + 1e-9, curves->time_s.back());
    EXPECT_LT(plot()->visibleSpan().length(), 2);
}

TEST_F(CurvesViewTest, DragsWithTheRightButtonPanAndDoubleClickFits) {
    wheel(3, 5);
    const Span before = plot()->visibleSpan();
    QTest::mousePress(plot(), Qt::RightButton, {}, {600, 200});
    QTest::mouseMove(plot(), {500, 200});
    QTest::mouseRelease(plot(), Qt::RightButton, {}, {500, 200});
    QApplication::processEvents();
    const double shift = 100.0 / plot()->stripRect(Strip::output).width() * before.length();
    EXPECT_NEAR(plot()->visibleSpan().begin, before.begin + shift, 1e-9);
    EXPECT_NEAR(plot()->visibleSpan().length(), before.length(), 1e-9);
    QTest::mouseDClick(plot(), Qt::LeftButton, {}, {600, 200});
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, curves->time_s.back()}));
}

TEST_F(CurvesViewTest, TheEchoHoldsTheTimeAxisWhileTheRateChangesALittle) {
    view.setEcho(curves);
    view.setCurves(test::formulaCurves({.high_s = 0.75}));
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, curves->time_s.back()}));
    const auto slow = test::formulaCurves({.high_s = 5});
    view.setCurves(slow);
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, slow->time_s.back()}));
}

TEST_F(CurvesViewTest, SaysTheValuesUnderTheLineWithTheirUnits) {
    view.setMoment(0.5);
    const QString said = view.accessibleDescription();
    EXPECT_TRUE(said.contains(QString::fromUtf8("4.60\u00A0V"))) << said.toStdString(); // 6 V less 1.4 V
    EXPECT_TRUE(said.contains(QStringLiteral("D1"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("mA"))) << said.toStdString();
    EXPECT_EQ(view.accessibleName(), QStringLiteral("Curves"));
}

TEST_F(CurvesViewTest, IsAChartThatSumsItselfUpForAScreenReader) {
    QApplication::processEvents();
    QAccessibleInterface* chart = QAccessible::queryAccessibleInterface(plot());
    ASSERT_NE(chart, nullptr);
    EXPECT_EQ(chart->role(), QAccessible::Chart);
    EXPECT_EQ(chart->text(QAccessible::Name), QStringLiteral("Curves"));
    const QString summary = chart->text(QAccessible::Value);
    EXPECT_TRUE(summary.startsWith(QStringLiteral("From "))) << summary.toStdString();
    EXPECT_TRUE(summary.contains(QStringLiteral("%1 switching").arg(curves->switchings_s.size())))
        << summary.toStdString();
}

TEST_F(CurvesViewTest, PlayMovesTheLineAndTheViewFollows) {
    const double end_s = curves->time_s.back();
    view.setMoment(0);
    view.zoomBy(4);
    QApplication::processEvents();
    const QString said = view.accessibleDescription();
    view.playMoment(0.9 * end_s);
    EXPECT_DOUBLE_EQ(view.moment_s(), 0.9 * end_s);
    EXPECT_EQ(view.accessibleDescription(), said) << "sixty descriptions a second help nobody";
    QApplication::processEvents();
    EXPECT_LE(plot()->visibleSpan().begin, 0.9 * end_s);
    EXPECT_GE(plot()->visibleSpan().end, 0.9 * end_s);
}

TEST_F(CurvesViewTest, AxisAndReadoutHaveTheSamePrefix) {
    EXPECT_EQ(plot()->scale(Strip::lamps).unitText(), QStringLiteral("mA"));
    EXPECT_TRUE(plot()->valueText(Strip::lamps, 0.0000123).endsWith(QStringLiteral("mA")));
    EXPECT_EQ(plot()->timeScale().unitText(), QStringLiteral("s"));
    wheel(0.0, 30); // 6.4 s / 1.25^30 = 7.9 ms
    EXPECT_EQ(plot()->timeScale().unitText(), QStringLiteral("ms"));
}

TEST_F(CurvesViewTest, LongRunsAreCutDownOffThisThread) {
    const auto endless = test::formulaCurves({.cycles = 400, .pointsAPhase = 600}); // 480,000 points a trace
    QSignalSpy redrawn(plot(), &StripPlot::redrawn);
    view.setCurves(endless);
    EXPECT_TRUE(redrawn.wait(5000));
    EXPECT_EQ(plot()->visibleSpan(), (Span{0, endless->time_s.back()}));
}

TEST_F(CurvesViewTest, CrowdedCurvesAreDrawnThinAndOthersInFull) {
    EXPECT_DOUBLE_EQ(plot()->graph(plot()->graphCount() - 1)->pen().widthF(), 1.5);
    view.setCurves(test::formulaCurves({.cycles = 100, .pair = true}));
    QApplication::processEvents();
    EXPECT_DOUBLE_EQ(plot()->graph(plot()->graphCount() - 1)->pen().widthF(), 1.0);
    wheel(3, 20);
    EXPECT_DOUBLE_EQ(plot()->graph(plot()->graphCount() - 1)->pen().widthF(), 1.5) << "zoomed in";
}

TEST_F(CurvesViewTest, ItsStripsAreEquallyHigh) {
    const auto heights = plot()->stripHeights();
    EXPECT_NEAR(heights[0], heights[1], 4);
    EXPECT_NEAR(heights[1], heights[2], 8);
    EXPECT_EQ(plot()->stripRect(Strip::output).left(), plot()->stripRect(Strip::lamps).left());
}

TEST_F(CurvesViewTest, LabelsOfLowStripsDoNotRunIntoEachOther) {
    for (const int height : {230, 320, 500, 800}) {
        view.resize(700, height);
        QApplication::processEvents();
        auto* strips = view.findChild<QCustomPlot*>();
        ASSERT_NE(strips, nullptr);
        for (const QCPAxisRect* rect : strips->axisRects()) {
            const QCPAxis* axis = rect->axis(QCPAxis::atLeft);
            QVector<double> ticks;
            axis->ticker()->generate(axis->range(), QLocale::c(), 'g', 6, ticks, nullptr, nullptr);
            EXPECT_GE(std::ranges::count_if(ticks, [&](double t) { return axis->range().contains(t); }), 2)
                << "at " << height << " pixels";
            const int label =
                QFontMetrics(axis->tickLabelFont()).tightBoundingRect(QStringLiteral("0123456789")).height();
            for (qsizetype k = 1; k < ticks.size(); ++k)
                EXPECT_GE(axis->coordToPixel(ticks[k - 1]) - axis->coordToPixel(ticks[k]), label)
                    << "at " << height << " pixels";
        }
    }
}

TEST_F(CurvesViewTest, ItsTextGrowsWithTheFontOfTheWindow) {
    const QFont before = QApplication::font();
    QFont large = before;
    large.setPixelSize(20);
    QApplication::setFont(large);
    const CurvesView other;
    const auto* strips = other.findChild<StripPlot*>();
    EXPECT_EQ(strips->smallFont().pixelSize(), 20);
    EXPECT_EQ(strips->axisRects().front()->axis(QCPAxis::atLeft)->tickLabelFont().pixelSize(), 20);
    QApplication::setFont(before);
}

TEST_F(CurvesViewTest, PaintsNothingButTheMessageWhenThereAreNoCurves) {
    QSignalSpy painted(&view, &CurvesView::painted);
    view.setCurves(nullptr);
    view.setMessage(QStringLiteral("Pin 4 is held low: the output never rises."));
    QApplication::processEvents();
    view.grab();
    EXPECT_EQ(painted.size(), 0);
    EXPECT_EQ(view.accessibleDescription(), QStringLiteral("Pin 4 is held low: the output never rises."));
    key(Qt::Key_Right); // and nothing falls over
    test::savePictures(view, QStringLiteral("curves-empty"), {700, 420});
}

TEST_F(CurvesViewTest, LooksAsItShould) {
    view.setEcho(test::formulaCurves({.supply_V = 6, .high_s = 0.62, .low_s = 0.5, .pair = true}));
    view.setMoment(5.71);
    plot()->setFocus();
    test::savePictures(view, QStringLiteral("curves"), {1200, 800});
    view.setCurves(test::formulaCurves({.pair = true, .second = "red"}));
    test::savePictures(view, QStringLiteral("curves-narrow"), {480, 360});
}

TEST_F(CurvesViewTest, LooksAsItShouldWithTwoSets) {
    view.setSecond(test::formulaCurves({.high_s = 0.35, .pair = true}), "Set B", "B");
    test::savePictures(view, QStringLiteral("curves-two-sets"), {720, 480});
}

} // namespace
