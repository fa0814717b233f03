// What turning and mirroring do to a part is what they do to its picture: the drawing's own geometry is
// asked.
#include "core/circuit/part_edits.h"
#include "widgets/hookup/drawing_scene.h"

#include <gtest/gtest.h>

namespace blinkwright::widgets::hookup {

namespace {

using circuit::Circuit;
using circuit::PartKind;

struct DrawnParts : testing::Test {
    Circuit circuit;
    std::vector<circuit::PartId> parts;

    DrawnParts() {
        int k = 0;
        for (const PartKind kind : circuit::allKinds) {
            const circuit::Placement place{200.0 * (k % 3), 300.0 * (k / 3), 90 * (k % 4), k % 3 == 1, {}};
            auto added = addPart(circuit, kind, place);
            EXPECT_TRUE(apply(circuit, added.value().edit));
            parts.push_back(added.value().parts.front());
            ++k;
        }
    }
    circuit::Places places() const {
        circuit::Places all;
        for (const auto part : parts) all[part] = *circuit.placement(part);
        return all;
    }
    std::vector<QPointF> pins() const {
        Drawing drawing;
        drawing.show(circuit);
        DrawingScene scene(drawing);
        std::vector<QPointF> all;
        for (const PartView& part : drawing.parts())
            for (int pin = 0; pin < static_cast<int>(pinsOf(part).size()); ++pin)
                all.push_back(scene.pinPoint({part.id, pin}));
        return all;
    }
    /// The middle of all places, where a group turns: 0 to 400 and 0 to 600.
    static constexpr double x = 200, y = 300;
};

TEST_F(DrawnParts, AGroupInAMirrorHasEachPinOnTheOtherSide) {
    const auto before = pins();
    ASSERT_TRUE(apply(circuit, mirrorParts(circuit, places()).value()));
    const auto after = pins();
    for (std::size_t k = 0; k < before.size(); ++k)
        EXPECT_EQ(after[k], QPointF(2 * x - before[k].x(), before[k].y())) << k;
}

TEST_F(DrawnParts, ATurnedGroupHasEachPinAQuarterFurtherClockwise) {
    const auto before = pins();
    ASSERT_TRUE(apply(circuit, turnParts(circuit, places()).value()));
    const auto after = pins();
    for (std::size_t k = 0; k < before.size(); ++k)
        EXPECT_EQ(after[k], QPointF(x - (before[k].y() - y), y + (before[k].x() - x))) << k;
}

} // namespace

} // namespace blinkwright::widgets::hookup
