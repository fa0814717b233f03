#include "app/sheet/odt_sheet.h"

#include "app/sheet/odt_styles.h"
#include "app/sheet/picture_bytes.h"
#include "app/sheet/sheet_sections.h"
#include "app/sheet/zip_file.h"

#include <QBuffer>
#include <QXmlStreamWriter>

namespace blinkwright::app::sheet {

namespace {

constexpr int pictureDpi = 300;
constexpr double cmPerPixel = 2.54 / 96;
const QByteArray odtType = "application/vnd.oasis.opendocument.text";
const QByteArray formulaType = "application/vnd.oasis.opendocument.formula";

/// Content of the document, with the files that it points to beside it.
class Writer {
  public:
    explicit Writer(double width_cm) : m_xml(&m_content), m_width(width_cm) {}

    struct File {
        QByteArray name, bytes, type;
    };
    std::vector<File> files;

    QByteArray content(const LabSheet& sheet) {
        m_xml.writeStartDocument();
        beginOdt(m_xml, QStringLiteral("document-content"));
        writeContentStyles(m_xml);
        m_xml.writeStartElement(QStringLiteral("office:body"));
        m_xml.writeStartElement(QStringLiteral("office:text"));
        text(QStringLiteral("Title"), sheet.title);
        if (!sheet.mark.isEmpty()) text(QStringLiteral("Subtitle"), sheet.mark);
        for (const Section& section : sheet.sections) {
            if (!section.title.isEmpty()) heading(section.title, 1);
            for (const Block& block : section.blocks) {
                if (!std::holds_alternative<Paragraph>(block)) endList();
                std::visit(*this, block);
            }
            endList();
        }
        m_xml.writeEndDocument();
        return m_content;
    }

    void operator()(const Paragraph& p) {
        const QString list = p.style == Paragraph::Style::bullet     ? QStringLiteral("Bullets")
                             : p.style == Paragraph::Style::numbered ? QStringLiteral("Numbers")
                                                                     : QString();
        if (list != m_list || (p.style == Paragraph::Style::numbered && p.number == 1)) {
            endList();
            if (!list.isEmpty()) {
                m_xml.writeStartElement(QStringLiteral("text:list"));
                m_xml.writeAttribute(QStringLiteral("text:style-name"), list);
            }
            m_list = list;
        }
        if (!list.isEmpty()) {
            m_xml.writeStartElement(QStringLiteral("text:list-item"));
            text(QStringLiteral("List_20_Item"), p.text);
            m_xml.writeEndElement();
        } else {
            text(p.style == Paragraph::Style::note ? QStringLiteral("Note") : QStringLiteral("Text_20_body"),
                 p.text);
        }
    }
    void operator()(const Subheading& s) { heading(s.text, 2); }
    void operator()(const Fields& fields) {
        beginTable(Words::tr("Fields"), {{{}, 1}, {{}, 2}, {{}, 1}, {{}, 2}});
        for (std::size_t k = 0; k < fields.fields.size(); k += 2) {
            m_xml.writeStartElement(QStringLiteral("table:table-row"));
            m_xml.writeAttribute(QStringLiteral("table:style-name"), QStringLiteral("WholeRow"));
            for (std::size_t n = k; n < k + 2; ++n) {
                const bool there = n < fields.fields.size();
                cell(QStringLiteral("Open"), QStringLiteral("Table_20_Text"),
                     there ? fields.fields[n].name + u':' : QString());
                cell(there ? QStringLiteral("Line") : QStringLiteral("Open"), QStringLiteral("Table_20_Text"),
                     there ? fields.fields[n].value : QString());
            }
            m_xml.writeEndElement();
        }
        m_xml.writeEndElement();
    }
    void operator()(const Table& table) {
        beginTable(table.name, table.columns);
        m_xml.writeStartElement(QStringLiteral("table:table-header-rows"));
        m_xml.writeStartElement(QStringLiteral("table:table-row"));
        m_xml.writeAttribute(QStringLiteral("table:style-name"), QStringLiteral("WholeRow"));
        for (const Column& c : table.columns)
            cell(QStringLiteral("Boxed"),
                 c.right ? QStringLiteral("Table_20_Head_20_Right") : QStringLiteral("Table_20_Head"),
                 c.title);
        m_xml.writeEndElement();
        m_xml.writeEndElement();
        for (const Table::Row& row : table.rows) {
            m_xml.writeStartElement(QStringLiteral("table:table-row"));
            const bool blank =
                std::any_of(row.cells.begin(), row.cells.end(), [](const Cell& c) { return c.blank; });
            m_xml.writeAttribute(QStringLiteral("table:style-name"),
                                 blank ? QStringLiteral("BlankRow") : QStringLiteral("WholeRow"));
            if (row.head) {
                cell(QStringLiteral("Boxed"), QStringLiteral("Table_20_Head"), row.cells.front().text,
                     static_cast<int>(table.columns.size()));
                for (std::size_t k = 1; k < table.columns.size(); ++k)
                    m_xml.writeEmptyElement(QStringLiteral("table:covered-table-cell"));
            } else {
                for (std::size_t k = 0; k < row.cells.size(); ++k)
                    cell(QStringLiteral("Boxed"),
                         table.columns[k].right ? QStringLiteral("Table_20_Right")
                                                : QStringLiteral("Table_20_Text"),
                         row.cells[k].text);
            }
            m_xml.writeEndElement();
        }
        m_xml.writeEndElement();
    }
    void operator()(const FormulaLines& lines) {
        for (const FormulaLines::Line& line : lines.lines) {
            const Formula equals = sign(QStringLiteral("="));
            formula(line.left ? row({*line.left, equals, line.right}) : row({equals, line.right}), !line.left,
                    line.meaning);
        }
    }
    void operator()(const Picture& picture) {
        beginParagraph(picture.caption.isEmpty() ? QStringLiteral("Text_20_body")
                                                 : QStringLiteral("Picture"));
        const double width = std::min(m_width, picture.size.width() * cmPerPixel);
        const double height = width * picture.size.height() / picture.size.width();
        beginFrame(width, height);
        image(picture, pngOf(picture, pictureDpi));
        m_xml.writeTextElement(QStringLiteral("svg:desc"), picture.words);
        m_xml.writeEndElement();
        m_xml.writeEndElement();
        if (!picture.caption.isEmpty()) text(QStringLiteral("Note"), picture.caption);
    }
    void operator()(const WritingLines& lines) {
        for (int k = 0; k < lines.count; ++k) text(QStringLiteral("Writing_20_Line"), {});
    }

