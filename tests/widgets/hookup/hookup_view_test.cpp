#include "widgets/hookup/hookup_view.h"

#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/drawing.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QPaintEvent>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QToolTip>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace blinkwright::widgets {

namespace {

using circuit::Circuit;
using circuit::PartId;

/// Collects what a widget is asked to repaint.
class PaintSpy : public QObject {
  public:
    explicit PaintSpy(QWidget* watched) : QObject(watched) { watched->installEventFilter(this); }
    QRegion painted;

  protected:
    bool eventFilter(QObject* object, QEvent* event) override {
        if (event->type() == QEvent::Paint) painted += static_cast<QPaintEvent*>(event)->region();
        return QObject::eventFilter(object, event);
    }
};

class Hookup : public testing::Test {
  protected:
    Circuit circuit = test::sample("mole-light");
    HookupView view;
    hookup::Drawing drawing; ///< the same drawing, to ask where things are
    std::vector<PartId> activated;

    void SetUp() override {
        QObject::connect(&view, &HookupView::partActivated, &view,
                         [this](PartId part) { activated.push_back(part); });
        view.resize(900, 640);
        view.setCircuit(circuit);
        drawing.show(circuit);
        view.show();
        QApplication::processEvents();
    }

    PartId id(const char* ref) const { return circuit.findRef(ref)->id; }
    /// Where a part's middle is in the viewport, found by asking the view itself: the drawing is centred when
    /// fitted.
    QPoint inView(QPointF at) const {
        const QRectF content = drawing.bounds();
        const QPointF middle = QRectF(view.viewport()->rect()).center();
        return (middle + (at - content.center()) * view.zoom()).toPoint();
    }
    QPoint middleOf(const char* ref) const {
        const hookup::Point at = drawing.find(id(ref))->pose.at;
        return inView(QPointF(at.x, at.y));
    }
    /// Quantities hold a no-break space between number and unit.
    static QString plainSpaces(QString text) { return text.replace(QChar::Nbsp, QLatin1Char(' ')); }
    void key(Qt::Key k, Qt::KeyboardModifiers m = Qt::NoModifier) { QTest::keyClick(&view, k, m); }
    QString toolTipAt(QPoint at) {
        QHelpEvent event(QEvent::ToolTip, at, view.viewport()->mapToGlobal(at));
        QApplication::sendEvent(view.viewport(), &event);
        return plainSpaces(QToolTip::text());
    }
    void wheel(QPoint at, int angle, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QWheelEvent event(at, view.viewport()->mapToGlobal(at), QPoint(), QPoint(0, angle), Qt::NoButton,
                          modifiers, Qt::NoScrollPhase, false);
        QApplication::sendEvent(view.viewport(), &event);
    }
};

TEST_F(Hookup, FitsTheWholeDrawingAtFirst) {
    const QRectF bounds = drawing.bounds();
    EXPECT_LE(bounds.width() * view.zoom(), view.viewport()->width());
    EXPECT_LE(bounds.height() * view.zoom(), view.viewport()->height());
    EXPECT_GT(bounds.width() * view.zoom(), 0.7 * view.viewport()->width());
}

TEST_F(Hookup, AClickChoosesThePartUnderIt) {
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, middleOf("R2"));
    EXPECT_EQ(view.selected(), id("R2"));
    EXPECT_EQ(activated, (std::vector{id("R2")}));
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, QPoint(4, 4));
    EXPECT_EQ(view.selected(), std::nullopt);
}

TEST_F(Hookup, TabGoesThroughAllPartsAndThenLeaves) {
    QWidget window;
    auto* inner = new HookupView(&window);
    auto* after = new QWidget(&window);
    after->setFocusPolicy(Qt::StrongFocus);
    inner->setCircuit(circuit);
    window.show();
    window.activateWindow();
    QApplication::processEvents();
    after->setFocus();
    inner->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(inner->hasFocus());
    for (const circuit::Part& part : circuit.parts()) {
        EXPECT_EQ(inner->selected(), part.id) << part.ref;
        QTest::keyClick(inner, Qt::Key_Tab);
    }
    EXPECT_FALSE(inner->hasFocus());
    EXPECT_TRUE(after->hasFocus());
}

TEST_F(Hookup, ArrowsGoToTheNeighbourInTheirDirection) {
    view.select(id("R1"));
    key(Qt::Key_Down);
    EXPECT_EQ(view.selected(), id("R2"));
    key(Qt::Key_Down);
    EXPECT_EQ(view.selected(), id("C1"));
    key(Qt::Key_Left);
    EXPECT_EQ(view.selected(), id("C2"));
    key(Qt::Key_Return);
    EXPECT_EQ(activated, (std::vector{id("R2"), id("C1"), id("C2"), id("C2")}));
}

