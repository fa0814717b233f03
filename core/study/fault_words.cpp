#include "core/study/fault_words.h"

#include "core/circuit/edit.h"
#include "core/devices/defaults.h"
#include "core/study/cause.h"
#include "core/study/part_words.h"

#include <algorithm>

namespace blinkwright::study {

using circuit::Part;
using circuit::PartKind;

namespace {

const char first[] = "Take the battery off first. ";

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
        fault.label = "no fault";
        fault.sentence = "No fault: the board does what its parts and their tolerances allow.";
        fault.remedy = "Compare the readings with the check card; measure the parts that set the rate.";
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
    return others.empty() ? "nothing else" : listed(others);
}

std::string FaultWords::belongs(circuit::PartId part) const {
    return "As drawn: " + m_steps.at(part) + ".";
}

void FaultWords::ofTimer(BoardFault& fault, const Part& part) const {
    const auto pinText = [](int pin) { return std::to_string(pin + 1); };
    switch (fault.kind) {
    case FaultKind::leftOut:
        fault.label = "pin " + pinText(fault.pin) + " of " + part.ref + " without contact";
        fault.sentence = "Pin " + pinText(fault.pin) + " of " + part.ref +
                         " has no contact: the leg is bent, stands beside its row, or its wire is missing.";
        fault.remedy = first + std::string("Join pin ") + pinText(fault.pin) + " with " +
                       othersAt({part.id, fault.pin}) + ".";
        fault.places = {part.ref + ":" + pinText(fault.pin)};
        return;
    case FaultKind::bridged:
        fault.label =
            "pins " + pinText(fault.pin) + " and " + pinText(fault.pin + 1) + " of " + part.ref + " joined";
        fault.sentence = "Pins " + pinText(fault.pin) + " and " + pinText(fault.pin + 1) + " of " + part.ref +
                         " touch: a strand, solder, or a wire in the wrong row.";
        fault.remedy = first + std::string("Part the two pins. Pin ") + pinText(fault.pin) + " belongs to " +
                       othersAt({part.id, fault.pin}) + ", pin " + pinText(fault.pin + 1) + " to " +
                       othersAt({part.id, fault.pin + 1}) + ".";
        fault.places = {part.ref + ":" + pinText(fault.pin), part.ref + ":" + pinText(fault.pin + 1)};
        return;
    case FaultKind::turned:
        fault.label = part.ref + " turned by half";
        fault.sentence = part.ref + " is turned by half: its pin 1 stands where pin 5 belongs.";
        fault.remedy =
            first + std::string("Turn it so that the notch is up and pin 1 at the top left; it may "
                                "have been damaged.");
        return;
    default:
        fault.label = part.ref + " dead or missing";
        fault.sentence = part.ref + " is dead, or not in its place.";
        fault.remedy = first + std::string("Try another timer in its place.");
        return;
    }
}

void FaultWords::ofSupply(BoardFault& fault, const Part& part) const {
    switch (fault.kind) {
    case FaultKind::open:
        fault.label = part.ref + " not joined";
        fault.sentence = part.ref + " is not joined: its clip or one of its wires has no contact.";
        fault.remedy = "Look at clip, holder and the wires to both rails. " + belongs(part.id);
        return;
    case FaultKind::exhausted:
        fault.label = part.ref + " at its end";
        fault.sentence = part.ref + " is at its end: low voltage, and lower still under load.";
        fault.remedy = "Measure its voltage while the circuit runs; put in a fresh one.";
        return;
    case FaultKind::turned:
        fault.label = part.ref + " the wrong way round";
        fault.sentence = part.ref + " is the wrong way round.";
        fault.remedy =
            "Take it off at once. Timer and polarised capacitors may be damaged: replace what gets "
            "warm. " +
            belongs(part.id);
        return;
    default:
        fault.label = "rails of " + part.ref + " joined";
        fault.sentence = "The two rails of " + part.ref + " are joined: a short.";
        fault.remedy = "Take it off at once, a shorted battery can burn you. Look for a wire or a part from "
                       "rail to rail.";
        return;
    }
}

std::string FaultWords::decadeSentence(const Part& part, double factor) const {
    const char* key = valueKey(part.kind);
    circuit::Circuit other = m_circuit;
    const double value = factor * devices::effectiveNumber(m_circuit, m_set, part.id, key);
    const auto put = apply(other, circuit::setValue(other, m_set, part.id, key, value));
    const std::string found = put ? stepWords(other, m_set, *other.find(part.id)) + " in place of " : "not ";
    return part.ref + (factor > 1 ? " is ten times too large: " : " is ten times too small: ") + found +
           stepWords(m_circuit, m_set, part) + ".";
}

void FaultWords::ofPart(BoardFault& fault, const Part& part) const {
    fault.remedy = first + belongs(part.id);
    switch (fault.kind) {
    case FaultKind::open:
        fault.label = part.ref + (part.kind == PartKind::toggle ? " stays open" : " without contact");
        fault.sentence = part.kind == PartKind::toggle ? part.ref + " does not close."
                         : part.kind == PartKind::lamp
                             ? part.ref + " has no contact, or is a lamp that has failed."
                             : part.ref + " is missing, or one of its legs has no contact.";
        return;
    case FaultKind::shorted:
        fault.label = part.ref + (part.kind == PartKind::toggle ? " stays closed" : " bridged");
        fault.sentence = part.kind == PartKind::toggle
                             ? part.ref + " does not open."
                             : part.ref + " is bridged: its legs touch, stand in one "
                                          "row, or it has a short inside.";
        return;
    case FaultKind::turned:
        fault.label = part.ref + " the wrong way round";
        if (part.kind == PartKind::capacitor) {
            fault.sentence = part.ref + " is the wrong way round: its minus stands where plus belongs.";
            fault.remedy =
                "Take the battery off at once: such a capacitor can fail with force. Replace it. " +
                belongs(part.id);
        } else {
            fault.sentence =
                part.ref + " is the wrong way round: its anode stands where the cathode belongs.";
        }
        return;
    case FaultKind::swapped: {
        const Part& other = *m_circuit.find(fault.other);
        fault.places.push_back(other.ref);
        fault.label = part.ref + " and " + other.ref + " swapped";
        fault.sentence = part.ref + " and " + other.ref + " are in each other's place (" +
                         stepWords(m_circuit, m_set, part) + " and " + stepWords(m_circuit, m_set, other) +
                         ").";
        fault.remedy += " " + m_steps.at(other.id) + ".";
        return;
    }
    case FaultKind::decadeUp:
    case FaultKind::decadeDown:
        fault.label =
            part.ref + (fault.kind == FaultKind::decadeUp ? " ten times too large" : " ten times too small");
        fault.sentence = decadeSentence(part, fault.kind == FaultKind::decadeUp ? 10 : 0.1);
        return;
    case FaultKind::leftOut:
        fault.label = "wiper of " + part.ref + " without contact";
        fault.sentence = "The wiper of " + part.ref + " has no contact.";
        fault.places = {part.ref + ":wiper"};
        return;
    default:
        return;
    }
}

} // namespace blinkwright::study
