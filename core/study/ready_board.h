// The boards of the ready blinkers: parts, nets and places on the drawing, for given values.
//
//   circuit::Circuit c = readyBoard(answers, values);
#pragma once

#include "core/study/ready.h"
#include "core/study/ready_timing.h"

namespace blinkwright::study {

/// Everything that is chosen for a ready blinker.
struct ReadyValues {
    Timing timing;             ///< of the first timer
    Timing slow;               ///< of the timer that gates it
    double lamp_ohm = 0;       ///< in series with the first lamp
    double second_ohm = 0;     ///< in series with the second
    double coupling_farad = 0; ///< passes the swing on to a pair
};

circuit::Circuit readyBoard(const ReadyAnswers& answers, const ReadyValues& values);

} // namespace blinkwright::study
