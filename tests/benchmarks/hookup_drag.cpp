// One frame of dragging a part with its wires on the Hook-up: the edit on the circuit, the wires and labels
// that follow, and the repaint, without a display.
//
//   hookup_drag     -> hookup_drag_60 3.5 ms
//                      hookup_drag_500 10.7 ms
// Each is the worst median of the parts that are dragged and of two ways to place the blinkers: all in one
// row, and rows of four.
#include "core/circuit/edit.h"
#include "tests/widgets/hookup/many_parts.h"
#include "widgets/hookup/hookup_view.h"

#include <QApplication>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>
#include <vector>

namespace {

using namespace blinkwright;
using Clock = std::chrono::steady_clock;

constexpr int warmUps = 10;
constexpr int frames = 96; // twice the whole way
constexpr int grid = 10;   // a drag goes by steps of the drawing's grid [units]

/// Where the pointer is after so many frames: out and back along a slanted way, never twice at the same spot
/// in a row.
circuit::Placement dragged(circuit::Placement from, int frame) {
    const auto swing = [](int k, int reach) {
        return std::abs((k + reach) % (4 * reach) - 2 * reach) - reach;
    };
    from.x += grid * swing(frame, 6);
    from.y += grid * swing(frame / 2, 4);
    return from;
}

/// What this thread has computed so far.
double ownWork_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

double median(std::vector<double>& values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

/// Median of one drag [ms].
double drag(const circuit::Circuit& original, const std::string& ref, const char* arrangement) {
    circuit::Circuit circuit = original;
    const circuit::Part* part = circuit.findRef(ref);
    if (!part) {
        std::fprintf(stderr, "there is no part %s\n", ref.c_str());
        std::exit(1);
    }
    const circuit::PartId id = part->id;
    const circuit::Placement home = *circuit.placement(id);
    widgets::HookupView view;
    view.resize(1200, 800);
    view.setCircuit(circuit);
    view.show();
    view.select(id);
    QApplication::processEvents();

    std::vector<double> took_ms, work_ms;
    for (int frame = 0; frame < warmUps + frames; ++frame) {
        const double before_ms = ownWork_ms();
        const auto begin = Clock::now();
        if (!circuit::apply(circuit, {circuit::edits::Place{id, dragged(home, frame)}})) std::exit(1);
        view.setCircuit(circuit);
        QApplication::processEvents();
        const std::chrono::duration<double, std::milli> took = Clock::now() - begin;
        if (frame < warmUps) continue;
        took_ms.push_back(took.count());
        work_ms.push_back(ownWork_ms() - before_ms);
    }
    const double median_ms = median(took_ms);
    std::fprintf(
        stderr, "%zu parts, %s, %s: median %.2f ms, worst %.2f ms; of the thread's own work median %.2f ms\n",
        circuit.parts().size(), arrangement, ref.c_str(), median_ms, took_ms.back(), median(work_ms));
    return median_ms;
}

/// A resistor between two nets of its blinker, a lamp at the edge, and the timer with all its wires, of a
/// blinker in the middle.
double worstDrag(int parts) {
    const circuit::Circuit many = widgets::test::manyParts(parts);
    const std::string middle = std::to_string(parts / 14);
    double worst_ms = 0;
    for (const auto& [inARow, arrangement] : {std::pair(0, "one row"), std::pair(4, "rows of four")}) {
        const circuit::Circuit placed = widgets::test::placed(many, inARow);
        for (const char* ref : {"R2", "D", "U"})
            worst_ms = std::max(worst_ms, drag(placed, ref + middle, arrangement));
    }
    return worst_ms;
}

} // namespace

int main(int count, char** arguments) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, arguments);
    for (const int parts : {60, 500}) std::printf("hookup_drag_%d %.2f ms\n", parts, worstDrag(parts));
    return 0;
}