TEST_F(Hookup, KeysZoomAndFit) {
    const double fitted = view.zoom();
    key(Qt::Key_Plus);
    EXPECT_GT(view.zoom(), fitted);
    key(Qt::Key_Minus);
    key(Qt::Key_Minus);
    EXPECT_LT(view.zoom(), fitted);
    key(Qt::Key_0);
    EXPECT_DOUBLE_EQ(view.zoom(), fitted);
}

TEST_F(Hookup, TheWheelZoomsAboutThePointer) {
    const double fitted = view.zoom();
    const QPoint at = middleOf("R2");
    for (int turn = 0; turn < 4; ++turn) wheel(at, 120);
    EXPECT_GT(view.zoom(), 1.5 * fitted);
    QTest::mouseClick(view.viewport(), Qt::LeftButton, {}, at);
    EXPECT_EQ(view.selected(), id("R2")) << "the part under the pointer has moved away";
    EXPECT_GT(view.horizontalScrollBar()->maximum(), view.horizontalScrollBar()->minimum());
}

TEST_F(Hookup, SmallTurnsOfAWheelAddUp) {
    const double before = view.zoom();
    for (int turn = 0; turn < 12; ++turn) wheel(view.viewport()->rect().center(), 10, Qt::ControlModifier);
    EXPECT_NEAR(view.zoom() / before, 1.2, 0.1);
}

TEST_F(Hookup, TheMiddleButtonPansAZoomedDrawing) {
    for (int turn = 0; turn < 5; ++turn) key(Qt::Key_Plus);
    const int before = view.horizontalScrollBar()->value();
    QTest::mousePress(view.viewport(), Qt::MiddleButton, {}, QPoint(400, 300));
    QTest::mouseMove(view.viewport(), QPoint(340, 300));
    QTest::mouseRelease(view.viewport(), Qt::MiddleButton, {}, QPoint(340, 300));
    EXPECT_NEAR(view.horizontalScrollBar()->value(), before + 60, 2);
}

TEST_F(Hookup, SpaceAndADragPan) {
    for (int turn = 0; turn < 5; ++turn) key(Qt::Key_Plus);
    const int before = view.verticalScrollBar()->value();
    QTest::keyPress(&view, Qt::Key_Space);
    QTest::mousePress(view.viewport(), Qt::LeftButton, {}, QPoint(400, 300));
    QTest::mouseMove(view.viewport(), QPoint(400, 260));
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, QPoint(400, 260));
    QTest::keyRelease(&view, Qt::Key_Space);
    EXPECT_NEAR(view.verticalScrollBar()->value(), before + 40, 2);
    EXPECT_TRUE(activated.empty());
}

TEST_F(Hookup, ChoosingAPartFromOutsideBringsItIntoViewSilently) {
    for (int turn = 0; turn < 8; ++turn) key(Qt::Key_Plus);
    view.select(id("BT1"));
    const int left = view.horizontalScrollBar()->value();
    view.select(id("C1"));
    EXPECT_GT(view.horizontalScrollBar()->value(), left);
    EXPECT_TRUE(activated.empty());
}

TEST_F(Hookup, GlowRepaintsLensesOnly) {
    PaintSpy spy(view.viewport());
    view.setGlow({{id("D1"), 0.6}});
    QApplication::processEvents();
    ASSERT_FALSE(spy.painted.isEmpty());
    const QRect lens = spy.painted.boundingRect();
    EXPECT_LT(lens.width() * lens.height(), 0.02 * view.viewport()->width() * view.viewport()->height());
    const QRectF area = lensArea(*drawing.find(id("D1")));
    EXPECT_TRUE(lens.contains(inView(area.center())));

    spy.painted = {};
    view.setGlow({{id("D1"), 0.6}});
    QApplication::processEvents();
    EXPECT_TRUE(spy.painted.isEmpty()) << "nothing changed, nothing to repaint";
}

