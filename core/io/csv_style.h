// The two usual ways to write a table of numbers as CSV, and a table put into one of them.
//
//   std::string table = inStyle(trendCsv(trend), commaCsv);     // 4,7;0,68
#pragma once

#include <string>

namespace blinkwright::io {

struct CsvStyle {
    char separator = ',';   ///< between columns; other than the decimal sign
    char decimalSign = '.'; ///< or ','
    bool operator==(const CsvStyle&) const = default;
};
/// RFC 4180 with decimal points, as all our writers have it.
inline constexpr CsvStyle pointCsv{};
/// As spreadsheets write and expect it where the comma is the decimal sign; common practice, no source.
inline constexpr CsvStyle commaCsv{';', ','};

/// The same table in another style. Numbers are the fields without quotes that are one from end to end; texts
/// stay as they are. @param csv in the style pointCsv
std::string inStyle(const std::string& csv, const CsvStyle& style);

} // namespace blinkwright::io
