// A board as it lies on the bench: the places where a meter can be put, and the small changes that meters and
// mistakes make to it.
//
//   BenchBoard bench = benchBoard(makeBoard(circuit, set).value());
//   Board loaded = withInstrument(bench.board, bench.places[6].node, dcMeter);
//   BenchBoard broken = bench;  leaveOut(broken, broken.places[6]);      // a leg that is joined to nothing
#pragma once

#include "core/devices/board.h"
#include "core/study/meter.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

enum class PlaceKind { timerPin, anode, cathode, lampCurrent };

/// Where something is read: voltages against 0 V at the part's own leg, currents in series with the lamp.
struct ReadingPlace {
    PlaceKind kind{};
    circuit::PartId part;
    int pin = 0;              ///< of a timer, from 0
    std::string name = {};    ///< `U1:3`, `D1:anode`, `D1`
    std::string words = {};   ///< `pin 3 of U1 (output)`, `anode of D1`, `current of D1`
    devices::Node node = 0;   ///< of a voltage
    std::size_t junction = 0; ///< of a lamp: its place in Board::junctions
    bool isVoltage() const { return kind != PlaceKind::lampCurrent; }
};

struct BenchBoard {
    devices::Board board;
    std::vector<ReadingPlace> places; ///< timer pins, then each lamp's anode, cathode and current
};

/// Every leg that is joined to nothing gets a node of its own, so that it can be measured too.
BenchBoard benchBoard(devices::Board board);

/// A node that nothing is joined to yet.
devices::Node addNode(devices::Board& board, std::string name);
/// Says anew which inputs of timers are in use, after pins have moved.
void recount(devices::Board& board);
/// A wire, a blob of solder, a strand across two rows.
void bridge(devices::Board& board, devices::Node a, devices::Node b);
/// 50 milliohm: contact and a bit of wire; common practice, no source.
inline constexpr double bridge_ohm = 0.05;

devices::Board withInstrument(const devices::Board& board, devices::Node node, const Instrument& instrument);
/// The most that the instrument can move the voltage of a place by, as far as that is plain without a
/// simulation: none at 0 V, its current times the supply's resistance at a supply's plus. [V]
/// @return nothing where it is not plain.
std::optional<double> loadingBound_V(const devices::Board& board, devices::Node node,
                                     const Instrument& instrument);

/// Takes the timers out of operation: what is left of a chip without its supply is the divider at pin 5 and
/// the junction from pin 1 to pin 8 that any integrated circuit has (1 V at 100 mA, 5 ohm; from memory).
/// @param gone not even that: the timer is not in its place
devices::Board withoutTimers(const devices::Board& board, bool gone = false);

} // namespace blinkwright::study
