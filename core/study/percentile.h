// Percentiles of a sample.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace blinkwright::study {

/// Linear between the neighbours in order. @param sorted ascending, not empty. @param share 0 to 1.
inline double percentile(const std::vector<double>& sorted, double share) {
    const double at = share * static_cast<double>(sorted.size() - 1);
    const auto low = static_cast<std::size_t>(at);
    const std::size_t high = std::min(low + 1, sorted.size() - 1);
    return sorted[low] + (at - static_cast<double>(low)) * (sorted[high] - sorted[low]);
}

} // namespace blinkwright::study
