// The program itself, started as a user starts it, without a display.
#include "tests/app/support.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright::test;

struct Answer {
    int code = -1;
    QByteArray out;
    QByteArray err;
    QJsonObject json() const { return QJsonDocument::fromJson(out).object(); }
};

Answer run(const QStringList& arguments) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    // Nothing to show a window on, and no hint to do without one.
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) environment.remove(name);
    process.setProcessEnvironment(environment);
    process.start(QCoreApplication::applicationDirPath() + "/blinkwright", arguments);
    Answer answer;
    if (!process.waitForFinished(60000)) {
        process.kill();
        return answer;
    }
    answer.code = process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -2;
    answer.out = process.readAllStandardOutput();
    answer.err = process.readAllStandardError();
    return answer;
}

bool isOneSentence(const QByteArray& text) {
    return text.count('\n') == 1 && text.endsWith('\n') && text.size() > 5;
}

class Verbs : public testing::Test {
  protected:
    QString inFolder(const char* name) const { return folder.filePath(QLatin1String(name)); }
    /// The mole light with one piece of its text replaced.
    QString changed(const char* from, const char* to) {
        QByteArray text = bytesOf(sample("mole-light"));
        EXPECT_TRUE(text.contains(from)) << from;
        writeFile(inFolder("changed.blinkwright"), text.replace(from, to));
        return inFolder("changed.blinkwright");
    }
    QTemporaryDir folder;
    const QString mole = sample("mole-light");
};

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

TEST_F(Verbs, ExportWritesEachKindByItsEnding) {
    const struct {
        const char* name;
        const char* begin;
    } kinds[] = {{"a.png", "\x89PNG"},
                 {"a.svg", "<?xml"},
                 {"a.PDF", "%PDF-"},
                 {"a.csv", "time [s],output [V],capacitor [V],D1 current [A]\r\n"}};
    for (const auto& kind : kinds) {
        const Answer a = run({"export", mole, inFolder(kind.name)});
        EXPECT_EQ(a.code, 0) << kind.name << ": " << a.err.toStdString();
        EXPECT_EQ(a.err, "") << kind.name;
        EXPECT_TRUE(bytesOf(inFolder(kind.name)).startsWith(kind.begin)) << kind.name;
    }
}

TEST_F(Verbs, ExportedCurvesAreThoseOfTheValuesGiven) {
    ASSERT_EQ(run({"export", mole, inFolder("a.csv"), "--flashes", "2"}).code, 0);
    ASSERT_EQ(run({"export", mole, inFolder("b.csv"), "--flashes", "2", "--value", "C1.capacitance=1u"}).code,
              0);
    const auto lastTime = [](const QByteArray& csv) {
        return csv.trimmed().split('\n').last().split(',').first().toDouble();
    };
    const double a = lastTime(bytesOf(inFolder("a.csv")));
    const double b = lastTime(bytesOf(inFolder("b.csv")));
    EXPECT_GT(a, 1.0);
    EXPECT_NEAR(b / a, 0.1, 0.01);
}

TEST_F(Verbs, ExportRefusesAnOtherEndingAndLeavesNothingBehind) {
    const Answer a = run({"export", mole, inFolder("a.gif")});
    EXPECT_EQ(a.code, 2);
    EXPECT_TRUE(isOneSentence(a.err)) << a.err.toStdString();
    EXPECT_FALSE(QFile::exists(inFolder("a.gif")));
}

TEST_F(Verbs, ExportIntoAPlaceThatIsNotThereNamesIt) {
    for (const char* name : {"no-folder/a.png", "no-folder/a.csv"}) {
        const Answer a = run({"export", mole, inFolder(name)});
        EXPECT_EQ(a.code, 2) << name;
        EXPECT_TRUE(isOneSentence(a.err)) << a.err.toStdString();
        EXPECT_TRUE(a.err.contains(name)) << a.err.toStdString();
    }
}

TEST_F(Verbs, ALabSheetIsWrittenByTheEndingOfItsName) {
    const struct {
        const char* name;
        const char* begin;
    } cases[] = {{"a.pdf", "%PDF"}, {"a.html", "<!DOCTYPE html>"}, {"a.odt", "PK"}};
    for (const auto& c : cases) {
        const Answer a = run({"export", mole, inFolder(c.name), "--lab-sheet", "--author", "Ada Brook"});
        EXPECT_EQ(a.code, 0) << a.err.toStdString();
        EXPECT_EQ(a.err, "") << c.name;
        EXPECT_TRUE(bytesOf(inFolder(c.name)).startsWith(c.begin)) << c.name;
    }
    EXPECT_TRUE(bytesOf(inFolder("a.html")).contains("Ada Brook"));
}

