// Whole lab sheets of the samples as files, read back by other programs.
#include "app/language.h"
#include "app/sheet/html_sheet.h"
#include "app/sheet/odt_sheet.h"
#include "app/sheet/odt_styles.h"
#include "app/sheet/pdf_sheet.h"
#include "core/circuit/edit.h"
#include "core/study/wiring_list.h"
#include "core/units/engineering.h"
#include "tests/app/sheet/sheet_fixture.h"
#include "widgets/theme/theme.h"

#include <QApplication>
#include <QPageRanges>
#include <QPrinter>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace {

using namespace blinkwright;
using namespace blinkwright::app::sheet;
using namespace blinkwright::test;

const study::LabFacts& moleFacts() {
    static const study::LabFacts facts = factsOf(sampleCircuit("mole-light"));
    return facts;
}
const study::LabFacts& buoyFacts() {
    static const study::LabFacts facts = factsOf(measuredBuoys());
    return facts;
}

const SheetWords words{
    .title = {}, .author = "Ada Brook", .partner = "Tom Reed", .group = "Harbour 2", .date = "12 May"};

class SheetFiles : public testing::Test {
  protected:
    /// Writes a sheet as PDF and leaves its pages as pictures to be looked at.
    QString pdf(const LabSheet& sheet, const char* name, QPageSize::PageSizeId size = QPageSize::A4) {
        const QString path = folder.filePath(QLatin1String(name) + ".pdf");
        writeFile(path, pdfOf(sheet, size).value());
        EXPECT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
        toolOutput("pdftoppm",
                   {"-png", "-r", "80", path, QStringLiteral(BLINKWRIGHT_PICTURES "/sheet-%1").arg(name)});
        return path;
    }
    static QString textOf(const QString& path, const QStringList& options = {}) {
        return plainSpaces(
            QString::fromUtf8(toolOutput("pdftotext", options + QStringList{"-enc", "UTF-8", path, "-"})));
    }
    static int pagesOf(const QString& path) {
        const QString info = QString::fromUtf8(toolOutput("pdfinfo", {path}));
        return info.mid(info.indexOf("Pages:") + 6, 12).simplified().section(' ', 0, 0).toInt();
    }
    /// Fonts in the file, no pictures of dots, every page with ink on it.
    void checkPdf(const QString& path) {
        const QStringList fonts =
            QString::fromUtf8(toolOutput("pdffonts", {path})).split('\n', Qt::SkipEmptyParts);
        ASSERT_GT(fonts.size(), 2);
        const qsizetype column = fonts.front().indexOf("emb");
        ASSERT_GT(column, 0);
        for (const QString& font : fonts.mid(2)) EXPECT_EQ(font.mid(column, 3), "yes") << font.toStdString();
        EXPECT_EQ(QString::fromUtf8(toolOutput("pdfimages", {"-list", path}))
                      .split('\n', Qt::SkipEmptyParts)
                      .size(),
                  2);
        toolOutput("pdftoppm", {"-png", "-r", "40", path, folder.filePath("page")});
        int pages = 0;
        for (const QString& name : QDir(folder.path()).entryList({"page-*.png"})) {
            const QImage page(folder.filePath(name));
            int dark = 0;
            for (int y = 0; y < page.height() * 9 / 10; ++y) // above the foot
                for (int x = 0; x < page.width(); ++x) dark += qGray(page.pixel(x, y)) < 200;
            EXPECT_GT(dark, 200) << name.toStdString();
            ++pages;
        }
        EXPECT_EQ(pages, pagesOf(path));
    }
    QTemporaryDir folder;
};

// ln 2 x 78 kΩ x 10 µF = 540.66 ms; ln 2 x 68 kΩ x 10 µF = 471.34 ms; ln 2 x 146 kΩ x 10 µF = 1.0120 s; ln 3
// x 78 kΩ x 10 µF = 856.9 ms.
TEST_F(SheetFiles, TheMoleLightsSheetTellsItsNumbersInOrder) {
    const QString path = pdf(makeLabSheet(moleFacts(), words, {}), "mole");
    const QString text = textOf(path);
    EXPECT_TRUE(inOrder(text, {"Harbour mole light",
                               "Author:",
                               "Ada Brook",
                               "12 May",
                               "Tom Reed",
                               "Harbour 2",
                               "Aim",
                               "Theory",
                               "10 kΩ",
                               "68 kΩ",
                               "10 µF",
                               "540.7 ms",
                               "471.3 ms",
                               "1.012 s",
                               "0.9881 Hz",
                               "53.42 %",
                               "856.9 ms",
                               "Circuit",
                               "Parts",
                               "resistor 10 kΩ, 5 %",
                               "Wiring",
                               "from pin 7 to",
                               "Cautions",
                               "Method",
                               "Stopwatch",
                               "Readings",
                               "Cycle time T",
                               "1.012 s",
                               "Traces",
                               "Spread",
                               "Findings",
                               "What explains the difference",
                               "Discharge pin",
                               "Conclusions",
                               "References",
                               "JCGM 100:2008"}));
    checkPdf(path);
}

