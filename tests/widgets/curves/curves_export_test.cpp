#include "places.h"
#include "widgets/curves/curves_export.h"

#include "tests/widgets/formula_curves.h"
#include "widgets/theme/theme.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <algorithm>
#include <csignal>
#include <gtest/gtest.h>
#include <sys/resource.h>

using namespace blinkwright;
using namespace blinkwright::widgets;

namespace {

const CurvesPage page{
    QStringLiteral("Harbour mole light"),
    QString::fromUtf8("BT1 6 V, U1 555 timer, bipolar, R1 10 kΩ, R2 68 kΩ, C1 10 µF, C2 10 nF, "
                      "C3 100 µF, R3 270 Ω, D1 red lamp, and some more so that the line must wrap"),
    180, 150, 300};

QByteArray contents(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class CurvesExport : public testing::Test {
  protected:
    QString path(const char* name) { return dir.filePath(QLatin1String(name)); }
    QTemporaryDir dir;
    std::shared_ptr<engine::Curves> curves = test::formulaCurves({.pair = true});
};

TEST_F(CurvesExport, WritesAPngOf300DotsToTheInchOnWhite) {
    ASSERT_TRUE(exportCurves(*curves, page, PageFormat::png, path("a.png")).ok());
    const QImage image(path("a.png"));
    EXPECT_NEAR(image.width(), 180 / 25.4 * 300, 3);
    EXPECT_NEAR(image.height(), 150 / 25.4 * 300, 3);
    EXPECT_NEAR(image.dotsPerMeterX() * 0.0254, 300, 0.1);
    EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white));
    EXPECT_EQ(image.pixelColor(image.width() - 3, image.height() / 2), QColor(Qt::white));
    QDir().mkpath(QStringLiteral(BLINKWRIGHT_PICTURES));
    image.save(QStringLiteral(BLINKWRIGHT_PICTURES "/export.png"));
}

TEST_F(CurvesExport, ShowsBothSwitchingLevelsOverTheGrid) {
    const QImage image = curvesPicture(*curves, page);
    const QRgb level = Theme::of(Theme::Mode::light).level.rgb();
    int lines = 0;
    bool within = false;
    for (int y = 0; y < image.height(); ++y) {
        const auto* row = reinterpret_cast<const QRgb*>(image.constScanLine(y));
        const bool line = std::count(row, row + image.width(), level) > image.width() / 2;
        if (line && !within) ++lines;
        within = line;
    }
    EXPECT_EQ(lines, 2);
}

TEST_F(CurvesExport, NamesBothSetsWhereTwoAreDrawnAndOneWhereItIsAlone) {
    const auto other = test::formulaCurves({.high_s = 0.3, .pair = true});
    const auto texts = [&](const PageCurves& drawn) {
        EXPECT_TRUE(exportCurves(drawn, page, PageFormat::svg, path("b.svg")).ok());
        return QString::fromUtf8(contents(path("b.svg")));
    };
    const QString alone = texts(*curves);
    EXPECT_FALSE(alone.contains("Set A") || alone.contains("Set B"));
    const QString both = texts({curves.get(), other.get(), "Set B", "B"});
    for (const char* text : {"Set A", "Set B", "D1 in A", "D2 in B"})
        EXPECT_TRUE(both.contains(text)) << text;
    const QString second = texts({nullptr, other.get(), "Set B", "B"});
    EXPECT_TRUE(second.contains("Set B") && second.contains("D1 in B"));
    EXPECT_FALSE(second.contains("Set A") || second.contains("D1 in A"));
    const QString ochre = Theme::of(Theme::Mode::light).setB.name();
    EXPECT_TRUE(second.contains(ochre, Qt::CaseInsensitive)) << "in its own colour also when it is alone";
    EXPECT_FALSE(alone.contains(ochre, Qt::CaseInsensitive));
    ASSERT_TRUE(exportCurves({curves.get(), other.get(), "Set B", "B"}, page, PageFormat::png,
                             QStringLiteral(BLINKWRIGHT_PICTURES "/export-two-sets.png"))
                    .ok());
}

