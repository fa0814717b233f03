// An hour of use compressed in time, and large circuits in the real window.
//
//   long_use memory   -> hour_growth 0.8 MiB      what an hour of dragging, undoing, opening, exporting keeps
//   long_use stalls   -> stall_100_timers 31 ms   the longest single event of the window's thread
//                        stall_500_parts 28 ms
// A stall is counted in the thread's own time, so that other programs do not count.
#include "app/live_panels.h"
#include "app/main_window.h"
#include "app/settings.h"
#include "core/io/circuit_file.h"
#include "tests/app/minutes_of_use.h"
#include "tests/widgets/hookup/many_parts.h"
#include "widgets/values/value_panel.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QUndoStack>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <string_view>
#include <vector>

namespace {

using namespace blinkwright;

constexpr int minutes = 60, warmUp = 8;
constexpr int partsOf100Timers = 703; // seven a timer, and the supply
constexpr int longest_ms = 120'000;

double ownWork_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

/// Times each event of its thread, with all that it sets off.
class TimedApplication : public QApplication {
  public:
    using QApplication::QApplication;
    bool notify(QObject* receiver, QEvent* event) override {
        if (m_depth++ > 0) {
            const bool done = QApplication::notify(receiver, event);
            --m_depth;
            return done;
        }
        const double before = ownWork_ms();
        const bool done = QApplication::notify(receiver, event);
        const double took = ownWork_ms() - before;
        --m_depth;
        if (m_counts) {
            m_all_ms.push_back(took);
            if (took > 50)
                std::fprintf(stderr, "%.1f ms: event %d of %s\n", took, static_cast<int>(event->type()),
                             receiver->metaObject()->className());
        }
        return done;
    }
    void count(bool on) { m_counts = on; }
    std::vector<double> taken() { return std::exchange(m_all_ms, {}); }

  private:
    int m_depth = 0;
    bool m_counts = false;
    std::vector<double> m_all_ms;
};

void happen(int least_ms) {
    QElapsedTimer time;
    time.start();
    do QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents, 5);
    while (time.elapsed() < least_ms);
}

/// The longest event while values of a large circuit are dragged and its runs go on in the worker.
double stall_ms(TimedApplication& application, const circuit::Circuit& circuit) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("large.blinkwright");
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return -1;
    file.write(QByteArray::fromStdString(io::writeCircuit(circuit)));
    file.close();

    app::Settings settings(folder.filePath("settings.ini"));
    app::MainWindow window(settings);
    window.resize(1280, 800);
    window.show();
    window.openFile(path);
    QElapsedTimer time;
    time.start();
    while (!window.live().shown() && time.elapsed() < longest_ms) happen(20);
    happen(500);

    application.taken();
    application.count(true);
    const circuit::PartId part = window.document().circuit().findRef("R21")->id;
    widgets::ValuePanel& values = window.values();
    for (int gesture = 1; gesture <= 3; ++gesture) {
        emit values.gestureBegan(gesture);
        for (int k = 0; k < 60; ++k) {
            // A wish comes with an event of the mouse, so it is timed as one.
            QMetaObject::invokeMethod(
                &values,
                [&, k] {
                    emit values.valueWished({part, "resistance"}, 5e4 + 1e3 * k, gesture);
                },
                Qt::QueuedConnection);
            happen(16);
        }
        emit values.gestureEnded(gesture);
        happen(1500);
        window.document().undoStack().undo();
        happen(1500);
    }
    application.count(false);
    std::vector<double> all = application.taken();
    std::sort(all.begin(), all.end());
    std::fprintf(stderr, "%zu parts: %zu events, longest %.1f, %.1f, %.1f ms\n", circuit.parts().size(),
                 all.size(), all[all.size() - 1], all[all.size() - 2], all[all.size() - 3]);
    window.document().undoStack().setClean();
    return all.back();
}

double hourGrowth_MiB() {
    const QTemporaryDir folder;
    app::Settings settings(folder.filePath("settings.ini"));
    app::MainWindow window(settings);
    window.resize(1280, 800);
    window.show();
    const auto heapAfter_MiB = [&](int length) {
        const QString samples = QStringLiteral(BLINKWRIGHT_SAMPLES);
        test::useForMinutes(window, folder.path(), samples, length);
        return static_cast<double>(test::heapAtRest_bytes(window, samples)) / (1 << 20);
    };
    const double before = heapAfter_MiB(warmUp);
    double grown = 0;
    for (int quarter = 1; quarter <= 4; ++quarter) {
        grown = heapAfter_MiB(minutes / 4) - before;
        std::fprintf(stderr, "after %d minutes: %+.2f MiB\n", quarter * minutes / 4, grown);
    }
    return grown;
}

} // namespace

int main(int count, char** arguments) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    TimedApplication application(count, arguments);
    const std::string_view what = count > 1 ? arguments[1] : "";
    if (what == "memory") {
        std::printf("hour_growth %.2f MiB\n", hourGrowth_MiB());
    } else if (what == "stalls") {
        using widgets::test::manyParts;
        std::printf("stall_100_timers %.1f ms\n", stall_ms(application, manyParts(partsOf100Timers)));
        std::printf("stall_500_parts %.1f ms\n", stall_ms(application, manyParts(500)));
    } else {
        std::fprintf(stderr, "long_use memory|stalls\n");
        return 2;
    }
    return 0;
}
