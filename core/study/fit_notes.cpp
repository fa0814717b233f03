#include "core/study/fit_notes.h"

#include "core/base/wording.h"
#include "core/study/cause.h"
#include "core/study/measured_readings.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

// Two causes are told apart badly where a value is still uncertain to more than a hundredth, twice as much
// as the data would leave if all else were known, and the other goes along with it.
constexpr double stillUncertain = 0.01, overData = 2, alongside = 0.3;
/// A value that moves the data by less than this share of their uncertainties cannot be seen in them.
constexpr double unseen = 0.5;

std::string percent(double share) {
    return units::formatQuantity(100 * std::abs(share), units::Unit::none, 2) + "\u00A0%";
}

void addOnce(std::vector<std::string>& words, const std::string& word) {
    if (std::ranges::find(words, word) == words.end()) words.push_back(word);
}

bool isUndecided(const FittedValue& v) {
    // They move the figures by tenths of a per cent: to name them would say more of the timer than of the
    // doubt.
    if (v.kind == UnknownKind::leakage || v.kind == UnknownKind::discharge) return false;
    return v.from != PriorFrom::reading && v.value > 0 && v.uncertainty / v.value > stillUncertain &&
           v.uncertainty / v.prior.uncertainty * v.seen > overData;
}

std::string figureWords(const FittedFigure& f) {
    switch (f.figure) {
    case FitFigure::rate:
        return wording::inWords("rate");
    case FitFigure::period:
        return wording::inWords("cycle time");
    case FitFigure::high:
        return wording::inWords("pulse width");
    case FitFigure::low:
        return wording::inWords("space width");
    case FitFigure::duty:
        return wording::inWords("duty cycle");
    case FitFigure::firstHigh:
        return wording::inWords("first flash");
    case FitFigure::supplyVoltage:
        return wording::inWords("voltage of %1", f.ref);
    case FitFigure::outputHigh:
        return wording::inWords("output high of %1", f.ref);
    case FitFigure::outputLow:
        return wording::inWords("output low of %1", f.ref);
    case FitFigure::lampCurrent:
        return wording::inWords("current of %1", f.ref);
    }
    return {};
}

void addInseparable(FitOutcome& fit) {
    for (const auto& group : inseparable(fit)) {
        std::vector<std::string> refs, toMeasure;
        for (const std::size_t k : group) {
            addOnce(refs, fit.values[k].ref);
            if (fit.values[k].kind == UnknownKind::resistance) addOnce(toMeasure, fit.values[k].ref);
        }
        std::string text =
            wording::inWords("The measurements cannot tell %1 apart: each can bring about what was measured, "
                             "and only their tolerances share it out.",
                             listed(refs));
        if (toMeasure.size() == 1)
            text += " " + wording::inWords("Measure %1 by itself and enter what the meter reads.",
                                           toMeasure.front());
        if (toMeasure.size() > 1)
            text += " " + wording::inWords("Measure %1 by themselves and enter what the meter reads.",
                                           listed(toMeasure));
        fit.notes.push_back({true, text});
    }
}

/// What a value would have to be, as a clause.
std::string wantedWords(const FittedValue& v) {
    const std::string value = units::formatQuantity(v.value, v.unit, 3);
    if (v.kind == UnknownKind::levels)
        return wording::inWords("The levels of %1 would have to be %2 off", v.ref, percent(v.value - 1));
    if (v.from == PriorFrom::usual)
        return wording::inWords("Of %1, %2 would have to be %3", v.ref, v.key.substr(v.key.find('.') + 1),
                                value);
    if (!(v.nominal > 0)) return wording::inWords("%1 would have to be %2", v.ref, value);
    const std::string off = percent(v.value / v.nominal - 1);
    return v.value > v.nominal ? wording::inWords("%1 would have to be %2, %3 above what the circuit states",
                                                  v.ref, value, off)
                               : wording::inWords("%1 would have to be %2, %3 below what the circuit states",
                                                  v.ref, value, off);
}

