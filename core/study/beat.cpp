#include "core/study/beat.h"

#include <numeric>

namespace blinkwright::study {

Beat beatOf(const std::vector<double>& times) {
    Beat beat;
    beat.times = static_cast<int>(times.size());
    if (times.empty()) return beat;
    const double n = beat.times, middle = (n - 1) / 2;
    const double mean = std::accumulate(times.begin(), times.end(), 0.0) / n;
    double along = 0;
    for (int k = 0; k < beat.times; ++k) {
        const double x = k - middle;
        beat.stretch += x * x;
        along += x * (times[static_cast<std::size_t>(k)] - mean);
    }
    beat.period_s = beat.stretch > 0 ? along / beat.stretch : 0;
    for (int k = 0; k < beat.times; ++k) {
        const double off = times[static_cast<std::size_t>(k)] - mean - (k - middle) * beat.period_s;
        beat.squares_s2 += off * off;
    }
    return beat;
}

} // namespace blinkwright::study
