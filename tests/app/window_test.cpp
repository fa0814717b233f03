// The real window, driven as a hand drives it.
#include "app/main_window.h"
#include "core/devices/board.h"
#include "tests/app/support.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/readings/readings_view.h"
#include "widgets/values/value_panel.h"
#include "widgets/values/value_row.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QScreen>
#include <QSignalSpy>
#include <QSpinBox>
#include <QSplitter>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::MainWindow;
using app::Settings;

/// Presses a button of the next message box, and says what it said.
class Answering : public QObject {
  public:
    explicit Answering(QMessageBox::StandardButton button) : m_button(button) {
        m_timer.setInterval(5);
        connect(&m_timer, &QTimer::timeout, this, [this] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (!box) return;
            said = box->text();
            m_timer.stop();
            box->button(m_button)->click();
        });
        m_timer.start();
    }
    QString said;

  private:
    QMessageBox::StandardButton m_button;
    QTimer m_timer;
};

class WindowTest : public testing::Test {
  protected:
    WindowTest() : settings(folder.filePath("settings.ini")), window(settings) {
        window.resize(1280, 800);
        window.show();
    }

    QString inFolder(const char* name) const { return folder.filePath(QLatin1String(name)); }

    void open(const char* name = "mole-light") {
        ASSERT_TRUE(window.openFile(sample(name)));
        ASSERT_TRUE(waitForRun());
    }
    /// Until the study of the document as it is now is shown.
    bool waitForRun() {
        return waitFor([this] {
            const auto study = window.live().shown();
            return study && sameResistances(*study);
        });
    }
    bool sameResistances(const study::Study& study) {
        return std::ranges::all_of(study.board.resistors, [&](const devices::Resistor& resistor) {
            return stated(window.document().circuit(), resistor.ref.c_str(), "resistance") ==
                   resistor.resistance;
        });
    }
    double period() { return window.live().shown()->readings.timers.at(0).settled->period_s(); }
    double ohms(const char* ref) { return stated(window.document().circuit(), ref, "resistance"); }

    widgets::ValueRow& row(const char* ref) {
        for (auto* found : window.values().findChildren<widgets::ValueRow*>())
            if (found->subject().ref == ref) return *found;
        throw std::runtime_error(ref);
    }
    QAction& action(const char* text) {
        for (QAction* found : window.findChildren<QAction*>())
            if (found->text().remove('&').startsWith(QString::fromUtf8(text))) return *found;
        throw std::runtime_error(text);
    }

    QTemporaryDir folder;
    Settings settings;
    MainWindow window;
};

TEST_F(WindowTest, OpensASampleAndShowsItsRun) {
    QSignalSpy painted(&window, &MainWindow::firstCurvePainted);
    open();
    EXPECT_TRUE(waitFor([&] { return painted.count() == 1; }));
    EXPECT_TRUE(window.windowTitle().contains("Harbour mole light")) << window.windowTitle().toStdString();
    EXPECT_TRUE(window.windowTitle().contains("mole-light.blinkwright"));
    EXPECT_FALSE(window.isWindowModified());
    EXPECT_NEAR(period(), 1.012, 0.1); // ln 2 (R1 + 2 R2) C, give or take what a real timer adds
    const auto* report = window.findChild<QLabel*>("report");
    ASSERT_NE(report, nullptr);
    EXPECT_TRUE(report->text().startsWith("6 flashes, ")) << report->text().toStdString();
    EXPECT_EQ(settings.recentFiles(), QStringList{sample("mole-light")});
}

TEST_F(WindowTest, TheViewMenuChoosesHowSymbolsAreDrawnAndRemembersIt) {
    using namespace widgets::hookup;
    open();
    const auto shown = [&] { return window.hookup().viewport()->grab().toImage(); };
    const QImage first = shown();
    EXPECT_TRUE(action("IEC 60617").isChecked());
    EXPECT_TRUE(action("Package from above").isChecked());
    action("IEEE 315").trigger();
    const QImage zigzag = shown();
    EXPECT_NE(zigzag, first);
    action("Function block").trigger();
    EXPECT_NE(shown(), zigzag);
    EXPECT_EQ(window.hookup().symbolStyle(), (SymbolStyle{Shapes::ieee315, TimerLook::block}));
    EXPECT_FALSE(window.isWindowModified()) << "looks are no part of the circuit";

    MainWindow next(settings);
    EXPECT_EQ(next.hookup().symbolStyle(), (SymbolStyle{Shapes::ieee315, TimerLook::block}));
    action("IEC 60617").trigger();
    action("Package from above").trigger();
    EXPECT_EQ(shown(), first);
}

