#include "core/study/ready.h"

#include "core/base/wording.h"
#include "core/study/part_words.h"
#include "core/study/ready_room.h"
#include "core/units/engineering.h"

#include <algorithm>

namespace blinkwright::study {

namespace {

using devices::TimerFamily;
using units::Unit;

constexpr Bounds anyRate{6, 600}, pairRate{20, 300};
constexpr Bounds none{};
constexpr Bounds longHigh{0.52, 0.95}, shortLow{0.05, 0.48}, shortHigh{0.03, 0.6};

// In the order of ReadyKind.
constexpr ReadyInfo kinds[] = {
    {ReadyKind::lampToGround, "lamp-to-ground", wording::marked("One lamp to ground"),
     wording::marked("The lamp is lit while the output is high, for more than half of the time."),
     wording::marked("Mole light"), false, true, anyRate, longHigh, none},
    {ReadyKind::lampToRail, "lamp-to-rail", wording::marked("One lamp to the + rail"),
     wording::marked("The lamp is lit while the output is low, for less than half of the time."),
     wording::marked("Winch warning lamp"), false, false, anyRate, shortLow, none},
    {ReadyKind::takingTurns, "taking-turns", wording::marked("Two lamps taking turns through a capacitor"),
     wording::marked("One capacitor passes the swing of the output on to two lamps, each lit in its own half "
                     "of the cycle."),
     wording::marked("Channel buoy pair"), true, true, pairRate, none, none},
    {ReadyKind::lampToEachRail, "lamp-to-each-rail", wording::marked("One lamp to each rail"),
     wording::marked(
         "One lamp is lit while the output is high, the other while it is low; one of them is always lit."),
     wording::marked("Slipway crossing signal"), true, true, anyRate, longHigh, none},
    {ReadyKind::shortFlash, "short-flash", wording::marked("Short flash with a steering diode"),
     wording::marked("A diode lets the capacitor charge past R2, so that the lamp can be lit for less than "
                     "half of the time."),
     wording::marked("Breakwater beacon"), false, true, anyRate, shortHigh, none},
    {ReadyKind::equalHalves, "equal-halves", wording::marked("Equal halves from one resistor"),
     wording::marked(
         "One resistor from the output charges and discharges the capacitor, so that both phases are alike."),
     wording::marked("Chandler's window sign"), false, false, anyRate, none, none},
    {ReadyKind::controlledRate, "controlled-rate", wording::marked("Rate set by a control voltage"),
     wording::marked(
         "A variable resistor sets the voltage of pin 5 and with it the rate; the wish holds at its middle."),
     wording::marked("Tide gauge lamp"), false, true, anyRate, longHigh, none},
    {ReadyKind::gatedGroups,
     "gated-groups",
     wording::marked("Groups of flashes: a slow timer gates a fast one"),
     wording::marked(
         "The output of a slow timer holds the reset of a fast one, so that flashes come in groups."),
     wording::marked("Ferry berth light"),
     false,
     true,
     {60, 600},
     longHigh,
     {3, 20}},
};

constexpr Bounds bipolarSupply{4.5, 16}, cmosSupply{2, 15}; // as the finding supply-out-of-range
constexpr double leastCurrent = 1e-3, mostCurrent = 18e-3;  // lamps are rated for 20 mA
constexpr double cmosSources = 9e-3;                        // of the 10 mA that TI states for the TLC555
constexpr double leastAcross = 0.3; ///< voltage that the lamp's resistor needs to set the current [V]
constexpr double leastSwing = 0.5;  ///< the same for a pair [V]
constexpr double leastFlashes = 3;  ///< in a group

std::string volts(double v) {
    return units::formatQuantity(v, Unit::volt);
}

std::optional<Fault> outOf(const std::string& place, const Bounds& bounds, double value, Unit unit,
                           double factor = 1, const char* sign = "") {
    const auto text = [&](double v) { return units::formatQuantity(v * factor, unit) + sign; };
    constexpr double blur = 1e-9;
    if (value >= bounds.low * (1 - blur) && value <= bounds.high * (1 + blur)) return std::nullopt;
    return Fault{place, wording::inWords("must be %1 to %2, got %3", text(bounds.low), text(bounds.high),
                                         text(value))};
}

Result<void> checkRoom(const ReadyAnswers& answers) {
    const Across across = acrossOf(answers);
    const std::string current = units::formatQuantity(answers.lampCurrent_A, Unit::ampere);
    const auto lampNeeds = [&](const std::string& colour, double left) {
        const double taken = lampVoltage(colour, answers.lampCurrent_A);
        return Fault{
            wording::inWords("lamp"),
            wording::inWords("at %1 the %2 lamp takes %3, and the output leaves it %4; ask for a higher "
                             "supply voltage, another colour or less current",
                             current, colourWords(colour), volts(taken), volts(std::max(0.0, left + taken)))};
    };
    if (answers.kind == ReadyKind::takingTurns) {
        if (across.pair < leastSwing)
            return Fault{
                wording::inWords("lamps"),
                wording::inWords("both lamps together take %1, and the output swings by only %2; ask for a "
                                 "higher supply voltage, another colour or less current",
                                 volts(lampVoltage(answers.colour, answers.lampCurrent_A) +
                                       lampVoltage(answers.secondColour, answers.lampCurrent_A)),
                                 volts(highLevel(answers, answers.lampCurrent_A) -
                                       lowLevel(answers, answers.lampCurrent_A)))};
        return {};
    }
    const bool lower = info(answers.kind).sources;
    if (lower && across.lower < leastAcross) return lampNeeds(answers.colour, across.lower);
    if ((!lower || info(answers.kind).secondLamp) && across.upper < leastAcross)
        return lampNeeds(lower ? answers.secondColour : answers.colour, across.upper);
    return {};
}

} // namespace

const ReadyInfo& info(ReadyKind kind) {
    return kinds[static_cast<std::size_t>(kind)];
}

std::optional<ReadyKind> readyKindNamed(std::string_view id) {
    const auto* found = std::ranges::find(kinds, id, &ReadyInfo::id);
    return found == std::end(kinds) ? std::nullopt : std::optional(found->kind);
}

ReadyAnswers defaultAnswers(ReadyKind kind) {
    ReadyAnswers answers{.kind = kind};
    switch (kind) {
    case ReadyKind::lampToRail:
        answers.colour = "amber";
        answers.lit = 0.25;
        break;
    case ReadyKind::shortFlash:
        answers.colour = "white";
        answers.perMinute = 30;
        answers.lit = 0.1;
        break;
    case ReadyKind::equalHalves:
        answers.family = TimerFamily::cmos;
        answers.colour = "blue";
        answers.perMinute = 40;
        break;
    case ReadyKind::controlledRate:
        answers.colour = "yellow";
        break;
    case ReadyKind::gatedGroups:
        answers.perMinute = 120;
        answers.groups = 8;
        break;
    default:
        break;
    }
    return answers;
}

std::vector<std::string> readyColours() {
    std::vector<std::string> colours;
    for (const std::string_view colour : devices::lampColours())
        if (colour != "infrared") colours.emplace_back(colour);
    return colours;
}

Bounds supplyBounds(TimerFamily family) {
    return family == TimerFamily::cmos ? cmosSupply : bipolarSupply;
}

Bounds currentBounds(ReadyKind kind, TimerFamily family) {
    const bool weak = family == TimerFamily::cmos && info(kind).sources;
    return {leastCurrent, weak ? cmosSources : mostCurrent};
}

Result<void> checkAnswers(const ReadyAnswers& answers) {
    const ReadyInfo& kind = info(answers.kind);
    if (const auto fault = outOf(wording::inWords("supply voltage"), supplyBounds(answers.family),
                                 answers.supply_V, Unit::volt))
        return *fault;
    const auto colours = readyColours();
    for (const std::string& colour : {answers.colour, answers.secondColour}) {
        if (std::ranges::find(colours, colour) != colours.end()) continue;
        if (&colour != &answers.colour && !info(answers.kind).secondLamp && colour == answers.secondColour &&
            std::ranges::find(colours, answers.colour) != colours.end())
            continue; // not asked for
        return Fault{wording::inWords("lamp"),
                     wording::inWords("'%1' is no colour that a ready blinker can have", colour)};
    }
    if (const auto fault =
            outOf(wording::inWords("lamp current"), currentBounds(answers.kind, answers.family),
                  answers.lampCurrent_A, Unit::ampere))
        return *fault;
    if (const auto fault =
            outOf(wording::inWords("flashes a minute"), kind.perMinute, answers.perMinute, Unit::none))
        return *fault;
    if (kind.lit.asked())
        if (const auto fault =
                outOf(wording::inWords("lit share"), kind.lit, answers.lit, Unit::none, 100, " %"))
            return *fault;
    if (kind.groups.asked()) {
        if (const auto fault =
                outOf(wording::inWords("groups a minute"), kind.groups, answers.groups, Unit::none))
            return *fault;
        const double flashes = gateHigh * answers.perMinute / answers.groups;
        if (flashes < leastFlashes)
            return Fault{wording::inWords("groups a minute"),
                         wording::inWords("a group would hold only %1 flashes; ask for fewer groups or more "
                                          "flashes a minute",
                                          units::formatQuantity(flashes, Unit::none, 2))};
    }
    return checkRoom(answers);
}

} // namespace blinkwright::study
