// The simulation of candidates.
#include "core/base/together.h"
#include "core/devices/board.h"
#include "core/engine/transient.h"
#include "core/study/choose.h"
#include "core/study/choose_limits.h"
#include "core/study/choose_parts.h"
#include "core/study/choose_rank.h"
#include "core/study/figures.h"
#include "core/study/proposal.h"

namespace blinkwright::study {

namespace {

constexpr double wishAccuracy = 1e-5;

struct Ran {
    double rate_Hz = 0, duty = 0, supplyMean_A = 0;
    std::vector<ChosenLamp> lamps;
    double lit() const { return lamps.empty() ? 0 : lamps.front().lit_s * rate_Hz; }
};

std::optional<Ran> ran(const Wish& wish, const Choice& choice, const ChooseRequest& request) {
    const auto board = devices::makeBoard(proposedCircuit(wish, choice), circuit::PartSet::A);
    if (!board) return std::nullopt;
    const engine::Settled settled =
        engine::settle(board.value(), {.accuracy = wishAccuracy, .cancel = request.cancel});
    if (!settled.found) return std::nullopt;
    const Figures figures = figuresOf(board.value(), settled.wave, settled.high_s);
    Ran result{
        1 / settled.period_s, settled.high_s / settled.period_s, figures.supplyCurrents.front().mean_A, {}};
    for (const char* ref : {"D1", "D2"})
        for (std::size_t j = 0; j < board.value().junctions.size(); ++j)
            if (board.value().junctions[j].ref == ref)
                result.lamps.push_back(
                    {figures.junctions[j].peak_A, figures.junctions[j].mean_A, figures.junctions[j].lit_s});
    return result;
}

void count(const ChooseRequest& request) {
    if (request.done) request.done->fetch_add(1, std::memory_order_relaxed);
}

} // namespace

std::vector<Choice> simulateCandidates(const Wish& wish, const std::vector<Candidate>& candidates,
                                       const ChooseRequest& request) {
    const LampDrive drive(wish);
    const ScreenLaws laws = lawsOf(wish);
    std::vector<std::optional<Choice>> simulated(candidates.size());
    together(candidates.size(), request.threads, [&](std::size_t k) {
        count(request);
        std::optional<Choice> c = partsOf(wish, drive, candidates[k]);
        if (!c) return;
        if (c->variable_ohm) c->setting = 1;
        const std::optional<Ran> slow = ran(wish, *c, request);
        if (!slow) return;
        c->rate_Hz = slow->rate_Hz;
        c->duty = slow->duty;
        c->lit = slow->lit();
        c->lamps = slow->lamps;
        c->lampPeak_A = slow->lamps.front().peak_A;
        c->supplyMean_A = slow->supplyMean_A;
        c->stallMargin = stallMargin(laws, c->r1_ohm, c->r2_ohm + c->variable_ohm.value_or(0), c->c1_farad);
        if (c->variable_ohm) {
            c->setting = 0;
            const std::optional<Ran> fast = ran(wish, *c, request);
            if (!fast) return;
            c->fast = FastEnd{fast->rate_Hz, fast->duty, fast->lit(), fast->supplyMean_A};
            c->setting = Choice{}.setting;
        }
        simulated[k] = std::move(c);
    });
    std::vector<Choice> choices;
    for (auto& one : simulated)
        if (one) choices.push_back(std::move(*one));
    return choices;
}

void addBands(const Wish& wish, std::vector<Choice>& choices, const ChooseRequest& request) {
    together(choices.size(), request.threads, [&](std::size_t k) {
        count(request);
        const Tolerances t = tolerancesOf(wish, choices[k]);
        const auto rateAt = [&](int side) {
            Choice at = choices[k];
            at.r1_ohm *= 1 + side * t.r1;
            at.r2_ohm *= 1 + side * t.r2;
            at.c1_farad *= 1 + side * t.c1;
            if (at.variable_ohm) {
                *at.variable_ohm *= 1 + side * t.variable;
                at.setting = side > 0 ? 1 : 0;
            }
            const auto figures = ran(wish, at, request);
            return figures ? figures->rate_Hz : 0.0;
        };
        choices[k].rateLow_Hz = rateAt(+1);
        choices[k].rateHigh_Hz = rateAt(-1);
    });
}

} // namespace blinkwright::study
