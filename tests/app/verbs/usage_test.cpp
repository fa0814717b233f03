// What all verbs have in common: usage, help, faults.
#include "tests/app/verbs/verb_run.h"

namespace blinkwright::test {
namespace {

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
} // namespace blinkwright::test
