// The second column of Values: Set B beside Set A, what follows, what is tied, and another circuit's values.
#include "core/circuit/set_edits.h"
#include "tests/widgets/pictures.h"
#include "widgets/values/row_menu.h"
#include "widgets/values/set_column.h"
#include "widgets/values/value_panel.h"

#include <QContextMenuEvent>
#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;
using namespace blinkwright::circuit;

namespace {

class SetColumn : public testing::Test {
  protected:
    SetColumn() {
        const auto add = [&](PartKind kind, const char* ref, Values values) {
            return circuit.addPart(kind, ref, std::move(values)).value();
        };
        battery = add(PartKind::supply, "BT1", {{"voltage", 6.0}});
        r2 = add(PartKind::resistor, "R2", {{"resistance", 68e3}});
        r3 = add(PartKind::resistor, "R3", {{"resistance", 270.0}});
        r4 = add(PartKind::resistor, "R4", {{"resistance", 270.0}});
        c1 = add(PartKind::capacitor, "C1", {{"capacitance", 10e-6}});
        EXPECT_TRUE(circuit.setOverride(PartSet::B, r2, "resistance", 33e3));
        panel.resize(800, 300);
        panel.show();
        refresh();
        // As the document would: a wish is an edit, and the circuit comes back.
        QObject::connect(&panel, &ValuePanel::secondWished, &panel,
                         [this](const ValueRef& which, double value, int) {
                             does(setValue(circuit, PartSet::B, which.part, which.key, value));
                         });
        QObject::connect(&panel, &ValuePanel::valueWished, &panel,
                         [this](const ValueRef& which, double value, int) {
                             does(setValue(circuit, PartSet::A, which.part, which.key, value));
                         });
        QObject::connect(&panel, &ValuePanel::followWished, &panel, [this](const ValueRef& which, bool on) {
            does(on ? followA(circuit, which.part, which.key).value()
                    : setValue(circuit, PartSet::B, which.part, which.key,
                               *circuit.value(PartSet::B, which.part, which.key)));
        });
    }
    void does(const Edit& edit) {
        EXPECT_TRUE(apply(circuit, edit));
        refresh();
    }
    void refresh() {
        panel.setCircuit(circuit, PartSet::A);
        panel.showSecond(circuit, PartSet::B, "Set B", false);
        QApplication::processEvents();
    }
    SetCell& cell(const char* ref) {
        for (SetCell* found : panel.findChildren<SetCell*>())
            if (found->row()->subject().ref == ref) return *found;
        throw std::runtime_error(ref);
    }
    ValueRow& first(const char* ref) {
        for (ValueRow* found : panel.findChildren<ValueRow*>())
            if (found->subject().ref == ref) return *found;
        throw std::runtime_error(ref);
    }
    static std::string text(ValueRow* row) {
        return row->field()->text().replace(QChar(0xA0), QLatin1Char(' ')).toStdString();
    }
    double ohms(PartSet set, PartId part) {
        return std::get<double>(*circuit.value(set, part, "resistance"));
    }
    RowMenu& openMenu(QWidget* on) {
        QContextMenuEvent event(QContextMenuEvent::Keyboard, {5, 5}, on->mapToGlobal(QPoint(5, 5)));
        QApplication::sendEvent(on, &event);
        return *panel.findChild<RowMenu*>();
    }
    static QAction& entry(QMenu& menu, const char* text) {
        for (QAction* action : menu.actions())
            if (action->text().remove('&') == QLatin1String(text)) return *action;
        throw std::runtime_error(text);
    }

    Circuit circuit;
    PartId battery, r2, r3, r4, c1;
    ValuePanel panel;
};

TEST_F(SetColumn, ShowsBothValuesUnderTheNamesOfTheirSets) {
    EXPECT_EQ(text(&first("R2")), "68 kΩ");
    EXPECT_EQ(text(cell("R2").row()), "33 kΩ");
    EXPECT_EQ(text(cell("R3").row()), "270 Ω");
    QStringList heads;
    for (const QLabel* label : panel.findChildren<QLabel*>())
        if (label->text().startsWith("Set ") && label->isVisible()) heads << label->text();
    EXPECT_EQ(heads.join(';').toStdString(), "Set A;Set B");
    EXPECT_EQ(cell("R2").row()->field()->accessibleName(), "R2 resistance in Set B");
    EXPECT_NEAR(cell("R2").row()->slider()->width(), first("R2").slider()->width(), 1);
}

TEST_F(SetColumn, HidesAndComesBack) {
    panel.hideSecond();
    EXPECT_FALSE(cell("R2").isVisible());
    EXPECT_TRUE(first("R2").isVisible());
    refresh();
    EXPECT_TRUE(cell("R2").isVisible());
}

TEST_F(SetColumn, ATypedValueIsAWishForBAlone) {
    QSignalSpy began(&panel, &ValuePanel::gestureBegan), ofA(&panel, &ValuePanel::valueWished),
        ofB(&panel, &ValuePanel::secondWished);
    QLineEdit* field = cell("R3").row()->field();
    EXPECT_TRUE(cell("R3").followButton()->isChecked());
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, "470");
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(ohms(PartSet::B, r3), 470);
    EXPECT_EQ(ohms(PartSet::A, r3), 270);
    EXPECT_EQ(ofA.size(), 0);
    EXPECT_EQ(ofB.size(), 1);
    ASSERT_EQ(began.size(), 1);
    EXPECT_EQ(began.first().at(1).value<PartSet>(), PartSet::B);
    EXPECT_FALSE(cell("R3").followButton()->isChecked()) << "B has a value of its own now";
}

