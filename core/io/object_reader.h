// Reads the known keys of one JSON object, names the place of each fault, and keeps what nobody asked for.
//
//   ObjectReader fields(node, "measurements[2]");
//   Result<std::string> title = fields.textOr("title", "");
//   Result<double> flashes = fields.number("flashes");      // fault: "measurements[2].flashes: missing"
//   fields.extras();
#pragma once

#include "core/circuit/circuit_ids.h"
#include "core/io/json_reading.h"

namespace blinkwright::io {

inline Fault missing(std::string place) {
    return {std::move(place), wording::inWords("missing")};
}

class ObjectReader {
  public:
    /// @param place of the object in its file; empty for the whole file
    ObjectReader(const JsonNode& node, std::string place)
        : m_node(node), m_place(std::move(place)), m_known(node.keys.size(), false) {}

    /// The value of a key, or nullptr; either way it is no extra.
    const JsonNode* take(std::string_view key);
    std::string place(std::string_view key) const;
    Result<std::string> text(std::string_view key);
    Result<std::string> textOr(std::string_view key, std::string other);
    Result<double> number(std::string_view key);
    Result<double> numberOr(std::string_view key, double other);
    Result<bool> flagOr(std::string_view key, bool other);
    /// A list of numbers.
    Result<std::vector<double>> numbers(std::string_view key);
    circuit::Extras extras() const;

  private:
    const JsonNode& m_node;
    std::string m_place;
    std::vector<bool> m_known;
};

} // namespace blinkwright::io
