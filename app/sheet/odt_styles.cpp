#include "app/sheet/odt_styles.h"

#include "app/sheet/sheet_sections.h"

#include <QLocale>
#include <QXmlStreamWriter>
#include <algorithm>
#include <array>
#include <utility>

namespace blinkwright::app::sheet {

namespace {

constexpr int mostMillimetres = 200; ///< of a column

constexpr std::array<std::pair<const char*, const char*>, 10> names{{
    {"office", "urn:oasis:names:tc:opendocument:xmlns:office:1.0"},
    {"style", "urn:oasis:names:tc:opendocument:xmlns:style:1.0"},
    {"text", "urn:oasis:names:tc:opendocument:xmlns:text:1.0"},
    {"table", "urn:oasis:names:tc:opendocument:xmlns:table:1.0"},
    {"draw", "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0"},
    {"fo", "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"},
    {"svg", "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0"},
    {"meta", "urn:oasis:names:tc:opendocument:xmlns:meta:1.0"},
    {"xlink", "http://www.w3.org/1999/xlink"},
    {"dc", "http://purl.org/dc/elements/1.1/"},
}};

QString attributes() {
    QString all;
    for (const auto& [name, uri] : names)
        all += QStringLiteral(" xmlns:%1=\"%2\"").arg(QLatin1String(name), QLatin1String(uri));
    return all + QStringLiteral(" office:version=\"1.2\"");
}

/// The language of all texts, for hyphenation and spelling: that of the window.
QString languageMark() {
    const bool english = QLocale().bcp47Name().startsWith(QLatin1String("en")); // as the plain one, too
    const QString name = english ? QStringLiteral("en_GB") : QLocale().name();
    return QStringLiteral("fo:language=\"%1\" fo:country=\"%2\"")
        .arg(name.section(u'_', 0, 0), name.section(u'_', 1, 1));
}

/// What the named styles of paragraphs, lists and the page are.
const char fixedStyles[] = R"(
<office:font-face-decls><style:font-face style:name="Sheet" svg:font-family="'DejaVu Sans'" style:font-family-generic="swiss"/></office:font-face-decls>
<office:styles>
<style:default-style style:family="paragraph"><style:paragraph-properties fo:orphans="2" fo:widows="2"/><style:text-properties style:font-name="Sheet" fo:font-size="10pt" %9 fo:color="#000000"/></style:default-style>
<style:default-style style:family="graphic"/>
<style:style style:name="Standard" style:family="paragraph" style:class="text"/>
<style:style style:name="Text_20_body" style:display-name="Text body" style:family="paragraph" style:parent-style-name="Standard" style:class="text"><style:paragraph-properties fo:margin-top="0.15cm" fo:margin-bottom="0.05cm"/></style:style>
<style:style style:name="Title" style:family="paragraph" style:parent-style-name="Standard" style:class="chapter"><style:text-properties fo:font-size="18pt" fo:font-weight="bold"/></style:style>
<style:style style:name="Subtitle" style:family="paragraph" style:parent-style-name="Standard" style:class="chapter"><style:text-properties fo:font-size="12pt" fo:font-weight="bold"/></style:style>
<style:style style:name="Heading" style:family="paragraph" style:parent-style-name="Standard" style:next-style-name="Text_20_body" style:class="text"><style:paragraph-properties fo:keep-with-next="always"/><style:text-properties fo:font-weight="bold"/></style:style>
<style:style style:name="Heading_20_1" style:display-name="Heading 1" style:family="paragraph" style:parent-style-name="Heading" style:next-style-name="Text_20_body" style:default-outline-level="1" style:class="text"><style:paragraph-properties fo:margin-top="0.45cm" fo:margin-bottom="0.1cm"/><style:text-properties fo:font-size="12.5pt"/></style:style>
<style:style style:name="Heading_20_2" style:display-name="Heading 2" style:family="paragraph" style:parent-style-name="Heading" style:next-style-name="Text_20_body" style:default-outline-level="2" style:class="text"><style:paragraph-properties fo:margin-top="0.25cm" fo:margin-bottom="0.1cm"/></style:style>
<style:style style:name="List_20_Item" style:display-name="List Item" style:family="paragraph" style:parent-style-name="Standard" style:class="list"><style:paragraph-properties fo:margin-top="0.06cm"/></style:style>
<style:style style:name="Note" style:family="paragraph" style:parent-style-name="Text_20_body" style:class="extra"><style:text-properties fo:font-size="8.5pt"/></style:style>
<style:style style:name="Picture" style:family="paragraph" style:parent-style-name="Text_20_body" style:class="extra"><style:paragraph-properties fo:keep-with-next="always" fo:text-align="center"/></style:style>
<style:style style:name="Formula" style:family="paragraph" style:parent-style-name="Text_20_body" style:class="text"><style:paragraph-properties fo:margin-left="0.7cm" fo:keep-with-next="always"><style:tab-stops><style:tab-stop style:position="8.5cm"/></style:tab-stops></style:paragraph-properties></style:style>
<style:style style:name="Formula_20_On" style:display-name="Formula On" style:family="paragraph" style:parent-style-name="Formula" style:class="text"><style:paragraph-properties fo:margin-left="1.25cm" fo:margin-top="0.05cm" fo:keep-with-next="auto"/></style:style>
<style:style style:name="Table_20_Text" style:display-name="Table Text" style:family="paragraph" style:parent-style-name="Standard" style:class="extra"><style:text-properties fo:font-size="9pt"/></style:style>
<style:style style:name="Table_20_Right" style:display-name="Table Right" style:family="paragraph" style:parent-style-name="Table_20_Text" style:class="extra"><style:paragraph-properties fo:text-align="end"/></style:style>
<style:style style:name="Table_20_Head" style:display-name="Table Head" style:family="paragraph" style:parent-style-name="Table_20_Text" style:class="extra"><style:text-properties fo:font-weight="bold"/></style:style>
<style:style style:name="Table_20_Head_20_Right" style:display-name="Table Head Right" style:family="paragraph" style:parent-style-name="Table_20_Head" style:class="extra"><style:paragraph-properties fo:text-align="end"/></style:style>
<style:style style:name="Writing_20_Line" style:display-name="Writing Line" style:family="paragraph" style:parent-style-name="Standard" style:class="extra"><style:paragraph-properties fo:margin-top="0.45cm" fo:border-bottom="0.02cm solid #888888"/></style:style>
<style:style style:name="Footer" style:family="paragraph" style:parent-style-name="Standard" style:class="extra"><style:paragraph-properties fo:border-top="0.02cm solid #000000" fo:padding-top="0.08cm"><style:tab-stops><style:tab-stop style:position="%1" style:type="right"/></style:tab-stops></style:paragraph-properties><style:text-properties fo:font-size="8.5pt"/></style:style>
<text:list-style style:name="Bullets"><text:list-level-style-bullet text:level="1" text:bullet-char="•"><style:list-level-properties text:space-before="0.1cm" text:min-label-width="0.5cm"/></text:list-level-style-bullet></text:list-style>
<text:list-style style:name="Numbers"><text:list-level-style-number text:level="1" style:num-format="1" style:num-suffix="."><style:list-level-properties text:space-before="0.1cm" text:min-label-width="0.7cm"/></text:list-level-style-number></text:list-style>
</office:styles>
<office:automatic-styles><style:page-layout style:name="Paper"><style:page-layout-properties fo:page-width="%2" fo:page-height="%3" style:print-orientation="portrait" fo:margin-left="%4" fo:margin-right="%4" fo:margin-top="%5" fo:margin-bottom="%6"/><style:footer-style><style:header-footer-properties fo:min-height="0.8cm" fo:margin-top="0.3cm"/></style:footer-style></style:page-layout></office:automatic-styles>
<office:master-styles><style:master-page style:name="Standard" style:page-layout-name="Paper"><style:footer><text:p text:style-name="Footer">%7<text:tab/>%8</text:p></style:footer></style:master-page></office:master-styles>
)";

const char contentStyles[] = R"(
<style:style style:name="WholeTable" style:family="table"><style:table-properties style:rel-width="100%" fo:margin-top="0.15cm" fo:margin-bottom="0.15cm" table:align="margins" table:border-model="collapsing"/></style:style>
<style:style style:name="WholeRow" style:family="table-row"><style:table-row-properties fo:keep-together="always"/></style:style>
<style:style style:name="BlankRow" style:family="table-row"><style:table-row-properties style:min-row-height="0.7cm" fo:keep-together="always"/></style:style>
<style:style style:name="Boxed" style:family="table-cell"><style:table-cell-properties fo:padding="0.08cm" fo:border="0.02cm solid #888888"/></style:style>
<style:style style:name="Open" style:family="table-cell"><style:table-cell-properties fo:padding="0.08cm" fo:border="none"/></style:style>
<style:style style:name="Line" style:family="table-cell"><style:table-cell-properties fo:padding="0.08cm" fo:border="none" fo:border-bottom="0.02cm solid #888888"/></style:style>
<style:style style:name="InText" style:family="graphic"><style:graphic-properties style:vertical-pos="middle" style:vertical-rel="text"/></style:style>
)";

} // namespace

