#include "app/live_run.h"

namespace blinkwright::app {

LiveRun::LiveRun(Compute compute, QObject* parent, std::chrono::milliseconds patience)
    : QObject(parent), m_compute(std::move(compute)), m_task(nullptr, patience) {
}

void LiveRun::request(Request request) {
    m_task.start([this, request = std::move(request)](const std::atomic<bool>& cancel) {
        using Clock = std::chrono::steady_clock;
        study::StudyRequest asked = request.study;
        asked.cancel = &cancel;
        const auto started = Clock::now();
        Result<study::Study> result = m_compute(request.circuit, request.set, asked);
        const std::chrono::duration<double, std::milli> took = Clock::now() - started;
        Outcome outcome{request.revision, request.set, nullptr, {}, took.count()};
        if (result)
            outcome.study = std::make_shared<const study::Study>(std::move(result).value());
        else
            outcome.fault = result.fault();
        return [this, outcome = std::move(outcome)] { emit finished(outcome); };
    });
}

} // namespace blinkwright::app