TEST_F(WindowTest, ADragDoesNotLayTheWindowOutAnew) {
    /// Counts how often the window is asked to.
    class Asked : public QObject {
      public:
        int times = 0;
        bool eventFilter(QObject*, QEvent* event) override {
            if (event->type() == QEvent::LayoutRequest) ++times;
            return false;
        }
    } asked;
    open("buoy-pair");
    const circuit::PartId r2 = window.document().circuit().findRef("R2")->id;
    const double begin_ohm = ohms("R2");
    emit window.values().gestureBegan(1);
    const auto change = [&](int k) {
        emit window.values().valueWished({r2, "resistance"}, begin_ohm * (1 + 0.001 * k), 1);
        ASSERT_TRUE(waitForRun());
        QCoreApplication::processEvents();
    };
    for (int k = 1; k <= 3; ++k) change(k);
    window.installEventFilter(&asked);
    constexpr int changes = 20;
    for (int k = 1; k <= changes; ++k) change(3 + k);
    emit window.values().gestureEnded(1);
    EXPECT_LE(asked.times, changes / 4) << "a line that grows longer than any before it may ask";
}

TEST_F(WindowTest, DraggingASliderMovesTheReadingsAndIsOneStepToUndo) {
    open();
    const double before_s = period();
    const double before_ohm = ohms("R2");
    const QString readingsBefore = window.readings().asText();
    widgets::ScaleSlider& slider = *row("R2").slider();
    const QPoint from(static_cast<int>(slider.handleX()), slider.height() / 2);
    EXPECT_FALSE(window.live().hasEcho());
    QTest::mousePress(&slider, Qt::LeftButton, {}, from);
    int shown = 0;
    QObject::connect(&window.live(), &app::LivePanels::studyShown, &slider, [&] { ++shown; });
    for (int k = 1; k <= 20; ++k) {
        QTest::mouseMove(&slider, from + QPoint(2 * k, 0));
        QTest::qWait(5);
    }
    EXPECT_GT(shown, 1) << "the curves follow while the hand still holds the handle";
    EXPECT_TRUE(window.live().hasEcho());
    QTest::mouseRelease(&slider, Qt::LeftButton, {}, from + QPoint(40, 0));
    ASSERT_TRUE(waitForRun());

    const double after_ohm = ohms("R2");
    EXPECT_GT(after_ohm, before_ohm);
    const auto textbook = window.live().shown()->readings.timers.at(0).textbook;
    ASSERT_TRUE(textbook);
    EXPECT_DOUBLE_EQ(textbook->r2_ohm, after_ohm);
    EXPECT_GT(period(), before_s);
    EXPECT_NE(window.readings().asText(), readingsBefore);
    EXPECT_EQ(window.document().undoStack().count(), 1);
    EXPECT_TRUE(window.isWindowModified());
    EXPECT_TRUE(window.live().hasEcho());

    action("Undo").trigger();
    ASSERT_TRUE(waitForRun());
    EXPECT_EQ(ohms("R2"), before_ohm);
    EXPECT_EQ(period(), before_s);
    EXPECT_EQ(window.readings().asText(), readingsBefore);
    EXPECT_FALSE(window.isWindowModified());
    action("Redo").trigger();
    EXPECT_EQ(ohms("R2"), after_ohm);
    ASSERT_TRUE(waitForRun());
}

TEST_F(WindowTest, WhatADragLeavesOnTheScreenIsRunAtFullAccuracy) {
    open();
    const circuit::ValueRef r2{window.document().circuit().findRef("R2")->id, "resistance"};
    emit window.values().gestureBegan(1);
    emit window.values().valueWished(r2, 50e3, 1);
    ASSERT_TRUE(waitForRun());
    const double rough = window.live().shown()->readings.run.accuracy;
    emit window.values().gestureEnded(1);
    EXPECT_TRUE(waitFor([&] { return window.live().shown()->readings.run.accuracy == 1e-6; }));
    EXPECT_GT(rough, 1e-6);
    EXPECT_LE(rough, 5e-5) << "four digits of a reading";
    EXPECT_EQ(window.document().undoStack().count(), 1);
}