TEST_F(SheetFiles, TheBuoyPairsSheetHasBothSetsAndTheMeasurements) {
    const QString path = pdf(makeLabSheet(buoyFacts(), words, {}), "buoys");
    const QString text = textOf(path);
    EXPECT_TRUE(
        inOrder(text, {"Set A", "Set B", "By stopwatch: 20 flashes in 17.30 s, standard uncertainty 0.20 s",
                       "Record pier-bench.csv", "Readings", "Set A", "Set B", "Measured", "u", "Measured − A",
                       "Cycle time T"}));
    EXPECT_TRUE(text.contains("Black, laid over: measured, pier-bench.csv"));
    EXPECT_TRUE(text.contains("8.930 V") && text.contains("0.020 V"));
    EXPECT_TRUE(text.contains("Measured less simulated"));
    checkPdf(path);
}

TEST_F(SheetFiles, LetterPaperIsLetterPaper) {
    const QString path = pdf(makeLabSheet(moleFacts(), words, {}), "mole-letter", QPageSize::Letter);
    EXPECT_TRUE(QString::fromUtf8(toolOutput("pdfinfo", {path})).contains("612 x 792"));
    checkPdf(path);
}

// A class finds these out: textbook and simulated cycle times, rates, shares.
TEST_F(SheetFiles, AStudentsCopyGivesNoResultAndItsKeyGivesThemAll) {
    const study::LabFacts facts = factsOf(sampleCircuit("mole-light"), {.variant = 7});
    SheetChoice choice;
    choice.copy = Copy::student;
    const QString student = pdf(makeLabSheet(facts, {}, choice), "student");
    choice.copy = Copy::answers;
    const QString answers = pdf(makeLabSheet(facts, {}, choice), "answers");
    const QString asked = textOf(student), told = textOf(answers);
    for (const QString& text : {asked, told}) EXPECT_TRUE(text.contains("Variant 7"));
    EXPECT_TRUE(asked.contains("Student copy"));
    EXPECT_TRUE(told.contains("Answer key"));
    const study::TimerReading& timer = facts.a.readings.timers.front();
    const auto hidden = [&](double value, units::Unit unit) {
        for (const int digits : {3, 4}) {
            const QString figure =
                plainSpaces(QString::fromStdString(units::formatQuantity(value, unit, digits, true)));
            EXPECT_FALSE(asked.contains(figure)) << figure.toStdString();
            if (digits == 4) {
                EXPECT_TRUE(told.contains(figure)) << figure.toStdString();
            }
        }
    };
    for (const study::Phase& phase : {timer.textbook->phase, *timer.settled}) {
        hidden(phase.period_s(), units::Unit::second);
        hidden(phase.high_s, units::Unit::second);
        hidden(phase.low_s, units::Unit::second);
    }
    hidden(*timer.firstHigh_s, units::Unit::second);
    EXPECT_FALSE(asked.contains("flashes a minute from"));
    for (const study::PartsRow& row :
         study::partsList(facts.circuit, circuit::PartSet::A)) // but what to build, it gives
        EXPECT_TRUE(asked.contains(plainSpaces(QString::fromStdString(row.description)))) << row.description;
    checkPdf(student);
    checkPdf(answers);
}

TEST_F(SheetFiles, APrinterGetsTheRangeOfPagesThatItWasAskedFor) {
    const QString path = folder.filePath("printed.pdf");
    {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path);
        printer.setPageSize(QPageSize(QPageSize::Letter));
        printer.setPageRanges(QPageRanges::fromString("2-3"));
        printSheet(printer, makeLabSheet(moleFacts(), words, {}));
    }
    EXPECT_EQ(pagesOf(path), 2);
    EXPECT_TRUE(inOrder(textOf(path), {"Page 2 of", "Page 3 of"}));
    EXPECT_TRUE(QString::fromUtf8(toolOutput("pdfinfo", {path})).contains("612 x 792"));
}

TEST_F(SheetFiles, OnlyTheChosenSectionsAreThere) {
    SheetChoice choice;
    choice.topics = {Topic::aim, Topic::wiring};
    const QString text = textOf(pdf(makeLabSheet(moleFacts(), words, choice), "some"));
    EXPECT_TRUE(inOrder(text, {"Aim", "Wiring"}));
    for (const char* other : {"Theory", "Ada Brook", "Readings", "References"})
        EXPECT_FALSE(text.contains(other)) << other;
}

