#include "core/io/record_layout.h"

#include "core/io/text_cells.h"
#include "core/units/engineering.h"

namespace blinkwright::io {

using units::formatQuantity;
using units::Unit;

namespace {

std::string columnText(const RecordLayout& layout, std::size_t column) {
    const std::string number = "Column " + std::to_string(column + 1);
    const std::string& name = column < layout.columns.size() ? layout.columns[column] : std::string();
    return name.empty() ? number : number + " (\u201C" + name + "\u201D)";
}

std::string linesText(std::size_t from, std::size_t count) {
    if (count == 1) return "Line " + std::to_string(from + 1);
    return "Lines " + std::to_string(from + 1) + " to " + std::to_string(from + count);
}

/// `mV` of 0.001 and a volt; any other factor with its number.
std::string unitText(double one, Unit unit) {
    const units::Prefix prefix = units::prefixFor(one);
    if (prefix.factor == one) return std::string(prefix.text) + std::string(units::symbol(unit));
    return formatQuantity(one, unit);
}

std::string voltageText(const VoltageColumn& column) {
    const std::string unit = unitText(column.unit_V, Unit::volt);
    if (column.of == circuit::TraceOf::other) return "something else, in " + unit;
    const std::string of = column.of == circuit::TraceOf::output ? "the output" : "the timing capacitor";
    return of + ", in " + unit;
}

} // namespace

std::string_view name(Separator separator) {
    switch (separator) {
    case Separator::comma:
        return "comma";
    case Separator::semicolon:
        return "semicolon";
    case Separator::tab:
        return "tab";
    case Separator::blanks:
        return "blanks";
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
    const std::string between =
        layout.separator == Separator::blanks ? "blanks" : "a " + std::string(name(layout.separator));
    said.push_back("Between two columns stands " + between + ", the decimal mark is a " +
                   (layout.decimalMark == ',' ? "comma." : "point."));
    if (layout.preambleLines > 0)
        said.push_back(linesText(0, layout.preambleLines) + " above the table " +
                       (layout.preambleLines == 1 ? "is" : "are") + " passed over.");
    said.push_back(layout.headerLines == 0
                       ? "The columns have no names."
                       : linesText(layout.preambleLines, layout.headerLines) +
                             (layout.headerLines == 1 ? " names the columns." : " name the columns."));
    if (layout.timeColumn)
        said.push_back(columnText(layout, *layout.timeColumn) + " is the time, in " +
                       unitText(layout.timeUnit_s, Unit::second) + ".");
    else
        said.push_back("There is no time column: one row follows the other by " +
                       formatQuantity(layout.step_s, Unit::second, 6) + ".");
    for (const VoltageColumn& column : layout.voltages)
        said.push_back(columnText(layout, column.column) + " is " + voltageText(column) +
                       (column.named ? "." : ", unless its shape says otherwise."));
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
