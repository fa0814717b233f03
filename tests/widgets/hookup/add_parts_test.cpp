#include "widgets/hookup/add_parts.h"

#include <gtest/gtest.h>

namespace blinkwright::widgets::hookup {

namespace {

using circuit::Circuit;
using circuit::PartKind;

PartView viewAt(PartKind kind, const circuit::Placement& place) {
    PartView view;
    view.kind = kind;
    view.pose = poseOf(place);
    return view;
}
Box boxOf(const PartView& part) {
    return placed(extentOf(part.kind), part.pose);
}

TEST(NewParts, FirstOneStandsWhereItIsWantedOnTheGrid) {
    const auto place = freePlace({}, PartKind::resistor, {13, -27});
    EXPECT_EQ(place.x, 10);
    EXPECT_EQ(place.y, -30);
    EXPECT_EQ(place.turn, 90);
    EXPECT_EQ(freePlace({}, PartKind::timer, {0, 0}).turn, 0);
}

TEST(NewParts, ManyAtOneSpotLieOnNoneOfTheOthers) {
    std::vector<PartView> parts;
    for (int k = 0; k < 40; ++k) {
        const PartKind kind = circuit::allKinds[static_cast<std::size_t>(k) % std::size(circuit::allKinds)];
        const PartView next = viewAt(kind, freePlace(parts, kind, {0, 0}));
        for (const PartView& other : parts) ASSERT_FALSE(boxOf(next).meets(boxOf(other)));
        parts.push_back(next);
    }
}

TEST(NewParts, GoToTheNearestFreePlace) {
    const std::vector<PartView> timer{viewAt(PartKind::timer, {})};
    const auto place = freePlace(timer, PartKind::resistor, {0, 0});
    // Beside the timer's leads at 80, half a resistor's width of 8, and room of 20.
    EXPECT_LE(std::hypot(place.x, place.y), 130);
    EXPECT_GE(std::hypot(place.x, place.y), 100);
}

TEST(PastedParts, KeepTheirPlacesWhereTheseAreFreeAndElseGoDownAndRight) {
    Circuit copies;
    copies.place(copies.addPart(PartKind::diode, "D1").value(), {100, 100, 0, false, {}});
    EXPECT_EQ(freeShift({}, copies), (Point{0, 0}));
    const std::vector<PartView> there{viewAt(PartKind::diode, {100, 100, 0, false, {}})};
    const Point shift = freeShift(there, copies);
    EXPECT_EQ(shift.x, shift.y);
    EXPECT_GT(shift.x, 0);
    PartView pasted = there.front();
    pasted.pose.at = {100 + shift.x, 100 + shift.y};
    EXPECT_FALSE(boxOf(pasted).meets(boxOf(there.front())));
}

} // namespace

} // namespace blinkwright::widgets::hookup
