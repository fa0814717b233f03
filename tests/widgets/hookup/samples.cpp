#include "tests/widgets/hookup/samples.h"

#include "core/io/circuit_file.h"
#include "places.h"

#include <gtest/gtest.h>

#include <stdexcept>

namespace blinkwright::widgets::test {

using circuit::Circuit;
using circuit::PartKind;

namespace {
template <class T>
T sure(Result<T> result) {
    if (!result) throw std::runtime_error(result.fault().message());
    return std::move(result).value();
}
void sure(Result<void> result) {
    if (!result) throw std::runtime_error(result.fault().message());
}
} // namespace

Circuit sample(const std::string& name) {
    const std::string path = std::string(BLINKWRIGHT_SAMPLES) + "/" + name + ".blinkwright";
    return sure(io::readCircuit(sure(io::readBytes(path, io::maxCircuitBytes))));
}

Circuit withoutDrawing(const Circuit& circuit) {
    Circuit bare;
    std::map<circuit::PartId, circuit::PartId> ids;
    for (const circuit::Part& part : circuit.parts())
        ids[part.id] = sure(bare.addPart(part.kind, part.ref, part.values));
    for (const circuit::Net& net : circuit.nets()) {
        const circuit::NetId id = sure(bare.addNet(net.name));
        for (const circuit::PinRef pin : net.pins) sure(bare.join({ids.at(pin.part), pin.pin}, id));
    }
    return bare;
}

circuit::Values leastValues(PartKind kind) {
    circuit::Values values;
    for (const circuit::KeyInfo& key : circuit::info(kind).keys) {
        if (!key.required) continue;
        if (key.shape == circuit::Shape::word)
            values.emplace(key.key, std::string(key.words.front()));
        else if (key.shape == circuit::Shape::flag)
            values.emplace(key.key, false);
        else
            values.emplace(key.key, std::clamp(1.0, key.range.low, key.range.high));
    }
    return values;
}

Circuit manyParts(int parts) {
    Circuit c;
    const auto supply = sure(c.addPart(PartKind::supply, "BT1", {{"voltage", 9.0}}));
    const auto plus = sure(c.addNet("supply")), zero = sure(c.addNet("ground"));
    sure(c.join({supply, 0}, plus));
    sure(c.join({supply, 1}, zero));
    for (int n = 1; static_cast<int>(c.parts().size()) + 7 <= parts; ++n) {
        const std::string tail = std::to_string(n);
        const auto add = [&](PartKind kind, const std::string& ref, circuit::Values values) {
            return sure(c.addPart(kind, ref, std::move(values)));
        };
        const auto timer = add(PartKind::timer, "U" + tail, {{"family", std::string("bipolar")}});
        const auto r1 = add(PartKind::resistor, "R1" + tail, {{"resistance", 1e4}});
        const auto r2 = add(PartKind::resistor, "R2" + tail, {{"resistance", 1e5}});
        const auto c1 = add(PartKind::capacitor, "C1" + tail, {{"capacitance", 1e-5}});
        const auto c2 = add(PartKind::capacitor, "C2" + tail, {{"capacitance", 1e-8}});
        const auto r3 = add(PartKind::resistor, "R3" + tail, {{"resistance", 470.0}});
        const auto lamp = add(PartKind::lamp, "D" + tail, {{"colour", std::string("red")}});
        const auto net = [&](const std::string& name, std::initializer_list<circuit::PinRef> pins) {
            const auto id = sure(c.addNet(name + tail));
            for (const circuit::PinRef pin : pins) sure(c.join(pin, id));
        };
        for (const circuit::PinRef pin : {circuit::PinRef{timer, 7}, {timer, 3}, {r1, 0}})
            sure(c.join(pin, plus));
        for (const circuit::PinRef pin : {circuit::PinRef{timer, 0}, {c1, 1}, {c2, 1}, {lamp, 1}})
            sure(c.join(pin, zero));
        net("discharge", {{timer, 6}, {r1, 1}, {r2, 0}});
        net("timing", {{timer, 5}, {timer, 1}, {r2, 1}, {c1, 0}});
        net("control", {{timer, 4}, {c2, 0}});
        net("output", {{timer, 2}, {r3, 0}});
        net("lamp", {{r3, 1}, {lamp, 0}});
    }
    return c;
}

} // namespace blinkwright::widgets::test
