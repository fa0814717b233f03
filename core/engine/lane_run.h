// Runs a group of boards from power-on, a board a lane. All lanes are in the same phase of the output, each
// at its own time and with its own step; a lane whose phase has ended waits for the others. A lane that does
// anything but flash goes out: its board is one for the scalar engine. The rules are those of Simulation and
// Stepper.
//
//   auto group = std::make_unique<LaneRun<Lanes<8>>>(plan);
//   group->learn(pilot);
//   group->usePilot(pilot);
//   group->run(factors, outcome);
//
// Only for the sources that instantiate it (lanes_*.cpp), after their choice of instructions: everything here
// is a template on the lane type.
#pragma once

#include "core/engine/kernel.h"
#include "core/engine/lane_plan.h"
#include "core/engine/lane_reduction.h"

namespace blinkwright::engine {

template <class V>
class LaneRun final : public LaneGroup {
    static constexpr int W = LaneTraits<V>::width;
    using Mask = MaskOf<V>;

  public:
    explicit LaneRun(const LanePlan& plan) : m_plan(plan), m_n(plan.n) {
        m_lamps.resize(static_cast<std::size_t>(plan.lamps));
    }

    int width() const override { return W; }

    bool learn(LanePilot& pilot) override {
        std::vector<double> ones(static_cast<std::size_t>(m_plan.factors * W), 1.0);
        LaneOutcome outcome;
        m_learning = &pilot;
        run(ones.data(), outcome);
        m_learning = nullptr;
        return all(m_live);
    }
    void usePilot(const LanePilot& pilot) override { m_pilot = &pilot; }

    void run(const double* factors, LaneOutcome& out) override {
        m_kernels.clear(); // their warm starts are of other boards
        begin(factors);
        prepare(out);
        for (int phase = 0; phase < m_plan.phases && any(m_live); ++phase) {
            if (m_plan.cancel && m_plan.cancel->load(std::memory_order_relaxed)) {
                m_live = maskOf<V>(false);
                break;
            }
            const bool high = phase % 2 == 0;
            runPhase(phase, high);
            put(high ? out.high_s : out.low_s, 0, m_length);
            if (phase == 0) put(out.first_s, 0, m_length);
            for (std::size_t l = 0; l < m_lamps.size(); ++l) {
                Lamp& lamp = m_lamps[l];
                put(high ? out.highCharge_C : out.lowCharge_C, l, lamp.phase_C);
                lamp.cycle_C = lane::larger(0.5 * lamp.cycle_C, lane::magnitude(lamp.phase_C));
                lamp.phase_C = V(0);
            }
        }
        for (int k = 0; k < W; ++k) out.good[static_cast<std::size_t>(k)] = lane::on(m_live, k);
    }

  private:
    static constexpr double wakeAfter_s = 20e-6;  // device law: nothing is read before
    static constexpr double wakeLatest_s = 50e-3; // device law: everything is read after
    static constexpr double quietAfter_s = 1e6;
    static constexpr double never = std::numeric_limits<double>::infinity();

    /// One state of the output.
    struct Side {
        FoldSource<V> source;
        bool reduced = false;
        std::vector<std::unique_ptr<Folded<V>>> folds; ///< the first `used` are of this group
        std::vector<std::vector<std::uint8_t>> regimesOfFolds;
        std::size_t used = 0;
        std::vector<bool> mayDrift;
        LaneList<V> u; ///< port voltages where it began last
        std::vector<std::uint8_t> regimes;
        LaneList<V> basis;
        V firstStep, length;
        Mask steady;
        Mask knowsFirstStep;
    };
    struct Lamp {
        V phase_C, cycle_C, last_C;
    };

    static void put(std::vector<double>& out, std::size_t row, V x) {
        for (std::size_t k = 0; k < W; ++k) out[row * W + k] = lane::at(x, static_cast<int>(k));
    }

    void prepare(LaneOutcome& out) const {
        for (auto* list : {&out.first_s, &out.high_s, &out.low_s}) list->resize(W);
        for (auto* list : {&out.highCharge_C, &out.lowCharge_C}) list->resize(m_lamps.size() * W);
        out.good.resize(W);
    }

    void begin(const double* factors) {
        m_factors.resize(static_cast<std::size_t>(m_plan.factors));
        for (std::size_t v = 0; v < m_factors.size(); ++v)
            for (std::size_t k = 0; k < W; ++k)
                lane::put(m_factors[v], static_cast<int>(k), factors[v * W + k]);
        m_live = maskOf<V>(true);
        for (Side& side : m_sides) {
            side.reduced = false;
            side.used = 0;
            side.u.clear();
            side.length = side.firstStep = V(0);
            side.steady = side.knowsFirstStep = maskOf<V>(false);
        }
        for (int k = 0; k < m_n; ++k) m_y[k] = V(m_plan.initial_V[static_cast<std::size_t>(k)]);
        for (Lamp& lamp : m_lamps) lamp.phase_C = lamp.cycle_C = lamp.last_C = V(0);
    }

