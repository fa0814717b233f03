#include "core/study/lamp_drive.h"

#include "core/devices/laws.h"
#include "core/study/figures.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::study {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The x from low to high at which a rising function reaches a value.
template <class Function>
double solved(double value, double low, double high, const Function& function) {
    for (int k = 0; k < 60; ++k) {
        const double middle = 0.5 * (low + high);
        (function(middle) < value ? low : high) = middle;
    }
    return high;
}

/// The voltage at which a rising law carries a current; infinite where it never does under `most`.
template <class Law>
double voltageAt(double current, double most, const Law& law) {
    return law(most) < current ? infinite : solved(current, 0, most, law);
}

} // namespace

double shortestTurn_s(const Wish& wish) {
    return std::min(wish.lit, 1 - wish.lit) / wish.fastest_Hz();
}

LampDrive::LampDrive(const Wish& wish)
    : m_wish(wish),
      m_timer(devices::timerSheet(wish.cmos ? devices::TimerFamily::cmos : devices::TimerFamily::bipolar,
                                  wish.supply_V, {})) {
    for (std::size_t k = 0; k < 2; ++k) {
        const std::string& colour = wish.colours.at(std::min(k, wish.colours.size() - 1));
        m_lamps[k] = devices::lampSheet(colour).value_or(*devices::lampSheet("red"));
    }
}

const devices::LampSheet& LampDrive::sheet(std::size_t lamp) const {
    return m_lamps[std::min<std::size_t>(lamp, 1)];
}

double LampDrive::lostHigh_V(double current_A) const {
    if (m_wish.cmos)
        return voltageAt(current_A, m_wish.supply_V, [&](double v) {
            return devices::outputCmos(m_timer.high_resistance, m_timer.high_limit, v).current;
        });
    const devices::OutputHighCurve curve = devices::outputHighCurve(m_timer);
    return voltageAt(current_A, m_wish.supply_V, [&](double v) {
        double inner = 0;
        return devices::outputHighBipolar(curve, v, inner).current;
    });
}

double LampDrive::lostLow_V(double current_A) const {
    return voltageAt(current_A, m_wish.supply_V, [&](double v) {
        return m_wish.cmos ? devices::outputCmos(m_timer.low_resistance, m_timer.low_limit, v).current
                           : devices::outputLowBipolar(m_timer, v).current;
    });
}

double LampDrive::forwardVoltage(std::size_t lamp, double current_A) const {
    const devices::LampSheet& at = sheet(lamp);
    const auto law =
        devices::JunctionLaw::through(at.forward_voltage, at.test_current, at.ideality, at.series_resistance);
    return law.ok()
               ? devices::junctionVoltage(law.value(), current_A) + law.value().seriesResistance * current_A
               : at.forward_voltage;
}

double LampDrive::current_A(std::size_t lamp) const {
    if (!m_wish.equalBrightness || m_wish.lamps != 2) return m_wish.lampCurrent_A;
    // Mean intensity: the intensity at one current, times the current (nearly proportional from 1 to 20 mA;
    // from memory of typical curves), times the share of the time that the lamp is lit.
    const bool known = m_wish.intensity_cd.size() == 2;
    const double first = m_wish.lit * (known ? m_wish.intensity_cd[0] : 1);
    const double second = (1 - m_wish.lit) * (known ? m_wish.intensity_cd[1] : 1);
    const double own = lamp == 0 ? first : second;
    return m_wish.lampCurrent_A * std::min(first, second) / own;
}

double LampDrive::resistorToGround(std::size_t lamp) const {
    const double i = current_A(lamp);
    return (m_wish.supply_V - lostHigh_V(i) - forwardVoltage(lamp, i)) / i;
}

double LampDrive::resistorToRail(std::size_t lamp) const {
    const double i = current_A(lamp);
    return (m_wish.supply_V - lostLow_V(i) - forwardVoltage(lamp, i)) / i;
}

double LampDrive::shorterTurn_s() const {
    return std::min(m_wish.lit, 1 - m_wish.lit) / m_wish.slowest_Hz();
}

double LampDrive::longerTurn_s() const {
    return std::max(m_wish.lit, 1 - m_wish.lit) / m_wish.slowest_Hz();
}

double LampDrive::pairTime_s() const {
    if (!m_wish.stayLit_s) return longerTurn_s() / pairFall;
    const double seen = litShare * std::max(sheet(0).rated_current, sheet(1).rated_current);
    // The weaker turn begins with less, since the lamp before it had less time to turn the capacitor round.
    const auto lasts = [&](double time_s) {
        const double weaker = m_wish.lampCurrent_A * std::expm1(-shorterTurn_s() / time_s) /
                              std::expm1(-longerTurn_s() / time_s);
        return time_s * std::log(std::max(weaker / seen, 1.0));
    };
    return solved(*m_wish.stayLit_s, 0, 1e3 * longerTurn_s(), lasts);
}

double LampDrive::resistorOfPair() const {
    const double i = m_wish.lampCurrent_A;
    const double swing =
        m_wish.supply_V - lostHigh_V(i) - lostLow_V(i) - forwardVoltage(0, i) - forwardVoltage(1, i);
    // The capacitor has taken up one lamp's drop when the other's turn begins, but has not been emptied of
    // all of it: with turns of a and b time constants, one begins with (1 - e^-b)/(1 - e^-(a+b)) of the rest,
    // the other with a in the place of b.
    const double a = m_wish.stayLit_s ? shorterTurn_s() / pairTime_s() : pairFall;
    const double b = m_wish.stayLit_s ? longerTurn_s() / pairTime_s() : pairFall;
    return std::expm1(-b) / std::expm1(-(a + b)) * swing / i;
}

} // namespace blinkwright::study
