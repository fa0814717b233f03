#include "core/circuit/net_text.h"

#include "tests/core/workbench.h"

#include <gmock/gmock.h>

namespace blinkwright::circuit {
namespace {

class NetText : public testing::Test {
  protected:
    NetText() {
        bench.part(PartKind::resistor, "R1", {{"resistance", 1e3}})
            .part(PartKind::resistor, "R2", {{"resistance", 1e3}})
            .part(PartKind::resistor, "R3", {{"resistance", 1e3}});
        bench.net("left", {"R1:1", "R2:1", "R3:1"}).net("right", {"R1:2", "R2:2"});
    }
    PinRef pin(const char* text) const { return bench.circuit.pinNamed(text).value(); }
    std::string netOf(const char* text) const {
        const auto net = bench.circuit.netOf(pin(text));
        return net ? bench.circuit.find(*net)->name : "none";
    }
    /// The fault of what was typed, or nothing when it was done or is there already.
    std::string type(const char* at, const char* text) {
        auto edit = editForNetText(bench.circuit, pin(at), text);
        changed = edit.has_value();
        if (!edit) return {};
        if (!*edit) return edit->fault().message();
        return apply(bench.circuit, edit->value()) ? "" : "refused";
    }
    Workbench bench;
    bool changed = false;
};

TEST_F(NetText, ANameOfANetMovesThePinAloneIntoIt) {
    EXPECT_EQ(type("R1:1", " right "), "");
    EXPECT_EQ(netOf("R1:1"), "right");
    EXPECT_EQ(netOf("R2:1"), "left");
}

TEST_F(NetText, ANewNameMakesANet) {
    EXPECT_EQ(type("R3:2", "lamp"), "");
    EXPECT_EQ(netOf("R3:2"), "lamp");
}

TEST_F(NetText, APinMeansTheNetThatItIsIn) {
    EXPECT_EQ(type("R3:2", "R1:2"), "");
    EXPECT_EQ(netOf("R3:2"), "right");
}

TEST_F(NetText, TwoOpenPinsComeIntoANewNet) {
    bench.open("R1:2").open("R2:2");
    EXPECT_EQ(type("R1:2", "R2:2"), "");
    EXPECT_EQ(netOf("R1:2"), netOf("R2:2"));
    EXPECT_NE(netOf("R1:2"), "none");
}

TEST_F(NetText, AnEmptyTextTakesThePinOff) {
    EXPECT_EQ(type("R3:1", "  "), "");
    EXPECT_EQ(netOf("R3:1"), "none");
    EXPECT_EQ(netOf("R1:1"), "left");
}

TEST_F(NetText, WhatIsThereAlreadyIsNoChange) {
    for (const char* text : {"left", "R2:1", "R1:1"}) {
        EXPECT_EQ(type("R1:1", text), "");
        EXPECT_FALSE(changed) << text;
    }
    type("R3:2", "");
    EXPECT_FALSE(changed);
}

TEST_F(NetText, ASlipInAPinIsToldAndMakesNoNet) {
    EXPECT_THAT(type("R3:2", "R1:5"), testing::HasSubstr("R1"));
    EXPECT_THAT(type("R3:2", "R3:2"), testing::HasSubstr("R3:2"));
    EXPECT_EQ(netOf("R3:2"), "none");
    EXPECT_EQ(bench.circuit.nets().size(), 2U);
}

} // namespace
} // namespace blinkwright::circuit
