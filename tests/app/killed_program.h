// A program that edits and saves a circuit until it is killed, and what it had done by then.
//
//   const auto [story, died_ms] = runAndKill("mole.blinkwright", "state", 7, 1500);
//   story.saved; // the number, and title, of the last circuit whose saving it reported
#pragma once

#include <QString>

#include <map>
#include <optional>

namespace blinkwright::test {

struct Story {
    std::map<int, long long> edits; ///< number of the edit and when it was done [ms of the steady clock]
    int saving = 0;                 ///< the last save that was begun
    int saved = 0;                  ///< the last one that was reported done
};

struct Killed {
    Story story;
    long long died_ms = 0; ///< of the same clock
};

/// Runs `crash_child`, which stands beside this program, on `file`, and kills it.
/// @param state   folder of its recovery file
/// @param seed    of the times between its edits and saves
/// @param life_ms from its first edit
/// @return nothing where it did not start, or ended by itself
std::optional<Killed> runAndKill(const QString& file, const QString& state, unsigned seed, int life_ms);

/// How long before its end the oldest edit was done that came after edit `kept` [ms]; 0 where nothing did.
long long lost_ms(const Killed& killed, int kept);

} // namespace blinkwright::test
