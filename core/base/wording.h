// The words that people read, in the language of the window. Sentences are written in English where they
// arise, each as one whole with places for what changes, so that a translation can put the places in another
// order:
//
//   wording::inWords("no resistance leads from %1 to %2", net, pin)
//   constexpr std::string_view names[] = {wording::marked("low"), wording::marked("high")};
//   wording::inWords(names[k])
//
// Write the calls just so, with `wording::` before them: the collector of texts finds them by these names.
// Without a tongue the words stay English; the headless verbs and all files keep to that.
#pragma once

#include <concepts>
#include <functional>
#include <initializer_list>
#include <string>
#include <string_view>

namespace blinkwright::wording {

/// How the window speaks.
struct Tongue {
    std::function<std::string(std::string_view english)>
        translate;          ///< empty: English; called from any thread
    char decimalSign = '.'; ///< of quantities for people
};

/// To be called while no other thread runs, as at the start of the program.
void setTongue(Tongue tongue);

char decimalSign();

namespace detail {
std::string said(std::string_view english, std::initializer_list<std::string> parts);
inline std::string text(std::string_view words) {
    return std::string(words);
}
std::string text(std::integral auto number) {
    return std::to_string(number);
}
} // namespace detail

/// The sentence in the language of the window, each %1 to %9 in it replaced by the part of that number.
/// @param english one string literal, or a text that was marked by marked(). @param parts texts or whole
/// numbers.
template <class... Parts>
std::string inWords(std::string_view english, const Parts&... parts) {
    static_assert(sizeof...(Parts) <= 9);
    return detail::said(english, {detail::text(parts)...});
}

/// Marks a text of a table for translation; it is translated where it is said.
constexpr std::string_view marked(std::string_view english) {
    return english;
}

} // namespace blinkwright::wording
