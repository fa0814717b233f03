#include "core/study/idealised.h"

#include "core/devices/laws.h"

#include <algorithm>
#include <limits>

namespace blinkwright::study {

namespace timerPin = circuit::timerPin;
using devices::Board;
using devices::Node;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
/// Small against any timing resistor, large enough to leave the equations their digits [ohm].
constexpr double nearlyNothing = 1e-7;
/// An ideal diode: at a milliampere it drops 3e-9 V [A, V].
constexpr devices::JunctionLaw idealDiode{1e-15, 1e-10, 0};

Node& pin(devices::Timer& timer, int n) {
    return timer.pins[static_cast<std::size_t>(n)];
}

Node freshNode(Board& board) {
    board.nodeNames.emplace_back("ideal");
    board.nodeNets.emplace_back();
    return board.nodes() - 1;
}

/// A source without resistance from one node to another.
void hold(Board& board, Node plus, Node minus, double volts) {
    devices::Supply source;
    source.plus = plus;
    source.minus = minus;
    source.voltage = volts;
    board.supplies.push_back(source);
}

void leaveOpen(devices::Timer& timer, int n) {
    pin(timer, n) = devices::open;
    timer.inUse[static_cast<std::size_t>(n)] = false;
}

} // namespace

std::string_view name(Imperfection imperfection) {
    switch (imperfection) {
    case Imperfection::dischargePin:
        return "discharge pin";
    case Imperfection::inputCurrents:
        return "input currents";
    case Imperfection::capacitorLeakage:
        return "capacitor leakage";
    case Imperfection::capacitorSeries:
        return "capacitor series resistance";
    case Imperfection::outputLevels:
        return "output levels";
    case Imperfection::supplySag:
        return "supply sag";
    case Imperfection::controlPin:
        return "control pin";
    case Imperfection::delay:
        return "delay";
    case Imperfection::diodeDrop:
        return "diode drop";
    }
    return "";
}

Idealiser::Idealiser(const Board& board, const Textbook& textbook) : m_board(board), m_textbook(textbook) {
    for (std::size_t k = 0; k < board.capacitors.size(); ++k)
        if (std::ranges::count(textbook.cParts, board.capacitors[k].ref) > 0) m_capacitors.push_back(k);
}

std::vector<Imperfection> Idealiser::present() const {
    const devices::TimerSheet& sheet = m_board.timers.front().sheet;
    const bool single = m_textbook.form == AstableForm::singleResistor;
    const auto anyCapacitor = [&](auto&& is) {
        return std::ranges::any_of(m_capacitors, [&](std::size_t k) { return is(m_board.capacitors[k]); });
    };
    const auto acts = [&](Imperfection imperfection) {
        switch (imperfection) {
        case Imperfection::dischargePin:
            return !single;
        case Imperfection::inputCurrents:
            return sheet.threshold_current > 0 || sheet.trigger_current > 0;
        case Imperfection::capacitorLeakage:
            return anyCapacitor([](const auto& c) { return c.leakageConductance > 0; });
        case Imperfection::capacitorSeries:
            return anyCapacitor([](const auto& c) { return c.esr > 0; });
        case Imperfection::outputLevels:
            return single;
        case Imperfection::supplySag:
            return true;
        case Imperfection::controlPin:
            return m_textbook.form == AstableForm::drivenControl;
        case Imperfection::delay:
            return sheet.delay > 0;
        case Imperfection::diodeDrop:
            return m_textbook.form == AstableForm::steeringDiode;
        }
        return false;
    };
    std::vector<Imperfection> list;
    std::ranges::copy_if(allImperfections, std::back_inserter(list), acts);
    return list;
}

Board Idealiser::with(const std::set<Imperfection>& real) const {
    const auto ideal = [&](Imperfection imperfection) { return !real.contains(imperfection); };
    Board board = m_board;
    devices::Timer& timer = board.timers.front();
    devices::TimerSheet& sheet = timer.sheet;
    const Node supply = pin(timer, timerPin::supply), ground = pin(timer, timerPin::ground);

    if (ideal(Imperfection::dischargePin)) {
        sheet.discharge_resistance = nearlyNothing;
        sheet.discharge_offset = 0;
        sheet.discharge_limit = infinite;
        sheet.discharge_leakage = 0;
    }
    if (ideal(Imperfection::inputCurrents)) sheet.threshold_current = sheet.trigger_current = 0;
    for (const std::size_t k : m_capacitors) {
        if (ideal(Imperfection::capacitorLeakage)) board.capacitors[k].leakageConductance = 0;
        if (ideal(Imperfection::capacitorSeries)) board.capacitors[k].esr = 0;
    }
    if (ideal(Imperfection::outputLevels) && m_textbook.form == AstableForm::singleResistor) {
        // The CMOS law is linear and goes both ways; reset is left out, since that input differs by family.
        timer.cmos = true;
        sheet.high_resistance = sheet.low_resistance = nearlyNothing;
        sheet.high_limit = sheet.low_limit = infinite;
        leaveOpen(timer, timerPin::reset);
    }
    if (ideal(Imperfection::delay)) sheet.delay = 0;
    if (ideal(Imperfection::supplySag)) hold(board, supply, ground, timer.nominalSupply);
    if (ideal(Imperfection::controlPin) && m_textbook.form == AstableForm::drivenControl) {
        const Node control = freshNode(board);
        pin(timer, timerPin::control) = control;
        hold(board, control, ground, m_textbook.control_ratio * timer.nominalSupply);
    }
    if (ideal(Imperfection::diodeDrop))
        for (const std::size_t k : m_textbook.diodes) {
            devices::Junction& diode = board.junctions[k];
            diode.law = idealDiode;
            // Takes back the shunt that every junction has; it would bridge R2 while the diode is off.
            devices::Resistor back;
            back.a = diode.anode;
            back.b = diode.cathode;
            back.resistance = -1 / devices::junctionShunt;
            back.ratedPower = 1;
            board.resistors.push_back(back);
        }
    return board;
}

} // namespace blinkwright::study