QString cm(double value) {
    return QString::number(value, 'f', 3) + QStringLiteral("cm");
}

OdtPage odtPage(QPageSize::PageSizeId size) {
    const QSizeF mm = QPageSize(size).size(QPageSize::Millimeter);
    return {mm.width() / 10, mm.height() / 10};
}

void beginOdt(QXmlStreamWriter& xml, const QString& part) {
    xml.writeStartElement(QStringLiteral("office:") + part);
    for (const auto& [name, uri] : names)
        xml.writeAttribute(QStringLiteral("xmlns:") + QLatin1String(name), QLatin1String(uri));
    xml.writeAttribute(QStringLiteral("office:version"), QStringLiteral("1.2"));
}

QString columnStyle(double width_cm) {
    return QStringLiteral("Column%1").arg(std::clamp(qRound(width_cm * 10), 1, mostMillimetres));
}

void writeContentStyles(QXmlStreamWriter& xml) {
    xml.writeStartElement(QStringLiteral("office:automatic-styles"));
    xml.writeCharacters({}); // closes the tag, since what follows is written as it is
    xml.device()->write(contentStyles);
    for (int k = 1; k <= mostMillimetres; ++k)
        xml.device()->write(
            QStringLiteral("<style:style style:name=\"Column%1\" style:family=\"table-column\">"
                           "<style:table-column-properties style:column-width=\"%1mm\"/></style:style>\n")
                .arg(k)
                .toUtf8());
    xml.writeEndElement();
}

