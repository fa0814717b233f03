#include "core/study/textbook.h"

#include "core/study/wiring.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace blinkwright::study {

namespace {

using circuit::PartId;
namespace timerPin = circuit::timerPin;
using std::numbers::ln2;

// A source of this resistance and less at pin 5 holds it: the divider behind the pin has 3.3 kilohm and more.
constexpr double idealSourceResistance = 100; // [ohm]

/// The timer's nodes with closed switches taken as wires.
struct Pins {
    Node ground, trigger, output, reset, control, threshold, discharge, rail;
};

/// What a reduced wiring shows between the timer's nodes.
struct Found {
    const Element* r1 = nullptr;     ///< rail to discharge
    const Element* r2 = nullptr;     ///< discharge to timing
    const Element* r = nullptr;      ///< output to timing
    double toGround = 0;             ///< capacitance timing to ground [F]
    double toRail = 0;               ///< capacitance timing to rail [F]
    std::vector<const Element*> c;   ///< the capacitances
    std::vector<std::size_t> diodes; ///< from discharge to timing
    bool foreign = false;            ///< anything else that touches the timing
};

void look(const Element& e, const Pins& pins, bool dischargeCounts, const devices::Board& board,
          Found& found) {
    const Node timing = pins.trigger;
    const bool near = e.touches(timing) || (dischargeCounts && e.touches(pins.discharge));
    if (!near) return;
    if (e.kind == ElementKind::resistance && dischargeCounts && e.joins(pins.rail, pins.discharge)) {
        found.r1 = &e;
    } else if (e.kind == ElementKind::resistance && dischargeCounts && e.joins(pins.discharge, timing)) {
        found.r2 = &e;
    } else if (e.kind == ElementKind::resistance && e.joins(pins.output, timing)) {
        found.r = &e;
    } else if (e.kind == ElementKind::capacitance && e.joins(timing, pins.ground)) {
        found.toGround += e.value;
        found.c.push_back(&e);
    } else if (e.kind == ElementKind::capacitance && e.joins(timing, pins.rail)) {
        found.toRail += e.value; // the rail stands still too: the same timing
        found.c.push_back(&e);
    } else if (e.kind == ElementKind::junction && dischargeCounts && e.a == pins.discharge && e.b == timing &&
               !board.junctions[e.index].lamp) {
        found.diodes.push_back(e.index);
    } else {
        found.foreign = true;
    }
}

std::vector<std::string> refsOf(const std::vector<const Element*>& elements) {
    std::vector<std::pair<PartId, std::string>> parts;
    for (const Element* e : elements) {
        for (std::size_t k = 0; k < e->ids.size(); ++k) parts.emplace_back(e->ids[k], e->refs[k]);
    }
    std::sort(parts.begin(), parts.end());
    std::vector<std::string> refs;
    refs.reserve(parts.size());
    for (auto& part : parts) refs.push_back(std::move(part.second));
    return refs;
}

/// What stands at pin 5: nothing that moves its level, an ideal source, or something without a formula.
struct Control {
    bool known = true;
    std::optional<double> ratio; ///< held level over the supply
};

Control controlOf(const devices::Board& board, const devices::Timer& timer, const Wiring& wiring,
                  const Pins& pins, const std::set<Node>& kept) {
    Control control;
    if (pins.control == devices::open) return control;
    std::optional<double> held;
    bool pulled = false; // by anything that moves the level but slightly or not surely
    for (const Element& e : reduced(wiring.around({pins.control}, kept), kept)) {
        if (!e.touches(pins.control)) continue;
        const Node far = e.other(pins.control);
        if (e.kind == ElementKind::capacitance && (far == pins.ground || far == pins.rail)) continue;
        if (e.kind == ElementKind::supply && e.value < idealSourceResistance && !held) {
            const double voltage = board.supplies[e.index].voltage;
            if (e.a == pins.control && far == pins.ground) held = voltage;
            if (e.b == pins.control && far == pins.rail) held = timer.nominalSupply - voltage;
            if (held) continue;
            control.known = false;
        }
        pulled = true;
    }
    if (held) {
        control.ratio = *held / timer.nominalSupply;
        control.known = *control.ratio > 0 && *control.ratio < 1;
    } else {
        control.known = control.known && !pulled;
    }
    return control;
}

/// `0.988 Hz, 0.19 % low`
std::string roundedText(const std::string& formula, double rounded, double exact) {
    const double percent = 100 * (rounded / exact - 1);
    return formula + " gives " + units::formatQuantity(rounded, units::Unit::hertz, 4) + ", " +
           units::formatQuantity(std::abs(percent), units::Unit::none, 2) + " % " +
           (percent < 0 ? "low" : "high");
}

/// From the start of a run, capacitors empty, till the capacitor meets the threshold level.
/// @param start level at the start over the supply: 0 with the capacitor to ground, 1 with it to the rail.
double firstHigh(double tau, double start, double threshold) {
    return start >= threshold ? 0 : tau * std::log((1 - start) / (1 - threshold));
}

} // namespace

