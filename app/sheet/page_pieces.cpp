#include "app/sheet/page_pieces.h"

#include "app/sheet/sheet_sections.h"
#include "widgets/curves/page_sheet.h"
#include "widgets/text/formula_layout.h"

#include <QFontMetricsF>
#include <QTextLayout>
#include <qcustomplot.h>

#include <algorithm>
#include <memory>
#include <numeric>

namespace blinkwright::app::sheet {

namespace {

constexpr int titleSize = 24, headSize = 16, subSize = 13;
constexpr double lineGap = 1.28; ///< of lines of a paragraph, in heights of its font
constexpr double paragraphGap = 6, headGap = 18, blockGap = 8, listIndent = 27;
constexpr double cellSide = 5, cellTop = 3; ///< between a cell's edge and its text
constexpr std::size_t manyColumns = 6;      ///< beyond, a table has smaller text
constexpr double blankRow = 27;             ///< least height of a row to write in: 7 mm
constexpr double writingLine = 32;          ///< 8.5 mm
constexpr double formulaIndent = 24, formulaGap = 7, captionGap = 4;
constexpr double meaningFrom = 0.55; ///< of the width: where a formula's words begin
constexpr double unjoined = 0.02;    ///< between letters [px], too little to be seen
constexpr double rule = 0.7, strongRule = 1.2;
constexpr double mostPicture = 0.62; ///< of the height of a page
const QColor ruleColour(0x88, 0x88, 0x88);

/// Text broken into lines of a width.
class Lines {
  public:
    Lines(const QString& text, const QFont& font, double width, Qt::Alignment side = Qt::AlignLeft)
        : m_layout(std::make_shared<QTextLayout>(text, font)) {
        QTextOption option(side);
        option.setUseDesignMetrics(true);
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        m_layout->setTextOption(option);
        m_layout->beginLayout();
        const double step = QFontMetricsF(font).height() * lineGap;
        for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
            line.setLineWidth(width);
            line.setPosition({0, m_height});
            m_tops.push_back(m_height);
            m_height += step;
        }
        m_layout->endLayout();
        m_step = step;
    }
    double height() const { return m_height; }
    double step() const { return m_step; }
    int count() const { return static_cast<int>(m_tops.size()); }
    double ascent() const { return m_tops.empty() ? 0 : m_layout->lineAt(0).ascent(); }
    void paint(QPainter& painter, QPointF at) const { m_layout->draw(&painter, at); }
    /// One line alone, its top at `at`.
    void paintLine(QPainter& painter, int line, QPointF at) const {
        m_layout->lineAt(line).draw(&painter, at - QPointF(0, m_tops[static_cast<std::size_t>(line)]));
    }

  private:
    std::shared_ptr<QTextLayout> m_layout; ///< shared by the pieces of one text
    std::vector<double> m_tops;
    double m_height = 0, m_step = 0;
};

class Cutter {
  public:
    Cutter(QSizeF room) : m_room(room) {}

    void title(const LabSheet& sheet) {
        text(sheet.title, sheetFont(titleSize, true), 0, 0, 0, true);
        if (!sheet.mark.isEmpty()) text(sheet.mark, sheetFont(headSize, true), 2, 0, 0, true);
    }
    void heading(const QString& title) { text(title, sheetFont(headSize, true), headGap, 0, 0, true); }

    void operator()(const Paragraph& p) {
        const bool listed = p.style == Paragraph::Style::bullet || p.style == Paragraph::Style::numbered;
        const QFont font = sheetFont(p.style == Paragraph::Style::note ? smallSize : bodySize);
        const std::size_t first = m_pieces.size();
        text(p.text, font, listed ? paragraphGap / 2 : paragraphGap, listed ? listIndent : 0, 2, false);
        if (!listed || first >= m_pieces.size()) return;
        const QString sign =
            p.style == Paragraph::Style::bullet ? QStringLiteral("•") : Words::tr("%1.").arg(p.number);
        auto mark = std::make_shared<Lines>(sign, font, listIndent);
        m_pieces[first].paint = [mark, rest = m_pieces[first].paint](QCPPainter& painter, QPointF at) {
            mark->paint(painter, at);
            rest(painter, at);
        };
    }

    void operator()(const Subheading& s) {
        text(s.text, sheetFont(subSize, true), paragraphGap + 4, 0, 0, true);
    }

