#include "app/newest_task.h"

#include <algorithm>
#include <pthread.h>
#include <sched.h>

namespace blinkwright::app {

namespace {

using std::chrono::milliseconds;

constexpr milliseconds mostPatience{2000};

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

NewestTask::NewestTask(QObject* parent, milliseconds patience)
    : QObject(parent), m_leastPatience(patience), m_patience(patience), m_worker([this] { work(); }) {
    m_overtake.setSingleShot(true);
    connect(&m_overtake, &QTimer::timeout, this, &NewestTask::overtake);
}

NewestTask::~NewestTask() {
    {
        const std::lock_guard lock(m_mutex);
        m_leaving = true;
        m_waiting.reset();
        m_cancel = true;
    }
    m_wake.notify_one();
    m_worker.join();
}

void NewestTask::start(Work work) {
    std::optional<milliseconds> wait;
    {
        const std::lock_guard lock(m_mutex);
        m_waiting = std::move(work);
        m_ticket = ++m_asked;
        if (m_running) {
            const auto age = std::chrono::duration_cast<milliseconds>(Clock::now() - m_started);
            wait = std::max(milliseconds(0), m_patience - age);
        }
    }
    m_wake.notify_one();
    if (wait && !m_overtake.isActive()) m_overtake.start(*wait);
    showBusy();
}

void NewestTask::cancel() {
    {
        const std::lock_guard lock(m_mutex);
        m_waiting.reset();
        m_cancel = m_running;
        m_dropped = m_asked;
    }
    showBusy();
}

void NewestTask::overtake() {
    const std::lock_guard lock(m_mutex);
    if (!m_running || !m_waiting) return;
    const auto age = std::chrono::duration_cast<milliseconds>(Clock::now() - m_started);
    if (age < m_patience) {
        m_overtake.start(m_patience - age); // the run it was set for is over, this is the next one
        return;
    }
    m_cancel = true;
}

bool NewestTask::isBusy() const {
    const std::lock_guard lock(m_mutex);
    return std::max(m_delivered, m_dropped) != m_asked;
}

void NewestTask::showBusy() {
    const bool busy = isBusy();
    if (std::exchange(m_shownBusy, busy) != busy) emit busyChanged(busy);
}

void NewestTask::work() {
    yieldToTheWindow();
    std::unique_lock lock(m_mutex);
    for (;;) {
        m_wake.wait(lock, [this] { return m_leaving || m_waiting; });
        if (m_leaving) return;
        const Work work = std::move(*m_waiting);
        m_waiting.reset();
        const quint64 ticket = m_ticket;
        m_cancel = false;
        m_running = true;
        m_started = Clock::now();
        lock.unlock();

        Answer answer = work(m_cancel);
        const auto took = Clock::now() - m_started;

        lock.lock();
        m_running = false;
        if (m_leaving) return;
        const bool overtaken = m_cancel;
        // A drag over slow work must not cancel every run: after each one lost the next may take twice as
        // long.
        const auto wanted =
            overtaken ? m_patience * 2 : std::chrono::duration_cast<milliseconds>(took * 3 / 2);
        m_patience = std::max(m_leastPatience, std::min(mostPatience, wanted));
        if (!overtaken)
            QMetaObject::invokeMethod(
                this, [this, answer = std::move(answer), ticket] { deliver(answer, ticket); },
                Qt::QueuedConnection);
    }
}

void NewestTask::deliver(const Answer& answer, quint64 ticket) {
    {
        const std::lock_guard lock(m_mutex);
        if (ticket <= m_dropped) return;
        m_delivered = ticket;
    }
    showBusy();
    answer();
}

} // namespace blinkwright::app
