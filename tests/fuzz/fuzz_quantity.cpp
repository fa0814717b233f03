// Quantities as people type them, in any unit: refused or read, never neither; what is read is a finite number, and as
// it is shown to its last digit it reads back the same.
#include "core/units/engineering.h"

#include <cmath>
#include <cstdint>
#include <cstdlib>

using namespace blinkwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size == 0) return 0;
    constexpr units::Unit all[] = {units::Unit::none, units::Unit::ohm, units::Unit::farad, units::Unit::volt,
                                   units::Unit::ampere, units::Unit::second, units::Unit::hertz};
    const units::Unit unit = all[data[0] % std::size(all)];
    const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
    const auto read = units::parseQuantity(text, unit);
    if (!read) {
        if (read.fault().message().empty()) std::abort();
        return 0;
    }
    if (!std::isfinite(read.value())) std::abort();
    const std::string shown = units::formatQuantity(read.value(), unit, 15);
    const auto again = units::parseQuantity(shown, unit);
    if (!again || std::abs(again.value() - read.value()) > 1e-12 * std::abs(read.value())) std::abort();
    return 0;
}