    void operator()(const Fields& fields) {
        const QFont font = sheetFont(bodySize);
        const QFontMetricsF metrics(font);
        const double half = m_room.width() / 2, gap = 16, height = 28;
        for (std::size_t k = 0; k < fields.fields.size(); k += 2) {
            Piece piece;
            piece.height = height;
            piece.before = k == 0 ? paragraphGap : 0;
            piece.keepWithNext = k + 2 < fields.fields.size();
            piece.height += piece.keepWithNext ? 0 : paragraphGap;
            std::vector<Fields::Field> two(
                fields.fields.begin() + static_cast<std::ptrdiff_t>(k),
                fields.fields.begin() + static_cast<std::ptrdiff_t>(std::min(k + 2, fields.fields.size())));
            piece.paint = [=](QCPPainter& painter, QPointF at) {
                for (std::size_t n = 0; n < two.size(); ++n) {
                    const QPointF from = at + QPointF(static_cast<double>(n) * half, height - 6);
                    const double end = from.x() + half - (n == 0 ? gap : 0);
                    const QString name = two[n].name + QStringLiteral(": ");
                    const double begin = from.x() + metrics.horizontalAdvance(name) + 2;
                    painter.setFont(font);
                    painter.setPen(Qt::black);
                    painter.drawText(from, name);
                    painter.drawText(QPointF(begin, from.y()),
                                     metrics.elidedText(two[n].value, Qt::ElideRight, end - begin));
                    painter.setPen(QPen(ruleColour, rule));
                    painter.drawLine(QPointF(begin, from.y() + 3), QPointF(end, from.y() + 3));
                }
            };
            m_pieces.push_back(std::move(piece));
        }
    }

    void operator()(const Table& table);
    void operator()(const FormulaLines& lines);
    void operator()(const Picture& picture);

    void operator()(const WritingLines& lines) {
        for (int k = 0; k < lines.count; ++k)
            m_pieces.push_back({writingLine, 0, k == 0 && lines.count > 1, -1, false,
                                [width = m_room.width()](QCPPainter& painter, QPointF at) {
                                    painter.setPen(QPen(ruleColour, rule));
                                    painter.drawLine(at + QPointF(0, writingLine),
                                                     at + QPointF(width, writingLine));
                                }});
    }

    /// What was cut last is not to be the last of a page.
    void keepLast() {
        if (!m_pieces.empty()) m_pieces.back().keepWithNext = true;
    }
    std::vector<Piece> take() { return std::move(m_pieces); }

  private:
    /// A piece a line. @param together how many lines stay together at either end of the text.
    void text(const QString& words, const QFont& font, double before, double indent, int together,
              bool keep) {
        const Lines lines(words, font, m_room.width() - indent);
        for (int k = 0; k < lines.count(); ++k) {
            const bool near = k + 1 < together || k + together >= lines.count();
            Piece piece;
            piece.height = lines.step();
            piece.before = k == 0 ? before : 0;
            piece.keepWithNext = keep || (k + 1 < lines.count() && near);
            piece.paint = [lines, k, indent](QCPPainter& painter, QPointF at) {
                painter.setPen(Qt::black);
                lines.paintLine(painter, k, at + QPointF(indent, 0));
            };
            m_pieces.push_back(std::move(piece));
        }
    }