    // --- states and folds

    void reduce(int high) {
        Side& side = m_sides[high];
        side.reduced = true;
        m_live = m_live & m_reduction.reduce(m_plan, high, m_factors.data(), side.source);
        const int m = side.source.m;
        // As ExponentialMarch::mayDrift, in all lanes.
        side.mayDrift.assign(static_cast<std::size_t>(m), false);
        for (int port = 0; port < m; ++port) {
            const auto& law = side.source.laws[static_cast<std::size_t>(port)];
            if (law.kind != PortKind::threshold && law.kind != PortKind::trigger) continue;
            Mask weak = maskOf<V>(true);
            for (int k = 0; k < m; ++k) {
                const double most = k == port ? 0.01 * 2 * devices::thermalVoltage : 1e-6;
                weak = weak &
                       (lane::magnitude(side.source.Z[static_cast<std::size_t>(k * m + port)]) * law.p[0] <=
                        V(most));
            }
            side.mayDrift[static_cast<std::size_t>(port)] = all(weak);
        }
    }

    bool useFold() {
        Side& side = *m_side;
        m_fold = nullptr;
        for (std::size_t k = 0; k < side.used; ++k)
            if (side.regimesOfFolds[k] == m_regimes) m_fold = side.folds[k].get();
        if (!m_fold) {
            if (side.folds.size() == side.used) {
                side.folds.push_back(std::make_unique<Folded<V>>());
                side.regimesOfFolds.emplace_back();
            }
            Folded<V>& fold = *side.folds[side.used];
            if (!fold.fold(side.source, m_regimes.data())) return false;
            if (fold.q > mostBent || fold.drifting > mostDrifting) return false;
            side.regimesOfFolds[side.used++] = m_regimes;
            m_fold = &fold;
        }
        for (const Sized& known : m_kernels)
            if (known.q == m_fold->q && known.drifting == m_fold->drifting) {
                m_kernel = known.kernel.get();
                return true;
            }
        m_kernels.push_back({m_fold->q, m_fold->drifting, makeKernel<V, PlainBuild>(*m_fold, m_basis)});
        m_kernel = m_kernels.back().kernel.get();
        return true;
    }

    void ports(V* u) const {
        for (int k = 0; k < m_fold->kept; ++k)
            u[m_fold->keptPort[static_cast<std::size_t>(k)]] = m_kernel->base.u[k];
        for (int k = 0; k < m_fold->straight; ++k)
            u[m_fold->straightPort[static_cast<std::size_t>(k)]] =
                m_fold->row(m_fold->rows + k, m_kernel->base.y.data(), m_kernel->base.i.data());
    }

    bool straightHolds(bool atEnd, Mask counts) {
        const auto& point = atEnd ? m_kernel->end : m_kernel->base;
        bool holds = true;
        for (int k = 0; k < m_fold->straight; ++k) {
            const auto port = static_cast<std::size_t>(m_fold->straightPort[static_cast<std::size_t>(k)]);
            const V u = m_fold->row(m_fold->rows + k, point.y.data(), point.i.data());
            const Mask on =
                m_side->source.laws[port].on(m_fold->piece[static_cast<std::size_t>(k)], u, m_plan.band);
            if (all(on | !counts)) continue;
            m_regimes[port] = bends;
            holds = false;
        }
        return holds;
    }

    /// Starts the kernel at y with m_u as the guess, and bends more ports until the straight ones are
    /// straight. Lanes without a solution go out.
    bool start(const V* y) {
        for (int attempt = 0; attempt < 6; ++attempt) {
            if (!useFold()) break;
            V guess[mostBent + mostDrifting];
            for (int k = 0; k < m_fold->kept; ++k)
                guess[k] = m_u[static_cast<std::size_t>(m_fold->keptPort[static_cast<std::size_t>(k)])];
            m_live = m_live & m_kernel->begin(*m_fold, y, guess, m_plan.close_V);
            if (!any(m_live)) return false;
            if (straightHolds(false, m_live)) return true;
            ports(m_u.data());
        }
        m_live = maskOf<V>(false);
        return false;
    }

