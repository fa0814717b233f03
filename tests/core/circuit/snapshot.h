// A circuit as edits see it, to compare by: undo must bring back all of it.
//
//   const Snapshot before(c);
//   apply(c, apply(c, edit).value());
//   EXPECT_EQ(Snapshot(c), before);
#pragma once

#include "core/circuit/edit.h"
#include "core/io/circuit_file.h"

#include <gtest/gtest.h>

namespace blinkwright::tests {

/// Everything that an edit may touch, ids and places in lists included.
struct Snapshot {
    std::string text;
    std::vector<circuit::Part> parts;
    std::vector<circuit::Net> nets;
    std::vector<std::vector<circuit::ValueRef>> ties;
    std::vector<std::vector<circuit::PartId>> reels;
    explicit Snapshot(const circuit::Circuit& c)
        : text(io::writeCircuit(c)), parts(c.parts()), nets(c.nets()), ties(c.ties), reels(c.reels) {}
    bool operator==(const Snapshot&) const = default;
};

/// Does an edit under its text, checks that its inverse brings everything back and that doing it again is the
/// same, and leaves it done.
inline void does(circuit::Circuit& c, const circuit::Edit& edit, std::string_view text) {
    EXPECT_EQ(describe(c, edit), text);
    const Snapshot before(c);
    auto back = apply(c, edit);
    ASSERT_TRUE(back) << back.fault().message();
    const Snapshot after(c);
    auto again = apply(c, back.value());
    ASSERT_TRUE(again) << again.fault().message();
    EXPECT_EQ(Snapshot(c), before);
    ASSERT_TRUE(apply(c, again.value()));
    EXPECT_EQ(Snapshot(c), after);
}

inline void does(circuit::Circuit& c, const Result<circuit::Edit>& edit, std::string_view text) {
    ASSERT_TRUE(edit) << edit.fault().message();
    does(c, edit.value(), text);
}

} // namespace blinkwright::tests
