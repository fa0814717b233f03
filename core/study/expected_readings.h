// What a meter or a probe reads at every pin and lamp of a board that works as drawn: the numbers of a check
// card, with which a board that was built is gone through.
//
//   ExpectedReadings expected = expectedReadings(circuit, PartSet::A, {}).value();
//   expected.rows[2].meter.mean          // U1:3, [V]
//   checkCardText(circuit, PartSet::A, expected)
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/behaviour.h"

#include <atomic>
#include <string>
#include <vector>

namespace blinkwright::study {

struct ExpectedReadingsRequest {
    double accuracy = 1e-6;
    const std::atomic<bool>* cancel = nullptr;
};

struct ExpectedReading {
    ReadingPlace place;
    /// As read with dcMeter and with tenToOneProbe on that place alone; currents as they are, since what a
    /// meter in series adds depends on its range. [V], [A]
    Extent meter, probe;
};

struct ExpectedReadings {
    BoardState state = BoardState::unknown;
    double period_s = 0;
    std::vector<ExpectedReading> rows; ///< timer pins, then each lamp's anode, cathode, current
    bool cancelled = false;
};

/// Over the settled period, or at rest where the board does not blink. `uneven`: over some of its cycles.
/// @return a fault only where no board can be made.
Result<ExpectedReadings> expectedReadings(const circuit::Circuit& circuit, circuit::PartSet set,
                                          const ExpectedReadingsRequest& request);

/// `over one cycle of 1.02 s`, `at rest`, ...: what the figures of a card stand for.
std::string checkCardHeading(const ExpectedReadings& expected);
/// How to measure, sentences.
std::vector<std::string> checkCardNotes();
/// One figure of the card: `4.59 V`; rounding left over by the solver reads as 0.
std::string readingText(const ReadingPlace& place, double value);
/// The whole card as plain text: title, a line a place, notes and cautions.
std::string checkCardText(const circuit::Circuit& circuit, circuit::PartSet set,
                          const ExpectedReadings& expected);

} // namespace blinkwright::study
