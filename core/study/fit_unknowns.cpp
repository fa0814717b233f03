#include "core/study/fit_unknowns.h"

#include "core/devices/defaults.h"
#include "core/engine/transient.h"
#include "core/engine/varied.h"
#include "core/study/timing_parts.h"
#include "core/study/tolerance_box.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace blinkwright::study {

using circuit::Circuit;
using circuit::Measured;
using circuit::PartId;
using circuit::PartSet;

namespace {

const double rectangular = 1 / std::sqrt(3.0);
/// A reading without uncertainty counts as this good, relative: what the engine is exact to.
constexpr double finest = 1e-6;
/// A part is not believed to have less than this share of its value.
constexpr double leastShare = 0.05;
constexpr double mostLevels = 1.45; // beyond, pin 5 has no divider

/// TI NE555/SA555/SE555, SLFS022A: output high at 15 V and 100 mA 13.3 V typical, 12.75 V at least [V].
constexpr double highDropLimit = 0.55;
/// Typical figures differ among makers by a factor of two: each may be anything up to twice its value.
constexpr double usualLimit = 1;
/// Of a lamp's or diode's forward voltage; from memory.
constexpr double forwardLimit = 0.1;

Measured rectangle(double low, double high) {
    return {0.5 * (low + high), 0.5 * (high - low) * rectangular};
}

class Finder {
  public:
    Finder(const Circuit& circuit, PartSet set, const devices::Board& board)
        : m_circuit(circuit), m_set(set), m_board(board), m_parts(measuredReadings(circuit).parts) {}

    std::vector<Unknown> find(const MeasuredReadings& measured, double supplyMean_A) {
        const TimingParts timing = timingParts(m_board);
        for (const std::string& ref : timing.capacitors) addCapacitor(ref);
        for (const std::string& ref : timing.resistors) addResistor(ref);
        for (const std::size_t diode : timing.diodes) addForward(diode);
        if (m_board.timers.empty()) return std::move(m_all);
        addLevels();
        if (timing.discharge) addDischarge();
        if (timing.output || measured.outputHigh_V) addOutputHigh();
        if (timing.output || measured.outputLow_V) addOutputLow();
        for (const MeasuredLamp& lamp : measured.lamps) addLamp(lamp.part);
        if (measured.supply_V && !m_board.supplies.empty()) {
            const devices::Supply& supply = m_board.supplies.front();
            Measured prior = *measured.supply_V;
            prior.value += supply.resistance * supplyMean_A;
            add({UnknownKind::supplyVoltage, supply.id, supply.ref, "voltage", units::Unit::volt, 0,
                 supply.voltage, prior, PriorFrom::reading, leastShare * supply.voltage});
        }
        return std::move(m_all);
    }

