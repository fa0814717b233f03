// What the lanes compute from: the reduced equations of a nominal board as plain numbers, in which every part
// that varies from board to board has a port of its own. Worked out once a batch.
//
//   auto plan = makeLanePlan(board, varied, cycles, accuracy);   // nothing: not a board for lanes
//   auto group = makePortableLanes(*plan);
//   group->run(factors, outcome);                    // factors[v * width + lane]
//
// Plain data only: the sources that are compiled for newer processors include this (see lane_run.h).
#pragma once

#include "core/engine/port_kind.h"
#include "core/engine/varied.h"

#include <array>
#include <atomic>
#include <functional>
#include <memory>
#include <vector>

namespace blinkwright::engine {

struct PlanLaw {
    PortKind kind{};
    bool low = false;
    double reference = 0, scale = 0;
    std::array<double, 4> p{};
    int shiftedBy = -1;   ///< which of what varies shifts this junction's voltage, or -1
    double voltage_V = 0; ///< of that junction at 10 mA
};

/// The reduced equations of one state of the output.
struct PlanState {
    int m = 0; ///< ports, those of the varied parts not counted
    std::vector<PlanLaw> laws;
    /// Rows: m port voltages, n rates, watched rows and lamp currents, then the voltages across the varied
    /// parts. Columns: constant, by y, by -i of the m ports, by -i of the varied parts.
    std::vector<double> table;
    std::vector<std::vector<double>> bySupply; ///< for each varied supply, the constants a volt more [1/V]
};

/// The conductance that a varied part has more than the nominal board, as a port's law with i = G u.
struct PlanProbe {
    int factor = 0;         ///< which of what varies
    double conductance = 0; ///< nominal [S]; of a divider: of its upper resistance
    bool divider = false;
    double reference = 0; ///< lent to the linear part already [S]
};
struct PlanSupply {
    int factor = 0;
    double voltage_V = 0;
};

struct LanePlan {
    int n = 0, lamps = 0, rows = 0;
    int factors = 0; ///< numbers that vary
    std::vector<PlanProbe> probes;
    std::vector<PlanSupply> supplies;
    std::array<PlanState, 2> state; ///< output low, output high
    std::vector<double> initial_V, capacitance;
    std::vector<int> capacitorFactor; ///< which of what varies, or -1
    std::vector<double> ratedCurrent; ///< of each lamp with a port
    double delay_s = 0;
    int phases = 0; ///< switchings asked for
    double voltageAllowed_V = 0, chargeAllowed = 0, darkShare = 0, close_V = 0, accuracy = 0;
    StraightBand band;
    int stepBudget = 2000; ///< a phase and group
    const std::atomic<bool>* cancel = nullptr;
    /// Solves the nominal board's ports: state, capacitor voltages, port voltages (guess in, solution out).
    std::function<bool(int, const double*, double*)> solvePorts;
};

/// Where the nominal board's first phases begin: guesses for all others.
struct LanePilot {
    struct Entry {
        std::vector<double> u;
        std::vector<std::uint8_t> regimes;
        std::vector<double> basis; ///< of Eigenbasis::keep
        double firstStep_s = 0;
    };
    std::array<Entry, 3> entries;
};

/// By lane: [lane], and [lamp * width + lane].
struct LaneOutcome {
    std::vector<std::uint8_t> good; ///< else the board is one for the scalar engine
    std::vector<double> first_s, high_s, low_s;
    std::vector<double> highCharge_C, lowCharge_C; ///< of the last two phases
    std::vector<long> steps;
};

/// The lanes of one thread.
class LaneGroup {
  public:
    virtual ~LaneGroup() = default;
    virtual int width() const = 0;
    /// Runs the nominal board and fills the pilot. @return false where the lanes cannot.
    virtual bool learn(LanePilot& pilot) = 0;
    virtual void usePilot(const LanePilot& pilot) = 0;
    /// @param factors [which x width + lane].
    virtual void run(const double* factors, LaneOutcome& outcome) = 0;
};

/// @return nothing for boards that only the scalar engine takes.
std::unique_ptr<LanePlan> makeLanePlan(const devices::Board& nominal, const std::vector<Varied>& varied,
                                       int cycles, double accuracy);

/// Each is compiled for its own set of instructions; nothing where the program has none of that kind.
std::unique_ptr<LaneGroup> makePortableLanes(const LanePlan& plan);
std::unique_ptr<LaneGroup> makeAvx2Lanes(const LanePlan& plan);
std::unique_ptr<LaneGroup> makeAvx512Lanes(const LanePlan& plan);

} // namespace blinkwright::engine
