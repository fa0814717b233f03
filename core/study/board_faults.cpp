#include "core/study/board_faults.h"

#include "core/study/fault_words.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using circuit::Circuit;
using circuit::Part;
using circuit::PartKind;
using devices::Board;

namespace {

// A battery at its end: its voltage under no load, and the resistance that it has got. Common practice, no
// source.
constexpr double exhaustedShare = 0.65, exhaustedTimes = 10, exhausted_ohm = 20;
/// Parts nearer to each other than this cannot be told apart by their values.
constexpr double leastSwap = 0.1;
// An electrolytic capacitor the wrong way round conducts from some 1.5 V on, at first without heat: as a
// junction with 1 mA there and 200 ohm behind it. Common practice, no source; no maker states it.
constexpr double reverse_V = 1.5, reverse_A = 1e-3, reverseIdeality = 4, reverse_ohm = 200;

template <class Parts>
auto* find(Parts& parts, circuit::PartId id) {
    const auto at = std::ranges::find_if(parts, [&](const auto& part) { return part.id == id; });
    return at == parts.end() ? nullptr : &*at;
}

bool differ(double a, double b) {
    return std::abs(a - b) > leastSwap * std::max(a, b);
}

class Lister {
  public:
    Lister(const Circuit& circuit, circuit::PartSet set, const BenchBoard& bench)
        : m_circuit(circuit), m_board(bench.board), m_words(circuit, set) {}

    std::vector<BoardFault> list() {
        BoardFault none;
        none.prior = priorOf(FaultKind::none, PartKind::resistor);
        m_words.describe(none);
        m_all.push_back(std::move(none));
        for (const Part& part : m_circuit.parts()) {
            switch (part.kind) {
            case PartKind::timer:
                ofTimer(part);
                break;
            case PartKind::supply:
                for (const FaultKind kind :
                     {FaultKind::open, FaultKind::exhausted, FaultKind::turned, FaultKind::shorted})
                    add(kind, part);
                break;
            case PartKind::resistor:
            case PartKind::capacitor:
                ofTwoLegs(part);
                break;
            case PartKind::variable:
                for (const FaultKind kind :
                     {FaultKind::open, FaultKind::leftOut, FaultKind::decadeUp, FaultKind::decadeDown})
                    add(kind, part);
                break;
            case PartKind::lamp:
            case PartKind::diode:
                for (const FaultKind kind : {FaultKind::open, FaultKind::turned, FaultKind::shorted})
                    add(kind, part);
                addSwaps(part);
                break;
            case PartKind::toggle:
                add(find(m_board.switches, part.id)->closed ? FaultKind::open : FaultKind::shorted, part);
                break;
            }
        }
        return std::move(m_all);
    }

  private:
    void add(FaultKind kind, const Part& part, int pin = 0, circuit::PartId other = {}) {
        BoardFault fault{.kind = kind,
                         .part = part.id,
                         .other = other,
                         .pin = pin,
                         .label = {},
                         .sentence = {},
                         .remedy = {},
                         .places = {}};
        fault.prior = priorOf(kind, part.kind);
        m_words.describe(fault);
        m_all.push_back(std::move(fault));
    }

    void ofTimer(const Part& part) {
        const devices::Timer& timer = *find(m_board.timers, part.id);
        for (int pin = 0; pin < 8; ++pin)
            if (m_circuit.netOf({part.id, pin})) add(FaultKind::leftOut, part, pin);
        // Neighbours on one side of the package: 1 to 4, 5 to 8.
        for (const int pin : {0, 1, 2, 4, 5, 6})
            if (timer.pins[static_cast<std::size_t>(pin)] != timer.pins[static_cast<std::size_t>(pin) + 1])
                add(FaultKind::bridged, part, pin);
        add(FaultKind::turned, part);
        if (m_board.timers.size() == 1) add(FaultKind::gone, part);
    }

    void ofTwoLegs(const Part& part) {
        add(FaultKind::open, part);
        add(FaultKind::shorted, part);
        if (const auto* capacitor = find(m_board.capacitors, part.id); capacitor && capacitor->polarised)
            add(FaultKind::turned, part);
        add(FaultKind::decadeUp, part);
        add(FaultKind::decadeDown, part);
        addSwaps(part);
    }

    /// With parts that come later in the list.
    void addSwaps(const Part& part) {
        bool after = false;
        for (const Part& other : m_circuit.parts()) {
            if (after && other.kind == part.kind && areDifferent(part.id, other.id))
                add(FaultKind::swapped, part, 0, other.id);
            after = after || other.id == part.id;
        }
    }
    bool areDifferent(circuit::PartId a, circuit::PartId b) const {
        if (const auto* one = find(m_board.resistors, a))
            return differ(one->resistance, find(m_board.resistors, b)->resistance);
        if (const auto* one = find(m_board.capacitors, a)) {
            const auto* other = find(m_board.capacitors, b);
            return one->polarised != other->polarised || differ(one->capacitance, other->capacitance);
        }
        const auto *one = find(m_board.junctions, a), *other = find(m_board.junctions, b);
        return one && other && one->colour != other->colour;
    }

    const Circuit& m_circuit;
    const Board& m_board;
    const FaultWords m_words;
    std::vector<BoardFault> m_all;
};

/// Makes one fault on a board.
class Breaker {
  public:
    Breaker(BenchBoard& bench, const BoardFault& fault) : m_bench(bench), m_fault(fault) {}