  private:
    static bool has(const std::vector<Unknown>& all, const Unknown& one) {
        return std::ranges::any_of(all,
                                   [&](const Unknown& u) { return u.part == one.part && u.key == one.key; });
    }
    void add(Unknown unknown) {
        if (unknown.from != PriorFrom::reading) takeReading(unknown);
        if (unknown.from == PriorFrom::reading)
            unknown.prior.uncertainty =
                std::max(unknown.prior.uncertainty, finest * std::abs(unknown.prior.value));
        if (unknown.prior.uncertainty > 0 && !has(m_all, unknown)) m_all.push_back(std::move(unknown));
    }
    /// A reading of the part itself tells more than its tolerance.
    void takeReading(Unknown& unknown) const {
        for (const MeasuredPart& part : m_parts) {
            if (!isOf(part, unknown) || !(part.value.value > 0)) continue;
            unknown.from = PriorFrom::reading;
            unknown.prior = part.value;
            if (unknown.kind == UnknownKind::leakage)
                unknown.prior = {1 / part.value.value,
                                 part.value.uncertainty / (part.value.value * part.value.value)};
        }
    }
    template <class List>
    static std::optional<std::size_t> indexOf(const List& list, std::string_view ref) {
        const auto at = std::ranges::find_if(list, [&](const auto& part) { return part.ref == ref; });
        if (at == list.end()) return std::nullopt;
        return static_cast<std::size_t>(at - list.begin());
    }
    void addToleranced(UnknownKind kind, const devices::Named& part, std::size_t index, const char* key,
                       units::Unit unit, double nominal) {
        const auto [low, high] = toleranceOf(m_circuit, m_set, part.id);
        add({kind, part.id, part.ref, key, unit, index, nominal,
             rectangle(nominal * (1 + low), nominal * (1 + high)), PriorFrom::tolerance,
             leastShare * nominal});
    }
    void addResistor(const std::string& ref) {
        if (const auto k = indexOf(m_board.resistors, ref))
            addToleranced(UnknownKind::resistance, m_board.resistors[*k], *k, "resistance", units::Unit::ohm,
                          m_board.resistors[*k].resistance);
        if (const auto k = indexOf(m_board.variables, ref)) {
            const devices::Variable& variable = m_board.variables[*k];
            addToleranced(UnknownKind::resistance, variable, *k, "resistance", units::Unit::ohm,
                          variable.upper + variable.lower);
        }
    }
    void addCapacitor(const std::string& ref) {
        const auto k = indexOf(m_board.capacitors, ref);
        if (!k) return;
        const devices::Capacitor& c = m_board.capacitors[*k];
        addToleranced(UnknownKind::capacitance, c, *k, "capacitance", units::Unit::farad, c.capacitance);
        // Nothing is expected beyond what the circuit states, but as much as makers allow may be: the second
        // moment of a rectangle about its end is that of one twice as wide about its middle.
        const double limit = std::max(usualLeakage_S(c.capacitance), c.leakageConductance);
        add({UnknownKind::leakage,
             c.id,
             c.ref,
             "leakage_conductance",
             units::Unit::siemens,
             *k,
             c.leakageConductance,
             {c.leakageConductance, limit * rectangular},
             PriorFrom::usual,
             0});
    }
    void addForward(std::size_t k) {
        const devices::Junction& j = m_board.junctions[k];
        const double nominal = devices::effectiveNumber(m_circuit, m_set, j.id, "forward_voltage");
        add({UnknownKind::forwardVoltage,
             j.id,
             j.ref,
             "forward_voltage",
             units::Unit::volt,
             k,
             nominal,
             {nominal, forwardLimit * nominal * rectangular},
             PriorFrom::usual,
             leastShare * nominal});
    }
    void addLevels() {
        const devices::Timer& timer = m_board.timers.front();
        add({UnknownKind::levels,
             timer.id,
             timer.ref,
             "levels",
             units::Unit::none,
             0,
             1,
             {1, timer.sheet.timing_tolerance * rectangular},
             PriorFrom::tolerance,
             leastShare});
    }
    void addOfTimer(UnknownKind kind, const char* name, units::Unit unit, double nominal, double limit) {
        const devices::Timer& timer = m_board.timers.front();
        add({kind,
             timer.id,
             timer.ref,
             std::string(circuit::devicePrefix) + name,
             unit,
             0,
             nominal,
             {nominal, limit * rectangular},
             PriorFrom::usual,
             0});
    }
    void addDischarge() {
        const devices::Timer& timer = m_board.timers.front();
        const double offset = timer.sheet.discharge_offset, resistance = timer.sheet.discharge_resistance;
        if (timer.cmos)
            addOfTimer(UnknownKind::discharge, "discharge_resistance", units::Unit::ohm, resistance,
                       usualLimit * resistance);
        else
            addOfTimer(UnknownKind::discharge, "discharge_offset", units::Unit::volt, offset,
                       usualLimit * offset);
    }
    void addOutputHigh() {
        const devices::Timer& timer = m_board.timers.front();
        const double resistance = timer.sheet.high_resistance;
        if (timer.cmos)
            addOfTimer(UnknownKind::outputHigh, "high_resistance", units::Unit::ohm, resistance,
                       usualLimit * resistance);
        else
            addOfTimer(UnknownKind::outputHigh, "high_drop_1mA", units::Unit::volt, timer.sheet.high_drop_1mA,
                       highDropLimit);
    }
    void addOutputLow() {
        const double resistance = m_board.timers.front().sheet.low_resistance;
        addOfTimer(UnknownKind::outputLow, "low_resistance", units::Unit::ohm, resistance,
                   usualLimit * resistance);
    }
    /// The lamp itself and the resistors at its own pins.
    void addLamp(PartId id) {
        const auto at = std::ranges::find(m_board.junctions, id, &devices::Junction::id);
        if (at == m_board.junctions.end()) return;
        addForward(static_cast<std::size_t>(at - m_board.junctions.begin()));
        const auto& pins = m_board.timers.front().pins;
        for (const devices::Node node : {at->anode, at->cathode}) {
            if (node <= 0 || std::ranges::find(pins, node) != pins.end()) continue;
            for (const devices::Resistor& r : m_board.resistors)
                if (r.a == node || r.b == node) addResistor(r.ref);
        }
    }

