// How an instrument's text file is laid out: what was taken for what, as a value that a user can change.
//
//   Result<RecordLayout> layout = guessLayout(beginning);       // the first 64 KiB of the file
//   for (const std::string& sentence : saidOf(layout.value())) ...
//   layout.value().decimalMark = ',';
#pragma once

#include "core/base/result.h"
#include "core/circuit/measurement.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::io {

/// What stands between two columns. Blanks: any number of them.
enum class Separator { comma, semicolon, tab, blanks };
inline constexpr std::array allSeparators{Separator::comma, Separator::semicolon, Separator::tab,
                                          Separator::blanks};
std::string_view name(Separator separator); ///< marked for translation
char charOf(Separator separator);           ///< as TextCells wants it
inline constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

/// A column of voltages.
struct VoltageColumn {
    std::size_t column = 0; ///< from 0
    double unit_V = 1;      ///< one of the column is so many volts: 1e-3 for mV
    circuit::TraceOf of = circuit::TraceOf::output;
    bool named = false; ///< by a word of the header, or by the user; else its shape decides once it is read
    bool operator==(const VoltageColumn&) const = default;
};

struct RecordLayout {
    Separator separator = Separator::comma;
    char decimalMark = '.';                    ///< or ','
    std::size_t preambleLines = 0;             ///< above the header, or above the numbers where there is none
    std::size_t headerLines = 0;               ///< 0 to 2: names, and units on a line of their own
    std::optional<std::size_t> timeColumn = 0; ///< from 0; nothing: rows follow one another by step_s
    double timeUnit_s = 1;                     ///< one of the time column is so many seconds
    double step_s = 0;                         ///< > 0 where there is no time column; else as stated, or 0
    std::vector<VoltageColumn> voltages = {};  ///< one or two
    std::vector<std::string>
        columns; ///< their names, empty where there is none; as many as there are columns
    bool operator==(const RecordLayout&) const = default;
};

/// So much of a file is enough for a guess.
inline constexpr std::size_t layoutBytes = 64u << 10;

/// What the beginning of a file looks like. Where it is cut in the middle of a line, that line is left out.
/// @return a fault for what is no text, and for text without rows of numbers or without any time.
Result<RecordLayout> guessLayout(std::string_view beginning);

/// What was taken for what, in plain sentences.
std::vector<std::string> saidOf(const RecordLayout& layout);

/// The cells of the first lines, for showing; line ends of any kind. The last line counts even if it is cut.
std::vector<std::vector<std::string>> firstRows(std::string_view beginning, Separator separator,
                                                std::size_t most);

} // namespace blinkwright::io