TEST_F(SetColumn, WhatFollowsMovesWithA) {
    QLineEdit* field = first("R3").field();
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, "390");
    QTest::keyClick(field, Qt::Key_Return);
    EXPECT_EQ(text(cell("R3").row()), "390 Ω");
    EXPECT_EQ(ohms(PartSet::B, r3), 390);
}

TEST_F(SetColumn, TheButtonBetweenTakesAsValueAndGivesOneOfItsOwn) {
    FollowButton* button = cell("R2").followButton();
    EXPECT_FALSE(button->isChecked());
    EXPECT_TRUE(button->accessibleName().startsWith("R2 resistance"));
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Space);
    EXPECT_EQ(ohms(PartSet::B, r2), 68e3);
    EXPECT_TRUE(button->isChecked());
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_FALSE(button->isChecked());
    EXPECT_FALSE(followsA(circuit, r2, "resistance"));
    EXPECT_EQ(ohms(PartSet::B, r2), 68e3);
}

TEST_F(SetColumn, ARowsMenuOffersTiesOfOneUnitAndTheMarkNamesThem) {
    QSignalSpy tie(&panel, &ValuePanel::tieWished), untie(&panel, &ValuePanel::untieWished);
    RowMenu& menu = openMenu(&first("R4"));
    QStringList offered;
    QMenu* to = entry(menu, "Tie to").menu();
    for (const QAction* action : to->actions()) offered << action->text();
    EXPECT_EQ(offered.join(';').toStdString(), "R2;R3");
    EXPECT_FALSE(entry(menu, "Untie").isEnabled());
    to->actions().at(1)->trigger();
    ASSERT_EQ(tie.size(), 1);
    EXPECT_EQ(tie.first().at(0).value<ValueRef>(), (ValueRef{r4, "resistance"}));
    EXPECT_EQ(tie.first().at(1).value<ValueRef>(), (ValueRef{r3, "resistance"}));
    menu.close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);

    does(tieValues(circuit, {r4, "resistance"}, {r3, "resistance"}).value());
    const auto* mark = first("R4").findChild<TieMark*>();
    EXPECT_TRUE(mark->isVisible());
    EXPECT_EQ(mark->accessibleName(), "Moves together with R3");
    RowMenu& again = openMenu(&first("R4"));
    entry(again, "Untie").trigger();
    EXPECT_EQ(untie.size(), 1);
}

TEST_F(SetColumn, ShowsAnotherCircuitsValuesToBeLookedAtOnly) {
    Circuit other;
    (void)other.addPart(PartKind::capacitor, "C1", {{"capacitance", 4.7e-6}});
    (void)other.addPart(PartKind::resistor, "R3", {{"resistance", 150.0}});
    (void)other.addPart(PartKind::capacitor, "R4", {{"capacitance", 1e-6}}); // of another kind
    panel.showSecond(other, PartSet::A, "winch.blinkwright", true);
    EXPECT_EQ(text(cell("C1").row()), "4.7 µF");
    EXPECT_EQ(text(cell("R3").row()), "150 Ω");
    EXPECT_EQ(text(cell("R4").row()), "–");
    EXPECT_EQ(text(cell("R2").row()), "–");
    EXPECT_TRUE(cell("R3").row()->field()->isReadOnly());
    EXPECT_FALSE(cell("R3").row()->slider()->isEnabled());
    EXPECT_FALSE(cell("R3").followButton()->isVisible());
    refresh();
    EXPECT_EQ(text(cell("R2").row()), "33 kΩ");
    EXPECT_FALSE(cell("R2").row()->field()->isReadOnly());
}

TEST_F(SetColumn, KeepsItsSlidersWhereThePanelIsNarrow) {
    does(tieValues(circuit, {r4, "resistance"}, {r3, "resistance"}).value());
    panel.resize(480, 300);
    QTest::qWait(20);
    for (const char* ref : {"R2", "C1"}) {
        const SetCell& shown = cell(ref);
        EXPECT_LE(shown.mapTo(panel.viewport(), QPoint(shown.width(), 0)).x(), panel.viewport()->width());
        EXPECT_GE(shown.row()->slider()->width(), 60);
        EXPECT_GE(first(ref).slider()->width(), 60);
    }
}

TEST_F(SetColumn, LooksAsItShould) {
    does(tieValues(circuit, {r4, "resistance"}, {r3, "resistance"}).value());
    test::savePictures(panel, QStringLiteral("values-two-sets"), {800, 240});
    test::savePictures(panel, QStringLiteral("values-two-sets-narrow"), {480, 240});
}

} // namespace
