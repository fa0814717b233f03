// The functions phi_0(z) = e^z, phi_k(z) = (phi_{k-1}(z) - 1/(k-1)!) / z of exponential integrators, for real
// z. V is double or Lanes.
#pragma once

#include "core/base/lanes.h"

namespace blinkwright::engine {

/// phi_0 to phi_5.
template <class V>
struct Phi {
    V value[6];
    BLINKWRIGHT_INLINE V operator[](int k) const { return value[k]; }
};

/// phi_0 to phi_5 at z. Relative error under 1e-12 for any z up to 700.
template <class V>
BLINKWRIGHT_INLINE Phi<V> phiFunctions(V z) {
    Phi<V> series, recursion;
    const auto near = lane::magnitude(z) < V(1);
    if (any(near)) {
        // The series of phi_5, then down: no difference of near numbers.
        constexpr double inverse[] = {1.0 / 1307674368000.0 / 16 / 17, // 1/17!, 1/16!, ... 1/5!
                                      1.0 / 1307674368000.0 / 16,
                                      1.0 / 1307674368000.0,
                                      1.0 / 87178291200.0,
                                      1.0 / 6227020800.0,
                                      1.0 / 479001600,
                                      1.0 / 39916800,
                                      1.0 / 3628800,
                                      1.0 / 362880,
                                      1.0 / 40320,
                                      1.0 / 5040,
                                      1.0 / 720,
                                      1.0 / 120};
        V sum(inverse[0]);
        for (int k = 1; k < 13; ++k) sum = sum * z + V(inverse[k]);
        series.value[5] = sum;
        series.value[4] = z * series.value[5] + V(1.0 / 24);
        series.value[3] = z * series.value[4] + V(1.0 / 6);
        series.value[2] = z * series.value[3] + V(1.0 / 2);
        series.value[1] = z * series.value[2] + V(1);
        series.value[0] = z * series.value[1] + V(1);
        if (all(near)) return series;
    }
    const V over = 1 / select(near, V(1), z);
    recursion.value[0] = lane::exponential(z);
    recursion.value[1] = (recursion.value[0] - V(1)) * over;
    recursion.value[2] = (recursion.value[1] - V(1)) * over;
    recursion.value[3] = (recursion.value[2] - V(1.0 / 2)) * over;
    recursion.value[4] = (recursion.value[3] - V(1.0 / 6)) * over;
    recursion.value[5] = (recursion.value[4] - V(1.0 / 24)) * over;
    if (!any(near)) return recursion;
    Phi<V> mixed;
    for (int k = 0; k < 6; ++k) mixed.value[k] = select(near, series.value[k], recursion.value[k]);
    return mixed;
}

/// phi_0 and phi_1 alone.
template <class V>
BLINKWRIGHT_INLINE V phi1(V z) {
    const auto near = lane::magnitude(z) < V(0.5);
    V series(0);
    if (any(near)) {
        constexpr double inverse[] = {1.0 / 87178291200.0,
                                      1.0 / 6227020800.0,
                                      1.0 / 479001600,
                                      1.0 / 39916800,
                                      1.0 / 3628800,
                                      1.0 / 362880,
                                      1.0 / 40320,
                                      1.0 / 5040,
                                      1.0 / 720,
                                      1.0 / 120,
                                      1.0 / 24,
                                      1.0 / 6,
                                      0.5,
                                      1};
        series = V(inverse[0]);
        for (int k = 1; k < 14; ++k) series = series * z + V(inverse[k]);
        if (all(near)) return series;
    }
    const V recursion = (lane::exponential(z) - V(1)) / select(near, V(1), z);
    return select(near, series, recursion);
}

} // namespace blinkwright::engine
