// From the tree back to text, and to words in messages.
#include "core/io/json_reading.h"

namespace blinkwright::io {

std::string compact(const JsonNode& node) {
    std::string text;
    switch (node.type) {
    case JsonNode::Type::null:
        return "null";
    case JsonNode::Type::flag:
        return node.flag ? "true" : "false";
    case JsonNode::Type::number:
    case JsonNode::Type::verbatim:
        return node.text;
    case JsonNode::Type::text:
        return quotedJson(node.text);
    case JsonNode::Type::list:
        for (const JsonNode& item : node.items) text += (text.empty() ? "" : ",") + compact(item);
        return "[" + text + "]";
    case JsonNode::Type::object:
        for (std::size_t i = 0; i < node.items.size(); ++i)
            text += (text.empty() ? "" : ",") + quotedJson(node.keys[i]) + ":" + compact(node.items[i]);
        return "{" + text + "}";
    }
    return text;
}

std::string quotedJson(std::string_view text) {
    constexpr std::string_view hex = "0123456789abcdef";
    std::string out = "\"";
    for (char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        switch (c) {
        case '"':
            out += "\\\"";
            break;
        case '\\':
            out += "\\\\";
            break;
        case '\n':
            out += "\\n";
            break;
        case '\r':
            out += "\\r";
            break;
        case '\t':
            out += "\\t";
            break;
        default:
            if (byte < 0x20)
                out.append("\\u00").append(1, hex[byte >> 4]).append(1, hex[byte & 15]);
            else
                out += c;
        }
    }
    return out += '"';
}

std::string shown(std::string_view text) {
    constexpr std::size_t longest = 40;
    bool cut = false;
    if (text.size() > longest) {
        std::size_t end = longest;
        while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
        text = text.substr(0, end);
        cut = true;
    }
    std::string out = "\"";
    for (char c : text) out += static_cast<unsigned char>(c) < 0x20 || c == 0x7F ? ' ' : c;
    return out += cut ? "...\"" : "\"";
}

std::string shown(const JsonNode& node) {
    switch (node.type) {
    case JsonNode::Type::text:
        return shown(std::string_view(node.text));
    case JsonNode::Type::list:
        return wording::inWords(wanted::list);
    case JsonNode::Type::object:
        return wording::inWords(wanted::object);
    case JsonNode::Type::number:
        return node.text.substr(0, 40);
    default:
        return compact(node).substr(0, 40);
    }
}

} // namespace blinkwright::io
