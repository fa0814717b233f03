#include "core/study/figures.h"

#include "core/study/lobatto.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace blinkwright::study {

using engine::Instant;
using engine::Waveform;

namespace {

using lobatto::nodes;
using lobatto::weights;

/// One part's terminals at an instant.
struct Terminal {
    double volts, amps, watts;
};

void add(PartFigures& figures, const Terminal& at, double weight, bool isHigh) {
    figures.meanPower_W += weight * at.watts;
    if (isHigh) figures.highEnergy_J += weight * at.watts;
    figures.peakCurrent_A = std::max(figures.peakCurrent_A, std::abs(at.amps));
    figures.peakVoltage_V = std::max(figures.peakVoltage_V, std::abs(at.volts));
}

/// Time that a quantity spends above a level: all of it, and the longest piece.
struct Stretch {
    double total_s = 0, longest_s = 0, present_s = 0;

    void above(double seconds) {
        total_s += seconds;
        present_s += seconds;
        longest_s = std::max(longest_s, present_s);
    }
    void below() { present_s = 0; }
};

class Collector {
  public:
    Collector(const devices::Board& board, const Waveform& wave, double high_s, double ratings)
        : m_board(board), m_wave(wave), m_high_s(high_s), m_ratings(ratings) {
        m_figures.junctions.resize(board.junctions.size());
        m_figures.supplyCurrents.resize(board.supplies.size());
        m_figures.supplies.resize(board.supplies.size());
        m_figures.timers.resize(board.timers.size());
        m_figures.resistors.resize(board.resistors.size());
        m_figures.variables.resize(board.variables.size());
        m_figures.capacitors.resize(board.capacitors.size());
        m_figures.junctionParts.resize(board.junctions.size());
        m_figures.switches.resize(board.switches.size());
        m_figures.timerPeaks.resize(board.timers.size());
        m_figures.capacitorLowest_V.resize(board.capacitors.size(), std::numeric_limits<double>::infinity());
        m_lit.resize(board.junctions.size());
        m_overRated.resize(board.junctions.size());
    }

    Figures collect() {
        m_figures.span_s = m_wave.end_s() - m_wave.begin_s();
        for (std::size_t step = 0; step < m_wave.steps(); ++step) {
            const auto span = m_wave.step(step);
            const double length = span.end_s - span.begin_s;
            m_isHigh = 0.5 * (span.begin_s + span.end_s) < m_wave.begin_s() + m_high_s;
            for (std::size_t k = 0; k < nodes.size(); ++k) {
                m_wave.instant({step, nodes[k]}, m_at[k]);
                addInstant(m_at[k], length * weights[k]);
            }
            for (std::size_t j = 0; j < m_board.junctions.size(); ++j) {
                const auto& part = m_board.junctions[j];
                if (!part.lamp) continue;
                follow(m_lit[j], step, j, litShare * part.ratedCurrent, length);
                follow(m_overRated[j], step, j, m_ratings * part.ratedCurrent, length);
            }
        }
        finish();
        return std::move(m_figures);
    }

  private:
    double volts(const Instant& at, devices::Node a, devices::Node b) const {
        if (a == devices::open || b == devices::open) return 0;
        return at.node_V[static_cast<std::size_t>(a)] - at.node_V[static_cast<std::size_t>(b)];
    }

