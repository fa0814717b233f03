#include "tests/widgets/hookup/many_parts.h"

#include "tests/widgets/hookup/sure.h"
#include "widgets/hookup/layout.h"

namespace blinkwright::widgets::test {

using circuit::Circuit;
using circuit::PartKind;

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

Circuit placed(const Circuit& circuit, int blocksInARow) {
    Circuit all = circuit;
    const auto poses = hookup::layOut(circuit);
    const auto place = [&](circuit::PartId id, hookup::Point at) {
        const hookup::Pose& pose = poses.at(id);
        all.place(id, {static_cast<double>(at.x), static_cast<double>(at.y), pose.turn, pose.mirror, {}});
    };
    constexpr int blockWidth = 800, blockHeight = 420; // room for one blinker and the wires between two
    int block = -1;
    hookup::Point from;
    for (const circuit::Part& part : circuit.parts()) { // a blinker begins with its timer
        const hookup::Point at = poses.at(part.id).at;
        if (part.kind == PartKind::timer) {
            ++block;
            from = at;
        }
        if (blocksInARow == 0 || block < 0)
            place(part.id, at);
        else
            place(part.id, {block % blocksInARow * blockWidth + at.x - from.x,
                            block / blocksInARow * blockHeight + at.y - from.y});
    }
    return all;
}

} // namespace blinkwright::widgets::test