TEST_F(WindowTest, EscapeTakesTheEchoAway) {
    open();
    widgets::ScaleSlider& slider = *row("R2").slider();
    QTest::mouseClick(&slider, Qt::LeftButton, {}, QPoint(slider.width() / 3, slider.height() / 2));
    EXPECT_TRUE(window.live().hasEcho());
    QTest::keyClick(&window, Qt::Key_Escape);
    EXPECT_FALSE(window.live().hasEcho());
}

TEST_F(WindowTest, OpeningAnotherFileTakesTheEchoAway) {
    open();
    widgets::ScaleSlider& slider = *row("R2").slider();
    QTest::mouseClick(&slider, Qt::LeftButton, {}, QPoint(slider.width() / 3, slider.height() / 2));
    ASSERT_TRUE(window.live().hasEcho());
    open("winch-warning");
    EXPECT_FALSE(window.live().hasEcho());
}

TEST_F(WindowTest, ARunOfTheFileBeforeIsDropped) {
    std::vector<double> shown_V;
    QObject::connect(&window.live(), &app::LivePanels::studyShown, &window,
                     [&] { shown_V.push_back(window.live().shown()->board.supplies.at(0).voltage); });
    ASSERT_TRUE(window.openFile(sample("mole-light")));
    QThread::msleep(300); // its run ends meanwhile, and its result waits for the event loop
    ASSERT_TRUE(window.openFile(sample("winch-warning")));
    ASSERT_TRUE(waitFor([&] { return !shown_V.empty(); }));
    QTest::qWait(50);
    EXPECT_EQ(shown_V, std::vector<double>{stated(window.document().circuit(), "BT1", "voltage")});
}

TEST_F(WindowTest, ARunThatAnUndoHasOvertakenIsDropped) {
    open();
    const circuit::ValueRef r2{window.document().circuit().findRef("R2")->id, "resistance"};
    std::vector<quint64> shown;
    emit window.values().valueWished(r2, 50e3, 0);
    QThread::msleep(300);
    QObject::connect(&window.live(), &app::LivePanels::studyShown, &window, [&] {
        shown.push_back(static_cast<quint64>(window.live().shown()->readings.timers.at(0).textbook->r2_ohm));
    });
    action("Undo").trigger();
    ASSERT_TRUE(waitFor([&] { return !shown.empty(); }));
    QTest::qWait(50);
    EXPECT_EQ(shown, std::vector<quint64>{68000});
}

TEST_F(WindowTest, ATypedValueIsOneStepWithItsTextInTheMenu) {
    open();
    QLineEdit& field = *row("R1").field();
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, "4k7");
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(ohms("R1"), 4700);
    EXPECT_EQ(window.document().undoStack().count(), 1);
    EXPECT_TRUE(action("Undo").text().contains("R1")) << action("Undo").text().toStdString();
    ASSERT_TRUE(waitForRun());
}

TEST_F(WindowTest, ValuesFollowAnUndo) {
    open();
    const QString before = row("R1").field()->text();
    emit window.values().valueWished({window.document().circuit().findRef("R1")->id, "resistance"}, 22000, 0);
    EXPECT_EQ(ohms("R1"), 22000);
    EXPECT_NE(row("R1").field()->text(), before);
    action("Undo").trigger();
    EXPECT_EQ(row("R1").field()->text(), before);
}

TEST_F(WindowTest, WishingForTheValueThatIsThereIsNoStep) {
    open();
    emit window.values().valueWished({window.document().circuit().findRef("R1")->id, "resistance"}, 10000, 0);
    EXPECT_EQ(window.document().undoStack().count(), 0);
}