std::string strangeWords(const FittedValue& v) {
    switch (v.from) {
    case PriorFrom::reading:
        return wording::inWords("%1, which its own reading does not allow. Look for a wrong part or a fault "
                                "in the wiring.",
                                wantedWords(v));
    case PriorFrom::usual:
        return wording::inWords("%1, far from what is usual. Look for a wrong part or a fault in the wiring.",
                                wantedWords(v));
    case PriorFrom::tolerance:
        break;
    }
    return wording::inWords("%1, outside its tolerance. Look for a wrong part or a fault in the wiring.",
                            wantedWords(v));
}

void addStrangeValues(FitOutcome& fit) {
    for (const FittedValue& v : fit.values)
        if (std::abs(v.movedSigmas()) > coverage) fit.notes.push_back({true, strangeWords(v)});
}

void addStrangeFigures(FitOutcome& fit) {
    for (const FittedFigure& f : fit.figures) {
        const auto off = f.offSigmas();
        if (!f.used || !off || std::abs(*off) <= coverage) continue;
        fit.notes.push_back(
            {true,
             wording::inWords("No values that the parts may have explain the %1 measured: it is %2 of "
                              "its standard uncertainties off.",
                              figureWords(f), units::formatQuantity(std::abs(*off), units::Unit::none, 2))});
    }
}

} // namespace

std::vector<std::vector<std::size_t>> inseparable(const FitOutcome& fit) {
    std::vector<std::size_t> left;
    for (std::size_t k = 0; k < fit.values.size(); ++k)
        if (isUndecided(fit.values[k])) left.push_back(k);
    std::vector<std::vector<std::size_t>> groups;
    while (!left.empty()) {
        std::vector<std::size_t> group{left.front()};
        left.erase(left.begin());
        for (std::size_t at = 0; at < group.size(); ++at)
            std::erase_if(left, [&](std::size_t k) {
                const bool along = std::abs(fit.correlation(group[at], k)) >= alongside;
                if (along) group.push_back(k);
                return along;
            });
        std::ranges::sort(group);
        const std::string& first = fit.values[group.front()].ref;
        // Parts of one reel go together by what is known of them, not for want of data.
        const bool several = std::ranges::any_of(group, [&](std::size_t k) {
            return fit.values[k].ref != first && fit.values[k].dial != fit.values[group.front()].dial;
        });
        if (several) groups.push_back(std::move(group));
    }
    return groups;
}

void addNotes(FitOutcome& fit, const MeasuredReadings& measured) {
    for (const Clash& clash : measured.clashes)
        fit.notes.push_back(
            {true,
             wording::inWords("Two measurements of the %1 contradict each other: they lie further apart "
                              "than twice their common uncertainty.",
                              clash.figure)});
    addStrangeValues(fit);
    addStrangeFigures(fit);
    if (!fit.agrees && fit.notes.empty())
        fit.notes.push_back(
            {true, wording::inWords("Each figure is explained by itself, but not all of them together.")});
    if (!fit.agrees && !fit.board.timers.empty() && fit.board.timers.front().sheet.timing_tolerance == 0)
        fit.notes.push_back(
            {false,
             wording::inWords("The levels of %1 count as exact here: makers state 1 to 2.25\u00A0% for "
                              "the timing (TI, Fairchild LM555). State it as its timing tolerance to "
                              "let them move.",
                              fit.board.timers.front().ref)});
    addInseparable(fit);
    std::vector<std::string> silent;
    for (const FittedValue& v : fit.values)
        if (v.from == PriorFrom::tolerance && v.seen < unseen) addOnce(silent, v.ref);
    if (!silent.empty())
        fit.notes.push_back(
            {false, wording::inWords("The measurements say next to nothing of %1.", listed(silent))});
    for (const FittedValue& v : fit.values) {
        if (v.kind == UnknownKind::supplyVoltage)
            fit.notes.push_back(
                {false, wording::inWords("%1 is taken at %2 under load, as measured; the circuit states %3 "
                                         "without load.",
                                         v.ref, units::formatQuantity(measured.supply_V->value, v.unit, 3),
                                         units::formatQuantity(v.nominal, v.unit, 3))});
        if (v.kind == UnknownKind::levels)
            fit.notes.push_back(
                {false, wording::inWords("The levels of %1 are no value of a part: Set B leaves them where "
                                         "they are.",
                                         v.ref)});
    }
}

} // namespace blinkwright::study
