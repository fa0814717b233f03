// The verbs that print what a study found: readings, check, why, spread, trend, fit.
#include "tests/app/verbs/verb_run.h"

namespace blinkwright::test {
namespace {

TEST_F(Verbs, ReadingsPrintsTheReadingsOfARunAsJson) {
    const Answer a = run({"readings", mole, "--flashes", "4"});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    EXPECT_EQ(a.err, "");
    const QJsonObject json = a.json();
    EXPECT_EQ(json["format"].toString(), "blinkwright-readings");
    EXPECT_EQ(json["verdict"].toString(), "blinks");
    const QJsonObject timer = json["timers"].toArray()[0].toObject();
    EXPECT_EQ(timer["switchings"].toArray().size(), 8);
    // T = ln 2 (R1 + 2 R2) C = 1.0120 s for the sample's 10 kΩ, 68 kΩ and 10 µF; a real timer stays near it.
    const double period = timer["settled"].toObject()["period"].toDouble();
    EXPECT_NEAR(timer["textbook"].toObject()["period"].toDouble(), 0.69314718056 * 146e3 * 10e-6, 1e-9);
    EXPECT_NEAR(period, 1.012, 0.1);
}

// The record is our own export of the same circuit with another capacitor: the fit has to find it.
TEST_F(Verbs, FitFindsTheCapacitorThatARecordWasMadeWith) {
    const QString record = inFolder("record.csv");
    const QStringList other{"--value", "C1.capacitance=11.3u", "--flashes", "12"};
    ASSERT_EQ(run(QStringList{"export", mole, record} + other).code, 0);
    const Answer a = run({"fit", mole, record});
    EXPECT_EQ(a.code, 0) << a.err.toStdString() << a.out.toStdString();
    const QJsonObject json = a.json();
    EXPECT_EQ(json["format"].toString(), "blinkwright-fit");
    const double period =
        run(QStringList{"readings", mole} + other).json()["timers"][0]["settled"]["period"].toDouble();
    EXPECT_NEAR(json["measured"]["period"].toDouble() / period, 1, 1e-3);
    EXPECT_NEAR(json["after"]["period"].toDouble() / period, 1, 1e-3);
    EXPECT_LT(json["before"]["period"].toDouble(), 0.95 * period);
    const QJsonObject c1 = json["values"]["C1.capacitance"].toObject();
    EXPECT_NEAR(c1["value"].toDouble(), 11.3e-6, 2 * c1["uncertainty"].toDouble());
    EXPECT_DOUBLE_EQ(c1["nominal"].toDouble(), 10e-6);
    EXPECT_TRUE(json["agrees"].toBool());

    // A capacitor of twice the value is no tolerance.
    ASSERT_EQ(run({"export", mole, record, "--value", "C1.capacitance=22u", "--flashes", "12"}).code, 0);
    const Answer far = run({"fit", mole, record});
    EXPECT_EQ(far.code, 1);
    EXPECT_FALSE(far.json()["agrees"].toBool(true));
    EXPECT_FALSE(far.json()["notes"].toArray().isEmpty());
}

TEST_F(Verbs, FitRefusesWhatIsNoRecordInOneSentence) {
    writeFile(inFolder("no-record.csv"), "hello\nworld\n");
    for (const QString& record : {inFolder("no-record.csv"), inFolder("not-there.csv")}) {
        const Answer a = run({"fit", mole, record});
        EXPECT_EQ(a.code, 2);
        EXPECT_EQ(a.out, "");
        EXPECT_TRUE(isOneSentence(a.err)) << a.err.toStdString();
        EXPECT_TRUE(a.err.contains(record.toUtf8())) << a.err.toStdString();
    }
    EXPECT_EQ(run({"fit", mole}).code, 2);
}

TEST_F(Verbs, ReadingsOfSetBAreThoseOfItsOwnValues) {
    const double a = run({"readings", mole}).json()["timers"][0]["textbook"]["period"].toDouble();
    const double b =
        run({"readings", mole, "--set", "B"}).json()["timers"][0]["textbook"]["period"].toDouble();
    EXPECT_NEAR(a, 0.69314718056 * (10e3 + 2 * 68e3) * 10e-6, 1e-9);
    EXPECT_NEAR(b, 0.69314718056 * (10e3 + 2 * 33e3) * 10e-6, 1e-9);
}

TEST_F(Verbs, ValuesComeOnTopOfTheFileAndOfTheSet) {
    const Answer a =
        run({"readings", mole, "--set", "B", "--value", "R2.resistance=100k", "--value=C1.capacitance=1u"});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    EXPECT_NEAR(a.json()["timers"][0]["textbook"]["period"].toDouble(), 0.69314718056 * 210e3 * 1e-6, 1e-9);
}

TEST_F(Verbs, ASettledRunHasNoFirstHighPhase) {
    const QJsonObject json = run({"readings", mole, "--begin", "settled"}).json();
    EXPECT_TRUE(json["timers"][0]["first_high"].isNull());
    EXPECT_TRUE(run({"readings", mole}).json()["timers"][0]["first_high"].isDouble());
}

TEST_F(Verbs, ReadingsOfACircuitThatDoesNotBlinkExitWithOneAndSayWhy) {
    // Without pins 2 and 6 on the timing net nothing is ever read, and the output stays as it began.
    const Answer a = run({"readings", changed("\"U1:6\", \"U1:2\", \"R2:2\"", "\"R2:2\"")});
    EXPECT_EQ(a.code, 1) << a.err.toStdString();
    EXPECT_NE(a.json()["verdict"].toString(), "blinks");
    EXPECT_FALSE(a.json()["reasons"].toArray().isEmpty());
}

TEST_F(Verbs, CheckPrintsFindingsAsJson) {
    const Answer a = run({"check", mole});
    EXPECT_EQ(a.json()["format"].toString(), "blinkwright-findings");
    EXPECT_TRUE(a.json()["findings"].isArray());
    EXPECT_EQ(a.code, 0) << a.out.toStdString();
}

TEST_F(Verbs, WhyPrintsStepsThatAddUpToTheSimulation) {
    const Answer a = run({"why", mole});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    const QJsonObject json = a.json();
    EXPECT_EQ(json["format"].toString(), "blinkwright-why");
    double period = json["textbook"].toObject()["period"].toDouble() +
                    json["interaction"].toObject()["period_change"].toDouble();
    for (const auto& step : json["steps"].toArray()) period += step.toObject()["period_change"].toDouble();
    EXPECT_NEAR(period, json["simulated"].toObject()["period"].toDouble(), 1e-12);
    EXPECT_EQ(run({"why", mole, "--value", "R2.resistance=1G"}).code, 1);
}

TEST_F(Verbs, SpreadPrintsStatisticsAsJsonAndTheSameForOneSeed) {
    const Answer a = run({"spread", mole, "--boards", "200", "--seed", "9", "--draw", "normal"});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    const QJsonObject json = a.json();
    EXPECT_EQ(json["format"].toString(), "blinkwright-spread");
    EXPECT_EQ(json["boards"].toInt(), 200);
    EXPECT_EQ(json["seed"].toInt(), 9);
    EXPECT_EQ(json["blinking_share"].toDouble(), 1);
    for (const char* key : {"period", "rate", "duty"}) {
        const QJsonObject figure = json[QLatin1String(key)].toObject();
        EXPECT_LT(figure["worst_low"].toDouble(), figure["p1"].toDouble()) << key;
        EXPECT_LT(figure["p99"].toDouble(), figure["worst_high"].toDouble()) << key;
    }
    EXPECT_EQ(json["lamps"].toArray()[0].toObject()["ref"].toString(), "D1");
    double sum = 0;
    for (const auto& share : json["shares"].toObject()) sum += share.toDouble();
    EXPECT_NEAR(sum, 1, 1e-12);
    EXPECT_EQ(run({"spread", mole, "--boards", "200", "--seed", "9", "--draw", "normal"}).out, a.out);
}

TEST_F(Verbs, TrendPrintsALineAPoint) {
    const Answer a =
        run({"trend", mole, "--over", "R1.resistance", "--from", "1k", "--to", "100k", "--points", "3"});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    const QByteArrayList lines = a.out.split('\n');
    ASSERT_EQ(lines.size(), 5) << a.out.toStdString();
    EXPECT_EQ(lines[0],
              "R1.resistance,period [s],rate [Hz],high [s],low [s],duty,D1 peak [A],D1 mean [A],supply "
              "mean [A],textbook rate [Hz]\r");
    EXPECT_TRUE(lines[2].startsWith("10000,")) << lines[2].toStdString();
    EXPECT_EQ(lines[3].count(','), 9);
}

TEST_F(Verbs, CheckExitsWithOneOnOverstress) {
    const Answer a = run({"check", mole, "--value", "R3.resistance=10"});
    EXPECT_EQ(a.code, 1) << a.out.toStdString();
    bool found = false;
    for (const auto& finding : a.json()["findings"].toArray())
        found |= finding.toObject()["severity"] == "overstress";
    EXPECT_TRUE(found) << a.out.toStdString();
}

TEST_F(Verbs, MeasurementsOfTheFileAreAddedToReadingsAndWhy) {
    const QString measured = sample("mole-light-measured");
    EXPECT_FALSE(run({"readings", mole}).json().contains("measured"));
    EXPECT_FALSE(run({"why", mole}).json().contains("unexplained"));
    const QJsonObject readings = run({"readings", measured}).json()["measured"].toObject();
    const double period = readings["period"].toObject()["value"].toDouble();
    EXPECT_GT(period, 1);
    EXPECT_GT(readings["period"].toObject()["uncertainty"].toDouble(), 0);
    const QJsonObject why = run({"why", measured}).json();
    EXPECT_EQ(why["measured"].toObject()["period"].toObject()["value"].toDouble(), period);
    EXPECT_NEAR(why["unexplained"].toObject()["period_change"].toObject()["value"].toDouble(),
                period - why["simulated"].toObject()["period"].toDouble(), 1e-12);
}

} // namespace
} // namespace blinkwright::test
