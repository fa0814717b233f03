#include "core/io/csv_style.h"

#include "core/base/csv.h"

#include <algorithm>
#include <charconv>

namespace blinkwright::io {

namespace {

bool isNumber(std::string_view text) {
    double value = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
    return fault == std::errc{} && end == text.data() + text.size();
}

/// The text of a quoted field whose first quote stands at `at`; `at` is then behind its last one.
std::string unquoted(const std::string& csv, std::size_t& at) {
    std::string text;
    for (++at; at < csv.size(); ++at) {
        if (csv[at] == '"' && (++at >= csv.size() || csv[at] != '"')) break;
        text += csv[at];
    }
    return text;
}

} // namespace

std::string inStyle(const std::string& csv, const CsvStyle& style) {
    if (style == pointCsv) return csv;
    std::string out;
    out.reserve(csv.size());
    for (std::size_t at = 0; at < csv.size(); ++at) {
        if (csv[at] == '"') {
            out += csvField(unquoted(csv, at), style.separator);
        } else {
            const std::size_t end = std::min(csv.find_first_of(",\r\n", at), csv.size());
            std::string field = csv.substr(at, end - at);
            if (isNumber(field))
                std::ranges::replace(field, '.', style.decimalSign);
            else
                field = csvField(field, style.separator);
            out += field;
            at = end;
        }
        if (at < csv.size()) out += csv[at] == ',' ? style.separator : csv[at]; // what ends the field
    }
    return out;
}

} // namespace blinkwright::io
