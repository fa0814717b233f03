#include "core/study/lab_facts.h"

#include "core/base/wording.h"
#include "core/circuit/set_edits.h"
#include "core/study/variants.h"

namespace blinkwright::study {

namespace {

using circuit::PartSet;

/// Puts what Set B states in the place of Set A.
Result<void> takeB(circuit::Circuit& circuit) {
    if (circuit::setsAgree(circuit)) return {};
    const Result<circuit::Edit> copy = circuit::copySet(circuit, PartSet::B, PartSet::A);
    if (!copy) return copy.fault();
    if (Result<circuit::Edit> done = apply(circuit, copy.value()); !done) return done.fault();
    return {};
}

} // namespace

Result<LabFacts> labFacts(const circuit::Circuit& circuit, const LabFactsRequest& request) {
    LabFacts facts;
    facts.circuit = circuit;
    facts.variant = request.variant;
    const bool differ = !circuit::setsAgree(circuit);
    const bool onlyB = request.sets == SheetSets::onlyB;
    if (differ) facts.firstName = onlyB ? wording::marked("Set B") : wording::marked("Set A");
    if (request.variant) {
        Result<Variant> variant = variantOf(circuit, onlyB ? PartSet::B : PartSet::A,
                                            {.seed = *request.variant, .cancel = request.cancel});
        if (!variant) return variant.fault();
        facts.circuit = std::move(variant.value().circuit);
        facts.changed = std::move(variant.value().changed);
        facts.firstName.clear();
    } else if (onlyB) {
        if (Result<void> taken = takeB(facts.circuit); !taken) return taken.fault();
    }

    StudyRequest run = request.run;
    run.cancel = request.cancel;
    Result<Study> a = study(facts.circuit, PartSet::A, run);
    if (!a) return a.fault();
    facts.a = std::move(a).value();
    if (differ && request.sets == SheetSets::both && !request.variant) {
        Result<Study> b = study(facts.circuit, PartSet::B, run);
        if (!b) return b.fault();
        facts.b = std::move(b).value();
    }
    facts.measured = measuredReadings(facts.circuit);
    if (request.why) facts.why = why(facts.a.board, {.cancel = request.cancel});
    if (request.spread) {
        Result<SpreadOutcome> spread =
            study::spread(facts.circuit, PartSet::A,
                          {.boards = request.boards, .cancel = request.cancel, .done = request.done});
        if (!spread) return spread.fault();
        facts.spread = std::move(spread).value();
    }
    facts.cancelled = request.cancel && *request.cancel;
    return facts;
}

} // namespace blinkwright::study