TEST_F(WindowTest, SettledAndFlashesArePartOfTheCircuitAndOfUndo) {
    open();
    action("Curves when settled").trigger();
    EXPECT_EQ(window.document().circuit().run.begin, circuit::Begin::settled);
    EXPECT_EQ(window.document().undoStack().count(), 1);
    EXPECT_TRUE(waitFor([&] { return !window.live().shown()->readings.timers.at(0).firstHigh_s; }));
    auto* flashes = window.findChild<QSpinBox*>("flashes");
    ASSERT_NE(flashes, nullptr);
    flashes->stepUp();
    flashes->stepUp();
    EXPECT_EQ(window.document().circuit().run.flashes, 8);
    EXPECT_EQ(window.document().undoStack().count(), 2);
    action("Undo").trigger();
    EXPECT_EQ(flashes->value(), 6);
    action("Undo").trigger();
    EXPECT_TRUE(action("Curves from power-on").isChecked());
}

TEST_F(WindowTest, TheMomentLineLightsTheLensesByTheirCurrent) {
    open();
    const auto study = window.live().shown();
    const double rise = study->curves.switchings_s.at(1);
    const double fall = study->curves.switchings_s.at(2);
    window.curves().setMoment((rise + fall) / 2);
    emit window.curves().momentMoved((rise + fall) / 2);
    const QImage lit = window.hookup().grab().toImage();
    const double next = study->curves.switchings_s.at(3);
    window.curves().setMoment((fall + next) / 2);
    emit window.curves().momentMoved((fall + next) / 2);
    EXPECT_NE(window.hookup().grab().toImage(), lit);
}

TEST_F(WindowTest, ABadFileIsSaidInOneSentenceAndLeavesWhatIsOpen) {
    open();
    const std::string title = window.document().circuit().title;
    QByteArray bad = bytesOf(sample("mole-light"));
    bad.replace("\"resistance\": 10000,", "\"resistance\": -5,");
    writeFile(inFolder("bad.blinkwright"), bad);
    Answering ok(QMessageBox::Ok);
    EXPECT_FALSE(window.openFile(inFolder("bad.blinkwright")));
    EXPECT_TRUE(ok.said.contains("bad.blinkwright: parts[2].resistance")) << ok.said.toStdString();
    EXPECT_EQ(ok.said.count('\n'), 0);
    EXPECT_EQ(window.document().circuit().title, title);
    EXPECT_NE(window.live().shown(), nullptr);
    EXPECT_EQ(settings.recentFiles(), QStringList{sample("mole-light")});
}

TEST_F(WindowTest, ACircuitThatCannotBlinkOpensAndSaysWhy) {
    QByteArray text = bytesOf(sample("mole-light"));
    text.replace("\"U1:6\", \"U1:2\", \"R2:2\"", "\"R2:2\"");
    writeFile(inFolder("dead.blinkwright"), text);
    ASSERT_TRUE(window.openFile(inFolder("dead.blinkwright")));
    ASSERT_TRUE(waitFor([&] { return window.live().shown() != nullptr; }));
    const auto study = window.live().shown();
    EXPECT_NE(study->readings.verdict, study::Verdict::blinks);
    EXPECT_FALSE(study->readings.reasons.empty());
    EXPECT_FALSE(study->findings.empty());
}

TEST_F(WindowTest, AsksBeforeChangesWouldBeLost) {
    open();
    ASSERT_TRUE(window.document().saveAs(inFolder("own.blinkwright")));
    const auto change = [&](double ohm) {
        emit window.values().valueWished({window.document().circuit().findRef("R1")->id, "resistance"}, ohm,
                                         0);
    };
    change(22000);
    {
        Answering cancel(QMessageBox::Cancel);
        EXPECT_FALSE(window.close());
        EXPECT_FALSE(cancel.said.isEmpty());
        EXPECT_TRUE(window.isVisible());
    }
    {
        Answering save(QMessageBox::Save);
        EXPECT_TRUE(window.close());
        EXPECT_FALSE(window.document().isModified());
        app::Document saved;
        ASSERT_TRUE(saved.open(inFolder("own.blinkwright")));
        EXPECT_EQ(stated(saved.circuit(), "R1", "resistance"), 22000);
    }
    window.show();
    change(33000);
    {
        Answering discard(QMessageBox::Discard);
        EXPECT_TRUE(window.close());
        app::Document saved;
        ASSERT_TRUE(saved.open(inFolder("own.blinkwright")));
        EXPECT_EQ(stated(saved.circuit(), "R1", "resistance"), 22000);
    }
}

TEST_F(WindowTest, ClosesWithoutAQuestionWhenNothingHasChanged) {
    open();
    EXPECT_TRUE(window.close());
}