TEST_F(Verbs, AClassPageAndItsKeyAreOfOneVariant) {
    for (const char* copy : {"--student", "--answers"}) {
        const Answer a = run({"export", mole, inFolder(copy + 2) + ".html", "--lab-sheet", copy, "--variant",
                              "11", "--sections", "theory,parts,readings"});
        EXPECT_EQ(a.code, 0) << a.err.toStdString();
    }
    const QString student = QString::fromUtf8(bytesOf(inFolder("student.html")));
    const QString answers = QString::fromUtf8(bytesOf(inFolder("answers.html")));
    EXPECT_TRUE(student.contains("Variant 11") && answers.contains("Variant 11"));
    const auto parts = [](const QString& html) {
        return html.section("<h2>Parts</h2>", 1).section("<h2>", 0, 0);
    };
    EXPECT_TRUE(parts(student).contains("resistor"));
    EXPECT_EQ(parts(student), parts(answers));
    EXPECT_FALSE(student.contains("<h2>Wiring</h2>"));
}

TEST_F(Verbs, ALabSheetOfSetBIsOfItAlone) {
    // R2 is 33 kΩ in the sample's Set B: ln 2 x (10 + 2 x 33) kΩ x 10 µF = 526.8 ms.
    const Answer a = run({"export", mole, inFolder("b.html"), "--lab-sheet", "--set", "B"});
    EXPECT_EQ(a.code, 0) << a.err.toStdString();
    const QByteArray html = bytesOf(inFolder("b.html"));
    EXPECT_TRUE(html.contains("526.8\u00A0ms"));
    EXPECT_TRUE(html.contains("33\u00A0kΩ"));
    EXPECT_FALSE(html.contains("68\u00A0kΩ"));
}

TEST_F(Verbs, WhatALabSheetCannotBeIsSaidInOneSentence) {
    const struct {
        QStringList arguments;
        const char* names;
    } cases[] = {{{"a.png", "--lab-sheet"}, "a.png"},
                 {{"a.pdf", "--lab-sheet", "--page", "a5"}, "--page"},
                 {{"a.pdf", "--lab-sheet", "--sections", "aim,weather"}, "weather"},
                 {{"a.pdf", "--lab-sheet", "--student", "--answers"}, "--answers"},
                 {{"a.pdf", "--lab-sheet", "--variant", "-3"}, "--variant"},
                 {{"no-folder/a.pdf", "--lab-sheet"}, "no-folder"},
                 {{"a.pdf", "--student"}, "--lab-sheet"}};
    for (const auto& c : cases) {
        QStringList arguments = {"export", mole, inFolder(c.arguments.front().toUtf8().constData())};
        const Answer a = run(arguments + c.arguments.mid(1));
        EXPECT_EQ(a.code, 2) << c.names;
        EXPECT_TRUE(isOneSentence(a.err)) << a.err.toStdString();
        EXPECT_TRUE(a.err.contains(c.names)) << a.err.toStdString();
        EXPECT_FALSE(QFile::exists(arguments.back())) << c.names;
    }
}

TEST_F(Verbs, ALabSheetOfWhatDoesNotBlinkIsWrittenWithExitCode1) {
    const QString file = changed("\"U1:6\", ", "");
    const Answer a = run({"export", file, inFolder("a.pdf"), "--lab-sheet"});
    EXPECT_EQ(a.code, 1);
    EXPECT_TRUE(bytesOf(inFolder("a.pdf")).startsWith("%PDF"));
}

TEST_F(Verbs, ABadFileIsOneSentenceThatNamesFileAndPlace) {
    const struct {
        const char* from;
        const char* to;
        const char* place;
    } cases[] = {
        {"\"format\": \"blinkwright-circuit\"", "\"format\": \"other\"", "format"},
        {"\"version\": 1,", "\"version\": 99,", "version"},
        {"\"resistance\": 10000,", "\"resistance\": -5,", "parts[2].resistance"},
        {"\"resistance\": 10000,", "\"resistance\": 1e999,", "parts[2].resistance"},
        {"\"resistance\": 10000, ", "", "parts[2].resistance"},
        {"\"U1:5\"", "\"U1:9\"", "nets[4].pins[0]"},
        {"\"U1:5\"", "\"U1:5\", \"U1:3\"", "U1:3"},
        {"\"kind\": \"timer\"", "\"kind\": \"tuba\"", "parts[1].kind"},
        {"\"nets\": [", "\"nets\": [[", "line"},
    };
    for (const auto& c : cases) {
        const QString path = changed(c.from, c.to);
        for (const QStringList& words :
             {QStringList{"readings", path}, {"check", path}, {"export", path, inFolder("a.csv")}}) {
            const Answer a = run(words);
            EXPECT_EQ(a.code, 2) << c.to;
            EXPECT_EQ(a.out, "") << c.to;
            EXPECT_TRUE(isOneSentence(a.err)) << a.err.toStdString();
            EXPECT_TRUE(a.err.contains("changed.blinkwright")) << a.err.toStdString();
            EXPECT_TRUE(a.err.contains(c.place)) << c.to << ": " << a.err.toStdString();
        }
    }
}

