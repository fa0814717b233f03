#include "app/measure/record_import_dialog.h"
#include "tests/app/answering.h"
#include "tests/app/window_fixture.h"
#include "widgets/measure/layout_form.h"
#include "widgets/measure/record_plot.h"
#include "widgets/rooms/quantity_field.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableWidget>

namespace blinkwright::app {
namespace {

using test::waitFor;
using widgets::Theme;

QString record(const char* name) {
    return QStringLiteral(BLINKWRIGHT_SAMPLES "/%1.csv").arg(QLatin1String(name));
}

class ImportRecord : public testing::Test {
  protected:
    void open(const QString& path, Theme::Mode mode = Theme::Mode::light) {
        dialog = std::make_unique<RecordImportDialog>(path, Theme::of(mode));
        settled = std::make_unique<QSignalSpy>(dialog.get(), &RecordImportDialog::settled);
        dialog->show();
        waitSettled();
    }
    void waitSettled() {
        ASSERT_TRUE(waitFor([&] { return settled->count() > 0 && !dialog->isBusy(); }));
        settled->clear();
    }
    template <class Kind>
    Kind* part(const char* name) const {
        return dialog->findChild<Kind*>(QLatin1String(name));
    }
    QString figure(int row) const { return part<QTableWidget>("figures")->item(row, 1)->text(); }
    circuit::Record shown() const {
        if (!dialog->measurement()) throw std::runtime_error(dialog->message().toStdString());
        return std::get<circuit::Record>(dialog->measurement()->what);
    }
    QString written(const char* name, const QByteArray& text) const {
        QFile file(folder.filePath(QLatin1String(name)));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    }
    void picture(const QString& name) {
        QTest::qWait(50);
        ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
        EXPECT_TRUE(
            dialog->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/import-record-%1.png").arg(name)));
    }

    QTemporaryDir folder;
    std::unique_ptr<RecordImportDialog> dialog;
    std::unique_ptr<QSignalSpy> settled;
};

TEST_F(ImportRecord, ShowsWhatTheFileHolds) {
    open(record("mole-light"));
    EXPECT_EQ(part<QComboBox>("separator")->currentText(), "semicolon");
    EXPECT_EQ(part<QComboBox>("decimal mark")->currentText(), "comma");
    EXPECT_EQ(part<QSpinBox>("lines above")->value(), 5);
    EXPECT_TRUE(part<QCheckBox>("power-on")->isChecked());
    EXPECT_TRUE(part<QPushButton>("import")->isEnabled());
    EXPECT_TRUE(
        part<QPlainTextEdit>("said")->toPlainText().contains("Between two columns stands a semicolon"));
    EXPECT_TRUE(dialog->message().contains("switchings"));
    const auto measurement = dialog->measurement();
    ASSERT_TRUE(measurement);
    EXPECT_EQ(measurement->title, "mole-light");
    EXPECT_EQ(shown().source, "mole-light.csv");
    EXPECT_TRUE(circuit::Circuit().canMeasure(*measurement));
}

TEST_F(ImportRecord, AChangeOfAControlReadsAgain) {
    open(record("buoy-pair"));
    EXPECT_EQ(part<QComboBox>("voltage 2 of")->currentText(), "Timing capacitor");
    const double high = shown().levels->high_V;
    part<QComboBox>("voltage 1 unit")->setCurrentText("V"); // they are millivolts
    waitSettled();
    EXPECT_NEAR(shown().levels->high_V, 1000 * high, 1e-6 * high);
    part<QComboBox>("voltage 1 unit")->setCurrentText("mV");
    waitSettled();
    part<QComboBox>("voltage 2")->setCurrentIndex(0); // none
    waitSettled();
    EXPECT_EQ(shown().traces.size(), 1U);
    const double period = shown().switchings_s[2] - shown().switchings_s[0];
    auto* step = part<widgets::QuantityField>("step");
    step->setFocus();
    step->selectAll();
    QTest::keyClicks(step, "8 ms");
    QTest::keyClick(step, Qt::Key_Return);
    waitSettled();
    EXPECT_NEAR(shown().switchings_s[2] - shown().switchings_s[0], 2 * period, 1e-9);
    part<QComboBox>("voltage 1 of")->setCurrentText("Something else");
    waitSettled();
    EXPECT_FALSE(dialog->measurement());
    EXPECT_TRUE(dialog->message().contains("no column has two levels")) << dialog->message().toStdString();
    EXPECT_FALSE(part<QPushButton>("import")->isEnabled());
}

TEST_F(ImportRecord, PowerOnAndTimeBaseAreTheUsersWord) {
    open(record("mole-light"));
    EXPECT_NE(figure(4), QString(QChar(0x2013)));
    part<QCheckBox>("power-on")->click();
    waitSettled();
    EXPECT_FALSE(shown().fromPowerOn);
    EXPECT_EQ(figure(4), QString(QChar(0x2013)));
    EXPECT_FALSE(part<QCheckBox>("power-on")->isChecked());
    auto* accuracy = part<widgets::QuantityField>("accuracy");
    accuracy->setFocus();
    accuracy->selectAll();
    QTest::keyClicks(accuracy, "1 %");
    QTest::keyClick(accuracy, Qt::Key_Return);
    waitSettled();
    EXPECT_EQ(shown().timeUncertainty, 0.01);
    EXPECT_FALSE(shown().fromPowerOn);
}

TEST_F(ImportRecord, AnotherTableNamesItsColumnsAnew) {
    open(written("two.csv", "x;y\n0;5\n1;5\n2;0\n3;0\n4;0\n5;5\n6;5\n7;5\n8;0\n9;0\n10;0\n11;0\n12;0\n"));
    EXPECT_EQ(shown().switchings_s.size(), 3U);
    part<QSpinBox>("lines above")->setValue(2);
    part<QComboBox>("names")->setCurrentIndex(0);
    waitSettled();
    EXPECT_TRUE(part<QComboBox>("time")->itemText(0).contains("column 1"))
        << part<QComboBox>("time")->itemText(0).toStdString();
    part<QComboBox>("separator")->setCurrentText("comma");
    waitSettled();
    EXPECT_TRUE(dialog->message().contains("line 3, column 1")) << dialog->message().toStdString();
}

TEST_F(ImportRecord, WhatCannotBeReadIsSaidAndCanBeMended) {
    open(written("letter.txt", "Dear harbour master,\nthe light is out.\n"));
    EXPECT_TRUE(dialog->message().contains("no rows of numbers")) << dialog->message().toStdString();
    EXPECT_FALSE(dialog->measurement());
    open(folder.filePath("none.csv"));
    EXPECT_TRUE(dialog->message().contains("there is no such file")) << dialog->message().toStdString();
    QByteArray gap = "time,output\n";
    for (int k = 0; k < 200; ++k) gap += QByteArray::number(k) + "," + (k % 20 < 10 ? "5" : "0") + "\n";
    open(written("gap.csv", gap + "oops,1\n200,5\n"));
    EXPECT_TRUE(dialog->message().contains("line 202, column 1: \"oops\" is no number"))
        << dialog->message().toStdString();
    picture("fault-light");
}

TEST_F(ImportRecord, ReadingCanBeStoppedAndNeverBlocks) {
    QByteArray rows = "time,output\n";
    for (int k = 0; k < 1'500'000; ++k) rows += QByteArray::number(k) + (k / 5000 % 2 == 0 ? ",5\n" : ",0\n");
    const QString path = written("long.csv", rows);
    dialog = std::make_unique<RecordImportDialog>(path, Theme::of(Theme::Mode::light));
    settled = std::make_unique<QSignalSpy>(dialog.get(), &RecordImportDialog::settled);
    dialog->show();
    ASSERT_TRUE(waitFor(
        [&] { return part<QPushButton>("stop")->isVisible() && dialog->message().startsWith("Reading"); }));
    EXPECT_TRUE(part<QProgressBar>("progress")->isVisible());
    QTest::keyClick(dialog.get(), Qt::Key_Escape);
    EXPECT_TRUE(dialog->isVisible()); // the first Esc stops the reading only
    EXPECT_TRUE(dialog->message().contains("stopped"));
    EXPECT_FALSE(dialog->isBusy());
    settled->clear();
    part<QComboBox>("time unit")->setCurrentText("ms");
    waitSettled();
    ASSERT_TRUE(dialog->measurement());
    EXPECT_LE(shown().time_s.size(), circuit::maxRecordSamples);
    EXPECT_EQ(shown().switchings_s.size(), 299U);
    picture("long-light");
    QTest::keyClick(dialog.get(), Qt::Key_Escape);
    EXPECT_FALSE(dialog->isVisible());
}

TEST_F(ImportRecord, TheKeysGoThroughALongRecord) {
    QByteArray rows = "time,output\n";
    for (int k = 0; k < 5000; ++k) rows += QByteArray::number(k) + (k / 50 % 2 == 0 ? ",5\n" : ",0\n");
    open(written("many.csv", rows));
    auto* plot = part<widgets::RecordPlot>("record plot");
    const QCPRange first = plot->xAxis->range();
    EXPECT_EQ(first.lower, 0);
    EXPECT_NEAR(first.upper, 2050, 51); // 40 switchings of 50 s each
    QTest::keyClick(plot, Qt::Key_Right);
    EXPECT_NEAR(plot->xAxis->range().lower, first.size() / 4, 1e-6);
    QTest::keyClick(plot, Qt::Key_Plus);
    EXPECT_LT(plot->xAxis->range().size(), first.size());
    QTest::keyClick(plot, Qt::Key_Home);
    EXPECT_EQ(plot->xAxis->range(), QCPRange(0, 4999));
    QTest::keyClick(plot, Qt::Key_Minus); // there is no more
    EXPECT_EQ(plot->xAxis->range(), QCPRange(0, 4999));
}

TEST_F(ImportRecord, Pictures) {
    for (const bool dark : {false, true}) {
        const Theme& theme = Theme::of(dark ? Theme::Mode::dark : Theme::Mode::light);
        QApplication::setPalette(theme.palette());
        const QString end = dark ? "-dark" : "-light";
        open(record("mole-light"), theme.mode);
        picture("mole-light" + end);
        open(record("buoy-pair"), theme.mode);
        picture("buoy-pair" + end);
        dialog->resize(dialog->minimumSizeHint());
        picture("narrow" + end);
        EXPECT_LE(dialog->width(), 1024);
        EXPECT_LE(dialog->height(), 740);
    }
    QApplication::setPalette(Theme::of(Theme::Mode::light).palette());
}

class ImportInTheWindow : public test::WindowFixture {
  protected:
    void drop(const QString& path) {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(path)});
        QDragEnterEvent enter(QPoint(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window.get(), &enter);
        ASSERT_TRUE(enter.isAccepted());
        QDropEvent event(QPointF(50, 50), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(window.get(), &event);
    }
    /// Answers the dialog when it has read its file.
    void answerImport(bool accept) {
        auto* timer = new QTimer(window.get());
        QObject::connect(timer, &QTimer::timeout, window.get(), [timer, accept, this] {
            for (QWidget* top : QApplication::topLevelWidgets())
                if (auto* dialog = qobject_cast<RecordImportDialog*>(top); dialog && dialog->measurement()) {
                    timer->stop();
                    ++answered;
                    accept ? dialog->accept() : dialog->reject();
                }
        });
        timer->start(20);
    }
    int answered = 0;
};

TEST_F(ImportInTheWindow, ADroppedTableBecomesAMeasurementInOneStep) {
    open();
    answerImport(true);
    drop(record("mole-light"));
    ASSERT_TRUE(waitFor([&] { return circuit().measurements.size() == 1; }));
    EXPECT_EQ(circuit().measurements.front()->title, "mole-light");
    EXPECT_TRUE(window->windowTitle().contains("mole-light.blinkwright")); // the circuit is still the same
    undo().undo();
    EXPECT_TRUE(circuit().measurements.empty());
    undo().redo();
    answerImport(false);
    drop(record("buoy-pair"));
    ASSERT_TRUE(waitFor([&] { return answered == 2; }));
    EXPECT_EQ(circuit().measurements.size(), 1U);
}

TEST_F(ImportInTheWindow, TheMenuHasItWithAKeyOfItsOwn) {
    const QKeySequence keys = action("Import a record").shortcut();
    EXPECT_FALSE(keys.isEmpty());
    for (const QAction* other : window->findChildren<QAction*>())
        if (other != &action("Import a record")) {
            EXPECT_FALSE(other->shortcuts().contains(keys)) << other->text().toStdString();
        }
}

} // namespace
} // namespace blinkwright::app