    const Circuit& m_circuit;
    const PartSet m_set;
    const devices::Board& m_board;
    const std::vector<MeasuredPart> m_parts;
    std::vector<Unknown> m_all;
};

} // namespace

bool isOf(const MeasuredPart& reading, const Unknown& unknown) {
    return reading.part == unknown.part &&
           reading.key == (unknown.kind == UnknownKind::leakage ? "leakage_resistance" : unknown.key);
}

void setUnknown(devices::Board& board, const devices::Board& nominal, const Unknown& unknown, double value) {
    const std::size_t k = unknown.index;
    switch (unknown.kind) {
    case UnknownKind::resistance:
        if (k < nominal.resistors.size() && nominal.resistors[k].id == unknown.part) {
            board.resistors[k].resistance = value;
        } else {
            const double factor = value / (nominal.variables[k].upper + nominal.variables[k].lower);
            board.variables[k].upper = factor * nominal.variables[k].upper;
            board.variables[k].lower = factor * nominal.variables[k].lower;
        }
        break;
    case UnknownKind::capacitance:
        board.capacitors[k].capacitance = value;
        break;
    case UnknownKind::leakage:
        board.capacitors[k].leakageConductance = value;
        break;
    case UnknownKind::levels:
        board = engine::variedBoard(board, {{engine::VariedKind::levels, static_cast<int>(k)}},
                                    std::array{std::min(value, mostLevels)});
        break;
    case UnknownKind::supplyVoltage:
        board.supplies[k].voltage = value;
        break;
    case UnknownKind::discharge:
        (board.timers[k].cmos ? board.timers[k].sheet.discharge_resistance
                              : board.timers[k].sheet.discharge_offset) = value;
        break;
    case UnknownKind::outputHigh:
        (board.timers[k].cmos ? board.timers[k].sheet.high_resistance : board.timers[k].sheet.high_drop_1mA) =
            value;
        break;
    case UnknownKind::outputLow:
        board.timers[k].sheet.low_resistance = value;
        break;
    case UnknownKind::forwardVoltage: {
        auto& law = board.junctions[k].law;
        law.saturation = nominal.junctions[k].law.saturation * std::exp(-(value - unknown.nominal) / law.nVt);
        break;
    }
    }
}

Unknowns::Unknowns(const Circuit& circuit, PartSet set, const devices::Board& board,
                   const MeasuredReadings& measured, double supplyMean_A)
    : m_board(board), m_all(Finder(circuit, set, board).find(measured, supplyMean_A)) {
    std::map<std::size_t, std::size_t> dialOfReel;
    for (Unknown& unknown : m_all) {
        unknown.dial = m_dials;
        for (std::size_t reel = 0; reel < circuit.reels.size(); ++reel)
            if (unknown.from == PriorFrom::tolerance &&
                std::ranges::find(circuit.reels[reel], unknown.part) != circuit.reels[reel].end())
                unknown.dial = dialOfReel.try_emplace(reel, m_dials).first->second;
        if (unknown.dial == m_dials) ++m_dials;
    }
}

double Unknowns::value(const Unknown& unknown, double dial) const {
    return unknown.prior.value + dial * unknown.prior.uncertainty;
}

devices::Board Unknowns::boardAt(const std::vector<double>& values) const {
    devices::Board board = m_board;
    for (std::size_t k = 0; k < m_all.size(); ++k) setUnknown(board, m_board, m_all[k], values[k]);
    return board;
}

devices::Board Unknowns::board(const std::vector<double>& dials) const {
    std::vector<double> values;
    for (const Unknown& unknown : m_all)
        values.push_back(std::max(unknown.lowest, value(unknown, dials[unknown.dial])));
    return boardAt(values);
}

double Unknowns::lowestDial(std::size_t dial) const {
    double lowest = -1e9;
    for (const Unknown& unknown : m_all)
        if (unknown.dial == dial)
            lowest = std::max(lowest, (unknown.lowest - unknown.prior.value) / unknown.prior.uncertainty);
    return lowest;
}

double Unknowns::smallMove(std::size_t dial) const {
    // A fifth of a standard deviation, but no more than a hundredth of the value; what is known better than
    // the engine can tell apart moves by a thousandth.
    double most = 0.2, least = 0;
    for (const Unknown& unknown : m_all) {
        if (unknown.dial != dial) continue;
        const double size = std::max(std::abs(unknown.nominal), unknown.prior.uncertainty);
        most = std::min(most, 0.01 * size / unknown.prior.uncertainty);
        least = std::max(least, 0.001 * size / unknown.prior.uncertainty);
    }
    return std::max(most, least);
}

} // namespace blinkwright::study
