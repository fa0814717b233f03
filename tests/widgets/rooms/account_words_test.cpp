// What fits and budgets read like.
#include "widgets/rooms/account_words.h"

#include "widgets/text/measured_text.h"

#include <gtest/gtest.h>

namespace blinkwright::widgets {
namespace {

using study::BudgetFigure;
using study::BudgetRow;
using units::Unit;

QString plain(QString text) {
    return text.replace(QChar(QChar::Nbsp), u' ');
}

// f = 0.988 Hz +- 0.234 Hz (k = 2), to two figures of the uncertainty (JCGM 100:2008, 7.2.6).
TEST(AccountWords, TheWorkedExampleReadsAsInAReport) {
    EXPECT_EQ(plain(measuredText({0.98815, 0.23438}, formOf(Unit::hertz))), "0.99 ± 0.23 Hz");
    EXPECT_EQ(plain(measuredText({0.53425, 0.0013}, formOf(Unit::none))), "53.42 ± 0.13 %");
}

TEST(AccountWords, ASensitivityHasTheUnitsOfItsFigureAndOfItsInput) {
    BudgetRow row;
    row.unit = Unit::farad;
    row.value = 10e-6;
    row.uncertainty = 1e-6;
    row.sensitivity = -0.0988e6;
    EXPECT_EQ(plain(sensitivityText(row, BudgetFigure::rate)), "−0.0988 Hz/µF");
    row.unit = Unit::ohm;
    row.value = 68e3;
    row.sensitivity = -4.69e-7;
    EXPECT_EQ(plain(sensitivityText(row, BudgetFigure::duty)), "−0.000469 1/kΩ");
    row.sensitivity = 2e-9;
    EXPECT_EQ(plain(sensitivityText(row, BudgetFigure::period)), "2·10⁻⁶ s/kΩ");
}

TEST(AccountWords, AVerdictSaysHowFarTheTwoAreApartAndHowFarTheyMayBe) {
    study::Budget predicted, measured;
    predicted.figure = measured.figure = BudgetFigure::rate;
    predicted.value = 1;
    predicted.combined = 0.03;
    measured.value = 0.95;
    measured.combined = 0.04;
    EXPECT_EQ(plain(agreementWords(predicted, measured)),
              "Prediction and measurement agree: they differ by −0.05000 Hz, and may by 0.1000 Hz.");
    measured.value = 0.8;
    EXPECT_TRUE(agreementWords(predicted, measured).contains("do not agree"));
}

} // namespace
} // namespace blinkwright::widgets
