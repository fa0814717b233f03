#include "app/document.h"
#include "tests/app/support.h"

#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::Document;
using circuit::PartSet;

circuit::Edit setTo(const Document& document, const char* ref, const char* key, double value) {
    return circuit::setValue(document.circuit(), PartSet::A, document.circuit().findRef(ref)->id, key, value);
}

class DocumentTest : public testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(document.open(sample("mole-light"))); }

    double ohms(const char* ref) const { return stated(document.circuit(), ref, "resistance"); }
    QString inFolder(const char* name) const { return folder.filePath(QLatin1String(name)); }

    Document document;
    QTemporaryDir folder;
};

TEST_F(DocumentTest, ADragIsOneUndoStep) {
    const int gesture = document.newGesture();
    for (int k = 1; k <= 500; ++k)
        ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 10000 + k), gesture));
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_EQ(ohms("R1"), 10500);
    document.undoStack().undo();
    EXPECT_EQ(ohms("R1"), 10000);
    document.undoStack().redo();
    EXPECT_EQ(ohms("R1"), 10500);
}

TEST_F(DocumentTest, PartsThatAreInNoFileYetCountAsModifiedAndNothingAtAllDoesNot) {
    const circuit::Circuit mole = document.circuit();
    QSignalSpy told(&document, &Document::modifiedChanged);
    document.startWith(mole);
    EXPECT_TRUE(document.isModified());
    ASSERT_EQ(told.count(), 1);
    EXPECT_TRUE(told[0][0].toBool());
    EXPECT_FALSE(document.undoStack().canUndo());
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 22000)));
    document.undoStack().undo();
    EXPECT_TRUE(document.isModified()) << "taking a change back does not write a file";
    ASSERT_TRUE(document.saveAs(inFolder("mine.blinkwright")));
    EXPECT_FALSE(document.isModified());
    document.startWith(mole);
    document.startWith();
    EXPECT_FALSE(document.isModified());
    document.startWith(mole);
    ASSERT_TRUE(document.open(sample("mole-light")));
    EXPECT_FALSE(document.isModified());
}

TEST_F(DocumentTest, ADragThatMovesTwoPartsGoesBackWhole) {
    const int gesture = document.newGesture();
    for (const double ohm : {20000.0, 30000.0, 40000.0}) {
        ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", ohm), gesture));
        ASSERT_TRUE(document.apply(setTo(document, "R2", "resistance", ohm + 1), gesture));
    }
    EXPECT_EQ(document.undoStack().count(), 1);
    document.undoStack().undo();
    EXPECT_EQ(ohms("R1"), 10000);
    EXPECT_EQ(ohms("R2"), 68000);
    document.undoStack().redo();
    EXPECT_EQ(ohms("R1"), 40000);
    EXPECT_EQ(ohms("R2"), 40001);
}

TEST_F(DocumentTest, EditsOfDifferentKindsInOneGestureGoBackInOrder) {
    const std::string before = document.circuit().title;
    const int gesture = document.newGesture();
    circuit::Part extra{{}, circuit::PartKind::resistor, "R9", {{"resistance", 100.0}}, {}};
    ASSERT_TRUE(document.apply({circuit::edits::AddPart{extra}}, gesture));
    ASSERT_TRUE(document.apply(setTo(document, "R9", "resistance", 220), gesture));
    ASSERT_TRUE(document.apply({circuit::edits::SetTitle{"Quay lamp"}}, gesture));
    EXPECT_EQ(document.undoStack().count(), 1);
    document.undoStack().undo();
    EXPECT_EQ(document.circuit().findRef("R9"), nullptr);
    EXPECT_EQ(document.circuit().title, before);
    document.undoStack().redo();
    ASSERT_NE(document.circuit().findRef("R9"), nullptr);
    EXPECT_EQ(ohms("R9"), 220);
    EXPECT_EQ(document.circuit().title, "Quay lamp");
}

TEST_F(DocumentTest, ADragThatComesBackToWhereItBeganIsNoStep) {
    const int gesture = document.newGesture();
    for (const double ohm : {20000.0, 30000.0, 10000.0})
        ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", ohm), gesture));
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(ohms("R1"), 10000);
}

TEST_F(DocumentTest, TwoDragsAreTwoUndoSteps) {
    for (const double ohm : {20000.0, 30000.0})
        ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", ohm), document.newGesture()));
    EXPECT_EQ(document.undoStack().count(), 2);
    document.undoStack().undo();
    EXPECT_EQ(ohms("R1"), 20000);
}

TEST_F(DocumentTest, EditsWithoutAGestureStayApart) {
    for (const double ohm : {20000.0, 30000.0})
        ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", ohm)));
    EXPECT_EQ(document.undoStack().count(), 2);
}

TEST_F(DocumentTest, AnUndoStepSaysWhatItDoesInHumanWords) {
    const int gesture = document.newGesture();
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000), gesture));
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 47000), gesture));
    EXPECT_EQ(document.undoStack().undoText().toStdString(), "Set R1 to 47\u00a0kΩ");
}

TEST_F(DocumentTest, ARefusedEditChangesNothing) {
    QSignalSpy changed(&document, &Document::changed);
    const auto before = document.circuit();
    const quint64 revision = document.revision();
    const auto id = document.circuit().findRef("R1")->id;
    const circuit::Edit bad{
        circuit::edits::SetValue{circuit::Layer::part, id, "resistance", circuit::Value(-5.0)}};
    EXPECT_FALSE(document.apply(bad));
    EXPECT_TRUE(document.circuit().sameAs(before));
    EXPECT_EQ(document.revision(), revision);
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_EQ(changed.count(), 0);
}