TEST_F(CurvesExport, WritesAnSvgWithItsTextsAsTextInANamedFont) {
    ASSERT_TRUE(exportCurves(*curves, page, PageFormat::svg, path("a.svg")).ok());
    const QString svg = QString::fromUtf8(contents(path("a.svg")));
    for (const char* text : {"Harbour mole light", "R2 68 kΩ", "Output, pin 3 (V)", "Timing capacitor (V)",
                             "Lamp current (mA)", "Time (s)", "D1", "D2"})
        EXPECT_TRUE(svg.contains(QString::fromUtf8(text))) << text;
    EXPECT_TRUE(svg.contains(QStringLiteral("font-family=\"")));
    EXPECT_FALSE(svg.contains(QStringLiteral("<image"))) << "curves must stay vectors";
    QSvgRenderer renderer(path("a.svg"));
    ASSERT_TRUE(renderer.isValid());
    QImage image(renderer.defaultSize(), QImage::Format_RGB32);
    image.fill(Qt::red);
    QPainter painter(&image);
    renderer.render(&painter);
    painter.end();
    EXPECT_EQ(image.pixelColor(1, 1), QColor(Qt::white));
    image.save(QStringLiteral(BLINKWRIGHT_PICTURES "/export-svg.png"));
}

TEST_F(CurvesExport, WritesAPdfWithoutPictures) {
    ASSERT_TRUE(exportCurves(*curves, page, PageFormat::pdf, path("a.pdf")).ok());
    const QByteArray pdf = contents(path("a.pdf"));
    EXPECT_TRUE(pdf.startsWith("%PDF-"));
    EXPECT_TRUE(pdf.contains("/FontFile")) << "fonts are embedded";
    EXPECT_FALSE(pdf.contains("/Subtype /Image"));
    // 180 mm by 150 mm in points, to a point.
    EXPECT_TRUE(pdf.contains("/MediaBox [0 0 510")) << pdf.mid(pdf.indexOf("/MediaBox"), 60).toStdString();
}

TEST_F(CurvesExport, CopiesTheSamePictureThatItWrites) {
    ASSERT_TRUE(exportCurves(*curves, page, PageFormat::png, path("a.png")).ok());
    const QImage copy = curvesPicture(*curves, page);
    EXPECT_EQ(QImage(path("a.png")).convertToFormat(QImage::Format_RGB32),
              copy.convertToFormat(QImage::Format_RGB32));
}

TEST_F(CurvesExport, SaysWhichFileCouldNotBeWrittenAndSparesWhatIsThere) {
    const QString bad = path("no-such-folder/a.png");
    const Result<void> failed = exportCurves(*curves, page, PageFormat::png, bad);
    ASSERT_FALSE(failed.ok());
    EXPECT_EQ(failed.fault().place, bad.toStdString());
    EXPECT_NE(failed.fault().text.find("cannot be written"), std::string::npos);
}

TEST_F(CurvesExport, AFullDiskIsSaidHoweverSmallThePictureAndLeavesTheOldOneWhole) {
    CurvesPage small = page;
    small.width_mm = small.height_mm = 40;
    small.dpi = 72;
    ASSERT_TRUE(exportCurves(*curves, small, PageFormat::png, path("a.png")));
    const QByteArray before = contents(path("a.png"));
    ASSERT_GT(before.size(), 200);
    ASSERT_LT(before.size(), 16384) << "it has room in the buffer of a file, which is written last";
    // No file may grow past 100 bytes: the same to the writer as a disk that is full.
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit usual{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &usual), 0);
    const rlimit full{100, usual.rlim_max};
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &full), 0);
    small.title = QStringLiteral("Another one");
    const Result<void> done = exportCurves(*curves, small, PageFormat::png, path("a.png"));
    setrlimit(RLIMIT_FSIZE, &usual);
    std::signal(SIGXFSZ, SIG_DFL);
    EXPECT_FALSE(done.ok());
    EXPECT_EQ(contents(path("a.png")), before);
}

TEST_F(CurvesExport, ExportsAnEmptyRunAsEmptyStrips) {
    EXPECT_TRUE(exportCurves({}, page, PageFormat::svg, path("a.svg")).ok());
    EXPECT_TRUE(QSvgRenderer(path("a.svg")).isValid());
}

TEST_F(CurvesExport, HoldsOnlyTheStripsThatAreWishedAndTheTimeAxisUnderTheLast) {
    CurvesPage some = page;
    some.style.strips = {false, true, false};
    ASSERT_TRUE(exportCurves(*curves, some, PageFormat::svg, path("one.svg")));
    const QString text = QString::fromUtf8(contents(path("one.svg")));
    EXPECT_TRUE(text.contains("Timing capacitor"));
    EXPECT_TRUE(text.contains("Time ("));
    EXPECT_FALSE(text.contains("Output, pin 3"));
    EXPECT_FALSE(text.contains("Lamp current"));
    EXPECT_EQ(text.count(QRegularExpression(">0(\\.0)?<")), 2)
        << "a zero on each of two axes, and no more axes";
    const QImage one = curvesPicture(*curves, some);
    QDir().mkpath(QStringLiteral(BLINKWRIGHT_PICTURES));
    one.save(QStringLiteral(BLINKWRIGHT_PICTURES "/export-one-strip.png"));
    some.style.strips = {true, false, true};
    curvesPicture(*curves, some).save(QStringLiteral(BLINKWRIGHT_PICTURES "/export-two-strips.png"));
}

