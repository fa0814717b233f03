// Texts of the sheets in resources/devices, built into the program.
#pragma once

#include <span>
#include <string_view>

namespace blinkwright::devices {

struct SheetText {
    std::string_view name; ///< file name without its ending
    std::string_view json;
};
std::span<const SheetText> sheetTexts();

} // namespace blinkwright::devices