    bool enter(int phase, int high) {
        Side& side = m_sides[high];
        m_side = &side;
        if (!side.reduced) reduce(high);
        const auto m = static_cast<std::size_t>(side.source.m);
        if (phase > 2) {
            m_u = side.u;
            m_regimes = side.regimes;
            m_basis.takeUp(side.basis);
        } else if (m_learning) {
            std::vector<double> y(static_cast<std::size_t>(m_n)), u(m, 0);
            for (int k = 0; k < m_n; ++k) y[static_cast<std::size_t>(k)] = lane::at(m_y[k], 0);
            if (!m_plan.solvePorts(high, y.data(), u.data())) {
                m_live = maskOf<V>(false);
                return false;
            }
            m_u.clear();
            m_regimes.clear();
            for (std::size_t k = 0; k < m; ++k) {
                m_u.push_back(V(u[k]));
                m_regimes.push_back(side.mayDrift[k] ? drifts
                                                     : static_cast<std::uint8_t>(
                                                           side.source.laws[k].regime(V(u[k]), m_plan.band)));
            }
            m_basis.forget();
        } else {
            const auto& entry = m_pilot->entries[static_cast<std::size_t>(phase)];
            m_u.clear();
            for (const double u : entry.u) m_u.push_back(V(u));
            m_regimes = entry.regimes;
            for (std::size_t k = 0; k < m; ++k)
                if (m_regimes[k] == drifts && !side.mayDrift[k]) m_regimes[k] = bends;
            side.basis.clear();
            for (const double x : entry.basis) side.basis.push_back(V(x));
            m_basis.takeUp(side.basis);
        }
        if (!start(m_y.data())) return false;
        side.u.resize(m);
        ports(side.u.data());
        side.regimes = m_regimes;
        m_basis.keep(side.basis, m_n);
        if (m_learning && phase < 3) {
            auto& entry = m_learning->entries[static_cast<std::size_t>(phase)];
            entry.regimes = m_regimes;
            entry.u.clear();
            for (const V& u : side.u) entry.u.push_back(lane::at(u, 0));
            entry.basis.clear();
            for (const V& x : side.basis) entry.basis.push_back(lane::at(x, 0));
        }
        return true;
    }

    // --- steps

    V row(int k, const StepPoint<V>& point) const { return m_fold->row(k, point.y.data(), point.i.data()); }

    /// A step and where it ends.
    struct Attempt {
        V error;      ///< of a capacitor voltage [V]
        V end, at;    ///< its end; where a level is crossed [s]
        Mask crossed; ///< lanes that run into the watched level
        Mask follows; ///< of those, lanes that end where the output follows
        Mask retake;  ///< lanes that had better be taken again with a shorter step
        Mask solved;
    };

    /// As ExponentialMarch::attempt and attemptToRise: a step of length h, cut at the crossing in lanes that
    /// look for one.
    Attempt attempt(V h, Mask active, Mask looking, int watched, bool sleeping, Mask asleep);

    /// How far a step had better go: a little past the crossing that the linear part foresees.
    V foreseen(const RowModel<V>& watch, V h) const;

    /// One step of Newton's method between a point before a rise through 0 and one after.
    static void refine(V x, V rate, V& t, V& low, V& high, Mask& open, V close);

    /// Lanes of `look` in which the row rises through 0 within the last attempt, and when.
    Mask rise(const RowModel<V>& watch, V h, Mask look, V& at) const;

    /// Error of the lamps' charges over what is allowed, as Stepper::chargeError.
    V chargeError(V h, V phaseTime);

    /// Lanes in which a latch that is read would flip at once.
    Mask tripped(bool high, const StepPoint<V>& point) const;

    V firstStep(int phase) const;

