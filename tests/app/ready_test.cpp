// The two dialogs about whole boards: ready blinkers and the wiring list.
#include "app/ready_actions.h"
#include "app/ready_answers.h"
#include "tests/app/answering.h"
#include "tests/app/window_fixture.h"
#include "tests/case_names.h"
#include "widgets/bench/bench_dialog.h"
#include "widgets/ready/ready_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using study::ReadyKind;
using widgets::ReadyDialog;

class ReadyTest : public WindowFixture {
  protected:
    explicit ReadyTest(app::Looks looks = app::Looks::light) : WindowFixture(looks) {}
    /// Opens the dialog by its action and does something with it while it is open.
    template <class Work>
    void inDialog(Work work) {
        bool done = false;
        QTimer::singleShot(0, window.get(), [&] {
            auto* dialog = qobject_cast<ReadyDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            ASSERT_TRUE(waitFor([&] { return dialog->isReady(); }));
            work(*dialog);
            done = true;
        });
        action("New from a ready blinker").trigger();
        EXPECT_TRUE(done);
    }
    static void press(ReadyDialog& dialog, QDialogButtonBox::StandardButton which) {
        dialog.findChild<QDialogButtonBox*>()->button(which)->click();
    }
    static void answer(ReadyDialog& dialog, const char* name, double value) {
        auto* field = dialog.findChild<QDoubleSpinBox*>(QLatin1String(name));
        ASSERT_NE(field, nullptr);
        field->setValue(value);
    }
    void makeMoleLight() {
        inDialog([](ReadyDialog& dialog) { press(dialog, QDialogButtonBox::Ok); });
        ASSERT_TRUE(waitFor([this] { return window->live().shown() != nullptr; }));
    }
};

TEST_F(ReadyTest, ANewCircuitComesFromTheAnswersAndIsNoFileYet) {
    ASSERT_TRUE(window->openFile(sample("winch-warning")));
    inDialog([](ReadyDialog& dialog) {
        answer(dialog, "rate", 90);
        press(dialog, QDialogButtonBox::Ok); // before the new circuit is made: it is waited for
        EXPECT_TRUE(waitFor([&] { return dialog.result() == QDialog::Accepted; }));
    });
    const circuit::Circuit& c = window->document().circuit();
    EXPECT_EQ(c.title, "Mole light");
    EXPECT_TRUE(window->document().path().isEmpty());
    const auto rate = [this]() -> double {
        const auto study = window->live().shown();
        if (!study || study->readings.timers.empty() || !study->readings.timers[0].settled) return 0;
        return 60 * study->readings.timers[0].settled->rate_Hz();
    };
    // The winch's lamp flashes at almost the same rate: the first run of the new circuit has the new lamp.
    ASSERT_TRUE(waitFor(
        [&] { return window->live().shown() && window->live().shown()->board.timers[0].cmos == false; }));
    EXPECT_NEAR(rate(), 90, 4);
}

TEST_F(ReadyTest, WhatWasMadeIsAskedAboutBeforeItWouldBeLost) {
    makeMoleLight();
    EXPECT_TRUE(window->isWindowModified());
    {
        Answering cancel(QMessageBox::Cancel);
        EXPECT_FALSE(window->close());
        EXPECT_EQ(cancel.said, QStringLiteral("The new circuit is not saved. Save it?"));
    }
    {
        Answering cancel(QMessageBox::Cancel);
        action("New").trigger();
        EXPECT_FALSE(cancel.said.isEmpty());
        EXPECT_FALSE(circuit().parts().empty());
    }
    {
        Answering discard(QMessageBox::Discard);
        action("New").trigger();
        EXPECT_TRUE(circuit().parts().empty());
    }
    Answering none(QMessageBox::Cancel);
    EXPECT_TRUE(window->close()) << "an empty circuit is no loss";
    EXPECT_TRUE(none.said.isEmpty());
}

