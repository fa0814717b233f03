// What a crash leaves: a program that edits and saves is killed at random moments. Its file must be whole, an
// old or the new state, and what was not saved must be there but for the last second.
#include "app/document.h"
#include "app/recovery.h"
#include "core/io/circuit_file.h"
#include "tests/app/support.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <chrono>
#include <map>
#include <random>
#include <thread>

#include <csignal>

namespace blinkwright::test {
namespace {

constexpr int usualKills = 20;
constexpr long long mayBeLost_ms = 1000;

long long now_ms() {
    return std::chrono::duration_cast<std::chrono::milliseconds>(
               std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

struct Story {
    std::map<int, long long> edits; ///< number of the edit and when it was done
    int saving = 0;                 ///< the last save that was begun
    int saved = 0;                  ///< the last one that was reported done
};

Story storyOf(const QByteArray& lines) {
    Story story;
    for (const QByteArray& line : lines.split('\n')) {
        const QList<QByteArray> words = line.split(' ');
        if (words.size() != 3) continue; // the last one may be cut
        const int number = words[1].toInt();
        if (words[0] == "edit") story.edits[number] = words[2].toLongLong();
        if (words[0] == "saving") story.saving = number;
        if (words[0] == "saved") story.saved = number;
    }
    return story;
}

/// Runs the child for some time and kills it. @return what it did, and when it died
std::pair<Story, long long> runAndKill(const QString& file, const QString& state, unsigned seed,
                                       int life_ms) {
    QProcess child;
    child.start(QCoreApplication::applicationDirPath() + "/crash_child",
                {file, state, QString::number(seed)});
    if (!child.waitForReadyRead(20000)) return {};
    std::this_thread::sleep_for(std::chrono::milliseconds(life_ms));
    const long long died = now_ms();
    ::kill(static_cast<pid_t>(child.processId()), SIGKILL);
    child.waitForFinished();
    EXPECT_EQ(child.exitStatus(), QProcess::CrashExit);
    return {storyOf(child.readAllStandardOutput()), died};
}

TEST(Crash, LeavesAWholeFileAndLosesAtMostTheLastSecond) {
    const int kills = qEnvironmentVariableIsSet("BLINKWRIGHT_KILLS")
                          ? qEnvironmentVariableIntValue("BLINKWRIGHT_KILLS")
                          : usualKills;
    std::mt19937 random(20261127);
    int unsavedSeen = 0;
    for (int k = 0; k < kills; ++k) {
        SCOPED_TRACE(k);
        const QTemporaryDir folder;
        const QString file = folder.filePath("mole.blinkwright"), state = folder.filePath("state");
        ASSERT_TRUE(QFile::copy(sample("mole-light"), file));
        QFile(file).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
        const int life = std::uniform_int_distribution(5, 3500)(random);
        const auto [story, died] = runAndKill(file, state, static_cast<unsigned>(k), life);
        ASSERT_GT(died, 0) << "the child did not start";

        app::Document document;
        const Result<void> opened = document.open(file);
        ASSERT_TRUE(opened) << opened.fault().message();
        const std::string title = document.circuit().title;
        if (story.saving == 0) {
            ASSERT_EQ(title, "Harbour mole light") << "never saved";
        } else {
            const int number = QString::fromStdString(title).toInt();
            // The last save that was reported, or the one that was under way.
            ASSERT_TRUE(number == story.saved || number == story.saving ||
                        (story.saved == 0 && title == "Harbour mole light"))
                << title << " of " << story.saved << " and " << story.saving;
        }
        EXPECT_EQ(document.circuit().parts().size(), 9u);

        // The last edit that is old enough to have to be there, and newer than the file.
        int owed = 0;
        for (const auto& [number, when] : story.edits)
            if (when <= died - mayBeLost_ms) owed = number;
        app::Recovery recovery(document, state);
        const auto left = recovery.leftBehind();
        ASSERT_LE(left.size(), 1u);
        const int onDisk = QString::fromStdString(title).toInt();
        if (owed > onDisk) {
            ASSERT_EQ(left.size(), 1u) << "edit " << owed << " is lost";
            ++unsavedSeen;
        }
        if (left.empty()) continue;
        const int kept = left.front().title.toInt();
        EXPECT_GE(std::max(kept, onDisk), owed);
        EXPECT_EQ(left.front().path, file);
        ASSERT_TRUE(recovery.takeUp(left.front()));
        EXPECT_EQ(document.circuit().title, std::to_string(kept));
        EXPECT_TRUE(document.isModified());
        EXPECT_EQ(document.path(), file);
        EXPECT_FALSE(QFile::exists(left.front().file)) << "it is this program's own now";
        EXPECT_TRUE(QFile::exists(recovery.file()));
    }
    EXPECT_GT(unsavedSeen, kills / 20) << "the kills did not find anything unsaved: they prove nothing";
}

} // namespace
} // namespace blinkwright::test
