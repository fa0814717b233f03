// Files, exports and the clipboard of the real window.
#include "tests/app/answering.h"
#include "tests/app/window_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/readings/readings_view.h"

#include <QApplication>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QMimeData>
#include <QTableView>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::MainWindow;
using app::Settings;

using FilesOfTheWindow = WindowFixture;

TEST_F(FilesOfTheWindow, ABadFileIsSaidInOneSentenceAndLeavesWhatIsOpen) {
    open();
    const std::string title = window->document().circuit().title;
    QByteArray bad = bytesOf(sample("mole-light"));
    bad.replace("\"resistance\": 10000,", "\"resistance\": -5,");
    writeFile(inFolder("bad.blinkwright"), bad);
    Answering ok(QMessageBox::Ok);
    EXPECT_FALSE(window->openFile(inFolder("bad.blinkwright")));
    EXPECT_TRUE(ok.said.contains("bad.blinkwright: parts[2].resistance")) << ok.said.toStdString();
    EXPECT_EQ(ok.said.count('\n'), 0);
    EXPECT_EQ(window->document().circuit().title, title);
    EXPECT_NE(window->live().shown(), nullptr);
    EXPECT_EQ(settings.recentFiles(), QStringList{sample("mole-light")});
}

TEST_F(FilesOfTheWindow, ACircuitThatCannotBlinkOpensAndSaysWhy) {
    QByteArray text = bytesOf(sample("mole-light"));
    text.replace("\"U1:6\", \"U1:2\", \"R2:2\"", "\"R2:2\"");
    writeFile(inFolder("dead.blinkwright"), text);
    ASSERT_TRUE(window->openFile(inFolder("dead.blinkwright")));
    ASSERT_TRUE(waitFor([&] { return window->live().shown() != nullptr; }));
    const auto study = window->live().shown();
    EXPECT_NE(study->readings.verdict, study::Verdict::blinks);
    EXPECT_FALSE(study->readings.reasons.empty());
    EXPECT_FALSE(study->findings.empty());
}

TEST_F(FilesOfTheWindow, WithoutCurvesTheReasonStandsInTheirPlaceAndNothingOfTheRunBefore) {
    open();
    const auto plot = [&] { return window->curves().findChild<widgets::StripPlot*>(); };
    ASSERT_TRUE(plot()->message().isEmpty());
    const QString before = window->readings().asText();
    const auto set = [&](const char* ref, const char* key, double value) {
        ASSERT_TRUE(window->document().apply(
            circuit::setValue(circuit(), circuit::PartSet::A, circuit().findRef(ref)->id, key, value)));
    };
    // No junction is left behind 1 kohm that drops 10 V at the test current of 10 mA: no board can be made.
    set("D1", "series_resistance", 1000);
    ASSERT_TRUE(waitFor([&] { return !window->live().shown(); }));
    EXPECT_TRUE(plot()->message().contains("D1")) << plot()->message().toStdString();
    const QString after = window->readings().asText();
    EXPECT_NE(after, before);
    EXPECT_FALSE(after.contains("Hz")) << after.toStdString();
    undo().undo();
    ASSERT_TRUE(waitForRun());
    EXPECT_TRUE(plot()->message().isEmpty());
    // Without its supply the board can be made but not run.
    ASSERT_TRUE(window->document().apply({circuit::edits::RemovePart{circuit().findRef("BT1")->id}}));
    ASSERT_TRUE(
        waitFor([&] { return window->live().shown() && window->live().shown()->board.supplies.empty(); }));
    ASSERT_FALSE(window->live().shown()->readings.reasons.empty());
    EXPECT_TRUE(
        plot()->message().contains(QString::fromStdString(window->live().shown()->readings.reasons.front())))
        << plot()->message().toStdString();
}

