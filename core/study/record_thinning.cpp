#include "core/study/record_thinning.h"

#include <algorithm>
#include <numeric>

namespace blinkwright::study {

std::vector<std::size_t> keptSamples(std::span<const std::span<const double>> traces, std::size_t most) {
    const std::size_t count = traces.front().size();
    std::vector<std::size_t> kept;
    if (count <= most) {
        kept.resize(count);
        std::iota(kept.begin(), kept.end(), std::size_t{0});
        return kept;
    }
    const std::size_t stretches = (most - 2) / (2 * traces.size());
    kept.reserve(most);
    kept.push_back(0);
    for (std::size_t s = 0; s < stretches; ++s) {
        const std::size_t from = count * s / stretches, to = count * (s + 1) / stretches;
        const auto old = static_cast<std::ptrdiff_t>(kept.size());
        for (const std::span<const double> trace : traces) {
            const auto part = trace.subspan(from, to - from);
            const auto [low, high] = std::ranges::minmax_element(part);
            kept.push_back(from + static_cast<std::size_t>(low - part.begin()));
            kept.push_back(from + static_cast<std::size_t>(high - part.begin()));
        }
        std::sort(kept.begin() + old, kept.end());
    }
    kept.push_back(count - 1);
    kept.erase(std::unique(kept.begin(), kept.end()), kept.end());
    return kept;
}

} // namespace blinkwright::study
