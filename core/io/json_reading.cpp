#include "core/io/json_reading.h"

#include "core/base/wording.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <unordered_set>

namespace blinkwright::io {

namespace {

using FileJson = nlohmann::json;

struct TextPlace {
    std::size_t line = 1, column = 1;
    std::string text() const { return wording::inWords("line %1, column %2", line, column); }
};

/// Line and column of a byte; a column is a code point.
TextPlace placeOf(std::string_view text, std::size_t byte) {
    TextPlace place;
    for (char c : text.substr(0, byte)) {
        if (c == '\n') {
            ++place.line;
            place.column = 1;
        } else if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) {
            ++place.column;
        }
    }
    return place;
}

/// First byte that is no part of well-formed UTF-8 (Unicode 15, table 3-7), if any.
std::optional<std::size_t> brokenUtf8(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
    };
    for (std::size_t i = 0; i < text.size();) {
        const unsigned first = byte(i), second = byte(i + 1);
        std::size_t length = 0;
        if (first < 0x80) {
            length = 1;
        } else if (first >= 0xC2 && first <= 0xDF) {
            length = 2;
        } else if (first >= 0xE0 && first <= 0xEF) {
            const bool overlong = first == 0xE0 && second < 0xA0, surrogate = first == 0xED && second > 0x9F;
            length = overlong || surrogate ? 0 : 3;
        } else if (first >= 0xF0 && first <= 0xF4) {
            const bool overlong = first == 0xF0 && second < 0x90, beyond = first == 0xF4 && second > 0x8F;
            length = overlong || beyond ? 0 : 4;
        }
        if (length == 0) return i;
        for (std::size_t k = 1; k < length; ++k)
            if ((byte(i + k) & 0xC0) != 0x80) return i;
        i += length;
    }
    return std::nullopt;
}

bool isWord(char x) {
    return (x >= '0' && x <= '9') || (x >= 'a' && x <= 'z') || (x >= 'A' && x <= 'Z') || x == '_' ||
           x == '.' || x == '-' || x == '+';
}

/// Where the word begins that ends at a byte or just before it.
std::size_t wordStart(std::string_view text, std::size_t at) {
    while (at > 0 && isWord(text[at - 1])) --at;
    return at;
}

/// Says in plain words what is wrong with the text that the parser stopped at.
/// @param at the byte that it stopped at; moved to the beginning of the word or text that it ended.
std::string whyBroken(std::string_view text, std::size_t& at, std::string_view parserText, bool afterEnd) {
    if (at >= text.size()) return wording::inWords("the text ends before the JSON does");
    const auto has = [&](std::string_view part) { return parserText.find(part) != parserText.npos; };
    const char c = text[at];
    if (has("invalid string")) {
        if (static_cast<unsigned char>(c) < 0x20)
            return wording::inWords(
                "a text holds a line end or another control sign, or lacks its closing quote");
        return wording::inWords("a text holds an escape that JSON does not know");
    }
    if (afterEnd) return wording::inWords("something follows after the end of the JSON");
    const std::size_t from = wordStart(text, at);
    if (isWord(c) || (from < at && (has("invalid literal") || has("invalid number")))) {
        std::size_t to = at;
        while (to < text.size() && isWord(text[to])) ++to;
        at = from;
        return wording::inWords("%1 is no JSON value", shown(text.substr(from, to - from)));
    }
    if (c == '"') {
        const std::size_t to = at;
        if (at > 0) at = text.rfind('"', at - 1);
        if (at == text.npos) at = to;
        return wording::inWords("%1 cannot stand here; perhaps a comma or colon is missing before it",
                                shown(text.substr(at + 1, to - at - 1)));
    }
    const auto before = at == 0 ? text.npos : text.find_last_not_of(" \t\r\n", at - 1);
    const bool afterComma = before != text.npos && text[before] == ',';
    const std::string sign(1, c);
    return afterComma ? wording::inWords("'%1' cannot stand here; the comma before it is too much", sign)
                      : wording::inWords("'%1' cannot stand here", sign);
}