TEST_F(CurvesExport, GoesWithoutItsLegend) {
    CurvesPage bare = page;
    bare.style.legend = false;
    ASSERT_TRUE(exportCurves(*curves, bare, PageFormat::svg, path("bare.svg")));
    const QString text = QString::fromUtf8(contents(path("bare.svg")));
    EXPECT_TRUE(text.contains("Timing capacitor"));
    EXPECT_FALSE(text.contains("switching levels"));
}

TEST_F(CurvesExport, InGreysHasNoColourAndDashesSetB) {
    const auto other = test::formulaCurves({.high_s = 0.3, .pair = true});
    CurvesPage grey = page;
    grey.moment_s = 0.3 * curves->time_s.back();
    grey.style.greys = true;
    grey.dpi = 150;
    const PageCurves both{curves.get(), other.get(), "Set B", "B"};
    const QImage image = curvesPicture(both, grey);
    for (int y = 0; y < image.height(); y += 2)
        for (int x = 0; x < image.width(); x += 2) {
            const QColor c = image.pixelColor(x, y);
            ASSERT_LT(c.hsvSaturation(), 16) << x << ' ' << y << ' ' << c.name().toStdString();
        }
    image.save(QStringLiteral(BLINKWRIGHT_PICTURES "/export-greys.png"));
    ASSERT_TRUE(exportCurves(both, grey, PageFormat::svg, path("grey.svg")));
    EXPECT_TRUE(contents(path("grey.svg")).contains("stroke-dasharray"));
    grey.style.greys = false;
    ASSERT_TRUE(exportCurves(both, grey, PageFormat::svg, path("colour.svg")));
    EXPECT_FALSE(contents(path("colour.svg")).contains("stroke-dasharray"));
}

TEST_F(CurvesExport, ShowsOnlyASpanOfTimeAndTheValuesAtAMoment) {
    CurvesPage part = page;
    const double end = curves->time_s.back();
    part.span = Span{0.5 * end, 0.75 * end};
    part.moment_s = 0.6 * end;
    ASSERT_TRUE(exportCurves(*curves, part, PageFormat::svg, path("part.svg")));
    const QString text = QString::fromUtf8(contents(path("part.svg")));
    const engine::Moment at = engine::momentOf(*curves, 0.6 * end);
    EXPECT_TRUE(text.contains(QString::number(at.capacitor_V, 'f', 2).left(3))) << at.capacitor_V;
    // The same moment on the page of the whole run: what differs is the time that is shown.
    CurvesPage whole = part;
    whole.span.reset();
    ASSERT_TRUE(exportCurves(*curves, whole, PageFormat::svg, path("whole.svg")));
    EXPECT_NE(text, QString::fromUtf8(contents(path("whole.svg"))));
    CurvesPage all = part;
    all.span = Span{curves->time_s.front(), end};
    ASSERT_TRUE(exportCurves(*curves, all, PageFormat::svg, path("all.svg")));
    EXPECT_EQ(contents(path("all.svg")), contents(path("whole.svg")));
    curvesPicture(*curves, part).save(QStringLiteral(BLINKWRIGHT_PICTURES "/export-moment.png"));
}

TEST_F(CurvesExport, TakesTheSizeOfItsFont) {
    CurvesPage large = page;
    large.fontPoints = 14;
    ASSERT_TRUE(exportCurves(*curves, large, PageFormat::svg, path("large.svg")));
    ASSERT_TRUE(exportCurves(*curves, page, PageFormat::svg, path("usual.svg")));
    const auto sizes = [&](const char* name) { return QString::fromUtf8(contents(path(name))); };
    // 9 points are 12 layout pixels of 96 to the inch, 14 points are 19.
    EXPECT_TRUE(sizes("usual.svg").contains("font-size=\"12\""));
    EXPECT_TRUE(sizes("large.svg").contains("font-size=\"19\""));
}

} // namespace