TEST_F(FilesOfTheWindow, AsksBeforeChangesWouldBeLost) {
    open();
    ASSERT_TRUE(window->document().saveAs(inFolder("own.blinkwright")));
    const auto change = [&](double ohm) {
        emit window->values().valueWished({window->document().circuit().findRef("R1")->id, "resistance"}, ohm,
                                          0);
    };
    change(22000);
    {
        Answering cancel(QMessageBox::Cancel);
        EXPECT_FALSE(window->close());
        EXPECT_FALSE(cancel.said.isEmpty());
        EXPECT_TRUE(window->isVisible());
    }
    {
        Answering save(QMessageBox::Save);
        EXPECT_TRUE(window->close());
        EXPECT_FALSE(window->document().isModified());
        app::Document saved;
        ASSERT_TRUE(saved.open(inFolder("own.blinkwright")));
        EXPECT_EQ(stated(saved.circuit(), "R1", "resistance"), 22000);
    }
    window->show();
    change(33000);
    {
        Answering discard(QMessageBox::Discard);
        EXPECT_TRUE(window->close());
        app::Document saved;
        ASSERT_TRUE(saved.open(inFolder("own.blinkwright")));
        EXPECT_EQ(stated(saved.circuit(), "R1", "resistance"), 22000);
    }
}

TEST_F(FilesOfTheWindow, ClosesWithoutAQuestionWhenNothingHasChanged) {
    open();
    EXPECT_TRUE(window->close());
}

TEST_F(FilesOfTheWindow, ExportsWhatItShows) {
    open();
    for (const char* name : {"a.png", "a.svg", "a.pdf", "a.csv"}) {
        const auto done = window->exportTo(inFolder(name));
        EXPECT_TRUE(done) << done.fault().message();
        EXPECT_GT(bytesOf(inFolder(name)).size(), 1000) << name;
    }
    const QImage picture(inFolder("a.png"));
    // 180 mm at 300 dpi, on white whatever the theme.
    EXPECT_NEAR(picture.width(), 180 / 25.4 * 300, 2);
    EXPECT_NEAR(picture.dotsPerMeterX(), 300 / 0.0254, 2);
    EXPECT_EQ(picture.pixelColor(0, 0), QColor(Qt::white));
    EXPECT_FALSE(window->exportTo(inFolder("a.gif")));
}

TEST_F(FilesOfTheWindow, ExportsStayOnWhiteInTheDark) {
    action("Dark").trigger();
    open();
    ASSERT_TRUE(window->exportTo(inFolder("dark.png")));
    EXPECT_EQ(QImage(inFolder("dark.png")).pixelColor(0, 0), QColor(Qt::white));
    action("Light").trigger();
}

TEST_F(FilesOfTheWindow, CopiesPictureAndReadings) {
    open();
    action("Copy picture of the curves").trigger();
    EXPECT_FALSE(QApplication::clipboard()->image().isNull());
    action("Copy readings").trigger();
    EXPECT_EQ(QApplication::clipboard()->text(), window->readings().asText());
    EXPECT_TRUE(window->readings().asText().contains('\t'));
}

TEST_F(FilesOfTheWindow, AFileDroppedOnTheWindowIsOpened) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(sample("buoy-pair"))});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &drop);
    EXPECT_EQ(window->document().path(), sample("buoy-pair"));
    ASSERT_TRUE(waitForRun());
}

TEST_F(FilesOfTheWindow, AnotherFileShowsNothingOfTheOneBefore) {
    open();
    auto* table = window->readings().findChild<QTableView*>();
    ASSERT_NE(table, nullptr);
    table->scrollToBottom();
    row("R2").field()->setFocus();
    row("R2").field()->setText("-5");
    row("R2").field()->setModified(true);
    QTest::keyClick(row("R2").field(), Qt::Key_Return);
    ASSERT_FALSE(row("R2").refusal().isEmpty());
    ASSERT_TRUE(window->hookup().selected());
    QFile::copy(sample("mole-light"), inFolder("other.blinkwright")); // the same parts and values
    ASSERT_TRUE(window->openFile(inFolder("other.blinkwright")));
    ASSERT_TRUE(waitForRun());
    EXPECT_TRUE(row("R2").refusal().isEmpty());
    EXPECT_TRUE(row("R2").field()->text().startsWith("68"));
    EXPECT_FALSE(window->hookup().selected());
    EXPECT_EQ(table->indexAt({2, 2}).row(), 0);
}

} // namespace
