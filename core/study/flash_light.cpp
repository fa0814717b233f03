#include "core/study/flash_light.h"

#include "core/study/lobatto.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

constexpr int fine = 32;              ///< pieces of a step
constexpr double peakAccuracy = 1e-6; ///< of the peak; the law itself is far rougher
using lobatto::nodes;

using Weights = std::array<std::array<double, 5>, fine + 1>;

/// Lagrange's polynomials of the nodes at the ends of all pieces.
Weights lagrange() {
    Weights all{};
    for (int k = 0; k <= fine; ++k)
        for (std::size_t i = 0; i < nodes.size(); ++i) {
            double product = 1;
            for (std::size_t j = 0; j < nodes.size(); ++j)
                if (j != i) product *= (static_cast<double>(k) / fine - nodes[j]) / (nodes[i] - nodes[j]);
            all[static_cast<std::size_t>(k)][i] = product;
        }
    return all;
}

} // namespace

void FlashLight::add(double length_s, double current_A) {
    if (!(length_s > 0)) return;
    m_peak_A = std::max(m_peak_A, current_A);
    if (current_A == 0 && !m_pieces.empty() && m_pieces.back().from_A == 0 && m_pieces.back().to_A == 0) {
        m_pieces.back().length_s += length_s; // darkness needs no steps
        return;
    }
    m_pieces.push_back({length_s, current_A, current_A});
}

void FlashLight::addStep(double length_s, const std::array<double, 5>& current_A) {
    static const Weights weights = lagrange();
    const auto [least, most] = std::minmax_element(current_A.begin(), current_A.end());
    if (!(length_s > 0)) return;
    if (*most - *least < 1e-4 * *most || *most <= 0) return add(length_s, std::max(0.0, *most));
    std::array<double, fine + 1> at{};
    for (std::size_t k = 0; k <= fine; ++k)
        for (std::size_t i = 0; i < nodes.size(); ++i) at[k] += weights[k][i] * current_A[i];
    for (std::size_t k = 0; k < fine; ++k) {
        m_pieces.push_back({length_s / fine, std::max(0.0, at[k]), std::max(0.0, at[k + 1])});
        m_peak_A = std::max({m_peak_A, at[k], at[k + 1]});
    }
}

/// Of all flashes that rise above a level, what the one with most holds above it [A s].
double FlashLight::mostAbove(double level_A) const {
    double best = 0, present = 0;
    bool everDark = false;
    // Twice around, so that a flash across the ends of the period is one.
    for (int turn = 0; turn < 2; ++turn)
        for (const Piece& piece : m_pieces) {
            const double from = piece.from_A - level_A, to = piece.to_A - level_A;
            if (from <= 0 && to <= 0) {
                everDark = true;
                present = 0;
                continue;
            }
            if (from >= 0 && to >= 0) {
                present += piece.length_s * (from + to) / 2;
            } else {
                const double above = std::max(from, to), part = above / std::abs(to - from);
                everDark = true;
                if (from < 0) present = 0;
                present += piece.length_s * part * above / 2;
            }
            best = std::max(best, present);
            if (to < 0) present = 0;
        }
    return everDark ? best : best / 2;
}

double FlashLight::effective_A(double a_s) const {
    double low = 0, high = m_peak_A;
    while (high - low > peakAccuracy * m_peak_A) {
        const double middle = 0.5 * (low + high);
        (mostAbove(middle) > a_s * middle ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

std::vector<double> effectiveCurrents(const devices::Board& board, const engine::Waveform& period,
                                      double a_s) {
    std::vector<FlashLight> lights(board.junctions.size());
    std::array<engine::Instant, nodes.size()> at;
    for (std::size_t step = 0; step < period.steps(); ++step) {
        for (std::size_t k = 0; k < nodes.size(); ++k) period.instant({step, nodes[k]}, at[k]);
        const auto span = period.step(step);
        for (std::size_t j = 0; j < lights.size(); ++j) {
            if (!board.junctions[j].lamp) continue;
            std::array<double, nodes.size()> amps;
            for (std::size_t k = 0; k < nodes.size(); ++k) amps[k] = at[k].junction_A[j];
            lights[j].addStep(span.end_s - span.begin_s, amps);
        }
    }
    std::vector<double> effective;
    effective.reserve(lights.size());
    for (const FlashLight& light : lights) effective.push_back(light.effective_A(a_s));
    return effective;
}

} // namespace blinkwright::study
