#include "widgets/hookup/wiring.h"

#include "widgets/hookup/layout.h"

#include <cmath>

namespace blinkwright::widgets::hookup {

namespace {

constexpr int railGap = 30;    ///< from the outermost part to a rail
constexpr int rowGap = 90;     ///< between two rows of parts at least: room for the rails of both
constexpr int leftRiser = 40;  ///< from the outermost part to the riser that joins the rails of all rows
constexpr int rightRiser = 80; ///< the same on the right, where labels stand
constexpr int labelRoom = 44;  ///< width kept quiet beside a part, whatever its value's text

/// Where a label would like to stand; taken by kind alone, so that a changed value never moves a wire.
Box roomForLabel(const PartView& part) {
    const Box body = placed(bodyOf(part), part.pose);
    const int middle = (body.top + body.bottom) / 2;
    if (part.pose.upright()) return {body.right + 4, middle - 14, body.right + labelRoom, middle + 14};
    return {body.left, body.top - 18, body.right, body.top - 2};
}

/// How far a row of parts reaches up and down.
struct Row {
    int top, bottom;
    bool timer; ///< there is one in it
};

/// The rows that parts stand in, from above: with timers in each of them, and enough room between two for
/// rails. So a drawing of one blinker is one row, wherever its parts are.
std::vector<Row> rowsOf(const std::vector<PartView>& parts) {
    std::vector<Row> reaches, rows;
    for (const PartView& part : parts) {
        const Box extent = placed(extentOf(part), part.pose);
        reaches.push_back({extent.top, extent.bottom, part.kind == circuit::PartKind::timer});
    }
    std::ranges::sort(reaches, {}, &Row::top);
    const auto take = [&rows](const Row& more) {
        rows.back().bottom = std::max(rows.back().bottom, more.bottom);
        rows.back().timer = rows.back().timer || more.timer;
    };
    for (const Row& reach : reaches)
        if (!rows.empty() && reach.top - rows.back().bottom < rowGap)
            take(reach);
        else
            rows.push_back(reach);
    // What stands by itself without a timer belongs to the nearer of its neighbours.
    for (std::size_t i = 0; i < rows.size() && rows.size() > 1;) {
        if (rows[i].timer) {
            ++i;
            continue;
        }
        const bool up = i > 0 && (i + 1 == rows.size() ||
                                  rows[i].top - rows[i - 1].bottom <= rows[i + 1].top - rows[i].bottom);
        const std::size_t upper = up ? i - 1 : i;
        rows[upper].bottom = std::max(rows[upper].bottom, rows[upper + 1].bottom);
        rows[upper].timer = rows[upper].timer || rows[upper + 1].timer;
        rows.erase(rows.begin() + static_cast<std::ptrdiff_t>(upper) + 1);
        i = upper;
    }
    return rows;
}

int onGrid(int v) {
    return static_cast<int>(std::floor(v / static_cast<double>(pitch))) * pitch;
}

/// Each row has its own rails, plus above and zero below. Where there are several, plus is joined on the left
/// and zero on the right, so that neither crosses the other.
void addRails(const circuit::Circuit& circuit, const std::vector<Row>& rows, const Box& all,
              RouterInput& in) {
    const RailNets rails = railNets(circuit);
    for (std::size_t n = 0; n < circuit.nets().size(); ++n) {
        const circuit::Net& net = circuit.nets()[n];
        const bool plus = net.id == rails.plus;
        if (net.pins.size() < leastRailPins || (!plus && net.id != rails.zero)) continue;
        for (const Row& row : rows)
            in.rails.push_back({static_cast<int>(n),
                                plus ? onGrid(row.top) - railGap : onGrid(row.bottom) + pitch + railGap,
                                row.top, row.bottom});
        if (rows.size() > 1)
            in.risers.push_back(
                {static_cast<int>(n), plus ? onGrid(all.left) - leftRiser : onGrid(all.right) + rightRiser});
    }
}

} // namespace

RouterInput routerInput(const std::vector<PartView>& parts, const circuit::Circuit& circuit) {
    RouterInput in;
    std::map<circuit::PinRef, int> netOf;
    for (std::size_t n = 0; n < circuit.nets().size(); ++n)
        for (const circuit::PinRef pin : circuit.nets()[n].pins) netOf[pin] = static_cast<int>(n);
    in.nets = static_cast<int>(circuit.nets().size());

    Box all;
    for (const PartView& part : parts) {
        const Box extent = placed(extentOf(part), part.pose);
        all = in.bodies.empty() ? extent : all.with(extent);
        in.bodies.push_back(placed(bodyOf(part), part.pose));
        if (part.kind != circuit::PartKind::timer) in.quiet.push_back(roomForLabel(part));
        for (int pin = 0; pin < static_cast<int>(pinsOf(part).size()); ++pin) {
            const auto net = netOf.find({part.id, pin});
            in.pins.push_back({placed(pinsOf(part)[static_cast<std::size_t>(pin)], part.pose),
                               leadOf(part, pin), net == netOf.end() ? -1 : net->second});
        }
    }
    addRails(circuit, rowsOf(parts), all, in);
    return in;
}

} // namespace blinkwright::widgets::hookup
