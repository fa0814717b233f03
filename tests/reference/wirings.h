// Boards of different wiring that the engine and the independent solver are both run on.
//
//   for (const Wiring& wiring : wirings()) run(wiring.bench.board());
#pragma once

#include "tests/core/workbench.h"

#include <ostream>
#include <string>
#include <vector>

namespace blinkwright::tests {

struct Wiring {
    std::string name; ///< a few words
    Workbench bench;
    int flashes = 4; ///< of the first timer
};

std::vector<Wiring> wirings();

/// What googletest prints for a case.
inline void PrintTo(const Wiring& wiring, std::ostream* out) {
    *out << wiring.name;
}

} // namespace blinkwright::tests