TEST_F(ReadyTest, AnAnswerOutOfRangeIsToldAndMakesNothing) {
    inDialog([](ReadyDialog& dialog) {
        answer(dialog, "supply", 3);
        ASSERT_TRUE(waitFor([&] { return !dialog.message().isEmpty(); }));
        EXPECT_TRUE(dialog.message().startsWith("Supply voltage: must be 4.5"))
            << dialog.message().toStdString();
        EXPECT_FALSE(dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok)->isEnabled());
        dialog.accept();
        EXPECT_NE(dialog.result(), QDialog::Accepted);
        // The CMOS timer works from there, if the lamp does.
        dialog.findChild<QComboBox*>("family")->setCurrentIndex(1);
        answer(dialog, "current", 2);
        EXPECT_TRUE(waitFor([&] { return dialog.isReady(); })) << dialog.message().toStdString();
        EXPECT_TRUE(dialog.message().isEmpty());
        press(dialog, QDialogButtonBox::Cancel);
    });
    EXPECT_TRUE(window->document().circuit().parts().empty());
}

TEST_F(ReadyTest, AsksOnlyWhatAKindNeeds) {
    inDialog([](ReadyDialog& dialog) {
        const auto shown = [&](const char* name) {
            return dialog.findChild<QWidget*>(QLatin1String(name))->isVisibleTo(&dialog);
        };
        EXPECT_TRUE(shown("lit"));
        EXPECT_FALSE(shown("second"));
        EXPECT_FALSE(shown("groups"));
        dialog.choose(ReadyKind::takingTurns);
        EXPECT_FALSE(shown("lit"));
        EXPECT_TRUE(shown("second"));
        dialog.choose(ReadyKind::gatedGroups);
        EXPECT_TRUE(shown("groups"));
        press(dialog, QDialogButtonBox::Cancel);
    });
}

TEST_F(ReadyTest, TheLastAnswersComeBackInTheNextStart) {
    inDialog([](ReadyDialog& dialog) {
        dialog.choose(ReadyKind::shortFlash);
        answer(dialog, "rate", 44);
        dialog.findChild<QComboBox*>("colour")->setCurrentIndex(1);
        press(dialog, QDialogButtonBox::Cancel);
    });
    start();
    inDialog([](ReadyDialog& dialog) {
        EXPECT_EQ(dialog.answers().kind, ReadyKind::shortFlash);
        EXPECT_EQ(dialog.answers().perMinute, 44);
        EXPECT_EQ(dialog.answers().colour, study::readyColours()[1]);
        press(dialog, QDialogButtonBox::Cancel);
    });
    // What no dialog would have kept is not taken up.
    settings.setAnswers("short-flash", {{"supply", 999}});
    inDialog([](ReadyDialog& dialog) {
        EXPECT_EQ(dialog.answers().supply_V, study::defaultAnswers(ReadyKind::shortFlash).supply_V);
        press(dialog, QDialogButtonBox::Cancel);
    });
}

TEST_F(ReadyTest, TicksOfTheWiringListStayWhileTheFileIsOpen) {
    EXPECT_FALSE(action("Wiring list").isEnabled());
    ASSERT_TRUE(window->openFile(sample("mole-light")));
    action("Wiring list").trigger();
    widgets::BenchDialog* bench = window->readyActions().wiringList();
    ASSERT_NE(bench, nullptr);
    EXPECT_TRUE(bench->isVisible());
    auto* steps = bench->findChild<QListWidget*>("steps");
    ASSERT_EQ(steps->count(), 9);
    EXPECT_TRUE(steps->item(1)->text().startsWith(
        "2. R1, 10\u00A0kΩ (brown black orange gold): from pin 7 to + rail"))
        << steps->item(1)->text().toStdString();
    steps->item(1)->setCheckState(Qt::Checked);
    steps->item(2)->setCheckState(Qt::Checked);
    EXPECT_EQ(bench->ticked(), 2);
    bench->close();
    action("Wiring list").trigger();
    EXPECT_EQ(bench->findChild<QListWidget*>("steps")->item(1)->checkState(), Qt::Checked);

    // A step that is no longer the same is no longer done; the others are.
    const auto& c = window->document().circuit();
    ASSERT_TRUE(window->document().apply(
        circuit::setValue(c, circuit::PartSet::A, c.findRef("R1")->id, "resistance", 22e3)));
    EXPECT_EQ(bench->ticked(), 1);
    EXPECT_TRUE(steps->item(1)->text().contains("22"));
    EXPECT_EQ(steps->item(2)->checkState(), Qt::Checked);

    ASSERT_TRUE(window->openFile(sample("winch-warning")));
    EXPECT_EQ(bench->ticked(), 0);
}

