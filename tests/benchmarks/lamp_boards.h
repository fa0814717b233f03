// The boards that the figures of the engine are about: one lamp, and two behind a coupling capacitor.
#pragma once

#include "tests/core/reference_circuits.h"

#include <string>
#include <vector>

namespace blinkwright {

struct LampBoard {
    std::string name; ///< as the figures' names end
    devices::Board board;
};

/// R1 10 kohm, R2 68 kohm, C1 10 uF at 9 V: some two cycles in three seconds.
inline std::vector<LampBoard> lampBoards() {
    using circuit::PartKind;
    Workbench one = tests::astable({}, false);
    one.part(PartKind::resistor, "R3", {{"resistance", 470.0}}).part(PartKind::lamp, "D1");
    one.net("output", {"R3:1"}).net("lamp", {"R3:2", "D1:anode"}).net("ground", {"D1:cathode"});
    return {{"one_lamp", one.board()}, {"two_lamps", tests::lampPair({}, 220, 1e-3).board()}};
}

} // namespace blinkwright
