// Choosing parts for a wish: all combinations of preferred or owned values are screened by formula, the best
// are simulated, and the simulated boards are ranked.
//
//   Choices c = choose({.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9}, {});
//   if (c.unmet) show(c.unmet->reason); else open(proposedCircuit(wish, c.best[0]));
#pragma once

#include "core/study/screening.h"

#include <atomic>

namespace blinkwright::study {

struct ChooseRequest {
    std::size_t simulate = 200; ///< how many of the screened are simulated
    std::size_t keep = 20;      ///< how many are answered
    int threads = 2;
    const std::atomic<bool>* cancel = nullptr;
    std::atomic<std::size_t>* done = nullptr; ///< counts boards, of `simulate` + `keep` at most
};

Choices choose(const Wish& wish, const ChooseRequest& request);

/// The two halves, for those who want to see or time them.
struct Screening {
    std::vector<Candidate> best; ///< least miss first
    std::size_t judged = 0;
    std::optional<Unmet> unmet; ///< a limit that no value of a part can mend
};
Screening screenWish(const Wish& wish, std::size_t most);
/// Simulated, those that blink, not yet ranked.
std::vector<Choice> simulateCandidates(const Wish& wish, const std::vector<Candidate>& candidates,
                                       const ChooseRequest& request);
/// The rates with the timing parts at the ends of their tolerances, simulated.
void addBands(const Wish& wish, std::vector<Choice>& choices, const ChooseRequest& request);

} // namespace blinkwright::study
