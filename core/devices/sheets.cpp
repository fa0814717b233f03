#include "core/devices/sheets.h"

#include "core/base/wording.h"
#include "core/devices/laws.h"
#include "core/devices/sheet_texts.h"
#include "core/units/decimal.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <vector>

namespace blinkwright::devices {

namespace {

struct Field {
    std::string_view name;
    double TimerSheet::*member;
};
#define BLINKWRIGHT_FIELD(name)                                                                              \
    Field {                                                                                                  \
#name, &TimerSheet::name                                                                             \
    }
constexpr Field timerFields[] = {
    BLINKWRIGHT_FIELD(divider_resistance),
    BLINKWRIGHT_FIELD(idle_slope),
    BLINKWRIGHT_FIELD(idle_offset),
    BLINKWRIGHT_FIELD(idle_low_extra),
    BLINKWRIGHT_FIELD(threshold_current),
    BLINKWRIGHT_FIELD(trigger_current),
    BLINKWRIGHT_FIELD(reset_resistance),
    BLINKWRIGHT_FIELD(reset_current),
    BLINKWRIGHT_FIELD(reset_level),
    BLINKWRIGHT_FIELD(delay),
    BLINKWRIGHT_FIELD(discharge_resistance),
    BLINKWRIGHT_FIELD(discharge_offset),
    BLINKWRIGHT_FIELD(discharge_limit),
    BLINKWRIGHT_FIELD(discharge_leakage),
    BLINKWRIGHT_FIELD(high_drop_1mA),
    BLINKWRIGHT_FIELD(high_resistance),
    BLINKWRIGHT_FIELD(high_cubic),
    BLINKWRIGHT_FIELD(high_limit),
    BLINKWRIGHT_FIELD(low_resistance),
    BLINKWRIGHT_FIELD(low_limit),
    BLINKWRIGHT_FIELD(low_knee),
    BLINKWRIGHT_FIELD(low_knee_resistance),
    BLINKWRIGHT_FIELD(timing_tolerance),
};
#undef BLINKWRIGHT_FIELD

struct LampField {
    std::string_view name;
    double LampSheet::*member;
};
constexpr LampField junctionFields[] = {{"forward_voltage", &LampSheet::forward_voltage},
                                        {"test_current", &LampSheet::test_current},
                                        {"ideality", &LampSheet::ideality},
                                        {"series_resistance", &LampSheet::series_resistance}};
constexpr LampField ratingFields[] = {{"rated_current", &LampSheet::rated_current},
                                      {"reverse_limit", &LampSheet::reverse_limit}};

/// A number of a sheet as a function of the nominal supply: fixed, over / (supply + shift), or times x
/// supply.
struct Entry {
    double fixed = 0;
    double over = 0;
    double shift = 0;
    double times = 0;
    std::string source;

    double at(double supply) const { return over != 0 ? over / (supply + shift) : fixed + times * supply; }
};
using Entries = std::map<std::string, Entry, std::less<>>;

/// A sheet that cannot be read is a broken build, whatever the kind of build: there is nothing to go on with.
[[noreturn]] void broken(std::string_view sheet, const std::string& what) {
    std::fprintf(stderr, "device sheet %.*s: %s\n", static_cast<int>(sheet.size()), sheet.data(),
                 what.c_str());
    std::abort();
}

Entries readEntries(std::string_view sheet, const nlohmann::json& parameters) {
    Entries entries;
    for (const auto& [name, stated] : parameters.items()) {
        Entry entry;
        const auto& value = stated.at("value");
        if (value.is_number()) {
            entry.fixed = value.get<double>();
        } else if (value.contains("over")) {
            entry.over = value.at("over").at(0).get<double>();
            entry.shift = value.at("over").at(1).get<double>();
        } else {
            entry.times = value.at("times").get<double>();
        }
        if (!stated.at("unit").is_string()) broken(sheet, name + " states no unit");
        entry.source = stated.at("source").get<std::string>();
        if (entry.source.empty()) broken(sheet, name + " names no source");
        entries.emplace(name, std::move(entry));
    }
    return entries;
}

struct Shelf {
    std::map<std::string, Entries, std::less<>> sheets;
    std::vector<std::string> colours; ///< in the order of the lamps' sheet
    std::vector<std::string_view> colourViews;
    std::vector<std::string_view> timerNames;
    std::map<std::string, LampSheet, std::less<>> lamps;
    LampSheet diode{};

