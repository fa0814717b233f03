// Kinds of characters in texts that are ASCII by their format: no locale has a say in them.
#pragma once

namespace blinkwright {

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}
constexpr bool isLetter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

} // namespace blinkwright
