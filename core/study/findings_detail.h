// What the files of findings share: the wiring seen once, and short ways to write a finding.
#pragma once

#include "core/base/wording.h"
#include "core/study/findings.h"
#include "core/study/readings.h"
#include "core/study/wiring.h"
#include "core/units/engineering.h"

#include <map>

namespace blinkwright::study::detail {

/// One timer's nodes with closed switches taken as wires.
struct TimerNodes {
    std::array<Node, 8> pins{};
    Node operator[](int pin) const { return pins[static_cast<std::size_t>(pin)]; }
};

/// A board as the findings look at it.
struct Scene {
    const devices::Board& board;
    const Readings* readings;
    Wiring wiring;
    std::vector<TimerNodes> timers;
    std::set<Node> poles; ///< nodes of the supplies' pins

    Scene(const devices::Board& theBoard, const Readings* theReadings);

    bool blinks() const { return readings && readings->verdict == Verdict::blinks; }
    const PartReading* partReading(std::string_view ref) const;
    /// Voltage of nodes against another as the supplies set it while no current flows, each by its path of
    /// least resistance; only nodes whose path leads through a supply, and the reference itself.
    std::map<Node, double> potentialsFrom(Node reference) const;
    /// No-load voltage between a timer's pins 8 and 1; nothing if no supply joins them.
    std::optional<double> supplyVoltage(std::size_t timer) const;
};

using Findings = std::vector<Finding>;

/// A timer's pin as a place: `U1:4`.
inline std::string pin(const std::string& ref, int number) {
    return ref + ":" + std::to_string(number);
}

inline std::string text(double value, units::Unit unit) {
    return units::formatQuantity(value, unit);
}

void wiringFindings(const Scene& scene, Findings& findings);
void timingFindings(const Scene& scene, Findings& findings);
void lampFindings(const Scene& scene, Findings& findings);
void stressFindings(const Scene& scene, Findings& findings);
void pairFindings(const Scene& scene, Findings& findings);
void batteryFindings(const Scene& scene, Findings& findings);

/// A lamp's row among readings, or null.
const LampReading* lampRow(const std::vector<LampReading>& rows, std::string_view ref);
/// A lamp against its ratings: the settled period, and the first flash where that has nothing to say.
void lampRatingFindings(const devices::Junction& lamp, const LampReading* settled, const LampReading* first,
                        Findings& findings);

/// Of two lamps that a capacitor drives: that the swing of the output is not enough for both.
std::optional<Finding> swingFinding(const Scene& scene, const devices::Junction& a,
                                    const devices::Junction& b);
/// Whether a junction of the board is one of such a pair.
bool pairLacksSwing(const Scene& scene, std::size_t k);

inline std::string practice() {
    return wording::inWords("common practice, no source");
}

} // namespace blinkwright::study::detail
