// Set B, or another circuit, beside Set A in the real window.
#include "app/main_window.h"
#include "app/ready_actions.h"
#include "app/second_set.h"
#include "app/set_actions.h"
#include "core/circuit/set_edits.h"
#include "tests/app/support.h"
#include "widgets/bench/bench_dialog.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/readings/readings_view.h"
#include "widgets/values/set_column.h"
#include "widgets/values/value_panel.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QListWidget>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::MainWindow;
using app::Settings;
using circuit::PartSet;

class SecondSetWindow : public testing::Test {
  protected:
    SecondSetWindow() : settings(folder.filePath("settings.ini")) { start(); }
    void start() {
        window = std::make_unique<MainWindow>(settings);
        window->resize(1280, 800);
        window->show();
    }
    /// The mole light, which states another R2 for Set B.
    void open() { openFile(sample("mole-light")); }
    /// The same with two sets that agree.
    void openAgreeing() {
        QByteArray text = bytesOf(sample("mole-light"));
        text.replace("\"B\": {\"R2\": {\"resistance\": 33000}}", "\"B\": {}");
        writeFile(folder.filePath("agreeing.blinkwright"), text);
        openFile(folder.filePath("agreeing.blinkwright"));
        ASSERT_TRUE(circuit::setsAgree(window->document().circuit()));
    }
    void openFile(const QString& path) {
        ASSERT_TRUE(window->openFile(path));
        ASSERT_TRUE(settled());
    }
    /// A key of the window's menus.
    void press(Qt::Key key, Qt::KeyboardModifiers with) {
        window->activateWindow();
        window->setFocus();
        QApplication::processEvents();
        QTest::keyClick(window.get(), key, with);
    }
    static double boardOhms(const std::shared_ptr<const study::Study>& study, const char* ref) {
        if (study)
            for (const devices::Resistor& r : study->board.resistors)
                if (r.ref == ref) return r.resistance;
        return 0;
    }
    double ohms(PartSet set, const char* ref = "R2") {
        const circuit::Circuit& c = window->document().circuit();
        return std::get<double>(*c.value(set, c.findRef(ref)->id, "resistance"));
    }
    /// Until both studies are of the document as it is.
    bool settled() {
        return waitFor([this] {
            return boardOhms(window->live().shown(), "R2") == ohms(PartSet::A) && !window->live().isBusy() &&
                   (!window->second().showsSetB() || window->second().comparesFile() ||
                    boardOhms(window->second().shown(), "R2") == ohms(PartSet::B));
        });
    }
    widgets::SetCell& cell(const char* ref) {
        for (auto* found : window->values().findChildren<widgets::SetCell*>())
            if (found->row()->subject().ref == ref) return *found;
        throw std::runtime_error(ref);
    }
    widgets::ValueRow& first(const char* ref) {
        for (auto* found : window->values().findChildren<widgets::ValueRow*>())
            if (found->subject().ref == ref) return *found;
        throw std::runtime_error(ref);
    }
    void type(widgets::ValueRow& row, const char* text) {
        row.field()->setFocus();
        row.field()->selectAll();
        QTest::keyClicks(row.field(), text);
        QTest::keyClick(row.field(), Qt::Key_Return);
    }
    QAction& action(const char* text) {
        for (QAction* found : window->findChildren<QAction*>())
            if (found->text().remove('&').startsWith(QString::fromUtf8(text))) return *found;
        throw std::runtime_error(text);
    }
    QString heads() { return window->readings().asText().section('\n', 1, 2); }
    QUndoStack& undoStack() { return window->document().undoStack(); }
    void picture(const char* name) {
        QTest::qWait(80);
        QDir().mkpath(BLINKWRIGHT_PICTURES);
        EXPECT_TRUE(window->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/window-%1.png").arg(name)));
    }

    QTemporaryDir folder;
    Settings settings;
    std::unique_ptr<MainWindow> window;
};

TEST_F(SecondSetWindow, IsShownByItselfWhereAFileStatesDifferences) {
    openAgreeing();
    EXPECT_FALSE(window->second().isShown());
    EXPECT_FALSE(action("Compare with Set B").isChecked());
    EXPECT_TRUE(window->findChildren<widgets::SetCell*>().isEmpty());
    EXPECT_FALSE(heads().contains("Set B"));
    open();
    EXPECT_TRUE(window->second().isShown());
    EXPECT_TRUE(action("Compare with Set B").isChecked());
    EXPECT_TRUE(cell("R2").isVisible());
    EXPECT_TRUE(heads().contains("Set B")) << heads().toStdString();
    EXPECT_FALSE(settings.secondSetShown()) << "what a file brings is no choice of the user's";
    openAgreeing();
    EXPECT_FALSE(window->second().isShown());
}

TEST_F(SecondSetWindow, CtrlBHidesAndShowsItAndTheChoiceIsRemembered) {
    openAgreeing();
    press(Qt::Key_B, Qt::ControlModifier);
    EXPECT_TRUE(window->second().isShown());
    EXPECT_TRUE(cell("R2").isVisible());
    EXPECT_FALSE(window->second().isApart()) << "it holds the same, so nothing is laid over";
    EXPECT_TRUE(window->readings().asText().contains("none"));
    EXPECT_TRUE(settings.secondSetShown());
    start();
    openAgreeing();
    EXPECT_TRUE(window->second().isShown());
    press(Qt::Key_B, Qt::ControlModifier);
    EXPECT_FALSE(window->second().isShown());
    EXPECT_FALSE(cell("R2").isVisible());
    EXPECT_FALSE(heads().contains("Set B"));
    EXPECT_FALSE(settings.secondSetShown());
    EXPECT_FALSE(window->isWindowModified());
}

TEST_F(SecondSetWindow, AValueOfBTypedMovesBAloneAndIsOneStepToUndo) {
    open();
    const auto before = window->live().shown();
    EXPECT_EQ(ohms(PartSet::B), 33e3);
    type(*cell("R2").row(), "22k");
    EXPECT_EQ(ohms(PartSet::B), 22e3);
    EXPECT_EQ(ohms(PartSet::A), 68e3);
    ASSERT_TRUE(settled());
    EXPECT_EQ(window->live().shown(), before) << "Set A is not run again for a value of Set B";
    // The formula for Set B, give or take what a real timer adds: ln 2 (10 kΩ + 2 x 22 kΩ) 10 µF.
    EXPECT_NEAR(window->second().shown()->readings.timers.at(0).settled->period_s(), 0.374, 0.04);
    EXPECT_EQ(undoStack().count(), 1);
    EXPECT_TRUE(undoStack().undoText().contains("Set B")) << undoStack().undoText().toStdString();
    action("Undo").trigger();
    EXPECT_EQ(ohms(PartSet::B), 33e3);
    EXPECT_TRUE(settled());
}

TEST_F(SecondSetWindow, ADragOfBsSliderFollowsWithAnEchoInItsColour) {
    open();
    const auto a = window->live().shown();
    widgets::ScaleSlider& slider = *cell("R2").row()->slider();
    const QPoint from(static_cast<int>(slider.handleX()), slider.height() / 2);
    QSignalSpy shown(&window->second(), &app::SecondSet::changed);
    QTest::mousePress(&slider, Qt::LeftButton, {}, from);
    for (int k = 1; k <= 20; ++k) {
        QTest::mouseMove(&slider, from + QPoint(k, 0));
        QTest::qWait(5);
    }
    EXPECT_GT(shown.count(), 1) << "the curves follow while the hand still holds the handle";
    EXPECT_TRUE(window->live().hasEcho());
    QTest::mouseRelease(&slider, Qt::LeftButton, {}, from + QPoint(20, 0));
    EXPECT_GT(ohms(PartSet::B), 33e3);
    ASSERT_TRUE(settled());
    EXPECT_EQ(window->live().shown(), a);
    EXPECT_EQ(undoStack().count(), 1);
    picture("two-sets-drag");
}

TEST_F(SecondSetWindow, ADragOfARunsBOnlyWhereTheValueIsShared) {
    open();
    const auto b = window->second().shown();
    type(first("R2"), "47k"); // B has its own
    ASSERT_TRUE(settled());
    EXPECT_EQ(window->second().shown(), b);
    type(first("R1"), "22k"); // B follows
    ASSERT_TRUE(waitFor([&] { return boardOhms(window->second().shown(), "R1") == 22e3; }));
    EXPECT_EQ(boardOhms(window->live().shown(), "R1"), 22e3);
    EXPECT_EQ(boardOhms(window->second().shown(), "R2"), 33e3);
}

TEST_F(SecondSetWindow, CopiesAndSwapsAreOneStepEach) {
    open();
    action("Swap A and B").trigger();
    EXPECT_EQ(ohms(PartSet::A), 33e3);
    EXPECT_EQ(ohms(PartSet::B), 68e3);
    EXPECT_EQ(undoStack().undoText(), "Swap Set A and Set B");
    ASSERT_TRUE(settled());
    action("Undo").trigger();
    EXPECT_EQ(ohms(PartSet::A), 68e3);
    press(Qt::Key_B, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(ohms(PartSet::B), 68e3);
    EXPECT_EQ(undoStack().undoText(), "Copy Set A to Set B");
    EXPECT_FALSE(action("Swap A and B").isEnabled()) << "there is nothing to swap";
    action("Undo").trigger();
    press(Qt::Key_A, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(ohms(PartSet::A), 33e3);
    EXPECT_EQ(undoStack().undoText(), "Copy Set B to Set A");
    EXPECT_EQ(undoStack().count(), 1);
    ASSERT_TRUE(settled());
    EXPECT_FALSE(window->second().isApart());
}

TEST_F(SecondSetWindow, TheFollowButtonAndTiesAreStepsToUndo) {
    open();
    QTest::mouseClick(cell("R2").followButton(), Qt::LeftButton);
    EXPECT_EQ(ohms(PartSet::B), 68e3);
    EXPECT_EQ(undoStack().undoText(), "Let R2 in Set B follow Set A");
    QTest::mouseClick(cell("R2").followButton(), Qt::LeftButton);
    EXPECT_FALSE(circuit::followsA(window->document().circuit(), first("R2").subject().part, "resistance"));
    const circuit::ValueRef r1{first("R1").subject().part, "resistance"},
        r2{first("R2").subject().part, "resistance"};
    emit window->values().tieWished(r1, r2);
    EXPECT_EQ(undoStack().undoText(), "Tie R1 to R2");
    EXPECT_EQ(ohms(PartSet::A, "R1"), 68e3);
    type(first("R2"), "47k");
    EXPECT_EQ(ohms(PartSet::A, "R1"), 47e3);
    emit window->values().untieWished(r1);
    EXPECT_EQ(undoStack().undoText(), "Untie R1");
    EXPECT_TRUE(window->document().circuit().ties.empty());
}

TEST_F(SecondSetWindow, AnotherCircuitIsComparedWithUntilToldToStop) {
    open();
    ASSERT_TRUE(window->setActions().compareWith(sample("winch-warning")));
    EXPECT_TRUE(window->second().comparesFile());
    ASSERT_TRUE(waitFor([&] { return window->second().isApart(); }));
    EXPECT_TRUE(heads().contains("winch-warning.blinkwright")) << heads().toStdString();
    EXPECT_FALSE(heads().contains("Set B"));
    EXPECT_TRUE(cell("R2").row()->field()->isReadOnly());
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_FALSE(action("Compare with Set B").isEnabled());
    picture("compared-with-file");
    type(first("R2"), "47k"); // the document stays what it is, and can be worked on
    ASSERT_TRUE(waitFor([&] { return boardOhms(window->live().shown(), "R2") == 47e3; }));
    EXPECT_TRUE(window->second().isApart());
    action("Stop comparing").trigger();
    ASSERT_TRUE(settled());
    EXPECT_TRUE(heads().contains("Set B"));
    EXPECT_FALSE(cell("R2").row()->field()->isReadOnly());
    EXPECT_FALSE(action("Stop comparing").isEnabled());
}

TEST_F(SecondSetWindow, AFileThatCannotBeReadIsRefusedInOneSentenceAndChangesNothing) {
    open();
    writeFile(folder.filePath("broken.blinkwright"), "{\"format\": \"something else\"}");
    QString said;
    QTimer::singleShot(50, window.get(), [&] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(box, nullptr);
        said = box->text() + box->informativeText();
        box->close();
    });
    EXPECT_FALSE(window->setActions().compareWith(folder.filePath("broken.blinkwright")));
    EXPECT_TRUE(said.contains("broken.blinkwright")) << said.toStdString();
    EXPECT_FALSE(window->second().comparesFile());
    EXPECT_TRUE(heads().contains("Set B"));
}

TEST_F(SecondSetWindow, ExportsHoldWhatIsShownOrTheSetThatIsChosen) {
    open();
    const auto headOf = [&] {
        const QString path = folder.filePath("curves.csv");
        EXPECT_TRUE(window->exportTo(path));
        return bytesOf(path).split('\r').front().toStdString();
    };
    const std::string alone = "time [s],output [V],capacitor [V],D1 current [A]";
    EXPECT_EQ(headOf(), alone + ",Set B time [s],Set B output [V],Set B capacitor [V],Set B D1 current [A]");
    EXPECT_TRUE(window->exportTo(folder.filePath("both.svg")));
    const QString svg = QString::fromUtf8(bytesOf(folder.filePath("both.svg")));
    EXPECT_TRUE(svg.contains("Set B: R2")) << "only what differs is named again";
    EXPECT_TRUE(svg.contains("D1 in B"));
    action("Set A alone").trigger();
    EXPECT_EQ(headOf(), alone);
    action("what it is compared with alone").trigger();
    EXPECT_EQ(headOf(), alone);
    const QByteArray second = bytesOf(folder.filePath("curves.csv"));
    EXPECT_EQ(second.count('\n'), static_cast<int>(window->second().shown()->curves.time_s.size()) + 1);
    window->second().showSetB(false);
    EXPECT_EQ(headOf(), alone);
    EXPECT_EQ(bytesOf(folder.filePath("curves.csv")).count('\n'),
              static_cast<int>(window->live().shown()->curves.time_s.size()) + 1)
        << "what is hidden is not exported";
    window->copyPicture();
    EXPECT_FALSE(QApplication::clipboard()->image().isNull());
}

TEST_F(SecondSetWindow, TheWiringListTakesEitherSet) {
    open();
    window->readyActions().showWiringList();
    auto* bench = window->readyActions().wiringList();
    const auto parts = [&] {
        const QString path = folder.filePath("parts.csv");
        EXPECT_TRUE(window->readyActions().exportParts(path));
        return QString::fromUtf8(bytesOf(path));
    };
    EXPECT_TRUE(parts().contains("68000"));
    auto* sets = bench->findChild<QComboBox*>("set");
    sets->setFocus();
    QTest::keyClick(sets, Qt::Key_Down);
    EXPECT_EQ(sets->currentText(), "Set B");
    EXPECT_TRUE(parts().contains("33000"));
    EXPECT_FALSE(parts().contains("68000"));
    bench->findChild<QPushButton*>("copy")->click();
    EXPECT_TRUE(QApplication::clipboard()->text().contains("Values of Set B"));
    EXPECT_TRUE(bench->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/dialog-wiring-set-b.png")));
}

TEST_F(SecondSetWindow, ShowsFindingsThatOnlyBHasUnderItsName) {
    open();
    type(*cell("R3").row(), "47"); // the lamp of Set B gets too much
    ASSERT_TRUE(waitFor([&] { return boardOhms(window->second().shown(), "R3") == 47; }));
    QStringList spoken;
    for (const QWidget* row : window->findings().findChildren<QWidget*>()) spoken << row->accessibleName();
    EXPECT_TRUE(spoken.join('\n').contains("Set B, Overstress")) << spoken.join('\n').toStdString();
    picture("two-sets-findings");
}

class SecondSetPictures : public SecondSetWindow,
                          public testing::WithParamInterface<std::tuple<bool, bool>> {};

TEST_P(SecondSetPictures, ShowBothSetsInEveryPanel) {
    const auto [dark, small] = GetParam();
    settings.setLooks(dark ? app::Looks::dark : app::Looks::light);
    start();
    window->resize(small ? QSize(960, 600) : QSize(1280, 800));
    open();
    picture(qPrintable(
        QStringLiteral("two-sets-%1-%2").arg(dark ? "dark" : "light").arg(small ? "960" : "1280")));
    EXPECT_EQ(window->size(), small ? QSize(960, 600) : QSize(1280, 800))
        << "the second set asks for no more room";
}

INSTANTIATE_TEST_SUITE_P(Looks, SecondSetPictures, testing::Combine(testing::Bool(), testing::Bool()));

} // namespace
