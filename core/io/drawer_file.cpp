#include "core/io/drawer_file.h"

#include "core/base/wording.h"
#include "core/io/text_cells.h"
#include "core/study/drawer_cells.h"
#include "core/units/engineering.h"

namespace blinkwright::io {

using study::Stock;

namespace {

constexpr std::string_view header = "kind,value,tolerance,rating,quantity",
                           commaHeader = "kind;value;tolerance;rating;quantity";
constexpr std::size_t columns = 5;
constexpr std::size_t mostRows = 10'000;

/// The fields of one line by RFC 4180; with semicolons between them as spreadsheets write it where the comma
/// is the decimal sign. No field of a drawer holds one.
Result<std::vector<std::string>> fieldsOf(std::string_view line) {
    std::vector<std::string> fields;
    TextCells cells(line, line.find(';') == line.npos ? ',' : ';');
    while (cells.next()) fields.push_back(cells.text());
    if (cells.isOpen()) return Fault{"", wording::inWords("has a quote that does not end")};
    return fields;
}

Result<Stock> stockOf(const std::vector<std::string>& fields) {
    if (fields.size() > columns)
        return Fault{"",
                     wording::inWords("has %1 fields, where there are %2 columns", fields.size(), columns)};
    const auto at = [&](std::size_t k) { return k < fields.size() ? fields[k] : std::string(); };
    Stock stock;
    // The kind comes first: it says what the value and the rating are of.
    for (const study::DrawerColumn column : study::drawerColumns)
        if (auto set = setDrawerCell(stock, column, at(static_cast<std::size_t>(column))); !set)
            return set.fault();
    return stock;
}

} // namespace

Result<std::vector<Stock>> readDrawer(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    std::vector<Stock> drawer;
    for (int number = 1; !text.empty(); ++number) {
        const auto end = text.find('\n');
        const std::string_view line = trimmed(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (line.empty() || line == header || line == commaHeader) continue;
        const std::string place = wording::inWords("line %1", number);
        if (drawer.size() == mostRows)
            return Fault{place, wording::inWords("is one more than the %1 allowed", mostRows)};
        const auto fields = fieldsOf(line);
        if (!fields) return Fault{place, fields.fault().text};
        const auto stock = stockOf(fields.value());
        if (!stock) return Fault{place, stock.fault().message()};
        drawer.push_back(stock.value());
    }
    return drawer;
}

std::string writeDrawer(const std::vector<Stock>& drawer) {
    std::string csv(header);
    csv += "\r\n";
    const auto add = [&](std::optional<double> value) { csv += value ? "," + units::shortest(*value) : ","; };
    for (const Stock& stock : drawer) {
        csv += name(stock.kind);
        add(stock.value);
        add(stock.tolerance);
        add(stock.rating);
        csv += "," + std::to_string(stock.quantity) + "\r\n";
    }
    return csv;
}

} // namespace blinkwright::io
