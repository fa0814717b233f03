#include "widgets/pins/pins_view.h"

#include "core/circuit/edit.h"
#include "tests/widgets/hookup/samples.h"
#include "widgets/pins/pins_model.h"

#include <QAccessible>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::widgets;

class PinsViewTest : public testing::Test {
  protected:
    PinsViewTest() : circuit(widgets::test::sample("mole-light")), table(*view.findChild<QTableView*>()) {
        view.setCircuit(circuit);
        view.resize(600, 700);
        view.show();
    }
    std::vector<std::string> column(int which) const {
        std::vector<std::string> out;
        for (int row = 0; row < table.model()->rowCount(); ++row)
            out.push_back(table.model()->index(row, which).data().toString().toStdString());
        return out;
    }
    void filter(const char* text) { view.findChild<QLineEdit*>()->setText(QString::fromUtf8(text)); }
    circuit::PinRef pin(const char* text) const { return circuit.pinNamed(text).value(); }
    circuit::NetId net(const char* name) const { return circuit.findNet(name)->id; }

    circuit::Circuit circuit;
    PinsView view;
    QTableView& table;
};

TEST_F(PinsViewTest, ListsEveryPinOfEveryPart) {
    std::size_t pins = 0;
    for (const circuit::Part& part : circuit.parts()) pins += circuit::info(part.kind).pins.size();
    EXPECT_EQ(column(pinColumn).size(), pins);
    EXPECT_EQ(column(pinColumn).at(3), "U1:2");
    EXPECT_EQ(column(roleColumn).at(3), "trigger");
    EXPECT_EQ(column(netColumn).at(3), "timing");
}

TEST_F(PinsViewTest, ShowsADashForWhatIsNotKnown) {
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::JoinPin{pin("C2:plus"), std::nullopt}}));
    view.setCircuit(circuit);
    view.setVoltages({{net("timing"), 3.21456}, {net("ground"), 2e-13}, {net("lamp"), -0.0125}});
    filter("C2:plus");
    EXPECT_EQ(column(netColumn), std::vector<std::string>{"–"});
    EXPECT_EQ(column(voltageColumn), std::vector<std::string>{"–"});
    filter("U1:2");
    EXPECT_EQ(column(voltageColumn), std::vector<std::string>{"3.215\u00A0V"});
    filter("U1:1");
    EXPECT_EQ(column(voltageColumn), std::vector<std::string>{"0\u00A0V"});
    filter("D1:anode");
    EXPECT_EQ(column(voltageColumn), std::vector<std::string>{"-12.50\u00A0mV"});
    filter("U1:8");
    EXPECT_EQ(column(voltageColumn), std::vector<std::string>{"–"});
}

TEST_F(PinsViewTest, KeepsTheRowsThatHoldEveryWordOfTheFilter) {
    filter("timing");
    EXPECT_EQ(column(pinColumn), (std::vector<std::string>{"U1:2", "U1:6", "R2:2", "C1:plus"}));
    filter("resistor TIMING");
    EXPECT_EQ(column(pinColumn), std::vector<std::string>{"R2:2"});
    filter("no such thing");
    EXPECT_TRUE(column(pinColumn).empty());
    bool said = false;
    for (const QLabel* label : view.findChildren<QLabel*>())
        said |= label->isVisible() && label->text().contains("filter");
    EXPECT_TRUE(said);
}

TEST_F(PinsViewTest, SortsByNetWithOpenPinsLast) {
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::JoinPin{pin("U1:8"), std::nullopt}}));
    view.setCircuit(circuit);
    auto* sorting = view.findChild<QComboBox*>();
    sorting->setCurrentIndex(netColumn);
    emit sorting->activated(netColumn);
    const auto nets = column(netColumn);
    EXPECT_EQ(nets.front(), "control");
    EXPECT_EQ(nets.back(), "–");
    EXPECT_TRUE(std::is_sorted(nets.begin(), nets.end() - 1));
}

TEST_F(PinsViewTest, SortsByVoltageButOnlyWhenTheLineIsAtRest) {
    emit view.findChild<QComboBox*>()->activated(voltageColumn);
    view.setVoltages({{net("timing"), 3}, {net("lamp"), 2}, {net("output"), 10}});
    EXPECT_EQ(column(netColumn).front(), "lamp");
    view.setVoltages({{net("timing"), 1}, {net("lamp"), 2}, {net("output"), 10}}, false);
    EXPECT_EQ(column(netColumn).front(), "lamp") << "rows do not jump while it plays";
    view.setVoltages({{net("timing"), 1}, {net("lamp"), 2}, {net("output"), 10}});
    EXPECT_EQ(column(netColumn).front(), "timing");
    EXPECT_EQ(column(voltageColumn).back(), "–");
}

TEST_F(PinsViewTest, KeepsTheChosenPinWhenTheCircuitChanges) {
    view.selectPin(pin("R2:2"));
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::RemovePart{circuit.findRef("R1")->id}}));
    view.setCircuit(circuit);
    EXPECT_EQ(view.selectedPin(), pin("R2:2"));
    const circuit::PartId after = circuit.findRef("C1")->id;
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::RemovePart{circuit.findRef("R2")->id}}));
    view.setCircuit(circuit);
    ASSERT_TRUE(view.selectedPin());
    EXPECT_EQ(view.selectedPin()->part, after) << "the next part's pin comes in its place";
}

TEST_F(PinsViewTest, AChoiceByTheProgramIsNoWish) {
    QSignalSpy activated(&view, &PinsView::partActivated);
    view.selectPart(circuit.findRef("R2")->id);
    EXPECT_EQ(view.selectedPin(), pin("R2:1"));
    EXPECT_EQ(activated.count(), 0);
}

TEST_F(PinsViewTest, TellsAScreenReaderAWholeSentenceARow) {
    view.setVoltages({{net("timing"), 3.2}});
    view.selectPin(pin("U1:2"));
    const QString said = table.currentIndex().data(Qt::AccessibleTextRole).toString();
    EXPECT_EQ(said.toStdString(), "U1:2, 555 timer, bipolar, trigger, net timing, 3.200\u00A0V");
}

TEST_F(PinsViewTest, OffersNetsFirstAndThenTheOtherPins) {
    const QStringList offers = netOffers(pinRows(circuit), pin("R2:2"));
    EXPECT_EQ(offers.front(), "control");
    EXPECT_TRUE(offers.contains("U1:6"));
    EXPECT_FALSE(offers.contains("R2:2"));
    EXPECT_LT(offers.indexOf("timing"), offers.indexOf("BT1:plus"));
}

} // namespace
