// Arguments of a headless verb: operands by place, options by name.
//
//   Result<Arguments> a = readArguments({"FILE"}, options, {"mole.blinkwright", "--set", "B",
//   "--value=R1.resistance=4k7"}); a.value().operands[0];  a.value().last("--set"); a.value().all("--value");
#pragma once

#include "core/base/result.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::app::verbs {

struct Option {
    std::string_view name;  ///< `--set`
    std::string_view value; ///< what stands after it, as its help writes it; empty: a flag
    std::string_view help;  ///< empty: taken, but not listed
    bool repeated = false;
};

struct Arguments {
    std::vector<std::string> operands;
    std::map<std::string, std::vector<std::string>, std::less<>> options;
    bool help = false;

    bool has(std::string_view option) const { return options.contains(option); }
    std::optional<std::string> last(std::string_view option) const;
    std::vector<std::string> all(std::string_view option) const;
};

/// `--name VALUE` and `--name=VALUE`; everything after `--` is an operand. With `--help` nothing else is
/// judged.
Result<Arguments> readArguments(std::span<const std::string_view> operands, std::span<const Option> options,
                                std::span<const std::string> words);

/// A whole number within [low, high].
Result<int> readWhole(std::string_view option, std::string_view text, int low, int high);
/// A plain number within [low, high], with a decimal point.
Result<double> readNumber(std::string_view option, std::string_view text, double low, double high);

} // namespace blinkwright::app::verbs