TEST_F(WindowTest, ExportsWhatItShows) {
    open();
    for (const char* name : {"a.png", "a.svg", "a.pdf", "a.csv"}) {
        const auto done = window.exportTo(inFolder(name));
        EXPECT_TRUE(done) << done.fault().message();
        EXPECT_GT(bytesOf(inFolder(name)).size(), 1000) << name;
    }
    const QImage picture(inFolder("a.png"));
    // 180 mm at 300 dpi, on white whatever the theme.
    EXPECT_NEAR(picture.width(), 180 / 25.4 * 300, 2);
    EXPECT_NEAR(picture.dotsPerMeterX(), 300 / 0.0254, 2);
    EXPECT_EQ(picture.pixelColor(0, 0), QColor(Qt::white));
    EXPECT_FALSE(window.exportTo(inFolder("a.gif")));
}

TEST_F(WindowTest, ExportsStayOnWhiteInTheDark) {
    action("Dark").trigger();
    open();
    ASSERT_TRUE(window.exportTo(inFolder("dark.png")));
    EXPECT_EQ(QImage(inFolder("dark.png")).pixelColor(0, 0), QColor(Qt::white));
    action("Light").trigger();
}

TEST_F(WindowTest, CopiesPictureAndReadings) {
    open();
    action("Copy picture of the curves").trigger();
    EXPECT_FALSE(QApplication::clipboard()->image().isNull());
    action("Copy readings").trigger();
    EXPECT_EQ(QApplication::clipboard()->text(), window.readings().asText());
    EXPECT_TRUE(window.readings().asText().contains('\t'));
}

TEST_F(WindowTest, AFileDroppedOnTheWindowIsOpened) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(sample("buoy-pair"))});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&window, &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&window, &drop);
    EXPECT_EQ(window.document().path(), sample("buoy-pair"));
    ASSERT_TRUE(waitForRun());
}

TEST_F(WindowTest, ComesBackAsItWasLeft) {
    window.resize(1111, 777);
    auto* top = window.findChild<QSplitter*>("top");
    ASSERT_NE(top, nullptr);
    top->setSizes({300, 800});
    const QList<int> sizes = top->sizes();
    action("Dark").trigger();
    ASSERT_TRUE(window.close());
    Settings again(folder.filePath("settings.ini"));
    MainWindow other(again);
    other.show();
    EXPECT_EQ(other.size(), QSize(1111, 777));
    EXPECT_EQ(other.findChild<QSplitter*>("top")->sizes(), sizes);
    EXPECT_EQ(other.appearance().looks(), app::Looks::dark);
    action("Light").trigger();
}

TEST_F(WindowTest, TheFirstWindowFitsTheScreen) {
    QTemporaryDir fresh;
    Settings first(fresh.filePath("settings.ini"));
    const MainWindow other(first);
    EXPECT_LE(other.width(), other.screen()->availableSize().width());
    EXPECT_LE(other.height(), other.screen()->availableSize().height());
}

TEST_F(WindowTest, TheMainReadingsAreSeenWithoutScrolling) {
    for (const char* name : {"mole-light", "buoy-pair", "winch-warning"}) {
        open(name);
        QTest::qWait(20);
        const auto* table = window.readings().findChild<QTableView*>();
        ASSERT_NE(table, nullptr);
        constexpr int lastMain = 6; // rate, a minute, cycle, high, low, duty, first flash
        const QModelIndex last = table->model()->index(lastMain, 0);
        EXPECT_EQ(last.data().toString(), QStringLiteral("First flash"));
        EXPECT_TRUE(table->viewport()->rect().contains(table->visualRect(last)))
            << name << ": " << table->viewport()->height() << " pixels high";
    }
}

