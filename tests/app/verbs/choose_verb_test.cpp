// `choose`: parts for a wish.
#include "tests/app/verbs/verb_run.h"

namespace blinkwright::test {
namespace {

TEST_F(Verbs, ChooseProposesPartsAndWritesTheBestAsACircuit) {
    const QString path = inFolder("chosen.blinkwright");
    const Answer a = run({"choose", "--rate", "1.2", "--lit", "0.4", "--supply", "9", "--out", path});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    const QJsonObject json = a.json();
    EXPECT_EQ(json["format"].toString(), "blinkwright-choices");
    EXPECT_TRUE(json["unmet"].isNull());
    const QJsonObject best = json["choices"].toArray()[0].toObject();
    EXPECT_NEAR(best["rate"].toDouble(), 1.2, 0.02);
    const QJsonObject readings = run({"readings", path}).json();
    const QJsonObject timer = readings["timers"].toArray()[0].toObject();
    EXPECT_NEAR(timer["settled"].toObject()["rate"].toDouble(), best["rate"].toDouble(), 1e-4);
    EXPECT_NEAR(readings["lamps"].toArray()[0].toObject()["lit_time"].toDouble() * 1.2, 0.4, 0.01);
    EXPECT_EQ(run({"check", path}).code, 0);
    // The same rate, written otherwise.
    for (const char* rate : {"72/min", "1.2 Hz"})
        EXPECT_NEAR(run({"choose", "--rate", rate, "--lit", "0.4", "--supply", "9"})
                        .json()["wish"]
                        .toObject()["rate"]
                        .toDouble(),
                    1.2, 1e-12);
}

TEST_F(Verbs, ChooseExitsWithOneOnAWishThatCannotBeMet) {
    const Answer a = run({"choose", "--rate", "1", "--lit", "0.5", "--supply", "3"});
    EXPECT_EQ(a.code, 1);
    EXPECT_TRUE(isOneSentence(a.err)) << a.err.toStdString();
    EXPECT_TRUE(a.json()["choices"].toArray().isEmpty());
    EXPECT_EQ(a.json()["unmet"].toObject()["nearest"].toObject()["supply"].toDouble(), 4.5);
}

TEST_F(Verbs, ChooseTakesADrawer) {
    writeFile(inFolder("drawer.csv"),
              "kind,value,tolerance,rating,quantity\r\nresistor,10k,,,2\r\nresistor,68k,,,2\r\n"
              "resistor,560,,,1\r\ncapacitor,10u,,16,1\r\n");
    const QStringList words{"choose", "--rate", "0.98", "--lit", "0.53", "--supply", "9", "--drawer"};
    const Answer a = run(words + QStringList{inFolder("drawer.csv")});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    EXPECT_EQ(a.json()["choices"].toArray()[0].toObject()["values"].toObject()["C1.capacitance"].toDouble(),
              1e-5);
    writeFile(inFolder("drawer.csv"), "resistor,oops\n");
    const Answer bad = run(words + QStringList{inFolder("drawer.csv")});
    EXPECT_EQ(bad.code, 2);
    EXPECT_TRUE(bad.err.contains("drawer.csv: line 1: value: ")) << bad.err.toStdString();
    EXPECT_EQ(run(words + QStringList{inFolder("nowhere.csv")}).code, 2);
}

TEST_F(Verbs, ChooseFindsTheVariableResistorOfARange) {
    const Answer a = run({"choose", "--rate", "30/min", "--rate-to", "120/min", "--lit", "0.5", "--supply",
                          "9", "--out", inFolder("range.blinkwright")});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    EXPECT_NEAR(a.json()["wish"].toObject()["rate_to"].toDouble(), 2, 1e-12);
    const QJsonObject best = a.json()["choices"].toArray()[0].toObject();
    EXPECT_GT(best["values"].toObject()["RV1.resistance"].toDouble(), 1000);
    EXPECT_LE(best["rate"].toDouble(), 0.5 * 1.005);
    EXPECT_GE(best["rate_to"].toDouble(), 2 * 0.995);
    // The written circuit, with its knob at either end.
    const auto rate = [&](const char* setting) {
        return run({"readings", inFolder("range.blinkwright"), "--value", setting})
            .json()["timers"]
            .toArray()[0]
            .toObject()["settled"]
            .toObject()["rate"]
            .toDouble();
    };
    EXPECT_NEAR(rate("RV1.setting=1"), best["rate"].toDouble(), 1e-4);
    EXPECT_NEAR(rate("RV1.setting=0"), best["rate_to"].toDouble(), 1e-3);
}

TEST_F(Verbs, ChooseMatchesTwoLamps) {
    const Answer a = run({"choose", "--rate", "1", "--lit", "0.5", "--supply", "9", "--lamps", "2",
                          "--equal-brightness", "--intensity", "12m,36m"});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    const QJsonArray lamps = a.json()["choices"].toArray()[0].toObject()["lamps"].toArray();
    ASSERT_EQ(lamps.size(), 2);
    EXPECT_NEAR(lamps[0].toObject()["mean"].toDouble() / lamps[1].toObject()["mean"].toDouble(), 3, 0.4);
    const Answer tooLong =
        run({"choose", "--rate", "1", "--lit", "0.5", "--supply", "9", "--lamps", "2", "--stay-lit", "0.7"});
    EXPECT_EQ(tooLong.code, 1);
    EXPECT_NEAR(tooLong.json()["unmet"].toObject()["nearest"].toObject()["stay_lit"].toDouble(), 0.5, 1e-12);
}

} // namespace
} // namespace blinkwright::test
