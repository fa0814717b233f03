// phi_0 to phi_4 (see core/engine/phi.h) for the many modes of a large board, whose arguments are mostly
// small.
#pragma once

#include <cmath>

namespace blinkwright::engine::large {

struct Phi {
    static constexpr double smallest = 0.25; ///< arguments below this are small
    double k0, k1, k2, k3, k4;
};

/// For small arguments; anything for others.
inline Phi smallPhi(double x) {
    // The series of phi_4 to the eighth power, then down: no difference of near numbers.
    Phi p;
    p.k4 = 1.0 / 479001600;
    for (const double next : {1.0 / 39916800, 1.0 / 3628800, 1.0 / 362880, 1.0 / 40320, 1.0 / 5040, 1.0 / 720,
                              1.0 / 120, 1.0 / 24})
        p.k4 = next + x * p.k4;
    p.k3 = 1.0 / 6 + x * p.k4;
    p.k2 = 0.5 + x * p.k3;
    p.k1 = 1 + x * p.k2;
    p.k0 = 1 + x * p.k1;
    return p;
}

inline Phi phiOf(double x) {
    if (std::abs(x) < Phi::smallest) return smallPhi(x);
    Phi p;
    const double over = 1 / x;
    p.k0 = std::exp(x);
    p.k1 = (p.k0 - 1) * over;
    p.k2 = (p.k1 - 1) * over;
    p.k3 = (p.k2 - 0.5) * over;
    p.k4 = (p.k3 - 1.0 / 6) * over;
    return p;
}

/// From x to 2 x: phi_k(2x) = 2^-k (e^x phi_k(x) + sum of phi_j(x)/(k-j)!, j = 1..k).
inline Phi doubled(const Phi& p) {
    return {p.k0 * p.k0, 0.5 * (p.k0 + 1) * p.k1, 0.25 * (p.k0 * p.k2 + p.k1 + p.k2),
            0.125 * (p.k0 * p.k3 + 0.5 * p.k1 + p.k2 + p.k3),
            0.0625 * (p.k0 * p.k4 + p.k1 * (1.0 / 6) + 0.5 * p.k2 + p.k3 + p.k4)};
}

/// (e^(a s) - e^(b s)) / (a - b), given e^(b s): how a mode of rate b answers to a force e^(a s).
inline double answer(double a, double b, double expA, double expB, double s) {
    const double x = (a - b) * s;
    return std::abs(x) < 1e-4 ? s * expB * (1 + x * (0.5 + x / 6)) : s * (expA - expB) / x;
}

} // namespace blinkwright::engine::large
