#include "tests/app/minutes_of_use.h"

#include "app/exporter.h"
#include "app/live_panels.h"
#include "app/main_window.h"
#include "widgets/curves/curves_view.h"
#include "widgets/values/value_panel.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QUndoStack>

#include <malloc.h>

#include <array>
#include <cmath>

namespace blinkwright::test {

namespace {

constexpr int drags = 3, stepsADrag = 40, longest_ms = 20'000;
constexpr std::array names{"mole-light", "buoy-pair", "winch-warning", "mole-light-measured"};

void happen(int least_ms = 0) {
    QElapsedTimer time;
    time.start();
    do QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
    while (time.elapsed() < least_ms);
}

/// Until the study of what is open is shown.
void rest(app::MainWindow& window) {
    QElapsedTimer time;
    time.start();
    happen(20);
    while (!window.live().shown() && time.elapsed() < longest_ms) happen(5);
}

void drag(app::MainWindow& window, int gesture) {
    const circuit::Part* part = window.document().circuit().findRef("R2");
    if (!part) return;
    widgets::ValuePanel& values = window.values();
    emit values.gestureBegan(gesture);
    for (int k = 0; k < stepsADrag; ++k) {
        emit values.valueWished({part->id, "resistance"}, 20e3 * std::pow(10.0, k / 40.0) + gesture, gesture);
        happen();
    }
    emit values.gestureEnded(gesture);
    rest(window);
}

} // namespace

void useForMinutes(app::MainWindow& window, const QString& folder, const QString& samples, int minutes) {
    for (int minute = 0; minute < minutes; ++minute) {
        window.openFile(
            QStringLiteral("%1/%2.blinkwright")
                .arg(samples, QLatin1String(names[static_cast<std::size_t>(minute) % names.size()])));
        rest(window);
        for (int k = 1; k <= drags; ++k) drag(window, 10 * minute + k);
        QUndoStack& undo = window.document().undoStack();
        for (int k = 0; k < drags; ++k) undo.undo(), rest(window);
        for (int k = 0; k < drags - 1; ++k) undo.redo(), rest(window);
        circuit::RunSettings run = window.document().circuit().run;
        run.begin = run.begin == circuit::Begin::settled ? circuit::Begin::powerOn : circuit::Begin::settled;
        (void)window.document().apply({circuit::edits::SetRun{run}});
        rest(window);
        if (const auto study = window.live().shown())
            for (const char* ending : {"png", "pdf", "csv"})
                (void)app::exportStudy(*study,
                                       app::curvesPage(window.document().circuit(), circuit::PartSet::A),
                                       QStringLiteral("%1/curves.%2").arg(folder, QLatin1String(ending)));
        window.resize(1200 + 20 * (minute % 5), 800);
        rest(window);
        undo.setIndex(0); // as it was saved: the next file is opened without a question
    }
}

std::size_t heapAtRest_bytes(app::MainWindow& window, const QString& samples) {
    window.openFile(QStringLiteral("%1/%2.blinkwright").arg(samples, QLatin1String(names.front())));
    window.resize(1200, 800);
    rest(window);
    return heapInUse_bytes();
}

std::size_t heapInUse_bytes() {
    const struct mallinfo2 now = mallinfo2();
    return now.uordblks + now.hblkhd;
}

} // namespace blinkwright::test
