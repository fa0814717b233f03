// A point of the trajectory.
#pragma once

#include "core/engine/network.h"

#include <vector>

namespace blinkwright::engine {

/// Capacitor voltages y and port voltages u in one vector, port currents and slopes.
struct Point {
    int n = 0;
    std::vector<double> z, i, slope; ///< z is padded to the stride of the reduced equations

    const double* y() const { return z.data(); }
    const double* u() const { return z.data() + n; }
    double* y() { return z.data(); }
    double* u() { return z.data() + n; }
    void resize(const Reduced& reduced) {
        n = reduced.n;
        z.resize(static_cast<std::size_t>(reduced.stride));
        i.resize(static_cast<std::size_t>(reduced.m));
        slope.resize(static_cast<std::size_t>(reduced.m));
    }
};

} // namespace blinkwright::engine
