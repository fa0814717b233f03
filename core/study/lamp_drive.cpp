#include "core/study/lamp_drive.h"

#include "core/devices/laws.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::study {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// The voltage at which a rising law carries a current; infinite where it never does under `most`.
template <class Law>
double voltageAt(double current, double most, const Law& law) {
    if (law(most) < current) return infinite;
    double low = 0, high = most;
    for (int k = 0; k < 60; ++k) {
        const double middle = 0.5 * (low + high);
        (law(middle) < current ? low : high) = middle;
    }
    return high;
}

} // namespace

LampDrive::LampDrive(const Wish& wish) : m_wish(wish) {
    const auto family = wish.cmos ? devices::TimerFamily::cmos : devices::TimerFamily::bipolar;
    const devices::TimerSheet sheet = devices::timerSheet(family, wish.supply_V, {});
    const double i = wish.lampCurrent_A, most = wish.supply_V;
    if (wish.cmos) {
        m_lostHigh = voltageAt(i, most, [&](double v) {
            return devices::outputCmos(sheet.high_resistance, sheet.high_limit, v).current;
        });
        m_lostLow = voltageAt(i, most, [&](double v) {
            return devices::outputCmos(sheet.low_resistance, sheet.low_limit, v).current;
        });
    } else {
        const devices::OutputHighCurve curve = devices::outputHighCurve(sheet);
        m_lostHigh = voltageAt(i, most, [&](double v) {
            double inner = 0;
            return devices::outputHighBipolar(curve, v, inner).current;
        });
        m_lostLow = voltageAt(i, most, [&](double v) { return devices::outputLowBipolar(sheet, v).current; });
    }
}

double LampDrive::forwardVoltage(std::size_t lamp) const {
    const std::string& colour = m_wish.colours.at(std::min(lamp, m_wish.colours.size() - 1));
    const devices::LampSheet sheet = devices::lampSheet(colour).value_or(*devices::lampSheet("red"));
    const auto law = devices::JunctionLaw::through(sheet.forward_voltage, sheet.test_current, sheet.ideality,
                                                   sheet.series_resistance);
    return law.ok() ? devices::junctionVoltage(law.value(), m_wish.lampCurrent_A) +
                          law.value().seriesResistance * m_wish.lampCurrent_A
                    : sheet.forward_voltage;
}

double LampDrive::resistorToGround(std::size_t lamp) const {
    return (m_wish.supply_V - m_lostHigh - forwardVoltage(lamp)) / m_wish.lampCurrent_A;
}

double LampDrive::resistorToRail(std::size_t lamp) const {
    return (m_wish.supply_V - m_lostLow - forwardVoltage(lamp)) / m_wish.lampCurrent_A;
}

double LampDrive::resistorOfPair() const {
    // The capacitor has taken up one lamp's drop when the other's turn begins. It is sized to let the current
    // fall to a third, and so has not been emptied of all of it: a turn begins with (1 - e^-b)/(1 - e^-2b) of
    // the rest.
    return 1 / (1 + std::exp(-pairFall)) *
           (m_wish.supply_V - m_lostHigh - m_lostLow - forwardVoltage(0) - forwardVoltage(1)) /
           m_wish.lampCurrent_A;
}

} // namespace blinkwright::study
