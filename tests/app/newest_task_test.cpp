// Work on a thread of its own: what was given up is never answered.
#include "app/newest_task.h"
#include "tests/app/support.h"

#include <QThread>

#include <gtest/gtest.h>

namespace blinkwright::test {
namespace {

TEST(NewestTask, WhatIsCancelledIsNotAnsweredEvenWhereItIsDoneAlready) {
    app::NewestTask task;
    std::atomic<bool> done = false;
    int answers = 0;
    const auto start = [&] {
        done = false;
        task.start([&](const std::atomic<bool>&) {
            done = true;
            return [&] { ++answers; };
        });
    };
    start();
    while (!done) QThread::msleep(1);
    QThread::msleep(20); // its answer waits for this thread's events
    task.cancel();
    EXPECT_FALSE(task.isBusy());
    waitFor([&] { return answers > 0; }, 50);
    EXPECT_EQ(answers, 0);
    start();
    EXPECT_TRUE(waitFor([&] { return answers == 1; })) << "what is asked for afterwards is answered";
}

} // namespace
} // namespace blinkwright::test
