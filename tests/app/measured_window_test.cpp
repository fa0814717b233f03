// What was measured, in the window: beside the readings, over the curves, in exports.
#include "tests/app/window_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/readings/readings_view.h"
#include "widgets/theme/theme.h"

#include <QFile>
#include <QTableView>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using widgets::Strip;

class MeasuredInTheWindow : public WindowFixture {
  protected:
    widgets::StripPlot& plot() { return *window->curves().findChild<widgets::StripPlot*>(); }
    bool hasRecord(Strip strip = Strip::output) {
        QTest::qWait(30);
        return plot().hasRecord(strip);
    }
    /// The record's first drawn point: where its time 0 stands.
    double recordBegin() {
        QTest::qWait(30);
        for (int k = 0; k < plot().graphCount(); ++k)
            if (plot().graph(k)->layer()->name() == "records" && !plot().graph(k)->data()->isEmpty())
                return plot().graph(k)->data()->constBegin()->key;
        return -1e9;
    }
    QStringList heads() {
        auto* table = window->readings().findChild<QTableView*>();
        QStringList names;
        for (int c = 0; c < table->model()->columnCount(); ++c)
            if (!table->isColumnHidden(c))
                names << table->model()->headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
        return names;
    }
    void useAll(bool on) {
        circuit::Measurements list;
        for (const auto& one : circuit().measurements) {
            circuit::Measurement copy = *one;
            copy.used = on;
            list.push_back(std::make_shared<const circuit::Measurement>(std::move(copy)));
        }
        ASSERT_TRUE(window->document().apply({circuit::edits::SetMeasurements{list, ""}}));
    }
};

TEST_F(MeasuredInTheWindow, TheReadingsHaveTheColumnWhileSomethingIsUsed) {
    open("mole-light");
    EXPECT_FALSE(heads().contains("Measured"));
    open("mole-light-measured");
    EXPECT_TRUE(heads().contains("Measured"));
    EXPECT_TRUE(window->readings().asText().contains("Measured − A"));
    useAll(false);
    EXPECT_FALSE(heads().contains("Measured"));
    EXPECT_FALSE(window->readings().asText().contains("Measured − A"));
    undo().undo();
    EXPECT_TRUE(heads().contains("Measured"));
    open("mole-light");
    EXPECT_FALSE(heads().contains("Measured"));
}

TEST_F(MeasuredInTheWindow, ARunningRecordBeginsItsFirstFlashWithTheCurves) {
    open("mole-light-measured");
    ASSERT_TRUE(hasRecord(Strip::output) && hasRecord(Strip::capacitor));
    const auto& record = std::get<circuit::Record>(circuit().measurements.back()->what);
    ASSERT_TRUE(record.firstRises);
    const auto& timer = window->live().shown()->readings.timers.front();
    // From power-on the output is high first; its first rise is the second switching.
    EXPECT_NEAR(recordBegin(), timer.switchings_s[1] - record.switchings_s[0], 2e-3);
    picture("window-measured-light");

    action("Curves when settled").trigger();
    ASSERT_TRUE(waitFor([&] {
        const auto study = window->live().shown();
        return study && !study->readings.timers.front().firstHigh_s;
    }));
    QTest::qWait(30);
    // Settled curves begin with the rise: what the record has before it is cut off, but for one point.
    EXPECT_LE(recordBegin(), 0);
    EXPECT_GT(recordBegin(), -0.02);
}

TEST_F(MeasuredInTheWindow, AMeasurementAsksForNoNewRun) {
    open("mole-light-measured");
    const auto before = window->live().shown();
    useAll(false);
    QTest::qWait(60);
    EXPECT_FALSE(window->live().isBusy());
    EXPECT_EQ(window->live().shown(), before);
}

TEST_F(MeasuredInTheWindow, TheMenuHidesRecordsAndRemembersIt) {
    open("mole-light");
    EXPECT_FALSE(action("Measured records").isEnabled());
    open("mole-light-measured");
    ASSERT_TRUE(action("Measured records").isEnabled());
    EXPECT_TRUE(action("Measured records").isChecked());
    action("Measured records").trigger();
    EXPECT_FALSE(hasRecord());
    start();
    open("mole-light-measured");
    EXPECT_FALSE(hasRecord());
    EXPECT_FALSE(action("Measured records").isChecked());
    action("Measured records").trigger();
    EXPECT_TRUE(hasRecord());
}

TEST_F(MeasuredInTheWindow, PicturesHoldTheRecordsAndTablesDoNot) {
    open("mole-light-measured");
    const auto bytes = [&](const char* name) {
        const QString path = inFolder(name);
        EXPECT_TRUE(window->exportTo(path));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    const QByteArray with = bytes("a.svg"), table = bytes("a.csv");
    EXPECT_TRUE(with.contains("Measured"));
    action("Measured records").trigger();
    EXPECT_FALSE(bytes("b.svg").contains("Measured"));
    EXPECT_EQ(bytes("b.csv"), table);
}

class MeasuredInTheDark : public MeasuredInTheWindow {
  protected:
    MeasuredInTheDark() { window->appearance().choose(app::Looks::dark); }
};

TEST_F(MeasuredInTheDark, LooksAsItShould) {
    open("mole-light-measured");
    ASSERT_TRUE(hasRecord());
    picture("window-measured-dark");
}

} // namespace
