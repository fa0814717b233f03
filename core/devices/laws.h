// The device laws as scalar functions with their derivatives: the engine's inner loop. Voltages in volt,
// currents in ampere, temperature 300 K. Every function is smooth, monotone in its voltage and finite for any
// finite voltage.
//
//   Law i = junction(lamp.law, 1.85);                        // i.current [A], i.slope [S]
//   OutputHighCurve high = outputHighCurve(sheet);
//   double inner = 0;                                        // warm start, kept by the caller
//   Law source = outputHighBipolar(high, v8 - v3, inner);
#pragma once

#include "core/devices/sheets.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::devices {

/// A current and its derivative by the voltage.
struct Law {
    double current = 0; ///< [A]
    double slope = 0;   ///< [S]
};

/// s(x) = 1/(1 + e^-x), without overflow.
inline double logistic(double x) {
    if (x > 37) return 1; // e^-37 is below the rounding of 1
    const double e = std::exp(-std::abs(x));
    return x >= 0 ? 1 / (1 + e) : e / (1 + e);
}

/// A value and its derivative by x.
struct Smooth {
    double value;
    double slope;
};

/// sp(x) = ln(1 + e^x) and its derivative s(x), without overflow.
inline Smooth softPlus(double x) {
    if (x > 35) return {x, 1}; // e^-35 is below the rounding of x
    const double e = std::exp(-std::abs(x));
    return x >= 0 ? Smooth{x + std::log1p(e), 1 / (1 + e)} : Smooth{std::log1p(e), e / (1 + e)};
}

