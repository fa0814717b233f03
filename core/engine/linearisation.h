// The reduced equations to first order about a point: what a step from there starts with.
#pragma once

#include "core/engine/network.h"

#include <vector>

namespace blinkwright::engine {

/// With G the slopes of the port currents and W = (I + Z G)^-1. All matrices row by row.
struct Linearisation {
    std::vector<double> W;           ///< m x m
    std::vector<double> portByState; ///< du/dy = W A, m x n
    std::vector<double> jacobian;    ///< dy'/dy = B - D G W A, n x n
    std::vector<int> swaps;

    /// @return false where the port equations are singular.
    bool compute(const Reduced& reduced, const double* slope);
};

} // namespace blinkwright::engine