TEST_F(Hookup, AChangedValueRepaintsItsLabelOnlyAndLooksAsIfAllWereDrawnAnew) {
    view.setGlow({{id("D1"), 0.6}});
    QApplication::processEvents();
    Circuit changed = circuit;
    for (const auto& [ohm, colour] :
         {std::pair(15e6 / 7, "red"), std::pair(22.0, "red"), std::pair(47e3, "blue")}) {
        PaintSpy spy(view.viewport());
        ASSERT_TRUE(changed.setOverride(circuit::PartSet::A, id("R2"), "resistance", ohm).ok());
        ASSERT_TRUE(changed.setOverride(circuit::PartSet::A, id("D1"), "colour", std::string(colour)).ok());
        view.setCircuit(changed);
        QApplication::processEvents();
        ASSERT_FALSE(spy.painted.isEmpty());
        int pixels = 0;
        for (const QRect& part : spy.painted) pixels += part.width() * part.height();
        EXPECT_LT(pixels, 0.1 * view.viewport()->width() * view.viewport()->height());
        const QImage mended = view.viewport()->grab().toImage();
        view.setTheme(Theme::of(Theme::Mode::light)); // all of it is drawn anew
        EXPECT_EQ(mended, view.viewport()->grab().toImage()) << ohm;
        QApplication::processEvents();
    }
}

TEST_F(Hookup, ALitLensShowsTheLampsColourAndADarkOneThePaper) {
    const QPoint lens = inView(lensArea(*drawing.find(id("D1"))).center());
    const auto saturation = [&] {
        return view.viewport()->grab().toImage().pixelColor(lens).hsvSaturationF();
    };
    EXPECT_LT(saturation(), 0.2F);
    view.setGlow({{id("D1"), 1.0}});
    const QImage lit = view.viewport()->grab().toImage();
    const QColor rim = lit.pixelColor(lens + QPoint(static_cast<int>(6 * view.zoom()), 0));
    EXPECT_GT(rim.red(), rim.green() + 80);
    EXPECT_GT(rim.hsvSaturationF(), 0.5F);
}

TEST_F(Hookup, SelectionAndGlowOutliveAChangeOfValues) {
    view.select(id("R2"));
    view.setGlow({{id("D1"), 1.0}});
    const QImage before = view.viewport()->grab().toImage();
    Circuit changed = circuit;
    ASSERT_TRUE(changed.setOverride(circuit::PartSet::A, id("R1"), "resistance", 22000.0).ok());
    view.setCircuit(changed);
    EXPECT_EQ(view.selected(), id("R2"));
    const QImage after = view.viewport()->grab().toImage();
    EXPECT_NE(before, after) << "the new value is shown";
    const QPoint lens = inView(lensArea(*drawing.find(id("D1"))).center());
    EXPECT_EQ(before.pixelColor(lens), after.pixelColor(lens));
}

TEST_F(Hookup, ASelectedPartThatIsGoneIsNoLongerSelected) {
    view.select(id("R2"));
    view.setCircuit(Circuit());
    EXPECT_EQ(view.selected(), std::nullopt);
    EXPECT_FALSE(view.grab().toImage().isNull());
}

TEST_F(Hookup, ToolTipsNamePartsAndPins) {
    EXPECT_EQ(toolTipAt(middleOf("R2")), QStringLiteral("R2, resistor, 68 kΩ"));
    const auto timer = drawing.find(id("U1"))->pose;
    const hookup::Point reset =
        placed(hookup::pinsOf(circuit::PartKind::timer, hookup::TimerLook::package)[circuit::timerPin::reset],
               timer);
    EXPECT_EQ(toolTipAt(inView(QPointF(reset.x, reset.y))), QStringLiteral("U1, pin 4, reset\nnet supply"));
}

TEST_F(Hookup, TellsAssistiveToolsWhatItIsAndWhatIsSelected) {
    EXPECT_FALSE(view.accessibleName().isEmpty());
    view.select(id("C1"));
    EXPECT_TRUE(plainSpaces(view.accessibleDescription()).contains(QStringLiteral("C1, capacitor, 10 µF")))
        << view.accessibleDescription().toStdString();
}

TEST(Drawing, AValueChangesTextsAndNothingElse) {
    const Circuit circuit = test::sample("buoy-pair");
    hookup::Drawing drawing;
    EXPECT_EQ(drawing.show(circuit), hookup::Drawing::Change::layout);
    EXPECT_EQ(drawing.show(circuit), hookup::Drawing::Change::nothing);
    const auto wires = drawing.routes().segments;

    Circuit changed = circuit;
    const PartId r2 = circuit.findRef("R2")->id;
    ASSERT_TRUE(changed.setOverride(circuit::PartSet::A, r2, "resistance", 47000.0).ok());
    EXPECT_EQ(drawing.show(changed), hookup::Drawing::Change::texts);
    EXPECT_TRUE(drawing.find(r2)->value.startsWith(QStringLiteral("47")));
    EXPECT_EQ(drawing.routes().segments, wires);

    changed.place(r2, {300, 10, 90, false, {}});
    EXPECT_EQ(drawing.show(changed), hookup::Drawing::Change::layout);
    EXPECT_NE(drawing.routes().segments, wires);
}

} // namespace

} // namespace blinkwright::widgets
