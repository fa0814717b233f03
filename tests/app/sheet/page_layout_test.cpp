#include "app/sheet/page_pieces.h"
#include "app/sheet/pdf_sheet.h"
#include "tests/app/sheet/sheet_fixture.h"

namespace {

using namespace blinkwright;
using namespace blinkwright::app::sheet;
using namespace blinkwright::test;

LabSheet withBlocks(std::vector<Block> blocks) {
    LabSheet sheet;
    sheet.title = "Sheet";
    sheet.sections.push_back({Topic::readings, "Section", std::move(blocks)});
    return sheet;
}

/// Where pages are broken, as the pages' texts by pdftotext.
QStringList pagesOf(const LabSheet& sheet) {
    QTemporaryDir folder;
    const QString path = folder.filePath("a.pdf");
    writeFile(path, pdfOf(sheet, QPageSize::A4).value());
    QString text = QString::fromUtf8(toolOutput("pdftotext", {"-layout", path, "-"}));
    QStringList pages = text.split(u'\f');
    pages.removeLast();
    return pages;
}

TEST(SheetPages, AHeadingIsNeverTheLastOfAPage) {
    // Filled up line by line, so that the heading comes by the end of the page at every offset.
    for (int lines = 26; lines < 44; ++lines) {
        LabSheet sheet = withBlocks({});
        for (int k = 0; k < lines; ++k)
            sheet.sections.front().blocks.emplace_back(Paragraph{QStringLiteral("Line %1").arg(k)});
        sheet.sections.push_back({Topic::why, "Heading here", {Paragraph{"Its text"}}});
        for (const QString& page : pagesOf(sheet))
            EXPECT_EQ(page.contains("Heading here"), page.contains("Its text")) << lines;
    }
}

TEST(SheetPages, ATableGoesOnUnderItsHeadRowAndNoRowIsSplit) {
    Table table;
    table.columns = {{"Name of it", 1}, {"Long text", 3}};
    for (int k = 0; k < 60; ++k)
        table.rows.push_back({{{QStringLiteral("Row %1").arg(k)},
                               {QStringLiteral("begin%1 ").arg(k) + QString("word ").repeated(40) +
                                QStringLiteral("end%1.").arg(k)}},
                              false});
    const QStringList pages = pagesOf(withBlocks({table}));
    ASSERT_GT(pages.size(), 2);
    for (const QString& page : pages) EXPECT_TRUE(page.contains("Name of it"));
    for (int k = 0; k < 60; ++k)
        for (const QString& page : pages)
            EXPECT_EQ(page.contains(QStringLiteral("begin%1 ").arg(k)),
                      page.contains(QStringLiteral("end%1.").arg(k)))
                << k;
}

TEST(SheetPages, EveryPageHasItsNumberAndTheTitle) {
    LabSheet sheet = withBlocks({});
    for (int k = 0; k < 120; ++k) sheet.sections.front().blocks.emplace_back(Paragraph{"Text"});
    sheet.mark = "Variant 3";
    const QStringList pages = pagesOf(sheet);
    ASSERT_GT(pages.size(), 1);
    for (qsizetype k = 0; k < pages.size(); ++k) {
        EXPECT_TRUE(pages[k].contains(QStringLiteral("Page %1 of %2").arg(k + 1).arg(pages.size()))) << k;
        EXPECT_TRUE(pages[k].contains("Sheet · Variant 3")) << k;
    }
}

TEST(SheetPages, APictureLargerThanThePageIsMadeToFit) {
    Picture picture{"huge", "Caption", "words", {3000, 4000}, [](QCPPainter&) {}};
    const std::vector<Piece> pieces = piecesOf(withBlocks({picture}), {600, 900});
    for (const Piece& piece : pieces) EXPECT_LT(piece.height, 900);
}

TEST(SheetPages, AWordWithoutAGapIsBrokenRatherThanCutOff) {
    const QStringList pages = pagesOf(withBlocks({Paragraph{QString(400, u'x')}}));
    EXPECT_EQ(pages.join("").count('x'), 400);
}

} // namespace
