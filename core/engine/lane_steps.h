// The steps of a LaneRun: how long, where a level is crossed, what a step may err by. Part of lane_run.h,
// which includes it.
#pragma once

#include "core/engine/lane_run.h"

namespace blinkwright::engine {

template <class V>
inline auto LaneRun<V>::attempt(V h, Mask active, Mask looking, int watched, bool sleeping, Mask asleep)
    -> Attempt {
    const V allowed(m_plan.voltageAllowed_V), delay(m_plan.delay_s);
    Attempt out;
    for (int again = 0; again < 4; ++again) {
        out.error = m_kernel->attempt(h);
        const Mask counts = active & (out.error <= allowed);
        out.end = out.at = h;
        out.follows = out.retake = maskOf<V>(false);
        const RowModel<V> watch = watchModel(watched, sleeping, asleep);
        out.crossed = rise(watch, h, counts & looking, out.at);
        if (any(out.crossed)) {
            const V shorter = (out.at + delay) * (1 + 1e-4);
            // its inside is less exact than its end
            out.retake = out.crossed & (m_kernel->endError(out.at) > 0.1 * allowed) & (shorter < 0.999 * h);
            out.crossed = out.crossed & !out.retake;
            out.follows = out.crossed & !asleep & (out.at + delay <= 1.001 * h);
            out.end = select(out.crossed, select(out.follows, out.at + delay, out.at), h);
        }
        out.solved = m_kernel->endAt(out.end);
        if (any(out.crossed)) {
            // The model takes the ports' remainders from the stages; what the solved ports say besides:
            V rate(0);
            const V model = m_kernel->value(watch, out.end, rate);
            const V miss = watchedRow(watched, sleeping, asleep) - model;
            const Mask slopes = out.crossed & (rate > V(0));
            const V most = 0.01 * h;
            V shift = select(slopes, -miss / select(slopes, rate, V(1)), V(0));
            shift = lane::smaller(lane::larger(shift, -most), most);
            if (any(lane::magnitude(shift) > V(0.1 * m_plan.band.shift) * h)) {
                out.end = lane::larger(out.end + shift, V(0));
                out.at = lane::larger(out.at + shift, V(0));
                out.solved = m_kernel->endAt(out.end);
            }
        }
        V drift(0);
        for (int k = m_fold->q; k < m_fold->kept; ++k) drift += m_kernel->driftError(k);
        const Mask strong = counts & (drift > 0.3 * allowed);
        if (any(strong)) {
            for (int k = m_fold->q; k < m_fold->kept; ++k)
                if (any(strong & (m_kernel->driftError(k) >= 0.1 * allowed)))
                    m_regimes[static_cast<std::size_t>(m_fold->keptPort[static_cast<std::size_t>(k)])] =
                        bends;
            straightHolds(true, counts);
        } else if (straightHolds(true, counts)) {
            return out;
        }
        ports(m_u.data());
        V y[mostStates];
        for (int k = 0; k < m_n; ++k) y[k] = m_kernel->base.y[k];
        if (!start(y)) break;
    }
    out.error = V(never);
    return out;
}

template <class V>
inline V LaneRun<V>::foreseen(const RowModel<V>& watch, V h) const {
    V rate(0);
    const V atEnd = m_kernel->foresee(watch, h, rate);
    const Mask rises = (watch.start <= V(0)) & (atEnd > V(0));
    if (!any(rises)) return h;
    V low(0), high = h;
    m_kernel->foresee(watch, V(0), rate);
    V t = select(rate > V(0), lane::smaller(-watch.start / rate, h), 0.5 * h);
    Mask open = rises;
    for (int k = 0; k < 40 && any(open); ++k) {
        const V x = m_kernel->foresee(watch, t, rate);
        refine(x, rate, t, low, high, open, 1e-3 * t);
    }
    return select(rises, lane::smaller(h, 1.002 * t + V(m_plan.delay_s)), h);
}

template <class V>
BLINKWRIGHT_INLINE void LaneRun<V>::refine(V x, V rate, V& t, V& low, V& high, Mask& open, V close) {
    const Mask after = x > V(0);
    high = select(after & open, t, high);
    low = select(after | !open, low, t);
    const V middle = 0.5 * (low + high);
    V next = select(rate > V(0), t - x / rate, middle);
    next = select((next >= low) & (next <= high), next, middle);
    const V step = lane::magnitude(next - t);
    t = select(open, next, t);
    open = open & (step > close);
}

template <class V>
inline auto LaneRun<V>::rise(const RowModel<V>& watch, V h, Mask look, V& at) const -> Mask {
    V rate(0), rateAtEnd(0);
    const V atEnd = m_kernel->value(watch, h, rateAtEnd);
    const Mask before = look & (watch.start <= V(0));
    Mask rises = before & (atEnd > V(0));
    V high = h;
    at = select(rises & (rateAtEnd > V(0)), lane::larger(h - atEnd / rateAtEnd, V(0)), h);
    Mask turning = before & !rises & (rateAtEnd < V(0));
    if (any(turning)) // a step that moves far may pass the level and come back
        for (int k = 1; k < 8; ++k) {
            const V t = h * V(k / 8.0);
            const Mask found = turning & (m_kernel->value(watch, t, rate) > V(0));
            high = select(found, t, high);
            at = select(found, t, at);
            rises = rises | found;
            turning = turning & !found;
        }
    V low(0);
    Mask open = rises;
    // Newton's last step leaves its square behind.
    const V close = 0.003 * std::sqrt(m_plan.accuracy) * h;
    for (int k = 0; k < 60 && any(open); ++k) {
        const V x = m_kernel->value(watch, at, rate);
        refine(x, rate, at, low, high, open, close);
    }
    return rises;
}

template <class V>
inline V LaneRun<V>::chargeError(V h, V phaseTime) {
    V worst(0);
    for (std::size_t l = 0; l < m_lamps.size(); ++l) {
        Lamp& lamp = m_lamps[l];
        m_lampModels[l] = m_kernel->model(4 + static_cast<int>(l));
        const ChargeOf<V> charge = m_kernel->charge(m_lampModels[l], h);
        lamp.last_C = charge.value;
        const V dark = m_plan.darkShare * m_plan.ratedCurrent[l] * (phaseTime + h);
        V scale = lane::larger(lamp.cycle_C, lane::magnitude(lamp.phase_C) + lane::magnitude(charge.value));
        scale = lane::larger(lane::larger(scale, dark), V(1e-15));
        worst = lane::larger(worst, lane::magnitude(charge.error) / scale);
        // a comparison with what is not a number leaves `worst` as it was
        worst = select(lane::finite(charge.error), worst, V(never));
    }
    return worst / V(m_plan.chargeAllowed);
}

template <class V>
inline auto LaneRun<V>::tripped(bool high, const StepPoint<V>& point) const -> Mask {
    const V trigger = row(0, point), threshold = row(1, point), reset = row(2, point);
    if (high) return (reset > V(0)) | ((threshold > V(0)) & (trigger < V(0)));
    return (reset >= V(0)) | (trigger > V(0));
}

template <class V>
inline V LaneRun<V>::firstStep(int phase) const {
    V known(0);
    if (m_pilot && !m_learning)
        known = V(m_pilot->entries[static_cast<std::size_t>(phase < 3 ? phase : 2 - phase % 2)].firstStep_s);
    if (phase > 2 || m_learning) known = select(m_side->knowsFirstStep, m_side->firstStep, known);
    V speed(0);
    for (int k = 0; k < m_n; ++k) speed = lane::larger(speed, lane::magnitude(m_kernel->rate()[k]));
    const Mask moves = speed > V(0);
    const V bySpeed =
        select(moves, lane::smaller(lane::larger(1e-2 / select(moves, speed, V(1)), V(1e-9)), V(1)), V(1e-3));
    return select(known > V(0), known, bySpeed);
}

template <class V>
inline RowModel<V> LaneRun<V>::watchModel(int watched, bool sleeping, Mask asleep) const {
    RowModel<V> watch = m_kernel->model(watched);
    if (!sleeping) return watch;
    const RowModel<V> supply = m_kernel->model(3);
    watch.start = select(asleep, supply.start, watch.start);
    for (int k = 0; k < m_n; ++k) watch.byMode[k] = select(asleep, supply.byMode[k], watch.byMode[k]);
    for (int k = 0; k < m_fold->kept; ++k)
        watch.byRemainder[k] = select(asleep, supply.byRemainder[k], watch.byRemainder[k]);
    return watch;
}

template <class V>
inline V LaneRun<V>::watchedRow(int watched, bool sleeping, Mask asleep) const {
    const V level = row(watched, m_kernel->end);
    return sleeping ? select(asleep, row(3, m_kernel->end), level) : level;
}

} // namespace blinkwright::engine
