#include "app/live_run.h"

#include <algorithm>
#include <pthread.h>
#include <sched.h>

namespace blinkwright::app {

namespace {

using std::chrono::milliseconds;

constexpr milliseconds mostPatience{2000};

double millisecondsOf(std::chrono::steady_clock::duration span) {
    return std::chrono::duration<double, std::milli>(span).count();
}

/// Wakes without pushing another thread off its core: the window's thread goes on at once after a request,
/// even where all cores are busy. Otherwise the worker counts as any thread; if the system refuses, nothing
/// but that is lost.
void yieldToTheWindow() {
#ifdef SCHED_BATCH
    const sched_param none{};
    pthread_setschedparam(pthread_self(), SCHED_BATCH, &none);
#endif
}

} // namespace

LiveRun::LiveRun(Compute compute, QObject* parent, milliseconds patience)
    : QObject(parent), m_compute(std::move(compute)), m_leastPatience(patience), m_patience(patience),
      m_worker([this] { work(); }) {
    m_overtake.setSingleShot(true);
    connect(&m_overtake, &QTimer::timeout, this, &LiveRun::overtake);
}

LiveRun::~LiveRun() {
    {
        const std::lock_guard lock(m_mutex);
        m_leaving = true;
        m_waiting.reset();
        m_cancel = true;
    }
    m_wake.notify_one();
    m_worker.join();
}

void LiveRun::request(Request request) {
    std::optional<milliseconds> wait;
    {
        const std::lock_guard lock(m_mutex);
        m_waiting = std::move(request);
        m_ticket = ++m_asked;
        if (m_running) {
            const auto age = std::chrono::duration_cast<milliseconds>(Clock::now() - m_started);
            wait = std::max(milliseconds(0), m_patience - age);
        }
    }
    m_wake.notify_one();
    if (wait && !m_overtake.isActive()) m_overtake.start(*wait);
}

void LiveRun::overtake() {
    const std::lock_guard lock(m_mutex);
    if (!m_running || !m_waiting) return;
    const auto age = std::chrono::duration_cast<milliseconds>(Clock::now() - m_started);
    if (age < m_patience) {
        m_overtake.start(m_patience - age); // the run it was set for is over, this is the next one
        return;
    }
    m_cancel = true;
}

bool LiveRun::isBusy() const {
    const std::lock_guard lock(m_mutex);
    return m_delivered != m_asked;
}

void LiveRun::work() {
    yieldToTheWindow();
    std::unique_lock lock(m_mutex);
    for (;;) {
        m_wake.wait(lock, [this] { return m_leaving || m_waiting; });
        if (m_leaving) return;
        Request request = std::move(*m_waiting);
        m_waiting.reset();
        const quint64 ticket = m_ticket;
        m_cancel = false;
        m_running = true;
        m_started = Clock::now();
        lock.unlock();

        request.study.cancel = &m_cancel;
        Result<study::Study> result = m_compute(request.circuit, request.set, request.study);
        const auto took = Clock::now() - m_started;
        Outcome outcome{request.revision, request.set, nullptr, {}, millisecondsOf(took)};
        if (result)
            outcome.study = std::make_shared<const study::Study>(std::move(result).value());
        else
            outcome.fault = result.fault();

        lock.lock();
        m_running = false;
        if (m_leaving) return;
        const bool overtaken = m_cancel;
        // A drag over a slow circuit must not cancel every run: after each one lost the next may take twice
        // as long.
        const auto wanted =
            overtaken ? m_patience * 2 : std::chrono::duration_cast<milliseconds>(took * 3 / 2);
        m_patience = std::max(m_leastPatience, std::min(mostPatience, wanted));
        if (!overtaken)
            QMetaObject::invokeMethod(
                this, [this, outcome = std::move(outcome), ticket] { deliver(outcome, ticket); },
                Qt::QueuedConnection);
    }
}

void LiveRun::deliver(const Outcome& outcome, quint64 ticket) {
    {
        const std::lock_guard lock(m_mutex);
        m_delivered = ticket;
    }
    emit finished(outcome);
}

} // namespace blinkwright::app