    void make() {
        Board& board = m_bench.board;
        if (auto* part = find(board.supplies, m_fault.part)) ofSupply(*part);
        if (auto* part = find(board.timers, m_fault.part)) ofTimer(*part);
        if (auto* part = find(board.resistors, m_fault.part)) ofResistor(*part);
        if (auto* part = find(board.variables, m_fault.part)) ofVariable(*part);
        if (auto* part = find(board.capacitors, m_fault.part)) ofCapacitor(*part);
        if (auto* part = find(board.junctions, m_fault.part)) ofJunction(*part);
        if (auto* part = find(board.switches, m_fault.part)) part->closed = !part->closed;
        recount(board);
    }

  private:
    bool is(FaultKind kind) const { return m_fault.kind == kind; }
    double decade() const { return is(FaultKind::decadeUp) ? 10 : is(FaultKind::decadeDown) ? 0.1 : 1; }

    void ofSupply(devices::Supply& part) {
        if (is(FaultKind::open)) part.plus = devices::open;
        if (is(FaultKind::turned)) std::swap(part.plus, part.minus);
        if (is(FaultKind::shorted)) return bridge(m_bench.board, part.plus, part.minus);
        if (!is(FaultKind::exhausted)) return;
        part.voltage *= exhaustedShare;
        part.resistance = exhaustedTimes * part.resistance + exhausted_ohm;
    }

    void ofTimer(devices::Timer& part) {
        const auto pin = static_cast<std::size_t>(m_fault.pin);
        if (is(FaultKind::leftOut)) {
            part.pins[pin] = addNode(m_bench.board, part.ref + ":" + std::to_string(m_fault.pin + 1));
            for (ReadingPlace& place : m_bench.places)
                if (place.kind == PlaceKind::timerPin && place.part == part.id && place.pin == m_fault.pin)
                    place.node = part.pins[pin];
        }
        if (is(FaultKind::bridged)) return bridge(m_bench.board, part.pins[pin], part.pins[pin + 1]);
        if (!is(FaultKind::turned)) return;
        // Seen from above the pins run round: what is 1 gets into the place of 5.
        auto turned = part.pins;
        for (std::size_t k = 0; k < 8; ++k) turned[k] = part.pins[(k + 4) % 8];
        part.pins = turned;
    }

    void ofResistor(devices::Resistor& part) {
        part.resistance *= decade();
        if (is(FaultKind::swapped))
            std::swap(part.resistance, find(m_bench.board.resistors, m_fault.other)->resistance);
        if (is(FaultKind::open)) part.a = devices::open;
        if (is(FaultKind::shorted)) bridge(m_bench.board, part.a, part.b);
    }

    void ofVariable(devices::Variable& part) {
        part.upper *= decade();
        part.lower *= decade();
        if (is(FaultKind::open)) part.a = part.b = part.wiper = devices::open;
        if (is(FaultKind::leftOut)) part.wiper = addNode(m_bench.board, part.ref + ":wiper");
    }

    void ofCapacitor(devices::Capacitor& part) {
        part.capacitance *= decade();
        if (is(FaultKind::open)) part.plus = devices::open;
        if (is(FaultKind::shorted)) bridge(m_bench.board, part.plus, part.minus);
        if (is(FaultKind::turned)) {
            std::swap(part.plus, part.minus);
            addReverse(part);
        }
        if (!is(FaultKind::swapped)) return;
        devices::Capacitor& other = *find(m_bench.board.capacitors, m_fault.other);
        std::swap(part, other);
        std::swap(part.plus, other.plus);
        std::swap(part.minus, other.minus);
    }
    void addReverse(const devices::Capacitor& part) {
        devices::Junction leak;
        leak.anode = part.minus;
        leak.cathode = part.plus;
        leak.law = devices::JunctionLaw::through(reverse_V, reverse_A, reverseIdeality, reverse_ohm).value();
        m_bench.board.junctions.push_back(std::move(leak));
    }

    void ofJunction(devices::Junction& part) {
        if (is(FaultKind::open)) part.anode = devices::open;
        if (is(FaultKind::turned)) std::swap(part.anode, part.cathode);
        if (is(FaultKind::shorted)) return bridge(m_bench.board, part.anode, part.cathode);
        if (!is(FaultKind::swapped)) return;
        devices::Junction& other = *find(m_bench.board.junctions, m_fault.other);
        std::swap(part.law, other.law);
        std::swap(part.ratedCurrent, other.ratedCurrent);
    }

    BenchBoard& m_bench;
    const BoardFault& m_fault;
};

} // namespace

double priorOf(FaultKind kind, PartKind part) {
    switch (kind) {
    case FaultKind::none:
        return 2;
    case FaultKind::open:
        return part == PartKind::toggle ? 1 : 3;
    case FaultKind::leftOut:
        return 3;
    case FaultKind::turned:
        return part == PartKind::supply || part == PartKind::timer ? 1.5 : 4;
    case FaultKind::exhausted:
        return 3;
    case FaultKind::swapped:
    case FaultKind::decadeUp:
    case FaultKind::decadeDown:
    case FaultKind::bridged:
        return 2;
    case FaultKind::shorted:
        return part == PartKind::resistor ? 0.3 : 0.7;
    case FaultKind::gone:
        return 1;
    }
    return 1;
}

std::vector<BoardFault> boardFaults(const Circuit& circuit, circuit::PartSet set, const BenchBoard& bench) {
    return Lister(circuit, set, bench).list();
}

BenchBoard withFault(const BenchBoard& bench, const BoardFault& fault) {
    BenchBoard broken = bench;
    Breaker(broken, fault).make();
    return broken;
}

} // namespace blinkwright::study
