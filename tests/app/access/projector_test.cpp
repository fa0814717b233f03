// The view for a class: Hook-up and Curves alone, large, and back again without a trace.
#include "app/play_actions.h"
#include "app/play_strip.h"
#include "app/projector_view.h"
#include "tests/app/access/access_fixture.h"
#include "tests/app/keyboard.h"
#include "widgets/curves/curves_view.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/drawing.h"
#include "widgets/pins/pins_view.h"
#include "widgets/readings/readings_view.h"

#include <QFontInfo>
#include <QScreen>
#include <QSplitter>
#include <QToolBar>

namespace blinkwright::test {
namespace {

class Projector : public AccessTest {
  protected:
    ~Projector() override { window->projector().set(false); }
    QAction& projector() const { return action("Projector view"); }
    widgets::StripPlot& plot() const { return *window->curves().findChild<widgets::StripPlot*>(); }
    double textSize() const { return QFontInfo(plot().smallFont()).pixelSize(); }
    double widestPen() const {
        double widest = 0;
        for (int k = 0; k < plot().graphCount(); ++k)
            widest = std::max(widest, plot().graph(k)->pen().widthF());
        return widest;
    }
    /// How many pixels wide a wire is that is in view, at a zoom.
    int wireWidth(double zoom) const {
        widgets::HookupView& hookup = window->hookup();
        hookup.zoomBy(zoom / hookup.zoom());
        const QImage image = hookup.viewport()->grab().toImage();
        const QColor ink = window->appearance().theme().ink;
        const auto isInk = [&](int x, int y) {
            return std::abs(image.pixelColor(x, y).lightness() - ink.lightness()) < 40;
        };
        int least = image.height();
        for (const auto& segment : hookup.drawing().routes().segments) {
            if (segment.a.y != segment.b.y) continue;
            const QRectF place =
                hookup.toViewport(QRectF(segment.a.x, segment.a.y, segment.b.x - segment.a.x, 0));
            const int y = qRound(place.y());
            for (int x = qRound(place.left()) + 10; x < place.right() - 10; x += 7) {
                if (!image.rect().adjusted(20, 20, -20, -20).contains(x, y) || !isInk(x, y)) continue;
                int from = y, to = y;
                while (from > 0 && isInk(x, from - 1)) --from;
                while (to < image.height() - 1 && isInk(x, to + 1)) ++to;
                least = std::min(least, to - from + 1);
            }
        }
        return least;
    }
    /// Which parts are there.
    QByteArray state() const {
        QByteArray all;
        for (const QWidget* part : window->findChildren<QWidget*>())
            if (part->window() == window.get() && part->parentWidget() == window->centralWidget())
                all += part->isHidden() ? '-' : '+';
        for (const QWidget* part : std::initializer_list<const QWidget*>{
                 &window->readings(), &window->values(), &window->findings(), window->findChild<QToolBar*>()})
            all += part->isVisible() ? '+' : '-';
        return all;
    }
    std::vector<int> sizes() const {
        std::vector<int> all;
        for (const char* name : {"top", "rows"})
            for (const int size : window->findChild<QSplitter*>(QLatin1String(name))->sizes())
                all.push_back(size);
        return all;
    }
};

TEST_F(Projector, ShowsHookUpAndCurvesAloneAndLarge) {
    open();
    const double text = textSize(), pen = widestPen();
    const int wide = window->hookup().height();
    projector().trigger();
    QTest::qWait(50);
    EXPECT_TRUE(projector().isChecked());
    EXPECT_TRUE(window->hookup().isVisible());
    EXPECT_TRUE(window->curves().isVisible());
    for (const QWidget* away : std::initializer_list<const QWidget*>{
             &window->readings(), &window->values(), &window->findings(), window->findChild<QToolBar*>(),
             window->findChild<QWidget*>(QStringLiteral("palette"))})
        EXPECT_FALSE(away->isVisible());
    EXPECT_GE(textSize(), 1.35 * text);
    EXPECT_GE(widestPen(), 1.9 * pen);
    EXPECT_GT(window->hookup().height(), wide);
    picture(QStringLiteral("projector-light"));
    action("Dark").trigger();
    picture(QStringLiteral("projector-dark"));
    EXPECT_GE(widestPen(), 1.9 * pen) << "the other theme too";
    EXPECT_EQ(window->appearance().theme().quietInk, window->appearance().theme().ink)
        << "what is quiet on a desk is gone on a wall";
    action("Light").trigger();
}

TEST_F(Projector, WidensTheWiresOfTheDrawingBesideItsZoom) {
    open();
    constexpr double zoom = 2;
    const int usual = wireWidth(zoom);
    projector().trigger();
    QTest::qWait(50);
    const int wide = wireWidth(zoom);
    ASSERT_GT(usual, 1);
    EXPECT_LT(usual, 10);
    EXPECT_GE(wide, 1.4 * usual) << "symbols and wires take half of what curves get";
}

TEST_F(Projector, FillsTheScreenAndTheDrawingItsPanel) {
    open();
    const double zoom = window->hookup().zoom();
    projector().trigger();
    QTest::qWait(50);
    EXPECT_TRUE(window->isFullScreen());
    EXPECT_EQ(window->size(), window->screen()->size());
    const widgets::HookupView& hookup = window->hookup();
    EXPECT_GT(hookup.zoom(), zoom);
    // Filled one way: a larger step of the zoom, a tenth, would not have room, with the margin of 26 units.
    const QRectF drawn = hookup.drawing().bounds().adjusted(-26, -26, 26, 26);
    const QSizeF next = drawn.size() * (hookup.zoom() + 0.1);
    EXPECT_TRUE(next.width() > hookup.viewport()->width() || next.height() > hookup.viewport()->height());
    EXPECT_LE(drawn.width() * hookup.zoom(), hookup.viewport()->width());
    EXPECT_LE(drawn.height() * hookup.zoom(), hookup.viewport()->height());
    constexpr double usualText_px = 12; // 9 points at 96 dots an inch
    for (const auto& label : hookup.drawing().labels())
        if (!label.rect.isEmpty()) {
            EXPECT_GE(label.size * hookup.zoom(), 1.6 * usualText_px) << label.ref.toStdString();
        }
    projector().trigger();
    QTest::qWait(50);
    EXPECT_FALSE(window->isFullScreen());
    EXPECT_EQ(hookup.zoom(), zoom);
}

TEST_F(Projector, LeavingBringsBackThePartsAndTheirSizes) {
    open();
    window->findChild<QSplitter*>("top")->setSizes({500, 700});
    window->findChild<QSplitter*>("rows")->setSizes({500, 200});
    QTest::qWait(50);
    const QByteArray before = state();
    const std::vector<int> sizesBefore = sizes();
    const QSize size = window->size();
    for (int times = 0; times < 2; ++times) {
        projector().trigger();
        QTest::qWait(50);
        EXPECT_NE(state(), before);
        projector().trigger();
        QTest::qWait(50);
        EXPECT_EQ(window->size(), size);
        EXPECT_EQ(state().toStdString(), before.toStdString());
        EXPECT_EQ(sizes(), sizesBefore);
    }
}

TEST_F(Projector, KeepsAZoomedDrawingAndZoomedCurves) {
    open();
    window->hookup().zoomBy(1.7);
    window->curves().zoomBy(3);
    QTest::qWait(50);
    QTest::mouseClick(window->hookup().viewport(), Qt::LeftButton, {}, {3, 3}); // and off the middle:
    window->hookup().select(circuit().parts().back().id);
    QTest::qWait(30);
    const double zoom = window->hookup().zoom();
    const QRectF drawing = window->hookup().toViewport({0, 0, 100, 100});
    const auto span = window->curves().visibleSpan();
    projector().trigger();
    QTest::qWait(50);
    EXPECT_NE(window->hookup().toViewport({0, 0, 100, 100}), drawing) << "fitted meanwhile";
    window->hookup().zoomBy(1.3);
    projector().trigger();
    QTest::qWait(50);
    EXPECT_EQ(window->hookup().zoom(), zoom);
    EXPECT_EQ(window->curves().visibleSpan(), span);
}

TEST_F(Projector, EscLeavesItOnceTheEchoIsGone) {
    open();
    activate();
    projector().trigger();
    window->hookup().setFocus();
    press(Qt::Key_Escape);
    EXPECT_FALSE(projector().isChecked());
    EXPECT_TRUE(window->readings().isVisible());
    press(Qt::Key_F11);
    EXPECT_TRUE(projector().isChecked());
    window->curves().setFocus();
    press(Qt::Key_Escape);
    EXPECT_FALSE(projector().isChecked());
}

TEST_F(Projector, TheSameKeysGoOnWorking) {
    open();
    activate();
    projector().trigger();
    QTest::qWait(30);
    press(Qt::Key_2, Qt::ControlModifier);
    EXPECT_EQ(circuit().run.begin, circuit::Begin::settled);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(circuit().run.begin, circuit::Begin::powerOn);
    press(Qt::Key_4, Qt::ControlModifier);
    EXPECT_TRUE(window->pins().isVisible());
    press(Qt::Key_3, Qt::ControlModifier);
    EXPECT_TRUE(window->hookup().isVisible());
    press(Qt::Key_F6);
    EXPECT_TRUE(window->curves().isAncestorOf(QApplication::focusWidget()));
    press(Qt::Key_F6);
    EXPECT_FALSE(window->curves().isAncestorOf(QApplication::focusWidget()))
        << "round again, past what is away";
    ASSERT_TRUE(waitForRun());
    const double moment = window->curves().moment_s();
    EXPECT_TRUE(window->findChild<app::PlayStrip*>()->isVisible());
    press(Qt::Key_F8);
    EXPECT_GT(window->curves().moment_s(), moment);
    press(Qt::Key_F9);
    EXPECT_TRUE(window->play().play().running());
    press(Qt::Key_F9);
    EXPECT_FALSE(window->play().play().running());
}

TEST_F(Projector, IsRememberedAndSoIsTheWindowBehindIt) {
    window->resize(1111, 777);
    open();
    window->findChild<QSplitter*>("top")->setSizes({400, 700});
    QTest::qWait(50);
    const QList<int> sizes = window->findChild<QSplitter*>("top")->sizes();
    projector().trigger();
    QTest::qWait(50);
    ASSERT_TRUE(window->close());
    window->appearance().setProjected(false); // another start has the desktop's font at first
    window.reset();
    window = std::make_unique<app::MainWindow>(settings);
    window->show();
    open();
    QTest::qWait(50);
    EXPECT_TRUE(projector().isChecked());
    EXPECT_FALSE(window->readings().isVisible());
    projector().trigger();
    QTest::qWait(50);
    EXPECT_TRUE(window->readings().isVisible());
    EXPECT_EQ(window->findChild<QSplitter*>("top")->sizes(), sizes);
    EXPECT_EQ(window->size(), QSize(1111, 777));
}

TEST_F(Projector, ExportsStayAsTheyAre) {
    open();
    ASSERT_TRUE(window->exportTo(inFolder("before.png")));
    projector().trigger();
    QTest::qWait(30);
    ASSERT_TRUE(window->exportTo(inFolder("after.png")));
    EXPECT_EQ(QImage(inFolder("before.png")), QImage(inFolder("after.png")));
}

} // namespace
} // namespace blinkwright::test
