#include "core/circuit/net_text.h"

#include "core/circuit/wiring_edits.h"

namespace blinkwright::circuit {

namespace {

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view white = " \t\r\n";
    const auto first = text.find_first_not_of(white);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(white) - first + 1);
}

} // namespace

std::optional<Result<Edit>> editForNetText(const Circuit& circuit, PinRef pin, std::string_view text) {
    text = trimmed(text);
    const std::optional<NetId> now = circuit.netOf(pin);
    if (text.empty()) return now ? std::optional(takeOffNet(circuit, pin)) : std::nullopt;
    if (const Net* net = circuit.findNet(text))
        return net->id == now ? std::nullopt : std::optional(putIntoNet(circuit, pin, net->id));
    const auto colon = text.find(':');
    if (colon == std::string_view::npos || !circuit.findRef(text.substr(0, colon)))
        return putIntoNet(circuit, pin, text);
    // From here on a pin is meant, and a slip in its name is told as such.
    const Result<PinRef> other = circuit.pinNamed(text);
    if (!other) return other.fault();
    const std::optional<NetId> there = circuit.netOf(other.value());
    if (there && there == now) return std::nullopt;
    return there ? putIntoNet(circuit, pin, *there) : joinPins(circuit, pin, other.value());
}

} // namespace blinkwright::circuit
