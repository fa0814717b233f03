// The device laws once more, for the independent solver: written from the text of the laws, in other forms
// than the engine's, and sharing nothing with it but the numbers of a board. Voltages in volt, currents in
// ampere.
//
//   PairedLaw i = softKnee(v, 10, 0.03, 0.2);   // i.value, i.slope
//   Exponential red(saturation, nVt);
//   PairedLaw lamp = red.at(1.85);
#pragma once

#include <algorithm>
#include <cmath>

namespace blinkwright::reference {

inline constexpr double roomThermalVoltage = 0.02585; // k T/q at 300 K
inline constexpr double shuntConductance = 1e-9;      // across every junction [S]
inline constexpr double straightFrom = 10;            // a junction is straight past this current [A]

/// A value and its derivative.
struct PairedLaw {
    double value = 0;
    double slope = 0;
};

/// s(x) = 1/(1 + e^-x). Far out the exponential overflows to infinity, whose reciprocal is the right 0.
inline double sigmoid(double x) {
    return 1 / (1 + std::exp(-x));
}

/// sp(x) = ln(1 + e^x), as max(x, 0) and what is left.
inline PairedLaw rampOf(double x) {
    return {std::max(x, 0.0) + std::log1p(std::exp(-std::abs(x))), sigmoid(x)};
}

/// L(x, m) as m x/sqrt(m^2 + x^2): saturates at +-m.
inline PairedLaw saturated(double x, double limit) {
    if (std::isinf(limit)) return {x, 1};
    const double root = std::sqrt(limit * limit + x * x);
    const double share = limit / root;
    return {share * x, share * share * share};
}

/// A junction without its series resistance: exponential, shunt, and straight on from 10 A.
class Exponential {
  public:
    Exponential() = default;
    Exponential(double saturation, double nVt)
        : m_saturation(saturation), m_nVt(nVt), m_bend(nVt * std::log1p(straightFrom / saturation)) {}

    PairedLaw at(double u) const {
        const double e = std::expm1(std::min(u, m_bend) / m_nVt);
        const double steep = m_saturation * (e + 1) / m_nVt;
        double current = m_saturation * e;
        if (u > m_bend) current += steep * (u - m_bend);
        return {current + shuntConductance * u, steep + shuntConductance};
    }
    double nVt() const { return m_nVt; }

  private:
    double m_saturation = 1, m_nVt = 1, m_bend = 1;
};

/// Saturation current of a junction that carries `current` [A] at `volts`, its shunt counted.
inline double saturationThrough(double current, double volts, double nVt) {
    return (current - shuntConductance * volts) / std::expm1(volts / nVt);
}

/// current x tanh(v/0.1 V): a leak that saturates.
inline PairedLaw tanhLeak(double v, double current) {
    const double t = std::tanh(10 * v);
    return {current * t, 10 * current * (1 - t) * (1 + t)};
}

/// Discharge pin while the output is low: a resistance behind an offset, with a rounded knee of 10 mV,
/// limited.
inline PairedLaw softKnee(double v, double resistance, double offset, double limit) {
    constexpr double width = 0.010;
    const PairedLaw ramp = rampOf((v - offset) / width);
    const PairedLaw i = saturated(width / resistance * (ramp.value - rampOf(-offset / width).value), limit);
    return {i.value, i.slope * ramp.slope / resistance};
}

/// Bipolar output low: one limited resistance, and past a knee another beside it.
inline PairedLaw twoPaths(double v, double resistance, double limit, double knee, double kneeResistance) {
    constexpr double width = 0.020, kneeLimit = 0.6;
    const PairedLaw first = saturated(v / resistance, limit);
    const PairedLaw ramp = rampOf((v - knee) / width);
    const PairedLaw second = saturated(width * ramp.value / kneeResistance, kneeLimit);
    return {first.value + second.value,
            first.slope / resistance + second.slope * ramp.slope / kneeResistance};
}

/// The timer's own current. @param v pin 8 against pin 1.
inline PairedLaw ownCurrent(double v, double slope, double offset, double extra) {
    constexpr double width = 0.1;
    const PairedLaw ramp = rampOf((v - offset) / width);
    const double alive = sigmoid((v - 1) / width);
    const double full = ramp.value * width * slope + extra;
    return {full * alive, ramp.slope * slope * alive + full * alive * (1 - alive) / width};
}

/// One input of a differential pair. @param x how far the input is on its conducting side.
inline PairedLaw pairInput(double x, double current) {
    constexpr double width = 2 * roomThermalVoltage;
    const double share = sigmoid(x / width);
    return {current * share, current * share * (1 - share) / width};
}

} // namespace blinkwright::reference
