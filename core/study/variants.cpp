#include "core/study/variants.h"

#include "core/base/random.h"
#include "core/base/wording.h"
#include "core/circuit/set_edits.h"
#include "core/devices/defaults.h"
#include "core/study/eye.h"
#include "core/study/study.h"
#include "core/units/series.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace blinkwright::study {

namespace {

using circuit::Circuit;
using circuit::PartKind;
using circuit::PartSet;

constexpr int mostTries = 200;

/// A value that a variant may change.
struct Dial {
    circuit::PartId part;
    std::string ref, key;
    double now = 0;
    std::vector<double> choices; ///< of its decade
};

std::vector<double> decadeOf(units::Series series, double value) {
    // A value that is 10^k itself belongs to the decade that begins there, whatever its last bit.
    const double begin = std::pow(10, std::floor(std::log10(value) + 1e-9));
    std::vector<double> choices = units::valuesBetween(series, begin, 9.99 * begin);
    return choices;
}

std::vector<Dial> dialsOf(const Circuit& circuit, PartSet set, const Textbook& book) {
    std::vector<Dial> dials;
    for (const auto* refs : {&book.r1Parts, &book.r2Parts, &book.cParts})
        for (const std::string& ref : *refs) {
            const circuit::Part* part = circuit.findRef(ref);
            if (!part || (part->kind != PartKind::resistor && part->kind != PartKind::capacitor)) continue;
            const bool resistor = part->kind == PartKind::resistor;
            Dial dial{part->id, ref, resistor ? "resistance" : "capacitance", 0, {}};
            const auto value = devices::effectiveValue(circuit, set, part->id, dial.key);
            const double* number = value ? std::get_if<double>(&*value) : nullptr;
            if (!number) continue;
            dial.now = *number;
            dial.choices = decadeOf(resistor ? units::Series::E12 : units::Series::E6, dial.now);
            if (!dial.choices.empty()) dials.push_back(std::move(dial));
        }
    return dials;
}

std::set<std::string> troubles(const Study& study) {
    std::set<std::string> kinds;
    for (const Finding& f : study.findings)
        if (f.severity == Severity::fault || f.severity == Severity::overstress) kinds.insert(f.kind);
    return kinds;
}

/// One set only, and nothing that was measured on another board.
Result<Circuit> oneSet(const Circuit& circuit, PartSet set) {
    Circuit one = circuit;
    one.measurements.clear();
    if (circuit::setsAgree(one)) return one;
    const Result<circuit::Edit> copy =
        circuit::copySet(one, set, set == PartSet::A ? PartSet::B : PartSet::A);
    if (!copy) return copy.fault();
    if (Result<circuit::Edit> done = apply(one, copy.value()); !done) return done.fault();
    return one;
}

bool serves(const Study& variant, const Study& own, const std::set<std::string>& known) {
    if (variant.readings.verdict != Verdict::blinks || variant.readings.timers.empty() ||
        !variant.readings.timers.front().settled)
        return false;
    const double rate = variant.readings.timers.front().settled->rate_Hz();
    const double before = own.readings.timers.front().settled->rate_Hz();
    if (rate > before * variantReach || rate < before / variantReach) return false;
    if (before <= flashesPerSecond && rate > flashesPerSecond) return false;
    const std::set<std::string> found = troubles(variant);
    return std::ranges::includes(known, found);
}

} // namespace

Result<Variant> variantOf(const Circuit& circuit, PartSet set, const VariantRequest& request) {
    const Result<Circuit> base = oneSet(circuit, set);
    if (!base) return base.fault();
    const StudyRequest ask{.flashes = 1, .accuracy = 1e-4, .cancel = request.cancel};
    const Result<Study> own = study(base.value(), PartSet::A, ask);
    if (!own) return own.fault();
    const Readings& readings = own.value().readings;
    if (readings.timers.empty() || !readings.timers.front().textbook)
        return Fault{
            {}, wording::inWords("there are no number variants of a wiring that has no textbook formula")};
    if (readings.verdict != Verdict::blinks || !readings.timers.front().settled)
        return Fault{{}, wording::inWords("there are no number variants of a circuit that does not blink")};
    const std::vector<Dial> dials = dialsOf(base.value(), PartSet::A, *readings.timers.front().textbook);
    const std::set<std::string> known = troubles(own.value());
    for (int attempt = 0; attempt < mostTries; ++attempt) {
        if (request.cancel && *request.cancel) return Fault{{}, wording::inWords("cancelled")};
        const RandomDraws draws(request.seed, static_cast<std::uint64_t>(attempt));
        Variant variant{base.value(), {}};
        for (std::size_t k = 0; k < dials.size(); ++k) {
            const Dial& dial = dials[k];
            const double value = dial.choices[draws.bits(k) % dial.choices.size()];
            if (std::abs(value - dial.now) <= 1e-9 * dial.now) continue;
            const circuit::Edit edit = setValue(variant.circuit, PartSet::A, dial.part, dial.key, value);
            if (!apply(variant.circuit, edit)) continue;
            variant.changed.push_back(dial.ref);
        }
        if (variant.changed.empty()) continue;
        const Result<Study> tried = study(variant.circuit, PartSet::A, ask);
        if (tried && serves(tried.value(), own.value(), known)) return variant;
    }
    return Fault{
        {}, wording::inWords("no other preferred values of the timing parts give a blinker that serves")};
}

} // namespace blinkwright::study
