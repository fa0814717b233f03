// The kept dense output of a step of the exponential method.
//
//   DenseOutput::evaluate(numbers, n, t, y);     // y at t seconds after the step's begin
#pragma once

#include "core/engine/eigenbasis.h"
#include "core/engine/phi.h"

#include <cstddef>

namespace blinkwright::engine {

/// Places of its parts: h, y, eigenvalues, f, E3, E4, eigenvectors (rows). See kernel.h for what they mean.
struct DenseOutput {
    explicit DenseOutput(int states) : n(states) {}
    int n;
    int y() const { return 1; }
    int lambda() const { return 1 + n; }
    int f() const { return 1 + 2 * n; }
    int e3() const { return 1 + 3 * n; }
    int e4() const { return 1 + 4 * n; }
    int vectors() const { return 1 + 5 * n; }
    std::size_t size() const { return static_cast<std::size_t>(1 + n * (n + 5)); }

    /// Capacitor voltages at t [s] after the step's begin.
    static void evaluate(const double* numbers, int n, double t, double* y) {
        const DenseOutput at(n);
        const double share = numbers[0] > 0 ? t / numbers[0] : 0;
        double c[mostStates];
        for (int k = 0; k < n; ++k) {
            const Phi<double> phi = phiFunctions(t * numbers[at.lambda() + k]);
            c[k] =
                t * (phi[1] * numbers[at.f() + k] +
                     share * share * (phi[3] * numbers[at.e3() + k] + share * phi[4] * numbers[at.e4() + k]));
        }
        for (int k = 0; k < n; ++k) {
            double sum = numbers[at.y() + k];
            for (int j = 0; j < n; ++j) sum += numbers[at.vectors() + k * n + j] * c[j];
            y[k] = sum;
        }
    }
};

} // namespace blinkwright::engine
