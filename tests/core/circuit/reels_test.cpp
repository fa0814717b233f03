#include "core/circuit/reels.h"

#include <gtest/gtest.h>

namespace blinkwright::circuit {
namespace {

class Reels : public testing::Test {
  protected:
    Reels() {
        for (const char* ref : {"R1", "R2", "R3", "R4"})
            parts.push_back(circuit.addPart(PartKind::resistor, ref, {{"resistance", 1e3}}).value());
    }
    void apply(const Edit& edit) {
        auto back = circuit::apply(circuit, edit);
        ASSERT_TRUE(back);
    }
    Circuit circuit;
    std::vector<PartId> parts;
    using Lists = std::vector<std::vector<PartId>>;
};

TEST_F(Reels, TwoPartsMakeOneAndAThirdJoinsIt) {
    EXPECT_FALSE(reelOf(circuit, parts[0]));
    apply(onReelWith(circuit, parts[1], parts[0]));
    EXPECT_EQ(circuit.reels, (Lists{{parts[0], parts[1]}}));
    apply(onReelWith(circuit, parts[2], parts[1]));
    EXPECT_EQ(circuit.reels, (Lists{{parts[0], parts[1], parts[2]}}));
    EXPECT_EQ(reelOf(circuit, parts[2]), 0u);
}

TEST_F(Reels, APartLeavesItsReelForAnother) {
    circuit.reels = {{parts[0], parts[1], parts[2]}};
    apply(onReelWith(circuit, parts[2], parts[3]));
    EXPECT_EQ(circuit.reels, (Lists{{parts[0], parts[1]}, {parts[3], parts[2]}}));
}

TEST_F(Reels, OneThatIsLeftWithOnePartIsNone) {
    circuit.reels = {{parts[0], parts[1]}, {parts[2], parts[3]}};
    apply(offReel(circuit, parts[0]));
    EXPECT_EQ(circuit.reels, (Lists{{parts[2], parts[3]}}));
    apply(onReelWith(circuit, parts[3], parts[1]));
    EXPECT_EQ(circuit.reels, (Lists{{parts[1], parts[3]}}));
}

TEST_F(Reels, AnEditOfThemCanBeTakenBack) {
    auto back = circuit::apply(circuit, onReelWith(circuit, parts[1], parts[0]));
    ASSERT_TRUE(back);
    apply(back.value());
    EXPECT_TRUE(circuit.reels.empty());
}

} // namespace
} // namespace blinkwright::circuit
