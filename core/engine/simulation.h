// The event loop around the stepper: latches, delays, start-up, switch presses, budgets.
//
//   Simulation sim(network, options);
//   sim.powerOn();
//   RunReport report = sim.run(stopWhen);       // sim.switchings(), sim.takeWave()
//   Simulation::State s = sim.state();          // to go on from here another time
#pragma once

#include "core/engine/stepper.h"
#include "core/engine/transient.h"
#include "core/engine/wave_data.h"

#include <deque>
#include <optional>

namespace blinkwright::engine {

class Simulation {
  public:
    struct Options {
        double accuracy = 1e-6;
        bool keepWaveform = true;
        bool ignorePresses = false;
        const std::atomic<bool>* cancel = nullptr;
    };
    /// One timer's memory.
    struct TimerState {
        bool latch = true;    ///< high
        bool output = true;   ///< high; follows the latch after the delay
        bool awake = false;   ///< its levels are read
        bool powered = false; ///< pin 8 has reached 0.8 x nominal supply once
        double outputDue_s = std::numeric_limits<double>::infinity();
        double dwellUntil_s = 0;
    };
    struct State {
        double time_s = 0;
        std::vector<double> y; ///< capacitor voltages
        std::vector<TimerState> timers;
    };
    struct Limits {
        long switchings = std::numeric_limits<long>::max(); ///< of the first timer, counted from this call
        bool stopAtRise = false; ///< stop at a rise of the first timer's output (the switchings count too)
        double until_s = std::numeric_limits<double>::infinity();
        long steps = 2'000'000;
        long events = 200'000;
    };

    Simulation(std::shared_ptr<Network> network, const Options& options);

    /// From rest: capacitors at their initial voltages, latches set, time 0.
    void powerOn();
    /// Goes on from a state; recorded waveform and switchings start afresh.
    void resume(const State& state);
    RunReport run(const Limits& limits);

    State state() const;
    const std::vector<Switching>& switchings() const { return m_switchings; }
    /// For each switching of the first timer, the charge of each lamp since the one before [C].
    const std::vector<double>& phaseCharges() const { return m_charges; }
    Waveform takeWave();
    /// Keeps the waveform of what follows.
    void keepWaveform();

  private:
    bool enterConfiguration();
    void chooseFirstStep();
    double nextTimed() const;
    /// Above 0: the timer's latch wants to flip (or the timer to wake).
    double wish(std::size_t timer, const Watched& levels, double time_s) const;
    double wishWithin(std::size_t timer, double t, double time_s);
    /// Shortens a step that would run past a crossing that is foreseen. @return the timer, or -1.
    int foresee(double& h);
    bool plain(std::size_t timer) const;
    std::optional<double> crossing(std::size_t timer, double h);
    std::optional<double> crossingBySearch(std::size_t timer, double h);
    /// What an attempted step runs into.
    struct Landing {
        int timer = -1;       ///< whose level is crossed first; -1: none
        bool flipped = false; ///< its latch flipped within the step, which ends where its output follows
    };
    Landing land(double& h, double& error);
    Landing follow(std::size_t timer, double rise, double& h);
    bool onlyOne(std::size_t timer) const;
    void record(double begin_s, double h);
    /// Everything that is due at the present instant, until nothing is. @return false if no solution was
    /// found.
    bool settleInstant(int crossed);
    void flip(std::size_t timer, double time_s);
    bool pressed(std::size_t index) const;

    std::shared_ptr<Network> m_network;
    Options m_options;
    Stepper m_stepper;
    double m_time = 0;
    double m_h = 0;
    bool m_firstStep = false; ///< the next accepted step is the first since a configuration was entered
    std::vector<TimerState> m_timers;
    std::vector<bool> m_switches, m_outputs;
    std::vector<double> m_edges; ///< all press edges, ascending
    std::vector<Switching> m_switchings;
    std::shared_ptr<detail::WaveData> m_wave;
    std::vector<double> m_charges;
    /// What is remembered of a state of switches and outputs.
    struct Configuration {
        std::vector<bool> switches, outputs;
        const Reduced* reduced = nullptr;
        double firstStep_s = 0;   ///< length of the first step that was good; 0: none yet
        double phaseLength_s = 0; ///< of the last one; 0: none yet
        bool steady = false;      ///< the last one was as long as the one before
        int endedBy = -1;         ///< the timer that ended it
    };
    Configuration& configurationOf();
    std::deque<Configuration> m_configurations;
    Configuration* m_configuration = nullptr;
    int m_expectedTimer = -1;
    double m_phaseBegin_s = 0, m_expectedEnd_s = std::numeric_limits<double>::infinity();
    long m_events = 0;
    long m_counted = 0;  ///< switchings of the first timer in this run
    bool m_rose = false; ///< the first timer's output rose at the last instant
};

} // namespace blinkwright::engine
