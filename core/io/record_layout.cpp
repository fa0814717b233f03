#include "core/io/record_layout.h"

#include "core/base/wording.h"
#include "core/io/text_cells.h"
#include "core/units/engineering.h"

namespace blinkwright::io {

using units::formatQuantity;
using units::Unit;

namespace {

std::string columnText(const RecordLayout& layout, std::size_t column) {
    const std::string name = column < layout.columns.size() ? layout.columns[column] : std::string();
    return name.empty() ? wording::inWords("Column %1", column + 1)
                        : wording::inWords("Column %1 (\u201C%2\u201D)", column + 1, name);
}

/// `mV` of 0.001 and a volt; any other factor with its number.
std::string unitText(double one, Unit unit) {
    const units::Prefix prefix = units::prefixFor(one);
    if (prefix.factor == one) return std::string(prefix.text) + std::string(units::symbol(unit));
    return formatQuantity(one, unit);
}

std::string voltageText(const VoltageColumn& column) {
    const std::string unit = unitText(column.unit_V, Unit::volt);
    if (column.of == circuit::TraceOf::other) return wording::inWords("something else, in %1", unit);
    return column.of == circuit::TraceOf::output ? wording::inWords("the output, in %1", unit)
                                                 : wording::inWords("the timing capacitor, in %1", unit);
}

std::string separatorText(Separator separator) {
    switch (separator) {
    case Separator::comma:
        return wording::inWords("a comma");
    case Separator::semicolon:
        return wording::inWords("a semicolon");
    case Separator::tab:
        return wording::inWords("a tab");
    case Separator::blanks:
        break;
    }
    return wording::inWords("blanks");
}

std::string passedOverText(std::size_t lines) {
    if (lines == 1) return wording::inWords("Line 1 above the table is passed over.");
    return wording::inWords("Lines 1 to %1 above the table are passed over.", lines);
}

std::string namesText(std::size_t above, std::size_t lines) {
    if (lines == 0) return wording::inWords("The columns have no names.");
    if (lines == 1) return wording::inWords("Line %1 names the columns.", above + 1);
    return wording::inWords("Lines %1 to %2 name the columns.", above + 1, above + lines);
}

} // namespace

std::string_view name(Separator separator) {
    switch (separator) {
    case Separator::comma:
        return wording::marked("comma");
    case Separator::semicolon:
        return wording::marked("semicolon");
    case Separator::tab:
        return wording::marked("tab");
    case Separator::blanks:
        return wording::marked("blanks");
    }
    return {};
}

char charOf(Separator separator) {
    switch (separator) {
    case Separator::comma:
        return ',';
    case Separator::semicolon:
        return ';';
    case Separator::tab:
        return '\t';
    case Separator::blanks:
        break;
    }
    return TextCells::anyBlanks;
}

std::vector<std::string> saidOf(const RecordLayout& layout) {
    std::vector<std::string> said;
    const std::string between = separatorText(layout.separator);
    said.push_back(
        layout.decimalMark == ','
            ? wording::inWords("Between two columns stands %1, the decimal mark is a comma.", between)
            : wording::inWords("Between two columns stands %1, the decimal mark is a point.", between));
    if (layout.preambleLines > 0) said.push_back(passedOverText(layout.preambleLines));
    said.push_back(namesText(layout.preambleLines, layout.headerLines));
    if (layout.timeColumn)
        said.push_back(wording::inWords("%1 is the time, in %2.", columnText(layout, *layout.timeColumn),
                                        unitText(layout.timeUnit_s, Unit::second)));
    else
        said.push_back(wording::inWords("There is no time column: one row follows the other by %1.",
                                        formatQuantity(layout.step_s, Unit::second, 6)));
    for (const VoltageColumn& column : layout.voltages) {
        const std::string which = columnText(layout, column.column), what = voltageText(column);
        said.push_back(column.named
                           ? wording::inWords("%1 is %2.", which, what)
                           : wording::inWords("%1 is %2, unless its shape says otherwise.", which, what));
    }
    return said;
}

std::vector<std::vector<std::string>> firstRows(std::string_view beginning, Separator separator,
                                                std::size_t most) {
    constexpr std::size_t mostCells = 64;
    if (beginning.starts_with(byteOrderMark)) beginning.remove_prefix(byteOrderMark.size());
    std::vector<std::vector<std::string>> rows;
    for (TextLines lines(beginning); rows.size() < most && lines.next();) {
        rows.emplace_back();
        for (TextCells cells(lines.line(), charOf(separator));
             cells.next() && rows.back().size() < mostCells;)
            rows.back().push_back(cells.text());
    }
    return rows;
}

} // namespace blinkwright::io