QByteArray odtStyles(const LabSheet& sheet, const OdtPage& page) {
    const QString number = Words::tr("Page %1 of %2")
                               .arg(QStringLiteral("<text:page-number text:select-page=\"current\"/>"),
                                    QStringLiteral("<text:page-count/>"));
    return (QStringLiteral("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document-styles") +
            attributes() + u'>' +
            QString::fromUtf8(fixedStyles)
                .arg(cm(page.textWidth_cm()), cm(page.width_cm), cm(page.height_cm), cm(OdtPage::side_cm),
                     cm(OdtPage::top_cm), cm(OdtPage::bottom_cm), sheet.foot().toHtmlEscaped(), number,
                     languageMark()) +
            QStringLiteral("</office:document-styles>\n"))
        .toUtf8();
}

QByteArray odtMeta(const LabSheet& sheet) {
    return (QStringLiteral("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<office:document-meta") +
            attributes() +
            QStringLiteral("><office:meta><meta:generator>Blinkwright</meta:generator><dc:title>%1</dc:title>"
                           "<dc:creator>%2</dc:creator></office:meta></office:document-meta>\n")
                .arg(sheet.foot().toHtmlEscaped(), sheet.author.toHtmlEscaped()))
        .toUtf8();
}

} // namespace blinkwright::app::sheet