std::optional<Textbook> textbookOf(const devices::Board& board, std::size_t index) {
    if (index >= board.timers.size()) return std::nullopt;
    const devices::Timer& timer = board.timers[index];
    const Wiring wiring(board);
    const auto pin = [&](int n) { return wiring.at(timer.pins[static_cast<std::size_t>(n)]); };
    const Pins pins{pin(timerPin::ground),    pin(timerPin::trigger), pin(timerPin::output),
                    pin(timerPin::reset),     pin(timerPin::control), pin(timerPin::threshold),
                    pin(timerPin::discharge), pin(timerPin::supply)};
    const Node timing = pins.trigger;
    if (pins.ground == devices::open || pins.rail == devices::open || timing == devices::open)
        return std::nullopt;
    if (timing != pins.threshold || !(timer.nominalSupply > 0)) return std::nullopt;
    if (pins.rail == pins.ground || timing == pins.rail || timing == pins.ground) return std::nullopt;
    for (const Node node : {pins.output, pins.reset, pins.control, pins.discharge}) {
        if (node == timing) return std::nullopt;
    }

    // Nodes that stay as they are: the timer's own, and those of other timers, whose pins drive them.
    std::set<Node> kept{pins.ground, pins.rail,    timing,        pins.output,
                        pins.reset,  pins.control, pins.discharge};
    std::set<Node> others;
    for (const devices::Timer& other : board.timers) {
        if (&other == &timer) continue;
        for (const Node node : other.pins) others.insert(wiring.at(node));
    }
    kept.insert(others.begin(), others.end());
    for (auto* set : {&kept, &others}) set->erase(devices::open);
    if (others.contains(timing)) return std::nullopt;

    const Control control = controlOf(board, timer, wiring, pins, kept);
    if (!control.known || others.contains(pins.control)) return std::nullopt;

    const auto local = reduced(wiring.around({timing, pins.discharge}, kept), kept);
    // Pin 7 belongs to the timing where anything leads from it to the timing node.
    const bool dischargeCounts =
        pins.discharge != devices::open && std::any_of(local.begin(), local.end(), [&](const Element& e) {
            return e.joins(pins.discharge, timing);
        });
    Found found;
    for (const Element& e : local) look(e, pins, dischargeCounts, board, found);
    const double c = found.toGround + found.toRail;
    if (found.foreign || !(c > 0)) return std::nullopt;

    Textbook book;
    book.c_farad = c;
    book.cParts = refsOf(found.c);
    const double start = found.toRail / c;
    const double normal = book.control_ratio;
    if (dischargeCounts) {
        const bool apart = pins.discharge != pins.rail && pins.discharge != pins.ground &&
                           pins.discharge != pins.output && pins.discharge != pins.control &&
                           pins.discharge != pins.reset && !others.contains(pins.discharge);
        if (!apart || !found.r1 || !found.r2 || found.r) return std::nullopt;
        const double r1 = book.r1_ohm = found.r1->value;
        const double r2 = book.r2_ohm = found.r2->value;
        book.r1Parts = refsOf({found.r1});
        book.r2Parts = refsOf({found.r2});
        if (!found.diodes.empty()) {
            if (control.ratio) return std::nullopt;
            book.form = AstableForm::steeringDiode;
            book.diodes = found.diodes;
            book.phase = {ln2 * r1 * c, ln2 * r2 * c};
            book.firstHigh_s = firstHigh(r1 * c, start, normal);
            book.formula = "T = ln 2 (R1 + R2) C, the diode across R2 taken as ideal";
            book.rounded = roundedText("1.44/((R1 + R2) C)", 1.44 / ((r1 + r2) * c), book.phase.rate_Hz());
        } else if (control.ratio) {
            const double k = book.control_ratio = *control.ratio;
            book.form = AstableForm::drivenControl;
            book.phase = {(r1 + r2) * c * std::log((1 - k / 2) / (1 - k)), ln2 * r2 * c};
            book.firstHigh_s = firstHigh((r1 + r2) * c, start, k);
            book.formula = "T = (R1 + R2) C ln((1 - k/2)/(1 - k)) + ln 2 R2 C, with pin 5 held at k = " +
                           units::formatQuantity(k, units::Unit::none) + " of the supply";
            book.rounded = "the rounded 1.44 does not apply with pin 5 held";
        } else {
            book.form = AstableForm::plain;
            book.phase = {ln2 * (r1 + r2) * c, ln2 * r2 * c};
            book.firstHigh_s = firstHigh((r1 + r2) * c, start, normal);
            book.formula = "T = ln 2 (R1 + 2 R2) C";
            book.rounded =
                roundedText("1.44/((R1 + 2 R2) C)", 1.44 / ((r1 + 2 * r2) * c), book.phase.rate_Hz());
        }
        return book;
    }
    if (!found.r || control.ratio || pins.output == pins.rail || pins.output == pins.ground)
        return std::nullopt;
    const double r = book.r2_ohm = found.r->value;
    book.form = AstableForm::singleResistor;
    book.r2Parts = refsOf({found.r});
    book.phase = {ln2 * r * c, ln2 * r * c};
    book.firstHigh_s = firstHigh(r * c, start, normal);
    book.formula = "T = 2 ln 2 R C";
    book.rounded = roundedText("1/(1.4 R C)", 1 / (1.4 * r * c), book.phase.rate_Hz());
    return book;
}

} // namespace blinkwright::study
