// A computed waveform with dense output: any voltage or current at any time of the run, not only at the steps.
//
//   double v = run.wave.pinVoltage(timer, timerPin::output, 0.25);   // volt against pin 1
//   double i = run.wave.junctionCurrent(0, 0.25);                   // ampere
// At a switching, every quantity but the capacitor voltages jumps; `Side` says which limit is meant.
#pragma once

#include "core/devices/board.h"

#include <memory>
#include <vector>

namespace blinkwright::engine {

/// Which limit is taken where a time is a switching.
enum class Side { before, after };

namespace detail {
struct WaveData;
}

/// All node voltages and branch currents of a board at one instant.
struct Instant {
    std::vector<double> node_V;        ///< by node; node 0 is 0 V
    std::vector<double> capacitor_V;   ///< inner voltage, without ESR
    std::vector<double> capacitor_A;   ///< into plus
    std::vector<double> junction_A;    ///< anode to cathode
    std::vector<double> supply_A;      ///< out of plus
    std::vector<double> timerPin_A;    ///< into each pin, 8 a timer
    std::vector<double> controlVoltage_V; ///< pin 5 against pin 1, a timer each
};

class Waveform {
  public:
    Waveform();
    explicit Waveform(std::shared_ptr<const detail::WaveData> data);

    bool empty() const;
    double begin_s() const;
    double end_s() const;
    /// Ascending: every step's ends and, within each step, `inside` evenly spread points; a switching stands twice.
    /// Use with at(k) below, so that both limits of a switching are met.
    struct Knot {
        double time_s;
        std::size_t step;
    };
    std::vector<Knot> knots(int inside) const;

    /// Everything at one instant. Times outside the run are clamped to it.
    void instant(double time_s, Side side, Instant& out) const;
    void instant(const Knot& knot, Instant& out) const;

    double nodeVoltage(devices::Node node, double time_s, Side side = Side::after) const;

  private:
    std::shared_ptr<const detail::WaveData> m_data;
};

} // namespace blinkwright::engine
