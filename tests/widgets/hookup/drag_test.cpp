// A drawing that follows a circuit step by step is the drawing that a fresh one makes of it: nothing that is
// kept from before may show.
#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/drawing.h"
#include "widgets/hookup/router_grid.h"
#include "widgets/hookup/wiring.h"

#include <gtest/gtest.h>

#include <random>
#include <set>

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

RouterInput inputOf(const Circuit& circuit) {
    std::vector<PartView> views;
    for (const circuit::Part& p : circuit.parts())
        views.push_back(viewOf(circuit, p, poseOf(*circuit.placement(p.id))));
    return routerInput(views, circuit);
}

TEST(Dragging, LaysAnewOnlyTheWiresThatItCanReach) {
    for (const int inARow : {0, 4}) {
        Circuit circuit = test::placed(test::manyParts(200), inARow);
        const circuit::PartId part = circuit.findRef("R214")->id;
        Router router;
        router.route(inputOf(circuit));
        const int all = router.searches();
        circuit::Placement place = *circuit.placement(part);
        place.x += pitch;
        circuit.place(part, place);
        const Routes routes = router.route(inputOf(circuit));
        EXPECT_LT(router.searches(), all / 8);
        EXPECT_GT(router.searches(), 0);
        EXPECT_EQ(routes, route(inputOf(circuit)));
        router.route(inputOf(circuit));
        EXPECT_EQ(router.searches(), 0) << "nothing has moved";
    }
}

/// A part that is carried from one place to another in a straight line, and back.
void carry(Circuit& circuit, const std::string& ref, Point way, int steps, auto&& eachStep) {
    const circuit::PartId part = circuit.findRef(ref)->id;
    circuit::Placement place = *circuit.placement(part);
    for (int step = 1; step <= 2 * steps; ++step) {
        place.x += step <= steps ? way.x : -way.x;
        place.y += step <= steps ? way.y : -way.y;
        circuit.place(part, place);
        eachStep(ref + ", step " + std::to_string(step));
        if (testing::Test::HasFailure()) return;
    }
}

TEST(Dragging, OutOverTheEdgeOfTheDrawingLaysNoMoreThanInside) {
    Circuit circuit = test::placed(test::manyParts(120), 0);
    // The last lamp and its resistor: rightwards the drawing grows, and the grid with it.
    const std::string last = std::to_string((circuit.parts().size() - 1) / 7);
    Router router;
    router.route(inputOf(circuit));
    const int all = router.searches();
    Box least = RouterGrid::areaFor(inputOf(circuit)), most = least;
    for (const char* ref : {"R2", "BT1"}) {
        const bool supply = ref[0] == 'B';
        carry(circuit, supply ? ref : ref + last, {supply ? -40 : 40, 0}, 10, [&](const std::string& when) {
            const RouterInput in = inputOf(circuit);
            const Routes routes = router.route(in);
            EXPECT_LT(router.searches(), all / 4) << when;
            EXPECT_EQ(routes, route(in)) << when;
            most = most.with(RouterGrid::areaFor(in));
        });
    }
    EXPECT_LT(most.left, least.left) << "the test has to change the grid on both sides";
    EXPECT_GT(most.right, least.right);
}

TEST(Dragging, FromRowToRowLeavesTheDrawingOpenedAfresh) {
    Circuit circuit = test::placed(test::manyParts(40), 2);
    Drawing drawing;
    drawing.show(circuit);
    std::set<std::size_t> rails;
    for (const char* ref : {"R22", "U1", "BT1"})
        carry(circuit, ref, {0, 30}, 16, [&](const std::string& when) {
            drawing.show(circuit);
            expectAsOpenedAfresh(drawing, circuit, when);
            rails.insert(inputOf(circuit).rails.size());
        });
    EXPECT_GT(rails.size(), 1U) << "the test has to make and unmake rows";
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
