// The two phases of a timer's output.
#pragma once

namespace blinkwright::study {

struct Phase {
    double high_s = 0;
    double low_s = 0;
    double period_s() const { return high_s + low_s; }
    double rate_Hz() const { return 1 / period_s(); }
    double duty() const { return high_s / period_s(); }
};

} // namespace blinkwright::study
