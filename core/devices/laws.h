// The device laws with their derivatives: the engine's inner loop. Voltages in volt, currents in ampere,
// temperature 300 K. Every function is smooth, monotone in its voltage and finite for any finite voltage. V
// is double, or Lanes for many boards at once.
//
//   Law i = junction(lamp.law, 1.85);                        // i.current [A], i.slope [S]
//   OutputHighCurve high = outputHighCurve(sheet);
//   double inner = 0;                                        // warm start, kept by the caller
//   Law source = outputHighBipolar(high, v8 - v3, inner);
#pragma once

#include "core/base/lanes.h"
#include "core/devices/sheets.h"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace blinkwright::devices {

/// A current and its derivative by the voltage.
template <class V>
struct LawOf {
    V current{}; ///< [A]
    V slope{};   ///< [S]
};
using Law = LawOf<double>;

/// A value and its derivative by x.
template <class V>
struct Smooth {
    V value;
    V slope;
};

/// s(x) = 1/(1 + e^-x), without overflow.
template <class V>
BLINKWRIGHT_INLINE V logistic(V x) {
    if (all(x > V(37))) return V(1); // e^-37 is below the rounding of 1
    const V e = lane::exponential(-lane::magnitude(x));
    const V q = 1 / (1 + e);
    return select(x >= V(0), q, e * q);
}

/// sp(x) = ln(1 + e^x) and its derivative s(x), without overflow.
template <class V>
BLINKWRIGHT_INLINE Smooth<V> softPlus(V x) {
    if (all(x > V(35))) return {x, V(1)}; // e^-35 is below the rounding of x
    if (all(x < V(-700))) return {V(0), V(0)};
    const V e = lane::exponential(-lane::magnitude(x));
    const V q = 1 / (1 + e);
    const auto right = x >= V(0);
    return {select(right, x, V(0)) + lane::logarithm1p(e), select(right, q, e * q)};
}

/// L(x, m) = x / sqrt(1 + (x/m)^2), a soft limit of x at +-m, and its derivative.
/// @param limit m, >= 0; may be infinite (no limit); 0 gives 0.
template <class V>
BLINKWRIGHT_INLINE Smooth<V> softLimit(V x, V limit) {
    const auto limited = limit > V(0);
    const V r = select(limited, x / limit, V(0));
    const auto far = lane::magnitude(r) > V(1e100); // r * r would overflow
    const V q = 1 / lane::root(1 + select(far, V(0), r * r));
    const V value = select(far, select(x < V(0), -limit, limit), x * q);
    return {select(limited, value, V(0)), select(limited, select(far, V(0), q * q * q), V(0))};
}

namespace detail {
inline constexpr double idleWidth = 0.1;       // [V], knee of the own current
inline constexpr double leakWidth = 0.1;       // [V]
inline constexpr double dischargeWidth = 0.01; // [V], knee of the discharge stage
inline constexpr double lowWidth = 0.02;       // [V], knee of the bipolar output's second path
inline constexpr double lowKneeLimit = 0.6;    // [A]
inline constexpr double outputIdeality = 2.0;  // of the junction in the bipolar output high
} // namespace detail

/// A junction without its series resistance: saturation (exp(u/nVt) - 1) + junctionShunt u; where the
/// exponential carries junctionTangentCurrent, it goes on as its tangent.
/// @param saturation [A] @param nVt [V] @param u voltage across the junction alone [V].
template <class V>
BLINKWRIGHT_INLINE LawOf<V> junction(V saturation, V nVt, V u) {
    const V e = saturation * lane::exponential(lane::smaller(u / nVt, V(700)));
    const V total = junctionTangentCurrent + saturation;
    const auto beyond = e > total;
    LawOf<V> law{e - saturation, e / nVt};
    if (any(beyond)) {
        const V from = nVt * lane::logarithm(total / saturation);
        law.current = select(beyond, junctionTangentCurrent + total / nVt * (u - from), law.current);
        law.slope = select(beyond, total / nVt, law.slope);
    }
    return {law.current + junctionShunt * u, law.slope + junctionShunt};
}
inline Law junction(const JunctionLaw& law, double u) {
    return junction(law.saturation, law.nVt, u);
}

