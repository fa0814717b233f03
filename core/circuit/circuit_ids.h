// What everything in a circuit is called by, and what is kept without being understood.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <vector>

namespace blinkwright::circuit {

struct PartId {
    std::uint32_t n = 0;
    auto operator<=>(const PartId&) const = default;
};
struct NetId {
    std::uint32_t n = 0;
    auto operator<=>(const NetId&) const = default;
};

/// Keys that this version does not know: kept in their order and written back as they were.
struct Extra {
    std::string key;
    std::string json; ///< compact JSON text of the value
    bool operator==(const Extra&) const = default;
};
using Extras = std::vector<Extra>;

} // namespace blinkwright::circuit
