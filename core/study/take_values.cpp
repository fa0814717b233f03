#include "core/study/take_values.h"

#include "core/base/wording.h"
#include "core/study/cause.h"

#include <algorithm>
#include <string_view>

namespace blinkwright::study {

using circuit::Circuit;
using circuit::Part;
using circuit::PartKind;

namespace {

bool isBeside(std::string_view ref) { ///< no wish asks about it, and no rate hangs on it
    return ref == "C2" || ref == "C3";
}

bool hasValue(PartKind kind) {
    return kind == PartKind::resistor || kind == PartKind::variable || kind == PartKind::capacitor;
}

const Part* twin(const Circuit& circuit, const Part& part) {
    const Part* found = circuit.findRef(part.ref);
    return found && found->kind == part.kind ? found : nullptr;
}

} // namespace

Result<circuit::Edit> takeValues(const Circuit& open, const Circuit& proposal, circuit::PartSet set) {
    std::vector<std::string> missing;
    circuit::edits::Group group;
    group.text = set == circuit::PartSet::A ? wording::inWords("Take chosen values as Set A")
                                            : wording::inWords("Take chosen values as Set B");
    for (const Part& part : proposal.parts()) {
        const Part* mine = twin(open, part);
        if (!mine) {
            if (!isBeside(part.ref)) missing.push_back(part.ref);
        } else if (hasValue(part.kind)) {
            const std::string key(circuit::info(part.kind).keys.front().key);
            group.edits.push_back(circuit::setValue(open, set, mine->id, key, part.values.at(key)));
        }
    }
    if (!missing.empty())
        return Fault{{}, wording::inWords("The open circuit has no such part as %1.", listed(missing))};
    return circuit::Edit{std::move(group)};
}

bool wiredAlike(const Circuit& open, const Circuit& proposal) {
    for (const Part& part : open.parts())
        if (!twin(proposal, part) && !isBeside(part.ref)) return false;
    std::vector<std::pair<circuit::PinRef, circuit::PinRef>> pins; // of the open circuit and the proposal
    for (const Part& part : proposal.parts()) {
        const Part* mine = twin(open, part);
        if (!mine) continue;
        const int count = static_cast<int>(circuit::info(part.kind).pins.size());
        for (int pin = 0; pin < count; ++pin) pins.push_back({{mine->id, pin}, {part.id, pin}});
    }
    const auto joined = [](const Circuit& circuit, circuit::PinRef a, circuit::PinRef b) {
        const auto net = circuit.netOf(a);
        return net && net == circuit.netOf(b);
    };
    for (const auto& a : pins)
        for (const auto& b : pins)
            if (joined(open, a.first, b.first) != joined(proposal, a.second, b.second)) return false;
    return true;
}

} // namespace blinkwright::study
