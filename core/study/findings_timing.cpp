// Findings on the timing parts: trigger, threshold, discharge, and what charges the timing capacitor.
#include "core/study/findings_detail.h"

#include <algorithm>

namespace blinkwright::study::detail {

namespace {

using units::Unit;
namespace pins = circuit::timerPin;

constexpr double leastDwell = 0.1e-6;            // [s] the latch holds each state at least so long
constexpr double leastDischargeResistance = 100; // [ohm], common practice: 1 kohm and more is usual

/// The timing net of one timer and what hangs on it.
struct Timing {
    std::set<Node> nodes; ///< of pins 2 and 6, rails left out
    bool capacitor = false;
    bool charged = false;    ///< a resistance leads to the supply or the output
    bool fromOutput = false; ///< a resistance leads to the output
    bool driven = false;     ///< another timer's pin is within reach: no astable of its own
};

Timing timingOf(const Scene& scene, std::size_t k) {
    const TimerNodes& timer = scene.timers[k];
    Timing timing;
    std::set<Node> stops = scene.poles;
    for (const int number : {pins::ground, pins::supply, pins::output}) stops.insert(timer[number]);
    std::set<Node> others;
    for (std::size_t other = 0; other < scene.timers.size(); ++other) {
        if (other == k) continue;
        for (const Node node : scene.timers[other].pins) others.insert(node);
    }
    others.erase(devices::open);
    for (const int number : {pins::trigger, pins::threshold}) {
        const Node node = timer[number];
        if (node != devices::open && !stops.contains(node)) timing.nodes.insert(node);
    }
    std::set<Node> reach = timing.nodes; // through anything but capacitors
    std::vector<Node> ahead(reach.begin(), reach.end());
    while (!ahead.empty()) {
        const Node node = ahead.back();
        ahead.pop_back();
        if (others.contains(node)) timing.driven = true;
        for (const std::size_t index : scene.wiring.elementsAt(node)) {
            const Element& e = scene.wiring.elements()[index];
            if (e.a == e.b) continue;
            const Node next = e.other(node);
            if (e.kind == ElementKind::capacitance) {
                timing.capacitor = true;
                continue;
            }
            if (next == timer[pins::output]) timing.fromOutput = true;
            if (next == timer[pins::output] || (scene.poles.contains(next) && next != timer[pins::ground]) ||
                next == timer[pins::supply])
                timing.charged = true;
            if (others.contains(next)) timing.driven = true;
            if (!stops.contains(next) && reach.insert(next).second) ahead.push_back(next);
        }
    }
    return timing;
}

/// Whether nothing but its own delay paces the first timer, so that its switching is no blinking.
bool onlyItsDelay(const Scene& scene) {
    const auto& times = scene.readings->timers.front().switchings_s;
    if (times.size() < 4) return false;
    const double perPhase = (times.back() - times[1]) / static_cast<double>(times.size() - 2);
    return perPhase < 10 * std::max(scene.board.timers.front().sheet.delay, leastDwell);
}

void astableFindings(const Scene& scene, std::size_t k, Findings& findings) {
    const auto& timer = scene.board.timers[k];
    const bool blinks = k == 0 && scene.blinks();
    if (blinks && !onlyItsDelay(scene)) return; // however it is wired, it works
    const Timing timing = timingOf(scene, k);
    if (timing.driven || (blinks && timing.capacitor)) return;
    if (!timing.capacitor) {
        findings.push_back(
            {.kind = "no-timing-capacitor",
             .severity = Severity::fault,
             .places = {pin(timer.ref, 2), pin(timer.ref, 6)},
             .text = blinks
                         ? wording::inWords("No capacitor is joined to trigger and threshold (pins 2 and 6) "
                                            "of %1, so nothing but its own delay paces it.",
                                            timer.ref)
                         : wording::inWords(
                               "No capacitor is joined to trigger and threshold (pins 2 and 6) of %1.",
                               timer.ref),
             .remedy = wording::inWords(
                 "Join pins 2 and 6 to each other and to a timing capacitor that leads to ground.")});
    } else if (!timing.charged) {
        findings.push_back({.kind = "no-timing-resistor",
                            .severity = Severity::fault,
                            .places = {pin(timer.ref, 2), pin(timer.ref, 6)},
                            .text = wording::inWords("No resistor leads from the supply to the timing "
                                                     "capacitor of %1, so nothing charges it.",
                                                     timer.ref),
                            .remedy = wording::inWords(
                                "Join R1 from the supply to pin 7 and R2 from pin 7 to pins 2 and 6.")});
    }
    if (!timer.connected(pins::discharge) && !timing.fromOutput) {
        findings.push_back({.kind = "discharge-unused",
                            .severity = Severity::fault,
                            .places = {pin(timer.ref, 7)},
                            .text = wording::inWords(
                                "Discharge (pin 7) of %1 is joined to nothing and no resistor leads from "
                                "the output to the timing capacitor, so nothing discharges it.",
                                timer.ref),
                            .remedy = wording::inWords(
                                "Join pin 7 between R1 and R2, or a resistor from pin 3 to pins 2 and 6.")});
    }
}

void levelsFinding(const Scene& scene, Findings& findings) {
    if (scene.timers.empty() || !scene.readings || scene.blinks()) return;
    const TimerNodes& timer = scene.timers.front();
    if (timer[pins::trigger] == timer[pins::threshold] && timer[pins::trigger] != devices::open) return;
    const std::string& ref = scene.board.timers.front().ref;
    findings.push_back(
        {.kind = "levels-apart",
         .severity = Severity::fault,
         .places = {pin(ref, 2), pin(ref, 6)},
         .text = wording::inWords("Trigger (pin 2) and threshold (pin 6) of %1 are not on one "
                                  "net, and the circuit does not blink.",
                                  ref),
         .remedy = wording::inWords("Join pins 2 and 6 to each other and to the timing capacitor.")});
}

std::string shortedText(const std::string& ref, double ohms, bool toGround) {
    const std::string through = text(ohms, Unit::ohm);
    if (toGround)
        return ohms > 0 ? wording::inWords("Discharge (pin 7) of %1 is joined through only %2 to ground, so "
                                           "the timing capacitor cannot charge.",
                                           ref, through)
                        : wording::inWords("Discharge (pin 7) of %1 is joined straight to ground, so the "
                                           "timing capacitor cannot charge.",
                                           ref);
    return ohms > 0 ? wording::inWords("Discharge (pin 7) of %1 is joined through only %2 to the supply, and "
                                       "shorts it while the output is low.",
                                       ref, through)
                    : wording::inWords("Discharge (pin 7) of %1 is joined straight to the supply, and shorts "
                                       "it while the output is low.",
                                       ref);
}

void dischargeFinding(const Scene& scene, std::size_t k, Findings& findings) {
    const TimerNodes& nodes = scene.timers[k];
    const Node discharge = nodes[pins::discharge];
    if (discharge == devices::open) return;
    std::set<Node> rails = scene.poles;
    rails.insert(nodes[pins::supply]);
    rails.insert(nodes[pins::ground]);
    rails.erase(devices::open);
    std::set<Node> kept = rails;
    for (const auto& timer : scene.timers) kept.insert(timer.pins.begin(), timer.pins.end());
    kept.erase(devices::open);
    double least = rails.contains(discharge) ? 0 : leastDischargeResistance;
    bool ground = discharge == nodes[pins::ground];
    std::vector<std::string> parts;
    if (least > 0) {
        for (const Element& e : reduced(scene.wiring.around({discharge}, kept), kept)) {
            if (e.kind != ElementKind::resistance || !e.touches(discharge) ||
                !rails.contains(e.other(discharge)))
                continue;
            if (e.value >= least) continue;
            least = e.value;
            parts = e.refs;
            ground = e.other(discharge) == nodes[pins::ground];
        }
    }
    if (least >= leastDischargeResistance) return;
    const auto& timer = scene.board.timers[k];
    std::vector<std::string> places{pin(timer.ref, 7)};
    places.insert(places.end(), parts.begin(), parts.end());
    findings.push_back(
        {.kind = "discharge-shorted",
         .severity = Severity::fault,
         .places = std::move(places),
         .text = shortedText(timer.ref, least, ground),
         .remedy = ground ? wording::inWords("Take pin 7 off ground and join it between R1 and R2.")
                          : wording::inWords("Put R1, 1\u00A0k\u03A9 or more, between the supply "
                                             "and pin 7."),
         .number = least,
         .limit = leastDischargeResistance,
         .source = practice()});
}

/// Findings that the textbook form makes easy: charging through R1 + R2 against what takes current away.
void chargingFindings(const Scene& scene, std::size_t k, Findings& findings) {
    const auto book = textbookOf(scene.board, k);
    if (!book || book->form == AstableForm::singleResistor) return;
    const auto& timer = scene.board.timers[k];
    const double total = book->r1_ohm + (book->form == AstableForm::steeringDiode ? 0 : book->r2_ohm);
    // TI SLFS022: 3.4 Mohm at 5 V, 10 Mohm at 15 V for the bipolar timer.
    const double most = timer.cmos ? 20e6 : 0.67e6 * timer.nominalSupply;
    std::vector<std::string> resistors = book->r1Parts;
    resistors.insert(resistors.end(), book->r2Parts.begin(), book->r2Parts.end());
    if (total > most) {
        findings.push_back(
            {.kind = "resistance-too-large",
             .severity = Severity::doubt,
             .places = resistors,
             .text =
                 wording::inWords("R1 and R2 of %1 together are %2; over %3 the input currents of the timer "
                                  "upset the timing or stop it.",
                                  timer.ref, text(total, Unit::ohm), text(most, Unit::ohm)),
             .remedy = wording::inWords("Take smaller resistors and a larger capacitor."),
             .number = total,
             .limit = most,
             .source = timer.cmos
                           ? wording::inWords("memory")
                           : wording::inWords("TI SLFS022, 3.4 M\u03A9 at 5 V and 10 M\u03A9 at 15 V")});
    }
    double leakage = timer.sheet.threshold_current;
    const double level = book->control_ratio * timer.nominalSupply;
    for (const auto& part : scene.board.capacitors) {
        if (std::find(book->cParts.begin(), book->cParts.end(), part.ref) != book->cParts.end())
            leakage += part.leakageConductance * level;
    }
    const double charging = (timer.nominalSupply - level) / total;
    const double ratio = charging / leakage;
    if (!(ratio < 10)) return;
    const bool stalls = ratio < 1 && !(k == 0 && scene.blinks());
    std::vector<std::string> places = book->cParts;
    places.insert(places.end(), resistors.begin(), resistors.end());
    const std::string given = text(charging, Unit::ampere), taken = text(leakage, Unit::ampere);
    findings.push_back(
        {.kind = "leakage-too-large",
         .severity = stalls      ? Severity::fault
                     : ratio < 3 ? Severity::doubt
                                 : Severity::note,
         .places = std::move(places),
         .text = stalls
                     ? wording::inWords("Near the threshold level the timing capacitor of %1 is charged with "
                                        "%2, while leakage and the threshold input take %3: the threshold "
                                        "is never reached.",
                                        timer.ref, given, taken)
                     : wording::inWords("Near the threshold level the timing capacitor of %1 is charged with "
                                        "%2, while leakage and the threshold input take %3: the high phase "
                                        "grows longer.",
                                        timer.ref, given, taken),
         .remedy = wording::inWords("Take smaller resistors, or a capacitor that leaks less."),
         .number = ratio,
         .limit = 10.0,
         .source = wording::inWords("a tenth of the charging current: common practice, no source")});
}

} // namespace

void timingFindings(const Scene& scene, Findings& findings) {
    for (std::size_t k = 0; k < scene.board.timers.size(); ++k) {
        astableFindings(scene, k, findings);
        dischargeFinding(scene, k, findings);
        chargingFindings(scene, k, findings);
    }
    levelsFinding(scene, findings);
}

} // namespace blinkwright::study::detail
