#include "core/study/bench_board.h"

#include "core/base/wording.h"
#include "core/study/ground_reach.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using devices::Board;
using devices::Node;
namespace pins = circuit::timerPin;

namespace {

/// Damps the probe's tip: without it the capacitance would follow in no time.
constexpr double tip_ohm = 100;

std::string pinWords(const devices::Timer& timer, int pin) {
    const auto& known = circuit::info(circuit::PartKind::timer).pins[static_cast<std::size_t>(pin)];
    return wording::inWords("pin %1 of %2 (%3)", known.name, timer.ref, wording::inWords(known.role));
}

devices::Resistor resistorBetween(Node a, Node b, double ohm) {
    devices::Resistor resistor;
    resistor.a = a;
    resistor.b = b;
    resistor.resistance = ohm;
    return resistor;
}

} // namespace

Node addNode(Board& board, std::string name) {
    if (board.nodeNames.empty()) { // 0 is 0 V, whatever is joined to it
        board.nodeNames.emplace_back("0 V");
        board.nodeNets.emplace_back();
    }
    board.nodeNames.push_back(std::move(name));
    board.nodeNets.emplace_back();
    return board.nodes() - 1;
}

void recount(Board& board) {
    std::vector<int> held(static_cast<std::size_t>(board.nodes()), 0);
    everyPart(board, [&](const devices::Named&, const std::vector<Node>& nodes) {
        for (const Node node : nodes)
            if (node != devices::open) ++held[static_cast<std::size_t>(node)];
    });
    for (auto& timer : board.timers)
        for (std::size_t pin = 0; pin < timer.pins.size(); ++pin) {
            const Node node = timer.pins[pin];
            timer.inUse[pin] = node != devices::open && held[static_cast<std::size_t>(node)] > 1;
        }
}

void bridge(Board& board, Node a, Node b) {
    if (a == b || a == devices::open || b == devices::open) return;
    board.resistors.push_back(resistorBetween(a, b, bridge_ohm));
    recount(board);
}

BenchBoard benchBoard(Board board) {
    BenchBoard bench{std::move(board), {}};
    const auto held = [&](Node& node, const std::string& name) {
        if (node == devices::open) node = addNode(bench.board, name);
        return node;
    };
    for (auto& timer : bench.board.timers)
        for (int pin = 0; pin < 8; ++pin) {
            ReadingPlace place{.kind = PlaceKind::timerPin, .part = timer.id, .pin = pin};
            place.name = timer.ref + ":" + std::to_string(pin + 1);
            place.words = pinWords(timer, pin);
            place.node = held(timer.pins[static_cast<std::size_t>(pin)], place.name);
            bench.places.push_back(std::move(place));
        }
    for (std::size_t k = 0; k < bench.board.junctions.size(); ++k) {
        auto& lamp = bench.board.junctions[k];
        if (!lamp.lamp) continue;
        const auto end = [&](PlaceKind kind, const char* word, std::string words, Node& node) {
            ReadingPlace place{.kind = kind, .part = lamp.id, .name = lamp.ref + ":" + word};
            place.words = std::move(words);
            place.node = held(node, place.name);
            place.junction = k;
            bench.places.push_back(std::move(place));
        };
        end(PlaceKind::anode, "anode", wording::inWords("anode of %1", lamp.ref), lamp.anode);
        end(PlaceKind::cathode, "cathode", wording::inWords("cathode of %1", lamp.ref), lamp.cathode);
        ReadingPlace current{.kind = PlaceKind::lampCurrent, .part = lamp.id, .name = lamp.ref};
        current.words = wording::inWords("current of %1", lamp.ref);
        current.junction = k;
        bench.places.push_back(std::move(current));
    }
    recount(bench.board);
    return bench;
}

Board withInstrument(const Board& given, Node node, const Instrument& instrument) {
    Board board = given;
    board.resistors.push_back(resistorBetween(node, 0, instrument.ohm));
    if (instrument.farad > 0) {
        devices::Capacitor tip;
        tip.plus = node;
        tip.minus = 0;
        tip.capacitance = instrument.farad;
        tip.esr = tip_ohm;
        board.capacitors.push_back(std::move(tip));
    }
    recount(board);
    return board;
}

std::optional<double> loadingBound_V(const Board& board, Node node, const Instrument& instrument) {
    if (node == 0) return 0;
    // All else at the node can only share the instrument's current with the supply.
    for (const auto& supply : board.supplies)
        if (supply.plus == node && supply.minus == 0)
            return std::abs(supply.voltage) * supply.resistance / instrument.ohm;
    return std::nullopt;
}

Board withoutTimers(const Board& given, bool gone) {
    Board board = given;
    for (const auto& timer : given.timers) {
        if (gone) break;
        const auto pin = [&](int index) { return timer.pins[static_cast<std::size_t>(index)]; };
        board.resistors.push_back(
            resistorBetween(pin(pins::supply), pin(pins::control), timer.sheet.divider_resistance));
        board.resistors.push_back(
            resistorBetween(pin(pins::control), pin(pins::ground), 2 * timer.sheet.divider_resistance));
        devices::Junction substrate;
        substrate.anode = pin(pins::ground);
        substrate.cathode = pin(pins::supply);
        substrate.law = devices::JunctionLaw::through(1, 0.1, 2, 5).value();
        board.junctions.push_back(std::move(substrate));
    }
    // The engine wants a timer. This one is fed from a supply of its own and joined to nothing of the board.
    devices::Supply own;
    own.plus = addNode(board, "apart");
    own.minus = 0;
    own.voltage = 5;
    own.resistance = 1;
    devices::Timer idle;
    idle.cmos = true;
    idle.nominalSupply = own.voltage;
    idle.sheet = devices::timerSheet(devices::TimerFamily::cmos, own.voltage, {});
    idle.pins[pins::supply] = own.plus;
    idle.pins[pins::ground] = 0;
    board.supplies.push_back(std::move(own));
    board.timers = {std::move(idle)};
    recount(board);
    return board;
}

} // namespace blinkwright::study
