// The functions phi_0(z) = e^z, phi_k(z) = (phi_{k-1}(z) - 1/(k-1)!) / z of exponential integrators, for real
// z.
#pragma once

#include <array>
#include <cmath>

namespace blinkwright::engine {

/// phi_0 to phi_5 at z. Relative error near rounding for any z up to 700.
inline std::array<double, 6> phiFunctions(double z) {
    constexpr double inverseFactorial[] = {1, 1, 1.0 / 2, 1.0 / 6, 1.0 / 24, 1.0 / 120};
    std::array<double, 6> phi;
    if (std::abs(z) < 2) {
        // The series of phi_5, then down: no difference of near numbers.
        double term = inverseFactorial[5], sum = term;
        for (int k = 6; std::abs(term) > 1e-18; ++k) {
            term *= z / k;
            sum += term;
        }
        phi[5] = sum;
        for (int k = 5; k > 0; --k) phi[k - 1] = z * phi[k] + inverseFactorial[k - 1];
        return phi;
    }
    phi[0] = std::exp(z);
    const double over = 1 / z;
    for (int k = 1; k < 6; ++k) phi[k] = (phi[k - 1] - inverseFactorial[k - 1]) * over;
    return phi;
}

/// phi_1 alone.
inline double phi1(double z) {
    return z == 0 ? 1 : std::expm1(z) / z;
}

} // namespace blinkwright::engine
