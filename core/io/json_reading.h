// JSON as a tree that keeps what a careful reader needs: keys in their order, numbers as they were written,
// and faults that name a place and, for broken text, a line and a column.
//
//   Result<JsonNode> root = readJson(text, {"measurements"});
//   const JsonNode* parts = root.value().find("parts");
//   compact(*parts)                // the same as one line of JSON
#pragma once

#include "core/base/result.h"
#include "core/base/wording.h"

#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::io {

struct JsonNode {
    enum class Type { null, flag, number, text, list, object, verbatim };

    Type type = Type::null;
    bool flag = false;
    double number = 0; ///< of a number, always finite
    std::string text;  ///< of a text; of a number as it was written; of a verbatim value its compact JSON
    std::vector<std::string> keys; ///< of an object, in the order of items
    std::vector<JsonNode> items;   ///< of a list or an object

    /// The value of a key of an object, or nullptr.
    const JsonNode* find(std::string_view key) const;
};

inline constexpr int deepestJson = 64;
inline constexpr std::size_t mostJsonValues = 500'000;

/// Reads a whole text. Refuses broken JSON, broken UTF-8, a key given twice in one object, numbers out of
/// range, more than deepestJson levels, and more than mostJsonValues values. A byte order mark is skipped.
/// @param treeKeys keys of the outermost object to be read as trees; the values of all others come as
///        Type::verbatim, which spares the memory of large lists that nobody looks into.
Result<JsonNode> readJson(std::string_view text, const std::vector<std::string_view>& treeKeys);

/// One line of JSON without spaces; numbers as they were written.
std::string compact(const JsonNode& node);

/// A text as JSON writes it, quotes included; everything outside ASCII stays as it is.
std::string quotedJson(std::string_view text);

/// What a node is, for people, and short: `"pink"`, `-5`, `a list`.
std::string shown(const JsonNode& node);

/// A text in quotes, cut to a length fit for a message, control signs replaced.
std::string shown(std::string_view text);

/// What is wanted in a place, for wrong().
namespace wanted {
inline constexpr std::string_view list = wording::marked("a list");
inline constexpr std::string_view object = wording::marked("an object");
inline constexpr std::string_view text = wording::marked("a text");
inline constexpr std::string_view flag = wording::marked("true or false");
inline constexpr std::string_view number = wording::marked("a number");
inline constexpr std::string_view wholeNumber = wording::marked("a whole number");
inline constexpr std::string_view numberOrNull = wording::marked("a number or null");
inline constexpr std::string_view numbers = wording::marked("a list of numbers");
inline constexpr std::string_view twoNumbers = wording::marked("a list of two numbers");
inline constexpr std::string_view numberOrTwo = wording::marked("a number or a list of two numbers");
inline constexpr std::string_view presses = wording::marked("a list of [from, to] in seconds");
inline constexpr std::string_view parameters = wording::marked("an object of parameter names and numbers");
} // namespace wanted

/// `PLACE: must be WANTED, got NODE`. @param wanted marked for translation
Fault wrong(std::string place, std::string_view wanted, const JsonNode& node);

/// A key as part of a place: as it is where it is a plain word, else as shown().
std::string shownKey(const std::string& key);

} // namespace blinkwright::io