  private:
    void beginParagraph(const QString& style) {
        m_xml.writeStartElement(QStringLiteral("text:p"));
        m_xml.writeAttribute(QStringLiteral("text:style-name"), style);
    }
    void text(const QString& style, const QString& words) {
        beginParagraph(style);
        m_xml.writeCharacters(words);
        m_xml.writeEndElement();
    }
    void heading(const QString& words, int level) {
        m_xml.writeStartElement(QStringLiteral("text:h"));
        m_xml.writeAttribute(QStringLiteral("text:style-name"), QStringLiteral("Heading_20_%1").arg(level));
        m_xml.writeAttribute(QStringLiteral("text:outline-level"), QString::number(level));
        m_xml.writeCharacters(words);
        m_xml.writeEndElement();
    }
    void endList() {
        if (!m_list.isEmpty()) m_xml.writeEndElement();
        m_list.clear();
    }
    void beginTable(const QString& name, const std::vector<Column>& columns) {
        m_xml.writeStartElement(QStringLiteral("table:table"));
        m_xml.writeAttribute(QStringLiteral("table:name"), QStringLiteral("%1 %2").arg(name).arg(++m_tables));
        m_xml.writeAttribute(QStringLiteral("table:style-name"), QStringLiteral("WholeTable"));
        double all = 0;
        for (const Column& c : columns) all += c.share;
        for (const Column& c : columns) {
            m_xml.writeEmptyElement(QStringLiteral("table:table-column"));
            m_xml.writeAttribute(QStringLiteral("table:style-name"), columnStyle(m_width * c.share / all));
        }
    }
    void cell(const QString& style, const QString& textStyle, const QString& words, int across = 1) {
        m_xml.writeStartElement(QStringLiteral("table:table-cell"));
        m_xml.writeAttribute(QStringLiteral("table:style-name"), style);
        m_xml.writeAttribute(QStringLiteral("office:value-type"), QStringLiteral("string"));
        if (across > 1)
            m_xml.writeAttribute(QStringLiteral("table:number-columns-spanned"), QString::number(across));
        text(textStyle, words);
        m_xml.writeEndElement();
    }
    void beginFrame(double width_cm, double height_cm) {
        m_xml.writeStartElement(QStringLiteral("draw:frame"));
        m_xml.writeAttribute(QStringLiteral("draw:style-name"), QStringLiteral("InText"));
        m_xml.writeAttribute(QStringLiteral("draw:name"), QStringLiteral("Frame %1").arg(++m_frames));
        m_xml.writeAttribute(QStringLiteral("text:anchor-type"), QStringLiteral("as-char"));
        m_xml.writeAttribute(QStringLiteral("svg:width"), cm(width_cm));
        m_xml.writeAttribute(QStringLiteral("svg:height"), cm(height_cm));
    }
    void link(const char* element, const QString& to) {
        m_xml.writeEmptyElement(QLatin1String(element));
        m_xml.writeAttribute(QStringLiteral("xlink:href"), to);
        m_xml.writeAttribute(QStringLiteral("xlink:type"), QStringLiteral("simple"));
        m_xml.writeAttribute(QStringLiteral("xlink:show"), QStringLiteral("embed"));
        m_xml.writeAttribute(QStringLiteral("xlink:actuate"), QStringLiteral("onLoad"));
    }
    void image(const Picture& picture, const QByteArray& png) {
        const QString name = QStringLiteral("Pictures/%1-%2.png").arg(picture.name).arg(++m_pictures);
        files.push_back({name.toUtf8(), png, "image/png"});
        link("draw:image", name);
    }
    /// An object that the word processor's formula editor opens, and a picture for those that have none.
    void formula(const Formula& f, bool goesOn, const QString& meaning) {
        const Picture picture = pictureOf(f);
        const QString folder = QStringLiteral("Object %1").arg(++m_objects);
        files.push_back({folder.toUtf8() + "/content.xml",
                         "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<math "
                         "xmlns=\"http://www.w3.org/1998/Math/MathML\"><semantics>" +
                             mathMl(f).toUtf8() + "</semantics></math>\n",
                         "text/xml"});
        files.push_back({folder.toUtf8() + "/", {}, formulaType});
        beginParagraph(goesOn ? QStringLiteral("Formula_20_On") : QStringLiteral("Formula"));
        beginFrame(picture.size.width() * cmPerPixel, picture.size.height() * cmPerPixel);
        link("draw:object", QStringLiteral("./") + folder);
        image(picture, pngOf(picture, pictureDpi));
        m_xml.writeTextElement(QStringLiteral("svg:desc"), picture.words);
        m_xml.writeEndElement();
        if (!meaning.isEmpty()) {
            m_xml.writeEmptyElement(QStringLiteral("text:tab"));
            m_xml.writeCharacters(meaning);
        }
        m_xml.writeEndElement();
    }