TEST_F(SheetFiles, TheHtmlIsOneWellFormedFileThatFetchesNothing) {
    const QByteArray html = htmlOf(makeLabSheet(buoyFacts(), words, {}));
    QString body = QString::fromUtf8(html);
    EXPECT_TRUE(
        inOrder(plainSpaces(body), {"<title>Channel buoy pair", "<h2>Theory", "<math>", "<mfrac>",
                                    "<h2>Circuit", "<svg", "<h2>Readings", "<table", "<h2>Traces", "<svg"}));
    EXPECT_FALSE(body.contains("<img") || body.contains("<script") || body.contains("<link") ||
                 body.contains("@import"));
    static const QRegularExpression address("(href|src)\\s*=|url\\((?!#)");
    EXPECT_FALSE(body.contains(address)) << address.match(body).captured().toStdString();
    // As XML, with the two tags closed that HTML leaves open.
    body.replace(QRegularExpression("<meta([^>]*)>"), "<meta\\1/>").remove("<!DOCTYPE html>\n");
    QXmlStreamReader reader(body);
    while (!reader.atEnd()) reader.readNext();
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString() << " in line "
                                    << reader.lineNumber();
}

TEST_F(SheetFiles, SignsOfTheLanguageOfPagesAreTextInTheHtml) {
    // What people call things: in every place where a text of theirs may stand.
    const QString name = QStringLiteral("<b>R&D</b> \"5 < 6\"");
    const LabSheet sheet{
        .title = name,
        .mark = name,
        .author = name,
        .sections = {{Topic::aim,
                      name,
                      {Paragraph{name}, Paragraph{name, Paragraph::Style::bullet}, Subheading{name},
                       Fields{{{name, name}}},
                       Table{name,
                             {Column{name}, Column{name}},
                             {Table::Row{{Cell{name}, Cell{name}}}, Table::Row{{Cell{name}}, true}}}}}}};
    QString html = QString::fromUtf8(htmlOf(sheet));
    EXPECT_FALSE(html.contains("<b>"));
    html.replace(QRegularExpression("<meta([^>]*)>"), "<meta\\1/>").remove("<!DOCTYPE html>\n");
    QXmlStreamReader reader(html);
    QString text;
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::Characters) text += reader.text();
    EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString();
    // Name of the page and foot (title and mark each), heading, mark, section, two paragraphs, subheading, a
    // field's name and value, five cells.
    EXPECT_EQ(text.count(name), 2 + 2 + 1 + 1 + 1 + 2 + 1 + 2 + 5);
}

TEST_F(SheetFiles, NamesInTheHtmlDoNotMeanTwoThings) {
    LabSheet sheet = makeLabSheet(buoyFacts(), words, {});
    for (const Section& section :
         std::vector<Section>(sheet.sections)) // the drawing, whose lenses have names, twice
        if (section.topic == Topic::drawing) sheet.sections.push_back(section);
    const QString html = QString::fromUtf8(htmlOf(sheet));
    static const QRegularExpression name("(?:xml:)?id=\"([^\"]+)\"");
    QStringList names;
    for (auto it = name.globalMatch(html); it.hasNext();) names << it.next().captured(1);
    EXPECT_GE(names.size(), 4);
    EXPECT_EQ(names.removeDuplicates(), 0);
}

TEST_F(SheetFiles, SayTheLanguageThatTheyAreIn) {
    const auto sheet = [] { return makeLabSheet(moleFacts(), words, {}); };
    EXPECT_TRUE(htmlOf(sheet()).contains("<html lang=\"en\">"));
    EXPECT_TRUE(odtStyles(sheet(), {}).contains("fo:language=\"en\" fo:country=\"GB\""));
    app::speak(QStringLiteral("de"));
    const QByteArray html = htmlOf(sheet()), odt = odtStyles(sheet(), {});
    app::speak(QStringLiteral("en"));
    EXPECT_TRUE(html.contains("<html lang=\"de\">"));
    EXPECT_TRUE(odt.contains("fo:language=\"de\" fo:country=\"DE\""));
    EXPECT_TRUE(inOrder(plainSpaces(QString::fromUtf8(html)), {"Theorie", "0,9881 Hz", "1,012 s"}));
}

