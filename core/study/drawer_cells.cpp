#include "core/study/drawer_cells.h"

#include "core/base/wording.h"

#include <algorithm>
#include <charconv>
#include <iterator>
#include <optional>

namespace blinkwright::study {

using units::Unit;

namespace {

constexpr std::string_view kindNames[] = {"resistor", "capacitor", "variable"}; // in the order of Stock::Kind
constexpr std::string_view columnNames[] = {"kind", "value", "tolerance", "rating", "quantity"};
constexpr int digits = 12;

Unit unitOf(Stock::Kind kind, DrawerColumn column) {
    const bool capacitor = kind == Stock::Kind::capacitor;
    if (column == DrawerColumn::value) return capacitor ? Unit::farad : Unit::ohm;
    if (column == DrawerColumn::rating) return capacitor ? Unit::volt : Unit::watt;
    return Unit::none;
}

/// In quotes, cut off where it is longer than anybody can read.
std::string shown(std::string text) {
    constexpr std::size_t most = 40;
    if (text.size() > most) {
        std::size_t end = most;
        while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end; // whole characters
        text = text.substr(0, end) + "…";
    }
    return '"' + text + '"';
}

Fault faultIn(DrawerColumn column, std::string text) {
    return {std::string(name(column)), std::move(text)};
}

/// A number that may be left out.
Result<std::optional<double>> optionalNumber(const std::string& text, DrawerColumn column, Unit unit) {
    if (text.empty()) return std::optional<double>();
    std::string_view figures = text;
    const bool percent = unit == Unit::none && figures.ends_with('%');
    if (percent) figures.remove_suffix(1);
    const auto number = units::parseQuantity(figures, unit);
    if (!number) return faultIn(column, number.fault().text);
    if (!(number.value() > 0 || (unit == Unit::none && number.value() == 0)))
        return faultIn(column, wording::inWords("must be greater than 0, got %1", text));
    return std::optional(percent ? number.value() / 100 : number.value());
}

Result<void> setQuantity(Stock& stock, const std::string& text) {
    long quantity = 1;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, quantity);
    if (!text.empty() && (error != std::errc() || stop != end || quantity < 0))
        return faultIn(DrawerColumn::quantity,
                       wording::inWords("must be a whole number of 0 or more, got %1", shown(text)));
    stock.quantity = quantity;
    return {};
}

} // namespace

std::string_view name(DrawerColumn column) {
    return columnNames[static_cast<std::size_t>(column)];
}

std::string_view name(Stock::Kind kind) {
    return kindNames[static_cast<std::size_t>(kind)];
}

Result<void> setDrawerCell(Stock& stock, DrawerColumn column, const std::string& text) {
    if (column == DrawerColumn::quantity) return setQuantity(stock, text);
    if (column == DrawerColumn::kind) {
        const auto* found = std::ranges::find(kindNames, text);
        if (found == std::end(kindNames))
            return faultIn(column,
                           wording::inWords("must be resistor, variable or capacitor, got %1", shown(text)));
        stock.kind = static_cast<Stock::Kind>(found - std::begin(kindNames));
        return {};
    }
    const auto number = optionalNumber(text, column, unitOf(stock.kind, column));
    if (!number) return number.fault();
    if (column == DrawerColumn::value) {
        if (!number.value()) return faultIn(column, wording::inWords("is missing"));
        stock.value = *number.value();
    } else if (column == DrawerColumn::tolerance) {
        if (number.value().value_or(0) >= 1)
            return faultIn(column, wording::inWords("must be less than 1, got %1", text));
        stock.tolerance = number.value();
    } else {
        stock.rating = number.value();
    }
    return {};
}

std::string drawerCell(const Stock& stock, DrawerColumn column) {
    const auto text = [&](std::optional<double> value) {
        return value ? units::formatQuantity(*value, unitOf(stock.kind, column), digits) : std::string();
    };
    switch (column) {
    case DrawerColumn::kind:
        return std::string(name(stock.kind));
    case DrawerColumn::value:
        return stock.value > 0 ? text(stock.value) : std::string();
    case DrawerColumn::tolerance:
        return stock.tolerance ? text(100 * *stock.tolerance) + "\u00a0%" : std::string();
    case DrawerColumn::rating:
        return text(stock.rating);
    case DrawerColumn::quantity:
        return std::to_string(stock.quantity);
    }
    return {};
}

} // namespace blinkwright::study
