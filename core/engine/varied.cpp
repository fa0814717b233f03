#include "core/engine/varied.h"

#include "core/devices/laws.h"

#include <cmath>

namespace blinkwright::engine {

double forwardVoltage(const devices::JunctionLaw& law) {
    return devices::junctionVoltage(law, forwardVoltageAt_A) + law.seriesResistance * forwardVoltageAt_A;
}

double dividerShift(double dividerResistance, double factor) {
    // U from 8 to 5, 2 R from 5 to 1: 2 R / (U + 2 R) = 2/3 factor.
    return 1 / (dividerResistance * (3 / factor - 2)) - 1 / dividerResistance;
}

int controlNode(devices::Board& board, int timer) {
    auto& pin = board.timers[static_cast<std::size_t>(timer)].pins[circuit::timerPin::control];
    if (pin == devices::open) {
        if (board.nodeNames.empty()) { // node 0 is 0 V
            board.nodeNames.emplace_back();
            board.nodeNets.emplace_back();
        }
        pin = board.nodes();
        board.nodeNames.emplace_back("control");
        board.nodeNets.emplace_back();
    }
    return pin;
}

devices::Board variedBoard(const devices::Board& nominal, const std::vector<Varied>& varied,
                           std::span<const double> factors) {
    devices::Board board = nominal;
    for (std::size_t k = 0; k < varied.size(); ++k) {
        const auto index = static_cast<std::size_t>(varied[k].index);
        const double factor = factors[k];
        switch (varied[k].kind) {
        case VariedKind::resistor:
            board.resistors[index].resistance *= factor;
            break;
        case VariedKind::variableUpper:
            board.variables[index].upper *= factor;
            break;
        case VariedKind::variableLower:
            board.variables[index].lower *= factor;
            break;
        case VariedKind::capacitor:
            board.capacitors[index].capacitance *= factor;
            break;
        case VariedKind::supply:
            board.supplies[index].voltage *= factor;
            break;
        case VariedKind::levels: {
            if (factor == 1) break;
            devices::Resistor beside; // may be negative: divider and this together are positive
            beside.a = board.timers[index].pins[circuit::timerPin::supply];
            beside.b = controlNode(board, varied[k].index);
            beside.resistance = 1 / dividerShift(board.timers[index].sheet.divider_resistance, factor);
            beside.ratedPower = 1;
            board.resistors.push_back(beside);
            break;
        }
        case VariedKind::forwardVoltage: {
            auto& law = board.junctions[index].law;
            law.saturation *= std::exp(-(factor - 1) * forwardVoltage(law) / law.nVt);
            break;
        }
        }
    }
    return board;
}

} // namespace blinkwright::engine
