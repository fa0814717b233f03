// One cause of a verdict: a sentence that says what is so and what to mend, and where to look.
#pragma once

#include <string>
#include <vector>

namespace blinkwright::study {

struct Cause {
    std::string sentence;
    std::vector<std::string> places; ///< designators or terminals: `R1`, `U1:4`
};

/// `a`, `a and b`, `a, b and c`.
std::string listed(const std::vector<std::string>& items);

} // namespace blinkwright::study
