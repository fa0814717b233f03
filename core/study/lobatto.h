// The five-point Gauss-Lobatto rule on [0, 1], exact to degree 7: both ends are among its points, so that the
// instants just after and just before a switching count. Abramowitz & Stegun, table 25.6.
//
//   for (std::size_t k = 0; k < lobatto::nodes.size(); ++k) sum += lobatto::weights[k] * f(lobatto::nodes[k]);
#pragma once

#include <array>

namespace blinkwright::study::lobatto {

inline constexpr std::array<double, 5> nodes = {0, 0.17267316464601143, 0.5, 0.82732683535398857, 1};
inline constexpr std::array<double, 5> weights = {1.0 / 20, 49.0 / 180, 16.0 / 45, 49.0 / 180, 1.0 / 20};

} // namespace blinkwright::study::lobatto
