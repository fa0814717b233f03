// Small things that the files of a large board share.
#pragma once

#include <cstddef>
#include <limits>

namespace blinkwright::engine::large {

inline constexpr double never = std::numeric_limits<double>::infinity(); ///< [s]
inline constexpr double firstRadius_V = 0.3; ///< of a plan of which nothing is known yet
inline constexpr std::size_t mostFast = 3;   ///< modes of a board that are followed apart

/// A place in a container for a number that was counted as an int; not negative.
inline std::size_t at(int k) {
    return static_cast<std::size_t>(k);
}

/// Of two rows of n numbers.
inline double product(const double* row, const double* v, int n) {
    double sum = 0;
    for (int k = 0; k < n; ++k) sum += row[k] * v[k];
    return sum;
}

} // namespace blinkwright::engine::large
