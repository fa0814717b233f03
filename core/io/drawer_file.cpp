#include "core/io/drawer_file.h"

#include "core/io/json_reading.h"
#include "core/units/engineering.h"

#include <charconv>

namespace blinkwright::io {

using study::Stock;
using units::Unit;

namespace {

constexpr std::string_view header = "kind,value,tolerance,rating,quantity";
constexpr std::size_t columns = 5;
constexpr std::size_t mostRows = 10'000;

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\r'))
        text.remove_suffix(1);
    return text;
}

/// The fields of one line by RFC 4180.
Result<std::vector<std::string>> fieldsOf(std::string_view line) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (std::size_t k = 0; k < line.size(); ++k) {
        const char c = line[k];
        if (quoted && c == '"' && k + 1 < line.size() && line[k + 1] == '"')
            fields.back() += line[++k];
        else if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            fields.emplace_back();
        else
            fields.back() += c;
    }
    if (quoted) return Fault{"", "has a quote that does not end"};
    for (std::string& field : fields) field = std::string(trimmed(field));
    return fields;
}

/// A number that may be left out. @param name of the column, for the fault.
Result<std::optional<double>> optionalNumber(const std::string& text, std::string_view name, Unit unit) {
    if (text.empty()) return std::optional<double>();
    std::string_view digits = text;
    const bool percent = unit == Unit::none && digits.ends_with('%');
    if (percent) digits = trimmed(digits.substr(0, digits.size() - 1));
    const auto number = units::parseQuantity(digits, unit);
    if (!number) return Fault{std::string(name), number.fault().text};
    if (!(number.value() > 0 || (unit == Unit::none && number.value() == 0)))
        return Fault{std::string(name), "must be greater than 0, got " + text};
    return std::optional(percent ? number.value() / 100 : number.value());
}

Result<Stock> stockOf(const std::vector<std::string>& fields) {
    if (fields.size() > columns)
        return Fault{"", "has " + std::to_string(fields.size()) + " fields, where there are " +
                             std::to_string(columns) + " columns"};
    const auto at = [&](std::size_t k) { return k < fields.size() ? fields[k] : std::string(); };
    Stock stock;
    if (at(0) == "capacitor")
        stock.kind = Stock::Kind::capacitor;
    else if (at(0) != "resistor")
        return Fault{"kind", "must be resistor or capacitor, got " + shown(at(0))};
    const bool resistor = stock.kind == Stock::Kind::resistor;
    const auto value = optionalNumber(at(1), "value", resistor ? Unit::ohm : Unit::farad);
    if (!value) return value.fault();
    if (!value.value()) return Fault{"value", "is missing"};
    stock.value = *value.value();
    const auto tolerance = optionalNumber(at(2), "tolerance", Unit::none);
    if (!tolerance) return tolerance.fault();
    stock.tolerance = tolerance.value();
    if (stock.tolerance && *stock.tolerance >= 1)
        return Fault{"tolerance", "must be less than 1, got " + at(2)};
    const auto rating = optionalNumber(at(3), "rating", resistor ? Unit::watt : Unit::volt);
    if (!rating) return rating.fault();
    stock.rating = rating.value();
    if (const std::string text = at(4); !text.empty()) {
        const char* end = text.data() + text.size();
        const auto [stop, error] = std::from_chars(text.data(), end, stock.quantity);
        if (error != std::errc() || stop != end || stock.quantity < 0)
            return Fault{"quantity", "must be a whole number of 0 or more, got " + shown(text)};
    }
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
        if (line.empty() || line == header) continue;
        const std::string place = "line " + std::to_string(number);
        if (drawer.size() == mostRows)
            return Fault{place, "is one more than the " + std::to_string(mostRows) + " allowed"};
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
        csv += stock.kind == Stock::Kind::resistor ? "resistor" : "capacitor";
        add(stock.value);
        add(stock.tolerance);
        add(stock.rating);
        csv += "," + std::to_string(stock.quantity) + "\r\n";
    }
    return csv;
}

} // namespace blinkwright::io