TEST_F(Verbs, BadUsageIsOneSentenceAndExitCodeTwo) {
    const QStringList cases[] = {
        {"readings"},
        {"readings", mole, "--flashes", "0"},
        {"readings", mole, "--flashes", "many"},
        {"readings", mole, "--begin", "soon"},
        {"readings", mole, "--set", "C"},
        {"readings", mole, "--accuracy", "nan"},
        {"readings", mole, "--colour"},
        {"readings", mole, "--value", "R1.resistance"},
        {"readings", mole, "--value", "R99.resistance=1k"},
        {"readings", mole, "--value", "R1.resistance=-1"},
        {"readings", mole, "--value", "R1.length=1"},
        {"check", mole, "extra"},
        {"check", mole, "--flashes", "3"},
        {"check", inFolder("nowhere.blinkwright")},
        {"export", mole},
        {"trend", mole},
        {"trend", mole, "--over", "R1.resistance", "--from", "1k"},
        {"trend", mole, "--over", "R1", "--from", "1k", "--to", "2k"},
        {"trend", mole, "--over", "R1.length", "--from", "1k", "--to", "2k"},
        {"trend", mole, "--over", "R1.resistance", "--from", "0", "--to", "2k"},
        {"trend", mole, "--over", "D1.colour", "--from", "red", "--to", "blue"},
        {"choose", "--rate", "1", "--lit", "0.5"},
        {"choose", "--rate", "1", "--lit", "1.5", "--supply", "9"},
        {"choose", "--rate", "0", "--lit", "0.5", "--supply", "9"},
        {"choose", "--rate", "1", "--lit", "0.5", "--supply", "9", "--series", "R9=E24"},
        {"choose", "--rate", "1", "--lit", "0.5", "--supply", "9", "--colour", "plaid"},
        {"choose", "--rate", "1", "--lit", "0.5", "--supply", "9", "--family", "ttl"},
        {"choose", "--rate", "1", "--rate-to", "1", "--lit", "0.5", "--supply", "9"},
        {"choose", "--rate", "1", "--lit", "0.5", "--supply", "9", "--stay-lit", "0"},
        {"choose", "--rate", "1", "--lit", "0.5", "--supply", "9", "--intensity", "12m"},
        {"spread", mole, "--draw", "flat"},
        {"spread", mole, "--boards", "1"},
        {"spread", mole, "--seed", "-1"},
        {"--colour"}};
    for (const QStringList& words : cases) {
        const Answer a = run(words);
        EXPECT_EQ(a.code, 2) << words.join(' ').toStdString();
        EXPECT_EQ(a.out, "") << words.join(' ').toStdString();
        EXPECT_TRUE(isOneSentence(a.err)) << words.join(' ').toStdString() << ": " << a.err.toStdString();
    }
}

TEST_F(Verbs, OutputThatCannotBeWrittenIsAFault) {
    for (const char* words : {"readings", "check", "check --help"}) {
        QProcess shell;
        shell.start("sh",
                    {"-c", QString("'%1' %2 '%3' > /dev/full")
                               .arg(QCoreApplication::applicationDirPath() + "/blinkwright", words, mole)});
        ASSERT_TRUE(shell.waitForFinished(60000));
        EXPECT_EQ(shell.exitCode(), 2) << words;
        EXPECT_TRUE(isOneSentence(shell.readAllStandardError())) << words;
    }
}

TEST_F(Verbs, AnUnknownVerbShowsTheUsage) {
    const Answer a = run({"frobnicate"});
    EXPECT_EQ(a.code, 2);
    EXPECT_TRUE(a.err.startsWith("blinkwright: 'frobnicate' is neither a file nor a verb"))
        << a.err.toStdString();
    EXPECT_TRUE(a.err.contains("blinkwright readings FILE")) << a.err.toStdString();
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

TEST_F(Verbs, ExportedPicturesHoldTheRecordsOfTheFile) {
    const auto svg = [&](const char* name) {
        const QString path = inFolder("m.svg");
        EXPECT_EQ(run({"export", sample(name), path}).code, 0);
        return bytesOf(path);
    };
    EXPECT_TRUE(svg("mole-light-measured").contains("Measured"));
    EXPECT_FALSE(svg("mole-light").contains("Measured"));
}

TEST_F(Verbs, EveryVerbHasHelpOnStandardOutput) {
    for (const char* verb : {"readings", "check", "spread", "why", "trend", "export"}) {
        const Answer a = run({verb, "--help"});
        EXPECT_EQ(a.code, 0) << verb;
        EXPECT_TRUE(a.out.contains("--value REF.KEY=TEXT")) << a.out.toStdString();
        EXPECT_EQ(a.err, "");
    }
    EXPECT_EQ(run({"--help"}).code, 0);
    EXPECT_TRUE(run({"--help"}).out.contains("blinkwright export FILE OUT"));
    EXPECT_TRUE(run({"--version"}).out.startsWith("blinkwright "));
}

} // namespace
