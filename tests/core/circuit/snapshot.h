// A circuit as edits see it, to compare by: undo must bring back all of it.
//
//   const Snapshot before(c);
//   apply(c, apply(c, edit).value());
//   EXPECT_EQ(Snapshot(c), before);
#pragma once

#include "core/io/circuit_file.h"

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

} // namespace blinkwright::tests
