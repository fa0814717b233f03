#include "core/study/why.h"

#include "core/base/together.h"
#include "core/base/wording.h"
#include "core/engine/transient.h"

#include <cmath>

namespace blinkwright::study {

namespace {

std::optional<Phase> phaseOf(const engine::Settled& settled) {
    if (!settled.found) return std::nullopt;
    return Phase{settled.high_s, settled.period_s - settled.high_s};
}

WhyChange between(const Phase& from, const Phase& to) {
    return {to.period_s() - from.period_s(), to.duty() - from.duty()};
}

} // namespace

Why why(const devices::Board& board, const WhyRequest& request) {
    Why answer;
    const std::optional<Textbook> textbook = textbookOf(board, 0);
    if (textbook) answer.textbook = textbook->phase;

    const engine::RunRequest run{.accuracy = request.accuracy, .cancel = request.cancel};
    // First the board, then the textbook circuit, then that with one cause after the other.
    std::vector<devices::Board> boards{board};
    std::vector<Imperfection> present;
    if (textbook) {
        const Idealiser idealiser(board, *textbook);
        present = idealiser.present();
        boards.push_back(idealiser.with({}));
        for (const Imperfection one : present) boards.push_back(idealiser.with({one}));
    }
    std::vector<std::optional<Phase>> phases(boards.size());
    std::string fails;
    together(boards.size(), request.threads, [&](std::size_t k) {
        const engine::Settled settled = engine::settle(boards[k], run);
        phases[k] = phaseOf(settled);
        if (k == 0) fails = settled.why;
    });
    answer.simulated = phases.front();
    if (!answer.simulated) answer.reason = fails;
    if (!textbook)
        answer.reason += (fails.empty() ? "" : " ") + wording::inWords("The wiring has no textbook formula.");
    if (!textbook || !phases[1]) return answer;

    for (std::size_t k = 0; k < present.size(); ++k) {
        WhyStep step{present[k], std::nullopt};
        if (phases[k + 2]) step.change = between(*phases[1], *phases[k + 2]);
        const bool tiny =
            !step.change || std::abs(step.change->period_s) < worthNaming * answer.textbook->period_s();
        if (step.imperfection == Imperfection::capacitorSeries && tiny) continue;
        answer.steps.push_back(step);
    }
    if (!answer.simulated) return answer;
    WhyChange left = between(*answer.textbook, *answer.simulated);
    for (const WhyStep& step : answer.steps) {
        if (!step.change) continue;
        left.period_s -= step.change->period_s;
        left.duty -= step.change->duty;
    }
    answer.interaction = left;
    return answer;
}

} // namespace blinkwright::study
