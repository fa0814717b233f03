// Unsaved changes on the disk while a program lives, and what becomes of them when it ends in order.
#include "app/recovery.h"

#include "app/left_behind_dialog.h"
#include "tests/app/support.h"

#include <QDir>
#include <QFile>
#include <QListWidget>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace blinkwright::test {
namespace {

class RecoveryTest : public testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(document.open(sample("mole-light"))); }
    void edit(const char* title) { ASSERT_TRUE(document.apply({circuit::edits::SetTitle{title}})); }
    QStringList files() const { return QDir(state).entryList(QDir::Files); }

    QTemporaryDir folder;
    QString state = folder.filePath("state");
    app::Document document;
};

TEST_F(RecoveryTest, KeepsAChangeSoonAndRemovesItWhenAllIsSaved) {
    app::Recovery recovery(document, state);
    EXPECT_TRUE(files().isEmpty());
    edit("Changed");
    ASSERT_TRUE(waitFor([&] { return QFile::exists(recovery.file()); }));
    EXPECT_TRUE(recovery.leftBehind().empty()) << "its own is not left behind";
    ASSERT_TRUE(document.saveAs(folder.filePath("saved.blinkwright")));
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(RecoveryTest, KeepsAChangeWithinASecondAlsoWhileChangesGoOn) {
    // README: "within a second of each change".
    app::Recovery recovery(document, state);
    int edits = 0;
    EXPECT_TRUE(waitFor(
        [&] {
            edit(std::to_string(++edits).c_str());
            return QFile::exists(recovery.file());
        },
        1000));
}

TEST_F(RecoveryTest, UndoneChangesLeaveNothing) {
    app::Recovery recovery(document, state);
    edit("Changed");
    recovery.flush();
    EXPECT_TRUE(QFile::exists(recovery.file()));
    document.undoStack().undo();
    EXPECT_FALSE(QFile::exists(recovery.file()));
}

TEST_F(RecoveryTest, AProgramThatEndsInOrderLeavesNothing) {
    {
        app::Recovery recovery(document, state);
        edit("Changed");
        recovery.flush();
        EXPECT_FALSE(files().isEmpty());
    }
    EXPECT_TRUE(files().isEmpty());
}

TEST_F(RecoveryTest, TwoProgramsKeepTheirOwn) {
    app::Document other;
    other.startWith(document.circuit());
    app::Recovery mine(document, state), theirs(other, state);
    edit("Mine");
    ASSERT_TRUE(other.apply({circuit::edits::SetTitle{"Theirs"}}));
    mine.flush();
    theirs.flush();
    EXPECT_TRUE(QFile::exists(mine.file()));
    EXPECT_TRUE(QFile::exists(theirs.file()));
    EXPECT_TRUE(mine.leftBehind().empty()) << "the other program is alive";
}

TEST_F(RecoveryTest, AFileThatIsNoneIsLeftAloneAndNotOffered) {
    ASSERT_TRUE(QDir().mkpath(state));
    QFile strange(QDir(state).filePath("strange.recovery"));
    ASSERT_TRUE(strange.open(QIODevice::WriteOnly));
    strange.write("{\"format\":\"blinkwright-recovery\",\"version\":1}\n{ broken");
    strange.close();
    app::Recovery recovery(document, state);
    EXPECT_TRUE(recovery.leftBehind().empty());
    EXPECT_TRUE(strange.exists());
    EXPECT_FALSE(recovery.takeUp({strange.fileName(), {}, {}, {}}));
    EXPECT_EQ(document.circuit().title, "Harbour mole light");
}

TEST_F(RecoveryTest, SaysOnceWhyNothingCanBeKept) {
    QFile inTheWay(state);
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly)); // a file where the folder should be
    app::Recovery recovery(document, state);
    int said = 0;
    std::string words;
    QObject::connect(&recovery, &app::Recovery::failed, [&](const Fault& fault) {
        ++said;
        words = fault.message();
    });
    edit("One");
    recovery.flush();
    edit("Two");
    recovery.flush();
    EXPECT_EQ(said, 1);
    EXPECT_NE(words.find("cannot be made"), std::string::npos) << words;
}

TEST_F(RecoveryTest, TriesAgainWhereItFailedOnceThereIsRoom) {
    QFile inTheWay(state);
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    app::Recovery recovery(document, state);
    bool failed = false;
    QObject::connect(&recovery, &app::Recovery::failed, [&] { failed = true; });
    edit("Changed");
    recovery.flush();
    ASSERT_TRUE(failed);
    ASSERT_TRUE(inTheWay.remove());
    EXPECT_TRUE(waitFor([&] { return QFile::exists(recovery.file()); }))
        << "and nothing was edited meanwhile";
}

TEST_F(RecoveryTest, WhatWasLeftStaysUntilItIsSafelyTakenOver) {
    ASSERT_TRUE(QDir().mkpath(state));
    const QString left = QDir(state).filePath("left.recovery");
    {
        app::Recovery dead(document, state);
        edit("Left behind");
        dead.flush();
        ASSERT_TRUE(QFile::copy(dead.file(), left));
    }
    const QString full = folder.filePath("full");
    QFile inTheWay(full);
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly)); // nothing can be kept there
    app::Document next;
    app::Recovery unable(next, full);
    ASSERT_TRUE(unable.takeUp({left, {}, {}, {}}));
    EXPECT_EQ(next.circuit().title, "Left behind");
    EXPECT_TRUE(QFile::exists(left));
    app::Recovery able(next, state);
    ASSERT_TRUE(able.takeUp({left, {}, {}, {}}));
    EXPECT_FALSE(QFile::exists(left));
    EXPECT_TRUE(QFile::exists(able.file()));
}

TEST_F(RecoveryTest, TheDialogOffersTheNewestFirst) {
    const std::vector<app::Recovery::Left> list{
        {"a.recovery", "/x/mole-light.blinkwright", "Harbour mole light", QDateTime::currentDateTime()},
        {"b.recovery", {}, {}, QDateTime::currentDateTime().addDays(-1)}};
    app::LeftBehindDialog dialog(nullptr, list);
    const auto* names = dialog.findChild<QListWidget*>();
    ASSERT_EQ(names->count(), 2);
    EXPECT_TRUE(names->item(0)->text().startsWith("Harbour mole light (mole-light.blinkwright), changed "));
    EXPECT_TRUE(names->item(1)->text().startsWith("New circuit without a name, changed "));
    EXPECT_EQ(dialog.chosen()->file, "a.recovery");
    QDir().mkpath(BLINKWRIGHT_PICTURES);
    dialog.show();
    EXPECT_TRUE(dialog.grab().save(BLINKWRIGHT_PICTURES "/left-behind-light.png"));
}

TEST_F(RecoveryTest, ADocumentKnowsWhenItsFileIsNotAsItWas) {
    const QString path = folder.filePath("own.blinkwright");
    EXPECT_EQ(document.onDisk(), app::Document::OnDisk::asItWas);
    ASSERT_TRUE(document.saveAs(path));
    EXPECT_EQ(document.onDisk(), app::Document::OnDisk::asItWas);
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::Append));
    file.write("\n");
    file.close();
    EXPECT_EQ(document.onDisk(), app::Document::OnDisk::changed);
    document.acceptDisk();
    EXPECT_EQ(document.onDisk(), app::Document::OnDisk::asItWas);
    ASSERT_TRUE(file.remove());
    EXPECT_EQ(document.onDisk(), app::Document::OnDisk::gone);
    ASSERT_TRUE(document.save());
    EXPECT_EQ(document.onDisk(), app::Document::OnDisk::asItWas);
}

} // namespace
} // namespace blinkwright::test
