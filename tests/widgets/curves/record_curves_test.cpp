// Records of the real board over the curves.
#include "tests/widgets/formula_curves.h"
#include "tests/widgets/pictures.h"
#include "widgets/curves/curves_export.h"
#include "widgets/curves/curves_view.h"
#include "widgets/curves/strip_plot.h"

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>
#include <gtest/gtest.h>
#include <random>

using namespace blinkwright;
using namespace blinkwright::widgets;

namespace {

/// The formula's blinker as an instrument would have seen it: evenly sampled, with noise.
RecordCurve recorded(double high_s, int samples, double noise_V, double shift_s) {
    const auto curves = test::formulaCurves({.high_s = high_s, .cycles = 5});
    std::mt19937 random(3);
    std::normal_distribution<double> noise(0, noise_V > 0 ? noise_V : 1);
    circuit::Record record;
    record.traces = {{circuit::TraceOf::output, {}}, {circuit::TraceOf::capacitor, {}}};
    for (int k = 0; k < samples; ++k) {
        const double t = curves->time_s.back() * k / samples;
        const engine::Moment moment = engine::momentOf(*curves, t);
        record.time_s.push_back(t);
        record.traces[0].values_V.push_back(moment.output_V + (noise_V > 0 ? noise(random) : 0));
        record.traces[1].values_V.push_back(moment.capacitor_V + (noise_V > 0 ? noise(random) : 0));
    }
    circuit::Measurement measurement;
    measurement.what = std::move(record);
    return {std::make_shared<const circuit::Measurement>(std::move(measurement)), shift_s};
}

TEST(RecordPicture, LiesMovedByItsShiftAndReachesTheEdges) {
    const auto curves = test::formulaCurves({});
    const RecordCurves records{recorded(0.54, 4000, 0, 0.25)};
    const StripPicture p =
        stripPicture({curves.get(), nullptr, nullptr, false, &records}, {0, 3}, 1000, {200, 200, 200});
    ASSERT_EQ(p.records.size(), 1u);
    const StripPoints& points = p.records[0].capacitor;
    ASSERT_GT(points.size(), 10);
    EXPECT_NEAR(points.first().key, 0.25, 1e-9); // it begins there
    EXPECT_GE(points.last().key, 3);
    // A point of the drawn line is a sample of the record, at its time and the shift.
    const circuit::Record& record = records[0].record();
    for (const QCPGraphData& point : points) {
        const auto at = std::ranges::lower_bound(record.time_s, point.key - 0.25 - 1e-12);
        ASSERT_NE(at, record.time_s.end());
        EXPECT_NEAR(*at, point.key - 0.25, 1e-9);
        EXPECT_EQ(record.traces[1].values_V[static_cast<std::size_t>(at - record.time_s.begin())],
                  point.value);
    }
}

TEST(RecordPicture, IsThinnedToItsPixelColumnsHoweverNoisy) {
    const auto curves = test::formulaCurves({});
    const RecordCurves records{recorded(0.54, 20'000, 0.05, 0)};
    const StripPicture p =
        stripPicture({curves.get(), nullptr, nullptr, false, &records}, {0, 5}, 800, {200, 200, 200});
    EXPECT_LE(p.records[0].output.size(), 4 * 800 + 2);
    EXPECT_GT(p.records[0].output.size(), 400); // the noise is seen
    EXPECT_LE(p.curves.output.size(), 4 * 800); // and costs the curves nothing
}

TEST(RecordPicture, IsTakenOverWhileNothingOfItChanges) {
    const auto before = test::formulaCurves({.high_s = 0.54});
    const auto after = test::formulaCurves({.high_s = 0.55});
    const RecordCurves records{recorded(0.54, 4000, 0.02, 0)};
    const auto picture = [&](const engine::Curves& c, const StripPicture* kept) {
        return stripPicture({&c, nullptr, nullptr, false, &records}, {0, 5}, 800, {200, 200, 200}, kept);
    };
    const StripPicture first = picture(*before, nullptr), second = picture(*after, &first);
    EXPECT_TRUE(second.records[0].output.isSharedWith(first.records[0].output));
    EXPECT_TRUE(second.records[0].capacitor.isSharedWith(first.records[0].capacitor));
}

TEST(RecordPicture, OvershootOfTheRealBoardWidensItsStrip) {
    const auto curves = test::formulaCurves({});
    RecordCurve high = recorded(0.54, 400, 0, 0);
    circuit::Measurement measurement = *high.measurement;
    std::get<circuit::Record>(measurement.what).traces[0].values_V[7] = 7.4;
    const RecordCurves records{{std::make_shared<const circuit::Measurement>(measurement), 0}};
    const StripPicture p =
        stripPicture({curves.get(), nullptr, nullptr, false, &records}, {0, 5}, 800, {200, 200, 200});
    EXPECT_GE(p.ranges[0].end, 7.4);
}

class RecordsOverCurves : public testing::Test {
  protected:
    void SetUp() override {
        view.resize(1000, 640);
        view.show();
        view.setCurves(test::formulaCurves({}));
        QApplication::processEvents();
    }
    StripPlot* plot() { return view.findChild<StripPlot*>(); }
    int pixels(const QColor& colour, Strip strip) {
        QApplication::processEvents();
        const QImage image = plot()->grab().toImage();
        const QRect rect = plot()->stripRect(strip);
        int found = 0;
        for (int y = rect.top(); y <= rect.bottom(); ++y)
            for (int x = rect.left(); x <= rect.right(); ++x) found += image.pixelColor(x, y) == colour;
        return found;
    }
    CurvesView view;
};

TEST_F(RecordsOverCurves, AreDrawnInTheColourOfMeasurementsInBothThemes) {
    for (const auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        const Theme& theme = Theme::of(mode);
        view.setTheme(theme);
        view.setRecords({});
        EXPECT_EQ(pixels(theme.measured, Strip::output), 0);
        EXPECT_FALSE(plot()->hasRecord(Strip::output));
        view.setRecords({recorded(0.5, 3000, 0.03, 0)});
        EXPECT_GT(pixels(theme.measured, Strip::output), 200);
        EXPECT_GT(pixels(theme.measured, Strip::capacitor), 200);
        EXPECT_TRUE(plot()->hasRecord(Strip::output) && plot()->hasRecord(Strip::capacitor));
        EXPECT_EQ(pixels(theme.measured, Strip::lamps), 0);
        EXPECT_TRUE(plot()->accessibleDescription().contains("measured record"));
    }
}

TEST_F(RecordsOverCurves, ThinPensForNoiseAndFullOnesForAFewSamples) {
    const auto isSmooth = [&] {
        QApplication::processEvents();
        bool smooth = true;
        for (int k = 0; k < plot()->graphCount(); ++k)
            if (plot()->graph(k)->layer()->name() == "records")
                smooth = smooth && plot()->graph(k)->antialiased();
        return smooth;
    };
    view.setRecords({recorded(0.5, 400, 0.03, 0)});
    EXPECT_TRUE(isSmooth());
    view.setRecords({recorded(0.5, 20'000, 0.05, 0)});
    EXPECT_FALSE(isSmooth());
    QApplication::processEvents();
    for (int k = 0; k < plot()->graphCount(); ++k) { // the curves themselves stay as they are
        if (plot()->graph(k)->layer()->name() == "main") {
            EXPECT_TRUE(plot()->graph(k)->antialiased());
        }
    }
}

TEST_F(RecordsOverCurves, TheTimeAxisStaysThatOfTheCurves) {
    const Span before = plot()->visibleSpan();
    view.setRecords({recorded(0.9, 3000, 0, 0)}); // longer than what is shown
    QApplication::processEvents();
    EXPECT_EQ(plot()->visibleSpan(), before);
}

TEST_F(RecordsOverCurves, LooksAsItShould) {
    view.setRecords({recorded(0.5, 6000, 0.03, 0)});
    test::savePictures(view, QStringLiteral("curves-measured"), {900, 560});
    view.setSecond(test::formulaCurves({.high_s = 0.35}), "Set B", "B");
    test::savePictures(view, QStringLiteral("curves-measured-two-sets"), {720, 480});
}

TEST(RecordExport, IsNamedInTheKeyAndBlackOnThePage) {
    QTemporaryDir dir;
    const auto curves = test::formulaCurves({});
    PageCurves drawn(*curves);
    const auto text = [&] {
        const QString path = dir.filePath("m.svg");
        EXPECT_TRUE(exportCurves(drawn, {"Mole light", "R1 10 kΩ"}, PageFormat::svg, path).ok());
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return QString::fromUtf8(file.readAll());
    };
    const QString without = text();
    EXPECT_FALSE(without.contains("Measured"));
    drawn.records = {recorded(0.5, 3000, 0.02, 0)};
    const QString with = text();
    EXPECT_TRUE(with.contains("Measured") && with.contains("Set A"));
    EXPECT_GT(with.size(), without.size() + 5000); // its lines are in it
    EXPECT_TRUE(exportCurves(drawn, {"Mole light", "R1 10 kΩ"}, PageFormat::png,
                             QStringLiteral(BLINKWRIGHT_PICTURES "/export-measured.png"))
                    .ok());
}

} // namespace