TEST_F(WindowTest, AnotherFileShowsNothingOfTheOneBefore) {
    open();
    auto* table = window.readings().findChild<QTableView*>();
    ASSERT_NE(table, nullptr);
    table->scrollToBottom();
    row("R2").field()->setFocus();
    row("R2").field()->setText("-5");
    row("R2").field()->setModified(true);
    QTest::keyClick(row("R2").field(), Qt::Key_Return);
    ASSERT_FALSE(row("R2").refusal().isEmpty());
    ASSERT_TRUE(window.hookup().selected());
    QFile::copy(sample("mole-light"), inFolder("other.blinkwright")); // the same parts and values
    ASSERT_TRUE(window.openFile(inFolder("other.blinkwright")));
    ASSERT_TRUE(waitForRun());
    EXPECT_TRUE(row("R2").refusal().isEmpty());
    EXPECT_TRUE(row("R2").field()->text().startsWith("68"));
    EXPECT_FALSE(window.hookup().selected());
    EXPECT_EQ(table->indexAt({2, 2}).row(), 0);
}

TEST_F(WindowTest, SaysNoFindingsOnlyOnceThereIsAResult) {
    ASSERT_TRUE(window.openFile(sample("mole-light")));
    ASSERT_EQ(window.live().shown(), nullptr);
    EXPECT_FALSE(window.findings().isVisible());
    ASSERT_TRUE(waitForRun());
    EXPECT_TRUE(window.findings().isVisible());
}

TEST_F(WindowTest, DarkReachesEveryPanel) {
    open();
    action("Dark").trigger();
    for (QWidget* panel : std::initializer_list<QWidget*>{
             &window.hookup(), &window.curves(), &window.readings(), &window.values(), &window.findings()}) {
        const QImage image = panel->grab().toImage();
        double sum = 0;
        int count = 0;
        for (int y = 0; y < image.height(); y += 3)
            for (int x = 0; x < image.width(); x += 3, ++count) sum += image.pixelColor(x, y).lightnessF();
        EXPECT_LT(sum / count, 0.35) << panel->metaObject()->className();
    }
    action("Light").trigger();
}

TEST_F(WindowTest, F6GoesThroughThePanels) {
    open();
    QSet<QWidget*> visited;
    for (int k = 0; k < 5; ++k) {
        action("Next panel").trigger();
        if (QApplication::focusWidget()) visited.insert(QApplication::focusWidget());
    }
    EXPECT_GE(visited.size(), 3);
}

TEST_F(WindowTest, F6PassesAPanelThatHasNothingToFocus) {
    open();
    ASSERT_TRUE(window.live().shown()->findings.empty());
    row("R2").field()->setFocus();
    action("Next panel").trigger();
    EXPECT_TRUE(window.hookup().hasFocus());
    action("Previous panel").trigger();
    EXPECT_TRUE(window.values().isAncestorOf(QApplication::focusWidget()));
}

TEST_F(WindowTest, BeforeAFileIsOpenOffersWhatMakesSenseOnly) {
    EXPECT_TRUE(action("Save").isEnabled()); // an empty Hook-up is a beginning
    EXPECT_FALSE(action("Export curves").isEnabled());
    EXPECT_FALSE(action("Copy readings").isEnabled());
    EXPECT_FALSE(action("Undo").isEnabled());
    EXPECT_FALSE(action("Duplicate").isEnabled());
    EXPECT_FALSE(action("Join two pins").isEnabled());
    open();
    EXPECT_TRUE(action("Export curves").isEnabled());
}

TEST_F(WindowTest, EveryShortcutStandsForOneActionOnly) {
    QMap<QString, QString> taken;
    for (const QAction* found : window.findChildren<QAction*>())
        for (const QKeySequence& keys : found->shortcuts()) {
            const QString text = keys.toString();
            EXPECT_FALSE(taken.contains(text) && taken[text] != found->text())
                << text.toStdString() << ": " << taken[text].toStdString() << ", "
                << found->text().toStdString();
            taken[text] = found->text();
        }
    EXPECT_GE(taken.size(), 12);
}

TEST_F(WindowTest, EveryAltKeyStandsForOneMenuOrFieldOnly) {
    QStringList texts;
    for (const QAction* menu : window.menuBar()->actions()) texts << menu->text();
    for (const QLabel* label : window.findChildren<QLabel*>())
        if (label->buddy()) texts << label->text();
    QSet<QString> taken;
    for (const QString& text : texts) {
        const QString keys = QKeySequence::mnemonic(text).toString();
        EXPECT_FALSE(taken.contains(keys))
            << text.toStdString() << " takes " << keys.toStdString() << " again";
        taken.insert(keys);
    }
    EXPECT_GE(taken.size(), 5);
}

} // namespace
