// Takes a board apart at the nets that many blocks hang on, usually the supply's: the borders. What is left
// is pieces that know of each other only through the voltages of those nets.
//
//   std::optional<Partition> parts = partition(board);    // nothing where the board hangs together otherwise
//   parts->borders                                         // nodes of the whole board
//   parts->pieces[0].board                                 // a board of its own; see Piece
#pragma once

#include "core/devices/board.h"

#include <optional>
#include <vector>

namespace blinkwright::engine::large {

/// A piece of a board as a board of its own. Its last `borders.size()` capacitors stand for the borders that
/// it touches: 1 F without series resistance from a border net to 0 V, so that their voltages are the
/// borders' and the charge that they take, in coulomb a second, is what the piece gives to the border.
struct Piece {
    devices::Board board;
    std::vector<int> borders; ///< index into Partition::borders, by border capacitor
    /// What a local number of a node, capacitor and so on is in the whole board; -1 for what is only here.
    std::vector<int> nodes, capacitors, junctions, supplies, switches, timers;
    int states() const { return static_cast<int>(capacitors.size()); }
};

struct Partition {
    std::vector<devices::Node> borders; ///< never node 0, which every piece knows
    std::vector<Piece> pieces;
    int withTimers = 0; ///< pieces with at least one timer
};

/// @param leastGain by how many pieces with timers a net must raise their number to be a border.
/// @return nothing where no net does, or where a piece stays too large for the small dense equations.
std::optional<Partition> partition(const devices::Board& board, int leastGain = 2);

/// Whether a board is large enough to be simulated piece by piece, other things being equal.
bool isLarge(const devices::Board& board);
/// Whether it is so for its timers: such a board has no period.
bool hasManyTimers(const devices::Board& board);

} // namespace blinkwright::engine::large
