// Does the newest of several pieces of work on a thread of its own, and hands its answer back on the thread
// that asked.
//
//   NewestTask task;
//   task.start([=, this](const std::atomic<bool>& cancel) {     // on the worker: no widgets, no documents
//       auto trend = std::make_shared<...>(study::trend(circuit, set, {.cancel = &cancel}));
//       return [=, this] { show(*trend); };                     // on the thread that asked
//   });
#pragma once

#include <QObject>
#include <QTimer>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace blinkwright::app {

class NewestTask : public QObject {
    Q_OBJECT
  public:
    using Answer = std::function<void()>;
    using Work = std::function<Answer(const std::atomic<bool>& cancel)>;

    /// @param patience how long a piece of work may go on, at least, while a newer one waits: two frames at
    /// 60 Hz by default, since a shorter run is worth showing even in the middle of a drag.
    explicit NewestTask(QObject* parent = nullptr,
                        std::chrono::milliseconds patience = std::chrono::milliseconds(30));
    /// Cancels what runs and waits for the worker.
    ~NewestTask() override;

    /// Takes the place of work that still waits. What is in progress may finish while it is young, so that a
    /// drag goes on showing pictures; what is older is cancelled, and its answer dropped. Never computes on
    /// the caller's thread.
    void start(Work work);
    /// Gives up what waits and what runs; no answer comes of either.
    void cancel();
    /// Whether an answer is still to come.
    bool isBusy() const;

  signals:
    /// When the first work comes in, and when no answer is to come any more (before that answer is given).
    void busyChanged(bool busy);

  private:
    using Clock = std::chrono::steady_clock;

    void work();
    void deliver(const Answer& answer, quint64 ticket);
    void overtake();
    void showBusy();

    QTimer m_overtake;

    mutable std::mutex m_mutex;
    std::condition_variable m_wake;
    std::optional<Work> m_waiting; ///< a mailbox of one
    bool m_running = false;
    bool m_leaving = false;
    Clock::time_point m_started;
    const std::chrono::milliseconds m_leastPatience;
    std::chrono::milliseconds m_patience; ///< grows while work gets lost, so that some comes through
    std::atomic<bool> m_cancel = false;
    quint64 m_asked = 0;     ///< pieces of work so far
    quint64 m_delivered = 0; ///< the last whose answer came
    quint64 m_dropped = 0;   ///< answers up to this one are not wanted any more
    quint64 m_ticket = 0;    ///< of the waiting work
    bool m_shownBusy = false;

    std::thread m_worker; ///< last: starts when all else is there
};

} // namespace blinkwright::app
