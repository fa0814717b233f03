// Names for the cases of parameterised tests: readable, and the same in every run. Without one, googletest
// prints the bytes of a case, addresses included.
//
//   INSTANTIATE_TEST_SUITE_P(Quantity, ReadsQuantity, testing::ValuesIn(readings),
//                            [](const auto& row) { return caseName(row.index, row.param.text); });
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace blinkwright::tests {

/// The letters and digits of `text` with one underscore for whatever stands between them, as googletest wants
/// names: `mole-light` gives `mole_light`.
inline std::string caseName(std::string_view text) {
    std::string name;
    for (const char c : text) {
        const bool plain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        if (plain)
            name += c;
        else if (!name.empty() && name.back() != '_')
            name += '_';
    }
    while (!name.empty() && name.back() == '_') name.pop_back();
    return name.empty() ? "blank" : name;
}

/// For tables in which texts may be alike: the place in the table, from 1, tells them apart.
inline std::string caseName(std::size_t index, std::string_view text) {
    return "row_" + std::to_string(index + 1) + "_" + caseName(text);
}

} // namespace blinkwright::tests
