#include "core/study/fault_words.h"

#include "core/base/wording.h"
#include "core/circuit/edit.h"
#include "core/devices/defaults.h"
#include "core/study/cause.h"
#include "core/study/part_words.h"

#include <algorithm>

namespace blinkwright::study {

using circuit::Part;
using circuit::PartKind;

namespace {

std::string afterTheBattery(const std::string& sentence) {
    return wording::inWords("Take the battery off first. %1", sentence);
}

/// The value of which a decade can be misread.
const char* valueKey(PartKind kind) {
    return kind == PartKind::capacitor ? "capacitance" : "resistance";
}

} // namespace

FaultWords::FaultWords(const circuit::Circuit& circuit, circuit::PartSet set)
    : m_circuit(circuit), m_set(set) {
    for (BuildStep& step : wiringList(circuit, set)) m_steps[step.part] = std::move(step.text);
}

void FaultWords::describe(BoardFault& fault) const {
    if (fault.kind == FaultKind::none) {
        fault.label = wording::inWords("no fault");
        fault.sentence =
            wording::inWords("No fault: the board does what its parts and their tolerances allow.");
        fault.remedy = wording::inWords(
            "Compare the readings with the check card; measure the parts that set the rate.");
        return;
    }
    const Part& part = *m_circuit.find(fault.part);
    fault.places = {part.ref};
    if (part.kind == PartKind::timer) return ofTimer(fault, part);
    if (part.kind == PartKind::supply) return ofSupply(fault, part);
    ofPart(fault, part);
}

std::string FaultWords::othersAt(circuit::PinRef pin) const {
    const auto net = m_circuit.netOf(pin);
    std::vector<std::string> others;
    if (net)
        for (const circuit::PinRef at : m_circuit.find(*net)->pins)
            if (at != pin) others.push_back(m_circuit.pinText(at));
    return others.empty() ? wording::inWords("nothing else") : listed(others);
}

std::string FaultWords::belongs(circuit::PartId part) const {
    return wording::inWords("As drawn: %1.", m_steps.at(part));
}

void FaultWords::ofTimer(BoardFault& fault, const Part& part) const {
    const int pin = fault.pin + 1;
    const auto place = [&](int number) { return part.ref + ":" + std::to_string(number); };
    switch (fault.kind) {
    case FaultKind::leftOut:
        fault.label = wording::inWords("pin %1 of %2 without contact", pin, part.ref);
        fault.sentence = wording::inWords(
            "Pin %1 of %2 has no contact: the leg is bent, stands beside its row, or its wire is missing.",
            pin, part.ref);
        fault.remedy =
            afterTheBattery(wording::inWords("Join pin %1 with %2.", pin, othersAt({part.id, fault.pin})));
        fault.places = {place(pin)};
        return;
    case FaultKind::bridged:
        fault.label = wording::inWords("pins %1 and %2 of %3 joined", pin, pin + 1, part.ref);
        fault.sentence =
            wording::inWords("Pins %1 and %2 of %3 touch: a strand, solder, or a wire in the wrong row.", pin,
                             pin + 1, part.ref);
        fault.remedy = afterTheBattery(
            wording::inWords("Part the two pins. Pin %1 belongs to %2, pin %3 to %4.", pin,
                             othersAt({part.id, fault.pin}), pin + 1, othersAt({part.id, fault.pin + 1})));
        fault.places = {place(pin), place(pin + 1)};
        return;
    case FaultKind::turned:
        fault.label = wording::inWords("%1 turned by half", part.ref);
        fault.sentence =
            wording::inWords("%1 is turned by half: its pin 1 stands where pin 5 belongs.", part.ref);
        fault.remedy = afterTheBattery(wording::inWords(
            "Turn it so that the notch is up and pin 1 at the top left; it may have been damaged."));
        return;
    default:
        fault.label = wording::inWords("%1 dead or missing", part.ref);
        fault.sentence = wording::inWords("%1 is dead, or not in its place.", part.ref);
        fault.remedy = afterTheBattery(wording::inWords("Try another timer in its place."));
        return;
    }
}

void FaultWords::ofSupply(BoardFault& fault, const Part& part) const {
    switch (fault.kind) {
    case FaultKind::open:
        fault.label = wording::inWords("%1 not joined", part.ref);
        fault.sentence =
            wording::inWords("%1 is not joined: its clip or one of its wires has no contact.", part.ref);
        fault.remedy =
            wording::inWords("Look at clip, holder and the wires to both rails. %1", belongs(part.id));
        return;
    case FaultKind::exhausted:
        fault.label = wording::inWords("%1 at its end", part.ref);
        fault.sentence =
            wording::inWords("%1 is at its end: low voltage, and lower still under load.", part.ref);
        fault.remedy = wording::inWords("Measure its voltage while the circuit runs; put in a fresh one.");
        return;
    case FaultKind::turned:
        fault.label = wording::inWords("%1 the wrong way round", part.ref);
        fault.sentence = wording::inWords("%1 is the wrong way round.", part.ref);
        fault.remedy = wording::inWords("Take it off at once. Timer and polarised capacitors may be damaged: "
                                        "replace what gets warm. %1",
                                        belongs(part.id));
        return;
    default:
        fault.label = wording::inWords("rails of %1 joined", part.ref);
        fault.sentence = wording::inWords("The two rails of %1 are joined: a short.", part.ref);
        fault.remedy =
            wording::inWords("Take it off at once, a shorted battery can burn you. Look for a wire "
                             "or a part from rail to rail.");
        return;
    }
}

std::string FaultWords::decadeSentence(const Part& part, double factor) const {
    const char* key = valueKey(part.kind);
    circuit::Circuit other = m_circuit;
    const double value = factor * devices::effectiveNumber(m_circuit, m_set, part.id, key);
    const auto put = apply(other, circuit::setValue(other, m_set, part.id, key, value));
    const std::string right = stepWords(m_circuit, m_set, part);
    if (!put)
        return factor > 1 ? wording::inWords("%1 is ten times too large: not %2.", part.ref, right)
                          : wording::inWords("%1 is ten times too small: not %2.", part.ref, right);
    const std::string found = stepWords(other, m_set, *other.find(part.id));
    return factor > 1
               ? wording::inWords("%1 is ten times too large: %2 in place of %3.", part.ref, found, right)
               : wording::inWords("%1 is ten times too small: %2 in place of %3.", part.ref, found, right);
}

void FaultWords::ofPart(BoardFault& fault, const Part& part) const {
    fault.remedy = afterTheBattery(belongs(part.id));
    const bool isSwitch = part.kind == PartKind::toggle;
    switch (fault.kind) {
    case FaultKind::open:
        fault.label = isSwitch ? wording::inWords("%1 stays open", part.ref)
                               : wording::inWords("%1 without contact", part.ref);
        fault.sentence =
            isSwitch ? wording::inWords("%1 does not close.", part.ref)
            : part.kind == PartKind::lamp
                ? wording::inWords("%1 has no contact, or is a lamp that has failed.", part.ref)
                : wording::inWords("%1 is missing, or one of its legs has no contact.", part.ref);
        return;
    case FaultKind::shorted:
        fault.label = isSwitch ? wording::inWords("%1 stays closed", part.ref)
                               : wording::inWords("%1 bridged", part.ref);
        fault.sentence =
            isSwitch
                ? wording::inWords("%1 does not open.", part.ref)
                : wording::inWords(
                      "%1 is bridged: its legs touch, stand in one row, or it has a short inside.", part.ref);
        return;
    case FaultKind::turned:
        fault.label = wording::inWords("%1 the wrong way round", part.ref);
        if (part.kind == PartKind::capacitor) {
            fault.sentence =
                wording::inWords("%1 is the wrong way round: its minus stands where plus belongs.", part.ref);
            fault.remedy = wording::inWords(
                "Take the battery off at once: such a capacitor can fail with force. Replace it. %1",
                belongs(part.id));
        } else {
            fault.sentence = wording::inWords(
                "%1 is the wrong way round: its anode stands where the cathode belongs.", part.ref);
        }
        return;
    case FaultKind::swapped: {
        const Part& other = *m_circuit.find(fault.other);
        fault.places.push_back(other.ref);
        fault.label = wording::inWords("%1 and %2 swapped", part.ref, other.ref);
        fault.sentence =
            wording::inWords("%1 and %2 are in each other's place (%3 and %4).", part.ref, other.ref,
                             stepWords(m_circuit, m_set, part), stepWords(m_circuit, m_set, other));
        fault.remedy += " " + m_steps.at(other.id) + ".";
        return;
    }
    case FaultKind::decadeUp:
    case FaultKind::decadeDown:
        fault.label = fault.kind == FaultKind::decadeUp
                          ? wording::inWords("%1 ten times too large", part.ref)
                          : wording::inWords("%1 ten times too small", part.ref);
        fault.sentence = decadeSentence(part, fault.kind == FaultKind::decadeUp ? 10 : 0.1);
        return;
    case FaultKind::leftOut:
        fault.label = wording::inWords("wiper of %1 without contact", part.ref);
        fault.sentence = wording::inWords("The wiper of %1 has no contact.", part.ref);
        fault.places = {part.ref + ":wiper"};
        return;
    default:
        return;
    }
}

} // namespace blinkwright::study