/// The inverse of junction(): the voltage across the junction that carries a current, to rounding error.
inline double junctionVoltage(const JunctionLaw& law, double current) {
    double u = current > 0 ? law.nVt * std::log1p(std::min(current, junctionTangentCurrent) / law.saturation)
                           : current / (law.saturation / law.nVt + junctionShunt);
    for (int k = 0; k < 50; ++k) { // from the right of the root of a convex function: falls monotonically
        const Law at = junction(law, u);
        const double step = (at.current - current) / at.slope;
        u -= step;
        if (std::abs(step) <= 1e-15 * std::abs(u)) break;
    }
    return u;
}

/// The bipolar output high: V8 - V3 = u(I) + resistance I + cubic I^3, where u(I) is a junction.
template <class V>
struct OutputHighCurveOf {
    V saturation{}; ///< of the junction [A]
    V resistance{}; ///< [ohm]
    V cubic{};      ///< [ohm/A^2]
    static constexpr double nVt = detail::outputIdeality * thermalVoltage;
};
using OutputHighCurve = OutputHighCurveOf<double>;

/// The curve of a sheet. The junction, n = 2 and its shunt included, carries 1 mA at `high_drop_1mA`; a drop
/// under 1 uV counts as 1 uV (an ideal output), one over 30 V as 30 V.
inline OutputHighCurve outputHighCurve(const TimerSheet& sheet) {
    const double drop = std::clamp(sheet.high_drop_1mA, 1e-6, 30.0);
    return {.saturation = (1e-3 - junctionShunt * drop) / std::expm1(drop / OutputHighCurve::nVt),
            .resistance = sheet.high_resistance,
            .cubic = sheet.high_cubic};
}

/// Current that the bipolar output sources while high, and its derivative by V8 - V3.
/// @param v V8 - V3 [V]. Below 0 only the junction's reverse current flows.
/// @param u voltage across the inner junction: a first guess going in (any finite number), the solution
/// coming out.
template <class V>
BLINKWRIGHT_INLINE LawOf<V> outputHighBipolar(const OutputHighCurveOf<V>& curve, std::type_identity_t<V> v,
                                              V& u) {
    constexpr double nVt = OutputHighCurveOf<V>::nVt;
    // The root lies between 0 and v, since resistance and cubic only take up voltage.
    V low = lane::smaller(v, V(0));
    V high = lane::larger(v, V(0));
    u = lane::smaller(lane::larger(u, low), high);
    LawOf<V> at;
    V series(0); // derivative of the resistive drop by the current
    for (int k = 0; k < 100; ++k) {
        at = junction(curve.saturation, V(nVt), u);
        const V square = at.current * at.current;
        series = curve.resistance + 3 * curve.cubic * square;
        const V excess = u + (curve.resistance + curve.cubic * square) * at.current - v;
        const auto above = excess > V(0);
        high = select(above, u, high);
        low = select(above, low, u);
        V step = -excess / (1 + series * at.slope);
        const auto close = lane::magnitude(step) <= V(1e-9 * nVt);
        if (all(close)) { // what is left after this step is its square: below rounding
            u += step;
            at.current += at.slope * step;
            break;
        }
        // Going up, a tangent overshoots an exponential: go as far as the logarithm would.
        const auto far = step > V(nVt);
        if (any(far)) step = select(far, nVt * lane::logarithm(1 + step / nVt), step);
        V next = u + step;
        next = select((next >= low) & (next <= high), next, 0.5 * (low + high));
        const auto moved = (next < u) | (next > u);
        if (!any(moved)) break;
        u = next;
    }
    return {at.current, at.slope / (1 + series * at.slope)};
}

/// Parameters of the bipolar output low: [ohm], [A], [V], [ohm].
template <class V>
struct OutputLow {
    V resistance, limit, knee, kneeResistance;
};
/// Current that the bipolar output sinks while low. @param v V3 against pin 1 [V].
template <class V>
BLINKWRIGHT_INLINE LawOf<V> outputLowBipolar(const OutputLow<V>& out, V v) {
    const Smooth<V> first = softLimit(v / out.resistance, out.limit);
    const Smooth<V> knee = softPlus((v - out.knee) / detail::lowWidth);
    const Smooth<V> second =
        softLimit(detail::lowWidth / out.kneeResistance * knee.value, V(detail::lowKneeLimit));
    return {first.value + second.value,
            first.slope / out.resistance + second.slope * knee.slope / out.kneeResistance};
}
inline Law outputLowBipolar(const TimerSheet& sheet, double v) {
    return outputLowBipolar(
        OutputLow<double>{sheet.low_resistance, sheet.low_limit, sheet.low_knee, sheet.low_knee_resistance},
        v);
}

