#include "core/study/fit_notes.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

constexpr double coverage = 2;
// Two causes are told apart badly where a value is still uncertain to more than a hundredth, twice as much
// as the data would leave if all else were known, and the other goes along with it.
constexpr double stillUncertain = 0.01, overData = 2, alongside = 0.3;
/// A value that moves the data by less than this share of their uncertainties cannot be seen in them.
constexpr double unseen = 0.5;

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t k = 0; k < words.size(); ++k)
        text += (k == 0 ? "" : k + 1 == words.size() ? " and " : ", ") + words[k];
    return text;
}

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
        return "rate";
    case FitFigure::period:
        return "cycle time";
    case FitFigure::high:
        return "pulse width";
    case FitFigure::low:
        return "space width";
    case FitFigure::duty:
        return "duty cycle";
    case FitFigure::firstHigh:
        return "first flash";
    case FitFigure::supplyVoltage:
        return "voltage of " + f.ref;
    case FitFigure::outputHigh:
        return "output high of " + f.ref;
    case FitFigure::outputLow:
        return "output low of " + f.ref;
    case FitFigure::lampCurrent:
        return "current of " + f.ref;
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
        std::string text = "The measurements cannot tell " + listed(refs) +
                           " apart: each can bring about what was measured, and only their tolerances share "
                           "it out.";
        if (!toMeasure.empty())
            text += " Measure " + listed(toMeasure) +
                    (toMeasure.size() > 1 ? " by themselves" : " by itself") +
                    " and enter what the meter reads.";
        fit.notes.push_back({true, text});
    }
}

void addStrangeValues(FitOutcome& fit) {
    for (const FittedValue& v : fit.values) {
        if (std::abs(v.movedSigmas()) <= coverage) continue;
        std::string text = v.ref + " would have to be " + units::formatQuantity(v.value, v.unit, 3);
        if (v.kind == UnknownKind::levels)
            text = "The levels of " + v.ref + " would have to be " + percent(v.value - 1) + " off";
        else if (v.from == PriorFrom::usual)
            text = "Of " + v.ref + ", " + v.key.substr(v.key.find('.') + 1) + " would have to be " +
                   units::formatQuantity(v.value, v.unit, 3);
        else if (v.nominal > 0)
            text += ", " + percent(v.value / v.nominal - 1) + (v.value > v.nominal ? " above" : " below") +
                    " what the circuit states";
        text += v.from == PriorFrom::reading ? ", which its own reading does not allow."
                : v.from == PriorFrom::usual ? ", far from what is usual."
                                             : ", outside its tolerance.";
        fit.notes.push_back({true, text + " Look for a wrong part or a fault in the wiring."});
    }
}

void addStrangeFigures(FitOutcome& fit) {
    for (const FittedFigure& f : fit.figures) {
        const auto off = f.offSigmas();
        if (!f.used || !off || std::abs(*off) <= coverage) continue;
        fit.notes.push_back({true, "No values that the parts may have explain the " + figureWords(f) +
                                       " measured: it is " +
                                       units::formatQuantity(std::abs(*off), units::Unit::none, 2) +
                                       " of its standard uncertainties off."});
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
        fit.notes.push_back({true, "Two measurements of the " + clash.figure +
                                       " contradict each other: they lie further apart than twice their "
                                       "common uncertainty."});
    addStrangeValues(fit);
    addStrangeFigures(fit);
    if (!fit.agrees && fit.notes.empty())
        fit.notes.push_back({true, "Each figure is explained by itself, but not all of them together."});
    if (!fit.agrees && !fit.board.timers.empty() && fit.board.timers.front().sheet.timing_tolerance == 0)
        fit.notes.push_back({false, "The levels of " + fit.board.timers.front().ref +
                                        " count as exact here: makers state 1 to 2.25\u00A0% for the timing "
                                        "(TI, Fairchild LM555). State it as its timing tolerance to let them "
                                        "move."});
    addInseparable(fit);
    std::vector<std::string> silent;
    for (const FittedValue& v : fit.values)
        if (v.from == PriorFrom::tolerance && v.seen < unseen) addOnce(silent, v.ref);
    if (!silent.empty())
        fit.notes.push_back({false, "The measurements say next to nothing of " + listed(silent) + "."});
    for (const FittedValue& v : fit.values) {
        if (v.kind == UnknownKind::supplyVoltage)
            fit.notes.push_back({false, v.ref + " is taken at " +
                                            units::formatQuantity(measured.supply_V->value, v.unit, 3) +
                                            " under load, as measured; the circuit states " +
                                            units::formatQuantity(v.nominal, v.unit, 3) + " without load."});
        if (v.kind == UnknownKind::levels)
            fit.notes.push_back({false, "The levels of " + v.ref +
                                            " are no value of a part: Set B leaves "
                                            "them where they are."});
    }
}

} // namespace blinkwright::study
