// A computed waveform with dense output: any voltage or current at any time of the run, not only at the
// steps.
//
//   Instant at;
//   run.wave.instant(0.25, Side::after, at);
//   at.node_V[board.timers[0].pins[timerPin::output]];   // volt against 0 V
//   at.junction_A[0];                                    // ampere, anode to cathode
// At a switching every quantity but the capacitor voltages jumps; Side says which limit is meant.
#pragma once

#include "core/devices/board.h"
#include "core/engine/port_solver.h"

#include <memory>
#include <vector>

namespace blinkwright::engine {

/// Which limit is taken where a time is a switching.
enum class Side { before, after };

namespace detail {
struct WaveData;
}

/// A timer's inner quantities at one instant; voltages against 0 V.
struct TimerInstant {
    double output_V = 0;    ///< pin 3, also where it is open
    double control_V = 0;   ///< pin 5: the threshold level
    double ground_V = 0;    ///< pin 1
    double supply_V = 0;    ///< pin 8
    double idle_A = 0;      ///< own current, pin 8 to pin 1, divider not counted
    double discharge_A = 0; ///< into pin 7
    double output_A = 0;    ///< out of pin 3: above 0 sourced, below 0 sunk
    /// The trigger level, half of the way from pin 1 to pin 5.
    double triggerLevel_V() const { return 0.5 * (control_V + ground_V); }
};

/// All voltages and currents of a board at one instant.
struct Instant {
    std::vector<double> node_V;      ///< by node; node 0 is 0 V
    std::vector<double> capacitor_V; ///< inner voltage, without ESR
    std::vector<double> capacitor_A; ///< into plus
    std::vector<double> junction_A;  ///< anode to cathode
    std::vector<double> supply_A;    ///< out of plus
    std::vector<double> switch_A;    ///< pin 1 to pin 2
    std::vector<TimerInstant> timers;
    // Room to work in, kept from call to call.
    std::vector<double> port_V, port_A, slope_S, guess, all;
    PortSolver solver;
};

class Waveform {
  public:
    Waveform();
    explicit Waveform(std::shared_ptr<const detail::WaveData> data);

    bool empty() const;
    double begin_s() const;
    double end_s() const;

    /// A place in the waveform: a step and how far into it, 0 to 1.
    struct Knot {
        std::size_t step = 0;
        double share = 0;
    };
    struct Span {
        double begin_s, end_s;
    };
    std::size_t steps() const;
    Span step(std::size_t k) const;
    /// Whether step k begins with a switching.
    bool jumpsBefore(std::size_t k) const;

    /// Ascending: the ends of every step and `inside` evenly spread points within it; a switching stands
    /// twice, just before and just after.
    std::vector<Knot> knots(int inside) const;
    double time(const Knot& knot) const;
    /// Times outside the run are clamped to it. The waveform must not be empty.
    Knot find(double time_s, Side side = Side::after) const;

    void instant(double time_s, Side side, Instant& out) const;
    void instant(const Knot& knot, Instant& out) const;

    /// The whole steps that begin in [from_s, to_s), moved so that from_s becomes newBegin_s.
    Waveform part(double from_s, double to_s, double newBegin_s) const;
    /// The same span `count` times in a row: settled periods for drawing.
    Waveform repeated(int count) const;

  private:
    std::shared_ptr<const detail::WaveData> m_data;
};

} // namespace blinkwright::engine