    void runPhase(int phase, bool high) {
        m_length = V(0);
        if (!enter(phase, high)) return;
        Side& side = *m_side;
        const int watched = high ? 1 : 0;
        const V delay(m_plan.delay_s);
        V t(0), due(never), wanted = firstStep(phase), h = wanted;
        V expected = select(side.steady, 1.0005 * side.length, V(never));
        Mask active = m_live, asleep = maskOf<V>(phase == 0), powered = maskOf<V>(false);
        Mask first = maskOf<V>(true);
        if (phase == 0)
            powered = row(3, m_kernel->base) >= V(0);
        else
            m_live = m_live & !tripped(high, m_kernel->base);
        m_lampModels.resize(m_lamps.size());

        for (int step = 0;; ++step) {
            active = active & m_live;
            if (!any(active)) break;
            if (step >= m_plan.stepBudget ||
                ((step & 15) == 15 && m_plan.cancel && m_plan.cancel->load(std::memory_order_relaxed))) {
                m_live = m_live & !active;
                break;
            }
            const bool sleeping = any(asleep & active);
            const Mask early = asleep & (t < V(wakeAfter_s));
            const V goal = select(early, V(wakeAfter_s), select(asleep, V(wakeLatest_s), due));
            const Mask looking = active & !early & (due >= V(never));
            V wish = wanted;
            const Mask planned = (t + wish > expected) & (t < expected) & !asleep;
            wish = select(planned, expected - t, wish);
            const Mask ask = looking & !planned;
            if (any(ask)) wish = select(ask, foreseen(watchModel(watched, sleeping, asleep), wish), wish);
            const Mask byTime = active & (t + 1.01 * wish >= goal); // no sliver is left over
            wish = select(byTime, goal - t, wish);
            h = select(active, wish, h);

            const Attempt made = attempt(h, active, looking, watched, sleeping, asleep);
            if (!any(m_live)) return;
            V error = made.error / V(m_plan.voltageAllowed_V);
            error = select(lane::finite(error), lane::larger(error, chargeError(h, t)), V(never));
            Mask good = active & (error <= V(1)) & !made.retake;
            const V ideal = 0.9 / lane::root(lane::root(lane::larger(error, V(1e-16))));
            const Mask bad = active & !good & !made.retake;
            if (any(made.retake)) {
                wanted = select(made.retake, (made.at + delay) * (1 + 1e-4), wanted);
                expected = select(made.retake, V(never), expected);
            }
            if (any(bad)) {
                const V factor =
                    select(lane::finite(error), lane::smaller(lane::larger(ideal, V(0.1)), V(0.8)), V(0.1));
                wanted = select(bad, h * factor, wanted);
                m_live = m_live & ((wanted > V(1e-15)) | !bad);
            }
            if (!any(good)) continue;
            const V end = made.end;
            const Mask crossed = made.crossed & good, follows = made.follows & good;
            if (any(crossed)) {
                for (std::size_t l = 0; l < m_lamps.size(); ++l)
                    m_lamps[l].last_C = m_kernel->charge(m_lampModels[l], end).value;
                if (high) m_live = m_live & !(crossed & !asleep & (row(0, m_kernel->end) >= V(0)));
            }
            m_live = m_live & (made.solved | !good);
            m_live = m_live & !(good & !asleep & (row(2, m_kernel->end) >= V(0)));
            good = good & m_live;

            for (Lamp& lamp : m_lamps) lamp.phase_C += select(good, lamp.last_C, V(0));
            const Mask timed = good & byTime & !crossed;
            t = select(timed, goal, select(good, t + end, t));
            const Mask finished = follows | (timed & !asleep);
            due = select(crossed & !follows & !asleep, t + delay, due);
            const Mask ended = finished & good;
            for (int k = 0; k < m_n; ++k) m_yEnd[k] = select(ended, m_kernel->end.y[k], m_yEnd[k]);
            active = active & !ended;
            if (sleeping) {
                powered = powered | (row(3, m_kernel->end) >= V(0));
                const Mask wakes = good & asleep & ((timed & early & powered) | crossed);
                m_live = m_live & !(wakes & tripped(high, m_kernel->end)) & !(timed & asleep & !early);
                asleep = asleep & !wakes;
            }
            const V grown = h * lane::smaller(lane::larger(ideal, V(0.3)), V(100));
            const Mask starts = first & good & !crossed & !byTime;
            side.firstStep = select(starts, h * ideal, side.firstStep);
            side.knowsFirstStep = side.knowsFirstStep | starts;
            first = first & !starts;
            wanted = select(
                good, lane::smaller(select(byTime, lane::larger(wanted, grown), grown), V(quietAfter_s)),
                wanted);
            const Mask moved = good & !ended;
            if (any(moved)) m_live = m_live & (m_kernel->accept(moved) | !moved);
            m_live = m_live & (t < V(quietAfter_s));
        }
        side.steady = lane::magnitude(t - side.length) < 1e-2 * t;
        side.length = m_length = t;
        for (int k = 0; k < m_n; ++k) m_y[k] = m_yEnd[k];
        if (m_learning && phase < 3)
            m_learning->entries[static_cast<std::size_t>(phase)].firstStep_s =
                lane::on(side.knowsFirstStep, 0) ? lane::at(side.firstStep, 0) : 0;
    }

    RowModel<V> watchModel(int watched, bool sleeping, Mask asleep) const;
    V watchedRow(int watched, bool sleeping, Mask asleep) const;

    const LanePlan& m_plan;
    int m_n;
    const LanePilot* m_pilot = nullptr;
    LanePilot* m_learning = nullptr;
    LaneList<V> m_factors;
    LaneReduction<V> m_reduction;
    std::array<Side, 2> m_sides;
    Side* m_side = nullptr;
    const Folded<V>* m_fold = nullptr;
    Eigenbasis<V> m_basis;
    struct Sized {
        int q, drifting;
        std::unique_ptr<StepKernel<V>> kernel;
    };
    std::vector<Sized> m_kernels;
    StepKernel<V>* m_kernel = nullptr;
    std::vector<std::uint8_t> m_regimes;
    LaneList<V> m_u;
    std::array<V, mostStates> m_y, m_yEnd;
    LaneList<Lamp> m_lamps;
    LaneList<RowModel<V>> m_lampModels;
    V m_length;
    Mask m_live;
};

} // namespace blinkwright::engine

#include "core/engine/lane_steps.h"