    QSizeF m_room;
    std::vector<Piece> m_pieces;
    int m_tables = 0;
};

/// Where the columns of a table begin, and after the last of them its end.
std::vector<double> edgesOf(const Table& table, double width) {
    double all = 0;
    for (const Column& column : table.columns) all += column.share;
    std::vector<double> edges{0};
    for (const Column& column : table.columns) edges.push_back(edges.back() + width * column.share / all);
    return edges;
}

struct LaidCell {
    double left;
    Lines lines;
};

/// A row of cells as a piece, with the rules about it.
Piece rowPiece(const std::vector<Cell>& cells, const Table& table, const std::vector<double>& edges,
               bool strong, bool across) {
    Piece piece;
    std::vector<LaidCell> laid;
    bool blank = false;
    double height = 0;
    const QFont font = sheetFont(table.columns.size() > manyColumns ? smallSize : tableSize, strong);
    for (std::size_t k = 0; k < cells.size() && k < table.columns.size(); ++k) {
        const double end = across ? edges.back() : edges[k + 1];
        blank = blank || cells[k].blank;
        laid.push_back(
            {edges[k] + cellSide, Lines(cells[k].text, font, end - edges[k] - 2 * cellSide,
                                        table.columns[k].right && !across ? Qt::AlignRight : Qt::AlignLeft)});
        height = std::max(height, laid.back().lines.height());
    }
    piece.height = std::max(height + 2 * cellTop, blank ? blankRow : 0);
    const bool inner = !across;
    piece.paint = [laid, edges, height = piece.height, inner, strong](QCPPainter& painter, QPointF at) {
        painter.setPen(Qt::black);
        for (const LaidCell& cell : laid) cell.lines.paint(painter, at + QPointF(cell.left, cellTop));
        painter.setPen(QPen(ruleColour, rule));
        for (std::size_t k = 0; k < edges.size(); ++k)
            if (inner || k == 0 || k + 1 == edges.size())
                painter.drawLine(at + QPointF(edges[k], 0), at + QPointF(edges[k], height));
        painter.drawLine(at, at + QPointF(edges.back(), 0));
        painter.setPen(
            QPen(strong && inner ? QColor(Qt::black) : ruleColour, strong && inner ? strongRule : rule));
        painter.drawLine(at + QPointF(0, height), at + QPointF(edges.back(), height));
    };
    return piece;
}

void Cutter::operator()(const Table& table) {
    const std::vector<double> edges = edgesOf(table, m_room.width());
    const int number = m_tables++;
    std::vector<Cell> titles;
    for (const Column& column : table.columns) titles.push_back({column.title});
    Piece head = rowPiece(titles, table, edges, true, false);
    head.before = blockGap;
    head.table = number;
    head.isTableHead = head.keepWithNext = true;
    m_pieces.push_back(std::move(head));
    for (std::size_t k = 0; k < table.rows.size(); ++k) {
        const Table::Row& row = table.rows[k];
        Piece piece = rowPiece(row.cells, table, edges, row.head, row.head);
        piece.table = number;
        piece.keepWithNext = row.head || k + 2 == table.rows.size(); // no last row alone
        m_pieces.push_back(std::move(piece));
    }
}

void Cutter::operator()(const FormulaLines& lines) {
    const QFont font = sheetFont(bodySize + 1);
    double left = 0;
    for (const FormulaLines::Line& line : lines.lines)
        if (line.left) left = std::max(left, measured(*line.left, font).width);
    for (std::size_t k = 0; k < lines.lines.size(); ++k) {
        const FormulaLines::Line& line = lines.lines[k];
        const Formula right = row({sign(QStringLiteral("=")), line.right});
        FormulaBox box = measured(right, font);
        if (line.left) {
            const FormulaBox own = measured(*line.left, font);
            box.ascent = std::max(box.ascent, own.ascent);
            box.descent = std::max(box.descent, own.descent);
        }
        Piece piece;
        piece.height = box.ascent + box.descent;
        piece.before = line.left ? formulaGap : formulaGap / 2;
        piece.keepWithNext = k + 1 < lines.lines.size() && !lines.lines[k + 1].left;
        const double shrink =
            std::min(1.0, (m_room.width() - formulaIndent - left) / std::max(1.0, box.width));
        piece.paint = [=, ascent = box.ascent, width = m_room.width()](QCPPainter& painter, QPointF at) {
            painter.setPen(Qt::black);
            const QPointF base = at + QPointF(formulaIndent, ascent);
            if (line.left) {
                const double own = measured(*line.left, font).width;
                paintFormula(painter, *line.left, font, base + QPointF(left - own, 0));
            }
            if (!line.meaning.isEmpty() && left + box.width < meaningFrom * width) {
                painter.setFont(sheetFont(smallSize));
                painter.drawText(QPointF(at.x() + meaningFrom * width, base.y()), line.meaning);
            }
            painter.translate(base + QPointF(left, 0));
            painter.scale(shrink, shrink); // a formula of many parts still stays on the page
            paintFormula(painter, right, font, {0, 0});
        };
        m_pieces.push_back(std::move(piece));
    }
}

void Cutter::operator()(const Picture& picture) {
    const double scale = std::min(
        {1.0, m_room.width() / picture.size.width(), mostPicture * m_room.height() / picture.size.height()});
    const QSizeF size = QSizeF(picture.size) * scale;
    const double left = (m_room.width() - size.width()) / 2;
    m_pieces.push_back({size.height(), blockGap, !picture.caption.isEmpty(), -1, false,
                        [paint = picture.paint, scale, left](QCPPainter& painter, QPointF at) {
                            painter.translate(at + QPointF(left, 0));
                            painter.scale(scale, scale);
                            paint(painter);
                        }});
    if (!picture.caption.isEmpty()) text(picture.caption, sheetFont(smallSize), captionGap, 0, 9, false);
}

/// Whether a block is the sentence before a table, a picture or a formula.
bool leadsOnTo(const Block& block, const Block& next) {
    const auto* paragraph = std::get_if<Paragraph>(&block);
    return paragraph && paragraph->style == Paragraph::Style::body &&
           (std::holds_alternative<Table>(next) || std::holds_alternative<Picture>(next) ||
            std::holds_alternative<FormulaLines>(next));
}

} // namespace

QFont sheetFont(int size_px, bool strong) {
    QFont font = widgets::PageSheet::font();
    font.setPixelSize(size_px);
    font.setBold(strong);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any spacing at all keeps letters from being joined to ligatures, in which a search of the file would
    // not find a "flash".
    font.setLetterSpacing(QFont::AbsoluteSpacing, unjoined);
    return font;
}

std::vector<Piece> piecesOf(const LabSheet& sheet, QSizeF room) {
    Cutter cutter(room);
    cutter.title(sheet);
    for (const Section& section : sheet.sections) {
        if (!section.title.isEmpty()) cutter.heading(section.title);
        for (std::size_t k = 0; k < section.blocks.size(); ++k) {
            std::visit(cutter, section.blocks[k]);
            if (k + 1 < section.blocks.size() && leadsOnTo(section.blocks[k], section.blocks[k + 1]))
                cutter.keepLast();
        }
    }
    return cutter.take();
}

} // namespace blinkwright::app::sheet
