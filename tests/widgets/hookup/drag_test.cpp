// A drawing that follows a circuit step by step is the drawing that a fresh one makes of it: nothing that is
// kept from before may show.
#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/drawing.h"
#include "widgets/hookup/wiring.h"

#include <gtest/gtest.h>

#include <random>

namespace blinkwright::widgets::hookup {

namespace {

using circuit::Circuit;

void expectAsOpenedAfresh(const Drawing& drawing, const Circuit& circuit, const std::string& when) {
    Drawing fresh;
    fresh.setStyle(drawing.style());
    fresh.show(circuit);
    EXPECT_EQ(drawing.parts(), fresh.parts()) << when;
    EXPECT_EQ(drawing.routes().segments, fresh.routes().segments) << when;
    EXPECT_EQ(drawing.routes(), fresh.routes()) << when;
    EXPECT_EQ(drawing.labels(), fresh.labels()) << when;
    EXPECT_EQ(drawing.bounds(), fresh.bounds()) << when;
}

/// A drag by steps of the grid, the way a hand goes: mostly on, sometimes turning.
class Hand {
  public:
    explicit Hand(std::uint32_t seed) : m_random(seed) {}
    int upTo(int n) { return std::uniform_int_distribution<int>(0, n - 1)(m_random); }
    void move(circuit::Placement& place) {
        if (upTo(4) == 0) m_way = {upTo(5) - 2, upTo(5) - 2};
        place.x += pitch * m_way.x;
        place.y += pitch * m_way.y;
        if (upTo(12) == 0) place.turn = (place.turn + 90) % 360;
        if (upTo(20) == 0) place.mirror = !place.mirror;
    }
    void drag(Circuit& circuit, Drawing& drawing, int frames, int checkEvery) {
        const circuit::PartId part =
            circuit.parts()[static_cast<std::size_t>(upTo(static_cast<int>(circuit.parts().size())))].id;
        circuit::Placement place = *circuit.placement(part);
        for (int frame = 0; frame < frames; ++frame) {
            move(place);
            circuit.place(part, place);
            drawing.show(circuit);
            if ((frame + 1) % checkEvery == 0)
                expectAsOpenedAfresh(drawing, circuit,
                                     circuit.find(part)->ref + ", frame " + std::to_string(frame));
            if (testing::Test::HasFailure()) return;
        }
    }

  private:
    std::mt19937 m_random;
    Point m_way{1, 0};
};

TEST(Dragging, LeavesTheDrawingOfTheSameSampleOpenedAfresh) {
    for (const char* name : {"mole-light", "buoy-pair", "winch-warning"})
        for (const TimerLook look : {TimerLook::package, TimerLook::block}) {
            SCOPED_TRACE(name);
            Circuit circuit = test::sample(name);
            Drawing drawing;
            drawing.setStyle({Shapes::iec60617, look});
            drawing.show(circuit);
            Hand hand(7);
            for (int drags = 0; drags < 8; ++drags) hand.drag(circuit, drawing, 12, 2);
        }
}

TEST(Dragging, LeavesTheDrawingOfSixtyPartsOpenedAfresh) {
    for (const int inARow : {0, 4}) {
        Circuit circuit = test::placed(test::manyParts(60), inARow);
        Drawing drawing;
        drawing.show(circuit);
        Hand hand(11);
        for (int drags = 0; drags < 6; ++drags) hand.drag(circuit, drawing, 18, 6);
    }
}

TEST(Dragging, KeepsWhatOtherPinsAndNetsAreGivenMeanwhile) {
    Circuit circuit = test::placed(test::manyParts(30), 2);
    Drawing drawing;
    drawing.show(circuit);
    Hand hand(3);
    for (int step = 0; step < 15; ++step) {
        hand.drag(circuit, drawing, 3, 3);
        Circuit other;
        std::map<circuit::PartId, circuit::PartId> ids;
        for (const circuit::Part& part : circuit.parts()) {
            ids[part.id] = other.addPart(part.kind, part.ref, part.values).value();
            other.place(ids.at(part.id), *circuit.placement(part.id));
        }
        for (const circuit::Net& net : circuit.nets()) { // now and then a pin is taken off
            const circuit::NetId id = other.addNet(net.name).value();
            for (const circuit::PinRef pin : net.pins) {
                if (hand.upTo(40) == 0) continue;
                ASSERT_TRUE(other.join({ids.at(pin.part), pin.pin}, id).ok());
            }
        }
        circuit = other;
        drawing.show(circuit);
        expectAsOpenedAfresh(drawing, circuit, "step " + std::to_string(step));
        if (HasFailure()) return;
    }
}

TEST(Dragging, LaysAnewOnlyTheWiresThatItCanReach) {
    Circuit circuit = test::placed(test::manyParts(200), 0);
    const circuit::PartId part = circuit.findRef("R214")->id;
    const auto input = [&] {
        std::vector<PartView> views;
        for (const circuit::Part& p : circuit.parts())
            views.push_back(viewOf(circuit, p, poseOf(*circuit.placement(p.id))));
        return routerInput(views, circuit);
    };
    Router router;
    router.route(input());
    const int all = router.searches();
    circuit::Placement place = *circuit.placement(part);
    place.x += pitch;
    circuit.place(part, place);
    const Routes routes = router.route(input());
    EXPECT_LT(router.searches(), all / 8);
    EXPECT_GT(router.searches(), 0);
    EXPECT_EQ(routes, route(input()));
    router.route(input());
    EXPECT_EQ(router.searches(), 0) << "nothing has moved";
}

TEST(Dragging, NamesAllAreasThatLookOtherwise) {
    Circuit circuit = test::sample("buoy-pair");
    Drawing drawing;
    drawing.show(circuit);
    circuit.place(circuit.findRef("R2")->id, {300, 10, 90, false, {}});
    const Routes before = drawing.routes();
    ASSERT_EQ(drawing.show(circuit), Drawing::Change::layout);
    ASSERT_FALSE(drawing.changedAreas().empty());
    const auto shown = [&](Point p) {
        return std::any_of(drawing.changedAreas().begin(), drawing.changedAreas().end(),
                           [p](const QRectF& area) { return area.contains(QPointF(p.x, p.y)); });
    };
    int differing = 0;
    for (const auto& [a, b] : {std::pair(&before, &drawing.routes()), std::pair(&drawing.routes(), &before)})
        for (const Segment& s : a->segments) {
            if (std::find(b->segments.begin(), b->segments.end(), s) != b->segments.end()) continue;
            ++differing;
            EXPECT_TRUE(shown(s.a) && shown(s.b));
        }
    EXPECT_GT(differing, 0);
}

} // namespace

} // namespace blinkwright::widgets::hookup
