#include "core/base/wording.h"

namespace blinkwright::wording {

namespace {

Tongue& tongue() {
    static Tongue spoken;
    return spoken;
}

} // namespace

void setTongue(Tongue spoken) {
    tongue() = std::move(spoken);
}

char decimalSign() {
    return tongue().decimalSign;
}

namespace detail {

std::string said(std::string_view english, std::initializer_list<std::string> parts) {
    const std::string sentence = tongue().translate ? tongue().translate(english) : std::string(english);
    std::string out;
    for (std::size_t at = 0; at < sentence.size(); ++at) {
        const std::size_t number = sentence[at] == '%' && at + 1 < sentence.size()
                                       ? static_cast<std::size_t>(sentence[at + 1] - '1')
                                       : 9;
        if (number < parts.size()) {
            out += parts.begin()[number];
            ++at;
        } else {
            out += sentence[at];
        }
    }
    return out;
}

} // namespace detail

} // namespace blinkwright::wording