/// The parser's number text carries the decimal mark of the process's locale; JSON knows the point only.
std::string withPoint(std::string text) {
    for (char& c : text)
        if (std::string_view("0123456789+-eE").find(c) == std::string_view::npos) c = '.';
    return text;
}

/// Builds the tree from the parser's events and notes the first fault.
class TreeBuilder : public nlohmann::json_sax<FileJson> {
  public:
    TreeBuilder(std::string_view text, const std::vector<std::string_view>& treeKeys)
        : m_text(text), m_treeKeys(treeKeys) {}

    JsonNode root;
    std::optional<Fault> fault;

    bool null() override { return scalar({}, "null"); }
    bool boolean(bool value) override {
        JsonNode node;
        node.type = JsonNode::Type::flag;
        node.flag = value;
        return scalar(std::move(node), value ? "true" : "false");
    }
    bool number_integer(number_integer_t value) override { return number(std::to_string(value)); }
    bool number_unsigned(number_unsigned_t value) override { return number(std::to_string(value)); }
    bool number_float(number_float_t, const string_t& text) override { return number(withPoint(text)); }
    bool string(string_t& value) override {
        if (m_verbatim) return scalar({}, quotedJson(value));
        JsonNode node;
        node.type = JsonNode::Type::text;
        node.text = std::move(value);
        return scalar(std::move(node), {});
    }
    bool binary(binary_t&) override { return false; }

    bool start_object(std::size_t) override { return open(JsonNode::Type::object, '{'); }
    bool start_array(std::size_t) override { return open(JsonNode::Type::list, '['); }
    bool end_object() override { return close('}'); }
    bool end_array() override { return close(']'); }

    bool key(string_t& name) override {
        Level& level = m_levels.back();
        const bool again = !level.seen.insert(name).second;
        level.key = name;
        if (again) return refuse(place(), wording::inWords("given twice"));
        if (m_verbatim) {
            separate();
            m_verbatimText += quotedJson(name) + ":";
            return true;
        }
        if (m_levels.size() == 1 && std::ranges::find(m_treeKeys, name) == m_treeKeys.end()) {
            m_verbatim = true;
            m_verbatimText.clear();
        }
        level.node->keys.push_back(std::move(name));
        return true;
    }

    bool parse_error(std::size_t position, const std::string&,
                     const nlohmann::detail::exception& error) override {
        if (fault) return false;
        std::size_t at = std::min(position == 0 ? 0 : position - 1, m_text.size());
        if (error.id == outOfRange)
            return refuse(place(), wording::inWords("the number is too large (%1)",
                                                    placeOf(m_text, wordStart(m_text, at)).text()));
        std::string why = whyBroken(m_text, at, error.what(), m_levels.empty() && m_done);
        return refuse(placeOf(m_text, at).text(), std::move(why));
    }

    /// `parts[3].resistance`
    std::string place() const {
        std::string text;
        for (const Level& level : m_levels) {
            if (level.list)
                text += "[" + std::to_string(level.index) + "]";
            else if (level.key)
                text += (text.empty() ? "" : ".") + shownKey(*level.key);
        }
        return text;
    }

  private:
    static constexpr int outOfRange = 406; // the parser's id for a number that no double holds

    struct Level {
        JsonNode* node = nullptr; ///< nothing within a verbatim value
        bool list = false;
        std::size_t index = 0; ///< of the value that comes next in a list
        bool any = false;      ///< whether a verbatim value has an element already
        std::optional<std::string> key;
        std::unordered_set<std::string> seen;
    };

    bool refuse(std::string at, std::string text) {
        if (!fault) fault = Fault{std::move(at), std::move(text)};
        return false;
    }

    void separate() {
        Level& level = m_levels.back();
        if (level.any) m_verbatimText += ',';
        level.any = true;
    }

    /// Bookkeeping ahead of any value: budget, and the comma of a verbatim list.
    bool begin() {
        if (!m_verbatim && ++m_values > mostJsonValues)
            return refuse("", wording::inWords("more than %1 values are not supported", mostJsonValues));
        if (m_verbatim && !m_levels.empty() && m_levels.back().list) separate();
        return true;
    }

