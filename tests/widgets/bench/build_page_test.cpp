// The printed wiring list, read back from the PDF by pdftotext: what is on the paper, where, and on which
// page.
#include "core/study/wiring_list.h"
#include "places.h"
#include "tests/widgets/hookup/samples.h"
#include "widgets/bench/build_page.h"

#include <QDir>
#include <QFile>
#include <QPrinter>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <functional>

namespace {

using namespace blinkwright;
using circuit::PartKind;
using circuit::PartSet;
namespace test = widgets::test;

/// A row of channel markers: one part of each kind, and as many resistors and capacitors as fill several
/// pages.
circuit::Circuit longRow() {
    circuit::Circuit c;
    c.title = "Channel markers";
    const auto add = [&](PartKind kind, const std::string& ref, circuit::Values values) {
        EXPECT_TRUE(c.addPart(kind, ref, std::move(values)).ok()) << ref;
    };
    for (const PartKind kind : circuit::allKinds)
        add(kind, std::string(circuit::info(kind).prefix) + (kind == PartKind::diode ? "2" : "1"),
            test::leastValues(kind));
    for (int k = 2; k <= 90; ++k) {
        add(PartKind::resistor, "R" + std::to_string(k), {{"resistance", 1000.0 + 10 * k}});
        add(PartKind::capacitor, "C" + std::to_string(k), test::leastValues(PartKind::capacitor));
    }
    return c;
}

class BuildPage : public testing::Test {
  protected:
    QString file() const { return folder.filePath("list.pdf"); }
    /// @return the text of each page, as a reader of the PDF sees it.
    QStringList print(const circuit::Circuit& c, QPageSize::PageSizeId paper,
                      const std::function<void(QPrinter&)>& with = {}) {
        {
            QPrinter printer(QPrinter::HighResolution);
            printer.setOutputFormat(QPrinter::PdfFormat);
            printer.setOutputFileName(file());
            printer.setPageSize(QPageSize(paper));
            if (with) with(printer);
            widgets::printBuildPage(printer, c, PartSet::A);
        }
        QStringList pages = read({"-layout"}).split(u'\f');
        if (!pages.isEmpty() && pages.back().trimmed().isEmpty()) pages.removeLast();
        return pages;
    }
    /// By pdftotext.
    QString read(const QStringList& options) const {
        QProcess reader;
        reader.start("pdftotext", QStringList{"-enc", "UTF-8"} + options + QStringList{file(), "-"});
        EXPECT_TRUE(reader.waitForFinished()) << "pdftotext is in poppler-utils";
        EXPECT_EQ(reader.exitCode(), 0) << reader.readAllStandardError().toStdString();
        return QString::fromUtf8(reader.readAllStandardOutput());
    }
    void picture(const char* name) const {
        ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
        QProcess::execute("pdftoppm", {"-png", "-r", "60", file(),
                                       QStringLiteral(BLINKWRIGHT_PICTURES "/") + QLatin1String(name)});
    }
    QTemporaryDir folder;
};

/// A text without the breaks that lines and columns put into it.
QString closedUp(QString text) {
    return text.remove(QRegularExpression(QStringLiteral("[\\s\u00A0]")));
}

class BuildPageOn : public BuildPage, public testing::WithParamInterface<QPageSize::PageSizeId> {};

TEST_P(BuildPageOn, EveryStepAndEveryPartIsOnThePaperOnceAndInOrder) {
    const circuit::Circuit c = longRow();
    const QStringList pages = print(c, GetParam());
    EXPECT_GE(pages.size(), 4);
    for (int k = 0; k < pages.size(); ++k) {
        EXPECT_EQ(pages[k].count("Page "), 1);
        EXPECT_TRUE(pages[k].trimmed().endsWith(QStringLiteral("Page %1 of %2").arg(k + 1).arg(pages.size())))
            << pages[k].right(80).toStdString();
    }
    QString text = read({"-raw"}); // as it was drawn: line by line within each cell
    text.remove(QRegularExpression(QStringLiteral("Page \\d+ of \\d+\\s+Channel markers|"
                                                  "Channel markers\\s+Page \\d+ of \\d+|Page \\d+ of \\d+")));
    const QString all = closedUp(text);
    qsizetype at = 0;
    for (const study::PartsRow& row : study::partsList(c, PartSet::A)) {
        QString wanted = QString::fromStdString(row.description + row.marking);
        for (const std::string& ref : row.refs)
            wanted += (ref == row.refs.front() ? "" : ",") + QString::fromStdString(ref);
        const qsizetype found = all.indexOf(closedUp(wanted), at);
        ASSERT_GE(found, 0) << wanted.toStdString();
        at = found;
    }
    int number = 0;
    for (const study::BuildStep& step : study::wiringList(c, PartSet::A)) {
        const QString wanted = closedUp(
            QStringLiteral("%1.%2").arg(QString::number(++number), QString::fromStdString(step.text)));
        const qsizetype found = all.indexOf(wanted, at);
        ASSERT_GE(found, 0) << wanted.toStdString();
        at = found + wanted.size();
    }
    EXPECT_EQ(number, static_cast<int>(c.parts().size()));
}

TEST_P(BuildPageOn, EveryWordKeepsToTheMarginsOfThePaper) {
    const QStringList pages = print(longRow(), GetParam());
    picture(GetParam() == QPageSize::A4 ? "print-A4" : "print-Letter");
    const QSizeF paper = QPageSize(GetParam()).size(QPageSize::Point);
    const QString words = read({"-bbox"});
    const QRegularExpression page(QStringLiteral("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\""));
    int seen = 0;
    for (auto match = page.globalMatch(words); match.hasNext(); ++seen) {
        const auto found = match.next();
        EXPECT_NEAR(found.captured(1).toDouble(), paper.width(), 1);
        EXPECT_NEAR(found.captured(2).toDouble(), paper.height(), 1);
    }
    EXPECT_EQ(seen, pages.size());
    constexpr double border_pt = 18 / 25.4 * 72, foot_pt = 9 / 25.4 * 72, rounding_pt = 1;
    double lowest = 0;
    const QRegularExpression word(QStringLiteral(
        "xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"));
    int count = 0;
    for (auto match = word.globalMatch(words); match.hasNext(); ++count) {
        const auto found = match.next();
        const std::string text = found.captured(5).toStdString();
        EXPECT_GE(found.captured(1).toDouble(), border_pt - rounding_pt) << text;
        EXPECT_GE(found.captured(2).toDouble(), border_pt - 2 * rounding_pt)
            << text; // the ascent of a heading
        EXPECT_LE(found.captured(3).toDouble(), paper.width() - border_pt + rounding_pt) << text;
        EXPECT_LE(found.captured(4).toDouble(), paper.height() - border_pt + foot_pt + rounding_pt) << text;
        lowest = std::max(lowest, found.captured(4).toDouble());
    }
    EXPECT_GT(count, 1000);
    EXPECT_GT(lowest, paper.height() - border_pt) << "the paper is used to its border";
}

INSTANTIATE_TEST_SUITE_P(Papers, BuildPageOn, testing::Values(QPageSize::A4, QPageSize::Letter),
                         [](const auto& row) { return row.param == QPageSize::A4 ? "A4" : "Letter"; });

TEST_F(BuildPage, AShortListIsOnePageWithoutAnyThatIsEmpty) {
    circuit::Circuit c;
    c.title = "Mast <top> & lamp";
    ASSERT_TRUE(c.addPart(PartKind::lamp, "D1", test::leastValues(PartKind::lamp)).ok());
    const QStringList pages = print(c, QPageSize::A4);
    ASSERT_EQ(pages.size(), 1);
    EXPECT_TRUE(pages[0].trimmed().startsWith("Mast <top> & lamp"));
    EXPECT_TRUE(pages[0].contains("Page 1 of 1"));
}

TEST_F(BuildPage, OnlyThePagesThatAreAskedForArePrintedUnderTheirOwnNumbers) {
    const QStringList all = print(longRow(), QPageSize::A4);
    const QStringList some =
        print(longRow(), QPageSize::A4, [](QPrinter& printer) { printer.setFromTo(2, 3); });
    ASSERT_EQ(some.size(), 2);
    EXPECT_EQ(some[0], all[1]);
    EXPECT_EQ(some[1], all[2]);
}

TEST_F(BuildPage, ATitleTooLongForTheFootIsShortenedThereAndWholeAbove) {
    circuit::Circuit c = longRow();
    c.title = "Channel markers";
    for (int k = 0; k < 12; ++k) c.title += " of the outer and the inner basin";
    const QStringList pages = print(c, QPageSize::A4);
    EXPECT_TRUE(closedUp(pages[0]).contains(closedUp(QString::fromStdString(c.title))));
    EXPECT_TRUE(pages[1].contains("Channel markers of the outer"));
    EXPECT_TRUE(pages[1].contains(QStringLiteral("…")));
    EXPECT_TRUE(pages[1].contains("Page 2 of"));
}

} // namespace