TEST_F(ReadyTest, TheWiringListIsCopiedPrintedAndExported) {
    ASSERT_TRUE(window->openFile(sample("mole-light")));
    action("Wiring list").trigger();
    auto* bench = window->readyActions().wiringList();
    bench->findChild<QPushButton*>("copy")->click();
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.startsWith("Harbour mole light\n")) << text.toStdString();
    EXPECT_TRUE(text.contains("\n1. U1, 555 timer, bipolar"));

    ASSERT_TRUE(window->readyActions().exportParts(inFolder("parts.csv")));
    const QByteArray csv = bytesOf(inFolder("parts.csv"));
    EXPECT_TRUE(csv.startsWith("quantity,references,kind,value,"));
    EXPECT_EQ(csv.count("\r\n"), 10); // a header and nine parts, no two alike
    ASSERT_TRUE(window->readyActions().exportPage(inFolder("page.pdf")));
    EXPECT_TRUE(bytesOf(inFolder("page.pdf")).startsWith("%PDF-"));
    const auto refused = window->readyActions().exportParts(inFolder("no/such/parts.csv"));
    ASSERT_FALSE(refused);
    EXPECT_NE(refused.fault().message().find("parts.csv"), std::string::npos);
}

class ReadyPictures : public ReadyTest, public testing::WithParamInterface<bool> {
  protected:
    ReadyPictures() : ReadyTest(GetParam() ? app::Looks::dark : app::Looks::light) {}
    QString named(const QString& stem) const { return stem + (GetParam() ? "-dark" : "-light"); }
};

TEST_P(ReadyPictures, ShowEveryReadyBlinkerInTheWindow) {
    std::vector<study::ReadyAnswers> all;
    for (const ReadyKind kind : study::allReadyKinds) all.push_back(study::defaultAnswers(kind));
    all.push_back(study::defaultAnswers(ReadyKind::equalHalves));
    all.back().family = devices::TimerFamily::bipolar; // has a part more
    for (const study::ReadyAnswers& answers : all) {
        const auto made = study::makeReady(answers);
        ASSERT_TRUE(made) << made.fault().message();
        window->document().startWith(made.value());
        const auto revision = window->document().revision();
        ASSERT_TRUE(
            waitFor([&] { return window->live().shown() && revision == window->document().revision(); }));
        QTest::qWait(150);
        const bool other = answers.family != study::defaultAnswers(answers.kind).family;
        const QString id =
            QString::fromStdString(std::string(study::info(answers.kind).id)) + (other ? "-bipolar" : "");
        picture(named("ready-" + id));
    }
}

TEST_P(ReadyPictures, ShowBothDialogs) {
    inDialog([this](ReadyDialog& dialog) {
        for (const ReadyKind kind :
             {ReadyKind::lampToGround, ReadyKind::takingTurns, ReadyKind::gatedGroups}) {
            dialog.choose(kind);
            ASSERT_TRUE(waitFor([&] { return dialog.isReady(); }));
            picture(named(QString("dialog-ready-%1").arg(static_cast<int>(kind))), dialog);
        }
        dialog.choose(ReadyKind::lampToGround);
        answer(dialog, "supply", 3);
        ASSERT_TRUE(waitFor([&] { return !dialog.message().isEmpty(); }));
        picture(named("dialog-ready-refused"), dialog);
        press(dialog, QDialogButtonBox::Cancel);
    });
    ASSERT_TRUE(window->openFile(sample("buoy-pair")));
    action("Wiring list").trigger();
    auto* bench = window->readyActions().wiringList();
    bench->findChild<QListWidget*>("steps")->item(0)->setCheckState(Qt::Checked);
    picture(named("dialog-wiring"), *bench);
}

INSTANTIATE_TEST_SUITE_P(Looks, ReadyPictures, testing::Bool(),
                         [](const auto& row) { return row.param ? "dark" : "light"; });

} // namespace
