#include "app/verbs/arguments.h"

#include "core/units/engineering.h"

#include <algorithm>
#include <charconv>

namespace blinkwright::app::verbs {

namespace {

template <class Number>
Result<Number> readWithin(std::string_view option, std::string_view text, Number low, Number high,
                          std::string_view what, const std::string& lowText, const std::string& highText) {
    Number number{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    // Written so that a NaN is refused too.
    if (error == std::errc{} && end == text.data() + text.size() && number >= low && number <= high)
        return number;
    return Fault{std::string(option), "must be " + std::string(what) + " from " + lowText + " to " +
                                          highText + ", got '" + std::string(text) + "'"};
}

std::string listed(std::span<const std::string_view> operands) {
    std::string text;
    for (const std::string_view operand : operands) {
        if (!text.empty()) text += ' ';
        text += operand;
    }
    return text;
}

} // namespace

std::optional<std::string> Arguments::last(std::string_view option) const {
    const auto found = options.find(option);
    if (found == options.end() || found->second.empty()) return {};
    return found->second.back();
}

std::vector<std::string> Arguments::all(std::string_view option) const {
    const auto found = options.find(option);
    return found == options.end() ? std::vector<std::string>{} : found->second;
}

Result<Arguments> readArguments(std::span<const std::string_view> operands, std::span<const Option> options,
                                std::span<const std::string> words) {
    Arguments read;
    bool onlyOperands = false;
    if (std::ranges::find(words, "--help") != words.end() || std::ranges::find(words, "-h") != words.end()) {
        read.help = true;
        return read;
    }
    for (std::size_t k = 0; k < words.size(); ++k) {
        const std::string& word = words[k];
        if (onlyOperands || word.size() < 2 || word[0] != '-') {
            read.operands.push_back(word);
            continue;
        }
        if (word == "--") {
            onlyOperands = true;
            continue;
        }
        const std::size_t equals = word.find('=');
        const std::string name = word.substr(0, equals);
        const auto option = std::ranges::find(options, name, &Option::name);
        if (option == options.end()) return Fault{{}, "there is no option '" + name + "'"};
        std::vector<std::string>& values = read.options[name];
        if (!values.empty() && !option->repeated) return Fault{{}, name + " is given twice"};
        if (option->value.empty()) {
            if (equals != std::string::npos) return Fault{{}, name + " takes no value"};
            values.emplace_back();
        } else if (equals != std::string::npos) {
            values.push_back(word.substr(equals + 1));
        } else if (k + 1 < words.size()) {
            values.push_back(words[++k]);
        } else {
            return Fault{{}, name + " wants a value: " + std::string(option->value)};
        }
    }
    if (read.operands.size() < operands.size())
        return Fault{
            {}, std::string(operands[read.operands.size()]) + " is missing; wanted: " + listed(operands)};
    if (read.operands.size() > operands.size())
        return Fault{
            {}, "'" + read.operands[operands.size()] + "' is one name too many; wanted: " + listed(operands)};
    return read;
}

Result<int> readWhole(std::string_view option, std::string_view text, int low, int high) {
    return readWithin(option, text, low, high, "a whole number", std::to_string(low), std::to_string(high));
}

Result<double> readNumber(std::string_view option, std::string_view text, double low, double high) {
    return readWithin(option, text, low, high, "a number", units::shortest(low), units::shortest(high));
}

} // namespace blinkwright::app::verbs
