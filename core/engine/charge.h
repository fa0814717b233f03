// A charge that flows during one step.
#pragma once

namespace blinkwright::engine {

/// A charge through a lamp during one step, and its error estimate [C].
struct Charge {
    double value = 0, error = 0;
};

} // namespace blinkwright::engine
