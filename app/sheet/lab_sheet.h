// A lab sheet as a document without a form: sections of paragraphs, tables, formulas and pictures. The
// writers (pdf_sheet.h, html_sheet.h, odt_sheet.h) give it one.
//
//   LabSheet sheet = makeLabSheet(facts, words, choice);      // make_sheet.h
//   writePdf(sheet, QPageSize::A4, "mole.pdf");
#pragma once

#include "widgets/text/formula.h"

#include <QSize>
#include <QString>
#include <functional>
#include <optional>
#include <variant>
#include <vector>

class QCPPainter;

namespace blinkwright::app::sheet {

using namespace widgets::formula; // formulas are blocks like the others

struct Paragraph {
    enum class Style { body, bullet, numbered, note };
    QString text = {};
    Style style = Style::body;
    int number = 0; ///< of a numbered one
};

struct Subheading {
    QString text;
};

/// `Author: …`, two a row; an empty value is a line to write on.
struct Fields {
    struct Field {
        QString name, value;
    };
    std::vector<Field> fields;
};

struct Cell {
    QString text;
    bool blank = false; ///< to be written in by hand
};
struct Column {
    QString title;
    double share = 1;   ///< of the width, among those of all columns
    bool right = false; ///< set to the right: numbers
};
struct Table {
    QString name; ///< for those who cannot see it
    std::vector<Column> columns;
    struct Row {
        std::vector<Cell> cells; ///< one for each column; of a head row the first alone
        bool head = false;       ///< the name of what follows
    };
    std::vector<Row> rows;
};

/// Lines with their signs below one another; a left side that is empty goes on with the line above.
struct FormulaLines {
    struct Line {
        std::optional<Formula> left;
        Formula right;
        QString meaning = {}; ///< what stands on the left, in words
    };
    std::vector<Line> lines;
};

/// Painted on white, in pixels of 96 to the inch, from the upper left.
struct Picture {
    QString name;    ///< `drawing`; the name of its file where it has one
    QString caption; ///< below it
    QString words;   ///< for those who cannot see it
    QSize size;
    std::function<void(QCPPainter&)> paint;
};

/// Room to write: so many ruled lines.
struct WritingLines {
    int count = 0;
};

using Block = std::variant<Paragraph, Subheading, Fields, Table, FormulaLines, Picture, WritingLines>;

/// The sections, each of which can be left out.
enum class Topic {
    head,
    aim,
    theory,
    drawing,
    parts,
    wiring,
    cautions,
    method,
    readings,
    traces,
    spread,
    findings,
    why,
    conclusions,
    references,
};
inline constexpr Topic allTopics[] = {Topic::head,     Topic::aim,         Topic::theory,    Topic::drawing,
                                      Topic::parts,    Topic::wiring,      Topic::cautions,  Topic::method,
                                      Topic::readings, Topic::traces,      Topic::spread,    Topic::findings,
                                      Topic::why,      Topic::conclusions, Topic::references};
/// As `--sections` takes it: `readings`.
const char* keyOf(Topic topic);
std::optional<Topic> topicNamed(const QString& key);
QString titleOf(Topic topic);

struct Section {
    Topic topic{};
    QString title; ///< empty: no heading
    std::vector<Block> blocks;
};

struct LabSheet {
    QString title;
    QString mark; ///< `Answer key, variant 7`; in the foot of every page; may be empty
    QString author;
    std::vector<Section> sections;
    QString foot() const { return mark.isEmpty() ? title : title + QStringLiteral(" · ") + mark; }
};

} // namespace blinkwright::app::sheet