    QByteArray m_content;
    QXmlStreamWriter m_xml;
    double m_width;
    QString m_list;
    int m_tables = 0, m_frames = 0, m_pictures = 0, m_objects = 0;
};

QByteArray manifestOf(const std::vector<Writer::File>& files) {
    QByteArray bytes;
    QXmlStreamWriter xml(&bytes);
    xml.writeStartDocument();
    xml.writeStartElement(QStringLiteral("manifest:manifest"));
    xml.writeAttribute(QStringLiteral("xmlns:manifest"),
                       QStringLiteral("urn:oasis:names:tc:opendocument:xmlns:manifest:1.0"));
    xml.writeAttribute(QStringLiteral("manifest:version"), QStringLiteral("1.2"));
    const auto entry = [&](const QByteArray& path, const QByteArray& type) {
        xml.writeEmptyElement(QStringLiteral("manifest:file-entry"));
        xml.writeAttribute(QStringLiteral("manifest:full-path"), QString::fromUtf8(path));
        xml.writeAttribute(QStringLiteral("manifest:media-type"), QString::fromUtf8(type));
    };
    entry("/", odtType);
    for (const char* name : {"content.xml", "styles.xml", "meta.xml"}) entry(name, "text/xml");
    for (const Writer::File& file : files) entry(file.name, file.type);
    xml.writeEndDocument();
    return bytes;
}

} // namespace

QByteArray odtOf(const LabSheet& sheet, QPageSize::PageSizeId size) {
    const OdtPage page = odtPage(size);
    Writer writer(page.textWidth_cm());
    const QByteArray content = writer.content(sheet);
    ZipFile zip;
    zip.add("mimetype", odtType, ZipFile::Form::stored); // first and as it is: by it the package is known
    zip.add("content.xml", content);
    zip.add("styles.xml", odtStyles(sheet, page));
    zip.add("meta.xml", odtMeta(sheet));
    for (const Writer::File& file : writer.files) {
        if (file.name.endsWith('/')) continue; // the name of an object stands in the manifest alone
        zip.add(file.name, file.bytes,
                file.type == "image/png" ? ZipFile::Form::stored : ZipFile::Form::deflated);
    }
    zip.add("META-INF/manifest.xml", manifestOf(writer.files));
    return zip.finished();
}

} // namespace blinkwright::app::sheet
