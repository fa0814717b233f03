#include "core/devices/defaults.h"

#include "core/devices/board.h"
#include "core/devices/nominal_supply.h"

#include <algorithm>

namespace blinkwright::devices {

using circuit::Circuit;
using circuit::Part;
using circuit::PartId;
using circuit::PartKind;
using circuit::PartSet;
using circuit::Value;

namespace {

std::optional<Value> junctionDefault(const LampSheet& sheet, std::string_view key) {
    if (key == "forward_voltage") return sheet.forward_voltage;
    if (key == "test_current") return sheet.test_current;
    if (key == "ideality") return sheet.ideality;
    if (key == "series_resistance") return sheet.series_resistance;
    return std::nullopt;
}

std::optional<Value> lampDefault(const Circuit& circuit, PartSet set, const Part& part,
                                 std::string_view key) {
    if (key == "colour") return std::string(lampColours().front());
    // Three times the rated current for short pulses: common practice, no source.
    if (key == "pulse_current") return 3 * effectiveNumber(circuit, set, part.id, "rated_current");
    const auto sheet = lampSheet(effectiveWord(circuit, set, part.id, "colour"));
    if (!sheet) return std::nullopt;
    if (key == "rated_current") return sheet->rated_current;
    if (key == "reverse_limit") return sheet->reverse_limit;
    return junctionDefault(*sheet, key);
}

std::optional<Value> timerDefault(const Circuit& circuit, PartSet set, const Part& part,
                                  std::string_view key) {
    if (key == "family") return std::string("bipolar");
    if (key == "device") return circuit::Overrides{};
    if (!key.starts_with(circuit::devicePrefix)) return std::nullopt;
    const std::string_view name = key.substr(circuit::devicePrefix.size());
    const auto names = timerParameters();
    const auto at = std::find(names.begin(), names.end(), name);
    if (at == names.end()) return std::nullopt;
    const bool cmos = effectiveWord(circuit, set, part.id, "family") == "cmos";
    const double supply = SupplyFinder(circuit, set).nominalSupply(part.id);
    return timerParameter(cmos ? TimerFamily::cmos : TimerFamily::bipolar, name, supply);
}

std::optional<Value> plainDefault(PartKind kind, std::string_view key) {
    switch (kind) {
    case PartKind::supply:
        if (key == "resistance") return 0.5; // a fresh battery of four cells, from memory
        break;
    case PartKind::variable:
        if (key == "setting") return 0.5; // mid-travel
        [[fallthrough]];
    case PartKind::resistor:
        if (key == "tolerance") return 0.05;   // the commonest carbon film, from memory
        if (key == "rated_power") return 0.25; // [W] likewise
        break;
    case PartKind::capacitor:
        if (key == "tolerance") return 0.2; // aluminium electrolytic, from memory
        if (key == "esr") return 0.1;       // [ohm] from memory
        if (key == "polarised") return false;
        if (key == "initial_voltage") return 0.0;
        break;
    case PartKind::toggle:
        if (key == "closed") return false;
        if (key == "presses") return circuit::Intervals{};
        break;
    default:
        break;
    }
    return std::nullopt;
}

} // namespace

std::optional<Value> defaultValue(const Circuit& circuit, PartSet set, const Part& part,
                                  std::string_view key) {
    switch (part.kind) {
    case PartKind::timer:
        return timerDefault(circuit, set, part, key);
    case PartKind::lamp:
        return lampDefault(circuit, set, part, key);
    case PartKind::diode:
        return junctionDefault(diodeSheet(), key);
    default:
        return plainDefault(part.kind, key);
    }
}

std::optional<Value> effectiveValue(const Circuit& circuit, PartSet set, PartId id, std::string_view key) {
    const Part* part = circuit.find(id);
    if (!part) return std::nullopt;
    if (part->kind == PartKind::timer && key.starts_with(circuit::devicePrefix)) {
        if (const auto stated = circuit.value(set, id, "device")) {
            if (const auto* overrides = std::get_if<circuit::Overrides>(&*stated)) {
                const auto at = overrides->find(key.substr(circuit::devicePrefix.size()));
                if (at != overrides->end()) return at->second;
            }
        }
    } else if (auto stated = circuit.value(set, id, key)) {
        if (std::holds_alternative<circuit::Null>(*stated)) return std::nullopt; // "none" is stated
        return stated;
    }
    return defaultValue(circuit, set, *part, key);
}

std::optional<double> effectiveNumberIfAny(const Circuit& circuit, PartSet set, PartId part,
                                           std::string_view key) {
    const auto value = effectiveValue(circuit, set, part, key);
    if (!value) return std::nullopt;
    const double* number = std::get_if<double>(&*value);
    return number ? std::optional(*number) : std::nullopt;
}

double effectiveNumber(const Circuit& circuit, PartSet set, PartId part, std::string_view key) {
    return effectiveNumberIfAny(circuit, set, part, key).value_or(0);
}

std::string effectiveWord(const Circuit& circuit, PartSet set, PartId part, std::string_view key) {
    const auto value = effectiveValue(circuit, set, part, key);
    const std::string* word = value ? std::get_if<std::string>(&*value) : nullptr;
    return word ? *word : std::string();
}

bool effectiveFlag(const Circuit& circuit, PartSet set, PartId part, std::string_view key) {
    const auto value = effectiveValue(circuit, set, part, key);
    const bool* flag = value ? std::get_if<bool>(&*value) : nullptr;
    return flag && *flag;
}

Sections sectionsOf(double resistance, double setting) {
    return {std::max(setting * resistance, leastVariableSection),
            std::max((1 - setting) * resistance, leastVariableSection)};
}

} // namespace blinkwright::devices