/// L(x, m) = x / sqrt(1 + (x/m)^2), a soft limit of x at +-m, and its derivative.
/// @param limit m, >= 0; may be infinite (no limit); 0 gives 0.
inline Smooth softLimit(double x, double limit) {
    if (!(limit > 0)) return {0, 0};
    const double r = x / limit;
    if (std::abs(r) > 1e100) return {std::copysign(limit, x), 0}; // r * r would overflow
    const double q = 1 / std::sqrt(1 + r * r);
    return {x * q, q * q * q};
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
/// @param u voltage across the junction alone [V].
inline Law junction(const JunctionLaw& law, double u) {
    const double x = u / law.nVt;
    const double forward = law.saturation * (std::exp(std::min(x, 700.0)) - 1);
    if (forward <= junctionTangentCurrent)
        return {forward + junctionShunt * u, (forward + law.saturation) / law.nVt + junctionShunt};
    const double total = junctionTangentCurrent + law.saturation;
    const double from = law.nVt * std::log(total / law.saturation);
    const double slope = total / law.nVt;
    return {junctionTangentCurrent + slope * (u - from) + junctionShunt * u, slope + junctionShunt};
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
struct OutputHighCurve {
    JunctionLaw inner; ///< without series resistance
    double resistance = 0;
    double cubic = 0; ///< [ohm/A^2]
};

/// The curve of a sheet. The junction, n = 2 and its shunt included, carries 1 mA at `high_drop_1mA`; a drop
/// under 1 uV counts as 1 uV (an ideal output), one over 30 V as 30 V.
inline OutputHighCurve outputHighCurve(const TimerSheet& sheet) {
    const double drop = std::clamp(sheet.high_drop_1mA, 1e-6, 30.0);
    OutputHighCurve curve;
    curve.inner.nVt = detail::outputIdeality * thermalVoltage;
    curve.inner.saturation = (1e-3 - junctionShunt * drop) / std::expm1(drop / curve.inner.nVt);
    curve.resistance = sheet.high_resistance;
    curve.cubic = sheet.high_cubic;
    return curve;
}

/// Current that the bipolar output sources while high, and its derivative by V8 - V3.
/// @param v V8 - V3 [V]. Below 0 only the junction's reverse current flows.
/// @param u voltage across the inner junction: a first guess going in (any finite number), the solution
/// coming out.
inline Law outputHighBipolar(const OutputHighCurve& curve, double v, double& u) {
    const double nVt = curve.inner.nVt;
    // The root lies between 0 and v, since resistance and cubic only take up voltage.
    double low = std::min(v, 0.0);
    double high = std::max(v, 0.0);
    u = std::clamp(u, low, high);
    Law at;
    double series = 0; // derivative of the resistive drop by the current
    for (int k = 0; k < 100; ++k) {
        at = junction(curve.inner, u);
        const double square = at.current * at.current;
        series = curve.resistance + 3 * curve.cubic * square;
        const double excess = u + (curve.resistance + curve.cubic * square) * at.current - v;
        (excess > 0 ? high : low) = u;
        double step = -excess / (1 + series * at.slope);
        if (std::abs(step) <= 1e-9 * nVt) { // what is left after this step is its square: below rounding
            u += step;
            at.current += at.slope * step;
            break;
        }
        // Going up, a tangent overshoots an exponential: go as far as the logarithm would.
        if (step > nVt) step = nVt * std::log1p(step / nVt);
        double next = u + step;
        if (!(next >= low && next <= high)) next = 0.5 * (low + high);
        if (next == u) break;
        u = next;
    }
    return {at.current, at.slope / (1 + series * at.slope)};
}

/// Current that the bipolar output sinks while low. @param v V3 against pin 1 [V].
inline Law outputLowBipolar(const TimerSheet& sheet, double v) {
    const Smooth first = softLimit(v / sheet.low_resistance, sheet.low_limit);
    const Smooth knee = softPlus((v - sheet.low_knee) / detail::lowWidth);
    const Smooth second =
        softLimit(detail::lowWidth / sheet.low_knee_resistance * knee.value, detail::lowKneeLimit);
    return {first.value + second.value,
            first.slope / sheet.low_resistance + second.slope * knee.slope / sheet.low_knee_resistance};
}

/// A CMOS output in either state: L(v/resistance, limit), both directions.
/// @param v V8 - V3 while high (current out of the pin), V3 against pin 1 while low (current into it).
inline Law outputCmos(double resistance, double limit, double v) {
    const Smooth i = softLimit(v / resistance, limit);
    return {i.value, i.slope / resistance};
}

/// A leak that saturates: current x tanh(v/0.1 V). The discharge pin while off, the CMOS reset input.
inline Law leak(double current, double v) {
    const double t = std::tanh(v / detail::leakWidth);
    return {current * t, current * (1 - t * t) / detail::leakWidth};
}

/// Current into the discharge pin. @param low whether the output is low. @param v V7 against pin 1 [V].
inline Law discharge(const TimerSheet& sheet, bool low, double v) {
    if (!low) return leak(sheet.discharge_leakage, v);
    const double offset = sheet.discharge_offset / detail::dischargeWidth;
    const Smooth knee = softPlus(v / detail::dischargeWidth - offset);
    const double drive = knee.value - softPlus(-offset).value; // no current at no voltage
    const Smooth i =
        softLimit(detail::dischargeWidth / sheet.discharge_resistance * drive, sheet.discharge_limit);
    return {i.value, i.slope * knee.slope / sheet.discharge_resistance};
}

/// The timer's own current from pin 8 to pin 1; divider, inputs and output are extra. @param v8 V8 against
/// pin 1 [V].
inline Law idle(const TimerSheet& sheet, bool outputLow, double v8) {
    const Smooth rise = softPlus((v8 - sheet.idle_offset) / detail::idleWidth);
    const double on = logistic((v8 - 1) / detail::idleWidth); // nothing works under about a volt
    const double full =
        rise.value * detail::idleWidth * sheet.idle_slope + (outputLow ? sheet.idle_low_extra : 0);
    return {full * on, rise.slope * sheet.idle_slope * on + full * on * (1 - on) / detail::idleWidth};
}

/// Input current of a differential pair, which flows only while its input is on the conducting side of its
/// level.
/// @param x how far the input is on the conducting side [V]: V6 - V5 for the threshold (sunk by the pin),
/// V5/2 - V2 for the trigger (sourced out of pin 8). The slope is by x.
inline Law conductingSide(double current, double x) {
    const double width = 2 * thermalVoltage;
    const double share = logistic(x / width);
    return {current * share, current * share * (1 - share) / width};
}

} // namespace blinkwright::devices
