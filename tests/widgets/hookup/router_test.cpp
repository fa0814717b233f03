#include "widgets/hookup/router.h"

#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/layout.h"
#include "widgets/hookup/wiring.h"

#include <gtest/gtest.h>

#include <map>
#include <random>
#include <set>

namespace blinkwright::widgets::hookup {

namespace {

Point towards(Point a, Point b) {
    const auto sign = [](int v) { return (v > 0) - (v < 0); };
    return {pitch * sign(b.x - a.x), pitch * sign(b.y - a.y)};
}

/// What wires must hold, worked out from the segments alone.
class Wiring {
  public:
    Wiring(const RouterInput& input, const Routes& answer) : in(input), routes(answer) {
        for (const Segment& s : routes.segments) {
            EXPECT_TRUE(s.a.x == s.b.x || s.a.y == s.b.y);
            EXPECT_LT(s.a, s.b);
            const Point way = towards(s.a, s.b);
            for (Point p = s.a; p != s.b; p = {p.x + way.x, p.y + way.y}) {
                const Point next{p.x + way.x, p.y + way.y};
                const auto [it, fresh] = steps.emplace(std::pair(p, next), s.net);
                EXPECT_TRUE(fresh) << "nets " << it->second << " and " << s.net << " share a stretch";
                touched[p][s.net].insert(next);
                touched[next][s.net].insert(p);
            }
        }
    }

    void check() const {
        noWireEntersABody();
        noWireTouchesAForeignPin();
        netsMeetOnlyAtRightAngles();
        pinsOfEachNetAreJoined();
        dotsMarkBranches();
    }

    int dots(int net) const {
        return static_cast<int>(std::count_if(routes.dots.begin(), routes.dots.end(),
                                              [&](const Dot& d) { return d.net == net; }));
    }

  private:
    void noWireEntersABody() const {
        for (const auto& [at, nets] : touched)
            for (const Box& body : in.bodies)
                if (body.holds(at)) {
                    bool pin = false;
                    for (const RouterPin& p : in.pins) pin = pin || p.at == at;
                    EXPECT_TRUE(pin) << "a wire runs through a body at " << at.x << ", " << at.y;
                }
    }
    void noWireTouchesAForeignPin() const {
        for (const RouterPin& pin : in.pins)
            if (const auto it = touched.find(pin.at); it != touched.end()) {
                for (const auto& [net, ends] : it->second)
                    EXPECT_EQ(net, pin.net) << "at " << pin.at.x << ", " << pin.at.y;
            }
    }
    void netsMeetOnlyAtRightAngles() const {
        for (const auto& [at, nets] : touched) {
            if (nets.size() < 2) continue;
            EXPECT_EQ(nets.size(), 2U);
            for (const auto& [net, ends] : nets) {
                ASSERT_EQ(ends.size(), 2U) << "net " << net << " bends or ends on another net";
                const Point a = *ends.begin(), b = *std::next(ends.begin());
                EXPECT_TRUE(a.x == b.x || a.y == b.y) << "net " << net << " bends on another net";
            }
        }
    }
    void pinsOfEachNetAreJoined() const {
        std::set<int> broken;
        for (const Missing& m : routes.missing) broken.insert(m.net);
        for (int net = 0; net < in.nets; ++net) {
            std::set<Point> pins, reached;
            for (const RouterPin& pin : in.pins)
                if (pin.net == net) pins.insert(pin.at);
            if (pins.empty() || broken.contains(net)) continue;
            std::vector<Point> todo{*pins.begin()};
            while (!todo.empty()) {
                const Point at = todo.back();
                todo.pop_back();
                if (!reached.insert(at).second) continue;
                if (const auto it = touched.find(at); it != touched.end())
                    if (const auto ends = it->second.find(net); ends != it->second.end())
                        todo.insert(todo.end(), ends->second.begin(), ends->second.end());
            }
            for (const Point pin : pins)
                EXPECT_TRUE(reached.contains(pin))
                    << "net " << net << " does not reach " << pin.x << ", " << pin.y;
        }
    }
    void dotsMarkBranches() const {
        std::set<std::pair<int, Point>> expected, given;
        for (const auto& [at, nets] : touched)
            for (const auto& [net, ends] : nets) {
                std::size_t branches = ends.size();
                for (const RouterPin& pin : in.pins)
                    if (pin.at == at && pin.net == net) ++branches;
                if (branches >= 3) expected.emplace(net, at);
            }
        for (const Dot& dot : routes.dots) given.emplace(dot.net, dot.at);
        EXPECT_EQ(given, expected);
    }