    void end() {
        if (m_levels.empty()) {
            m_done = true;
            return;
        }
        Level& level = m_levels.back();
        ++level.index;
        if (m_verbatim && m_levels.size() == 1) {
            JsonNode node;
            node.type = JsonNode::Type::verbatim;
            node.text = std::move(m_verbatimText);
            m_verbatimText.clear();
            m_verbatim = false;
            level.node->items.push_back(std::move(node));
        }
        level.key.reset();
    }

    JsonNode* attach(JsonNode node) {
        if (m_levels.empty()) {
            root = std::move(node);
            return &root;
        }
        auto& items = m_levels.back().node->items;
        items.push_back(std::move(node));
        return &items.back();
    }

    bool scalar(JsonNode node, const std::string& verbatim) {
        if (!begin()) return false;
        if (m_verbatim)
            m_verbatimText += verbatim;
        else
            attach(std::move(node));
        end();
        return true;
    }

    bool number(std::string text) {
        JsonNode node;
        node.type = JsonNode::Type::number;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), node.number);
        if (read.ec == std::errc::result_out_of_range) {
            // Too small for a double is 0 for all purposes; too large is nothing.
            const auto e = text.find_first_of("eE");
            const bool tiny = e != text.npos ? text[e + 1] == '-' : text.find('.') < 3;
            if (!tiny)
                return refuse(place(),
                              wording::inWords("the number is too large, got %1", text.substr(0, 40)));
            node.number = 0;
        }
        node.text = std::move(text);
        const std::string verbatim = m_verbatim ? node.text : std::string();
        return scalar(std::move(node), verbatim);
    }

    bool open(JsonNode::Type type, char sign) {
        if (!begin()) return false;
        if (m_levels.size() >= deepestJson)
            return refuse(place(), wording::inWords("nested deeper than %1 levels", deepestJson));
        Level level;
        level.list = type == JsonNode::Type::list;
        if (m_verbatim) {
            m_verbatimText += sign;
        } else {
            JsonNode node;
            node.type = type;
            level.node = attach(std::move(node));
        }
        m_levels.push_back(std::move(level));
        return true;
    }

    bool close(char sign) {
        if (m_verbatim) m_verbatimText += sign;
        m_levels.pop_back();
        end();
        return true;
    }

    std::string_view m_text;
    const std::vector<std::string_view>& m_treeKeys;
    std::vector<Level> m_levels;
    std::size_t m_values = 0;
    bool m_verbatim = false;
    bool m_done = false;
    std::string m_verbatimText;
};

} // namespace

Fault wrong(std::string place, std::string_view wanted, const JsonNode& node) {
    return {std::move(place), wording::inWords("must be %1, got %2", wording::inWords(wanted), shown(node))};
}

std::string shownKey(const std::string& key) {
    const bool plain = !key.empty() && key.size() <= 40 && std::ranges::all_of(key, [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' ||
               c == '-';
    });
    return plain ? key : shown(std::string_view(key));
}

const JsonNode* JsonNode::find(std::string_view key) const {
    const auto found = std::ranges::find(keys, key);
    return found == keys.end() ? nullptr : &items[static_cast<std::size_t>(found - keys.begin())];
}

Result<JsonNode> readJson(std::string_view text, const std::vector<std::string_view>& treeKeys) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    if (text.find_first_not_of(" \t\r\n") == text.npos)
        return Fault{"", wording::inWords("the file is empty")};
    if (const auto broken = brokenUtf8(text))
        return Fault{placeOf(text, *broken).text(), wording::inWords("the text is not UTF-8")};
    TreeBuilder builder(text, treeKeys);
    const bool done = FileJson::sax_parse(text.begin(), text.end(), &builder);
    if (builder.fault) return *builder.fault;
    if (!done) return Fault{"", wording::inWords("this is not JSON")};
    return std::move(builder.root);
}

} // namespace blinkwright::io