    void addInstant(const Instant& at, double weight) {
        for (std::size_t k = 0; k < m_board.supplies.size(); ++k) {
            const auto& part = m_board.supplies[k];
            const double amps = at.supply_A[k];
            auto& f = m_figures.supplyCurrents[k];
            f.mean_A += weight * amps;
            f.peak_A = std::max(f.peak_A, amps);
            add(m_figures.supplies[k],
                {volts(at, part.plus, part.minus), amps, amps * amps * part.resistance}, weight, m_isHigh);
        }
        for (std::size_t k = 0; k < m_board.resistors.size(); ++k) {
            const auto& part = m_board.resistors[k];
            const double v = volts(at, part.a, part.b);
            add(m_figures.resistors[k], {v, v / part.resistance, v * v / part.resistance}, weight, m_isHigh);
        }
        for (std::size_t k = 0; k < m_board.variables.size(); ++k) {
            const auto& part = m_board.variables[k];
            const double up = volts(at, part.a, part.wiper), down = volts(at, part.wiper, part.b);
            const double most = std::max(std::abs(up / part.upper), std::abs(down / part.lower));
            add(m_figures.variables[k],
                {volts(at, part.a, part.b), most, up * up / part.upper + down * down / part.lower}, weight,
                m_isHigh);
        }
        for (std::size_t k = 0; k < m_board.capacitors.size(); ++k) {
            const auto& part = m_board.capacitors[k];
            const double v = at.capacitor_V[k], i = at.capacitor_A[k], terminal = v + part.esr * i;
            add(m_figures.capacitors[k], {terminal, i, part.esr * i * i + part.leakageConductance * v * v},
                weight, m_isHigh);
            m_figures.capacitorLowest_V[k] = std::min(m_figures.capacitorLowest_V[k], terminal);
        }
        for (std::size_t k = 0; k < m_board.switches.size(); ++k) {
            const auto& part = m_board.switches[k];
            const double v = volts(at, part.a, part.b), i = at.switch_A[k];
            add(m_figures.switches[k], {v, i, v * i}, weight, m_isHigh);
        }
        for (std::size_t k = 0; k < m_board.junctions.size(); ++k) {
            const auto& part = m_board.junctions[k];
            const double i = at.junction_A[k], v = volts(at, part.anode, part.cathode);
            auto& f = m_figures.junctions[k];
            f.charge_C += weight * i;
            if (m_isHigh) f.highCharge_C += weight * i;
            f.rms_A += weight * i * i;
            f.peak_A = std::max(f.peak_A, i);
            f.reversePeak_V = std::max(f.reversePeak_V, -v);
            add(m_figures.junctionParts[k], {v, i, v * i}, weight, m_isHigh);
        }
        for (std::size_t k = 0; k < m_board.timers.size(); ++k) {
            const auto& part = m_board.timers[k];
            const auto& t = at.timers[k];
            const double supply = t.supply_V - t.ground_V;
            const double control = t.control_V - t.ground_V;
            const double divider = ((supply - control) * (supply - control) + 0.5 * control * control) /
                                   part.sheet.divider_resistance;
            const double across = t.output_A > 0 ? t.supply_V - t.output_V : t.output_V - t.ground_V;
            const auto seven = part.pins[circuit::timerPin::discharge];
            const double discharge =
                seven == devices::open ? 0 : at.node_V[static_cast<std::size_t>(seven)] - t.ground_V;
            add(m_figures.timers[k],
                {supply, t.output_A,
                 t.idle_A * supply + divider + std::abs(t.output_A) * across + t.discharge_A * discharge},
                weight, m_isHigh);
            TimerPeaks& peaks = m_figures.timerPeaks[k];
            peaks.sourced_A = std::max(peaks.sourced_A, t.output_A);
            peaks.sunk_A = std::max(peaks.sunk_A, -t.output_A);
            peaks.discharge_A = std::max(peaks.discharge_A, t.discharge_A);
        }
    }

    /// Adds one step to the time that a junction's current spends above a level; the ends of that time are
    /// found as roots of the dense output.
    void follow(Stretch& stretch, std::size_t step, std::size_t junction, double level_A, double length_s) {
        for (std::size_t k = 0; k + 1 < nodes.size(); ++k) {
            double low = nodes[k], high = nodes[k + 1];
            double from = m_at[k].junction_A[junction] - level_A;
            double to = m_at[k + 1].junction_A[junction] - level_A;
            if (from <= 0 && to <= 0) {
                stretch.below();
                continue;
            }
            if (from > 0 && to > 0) {
                stretch.above(length_s * (high - low));
                continue;
            }
            const bool rising = to > 0;
            for (int iteration = 0; iteration < 50 && high - low > 1e-12; ++iteration) {
                const double middle =
                    iteration % 3 == 2 ? 0.5 * (low + high) : low + (high - low) * from / (from - to);
                m_wave.instant({step, middle}, m_probe);
                const double value = m_probe.junction_A[junction] - level_A;
                if ((value > 0) == rising) {
                    high = middle;
                    to = value;
                } else {
                    low = middle;
                    from = value;
                }
                if (value == 0) break;
            }
            const double root = 0.5 * (low + high);
            if (rising) stretch.below();
            stretch.above(length_s * (rising ? nodes[k + 1] - root : root - nodes[k]));
            if (!rising) stretch.below();
        }
    }

    void finish() {
        const double span = m_figures.span_s;
        if (!(span > 0)) return;
        for (std::size_t k = 0; k < m_board.junctions.size(); ++k) {
            auto& f = m_figures.junctions[k];
            f.lit_s = m_lit[k].total_s;
            f.overRated_s = m_overRated[k].longest_s;
            f.mean_A = f.charge_C / span;
            f.rms_A = std::sqrt(f.rms_A / span);
            if (f.reversePeak_V < 1e-9) f.reversePeak_V = 0; // rounding of a lamp at rest
        }
        for (std::size_t k = 0; k < m_board.supplies.size(); ++k) {
            auto& f = m_figures.supplyCurrents[k];
            f.energy_J = m_board.supplies[k].voltage * f.mean_A;
            f.mean_A /= span;
        }
        for (auto* list : {&m_figures.supplies, &m_figures.timers, &m_figures.resistors, &m_figures.variables,
                           &m_figures.capacitors, &m_figures.junctionParts, &m_figures.switches})
            for (auto& part : *list) part.meanPower_W /= span;
    }

    const devices::Board& m_board;
    const Waveform& m_wave;
    const double m_high_s;
    const double m_ratings;
    bool m_isHigh = false; // of the step being added
    Figures m_figures;
    std::vector<Stretch> m_lit, m_overRated; // by junction
    std::array<Instant, nodes.size()> m_at;
    Instant m_probe;
};

} // namespace

Figures figuresOf(const devices::Board& board, const Waveform& wave, double high_s, double ratings) {
    return Collector(board, wave, high_s, ratings).collect();
}

} // namespace blinkwright::study
