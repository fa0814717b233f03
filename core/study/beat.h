// The straight line through times at equal distances, by least squares: its slope is the period.
//
//   Beat b = beatOf({0.02, 0.98, 2.01});
//   b.period_s;  b.squares_s2;
#pragma once

#include <vector>

namespace blinkwright::study {

struct Beat {
    double period_s = 0;
    double squares_s2 = 0; ///< sum of the squared distances of the times from the line [s²]
    double stretch = 0;    ///< sum of the squared distances of the indices from their mean
    int times = 0;
};
/// Of any number of times; with fewer than two there is no period.
Beat beatOf(const std::vector<double>& times_s);

} // namespace blinkwright::study
