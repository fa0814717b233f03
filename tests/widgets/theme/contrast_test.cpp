// Contrast of all that is painted: WCAG 2.2, 1.4.3 (text, 4.5 to 1) and 1.4.11 (what is no text but has to be
// seen, 3 to 1). Text of what cannot be used is exempt by 1.4.3.
#include "tests/widgets/theme/texts_on_grounds.h"
#include "widgets/curves/curve_colours.h"
#include "widgets/findings/finding_row.h"
#include "widgets/hookup/lamp_bar.h"
#include "widgets/hookup/paint.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

#include <functional>

namespace blinkwright::widgets {

namespace {

constexpr double ofText = 4.5, ofThings = 3;

class Contrasts : public testing::TestWithParam<test::Look> {
  protected:
    const Theme& theme = GetParam().theme;
    void expect(double least, const char* what, const QColor& colour, const QColor& ground) const {
        EXPECT_GE(contrast(colour, ground), least)
            << what << ": " << colour.name().toStdString() << " on " << ground.name().toStdString();
    }
};

TEST_P(Contrasts, TextsOfEveryColourOnEveryGround) {
    for (const auto& [what, colour, ground] : test::paintedTexts(theme)) expect(ofText, what, colour, ground);
}

TEST_P(Contrasts, TextsOfTheControls) {
    for (const auto& [what, colour, ground] : test::controlTexts(theme)) expect(ofText, what, colour, ground);
}

TEST_P(Contrasts, CurvesMarksFramesOfTheFocusAndSymbols) {
    for (const QColor& ground : {theme.paper, theme.window}) {
        expect(ofThings, "frame of the focus", theme.accent, ground);
        expect(ofThings, "symbols and wires", theme.ink, ground);
        expect(ofThings, "icons", theme.ink, ground);
    }
    for (const QColor& curve : {theme.setA, theme.setB, theme.measured, theme.level, theme.moment})
        expect(ofThings, "a curve", curve, theme.paper);
    for (const QColor& curve : lampCurveColours(theme, {"red", "amber", "yellow", "green", "pure-green",
                                                        "blue", "white", "infrared", "red", "red"}))
        expect(ofThings, "a lamp's curve", curve, theme.paper);
    for (const QColor& curve : lampCurveColours(theme, theme.setB, 4))
        expect(ofThings, "a lamp's curve in Set B", curve, theme.paper);
    // What has the focus differs from what has not: the frame against what it is drawn over.
    expect(ofThings, "chosen rows", theme.palette().color(QPalette::Highlight), theme.paper);
}

INSTANTIATE_TEST_SUITE_P(Theme, Contrasts, testing::ValuesIn(test::allLooks()),
                         [](const auto& row) { return std::string(row.param.name); });

/// What is left when all colours are gone: where there is ink, and how much.
QImage shapeOf(const std::function<void(QPainter&)>& paint, const Theme& theme) {
    QImage image(48, 48, QImage::Format_RGB32);
    image.fill(theme.paper);
    QPainter painter(&image);
    paint(painter);
    painter.end();
    QImage shape(image.size(), QImage::Format_Mono);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            shape.setPixel(x, y, contrast(image.pixelColor(x, y), theme.paper) > 2 ? 1 : 0);
    return shape;
}

int differingPixels(const QImage& a, const QImage& b) {
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) count += a.pixelIndex(x, y) != b.pixelIndex(x, y);
    return count;
}

// WCAG 2.2, 1.4.1: colour is never the only difference.
TEST(WithoutColour, GradesOfFindingsDifferByFormAndWord) {
    const Theme& theme = Theme::of(Theme::Mode::light);
    std::vector<QImage> shapes;
    QStringList words;
    for (const auto severity : {study::Severity::fault, study::Severity::overstress, study::Severity::doubt,
                                study::Severity::caution, study::Severity::note}) {
        shapes.push_back(
            shapeOf([&](QPainter& painter) { paintSeverity(painter, QRectF(4, 4, 40, 40), severity, theme); },
                    theme));
        words << severityWord(severity);
    }
    EXPECT_EQ(words.removeDuplicates(), 0);
    for (std::size_t a = 0; a < shapes.size(); ++a)
        for (std::size_t b = 0; b < a; ++b)
            EXPECT_GT(differingPixels(shapes[a], shapes[b]), 100) << a << ", " << b;
}

} // namespace
} // namespace blinkwright::widgets
