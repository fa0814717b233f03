// The numbers of a board that vary from board to board in a batch.
//
//   Board other = variedBoard(board, {{VariedKind::resistor, 0}}, std::array{1.05});
#pragma once

#include "core/devices/board.h"

#include <span>
#include <vector>

namespace blinkwright::engine {

enum class VariedKind {
    resistor,
    variableUpper, ///< pin 1 to wiper
    variableLower, ///< wiper to pin 2
    capacitor,
    supply,         ///< its no-load voltage; sheets stay at the nominal supply of the nominal board
    levels,         ///< both levels of a timer together: pin 5 stands at this times 2/3 of pin 8; under 1.5
    forwardVoltage, ///< of a lamp or diode: what it drops at 10 mA
};

/// One number of the board that is multiplied by a factor of its own on every board.
struct Varied {
    VariedKind kind{};
    int index = 0; ///< into the board's list of such parts
};

/// The board that a set of factors makes of the nominal one.
devices::Board variedBoard(const devices::Board& nominal, const std::vector<Varied>& varied,
                           std::span<const double> factors);

/// The current at which a forward voltage that varies is meant [A].
inline constexpr double forwardVoltageAt_A = 10e-3;
/// What a junction drops there, series resistance included [V].
double forwardVoltage(const devices::JunctionLaw& law);
/// The conductance from pin 8 to pin 5 that puts pin 5 at `factor` x 2/3 of pin 8, less that of the nominal
/// divider [S].
double dividerShift(double dividerResistance, double factor);
/// The same board with pin 5 of a timer in a net of its own, if it was in none. @return its node.
int controlNode(devices::Board& board, int timer);

} // namespace blinkwright::engine
