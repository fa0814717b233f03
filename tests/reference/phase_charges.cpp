#include "tests/reference/phase_charges.h"

#include <array>
#include <cmath>

namespace blinkwright::reference {

namespace {

using Charges = std::vector<double>;

// Gauss-Lobatto rule with five points on [0, 1]; Abramowitz & Stegun, table 25.6.
constexpr std::array<double, 5> places = {0, 0.17267316464601143, 0.5, 0.82732683535398857, 1};
constexpr std::array<double, 5> weights = {1.0 / 20, 49.0 / 180, 16.0 / 45, 49.0 / 180, 1.0 / 20};

class Integrator {
  public:
    Integrator(const engine::Waveform& wave, std::size_t junctions) : m_wave(wave), m_scale(junctions, 0) {
        for (std::size_t step = 0; step < wave.steps(); ++step) {
            const Charges charge = rule(step, 0, 1);
            for (std::size_t j = 0; j < junctions; ++j)
                m_scale[j] = std::max(m_scale[j], std::abs(charge[j]));
        }
    }
    Charges over(std::size_t step) { return refined(step, 0, 1, rule(step, 0, 1), 0); }

  private:
    Charges rule(std::size_t step, double from, double to) {
        const auto span = m_wave.step(step);
        Charges sum(m_scale.size(), 0);
        for (std::size_t k = 0; k < places.size(); ++k) {
            m_wave.instant({step, from + places[k] * (to - from)}, m_at);
            for (std::size_t j = 0; j < sum.size(); ++j)
                sum[j] += weights[k] * (to - from) * (span.end_s - span.begin_s) * m_at.junction_A[j];
        }
        return sum;
    }
    Charges refined(std::size_t step, double from, double to, const Charges& whole, int depth) {
        const double middle = 0.5 * (from + to);
        Charges first = rule(step, from, middle), second = rule(step, middle, to);
        bool good = true;
        for (std::size_t j = 0; j < whole.size(); ++j)
            good = good && std::abs(first[j] + second[j] - whole[j]) <= 1e-10 * m_scale[j];
        if (!good && depth < 20) {
            first = refined(step, from, middle, first, depth + 1);
            second = refined(step, middle, to, second, depth + 1);
        }
        for (std::size_t j = 0; j < whole.size(); ++j) first[j] += second[j];
        return first;
    }

    const engine::Waveform& m_wave;
    Charges m_scale;
    engine::Instant m_at;
};

} // namespace

std::vector<Charges> phaseCharges(const devices::Board& board, const engine::Run& run) {
    Integrator integrator(run.wave, board.junctions.size());
    std::vector<Charges> all;
    std::size_t step = 0;
    for (const auto& switching : run.switchings) {
        Charges sum(board.junctions.size(), 0);
        for (; step < run.wave.steps(); ++step) {
            const auto span = run.wave.step(step);
            if (0.5 * (span.begin_s + span.end_s) > switching.time_s) break;
            const Charges charge = integrator.over(step);
            for (std::size_t j = 0; j < sum.size(); ++j) sum[j] += charge[j];
        }
        all.push_back(std::move(sum));
    }
    return all;
}

} // namespace blinkwright::reference