TEST_F(SheetFiles, TheOdtIsAPackageAsTheStandardHasIt) {
    const QByteArray odt = odtOf(makeLabSheet(buoyFacts(), words, {}), QPageSize::A4);
    // OpenDocument 1.2, part 3, 3.3: the type at byte 38, after `mimetype` at 30.
    EXPECT_EQ(odt.mid(30, 8), "mimetype");
    EXPECT_EQ(odt.mid(38, 39), "application/vnd.oasis.opendocument.text");
    const QString path = folder.filePath("a.odt");
    writeFile(path, odt);
    ASSERT_TRUE(haveTool("unzip")) << "unzip is needed to look into it";
    EXPECT_TRUE(toolOutput("unzip", {"-t", path}).contains("No errors detected"));
    const QByteArray content = toolOutput("unzip", {"-p", path, "content.xml"});
    const QByteArray manifest = toolOutput("unzip", {"-p", path, "META-INF/manifest.xml"});
    for (const char* name :
         {"content.xml", "styles.xml", "meta.xml", "META-INF/manifest.xml", "Object 1/content.xml"}) {
        QXmlStreamReader reader(toolOutput("unzip", {"-p", path, name}));
        while (!reader.atEnd()) reader.readNext();
        EXPECT_FALSE(reader.hasError()) << name << ": " << reader.errorString().toStdString();
    }
    const QString text = plainSpaces(QString::fromUtf8(content));
    EXPECT_TRUE(inOrder(text, {"<text:h", "Theory", "<draw:object", "<text:h", "Circuit", "<draw:image",
                               "<table:table-header-rows", "Readings", "Cycle time T"}));
    // All that the content points to is in the package, and in its list.
    static const QRegularExpression link("xlink:href=\"(?:\\./)?([^\"]+)\"");
    int links = 0;
    const QString list = QString::fromUtf8(toolOutput("unzip", {"-Z1", path}));
    for (auto it = link.globalMatch(QString::fromUtf8(content)); it.hasNext(); ++links) {
        const QString target = it.next().captured(1);
        EXPECT_TRUE(list.contains(target)) << target.toStdString();
        EXPECT_TRUE(manifest.contains(target.toUtf8())) << target.toStdString();
    }
    EXPECT_GT(links, 10);
}

TEST_F(SheetFiles, TheOdtOpensInAWordProcessor) {
    if (!haveTool("soffice")) GTEST_SKIP() << "there is no word processor on this machine";
    const QString path = folder.filePath("a.odt");
    writeFile(path, odtOf(makeLabSheet(buoyFacts(), words, {}), QPageSize::A4));
    toolOutput("soffice", {"-env:UserInstallation=file://" + folder.filePath("profile"), "--headless",
                           "--convert-to", "pdf", "--outdir", folder.path(), path});
    const QString made = folder.filePath("a.pdf");
    EXPECT_TRUE(
        inOrder(textOf(made), {"Channel buoy pair", "Theory", "Readings", "Cycle time T", "References"}));
    toolOutput("pdftoppm", {"-png", "-r", "80", made, QStringLiteral(BLINKWRIGHT_PICTURES "/sheet-odt")});
}

TEST_F(SheetFiles, TheHtmlOpensInABrowser) {
    if (!haveTool("chromium")) GTEST_SKIP() << "there is no browser on this machine";
    const QString path = folder.filePath("a.html"), made = folder.filePath("html.pdf");
    writeFile(path, htmlOf(makeLabSheet(buoyFacts(), words, {})));
    toolOutput("chromium", {"--headless", "--no-sandbox", "--disable-gpu",
                            "--user-data-dir=" + folder.filePath("profile"), "--print-to-pdf=" + made, path});
    EXPECT_TRUE(
        inOrder(textOf(made), {"Channel buoy pair", "Theory", "Readings", "Cycle time T", "References"}));
    toolOutput("pdftoppm", {"-png", "-r", "80", made, QStringLiteral(BLINKWRIGHT_PICTURES "/sheet-html")});
}

TEST_F(SheetFiles, ThePageIsWhiteWhateverTheThemeIs) {
    const LabSheet sheet = makeLabSheet(moleFacts(), words, {});
    const QPalette before = QApplication::palette();
    QApplication::setPalette(widgets::Theme::of(widgets::Theme::Mode::light).palette());
    const PageLayout light(sheet, QPageSize::A4);
    std::vector<QImage> pages;
    for (int k = 0; k < light.count(); ++k) pages.push_back(pageImage(light, k, 1));
    QApplication::setPalette(widgets::Theme::of(widgets::Theme::Mode::dark).palette());
    const PageLayout dark(makeLabSheet(moleFacts(), words, {}), QPageSize::A4);
    ASSERT_EQ(dark.count(), light.count());
    for (int k = 0; k < dark.count(); ++k)
        EXPECT_EQ(pageImage(dark, k, 1), pages[static_cast<std::size_t>(k)]) << k;
    EXPECT_EQ(pages.front().pixel(2, 2), qRgb(255, 255, 255));
    QApplication::setPalette(before);
}

TEST_F(SheetFiles, ACircuitThatDoesNotBlinkHasASheetThatSaysSo) {
    circuit::Circuit circuit = sampleCircuit("mole-light");
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::JoinPin{circuit.pinNamed("U1:6").value(), {}}}));
    const QString text = textOf(pdf(makeLabSheet(factsOf(circuit), words, {}), "dark"));
    EXPECT_TRUE(text.contains("By simulation the circuit does not blink"));
    EXPECT_TRUE(text.contains("There is no textbook formula for this wiring"));
}

} // namespace
