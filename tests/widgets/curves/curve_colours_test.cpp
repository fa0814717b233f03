#include "widgets/curves/curve_colours.h"

#include <gtest/gtest.h>

using namespace blinkwright::widgets;

namespace {

const std::vector<std::string> sheets{"red",        "amber", "yellow", "green",
                                      "pure-green", "blue",  "white",  "infrared"};

// WCAG 2.1: black on white is 21 to 1; #777777 on white is 4.48 to 1 (the grey just short of 4.5).
TEST(Contrast, MeetsTheWellKnownRatios) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(QColor("#777777"), Qt::white), 4.48, 0.01);
}

TEST(LampCurves, AreLegibleOnThePaperInBothThemes) {
    for (auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        const Theme& theme = Theme::of(mode);
        std::vector<std::string> many;
        for (int k = 0; k < 4; ++k) many.insert(many.end(), sheets.begin(), sheets.end());
        const std::vector<QColor> colours = lampCurveColours(theme, many);
        for (std::size_t k = 0; k < many.size(); ++k)
            EXPECT_GE(contrast(colours[k], theme.paper), 4.5) << many[k] << ", number " << k;
    }
}

TEST(LampCurves, OfOneColourDiffer) {
    for (auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        const Theme& theme = Theme::of(mode);
        for (const std::string& name : sheets) {
            const std::vector<QColor> c = lampCurveColours(theme, {name, name, name});
            for (auto [a, b] : {std::pair{0, 1}, {0, 2}, {1, 2}})
                EXPECT_GE(contrast(c[static_cast<std::size_t>(a)], c[static_cast<std::size_t>(b)]), 1.3)
                    << name << a << b;
        }
    }
}

TEST(LampCurves, KeepTheHueOfTheLamp) {
    const Theme& theme = Theme::of(Theme::Mode::light);
    const QColor red = lampCurveColours(theme, {"red"}).front();
    EXPECT_NEAR(red.hslHueF(), theme.lamp("red").hslHueF(), 0.02);
}

} // namespace
