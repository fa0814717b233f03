#include "app/sheet/html_sheet.h"

#include "app/sheet/picture_bytes.h"

#include <QLocale>

namespace blinkwright::app::sheet {

namespace {

constexpr int headerLevel = 2;

// Always black on white; on paper a row, a picture and a heading with what follows it stay whole.
const char style[] = R"(
:root { color-scheme: light; }
body { background: #fff; color: #000; font: 11pt/1.4 "DejaVu Sans", Verdana, sans-serif; max-width: 46em;
  margin: 2em auto; padding: 0 1em; }
h1 { font-size: 1.8em; margin: 0 0 .2em; } h2 { font-size: 1.25em; margin: 1.4em 0 .4em; }
h3 { font-size: 1em; margin: 1em 0 .3em; } .mark { font-weight: bold; font-size: 1.2em; margin: 0; }
p { margin: .4em 0; } .note { font-size: .85em; } ul, ol { margin: .4em 0; padding-left: 1.8em; }
table.data { border-collapse: collapse; width: 100%; font-size: .9em; margin: .6em 0; }
table.data th, table.data td { border: 1px solid #888; padding: .2em .45em; vertical-align: top; text-align: left; }
table.data th.number, table.data td.number { text-align: right; } td.blank { height: 2em; }
table.data th.section { background: #f2f2f2; }
dl { display: grid; grid-template-columns: auto 1fr auto 1fr; gap: .5em .8em; margin: .8em 0; }
dd { margin: 0; border-bottom: 1px solid #888; min-height: 1.4em; }
figure { margin: .8em 0; text-align: center; } figcaption { font-size: .85em; text-align: left; }
svg { height: auto; } math { font-size: 1.1em; margin: .4em 0 .4em 1.5em; } mtd { padding: .25em .15em; }
mtd.meaning { padding-left: 3em; text-align: left; font-size: .8em; }
.lines div { border-bottom: 1px solid #888; height: 2.2em; }
footer { border-top: 1px solid #888; margin-top: 2em; font-size: .85em; }
@page { margin: 18mm 20mm; }
@media print { body { max-width: none; margin: 0; padding: 0; } tr, figure, .lines div, dl { break-inside: avoid; }
  h2, h3 { break-after: avoid; } thead { display: table-header-group; } }
)";

QString escaped(const QString& text) {
    return text.toHtmlEscaped();
}

class Writer {
  public:
    QString html;

    void operator()(const Paragraph& p) {
        const QString wanted = p.style == Paragraph::Style::bullet     ? QStringLiteral("ul")
                               : p.style == Paragraph::Style::numbered ? QStringLiteral("ol")
                                                                       : QString();
        if (wanted != m_list || (p.style == Paragraph::Style::numbered && p.number == 1)) {
            endList();
            if (!wanted.isEmpty()) html += u'<' + wanted + QStringLiteral(">\n");
            m_list = wanted;
        }
        if (!wanted.isEmpty())
            html += QStringLiteral("<li>%1</li>\n").arg(escaped(p.text));
        else
            html +=
                QStringLiteral("<p%1>%2</p>\n")
                    .arg(p.style == Paragraph::Style::note ? QStringLiteral(" class=\"note\"") : QString(),
                         escaped(p.text));
    }
    void operator()(const Subheading& s) { html += QStringLiteral("<h3>%1</h3>\n").arg(escaped(s.text)); }
    void operator()(const Fields& fields) {
        html += QStringLiteral("<dl>\n");
        for (const Fields::Field& f : fields.fields)
            html += QStringLiteral("<dt>%1:</dt><dd>%2</dd>\n").arg(escaped(f.name), escaped(f.value));
        html += QStringLiteral("</dl>\n");
    }
    void operator()(const Table& table) {
        html +=
            QStringLiteral("<table class=\"data\" aria-label=\"%1\">\n<thead><tr>").arg(escaped(table.name));
        for (const Column& c : table.columns)
            html += QStringLiteral("<th scope=\"col\"%1>%2</th>").arg(classOf(c), escaped(c.title));
        html += QStringLiteral("</tr></thead>\n<tbody>\n");
        for (const Table::Row& row : table.rows) {
            html += QStringLiteral("<tr>");
            if (row.head)
                html += QStringLiteral("<th class=\"section\" colspan=\"%1\">%2</th>")
                            .arg(table.columns.size())
                            .arg(escaped(row.cells.front().text));
            else
                for (std::size_t k = 0; k < row.cells.size(); ++k)
                    html += QStringLiteral("<td%1>%2</td>")
                                .arg(row.cells[k].blank ? QStringLiteral(" class=\"blank\"")
                                                        : classOf(table.columns[k]),
                                     escaped(row.cells[k].text));
            html += QStringLiteral("</tr>\n");
        }
        html += QStringLiteral("</tbody></table>\n");
    }
    void operator()(const FormulaLines& lines) {
        html += QStringLiteral("<div><math><mtable>\n");
        for (const FormulaLines::Line& line : lines.lines)
            html += QStringLiteral(
                        "<mtr><mtd style=\"text-align:right\">%1</mtd><mtd><mo>=</mo></mtd>"
                        "<mtd style=\"text-align:left\"><mstyle displaystyle=\"true\">%2</mstyle></mtd>"
                        "<mtd class=\"meaning\"><mtext>%3</mtext></mtd></mtr>\n")
                        .arg(line.left ? mathMl(*line.left) : QString(), mathMl(line.right),
                             escaped(line.meaning));
        html += QStringLiteral("</mtable></math></div>\n");
    }
    void operator()(const Picture& picture) {
        html += QStringLiteral("<figure>\n%1\n")
                    .arg(QString::fromUtf8(svgOf(picture, QStringLiteral("p%1-").arg(++m_pictures))));
        if (!picture.caption.isEmpty())
            html += QStringLiteral("<figcaption>%1</figcaption>\n").arg(escaped(picture.caption));
        html += QStringLiteral("</figure>\n");
    }
    void operator()(const WritingLines& lines) {
        html += QStringLiteral("<div class=\"lines\">");
        for (int k = 0; k < lines.count; ++k) html += QStringLiteral("<div></div>");
        html += QStringLiteral("</div>\n");
    }

    void block(const Block& b) {
        if (!std::holds_alternative<Paragraph>(b)) endList();
        std::visit(*this, b);
    }
    void endList() {
        if (!m_list.isEmpty()) html += QStringLiteral("</%1>\n").arg(m_list);
        m_list.clear();
    }

  private:
    static QString classOf(const Column& c) {
        return c.right ? QStringLiteral(" class=\"number\"") : QString();
    }
    QString m_list;
    int m_pictures = 0;
};

} // namespace

QByteArray htmlOf(const LabSheet& sheet) {
    Writer writer;
    writer.html =
        QStringLiteral("<!DOCTYPE html>\n<html lang=\"%4\">\n<head>\n<meta charset=\"utf-8\">\n"
                       "<meta name=\"viewport\" content=\"width=device-width\">\n<title>%1</title>\n"
                       "<style>%2</style>\n</head>\n<body>\n<h1>%3</h1>\n")
            .arg(escaped(sheet.foot()), QLatin1String(style), escaped(sheet.title), QLocale().bcp47Name());
    if (!sheet.mark.isEmpty())
        writer.html += QStringLiteral("<p class=\"mark\">%1</p>\n").arg(escaped(sheet.mark));
    for (const Section& section : sheet.sections) {
        if (!section.title.isEmpty())
            writer.html += QStringLiteral("<h%1>%2</h%1>\n").arg(headerLevel).arg(escaped(section.title));
        for (const Block& block : section.blocks) writer.block(block);
        writer.endList();
    }
    writer.html += QStringLiteral("<footer>%1</footer>\n</body>\n</html>\n").arg(escaped(sheet.foot()));
    return writer.html.toUtf8();
}

} // namespace blinkwright::app::sheet
