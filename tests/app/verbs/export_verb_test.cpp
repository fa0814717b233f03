// `export`: curves and lab sheets.
#include "tests/app/verbs/verb_run.h"

namespace blinkwright::test {
namespace {

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

TEST_F(Verbs, ExportedPicturesHoldTheRecordsOfTheFile) {
    const auto svg = [&](const char* name) {
        const QString path = inFolder("m.svg");
        EXPECT_EQ(run({"export", sample(name), path}).code, 0);
        return bytesOf(path);
    };
    EXPECT_TRUE(svg("mole-light-measured").contains("Measured"));
    EXPECT_FALSE(svg("mole-light").contains("Measured"));
}

} // namespace
} // namespace blinkwright::test
