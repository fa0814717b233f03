#include "core/engine/exponential_march.h"

#include "core/engine/kernel.h"

#include <algorithm>

namespace blinkwright::engine {

namespace {

/// What integrating a drifting port's current leaves out comes near this accuracy.
constexpr double finestDrift = 1e-6;

} // namespace

ExponentialMarch::ExponentialMarch(double accuracy, double voltageAllowed_V, bool insideMatters)
    // A Newton step of this size leaves a hundredth of `accuracy` behind in a junction's current.
    : m_close(0.05 * std::sqrt(0.02 * std::clamp(accuracy, 1e-12, 1e-2))), m_allowed_V(voltageAllowed_V),
      m_mayDrift(!insideMatters && accuracy >= finestDrift), m_band(StraightBand::of(accuracy)) {
}

void ExponentialMarch::lookInside() {
    m_mayDrift = false;
    for (auto& memory : m_memories)
        for (std::uint8_t& regime : memory->regimes)
            if (regime == drifts) regime = bends;
}

/// An input whose current moves its own voltage by little beside the width in which it turns on.
bool ExponentialMarch::mayDrift(int port) const {
    if (!m_mayDrift) return false;
    const auto& law = m_memory->source.laws[static_cast<std::size_t>(port)];
    if (law.kind != PortKind::threshold && law.kind != PortKind::trigger) return false;
    const double own = m_memory->source.Z[static_cast<std::size_t>(port * m_memory->source.m + port)];
    if (std::abs(own) * law.p[0] > 0.01 * 2 * devices::thermalVoltage) return false;
    constexpr double nothing_V = 1e-6;
    for (int k = 0; k < m_memory->source.m; ++k)
        if (k != port &&
            std::abs(m_memory->source.Z[static_cast<std::size_t>(k * m_memory->source.m + port)]) * law.p[0] >
                nothing_V)
            return false;
    return true;
}

ExponentialMarch::Memory& ExponentialMarch::memoryOf(const Reduced& reduced) {
    for (auto& memory : m_memories)
        if (memory->reduced == &reduced) return *memory;
    auto& memory = m_memories.emplace_back(std::make_unique<Memory>());
    memory->reduced = &reduced;
    memory->source = foldSource(reduced, m_band);
    return *memory;
}

/// The fold and the kernel for m_regimes.
bool ExponentialMarch::useFold() {
    Memory& memory = *m_memory;
    const Folded<double>* known = nullptr;
    for (std::size_t k = 0; k < memory.folds.size(); ++k)
        if (memory.regimesOfFolds[k] == m_regimes) known = memory.folds[k].get();
    if (known) {
        m_fold = known;
    } else {
        auto fold = std::make_unique<Folded<double>>();
        if (!fold->fold(memory.source, m_regimes.data())) return false;
        if (fold->q > mostBent || fold->drifting > mostDrifting) return false;
        memory.folds.push_back(std::move(fold));
        memory.regimesOfFolds.push_back(m_regimes);
        m_fold = memory.folds.back().get();
    }
    for (const Sized& sized : m_kernels)
        if (sized.q == m_fold->q && sized.drifting == m_fold->drifting) {
            m_kernel = sized.kernel.get();
            return true;
        }
    auto kernel = makeFusedKernel(*m_fold, m_basis);
    if (!kernel) kernel = makeKernel<double, PlainBuild>(*m_fold, m_basis);
    m_kernels.push_back({m_fold->q, m_fold->drifting, std::move(kernel)});
    m_kernel = m_kernels.back().kernel.get();
    return true;
}

/// Starts the kernel at y with m_u as the guess, and bends more ports until the straight ones are straight
/// there.
bool ExponentialMarch::begin(const double* y) {
    for (int attempt = 0; attempt < 4; ++attempt) {
        if (!useFold()) return false;
        double guess[mostBent + mostDrifting];
        for (int k = 0; k < m_fold->kept; ++k)
            guess[k] = m_u[static_cast<std::size_t>(m_fold->keptPort[static_cast<std::size_t>(k)])];
        if (!m_kernel->begin(*m_fold, y, guess, m_close)) return false;
        if (straightHolds(false)) return true;
        ports(false, m_u.data());
    }
    return false;
}

/// Whether each straight port is on its piece; those that are not are marked as bent.
bool ExponentialMarch::straightHolds(bool atEnd) {
    const auto& point = atEnd ? m_kernel->end : m_kernel->base;
    bool holds = true;
    for (int k = 0; k < m_fold->straight; ++k) {
        const auto port = static_cast<std::size_t>(m_fold->straightPort[static_cast<std::size_t>(k)]);
        const double u = m_fold->row(m_fold->rows + k, point.y.data(), point.i.data());
        if (m_memory->source.laws[port].regime(u, m_band) == m_fold->piece[static_cast<std::size_t>(k)])
            continue;
        m_regimes[port] = bends;
        holds = false;
    }
    return holds;
}

/// All port voltages at y from the full equations, and the pieces that the ports are on.
bool ExponentialMarch::solveAll(const double* y) {
    const Reduced& r = *m_memory->reduced;
    const auto m = static_cast<std::size_t>(r.m);
    std::vector<double> i(m), slope(m);
    m_guess.assign(m, 0);
    if (!m_solver.solve(r, y, m_u.data(), i.data(), slope.data(), m_guess.data())) return false;
    for (std::size_t k = 0; k < m; ++k)
        m_regimes[k] = mayDrift(static_cast<int>(k))
                           ? drifts
                           : static_cast<std::uint8_t>(m_memory->source.laws[k].regime(m_u[k], m_band));
    return true;
}

bool ExponentialMarch::enter(const Reduced& reduced, const double* y) {
    if (reduced.n > mostStates) return false;
    m_memory = &memoryOf(reduced);
    m_lost = false;
    Memory& memory = *m_memory;
    m_y.assign(y, y + reduced.n);
    const auto m = static_cast<std::size_t>(reduced.m);
    bool begun = false;
    if (!memory.u.empty()) {
        m_u = memory.u;
        m_regimes = memory.regimes;
        m_basis.takeUp(memory.basis);
        begun = begin(m_y.data());
    }
    if (!begun) {
        m_u.assign(m, 0);
        if (!memory.u.empty()) m_u = memory.u;
        m_regimes.assign(m, 0);
        m_basis.forget();
        if (!solveAll(m_y.data()) || !begin(m_y.data())) return false;
    }
    memory.u.resize(m);
    ports(false, memory.u.data());
    memory.regimes = m_regimes;
    m_basis.keep(memory.basis, reduced.n);
    return true;
}

/// Whether the fold in force is right for the end of the last attempt; if not, ports are marked as bent.
bool ExponentialMarch::endHolds(double error) {
    double drift = 0;
    for (int k = m_fold->q; k < m_fold->kept; ++k) drift += m_kernel->driftError(k);
    if (!(drift > 0.3 * m_allowed_V && error < m_allowed_V)) return straightHolds(true);
    // One is not weak enough after all: sampled like the others until the next switching.
    for (int k = m_fold->q; k < m_fold->kept; ++k)
        if (m_kernel->driftError(k) >= 0.1 * m_allowed_V)
            m_regimes[static_cast<std::size_t>(m_fold->keptPort[static_cast<std::size_t>(k)])] = bends;
    straightHolds(true);
    return false;
}

double ExponentialMarch::attempt(double h) {
    m_h = m_end = h;
    m_lampModels.clear();
    constexpr double failed = std::numeric_limits<double>::infinity();
    for (int retake = 0; retake < 4; ++retake) {
        const double error = m_kernel->attempt(h);
        if (!std::isfinite(error) || !m_kernel->endAt(h)) return failed;
        if (endHolds(error)) return error;
        ports(false, m_u.data());
        std::copy(m_kernel->base.y.begin(), m_kernel->base.y.begin() + m_fold->n, m_y.begin());
        if (!begin(m_y.data())) {
            m_lost = true;
            break;
        }
    }
    return failed;
}

double ExponentialMarch::attemptToRise(double h, int timer, int row, double after_s, double& rise_s) {
    m_h = m_end = h;
    m_lampModels.clear();
    rise_s = -1;
    const double error = m_kernel->attempt(h);
    if (!(error <= m_allowed_V)) return error;
    RowModel<double> model = m_kernel->model(4 * timer + row);
    double rate = 0;
    const double left = 0.1 * m_band.shift * h; // what is left of the switching's time then [s]
    model.start += m_memory->excess;
    const auto t = modelRise(model, rate, 0.3 * left);
    if (!t) return attempt(h);
    double rise = *t;
    bool landed = false;
    for (int pass = 0; pass < 3; ++pass) {
        const double end = rise + after_s;
        if (!(end <= h) || m_kernel->endError(end) > 0.1 * m_allowed_V || !endAt(end)) return attempt(h);
        if (landed) break;
        double slope = 0;
        const double excess = this->row(timer, row, true) - m_kernel->value(model, end, slope);
        // The model with what is known of its excess is at its level at the first guess.
        const double off = pass == 0 ? 0 : m_kernel->value(model, rise, slope);
        m_memory->excess += pass == 0 ? excess : 0;
        const double shift = rate > 0 ? -(off + excess) / rate : 0;
        if (std::abs(shift) <= left) break;
        if (pass == 2 || std::abs(shift) > 0.01 * h) return attempt(h);
        rise += shift;
        landed = std::abs(shift) <= 30 * left;
    }
    if (!endHolds(error)) return attempt(h);
    rise_s = rise;
    return error;
}

bool ExponentialMarch::endAt(double t) {
    m_end = t;
    return m_kernel->endAt(t);
}

bool ExponentialMarch::accept() {
    m_lampModels.clear();
    // Ports that are straight at both ends of the step need not be iterated further.
    bool straighter = false;
    StraightBand margin = m_band;
    margin.widths += 1;
    for (int k = 0; k < m_fold->q; ++k) {
        const auto port = static_cast<std::size_t>(m_fold->keptPort[static_cast<std::size_t>(k)]);
        const auto& law = m_fold->laws[static_cast<std::size_t>(k)];
        const int piece = law.regime(m_kernel->end.u[static_cast<std::size_t>(k)], margin);
        if (piece == 0 || law.regime(m_kernel->base.u[static_cast<std::size_t>(k)], m_band) != piece)
            continue;
        m_regimes[port] = static_cast<std::uint8_t>(piece);
        straighter = true;
    }
    if (!straighter) return m_kernel->accept(true);
    m_y.assign(m_kernel->end.y.begin(), m_kernel->end.y.begin() + m_fold->n);
    ports(true, m_u.data());
    return begin(m_y.data());
}

Watched ExponentialMarch::watched(int timer, bool atEnd) const {
    return {row(timer, 0, atEnd), row(timer, 1, atEnd), row(timer, 2, atEnd), row(timer, 3, atEnd)};
}

void ExponentialMarch::ports(bool atEnd, double* u) const {
    const auto& point = atEnd ? m_kernel->end : m_kernel->base;
    for (int k = 0; k < m_fold->kept; ++k)
        u[m_fold->keptPort[static_cast<std::size_t>(k)]] = point.u[static_cast<std::size_t>(k)];
    for (int k = 0; k < m_fold->straight; ++k)
        u[m_fold->straightPort[static_cast<std::size_t>(k)]] =
            m_fold->row(m_fold->rows + k, point.y.data(), point.i.data());
}

Charge ExponentialMarch::charge(int index) {
    while (static_cast<int>(m_lampModels.size()) <= index)
        m_lampModels.push_back(m_kernel->model(4 * static_cast<int>(m_memory->reduced->board->timers.size()) +
                                               static_cast<int>(m_lampModels.size())));
    const auto charge = m_kernel->charge(m_lampModels[static_cast<std::size_t>(index)], m_end);
    return {charge.value, charge.error};
}

void ExponentialMarch::keep(std::vector<double>& numbers) const {
    const auto at = numbers.size();
    const DenseOutput layout(m_fold->n);
    const auto m = static_cast<std::size_t>(m_memory->reduced->m);
    numbers.resize(at + layout.size() + 2 * m);
    m_kernel->keep(numbers.data() + at);
    ports(false, numbers.data() + at + layout.size());
    ports(true, numbers.data() + at + layout.size() + m);
}

std::optional<double> ExponentialMarch::foreseenRise(int timer, int row, double h) const {
    const RowModel<double> model = m_kernel->model(4 * timer + row);
    if (model.start > 0) return std::nullopt;
    double rate = 0;
    if (!(m_kernel->foresee(model, h, rate) > 0)) return std::nullopt;
    double low = 0, high = h;
    m_kernel->foresee(model, 0, rate);
    double t = rate > 0 ? std::min(-model.start / rate, h) : 0.5 * h;
    for (int k = 0; k < 40; ++k) {
        const double x = m_kernel->foresee(model, t, rate);
        (x > 0 ? high : low) = t;
        double next = rate > 0 ? t - x / rate : 0.5 * (low + high);
        if (!(next >= low && next <= high)) next = 0.5 * (low + high);
        const bool close = std::abs(next - t) <= 1e-4 * t;
        t = next;
        if (close) break;
    }
    return t;
}

/// The rise by the step's own model, and the model's rate there.
std::optional<double> ExponentialMarch::modelRise(const RowModel<double>& model, double& rate,
                                                  double near_s) const {
    if (model.start > 0) return std::nullopt;
    double low = 0, high = m_h, rateAtEnd = 0;
    const double atEnd = m_kernel->value(model, m_h, rateAtEnd);
    if (!(atEnd > 0)) {
        // A step that moves far may pass the level and come back.
        if (!(rateAtEnd < 0)) return std::nullopt;
        bool found = false;
        for (int k = 1; k < 8 && !found; ++k) {
            high = m_h * k / 8;
            found = m_kernel->value(model, high, rate) > 0;
        }
        if (!found) return std::nullopt;
    }
    // Newton's method on the step's own model, kept between a point before and a point after.
    double t = high;
    if (atEnd > 0 && rateAtEnd > 0) t = std::max(m_h - atEnd / rateAtEnd, 0.0);
    for (int k = 0; k < 60; ++k) {
        const double x = m_kernel->value(model, t, rate);
        (x > 0 ? high : low) = t;
        double next = rate > 0 ? t - x / rate : 0.5 * (low + high);
        if (!(next >= low && next <= high)) next = 0.5 * (low + high);
        // Newton's step leaves but its square behind.
        const double step = std::abs(next - t);
        const bool close = step <= 1e-9 * m_h || step * step <= near_s * m_h || high - low <= 1e-15 * m_h;
        t = next;
        if (close) break;
    }
    return t;
}

std::optional<double> ExponentialMarch::riseOf(int timer, int row) {
    const RowModel<double> model = m_kernel->model(4 * timer + row);
    double rate = 0;
    const auto found = modelRise(model, rate, 1e-18 * m_h);
    if (!found) return std::nullopt;
    double t = *found;
    // The model takes the ports' remainders from the stages; with the ports solved there, its rate shows the
    // rest.
    for (int k = 0; k < 3; ++k) {
        if (!endAt(t)) return t;
        const double x = m_fold->row(4 * timer + row, m_kernel->end.y.data(), m_kernel->end.i.data());
        const double shift = rate > 0 ? std::clamp(-x / rate, -0.01 * m_h, 0.01 * m_h) : 0;
        t = std::max(t + shift, 0.0);
        if (std::abs(shift) <= m_band.shift * m_h) break; // what is left is a small share of it
    }
    return t;
}

} // namespace blinkwright::engine
