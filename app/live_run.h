// Studies the newest circuit on a worker thread, and hands each result back on the thread that asked.
//
//   LiveRun run(&study::study);
//   connect(&run, &LiveRun::finished, this, [](const LiveRun::Outcome& o) { show(o); });
//   run.request({circuit, PartSet::A, {}, document.revision()});   // returns at once
#pragma once

#include "app/newest_task.h"
#include "core/study/study.h"

#include <functional>
#include <memory>

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

    /// @param patience as of NewestTask
    explicit LiveRun(Compute compute, QObject* parent = nullptr,
                     std::chrono::milliseconds patience = std::chrono::milliseconds(30));

    /// Takes the place of a request that still waits; see NewestTask::start.
    void request(Request request);
    /// Whether a result is still to come.
    bool isBusy() const { return m_task.isBusy(); }

  signals:
    void finished(const blinkwright::app::LiveRun::Outcome& outcome);

  private:
    const Compute m_compute;
    NewestTask m_task; ///< last: its worker uses m_compute
};

} // namespace blinkwright::app
