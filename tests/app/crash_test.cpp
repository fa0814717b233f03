// What a crash leaves: a program that edits and saves is killed at random moments. Its file must be whole, an
// old or the new state, and what was not saved must be there but for the last second.
#include "app/document.h"
#include "app/recovery.h"
#include "core/io/circuit_file.h"
#include "tests/app/killed_program.h"
#include "tests/app/support.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <random>

namespace blinkwright::test {
namespace {

constexpr int usualKills = 20;
constexpr long long mayBeLost_ms = 1000;

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
        const auto killed = runAndKill(file, state, static_cast<unsigned>(k), life);
        ASSERT_TRUE(killed) << "the child did not start, or ended by itself";
        const Story& story = killed->story;

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

        app::Recovery recovery(document, state);
        const auto left = recovery.leftBehind();
        ASSERT_LE(left.size(), 1u);
        const int onDisk = QString::fromStdString(title).toInt();
        if (lost_ms(*killed, onDisk) > mayBeLost_ms) {
            ASSERT_EQ(left.size(), 1u) << "what came after edit " << onDisk << " is lost";
            ++unsavedSeen;
        }
        if (left.empty()) continue;
        const int kept = left.front().title.toInt();
        EXPECT_LE(lost_ms(*killed, std::max(kept, onDisk)), mayBeLost_ms);
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
