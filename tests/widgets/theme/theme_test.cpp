#include "widgets/theme/theme.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace blinkwright::widgets {

namespace {

using Rgb = std::array<double, 3>;

/// sRGB to linear light (IEC 61966-2-1, from memory).
Rgb linear(const QColor& c) {
    const auto part = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return {part(c.redF()), part(c.greenF()), part(c.blueF())};
}

double luminance(const Rgb& c) {
    return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
}

/// Contrast ratio by WCAG 2.1, "contrast ratio".
double contrast(const QColor& a, const QColor& b) {
    const double x = luminance(linear(a)), y = luminance(linear(b));
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

// Machado, Oliveira & Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency",
// IEEE TVCG 15(6), 2009: the matrices for severity 1.0, on linear RGB; from memory (each row sums to 1, which
// is checked below).
using Matrix = std::array<Rgb, 3>;
constexpr Matrix protanopia{
    {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
constexpr Matrix deuteranopia{
    {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
constexpr Matrix normalSight{{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}};

Rgb seenWith(const Matrix& m, const Rgb& c) {
    Rgb seen{};
    for (std::size_t i = 0; i < 3; ++i)
        seen[i] = std::clamp(m[i][0] * c[0] + m[i][1] * c[1] + m[i][2] * c[2], 0.0, 1.0);
    return seen;
}

/// CIE 1976 L*a*b* of linear sRGB, D65 (from memory).
Rgb lab(const Rgb& c) {
    const double x = (0.4124 * c[0] + 0.3576 * c[1] + 0.1805 * c[2]) / 0.9505;
    const double y = luminance(c);
    const double z = (0.0193 * c[0] + 0.1192 * c[1] + 0.9505 * c[2]) / 1.089;
    const auto f = [](double t) { return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116; };
    return {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
}

/// CIE 1976 colour difference as seen with a kind of sight. About 2 is just seen side by side; thin curves
/// want far more.
double difference(const QColor& a, const QColor& b, const Matrix& sight) {
    const Rgb x = lab(seenWith(sight, linear(a))), y = lab(seenWith(sight, linear(b)));
    return std::hypot(x[0] - y[0], x[1] - y[1], x[2] - y[2]);
}
constexpr double plainlyDifferent = 35;

class Themes : public testing::TestWithParam<Theme::Mode> {
  protected:
    const Theme& theme = Theme::of(GetParam());
};

TEST_P(Themes, TextIsLegibleOnPaperAndWindow) {
    for (const QColor& ground : {theme.paper, theme.window})
        for (const QColor& text : {theme.ink, theme.quietInk, theme.fault, theme.overstress, theme.doubt,
                                   theme.caution, theme.note, theme.accent, theme.moment})
            EXPECT_GE(contrast(text, ground), 4.5)
                << text.name().toStdString() << " on " << ground.name().toStdString();
}

TEST_P(Themes, SetsStandOutFromThePaper) {
    EXPECT_GE(contrast(theme.setA, theme.paper), 3);
    EXPECT_GE(contrast(theme.setB, theme.paper), 3);
    EXPECT_GE(contrast(theme.measured, theme.paper), 3);
    EXPECT_GE(contrast(theme.level, theme.paper), 3);
}

TEST_P(Themes, SetsAreToldApartWithTheCommonColourBlindnesses) {
    for (const Matrix& sight : {normalSight, protanopia, deuteranopia}) {
        EXPECT_GT(difference(theme.setA, theme.setB, sight), plainlyDifferent);
        EXPECT_GT(difference(theme.setA, theme.measured, sight), plainlyDifferent);
        EXPECT_GT(difference(theme.setB, theme.measured, sight), plainlyDifferent);
    }
}

TEST_P(Themes, EveryLampColourIsSeenOnThePaper) {
    for (const char* colour :
         {"red", "amber", "yellow", "green", "pure-green", "blue", "white", "infrared"}) {
        const QColor lamp = theme.lamp(QString::fromLatin1(colour));
        EXPECT_NE(lamp, theme.ink) << colour;
        EXPECT_GE(contrast(lamp, theme.paper), 2) << colour;
    }
    EXPECT_EQ(theme.lamp(QStringLiteral("plaid")), theme.ink);
}

TEST_P(Themes, AnEchoIsOpaqueAndPalerThanItsCurve) {
    for (const QColor& curve : {theme.setA, theme.setB}) {
        const QColor echo = theme.echo(curve);
        EXPECT_EQ(echo.alpha(), 255);
        EXPECT_LT(contrast(echo, theme.paper), contrast(curve, theme.paper) / 1.5);
        EXPECT_GT(contrast(echo, theme.paper), 1.25);
    }
}

TEST_P(Themes, ControlsGetLegibleTextInEveryRole) {
    const QPalette p = theme.palette();
    for (const auto group : {QPalette::Active, QPalette::Inactive}) {
        const auto check = [&](QPalette::ColorRole text, QPalette::ColorRole ground) {
            EXPECT_GE(contrast(p.color(group, text), p.color(group, ground)), 4.5)
                << text << " on " << ground;
        };
        check(QPalette::WindowText, QPalette::Window);
        check(QPalette::Text, QPalette::Base);
        check(QPalette::Text, QPalette::AlternateBase);
        check(QPalette::ButtonText, QPalette::Button);
        check(QPalette::ToolTipText, QPalette::ToolTipBase);
        check(QPalette::HighlightedText, QPalette::Highlight);
        check(QPalette::PlaceholderText, QPalette::Base);
        check(QPalette::Link, QPalette::Base);
        check(QPalette::Link, QPalette::Window);
    }
}

INSTANTIATE_TEST_SUITE_P(Theme, Themes, testing::Values(Theme::Mode::light, Theme::Mode::dark),
                         [](const auto& row) { return row.param == Theme::Mode::dark ? "dark" : "light"; });

TEST(Theme, SetsHaveTheirAgreedColoursOnWhite) {
    EXPECT_EQ(Theme::of(Theme::Mode::light).setA, QColor(0x3B, 0x2F, 0x8F));
    EXPECT_EQ(Theme::of(Theme::Mode::light).setB, QColor(0xA6, 0x5E, 0x00));
}

TEST(Theme, TheColourBlindnessCheckFindsRedBesideOliveAlike) {
    for (const Matrix& m : {protanopia, deuteranopia})
        for (const Rgb& row : m) EXPECT_NEAR(row[0] + row[1] + row[2], 1, 1e-5);
    const QColor red(0xC8, 0x4A, 0x3C), olive(0x80, 0x70, 0x38);
    EXPECT_GT(difference(red, olive, normalSight), plainlyDifferent);
    EXPECT_LT(difference(red, olive, deuteranopia), plainlyDifferent);
}

} // namespace

} // namespace blinkwright::widgets
