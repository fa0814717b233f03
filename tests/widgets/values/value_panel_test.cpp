#include "widgets/values/value_panel.h"

#include "tests/widgets/pictures.h"
#include "widgets/values/value_row.h"

#include <QAccessible>
#include <QMouseEvent>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;
using namespace blinkwright::circuit;

namespace {

class ValuePanelTest : public testing::Test {
  protected:
    ValuePanelTest() {
        const auto add = [&](PartKind kind, const char* ref, Values values) {
            return circuit.addPart(kind, ref, std::move(values)).value();
        };
        battery = add(PartKind::supply, "BT1", {{"voltage", 6.0}});
        add(PartKind::timer, "U1", {{"family", std::string("bipolar")}});
        r1 = add(PartKind::resistor, "R1", {{"resistance", 10e3}});
        r2 = add(PartKind::resistor, "R2", {{"resistance", 68e3}});
        c1 = add(PartKind::capacitor, "C1", {{"capacitance", 10e-6}});
        rv = add(PartKind::variable, "RV1", {{"resistance", 100e3}, {"setting", 0.35}});
        d1 = add(PartKind::lamp, "D1", {{"colour", std::string("red")}});
        panel.resize(420, 360);
        panel.setCircuit(circuit, PartSet::A);
        panel.show();
        QApplication::processEvents();
        // As the document would: a wish is an edit, and the circuit comes back.
        QObject::connect(&panel, &ValuePanel::valueWished, &panel,
                         [this](const ValueRef& which, double value, int) {
                             Circuit changed;
                             for (const Part& p : circuit.parts()) {
                                 Values values = p.values;
                                 if (p.id == which.part) values[which.key] = value;
                                 (void)changed.addPart(p.kind, p.ref, values).value();
                             }
                             circuit = changed;
                             panel.setCircuit(circuit, PartSet::A);
                         });
    }
    ValueRow* row(PartId part, std::string_view key) {
        for (ValueRow* r : panel.findChildren<ValueRow*>())
            if (r->subject().part == part && r->subject().key == key) return r;
        return nullptr;
    }
    double held(PartId part, const char* key) {
        return std::get<double>(*circuit.value(PartSet::A, part, key));
    }
    void type(ValueRow* r, const char* text) {
        r->field()->setFocus();
        r->field()->selectAll();
        QTest::keyClicks(r->field(), QString::fromUtf8(text));
    }

