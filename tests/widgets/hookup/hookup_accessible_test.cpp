// What a screen reader is told about the Hook-up.
#include "core/circuit/edit.h"
#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/drawing.h"
#include "widgets/hookup/hookup_view.h"

#include <QAccessible>
#include <QTest>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using widgets::HookupView;

std::string plain(QString text) {
    return text.replace(QChar(0xA0), u' ').toStdString();
}

class HookupAccessible : public testing::Test {
  protected:
    HookupAccessible() : circuit(widgets::test::sample("mole-light")) {
        view.resize(900, 700);
        view.setCircuit(circuit);
        view.show();
        view.fit();
        top = QAccessible::queryAccessibleInterface(&view);
    }
    QAccessibleInterface* part(const char* ref) const {
        for (int k = 0; k < top->childCount(); ++k)
            if (top->child(k)->text(QAccessible::Name).startsWith(QLatin1String(ref) + u','))
                return top->child(k);
        ADD_FAILURE() << ref;
        return nullptr;
    }
    static std::string name(QAccessibleInterface* item) { return plain(item->text(QAccessible::Name)); }

    circuit::Circuit circuit;
    HookupView view;
    QAccessibleInterface* top = nullptr;
};

TEST_F(HookupAccessible, TheDrawingHasItsPartsAsChildren) {
    ASSERT_NE(top, nullptr);
    EXPECT_EQ(top->role(), QAccessible::Canvas);
    EXPECT_EQ(name(top), "Hook-up");
    ASSERT_EQ(top->childCount(), static_cast<int>(circuit.parts().size()));
    for (int k = 0; k < top->childCount(); ++k) {
        QAccessibleInterface* child = top->child(k);
        ASSERT_NE(child, nullptr);
        EXPECT_TRUE(child->isValid());
        EXPECT_EQ(child, top->child(k)) << "asked twice, the same child";
        EXPECT_EQ(child->parent(), top);
        EXPECT_EQ(top->indexOfChild(child), k);
    }
    EXPECT_EQ(top->child(-1), nullptr);
    EXPECT_EQ(top->child(top->childCount()), nullptr);
}

TEST_F(HookupAccessible, PartsAreCalledByDesignatorKindAndValue) {
    EXPECT_EQ(name(part("R1")), "R1, resistor, 10 kΩ");
    EXPECT_EQ(name(part("U1")), "U1, 555 timer, bipolar");
    EXPECT_EQ(name(part("D1")), "D1, lamp (LED), red");
}

TEST_F(HookupAccessible, PinsAreCalledByNumberRoleAndNet) {
    QAccessibleInterface* timer = part("U1");
    ASSERT_EQ(timer->childCount(), 8);
    EXPECT_EQ(name(timer->child(1)), "pin 2, trigger, on net timing");
    EXPECT_EQ(name(timer->child(6)), "pin 7, discharge, on net discharge");
    EXPECT_EQ(name(part("D1")->child(0)), "anode, on net lamp");
    EXPECT_EQ(timer->child(1)->parent(), timer);
    EXPECT_EQ(timer->indexOfChild(timer->child(5)), 5);
}

TEST_F(HookupAccessible, AnOpenPinIsInNoNet) {
    const circuit::PinRef pin = circuit.pinNamed("C2:plus").value();
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::JoinPin{pin, std::nullopt}}));
    view.setCircuit(circuit);
    EXPECT_EQ(name(part("C2")->child(0)), "plus, in no net");
}

TEST_F(HookupAccessible, TheChosenPartIsSelectedAndHasTheFocus) {
    view.activateWindow();
    view.setFocus();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&view));
    view.select(circuit.findRef("R2")->id);
    EXPECT_TRUE(part("R2")->state().selected);
    EXPECT_TRUE(part("R2")->state().focused);
    EXPECT_FALSE(part("R1")->state().selected);
    EXPECT_EQ(top->focusChild(), part("R2"));
    ASSERT_NE(part("R3")->actionInterface(), nullptr);
    part("R3")->actionInterface()->doAction(QAccessibleActionInterface::setFocusAction());
    EXPECT_EQ(view.selected(), circuit.findRef("R3")->id);
}

TEST_F(HookupAccessible, WhatLiesAtAPlaceIsFoundThere) {
    for (const circuit::Part& each : circuit.parts()) {
        QAccessibleInterface* item = part(each.ref.c_str());
        for (int pin = 0; pin < item->childCount(); ++pin) {
            const QPoint at = item->child(pin)->rect().center();
            QAccessibleInterface* found = top->childAt(at.x(), at.y());
            ASSERT_EQ(found, item) << each.ref << pin;
            EXPECT_EQ(found->childAt(at.x(), at.y()), item->child(pin)) << each.ref << pin;
            EXPECT_TRUE(item->rect().contains(item->child(pin)->rect()));
        }
    }
    const QPoint corner = view.viewport()->mapToGlobal(QPoint(1, 1));
    EXPECT_EQ(top->childAt(corner.x(), corner.y()), nullptr);
}

TEST_F(HookupAccessible, APlaceMovesWithTheView) {
    const QRect before = part("R1")->rect();
    view.zoomBy(1.5);
    EXPECT_NE(part("R1")->rect(), before);
}

TEST_F(HookupAccessible, APartThatIsGoneIsNoLongerValid) {
    QAccessibleInterface* lamp = part("D1");
    QAccessibleInterface* pin = lamp->child(0);
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::RemovePart{circuit.findRef("D1")->id}}));
    view.setCircuit(circuit);
    EXPECT_FALSE(lamp->isValid());
    EXPECT_FALSE(pin->isValid());
    EXPECT_EQ(lamp->text(QAccessible::Name), QString());
    EXPECT_EQ(lamp->rect(), QRect());
    EXPECT_EQ(lamp->childCount(), 0);
    EXPECT_EQ(top->childCount(), static_cast<int>(circuit.parts().size()));
}

} // namespace
