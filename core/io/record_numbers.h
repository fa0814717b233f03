// One cell of a record: a number, a gap, or text.
//
//   double value;
//   if (scanNumber("-1,25E-03", ',', value) == Cell::number) ...
#pragma once

#include "core/io/text_cells.h"

#include <charconv>
#include <cmath>
#include <cstring>
#include <string_view>

namespace blinkwright::io {

enum class Cell {
    number,
    gap, ///< empty, dashes, nan or inf: the instrument had nothing to say
    text,
};

/// @param cell without blanks around it. @param mark the decimal mark: the other one makes it text.
inline Cell scanNumber(std::string_view cell, char mark, double& value) {
    if (cell.empty() || cell.find_first_not_of('-') == cell.npos) return Cell::gap;
    if (cell.front() == '+') cell.remove_prefix(1);
    char copy[64];
    if (mark == ',') {
        if (cell.size() > sizeof copy || cell.find('.') != cell.npos) return Cell::text;
        std::memcpy(copy, cell.data(), cell.size());
        cell = {copy, cell.size()};
        if (char* comma = static_cast<char*>(std::memchr(copy, ',', cell.size()))) *comma = '.';
    }
    const auto [end, fault] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (end != cell.data() + cell.size() || fault != std::errc()) return Cell::text;
    return std::isfinite(value) ? Cell::number : Cell::gap;
}

} // namespace blinkwright::io