    const Entry& entry(std::string_view sheet, std::string_view name) const {
        const auto found = sheets.find(sheet);
        if (found == sheets.end()) broken(sheet, "is missing");
        const auto at = found->second.find(name);
        if (at == found->second.end()) broken(sheet, std::string(name) + " is missing");
        return at->second;
    }
};

Shelf readShelf() {
    Shelf shelf;
    for (const SheetText& text : sheetTexts()) {
        try {
            const auto json = nlohmann::json::parse(text.json);
            if (json.contains("lamps")) {
                for (const auto& lamp : json.at("lamps")) {
                    shelf.colours.push_back(lamp.at("colour").get<std::string>());
                    const std::string name = "lamp-" + shelf.colours.back();
                    shelf.sheets[name] = readEntries(name, lamp.at("parameters"));
                }
            } else {
                shelf.sheets[std::string(text.name)] = readEntries(text.name, json.at("parameters"));
            }
        } catch (const nlohmann::json::exception& fault) {
            broken(text.name, fault.what());
        }
    }
    for (const auto& field : timerFields) {
        shelf.timerNames.push_back(field.name);
        for (const std::string_view sheet : {"timer-bipolar", "timer-cmos"})
            (void)shelf.entry(sheet, field.name);
    }
    for (const auto& colour : shelf.colours) {
        LampSheet& lamp = shelf.lamps[colour];
        for (const auto& field : junctionFields)
            lamp.*field.member = shelf.entry("lamp-" + colour, field.name).fixed;
        for (const auto& field : ratingFields)
            lamp.*field.member = shelf.entry("lamp-" + colour, field.name).fixed;
    }
    for (const auto& field : junctionFields)
        shelf.diode.*field.member = shelf.entry("diode", field.name).fixed;
    shelf.colourViews.assign(shelf.colours.begin(), shelf.colours.end());
    return shelf;
}

const Shelf& shelf() {
    static const Shelf theShelf = readShelf();
    return theShelf;
}

std::string number(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.4g", value);
    return units::withDecimalSign(text);
}

} // namespace

Result<JunctionLaw> JunctionLaw::through(double forwardVoltage, double testCurrent, double ideality,
                                         double seriesResistance) {
    const double u = forwardVoltage - seriesResistance * testCurrent;
    if (!(u > 0)) {
        return Fault{"series_resistance",
                     wording::inWords("%1 ohm alone drops %2 V at the test current of %3 A, which leaves "
                                      "nothing of the forward voltage of %4 V",
                                      number(seriesResistance), number(seriesResistance * testCurrent),
                                      number(testCurrent), number(forwardVoltage))};
    }
    JunctionLaw law;
    law.nVt = ideality * thermalVoltage;
    law.seriesResistance = seriesResistance;
    law.saturation = (testCurrent - junctionShunt * u) / std::expm1(u / law.nVt);
    if (!(law.saturation > 0) || !std::isnormal(law.saturation) || testCurrent > junctionTangentCurrent) {
        return Fault{"forward_voltage",
                     wording::inWords("no junction of ideality %1 carries %2 A at %3 V", number(ideality),
                                      number(testCurrent), number(forwardVoltage))};
    }
    return law;
}

std::span<const std::string_view> timerParameters() {
    return shelf().timerNames;
}

double timerParameter(TimerFamily family, std::string_view name, double nominalSupply) {
    return shelf()
        .entry(family == TimerFamily::bipolar ? "timer-bipolar" : "timer-cmos", name)
        .at(nominalSupply);
}

TimerSheet timerSheet(TimerFamily family, double nominalSupply,
                      const std::map<std::string, double, std::less<>>& overrides) {
    TimerSheet sheet{};
    for (const auto& field : timerFields) {
        const auto stated = overrides.find(field.name);
        sheet.*field.member =
            stated != overrides.end() ? stated->second : timerParameter(family, field.name, nominalSupply);
    }
    return sheet;
}

std::optional<LampSheet> lampSheet(std::string_view colour) {
    const auto found = shelf().lamps.find(colour);
    if (found == shelf().lamps.end()) return std::nullopt;
    return found->second;
}

std::span<const std::string_view> lampColours() {
    return shelf().colourViews;
}

LampSheet diodeSheet() {
    return shelf().diode;
}

std::string_view sourceOf(std::string_view sheet, std::string_view parameter) {
    const auto found = shelf().sheets.find(sheet);
    if (found == shelf().sheets.end()) return {};
    const auto at = found->second.find(parameter);
    return at == found->second.end() ? std::string_view{} : std::string_view(at->second.source);
}

} // namespace blinkwright::devices
