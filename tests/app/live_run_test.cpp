#include "app/live_run.h"
#include "tests/app/support.h"

#include <QThread>

#include <gtest/gtest.h>

#include <semaphore>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::LiveRun;
using Outcomes = std::vector<LiveRun::Outcome>;

constexpr int soon_ms = 5000;

/// A study that stands still until the test lets it go on, or until it is cancelled.
struct HeldStudy {
    std::counting_semaphore<> go{0};
    std::atomic<int> started = 0;
    std::atomic<int> cancelled = 0;
    std::atomic<bool> onCaller = false;
    Qt::HANDLE caller = QThread::currentThreadId();

    Result<study::Study> operator()(const circuit::Circuit& circuit, const study::StudyRequest& request) {
        ++started;
        if (QThread::currentThreadId() == caller) onCaller = true;
        study::Study study;
        study.readings.reasons = {circuit.title};
        while (!go.try_acquire_for(std::chrono::milliseconds(1)))
            if (request.cancel->load()) {
                ++cancelled;
                study.cancelled = true;
                break;
            }
        return study;
    }
};

class LiveRunTest : public testing::Test {
  protected:
    LiveRunTest()
        : run([this](const circuit::Circuit& circuit, circuit::PartSet, const study::StudyRequest& request) {
              return held(circuit, request);
          }) {
        QObject::connect(&run, &LiveRun::finished, &run, [this](const LiveRun::Outcome& outcome) {
            outcomes.push_back(outcome);
            if (QThread::currentThreadId() != held.caller) deliveredElsewhere = true;
        });
    }

    void ask(quint64 revision, const char* title = "") {
        circuit::Circuit circuit;
        circuit.title = title;
        run.request({circuit, circuit::PartSet::A, {}, revision});
    }
    std::vector<quint64> revisions() const {
        std::vector<quint64> all;
        for (const LiveRun::Outcome& outcome : outcomes)
            all.push_back(outcome.revision);
        return all;
    }
    bool waitForStart(int count) {
        return waitFor([&] { return held.started == count; }, soon_ms);
    }

    HeldStudy held;
    Outcomes outcomes;
    bool deliveredElsewhere = false;
    LiveRun run; // last: its worker ends before what it uses
};

TEST_F(LiveRunTest, RequestComesBackBeforeItsStudyIsDone) {
    ask(1); // would never come back if it waited: nobody has let the study go on
    EXPECT_TRUE(run.isBusy());
    EXPECT_TRUE(waitForStart(1));
    EXPECT_TRUE(outcomes.empty());
    held.go.release();
    EXPECT_TRUE(waitFor([&] { return outcomes.size() == 1; }));
    EXPECT_FALSE(run.isBusy());
}

TEST_F(LiveRunTest, StudiesOnAnotherThreadAndDeliversOnTheCallers) {
    held.go.release(2);
    ask(1, "mole");
    ASSERT_TRUE(waitFor([&] { return outcomes.size() == 1; }));
    EXPECT_FALSE(held.onCaller);
    EXPECT_FALSE(deliveredElsewhere);
    ASSERT_NE(outcomes[0].study, nullptr);
    EXPECT_EQ(outcomes[0].study->readings.reasons.front(), "mole");
}

TEST_F(LiveRunTest, TheNewestOfTheWaitingRequestsWins) {
    ask(1);
    ASSERT_TRUE(waitForStart(1));
    for (quint64 revision = 2; revision <= 50; ++revision)
        ask(revision);
    held.go.release(2);
    ASSERT_TRUE(waitFor([&] { return !run.isBusy(); }));
    EXPECT_EQ(held.started, 2);
    EXPECT_EQ(outcomes.back().revision, 50u);
    EXPECT_LE(outcomes.size(), 2u);
}

TEST_F(LiveRunTest, ALongRunIsCancelledForANewerRequest) {
    ask(1);
    ASSERT_TRUE(waitForStart(1));
    ask(2);
    ASSERT_TRUE(waitForStart(2)); // the first is over although nobody let it go on
    EXPECT_EQ(held.cancelled, 1);
    held.go.release();
    ASSERT_TRUE(waitFor([&] { return !run.isBusy(); }));
    EXPECT_EQ(revisions(), std::vector<quint64>{2});
}

