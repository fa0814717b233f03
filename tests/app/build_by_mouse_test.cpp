// The mole light, built by hand from nothing: parts from the strip, wires from pin to pin, values in their
// rows and in the dialogs of the parts. What comes out is the sample to the last digit.
#include "app/part_dialog.h"
#include "tests/app/hand.h"
#include "tests/app/program.h"
#include "tests/app/window_fixture.h"

#include <QComboBox>
#include <QLineEdit>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using circuit::PartKind;

class BuildByMouse : public WindowFixture {
  protected:
    // Room for the sample's layout: the far ends of it must be in view.
    BuildByMouse() : WindowFixture(app::Looks::light, {1600, 1000}), hand(*window) {
        QCoreApplication::processEvents();
        window->document().startWith();
        QCoreApplication::processEvents();
    }

    void typeValue(const char* ref, const char* value) {
        QLineEdit* field = row(ref).field();
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, QString::fromUtf8(value));
        QTest::keyClick(field, Qt::Key_Return);
    }
    /// Double-click, fields, Enter.
    void editPart(const char* ref, const std::vector<std::pair<const char*, const char*>>& values) {
        QTest::mouseDClick(hand.paper(), Qt::LeftButton, {}, hand.middle(ref));
        auto* dialog = window->findChild<app::PartDialog*>();
        ASSERT_NE(dialog, nullptr);
        for (const auto& [key, value] : values) {
            if (QLineEdit* field = dialog->field(key)) {
                field->selectAll();
                QTest::keyClicks(field, QString::fromUtf8(value));
            } else {
                QComboBox* choice = dialog->choice(key);
                ASSERT_NE(choice, nullptr) << key;
                choice->setFocus();
                QTest::keyClicks(choice, QString::fromUtf8(value));
            }
        }
        QTest::keyClick(dialog, Qt::Key_Return);
        EXPECT_FALSE(dialog->isVisible()) << ref;
        delete dialog;
    }

    Hand hand;
};

TEST_F(BuildByMouse, TheMoleLightReadsAsTheSampleAndUndoAndRedoGiveTheSameFiles) {
    const circuit::Circuit sample =
        io::readCircuit(bytesOf(test::sample("mole-light")).toStdString()).value();
    const QByteArray nothing = text();

    // The viewport shows some 700 by 600 units at least; the sample's layout goes from x = -350 to 190.
    const QPointF shift = window->hookup().inDrawing(hand.paper()->rect().center()) - QPointF(-80, 0);
    for (const circuit::Part& part : sample.parts()) {
        const circuit::Placement* place = sample.placement(part.id);
        const QPointF onGrid(10 * std::round((place->x + shift.x()) / 10),
                             10 * std::round((place->y + shift.y()) / 10));
        ASSERT_TRUE(hand.paper()->rect().contains(hand.at(onGrid)));
        hand.add(part.kind, onGrid, place->turn);
        ASSERT_NE(circuit().findRef(part.ref), nullptr) << part.ref;
        EXPECT_EQ(circuit().placement(hand.part(part.ref.c_str()))->turn, place->turn) << part.ref;
    }
    // Each net: its first pin wired to each of the others.
    for (const circuit::Net& net : sample.nets())
        for (std::size_t k = 1; k < net.pins.size(); ++k) {
            const std::string from = sample.pinText(net.pins.front()), to = sample.pinText(net.pins[k]);
            hand.drag(hand.pin(from.c_str()), hand.pin(to.c_str()));
            const auto a = circuit().pinNamed(from), b = circuit().pinNamed(to);
            ASSERT_TRUE(circuit().netOf(a.value())) << from << " to " << to;
            ASSERT_EQ(circuit().netOf(a.value()), circuit().netOf(b.value())) << from << " to " << to;
        }
    EXPECT_NE(circuit().findNet("supply"), nullptr);
    EXPECT_NE(circuit().findNet("ground"), nullptr);

    typeValue("BT1", "6 V");
    typeValue("R2", "68k");
    typeValue("C2", "10n");
    typeValue("C3", "100u");
    typeValue("R3", "270");
    editPart("BT1", {{"resistance", "0.6"}, {"capacity", "2300 mAh"}, {"end_voltage", "4.5"}});
    editPart("C1",
             {{"esr", "2"}, {"leakage_resistance", "10M"}, {"rated_voltage", "25"}, {"polarised", "yes"}});
    editPart("C2", {{"tolerance", "10 %"}});
    editPart("C3", {{"esr", "0.5"}, {"rated_voltage", "16"}, {"polarised", "yes"}});
    editPart("D1", {{"colour", "red"}});

    const QString file = inFolder("mine.blinkwright");
    ASSERT_TRUE(window->document().saveAs(file));
    const QByteArray mine = headlessReadings(file);
    EXPECT_EQ(mine, headlessReadings(test::sample("mole-light")));
    EXPECT_TRUE(mine.contains("\"blinks\""));

    // All the way back and all the way forth, each state the same file as before.
    QUndoStack& undo = window->document().undoStack();
    std::vector<QByteArray> states{text()};
    while (undo.canUndo()) {
        undo.undo();
        states.push_back(text());
    }
    EXPECT_EQ(states.back(), nothing);
    EXPECT_TRUE(circuit().parts().empty());
    EXPECT_EQ(states.size(), 1u + 9 + 17 + 5 + 5); // parts, wires, values in rows, dialogs
    for (auto state = states.rbegin() + 1; state != states.rend(); ++state) {
        ASSERT_TRUE(undo.canRedo());
        undo.redo();
        ASSERT_EQ(text(), *state);
    }
    EXPECT_FALSE(undo.canRedo());
    EXPECT_EQ(text(), bytesOf(file));
}

} // namespace
