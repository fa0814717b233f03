// What may go wrong with a file while the window has it open: a question or a sentence, and nothing lost.
#include "tests/app/answering.h"
#include "tests/app/window_fixture.h"

#include <gmock/gmock.h>

#include <sys/resource.h>

#include <csignal>

namespace blinkwright::test {

namespace {

class FileTroubles : public WindowFixture {
  protected:
    FileTroubles() {
        activate(); // once active it asks about the file no more by itself
        open();
        EXPECT_TRUE(window->document().saveAs(path));
        setR1(22000);
    }
    void setR1(double ohm) {
        emit window->values().valueWished({circuit().findRef("R1")->id, "resistance"}, ohm, 0);
    }
    double onDiskR1(const QString& file) const {
        app::Document read;
        EXPECT_TRUE(read.open(file)) << file.toStdString();
        return stated(read.circuit(), "R1", "resistance");
    }
    /// What another program would write: the circuit as it was saved, with another title.
    QByteArray othersWork() const {
        QByteArray bytes = bytesOf(path);
        return bytes.replace("Harbour mole light", "Lock gate light");
    }

    const QString path = inFolder("own.blinkwright");
};

TEST_F(FileTroubles, AFileThatAnotherProgramHasChangedIsNotOverwrittenUnasked) {
    writeFile(path, othersWork());
    Answering cancel(QMessageBox::Cancel);
    action("Save").trigger();
    EXPECT_THAT(cancel.said.toStdString(), testing::HasSubstr("own.blinkwright"));
    EXPECT_EQ(bytesOf(path), othersWork());
    EXPECT_TRUE(window->document().isModified());
    EXPECT_EQ(ohms("R1"), 22000);

    Answering over("Overwrite");
    action("Save").trigger();
    EXPECT_FALSE(over.said.isEmpty());
    EXPECT_FALSE(window->document().isModified());
    EXPECT_EQ(onDiskR1(path), 22000);
}

TEST_F(FileTroubles, WhatTheWindowSavedItselfIsNotTakenForAnothersWork) {
    Answering none(QMessageBox::Cancel);
    for (const double ohm : {33000.0, 47000.0}) {
        setR1(ohm);
        action("Save").trigger();
        EXPECT_EQ(onDiskR1(path), ohm);
    }
    EXPECT_TRUE(none.said.isEmpty()) << none.said.toStdString();
}

TEST_F(FileTroubles, WhenTheWindowComesUpAgainItOffersToReadWhatAnotherProgramWrote) {
    writeFile(path, othersWork());
    {
        Answering keep("Keep");
        QEvent up(QEvent::WindowActivate);
        QApplication::sendEvent(window.get(), &up);
        ASSERT_TRUE(waitFor([&] { return !keep.said.isEmpty(); }));
        EXPECT_THAT(keep.said.toStdString(), testing::HasSubstr("not saved here"));
    }
    EXPECT_EQ(ohms("R1"), 22000) << "kept";

    QByteArray later = othersWork();
    later.replace("Lock gate light", "Ferry ramp light");
    writeFile(path, later);
    {
        Answering read("Read it again");
        QEvent up(QEvent::WindowActivate);
        QApplication::sendEvent(window.get(), &up);
        ASSERT_TRUE(waitFor([&] { return circuit().title == "Ferry ramp light"; }));
    }
    EXPECT_FALSE(window->document().isModified());
}

TEST_F(FileTroubles, AFileThatIsGoneIsSavedAnewOnlyWhenAsked) {
    ASSERT_TRUE(QFile::remove(path));
    {
        Answering cancel(QMessageBox::Cancel);
        action("Save").trigger();
        EXPECT_THAT(cancel.said.toStdString(), testing::HasSubstr("moved or deleted"));
    }
    EXPECT_FALSE(QFile::exists(path));
    EXPECT_TRUE(window->document().isModified());
    Answering anew("Save it anew");
    action("Save").trigger();
    EXPECT_EQ(onDiskR1(path), 22000);
}

TEST_F(FileTroubles, AFullDiskIsSaidAndLeavesTheOldFileWholeAndTheChangesOpen) {
    const QByteArray before = bytesOf(path);
    // No file may grow past 100 bytes: the same to the writer as a disk that is full.
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit usual{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &usual), 0);
    const rlimit small{100, usual.rlim_max};
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    Answering cancel(QMessageBox::Cancel);
    action("Save").trigger();
    setrlimit(RLIMIT_FSIZE, &usual);
    std::signal(SIGXFSZ, SIG_DFL);

    EXPECT_THAT(cancel.said.toStdString(), testing::HasSubstr("own.blinkwright: cannot be written"));
    EXPECT_EQ(bytesOf(path), before);
    EXPECT_TRUE(window->document().isModified());
    EXPECT_EQ(ohms("R1"), 22000);
    EXPECT_EQ(QDir(folder.path()).entryList({"own.blinkwright*"}, QDir::Files).size(), 1)
        << "no draft is left";
}

TEST_F(FileTroubles, AFolderThatCannotBeWrittenToIsSaidAndNothingIsLost) {
    // A folder that has become a plain file refuses every user, the administrator too.
    const QString inside = inFolder("berth") + QStringLiteral("/own.blinkwright");
    ASSERT_TRUE(QDir(folder.path()).mkdir("berth"));
    ASSERT_TRUE(window->document().saveAs(inside));
    setR1(27000);
    ASSERT_TRUE(QFile::remove(inside) && QDir(folder.path()).rmdir("berth"));
    writeFile(inFolder("berth"), "no folder");
    Answering anew("Save it anew");
    Answering cancel(QMessageBox::Cancel, "cannot be written");
    action("Save").trigger();
    EXPECT_THAT(cancel.said.toStdString(), testing::HasSubstr("own.blinkwright"));
    EXPECT_TRUE(window->document().isModified());
    EXPECT_EQ(ohms("R1"), 27000);
}

} // namespace

} // namespace blinkwright::test
