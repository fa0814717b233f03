#include "core/io/object_reader.h"

namespace blinkwright::io {

using Type = JsonNode::Type;

const JsonNode* ObjectReader::take(std::string_view key) {
    const JsonNode* found = m_node.find(key);
    if (found) m_known[static_cast<std::size_t>(found - m_node.items.data())] = true;
    return found;
}

std::string ObjectReader::place(std::string_view key) const {
    return m_place.empty() ? std::string(key) : m_place + "." + std::string(key);
}

Result<std::string> ObjectReader::text(std::string_view key) {
    const JsonNode* found = take(key);
    if (!found) return missing(place(key));
    if (found->type != Type::text) return wrong(place(key), wanted::text, *found);
    return found->text;
}

Result<std::string> ObjectReader::textOr(std::string_view key, std::string other) {
    return m_node.find(key) ? text(key) : Result<std::string>(std::move(other));
}

Result<double> ObjectReader::number(std::string_view key) {
    const JsonNode* found = take(key);
    if (!found) return missing(place(key));
    if (found->type != Type::number) return wrong(place(key), wanted::number, *found);
    return found->number;
}

Result<double> ObjectReader::numberOr(std::string_view key, double other) {
    return m_node.find(key) ? number(key) : Result<double>(other);
}

Result<bool> ObjectReader::flagOr(std::string_view key, bool other) {
    const JsonNode* found = take(key);
    if (!found) return other;
    if (found->type != Type::flag) return wrong(place(key), wanted::flag, *found);
    return found->flag;
}

Result<std::vector<double>> ObjectReader::numbers(std::string_view key) {
    const JsonNode* found = take(key);
    if (!found) return missing(place(key));
    if (found->type != Type::list) return wrong(place(key), wanted::numbers, *found);
    std::vector<double> read;
    read.reserve(found->items.size());
    for (const JsonNode& item : found->items) {
        if (item.type != Type::number)
            return wrong(place(key) + "[" + std::to_string(read.size()) + "]", wanted::number, item);
        read.push_back(item.number);
    }
    return read;
}

circuit::Extras ObjectReader::extras() const {
    circuit::Extras unknown;
    for (std::size_t i = 0; i < m_known.size(); ++i)
        if (!m_known[i]) unknown.push_back({m_node.keys[i], compact(m_node.items[i])});
    return unknown;
}

} // namespace blinkwright::io
