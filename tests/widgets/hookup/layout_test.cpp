#include "widgets/hookup/layout.h"

#include "tests/case_names.h"
#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/drawing.h"

#include <gtest/gtest.h>

namespace blinkwright::widgets::hookup {

namespace {

using circuit::Circuit;
using circuit::PartKind;

constexpr TimerLook bothLooks[] = {TimerLook::package, TimerLook::block};

void expectNoOverlap(const Circuit& circuit, const std::map<circuit::PartId, Pose>& poses,
                     TimerLook look = TimerLook::package) {
    ASSERT_EQ(poses.size(), circuit.parts().size());
    const auto extent = [&](const circuit::Part& p) {
        return placed(extentOf(p.kind, look), poses.at(p.id));
    };
    for (std::size_t i = 0; i < circuit.parts().size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            const circuit::Part &a = circuit.parts()[i], &b = circuit.parts()[k];
            EXPECT_FALSE(extent(a).meets(extent(b))) << a.ref << " on " << b.ref;
        }
    for (const auto& [id, pose] : poses)
        EXPECT_TRUE(pose.at.x % pitch == 0 && pose.at.y % pitch == 0) << "off the grid";
}

class SampleLayout : public testing::TestWithParam<std::string> {};

TEST_P(SampleLayout, KeepsStatedPlaces) {
    const Circuit circuit = test::sample(GetParam());
    const auto poses = layOut(circuit);
    for (const circuit::Part& part : circuit.parts()) {
        const circuit::Placement* stated = circuit.placement(part.id);
        ASSERT_NE(stated, nullptr) << part.ref << " of a sample has no place";
        EXPECT_EQ(poses.at(part.id), poseOf(*stated)) << part.ref;
    }
    expectNoOverlap(circuit, poses);
}

TEST_P(SampleLayout, WithoutPlacesOverlapsNothing) {
    const Circuit circuit = test::withoutDrawing(test::sample(GetParam()));
    for (const TimerLook look : bothLooks) expectNoOverlap(circuit, layOut(circuit, look), look);
}

TEST_P(SampleLayout, PutsTimingRightOutputLeftAndSupplyFarLeft) {
    const Circuit circuit = test::withoutDrawing(test::sample(GetParam()));
    for (const TimerLook look : bothLooks) {
        const auto poses = layOut(circuit, look);
        const auto x = [&](const char* ref) { return poses.at(circuit.findRef(ref)->id).at.x; };
        for (const char* timing : {"R1", "R2", "C1", "C2"}) EXPECT_GT(x(timing), x("U1")) << timing;
        for (const char* output : {"R3", "D1"}) EXPECT_LT(x(output), x("U1")) << output;
        for (const circuit::Part& part : circuit.parts())
            EXPECT_LE(x("BT1"), x(part.ref.c_str())) << part.ref;
    }
}

/// Of all wires together.
double lengthOf(const Circuit& circuit, TimerLook look) {
    Drawing drawing;
    drawing.setStyle({Shapes::iec60617, look});
    drawing.show(circuit);
    double sum = 0;
    for (const Segment& s : drawing.routes().segments)
        sum += std::abs(s.a.x - s.b.x) + std::abs(s.a.y - s.b.y);
    return sum;
}

TEST_P(SampleLayout, ThatIsStatedSuitsTheBlockAsWellAsThePackage) {
    const Circuit circuit = test::sample(GetParam());
    EXPECT_LT(lengthOf(circuit, TimerLook::block), 1.05 * lengthOf(circuit, TimerLook::package));
}

TEST_P(SampleLayout, LabelsCoverNoSymbolNoWireAndNoOtherLabel) {
    const Circuit drawn = test::sample(GetParam()), bare = test::withoutDrawing(drawn);
    for (const auto& [circuit, look] :
         {std::pair(&drawn, TimerLook::package), std::pair(&bare, TimerLook::package),
          std::pair(&drawn, TimerLook::block), std::pair(&bare, TimerLook::block)}) {
        SCOPED_TRACE(look == TimerLook::package ? "package" : "block");
        SCOPED_TRACE(circuit == &drawn ? "drawn" : "without places");
        Drawing drawing;
        drawing.setStyle({Shapes::ieee315, look}); // both shapes take the same room
        drawing.show(*circuit);
        for (std::size_t i = 0; i < drawing.labels().size(); ++i) {
            const QRectF label = drawing.labels()[i].rect;
            const std::string ref = circuit->parts()[i].ref;
            if (label.isEmpty()) continue;
            for (const PartView& part : drawing.parts()) {
                const Box box = placed(bodyOf(part), part.pose);
                EXPECT_FALSE(
                    label.intersects(QRectF(QPointF(box.left, box.top), QPointF(box.right, box.bottom))))
                    << ref << " on " << part.ref.toStdString();
            }
            for (std::size_t k = 0; k < i; ++k)
                EXPECT_FALSE(label.intersects(drawing.labels()[k].rect))
                    << ref << " on " << circuit->parts()[k].ref;
            for (const Segment& s : drawing.routes().segments)
                EXPECT_FALSE(s.a.x < label.right() && s.b.x > label.left() && s.a.y < label.bottom() &&
                             s.b.y > label.top())
                    << ref << " on a wire at " << s.a.x << ", " << s.a.y;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Hookup, SampleLayout, testing::Values("mole-light", "buoy-pair", "winch-warning"),
                         [](const auto& row) { return tests::caseName(row.param); });

TEST(Layout, OfSixtyPartsOverlapsNothing) {
    const Circuit circuit = test::manyParts(60);
    expectNoOverlap(circuit, layOut(circuit));
}

TEST(Layout, OfPartsThatNothingJoinsOverlapsNothing) {
    Circuit circuit;
    int n = 0;
    for (int round = 0; round < 3; ++round)
        for (const PartKind kind : circuit::allKinds)
            ASSERT_TRUE(circuit.addPart(kind, "X" + std::to_string(++n), test::leastValues(kind)).ok());
    expectNoOverlap(circuit, layOut(circuit));
}

TEST(Layout, FitsUnplacedPartsAmongPlacedOnes) {
    Circuit circuit = test::withoutDrawing(test::sample("mole-light"));
    circuit.place(circuit.findRef("U1")->id, {300, 200, 0, false, {}});
    circuit.place(circuit.findRef("R1")->id, {460, 90, 90, false, {}});
    const auto poses = layOut(circuit);
    EXPECT_EQ(poses.at(circuit.findRef("U1")->id).at, (Point{300, 200}));
    expectNoOverlap(circuit, poses);
}

TEST(Geometry, TurnsClockwiseAfterMirroring) {
    EXPECT_EQ(placed(Point{-30, 0}, Pose{{100, 50}, 90, false}), (Point{100, 20}));
    EXPECT_EQ(placed(Point{0, -30}, Pose{{0, 0}, 90, false}), (Point{30, 0}));
    EXPECT_EQ(placed(Point{-30, 0}, Pose{{0, 0}, 0, true}), (Point{30, 0}));
    EXPECT_EQ(placed(Point{0, -30}, Pose{{0, 0}, 270, true}), (Point{-30, 0}));
}

TEST(Geometry, SnapsPlacesToTheGridAndTurnsToQuarters) {
    EXPECT_EQ(poseOf({123.4, -17, 450, false, {}}), (Pose{{120, -20}, 90, false}));
    EXPECT_EQ(poseOf({0, 0, -90, true, {}}), (Pose{{0, 0}, 270, true}));
}

TEST(Geometry, PinsLieOnTheGridOutsideTheBody) {
    for (const TimerLook look : bothLooks)
        for (const PartKind kind : circuit::allKinds) {
            ASSERT_EQ(pinsOf(kind, look).size(), circuit::info(kind).pins.size());
            for (const Point pin : pinsOf(kind, look)) {
                EXPECT_EQ(pin.x % pitch, 0);
                EXPECT_EQ(pin.y % pitch, 0);
                EXPECT_FALSE(bodyOf(kind, look).grown(clearance).holds(pin)) << circuit::info(kind).name;
            }
        }
}

TEST(Geometry, TimerShowsThePackageFromAbove) {
    const auto pins = pinsOf(PartKind::timer, TimerLook::package);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_LT(pins[i].x, 0) << "pin " << i + 1 << " is on the left";
        EXPECT_GT(pins[i + 4].x, 0) << "pin " << i + 5 << " is on the right";
        EXPECT_EQ(pins[i].y, pins[7 - i].y) << "pins " << i + 1 << " and " << 8 - i << " face one another";
    }
    EXPECT_LT(pins[0].y, pins[3].y);
}

TEST(Geometry, TimerAsABlockHasTimingRightOutputLeftSupplyOnTopAndGroundBelow) {
    using namespace circuit::timerPin;
    const Point left{-pitch, 0}, right{pitch, 0}, up{0, -pitch}, down{0, pitch};
    const auto lead = [](int pin) { return leadOf(PartKind::timer, TimerLook::block, pin); };
    for (const int timing : {trigger, threshold, discharge, control})
        EXPECT_EQ(lead(timing), right) << timing;
    for (const int other : {output, reset}) EXPECT_EQ(lead(other), left) << other;
    EXPECT_EQ(lead(supply), up);
    EXPECT_EQ(lead(ground), down);
}

} // namespace

} // namespace blinkwright::widgets::hookup