TEST_F(LiveRunTest, AYoungRunMayFinishAlthoughANewerRequestWaits) {
    constexpr std::chrono::seconds patience(60);
    LiveRun patient([this](const circuit::Circuit& circuit, circuit::PartSet,
                           const study::StudyRequest& request) { return held(circuit, request); },
                    nullptr, patience);
    std::vector<quint64> shown;
    QObject::connect(&patient, &LiveRun::finished, &patient,
                     [&](const LiveRun::Outcome& outcome) { shown.push_back(outcome.revision); });
    patient.request({{}, circuit::PartSet::A, {}, 1});
    ASSERT_TRUE(waitForStart(1));
    patient.request({{}, circuit::PartSet::A, {}, 2});
    EXPECT_FALSE(waitFor([&] { return held.cancelled > 0; }, 100));
    held.go.release(2);
    ASSERT_TRUE(waitFor([&] { return !patient.isBusy(); }));
    EXPECT_EQ(shown, (std::vector<quint64>{1, 2}));
}

TEST_F(LiveRunTest, ALoneRunIsNeverCancelledHoweverLongItTakes) {
    ask(1);
    ASSERT_TRUE(waitForStart(1));
    EXPECT_FALSE(waitFor([&] { return held.cancelled > 0; }, 150));
    held.go.release();
    EXPECT_TRUE(waitFor([&] { return outcomes.size() == 1; }));
}

TEST_F(LiveRunTest, LeavingCancelsWhatRunsAndDeliversNothing) {
    auto local = std::make_unique<LiveRun>(
        [this](const circuit::Circuit& circuit, circuit::PartSet, const study::StudyRequest& request) {
            return held(circuit, request);
        });
    bool delivered = false;
    QObject::connect(local.get(), &LiveRun::finished, local.get(), [&] { delivered = true; });
    local->request({{}, circuit::PartSet::A, {}, 1});
    ASSERT_TRUE(waitForStart(1));
    local.reset(); // comes back, since the study has been told to stop
    EXPECT_EQ(held.cancelled, 1);
    QCoreApplication::processEvents();
    EXPECT_FALSE(delivered);
}

TEST(SlowLiveRun, ADragOverASlowCircuitStillShowsPictures) {
    // Each study takes longer than a run may when a newer request waits, and a request comes every few
    // milliseconds.
    LiveRun run([](const circuit::Circuit&, circuit::PartSet, const study::StudyRequest& request) {
        study::Study study;
        for (int k = 0; k < 80 && !request.cancel->load(); ++k)
            QThread::msleep(1);
        return Result<study::Study>(std::move(study));
    });
    int shown = 0;
    QObject::connect(&run, &LiveRun::finished, &run, [&] { ++shown; });
    quint64 revision = 0;
    EXPECT_TRUE(waitFor(
        [&] {
            run.request({{}, circuit::PartSet::A, {}, ++revision});
            QThread::msleep(5);
            return shown >= 3;
        },
        soon_ms));
    EXPECT_GT(revision, 10u);
}

TEST(FaultyLiveRun, AFaultIsDeliveredAsSuch) {
    LiveRun run([](const circuit::Circuit&, circuit::PartSet, const study::StudyRequest&) {
        return Result<study::Study>(Fault{"R1", "cannot be"});
    });
    Outcomes outcomes;
    QObject::connect(&run, &LiveRun::finished, &run,
                     [&](const LiveRun::Outcome& o) { outcomes.push_back(o); });
    run.request({{}, circuit::PartSet::A, {}, 7});
    ASSERT_TRUE(waitFor([&] { return !outcomes.empty(); }));
    EXPECT_EQ(outcomes[0].study, nullptr);
    EXPECT_EQ(outcomes[0].fault.message(), "R1: cannot be");
    EXPECT_EQ(outcomes[0].revision, 7u);
}

} // namespace