/// A CMOS output in either state: L(v/resistance, limit), both directions.
/// @param v V8 - V3 while high (current out of the pin), V3 against pin 1 while low (current into it).
template <class V>
BLINKWRIGHT_INLINE LawOf<V> outputCmos(V resistance, V limit, V v) {
    const Smooth<V> i = softLimit(v / resistance, limit);
    return {i.value, i.slope / resistance};
}

/// A leak that saturates: current x tanh(v/0.1 V). The discharge pin while off, the CMOS reset input.
template <class V>
BLINKWRIGHT_INLINE LawOf<V> leak(V current, V v) {
    const V t = 2 * logistic(2 * v / detail::leakWidth) - 1;
    return {current * t, current * (1 - t * t) / detail::leakWidth};
}

/// Parameters of the discharge pin while the output is low: [ohm], [V], [A].
template <class V>
struct DischargeLow {
    V resistance, offset, limit;
    V foot; ///< what the knee gives at no voltage, in widths: sp(-offset/width)
    static DischargeLow of(V resistance, V offset, V limit) {
        return {resistance, offset, limit, softPlus(-offset / detail::dischargeWidth).value};
    }
};
/// Current into the discharge pin while the output is low. @param v V7 against pin 1 [V].
template <class V>
BLINKWRIGHT_INLINE LawOf<V> dischargeLow(const DischargeLow<V>& pin, V v) {
    const V offset = pin.offset / detail::dischargeWidth;
    const Smooth<V> knee = softPlus(v / detail::dischargeWidth - offset);
    const V drive = knee.value - pin.foot; // no current at no voltage
    const Smooth<V> i = softLimit(detail::dischargeWidth / pin.resistance * drive, pin.limit);
    return {i.value, i.slope * knee.slope / pin.resistance};
}
/// @param low whether the output is low.
inline Law discharge(const TimerSheet& sheet, bool low, double v) {
    if (!low) return leak(sheet.discharge_leakage, v);
    return dischargeLow(
        DischargeLow<double>::of(sheet.discharge_resistance, sheet.discharge_offset, sheet.discharge_limit),
        v);
}

/// Parameters of the timer's own current: [S], [V], and [A] more while the output is low.
template <class V>
struct Idle {
    V slope, offset, extra;
};
/// The timer's own current from pin 8 to pin 1; divider, inputs and output are extra. @param v8 V8 against
/// pin 1 [V].
template <class V>
BLINKWRIGHT_INLINE LawOf<V> idle(const Idle<V>& own, V v8) {
    const Smooth<V> rise = softPlus((v8 - own.offset) / detail::idleWidth);
    const V on = logistic((v8 - 1) / detail::idleWidth); // nothing works under about a volt
    const V full = rise.value * detail::idleWidth * own.slope + own.extra;
    return {full * on, rise.slope * own.slope * on + full * on * (1 - on) / detail::idleWidth};
}
inline Law idle(const TimerSheet& sheet, bool outputLow, double v8) {
    return idle(Idle<double>{sheet.idle_slope, sheet.idle_offset, outputLow ? sheet.idle_low_extra : 0}, v8);
}

/// Input current of a differential pair, which flows only while its input is on the conducting side of its
/// level.
/// @param x how far the input is on the conducting side [V]: V6 - V5 for the threshold (sunk by the pin),
/// V5/2 - V2 for the trigger (sourced out of pin 8). The slope is by x.
template <class V>
BLINKWRIGHT_INLINE LawOf<V> conductingSide(V current, V x) {
    const double width = 2 * thermalVoltage;
    const V share = logistic(x / width);
    return {current * share, current * share * (1 - share) / width};
}

} // namespace blinkwright::devices
