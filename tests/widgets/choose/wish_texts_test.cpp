// The sentence of a wish: what its fields come to, and what is said where they come to nothing.
#include "widgets/choose/wish_form.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace blinkwright::widgets;
namespace study = blinkwright::study;
namespace units = blinkwright::units;

TEST(WishTexts, RatesInThreeUnitsAreOneRate) {
    WishTexts texts;
    texts.rate = "72";
    EXPECT_NEAR(readWish(texts).wish.rate_Hz, 1.2, 1e-12);
    texts.rate = "1,2";
    texts.rateUnit = RateUnit::hertz;
    EXPECT_NEAR(readWish(texts).wish.rate_Hz, 1.2, 1e-12);
    texts.rate = "1/2";
    EXPECT_EQ(readWish(texts).faults.count(WishField::rate), 1u);
    texts.rate = "500m";
    texts.rateUnit = RateUnit::seconds;
    EXPECT_NEAR(readWish(texts).wish.rate_Hz, 2, 1e-12);
}

TEST(WishTexts, TheLitTimeIsAShareOrATime) {
    WishTexts texts;
    for (const char* text : {"40", "40 %", "40%"}) {
        texts.lit = text;
        EXPECT_NEAR(readWish(texts).wish.lit, 0.4, 1e-12) << text;
    }
    texts.lit = "100";
    EXPECT_EQ(readWish(texts).faults.at(WishField::lit), "Must be less than 100 %.");
    texts.litUnit = LitUnit::seconds;
    texts.lit = "200 ms"; // of a second
    EXPECT_NEAR(readWish(texts).wish.lit, 0.2, 1e-12);
    texts.lit = "2 s";
    EXPECT_TRUE(readWish(texts).faults.at(WishField::lit).startsWith("Must be shorter than a cycle"));
}

TEST(WishTexts, WhatIsNotAskedIsNotRead) {
    WishTexts texts;
    texts.rateTo = "rubbish";
    texts.stayLit = texts.intensity = "rubbish";
    texts.equalBrightness = true;
    EXPECT_TRUE(readWish(texts).faults.empty());
    texts.range = true;
    texts.lamps = 2;
    const auto faults = readWish(texts).faults;
    EXPECT_EQ(faults.count(WishField::rateTo), 1u);
    EXPECT_EQ(faults.count(WishField::stayLit), 1u);
    EXPECT_EQ(faults.at(WishField::secondIntensity), "Both intensities are needed, or none.");
}

TEST(WishTexts, AreKeptAndComeBack) {
    WishTexts texts;
    texts.rate = "1.5";
    texts.rateUnit = RateUnit::hertz;
    texts.range = true;
    texts.rateTo = "3";
    texts.lamps = 2;
    texts.stayLit = "0.2 s";
    texts.c1 = units::Series::E12;
    texts.cmos = texts.fromDrawer = true;
    EXPECT_EQ(restored(kept(texts)), texts);
    EXPECT_EQ(restored({}), WishTexts());
    QVariantMap odd = kept(texts);
    odd["rate-unit"] = 99;
    odd["C1"] = "E7";
    EXPECT_EQ(restored(odd).rateUnit, RateUnit::perMinute);
    EXPECT_EQ(restored(odd).c1, units::Series::E6);
}

TEST(WishTexts, TheNearestWishIsWrittenInTheUnitsThatAreChosen) {
    WishTexts texts;
    texts.rate = "1";
    study::Unmet unmet;
    unmet.rate_Hz = 0.05;
    unmet.lit = 0.25;
    unmet.supply_V = 4.5;
    EXPECT_EQ(withNearest(texts, unmet).rate, "3");
    EXPECT_EQ(withNearest(texts, unmet).lit, "25");
    texts.rateUnit = RateUnit::seconds;
    texts.litUnit = LitUnit::seconds;
    EXPECT_EQ(withNearest(texts, unmet).rate, "20");
    EXPECT_NEAR(readWish(withNearest(texts, unmet)).wish.lit, 0.25, 1e-3);
    EXPECT_EQ(readWish(withNearest(texts, unmet)).wish.supply_V, 4.5);
}

TEST(WishForm, AFaultStandsBesideItsFieldUntilItIsMended) {
    WishForm form;
    form.show();
    QSignalSpy changed(&form, &WishForm::changed);
    auto* supply = form.findChild<QLineEdit*>("supply");
    auto* fault = form.findChild<QLabel*>("supplyFault");
    EXPECT_TRUE(form.isFine());
    EXPECT_FALSE(fault->isVisible());
    supply->clear();
    QTest::keyClicks(supply, "9q");
    EXPECT_FALSE(form.isFine());
    EXPECT_TRUE(fault->isVisible());
    EXPECT_FALSE(fault->text().isEmpty());
    EXPECT_EQ(supply->accessibleDescription(), fault->text());
    QTest::keyClick(supply, Qt::Key_Backspace);
    EXPECT_TRUE(form.isFine());
    EXPECT_EQ(form.wish().supply_V, 9);
    EXPECT_GE(changed.count(), 3);
}

TEST(WishForm, TheSentenceAsksOnlyWhatMatters) {
    WishForm form;
    form.show();
    const auto shown = [&](const char* name) { return form.findChild<QWidget*>(name)->isVisible(); };
    EXPECT_FALSE(shown("rateTo") || shown("second") || shown("stayLit"));
    EXPECT_TRUE(shown("lampTo") && shown("r1"));
    form.findChild<QComboBox*>("lamps")->setCurrentIndex(1);
    EXPECT_TRUE(shown("second") && shown("stayLit"));
    EXPECT_FALSE(shown("lampTo") || shown("intensity"));
    form.findChild<QComboBox*>("equal")->setCurrentIndex(1);
    EXPECT_TRUE(shown("intensity") && shown("secondIntensity"));
    form.findChild<QComboBox*>("source")->setCurrentIndex(1);
    EXPECT_FALSE(shown("r1"));
    form.findChild<QComboBox*>("range")->setCurrentIndex(1);
    EXPECT_TRUE(shown("rateTo"));
}

} // namespace