TEST_F(DocumentTest, EveryChangeUndoAndRedoHasARevisionOfItsOwn) {
    QSignalSpy changed(&document, &Document::changed);
    quint64 last = document.revision();
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000)));
    EXPECT_GT(document.revision(), std::exchange(last, document.revision()));
    document.undoStack().undo();
    EXPECT_GT(document.revision(), std::exchange(last, document.revision()));
    document.undoStack().redo();
    EXPECT_GT(document.revision(), last);
    EXPECT_EQ(changed.count(), 3);
}

TEST_F(DocumentTest, WhatIsSavedReadsBackTheSame) {
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000)));
    EXPECT_TRUE(document.isModified());
    ASSERT_TRUE(document.saveAs(inFolder("quay.blinkwright")));
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(document.path(), inFolder("quay.blinkwright"));
    Document other;
    ASSERT_TRUE(other.open(inFolder("quay.blinkwright")));
    EXPECT_TRUE(other.circuit().sameAs(document.circuit()));
    EXPECT_EQ(stated(other.circuit(), "R1", "resistance"), 33000);
}

TEST_F(DocumentTest, SavingAgainWritesTheSameBytes) {
    ASSERT_TRUE(document.saveAs(inFolder("a.blinkwright")));
    const QByteArray first = bytesOf(inFolder("a.blinkwright"));
    ASSERT_FALSE(first.isEmpty());
    ASSERT_TRUE(document.open(inFolder("a.blinkwright")));
    ASSERT_TRUE(document.save());
    EXPECT_EQ(bytesOf(inFolder("a.blinkwright")), first);
}

TEST_F(DocumentTest, UndoingBackToWhatWasSavedIsUnmodified) {
    ASSERT_TRUE(document.saveAs(inFolder("a.blinkwright")));
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000)));
    EXPECT_TRUE(document.isModified());
    document.undoStack().undo();
    EXPECT_FALSE(document.isModified());
}

TEST_F(DocumentTest, ASaveInTheMiddleOfADragKeepsItsOwnStep) {
    const int gesture = document.newGesture();
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 20000), gesture));
    ASSERT_TRUE(document.saveAs(inFolder("a.blinkwright")));
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 30000), gesture));
    EXPECT_TRUE(document.isModified());
    document.undoStack().undo();
    EXPECT_EQ(ohms("R1"), 20000);
    EXPECT_FALSE(document.isModified());
}

TEST_F(DocumentTest, ABadFileLeavesWhatWasOpenAlone) {
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000)));
    const auto before = document.circuit();
    const QString path = document.path();
    writeFile(inFolder("bad.blinkwright"),
              "{\"format\": \"blinkwright-circuit\", \"version\": 1, \"parts\": [");
    QSignalSpy opened(&document, &Document::opened);
    const Result<void> done = document.open(inFolder("bad.blinkwright"));
    ASSERT_FALSE(done);
    EXPECT_NE(done.fault().message().find("bad.blinkwright"), std::string::npos) << done.fault().message();
    EXPECT_TRUE(document.circuit().sameAs(before));
    EXPECT_EQ(document.path(), path);
    EXPECT_TRUE(document.isModified());
    EXPECT_EQ(document.undoStack().count(), 1);
    EXPECT_EQ(opened.count(), 0);
}

TEST_F(DocumentTest, AFileThatIsNotThereIsNamed) {
    const Result<void> done = document.open(inFolder("nowhere.blinkwright"));
    ASSERT_FALSE(done);
    const std::string said = done.fault().message();
    const std::size_t first = said.find("nowhere.blinkwright");
    EXPECT_NE(first, std::string::npos) << said;
    EXPECT_EQ(said.find("nowhere.blinkwright", first + 1), std::string::npos) << said;
}

TEST_F(DocumentTest, OpeningForgetsTheUndoStepsOfTheFileBefore) {
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000)));
    ASSERT_TRUE(document.open(sample("mole-light")));
    EXPECT_EQ(document.undoStack().count(), 0);
    EXPECT_FALSE(document.isModified());
    EXPECT_EQ(ohms("R1"), 10000);
}

TEST_F(DocumentTest, ASaveWhereNothingCanBeWrittenSaysSoAndStaysModified) {
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000)));
    writeFile(inFolder("plain-file"), "x");
    const QString path = inFolder("plain-file") + QStringLiteral("/a.blinkwright");
    const QString old = document.path();
    const Result<void> done = document.saveAs(path);
    ASSERT_FALSE(done);
    EXPECT_EQ(done.fault().place, path.toStdString());
    EXPECT_TRUE(document.isModified());
    EXPECT_EQ(document.path(), old);
}

TEST_F(DocumentTest, ASaveThatBreaksOffLeavesTheOldFileWhole) {
    const QString path = inFolder("a.blinkwright");
    ASSERT_TRUE(document.saveAs(path));
    const QByteArray before = bytesOf(path);
    ASSERT_TRUE(document.apply(setTo(document, "R1", "resistance", 33000)));

    // No file may grow past 100 bytes: the same to the writer as a disk that is full.
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit old{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &old), 0);
    const rlimit small{100, old.rlim_max};
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    const Result<void> done = document.save();
    setrlimit(RLIMIT_FSIZE, &old);
    std::signal(SIGXFSZ, SIG_DFL);

    EXPECT_FALSE(done);
    EXPECT_TRUE(document.isModified());
    EXPECT_EQ(bytesOf(path), before);
}

TEST(EmptyDocument, HasNoFileToSaveTo) {
    Document document;
    EXPECT_FALSE(document.save());
    EXPECT_TRUE(document.path().isEmpty());
    EXPECT_FALSE(document.isModified());
}

} // namespace
