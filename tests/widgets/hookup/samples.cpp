#include "tests/widgets/hookup/samples.h"

#include "core/io/circuit_file.h"
#include "places.h"
#include "tests/widgets/hookup/sure.h"

#include <algorithm>
#include <map>

namespace blinkwright::widgets::test {

using circuit::Circuit;
using circuit::PartKind;

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

} // namespace blinkwright::widgets::test
