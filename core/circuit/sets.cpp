#include "core/circuit/sets.h"

#include <algorithm>

namespace blinkwright::circuit {

bool setsDiffer(const Circuit& circuit) {
    const auto differsIn = [&](const Part& part) {
        const auto differs = [&](const auto& entry) {
            return circuit.value(PartSet::A, part.id, entry.first) !=
                   circuit.value(PartSet::B, part.id, entry.first);
        };
        return std::ranges::any_of(circuit.overrides(PartSet::A, part.id), differs) ||
               std::ranges::any_of(circuit.overrides(PartSet::B, part.id), differs);
    };
    return std::ranges::any_of(circuit.parts(), differsIn);
}

} // namespace blinkwright::circuit
