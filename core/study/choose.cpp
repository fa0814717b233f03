#include "core/study/choose.h"

#include "core/base/wording.h"
#include "core/study/choose_limits.h"
#include "core/study/choose_parts.h"
#include "core/study/choose_rank.h"
#include "core/study/range_screening.h"
#include "core/study/stock_left.h"

#include <algorithm>

namespace blinkwright::study {

namespace {

PartValues partValues(const Wish& wish, double mostResistance) {
    const double leastC = wish.cmos ? leastCapacitorCmos_F : leastCapacitor_F;
    if (wish.drawer) {
        const StockLeft stock(wish);
        const auto resistors = stock.values(Stock::Kind::resistor, leastResistor_ohm, mostResistance);
        return {resistors, resistors, stock.values(Stock::Kind::capacitor, leastC, mostCapacitor_F)};
    }
    return {units::valuesBetween(wish.r1, leastResistor_ohm, mostResistance),
            units::valuesBetween(wish.r2, leastResistor_ohm, mostResistance),
            units::valuesBetween(wish.c1, leastC, mostCapacitor_F)};
}

std::vector<double> variablesOf(const Wish& wish, double mostResistance) {
    if (!wish.drawer) return preferredVariables();
    return StockLeft(wish).values(Stock::Kind::variable, leastResistor_ohm, mostResistance);
}

/// A lit share nearer to a half that one variable resistor can hold over the wished range.
std::optional<Unmet> nearestLit(const Wish& wish, const ChooseRequest& request, const Unmet& unmet) {
    constexpr int steps = 8;
    constexpr std::size_t tried = 20;
    Wish own = wish;
    for (int step = 1; step <= steps; ++step) {
        own.lit = wish.lit + (0.5 - wish.lit) * step / steps;
        const Screening screening = screenWish(own, tried);
        const std::vector<Choice> choices = simulateCandidates(own, screening.best, request);
        const auto found = std::ranges::find_if(choices, [&](const Choice& c) { return met(own, c); });
        if (found == choices.end()) continue;
        return Unmet{unmet.reason, wish.rate_Hz,   own.lit,       wish.supply_V,
                     *found,       wish.rateTo_Hz, wish.stayLit_s};
    }
    return std::nullopt;
}

} // namespace

Screening screenWish(const Wish& wish, std::size_t most) {
    Screening result;
    result.unmet = forbidden(wish);
    if (result.unmet) return result;
    const ScreenLaws laws = lawsOf(wish);
    const PartValues values = partValues(wish, laws.mostResistance_ohm);
    const auto variables =
        wish.rateTo_Hz ? variablesOf(wish, laws.mostResistance_ohm) : std::vector<double>();
    if (values.r1.empty())
        result.unmet = without(wish, wording::inWords("The drawer has no resistor fit for the timing."));
    else if (values.c1.empty())
        result.unmet = without(wish, wording::inWords("The drawer has no capacitor fit for the timing."));
    else if (wish.rateTo_Hz && variables.empty())
        result.unmet =
            without(wish, wording::inWords("The drawer has no variable resistor fit for the timing."));
    if (result.unmet) return result;
    for (const Scheme& scheme : schemesOf(wish, LampDrive(wish)))
        result.judged += wish.rateTo_Hz
                             ? screenRange(wish, values, variables, scheme, laws, most, result.best)
                             : screen(wish, values, scheme, laws, most, result.best);
    return result;
}

Choices choose(const Wish& wish, const ChooseRequest& request) {
    const auto cancelled = [&] { return request.cancel && request.cancel->load(std::memory_order_relaxed); };
    Choices result;
    const Screening screening = screenWish(wish, request.simulate);
    result.screened = screening.judged;
    if (screening.unmet) {
        result.unmet = screening.unmet;
        return result;
    }
    std::vector<Choice> choices = simulateCandidates(wish, screening.best, request);
    result.simulated = screening.best.size();
    if (cancelled()) {
        result.cancelled = true;
        return result;
    }
    if (choices.empty()) {
        const std::string missing = wish.drawer ? missingForLamps(wish) : std::string();
        result.unmet = without(
            wish, !missing.empty() ? missing
                  : wish.drawer    ? wording::inWords("No blinker can be made of the parts in the drawer.")
                                   : wording::inWords("No board with such values blinks."));
        return result;
    }
    rank(wish, choices);
    if (std::ranges::none_of(choices, [&](const Choice& c) { return met(wish, c); })) {
        result.unmet = outOfReach(wish, choices);
        const auto reached = [&](const Choice& c) { return reaches(wish, c); };
        if (!wish.drawer && std::ranges::any_of(choices, reached))
            if (auto nearest = nearestLit(wish, request, *result.unmet)) result.unmet = nearest;
        return result;
    }
    std::erase_if(choices, [&](const Choice& c) { return !met(wish, c); });
    if (choices.size() > request.keep) choices.resize(request.keep);
    addBands(wish, choices, request);
    result.best = std::move(choices);
    result.cancelled = cancelled();
    return result;
}

} // namespace blinkwright::study
