// Studies the newest circuit on a worker thread, and hands each result back on the thread that asked.
//
//   LiveRun run(&study::study);
//   connect(&run, &LiveRun::finished, this, [](const LiveRun::Outcome& o) { show(o); });
//   run.request({circuit, PartSet::A, {}, document.revision()});   // returns at once
#pragma once

#include "core/study/study.h"

#include <QObject>
#include <QTimer>
#include <chrono>
#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

namespace blinkwright::app {

class LiveRun : public QObject {
    Q_OBJECT
  public:
    using Compute = std::function<Result<study::Study>(const circuit::Circuit&, circuit::PartSet,
                                                       const study::StudyRequest&)>;
    struct Request {
        circuit::Circuit circuit;
        circuit::PartSet set = circuit::PartSet::A;
        study::StudyRequest study; ///< its `cancel` is set here
        quint64 revision = 0;      ///< of the document that the circuit was copied from
    };
    struct Outcome {
        quint64 revision = 0;
        circuit::PartSet set = circuit::PartSet::A;
        std::shared_ptr<const study::Study> study; ///< null on a fault
        Fault fault;
        double took_ms = 0;
    };

    /// @param patience how long a run may go on, at least, while a newer request waits: two frames at 60 Hz
    /// by default, since a shorter run is worth showing even in the middle of a drag.
    explicit LiveRun(Compute compute, QObject* parent = nullptr,
                     std::chrono::milliseconds patience = std::chrono::milliseconds(30));
    /// Cancels what runs and waits for the worker.
    ~LiveRun() override;

    /// Takes the place of a request that still waits. A run in progress may finish while it is young, so that
    /// a drag goes on showing pictures; an older one is cancelled for the new request. Never computes on the
    /// caller's thread.
    void request(Request request);
    /// Whether a result is still to come.
    bool isBusy() const;

  signals:
    void finished(const blinkwright::app::LiveRun::Outcome& outcome);

  private:
    using Clock = std::chrono::steady_clock;

    void work();
    void deliver(const Outcome& outcome, quint64 ticket);
    void overtake();

    const Compute m_compute;
    QTimer m_overtake;

    mutable std::mutex m_mutex;
    std::condition_variable m_wake;
    std::optional<Request> m_waiting; ///< a mailbox of one
    bool m_running = false;
    bool m_leaving = false;
    Clock::time_point m_started;
    const std::chrono::milliseconds m_leastPatience;
    std::chrono::milliseconds m_patience; ///< grows while runs get lost, so that some come through
    std::atomic<bool> m_cancel = false;
    quint64 m_asked = 0;     ///< requests so far
    quint64 m_delivered = 0; ///< the last request whose result came
    quint64 m_ticket = 0;    ///< of the waiting request

    std::thread m_worker; ///< last: starts when all else is there
};

} // namespace blinkwright::app