    Circuit circuit;
    PartId battery, r1, r2, c1, rv, d1;
    ValuePanel panel;
};

TEST_F(ValuePanelTest, ShowsEveryMainValueInFileOrderWithItsUnit) {
    QStringList shown;
    for (ValueRow* r : panel.findChildren<ValueRow*>())
        shown << QString::fromStdString(r->subject().ref) + QLatin1Char(' ') +
                     r->field()->text().simplified();
    EXPECT_EQ(shown.join(QStringLiteral("; ")).replace(QChar(0xA0), QLatin1Char(' ')).toStdString(),
              "BT1 6 V; R1 10 kΩ; R2 68 kΩ; C1 10 µF; RV1 100 kΩ; RV1 35 %");
}

TEST_F(ValuePanelTest, ADragIsOneGestureWithValuesOfThreeDigits) {
    QSignalSpy began(&panel, &ValuePanel::gestureBegan), wished(&panel, &ValuePanel::valueWished),
        ended(&panel, &ValuePanel::gestureEnded);
    ScaleSlider* slider = row(r2, "resistance")->slider();
    const QPoint start(static_cast<int>(slider->handleX()), slider->height() / 2);
    QTest::mousePress(slider, Qt::LeftButton, {}, start);
    EXPECT_TRUE(wished.isEmpty()) << "taking the handle moves nothing";
    for (int x = 1; x <= 30; ++x) QTest::mouseMove(slider, start + QPoint(x, 0));
    QTest::mouseRelease(slider, Qt::LeftButton, {}, start + QPoint(30, 0));
    ASSERT_EQ(began.size(), 1);
    ASSERT_EQ(ended.size(), 1);
    ASSERT_GE(wished.size(), 20);
    const int gesture = began.first().first().toInt();
    EXPECT_EQ(ended.first().first().toInt(), gesture);
    for (const auto& w : wished) {
        EXPECT_EQ(w.at(2).toInt(), gesture);
        EXPECT_EQ(w.at(1).toDouble(), roundedTo3(w.at(1).toDouble()));
    }
    EXPECT_GT(held(r2, "resistance"), 100e3);
    EXPECT_LT(held(r2, "resistance"), 300e3);
    QTest::mousePress(slider, Qt::LeftButton, {}, start);
    QTest::mouseRelease(slider, Qt::LeftButton, {}, start);
    EXPECT_GT(began.last().first().toInt(), gesture);
}

TEST_F(ValuePanelTest, EscapeDuringADragGivesTheValueBack) {
    ScaleSlider* slider = row(r2, "resistance")->slider();
    QTest::mousePress(slider, Qt::LeftButton, {}, {20, 10});
    EXPECT_NE(held(r2, "resistance"), 68e3);
    QTest::keyClick(slider, Qt::Key_Escape);
    EXPECT_EQ(held(r2, "resistance"), 68e3);
    QTest::mouseRelease(slider, Qt::LeftButton, {}, {20, 10});
}

TEST_F(ValuePanelTest, ShiftDragsTenTimesFiner) {
    ScaleSlider* slider = row(battery, "voltage")->slider();
    const auto drag = [&](Qt::KeyboardModifiers modifiers) {
        const double before = held(battery, "voltage");
        const QPoint start(static_cast<int>(slider->handleX()), slider->height() / 2);
        QTest::mousePress(slider, Qt::LeftButton, modifiers, start);
        QMouseEvent move(QEvent::MouseMove, start + QPoint(40, 0), slider->mapToGlobal(start + QPoint(40, 0)),
                         Qt::NoButton, Qt::LeftButton, modifiers);
        QApplication::sendEvent(slider, &move);
        QTest::mouseRelease(slider, Qt::LeftButton, modifiers, start + QPoint(40, 0));
        return held(battery, "voltage") - before;
    };
    const double coarse = drag({});
    const double fine = drag(Qt::ShiftModifier);
    EXPECT_NEAR(fine, coarse / 10, 0.051); // above 10 V the third digit is a tenth of a volt
    EXPECT_GT(fine, 0);
}

TEST_F(ValuePanelTest, ATypedTextIsReadAndEnteredOnce) {
    QSignalSpy wished(&panel, &ValuePanel::valueWished), ended(&panel, &ValuePanel::gestureEnded);
    ValueRow* r = row(r2, "resistance");
    type(r, "4k7");
    EXPECT_TRUE(wished.isEmpty()) << "nothing is wished while typing";
    QTest::keyClick(r->field(), Qt::Key_Return);
    EXPECT_EQ(held(r2, "resistance"), 4700);
    EXPECT_EQ(r->field()->text().replace(QChar(0xA0), QLatin1Char(' ')), QString::fromUtf8("4.7 kΩ"));
    EXPECT_EQ(wished.size(), 1);
    EXPECT_EQ(ended.size(), 1);
    row(r1, "resistance")->field()->setFocus();
    EXPECT_EQ(wished.size(), 1) << "leaving the field enters nothing again";
}

TEST_F(ValuePanelTest, LeavingAFieldEntersWhatWasTyped) {
    type(row(c1, "capacitance"), "0,22u");
    row(r1, "resistance")->field()->setFocus();
    EXPECT_DOUBLE_EQ(held(c1, "capacitance"), 0.22e-6);
}

TEST_F(ValuePanelTest, ARefusedTextStaysWithItsReasonUntilEscape) {
    QSignalSpy wished(&panel, &ValuePanel::valueWished);
    ValueRow* r = row(r2, "resistance");
    for (const char* bad : {"4q7", "-5", "0", "12 F", ""}) {
        type(r, bad);
        if (*bad == 0) r->field()->clear(), r->field()->setModified(true);
        QTest::keyClick(r->field(), Qt::Key_Return);
        EXPECT_FALSE(r->refusal().isEmpty()) << bad;
        EXPECT_EQ(r->field()->text(), QString::fromUtf8(bad));
        EXPECT_EQ(r->field()->accessibleDescription(), r->refusal());
        panel.setCircuit(circuit, PartSet::A);
        EXPECT_EQ(r->field()->text(), QString::fromUtf8(bad)) << "lost to a refresh";
    }
    EXPECT_TRUE(wished.isEmpty());
    EXPECT_EQ(held(r2, "resistance"), 68e3);
    QTest::keyClick(r->field(), Qt::Key_Escape);
    EXPECT_TRUE(r->refusal().isEmpty());
    EXPECT_TRUE(r->field()->text().startsWith(QStringLiteral("68")));
}

TEST_F(ValuePanelTest, ARefusedTextGivesWayToAValueThatHasChanged) {
    ValueRow* r = row(r2, "resistance");
    type(r, "-5");
    QTest::keyClick(r->field(), Qt::Key_Return);
    ASSERT_FALSE(r->refusal().isEmpty());
    emit panel.valueWished({r2, "resistance"}, 33e3, 0); // as undo or another file would change it
    EXPECT_TRUE(r->refusal().isEmpty());
    EXPECT_TRUE(r->field()->text().startsWith(QStringLiteral("33"))) << r->field()->text().toStdString();
}

TEST_F(ValuePanelTest, EveryFieldSaysHowAValueMayBeTyped) {
    for (const ValueRow* r : panel.findChildren<ValueRow*>()) EXPECT_FALSE(r->field()->toolTip().isEmpty());
    const auto takes = [](ValueRow* r, const QString& example) {
        EXPECT_TRUE(r->field()->toolTip().contains(example)) << example.toStdString();
        r->field()->setFocus();
        r->field()->setText(example); // keyClicks knows no Ω
        r->field()->setModified(true);
        QTest::keyClick(r->field(), Qt::Key_Return);
        EXPECT_TRUE(r->refusal().isEmpty());
    };
    for (const char* example : {"4k7", "4.7k", "4,7 kΩ"}) {
        takes(row(r2, "resistance"), QString::fromUtf8(example));
        EXPECT_EQ(held(r2, "resistance"), 4700) << example;
    }
    for (const char* example : {"220n", "0.22u", "0,22 µF"}) {
        takes(row(c1, "capacitance"), QString::fromUtf8(example));
        EXPECT_EQ(held(c1, "capacitance"), 0.22e-6) << example;
    }
}

TEST_F(ValuePanelTest, AWishThatIsNotGrantedIsShownNoLongerThanTheGesture) {
    ValuePanel alone; // nobody listens to it
    alone.resize(420, 360);
    alone.setCircuit(circuit, PartSet::A);
    alone.show();
    ValueRow* r = alone.findChildren<ValueRow*>().at(1);
    QTest::mousePress(r->slider(), Qt::LeftButton, {}, {20, 10});
    EXPECT_NE(r->slider()->value(), 10e3);
    QTest::mouseRelease(r->slider(), Qt::LeftButton, {}, {20, 10});
    EXPECT_EQ(r->slider()->value(), 10e3);
    EXPECT_TRUE(r->field()->text().startsWith(QStringLiteral("10")));
}

TEST_F(ValuePanelTest, ASettingIsTypedInPerCent) {
    ValueRow* r = row(rv, "setting");
    for (const char* text : {"40", "40 %", "40%"}) {
        type(r, text);
        QTest::keyClick(r->field(), Qt::Key_Return);
        EXPECT_DOUBLE_EQ(held(rv, "setting"), 0.4) << text;
        type(r, "10");
        QTest::keyClick(r->field(), Qt::Key_Return);
    }
    type(r, "120");
    QTest::keyClick(r->field(), Qt::Key_Return);
    EXPECT_FALSE(r->refusal().isEmpty());
    EXPECT_DOUBLE_EQ(held(rv, "setting"), 0.1);
}

TEST_F(ValuePanelTest, ARunOfKeysIsOneGestureThatQuietOrLeavingEnds) {
    QSignalSpy began(&panel, &ValuePanel::gestureBegan), ended(&panel, &ValuePanel::gestureEnded);
    ScaleSlider* slider = row(r1, "resistance")->slider();
    slider->setFocus();
    for (int k = 0; k < 5; ++k) QTest::keyClick(slider, Qt::Key_Right);
    EXPECT_NEAR(held(r1, "resistance"), 10e3 * std::pow(1.01, 5), 60);
    EXPECT_EQ(began.size(), 1);
    EXPECT_EQ(ended.size(), 0);
    QTest::keyClick(slider, Qt::Key_PageUp);
    QTest::keyClick(slider, Qt::Key_End);
    EXPECT_DOUBLE_EQ(held(r1, "resistance"), 100e3);
    row(r2, "resistance")->slider()->setFocus();
    EXPECT_EQ(ended.size(), 1);
    QTest::keyClick(row(r2, "resistance")->slider(), Qt::Key_Left);
    EXPECT_EQ(began.size(), 2);
    EXPECT_TRUE(ended.wait(2000)) << "quiet ends it";
}

TEST_F(ValuePanelTest, TheWheelScrollsPastASliderWithoutFocus) {
    ScaleSlider* slider = row(r1, "resistance")->slider();
    const auto turn = [&] {
        QWheelEvent event({30, 10}, slider->mapToGlobal(QPoint(30, 10)), {}, {0, 120}, Qt::NoButton,
                          Qt::NoModifier, Qt::NoScrollPhase, false);
        QApplication::sendEvent(slider, &event);
    };
    row(r2, "resistance")->field()->setFocus();
    turn();
    EXPECT_EQ(held(r1, "resistance"), 10e3);
    slider->setFocus();
    turn();
    EXPECT_GT(held(r1, "resistance"), 10e3);
}

TEST_F(ValuePanelTest, RowsAreKeptWhileThePartsAreTheSame) {
    ValueRow* before = row(r2, "resistance");
    Circuit other;
    for (const Part& p : circuit.parts()) {
        Values values = p.values;
        if (p.id == r2) values["resistance"] = 33e3;
        (void)other.addPart(p.kind, p.ref, values).value();
    }
    panel.setCircuit(other, PartSet::A);
    EXPECT_EQ(row(r2, "resistance"), before);
    EXPECT_TRUE(before->field()->text().startsWith(QStringLiteral("33")));
    (void)other.addPart(PartKind::resistor, "R9", {{"resistance", 1e3}}).value();
    panel.setCircuit(other, PartSet::A);
    EXPECT_EQ(panel.findChildren<ValueRow*>().size(), 7);
}

TEST_F(ValuePanelTest, TabGoesRowByRowAndTellsWhichPartIsMeant) {
    QSignalSpy activated(&panel, &ValuePanel::partActivated);
    QList<QWidget*> order;
    row(battery, "voltage")->slider()->setFocus();
    for (int k = 0; k < 4; ++k) {
        order << QApplication::focusWidget();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    EXPECT_EQ(order, (QList<QWidget*>{row(battery, "voltage")->slider(), row(battery, "voltage")->field(),
                                      row(r1, "resistance")->slider(), row(r1, "resistance")->field()}));
    EXPECT_EQ(activated.last().first().value<PartId>(), r2);
}

TEST_F(ValuePanelTest, SpeaksNameAndValueOfASlider) {
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(row(r1, "resistance")->slider());
    ASSERT_TRUE(spoken);
    EXPECT_EQ(spoken->role(), QAccessible::Slider);
    EXPECT_EQ(spoken->text(QAccessible::Name), QStringLiteral("R1 resistance"));
    EXPECT_EQ(spoken->text(QAccessible::Value).replace(QChar(0xA0), QLatin1Char(' ')),
              QString::fromUtf8("10 kΩ"));
    EXPECT_EQ(row(rv, "setting")->field()->accessibleName(), QStringLiteral("RV1 setting"));
}

TEST_F(ValuePanelTest, ARowThatGetsTheFocusIsInSight) {
    panel.resize(420, 80);
    QApplication::processEvents();
    for (ValueRow* r : {row(c1, "capacitance"), row(battery, "voltage")}) {
        r->slider()->setFocus(Qt::TabFocusReason);
        const QPoint middle = r->mapTo(panel.viewport(), r->rect().center());
        EXPECT_TRUE(panel.viewport()->rect().contains(middle)) << r->subject().ref;
    }
}

TEST_F(ValuePanelTest, BringsAPartIntoView) {
    panel.resize(420, 120);
    QApplication::processEvents();
    EXPECT_EQ(panel.verticalScrollBar()->value(), 0);
    panel.showPart(rv);
    EXPECT_GT(panel.verticalScrollBar()->value(), 0);
}

TEST_F(ValuePanelTest, LooksAsItShould) {
    type(row(c1, "capacitance"), "10 ohm");
    QTest::keyClick(row(c1, "capacitance")->field(), Qt::Key_Return);
    panel.showPart(r2);
    row(r2, "resistance")->slider()->setFocus();
    test::savePictures(panel, QStringLiteral("values"), {420, 330});
}

} // namespace
