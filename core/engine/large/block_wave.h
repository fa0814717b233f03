// The waveform of a board that was simulated block by block: for each step the border voltages and the modes
// it began with, for each base of a block what turns modes into voltages. What core/engine/waveform.h shows
// of a large board.
//
//   wave.evaluate(step, s, at);      // everything at a time s from the begin of a step
#pragma once

#include "core/engine/large/assembly.h"
#include "core/engine/waveform.h"

namespace blinkwright::engine::large {

class BlockWave {
  public:
    BlockWave(const devices::Board& board, const Assembly& all);

    struct Step {
        double begin_s = 0, length_s = 0;
        bool jumps = false;     ///< begins with a switching
        std::size_t offset = 0; ///< into the numbers: curve, then modes
        int exponentials = 0;
    };
    /// Keeps a block's present base.
    void keepBase(const Assembly& all, int block);
    /// Keeps a step that begins now; to be called before the assembly advances.
    void keepStep(const Assembly& all, double length_s, bool jumps);

    const std::vector<Step>& steps() const { return m_steps; }
    /// Whether a step begins with a switching.
    bool jumps(std::size_t step) const { return m_steps[step].jumps; }
    /// All voltages and currents of the board at a time s from a step's begin [s].
    void evaluate(std::size_t step, double s, Instant& out) const;
    /// The whole of it as a waveform.
    static Waveform waveform(std::shared_ptr<const BlockWave> blocks);

  private:
    struct Base {
        double since_s = 0; ///< when it came into force
        double begin_s = 0; ///< of its plan
        const Reduced* reduced = nullptr;
        std::size_t offset = 0;
    };
    struct Part {
        std::shared_ptr<Network> network; ///< owns what the bases point to
        std::vector<int> borders, nodes, capacitors, junctions, supplies, switches, timers;
        int states = 0, firstMode = 0;
        std::vector<Base> bases;
    };
    void evaluatePart(const Part& part, const Step& step, double s, const double* V, Instant& out) const;

    int m_nodes = 0, m_r = 0, m_modes = 0;
    std::vector<devices::Node> m_borderNodes;
    std::size_t m_capacitors = 0, m_junctions = 0, m_supplies = 0, m_switches = 0, m_timers = 0;
    std::vector<Part> m_parts;
    std::vector<Step> m_steps;
    std::vector<double> m_numbers;
};

} // namespace blinkwright::engine::large