    const RouterInput& in;
    const Routes& routes;
    std::map<std::pair<Point, Point>, int> steps;
    std::map<Point, std::map<int, std::set<Point>>> touched;
};

RouterPin pinAt(int x, int y, int net, Point lead) {
    return {{x, y}, lead, net};
}

void lyingPart(RouterInput& in, int x, int y, int left, int right) {
    in.bodies.push_back({x - 20, y - 8, x + 20, y + 8});
    in.pins.push_back(pinAt(x - 30, y, left, {-pitch, 0}));
    in.pins.push_back(pinAt(x + 30, y, right, {pitch, 0}));
    in.nets = std::max({in.nets, left + 1, right + 1});
}

RouterInput inputFor(const circuit::Circuit& circuit) {
    const auto poses = layOut(circuit);
    std::vector<PartView> parts;
    for (const circuit::Part& part : circuit.parts())
        parts.push_back(viewOf(circuit, part, poses.at(part.id)));
    return routerInput(parts, circuit);
}

TEST(Router, JoinsFacingPinsByOneStraightWire) {
    RouterInput in;
    lyingPart(in, 0, 0, -1, 0);
    lyingPart(in, 120, 0, 0, -1);
    const Routes routes = route(in);
    ASSERT_EQ(routes.segments.size(), 1U);
    EXPECT_EQ(routes.segments[0], (Segment{0, {30, 0}, {90, 0}}));
    EXPECT_TRUE(routes.dots.empty());
}

TEST(Router, GoesAroundABodyInTheWay) {
    RouterInput in;
    lyingPart(in, 0, 0, -1, 0);
    lyingPart(in, 200, 0, 0, -1);
    in.bodies.push_back({80, -40, 120, 60});
    const Routes routes = route(in);
    Wiring(in, routes).check();
    EXPECT_TRUE(routes.missing.empty());
    // The way over the top is the shorter one.
    EXPECT_TRUE(std::any_of(routes.segments.begin(), routes.segments.end(),
                            [](const Segment& s) { return s.a.y < -40; }));
}

TEST(Router, PutsADotWhereThreeBranchesMeetAndNoneWhereNetsCross) {
    RouterInput in;
    lyingPart(in, 0, 0, -1, 0);
    lyingPart(in, 120, 0, 0, -1);
    in.pins.push_back(pinAt(60, 80, 0, {0, -pitch}));
    in.pins.push_back(pinAt(-60, 40, 1, {pitch, 0}));
    in.pins.push_back(pinAt(180, 40, 1, {-pitch, 0}));
    in.nets = 2;
    const Routes routes = route(in);
    const Wiring wiring(in, routes);
    wiring.check();
    EXPECT_EQ(wiring.dots(0), 1);
    EXPECT_EQ(wiring.dots(1), 0);
    EXPECT_EQ(routes.crossings, 1);
}

TEST(Router, NeverTouchesAnOpenPin) {
    RouterInput in;
    lyingPart(in, 0, 0, -1, 0);
    lyingPart(in, 120, 0, 0, -1);
    in.pins.push_back(pinAt(60, 0, -1, {0, -pitch}));
    const Routes routes = route(in);
    Wiring(in, routes).check();
    EXPECT_GT(routes.segments.size(), 1U);
    EXPECT_TRUE(routes.missing.empty());
}

TEST(Router, NamesAPinThatIsWalledInAndDrawsNothingThroughTheWall) {
    RouterInput in;
    lyingPart(in, 0, 0, -1, 0);
    lyingPart(in, 200, 0, 0, -1);
    in.bodies.insert(in.bodies.end(),
                     {{-80, -60, 80, -40}, {-80, 40, 80, 60}, {60, -60, 80, 60}, {-80, -60, -60, 60}});
    const Routes routes = route(in);
    Wiring(in, routes).check();
    ASSERT_EQ(routes.missing.size(), 1U);
    EXPECT_EQ(routes.missing[0].net, 0);
}

TEST(Router, HangsAllPinsOfARailOnTheRail) {
    RouterInput in;
    for (int i = 0; i < 4; ++i) {
        in.bodies.push_back({i * 100 - 8, -20, i * 100 + 8, 20});
        in.pins.push_back(pinAt(i * 100, -30, 0, {0, -pitch}));
    }
    in.nets = 1;
    in.rails = {{0, -100}};
    const Routes routes = route(in);
    Wiring(in, routes).check();
    EXPECT_NE(std::find(routes.segments.begin(), routes.segments.end(), Segment{0, {0, -100}, {300, -100}}),
              routes.segments.end());
    EXPECT_EQ(routes.segments.size(), 5U);
}

TEST(Router, HoldsItsRulesForPartsStrewnAtRandom) {
    std::mt19937 random(20240607);
    for (int round = 0; round < 25; ++round) {
        RouterInput in;
        const int parts = 6 + round, nets = 3 + round / 2;
        std::uniform_int_distribution<int> anyNet(-1, nets - 1), jitter(-2, 2);
        for (int i = 0; i < parts; ++i)
            lyingPart(in, i % 5 * 120 + pitch * jitter(random), i / 5 * 80 + pitch * jitter(random),
                      anyNet(random), anyNet(random));
        in.nets = nets;
        if (round % 2 == 0) in.rails = {{0, -90}, {1, (parts / 5 + 1) * 80 + 20}};
        const Routes routes = route(in);
        Wiring(in, routes).check();
        EXPECT_LE(routes.missing.size(), 2U) << "round " << round;
    }
}

TEST(Router, HoldsItsRulesForTheSamplesWithAndWithoutPlaces) {
    for (const char* name : {"mole-light", "buoy-pair", "winch-warning"}) {
        SCOPED_TRACE(name);
        const circuit::Circuit drawn = test::sample(name), bare = test::withoutDrawing(drawn);
        for (const circuit::Circuit* circuit : {&drawn, &bare}) {
            const RouterInput in = inputFor(*circuit);
            const Routes routes = route(in);
            Wiring(in, routes).check();
            EXPECT_TRUE(routes.missing.empty());
        }
    }
}

TEST(Router, HoldsItsRulesForSixtyParts) {
    const RouterInput in = inputFor(test::manyParts(60));
    const Routes routes = route(in);
    Wiring(in, routes).check();
    EXPECT_TRUE(routes.missing.empty());
}

TEST(Router, GivesEachRowOfBlinkersItsOwnRails) {
    const circuit::Circuit circuit = test::placed(test::manyParts(60), 4);
    std::vector<PartView> parts;
    for (const circuit::Part& part : circuit.parts())
        parts.push_back(viewOf(circuit, part, poseOf(*circuit.placement(part.id))));
    const RouterInput in = routerInput(parts, circuit);
    ASSERT_EQ(in.rails.size(), 4U); // two rows
    const Routes routes = route(in);
    Wiring(in, routes).check();
    EXPECT_TRUE(routes.missing.empty());
    // No wire of a rail's net leaves its row but on the riser beside all parts.
    for (const Segment& s : routes.segments)
        for (const Riser& riser : in.risers) {
            if (s.net != riser.net || s.a.x == riser.x) continue;
            EXPECT_LT(s.b.y - s.a.y, 420) << s.a.x << ", " << s.a.y;
        }
}

TEST(Router, JoinsRailsByTheirRiserAndStrayPinsToTheFirst) {
    RouterInput in;
    for (int i = 0; i < 6; ++i) {
        const int x = i % 3 * 100, y = i / 3 * 400;
        in.bodies.push_back({x - 8, y - 20, x + 8, y + 20});
        in.pins.push_back(pinAt(x, y - 30, 0, {0, -pitch}));
    }
    in.pins.push_back(pinAt(60, 200, 0, {0, -pitch}));
    in.nets = 1;
    in.rails = {{0, -100, -40, 40}, {0, 300, 360, 440}};
    in.risers = {{0, -60}};
    const Routes routes = route(in);
    Wiring(in, routes).check();
    EXPECT_TRUE(routes.missing.empty());
    for (const Segment wanted : {Segment{0, {-60, -100}, {-60, 300}}, {0, {-60, -100}, {200, -100}}})
        EXPECT_NE(std::ranges::find(routes.segments, wanted), routes.segments.end());
}

TEST(Router, CrossesFewWiresInTheSamples) {
    // The package's pin order asks for three crossings of an astable with one lamp at least: the wires 4-8,
    // 2-6 and 1-3-5 interleave around it pairwise. A few more are fair, a dozen would be a tangle.
    for (const char* name : {"mole-light", "buoy-pair", "winch-warning"})
        EXPECT_LE(route(inputFor(test::sample(name))).crossings, 8) << name;
}

TEST(Router, GivesTheSameWiresEveryTime) {
    const RouterInput in = inputFor(test::sample("buoy-pair"));
    const Routes a = route(in), b = route(in);
    EXPECT_EQ(a.segments, b.segments);
    EXPECT_EQ(a.dots, b.dots);
}

TEST(Router, GivesUpPolitelyOnADrawingOfAbsurdSize) {
    RouterInput in;
    lyingPart(in, 0, 0, -1, 0);
    lyingPart(in, 900000, 900000, 0, -1);
    const Routes routes = route(in);
    EXPECT_TRUE(routes.segments.empty());
    EXPECT_EQ(routes.missing.size(), 1U);
}

TEST(Router, AcceptsNothingAtAll) {
    EXPECT_TRUE(route({}).segments.empty());
}

} // namespace

} // namespace blinkwright::widgets::hookup
