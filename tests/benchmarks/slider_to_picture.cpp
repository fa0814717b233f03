// From the wish of a slider to the picture of it, in the real window: edit, undo step, study on the worker,
// every panel updated, the window painted with its curves at 1200 x 800.
//
//   slider_to_picture     -> slider_to_picture_median 4.1 ms
//                            slider_to_picture_p99 6.0 ms
// Each is the worse of two: curves from power-on, and settled.
#include "app/live_panels.h"
#include "app/main_window.h"
#include "app/settings.h"
#include "core/circuit/set_edits.h"
#include "core/io/circuit_file.h"
#include "widgets/curves/curves_view.h"
#include "widgets/values/value_panel.h"

#include <QApplication>
#include <QEventLoop>
#include <QFile>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace {

using namespace blinkwright;
using Clock = std::chrono::steady_clock;

constexpr char sample[] = BLINKWRIGHT_SAMPLES "/buoy-pair.blinkwright";
constexpr QSize curvesSize(1200, 800);
constexpr int warmUps = 40;
constexpr int changes = 400;
constexpr int changesInADrag = 50;
constexpr int pause_ms = 4;         // lets what was put off be done; about the pace of a mouse
constexpr int rest_ms = 100;        // between two drags
constexpr int patience_ms = 10'000; // a picture that takes longer will not come

[[noreturn]] void giveUp(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(1);
}

template <class T>
T checked(Result<T> result) {
    if (!result) {
        giveUp(result.fault().message());
    }
    return std::move(result).value();
}

/// What this thread has computed so far: unlike the clock, it runs on only while the thread does.
double ownWork_ms() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

/// The sample, with its curves to begin as asked, and nothing for Set B, which is not shown then.
QString sampleBeginning(const QTemporaryDir& folder, circuit::Begin begin) {
    circuit::Circuit circuit = checked(io::readCircuit(checked(io::readBytes(sample, io::maxCircuitBytes))));
    circuit.run.begin = begin;
    if (!circuit::setsAgree(circuit)) {
        const circuit::Edit same =
            checked(circuit::copySet(circuit, circuit::PartSet::A, circuit::PartSet::B));
        checked(circuit::apply(circuit, same));
    }
    const QString path = folder.filePath("sample.blinkwright");
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) ||
        file.write(QByteArray::fromStdString(io::writeCircuit(circuit))) < 0) {
        giveUp("cannot write a copy of the sample");
    }
    return path;
}

/// Nearest-rank percentile of ascending values.
double percentile(const std::vector<double>& ascending, double share) {
    const auto rank = static_cast<std::size_t>(std::ceil(share * static_cast<double>(ascending.size())));
    return ascending[std::max<std::size_t>(rank, 1) - 1];
}

/// The open window and the way to make one change and wait for its picture.
class Bench {
  public:
    Bench(const QTemporaryDir& folder, circuit::Begin begin)
        : m_settings(folder.filePath("settings.ini")), m_window(m_settings) {
        m_curves.setFixedSize(curvesSize);
        // The study is shown, then the window is painted in one go; what is queued meanwhile comes after all
        // of it.
        QObject::connect(&m_live, &app::LivePanels::studyShown, &m_curves,
                         [this] { m_shown = isThatOfTheWish(); });
        QObject::connect(
            &m_curves, &widgets::CurvesView::painted, &m_curves,
            [this] {
                if (std::exchange(m_shown, false)) {
                    m_loop.exit(0);
                }
            },
            Qt::QueuedConnection);
        m_window.show();
        if (!m_window.openFile(sampleBeginning(folder, begin))) {
            giveUp("the window does not open the sample");
        }
        waitForPicture();
    }

