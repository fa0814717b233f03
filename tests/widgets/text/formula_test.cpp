#include "widgets/text/formula_layout.h"

#include <QFont>
#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright::widgets::formula;

QFont fontOf(int pixels) {
    QFont font;
    font.setPixelSize(pixels);
    return font;
}

TEST(Formulas, AreReadOnOneLineWithBracketsWhereTheyAreNeeded) {
    EXPECT_EQ(plainText(row({designator("R12"), sign("+"), designator("R2")})), "R12 + R2");
    EXPECT_EQ(plainText(fraction(word("1"), symbol("T"))), "1/T");
    EXPECT_EQ(plainText(fraction(row({symbol("a"), sign("+"), symbol("b")}), symbol("c"))), "(a + b)/c");
}

TEST(Formulas, KeepTheirStructureInMathMl) {
    EXPECT_EQ(mathMl(fraction(subscript("t", "H"), symbol("T"))),
              "<mfrac><msub><mi>t</mi><mtext>H</mtext></msub><mi>T</mi></mfrac>");
    EXPECT_EQ(mathMl(word("a < b & c")), "<mtext>a &lt; b &amp; c</mtext>");
}

TEST(Formulas, AFractionReachesAboveAndBelowItsLine) {
    const QFont font = fontOf(13);
    const FormulaBox letter = measured(symbol("T"), font),
                     both = measured(fraction(word("1"), symbol("T")), font);
    EXPECT_GT(both.ascent, letter.ascent + letter.descent / 2);
    EXPECT_GT(both.descent, letter.descent + letter.ascent / 3);
    EXPECT_GE(both.width, letter.width);
}

TEST(Formulas, TheInkStaysInTheRoomThatWasMeasured) {
    const QFont font = fontOf(40);
    const Formula f = row({subscript("t", "H"), sign("="),
                           fraction(row({symbol("R"), sign("+"), designator("R2")}), symbol("U"))});
    const FormulaBox box = measured(f, font);
    constexpr int edge = 20;
    QImage image(static_cast<int>(box.width) + 2 * edge,
                 static_cast<int>(box.ascent + box.descent) + 2 * edge, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setPen(Qt::black);
    paintFormula(painter, f, font, {edge, edge + box.ascent});
    painter.end();
    bool inside = false;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            if (image.pixel(x, y) == qRgb(255, 255, 255)) continue;
            const bool in = x >= edge - 3 && x <= edge + box.width + 3 && y >= edge - 1 &&
                            y <= edge + box.ascent + box.descent + 1;
            ASSERT_TRUE(in) << x << " " << y;
            inside = true;
        }
    EXPECT_TRUE(inside);
}

} // namespace