    /// Goes up and down R2 by small steps, as a drag does.
    struct Times {
        std::vector<double> picture_ms; ///< ascending: from the wish to the picture
        std::vector<double> work_ms;    ///< ascending: what the window's thread computed for it
    };
    Times drag() {
        Times times;
        for (int k = 0; k < warmUps + changes; ++k) {
            if (k % changesInADrag == 0) {
                emit m_values.gestureBegan(++m_gesture);
            }
            const double turn = std::abs(k % 200 - 100) / 100.0; // 1 down to 0 and back
            const double wished_ohm = 20e3 * std::pow(10.0, turn) + k * 1e-3;
            const double before_ms = ownWork_ms();
            const double took_ms = change(wished_ohm);
            if (k >= warmUps) {
                times.picture_ms.push_back(took_ms);
                times.work_ms.push_back(ownWork_ms() - before_ms);
            }
            if ((k + 1) % changesInADrag == 0) {
                emit m_values.gestureEnded(m_gesture);
                pause(rest_ms);
            }
            pause(pause_ms);
        }
        std::sort(times.picture_ms.begin(), times.picture_ms.end());
        std::sort(times.work_ms.begin(), times.work_ms.end());
        return times;
    }

    QSize windowSize() const { return m_window.size(); }
    QSize paintedSize() const { return m_curves.size(); }

  private:
    double change(double resistance_ohm) {
        const circuit::PartId r2 = resistor().id;
        m_wished_ohm = resistance_ohm;
        const auto begin = Clock::now();
        emit m_values.valueWished({r2, "resistance"}, resistance_ohm, m_gesture);
        waitForPicture();
        const std::chrono::duration<double, std::milli> took = Clock::now() - begin;
        return took.count();
    }

    /// Not that of an earlier wish, which may still be shown in the middle of a drag.
    bool isThatOfTheWish() const { return !m_wished_ohm || resistor().resistance == *m_wished_ohm; }

    const devices::Resistor& resistor() const {
        const auto study = m_live.shown();
        if (!study) {
            giveUp("no study is shown");
        }
        const auto& resistors = study->board.resistors;
        const auto r2 =
            std::find_if(resistors.begin(), resistors.end(), [](const auto& r) { return r.ref == "R2"; });
        if (r2 == resistors.end()) {
            giveUp("the sample has no R2");
        }
        return *r2;
    }

    void waitForPicture() {
        QTimer patience;
        patience.setSingleShot(true);
        QObject::connect(&patience, &QTimer::timeout, &patience, [] { giveUp("no picture came"); });
        patience.start(patience_ms);
        m_loop.exec();
    }

    void pause(int length_ms) {
        QTimer::singleShot(length_ms, &m_loop, [this] { m_loop.exit(0); });
        m_loop.exec();
    }

    app::Settings m_settings;
    app::MainWindow m_window;
    widgets::CurvesView& m_curves = m_window.curves();
    widgets::ValuePanel& m_values = m_window.values();
    app::LivePanels& m_live = m_window.live();
    QEventLoop m_loop;
    std::optional<double> m_wished_ohm;
    bool m_shown = false;
    int m_gesture = 0;
};

} // namespace

int main(int count, char** arguments) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, arguments);
    double median_ms = 0;
    double p99_ms = 0;
    for (const circuit::Begin begin : {circuit::Begin::powerOn, circuit::Begin::settled}) {
        const QTemporaryDir folder;
        Bench bench(folder, begin);
        const auto [picture_ms, work_ms] = bench.drag();
        const double middle = percentile(picture_ms, 0.5);
        const double late = percentile(picture_ms, 0.99);
        std::fprintf(stderr,
                     "%s: median %.2f ms, p99 %.2f ms, worst %.2f ms; of the window's thread median %.2f ms, "
                     "p99 %.2f ms; window %d x %d, curves %d x %d\n",
                     begin == circuit::Begin::powerOn ? "power-on" : "settled", middle, late,
                     picture_ms.back(), percentile(work_ms, 0.5), percentile(work_ms, 0.99),
                     bench.windowSize().width(), bench.windowSize().height(), bench.paintedSize().width(),
                     bench.paintedSize().height());
        median_ms = std::max(median_ms, middle);
        p99_ms = std::max(p99_ms, late);
    }
    std::printf("slider_to_picture_median %.2f ms\n", median_ms);
    std::printf("slider_to_picture_p99 %.2f ms\n", p99_ms);
    return 0;
}
