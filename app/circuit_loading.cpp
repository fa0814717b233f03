#include "app/circuit_loading.h"

#include "core/io/circuit_file.h"

namespace blinkwright::app {

namespace {

/// The file comes first in a fault's place, and stands there once only.
Fault inFile(const std::string& path, const Fault& fault) {
    if (fault.place == path) return fault;
    return Fault{path, fault.message()};
}

} // namespace

Result<circuit::Circuit> loadCircuit(const std::string& path) {
    const Result<std::string> bytes = io::readBytes(path, io::maxCircuitBytes);
    if (!bytes) return inFile(path, bytes.fault());
    Result<circuit::Circuit> circuit = io::readCircuit(bytes.value());
    if (!circuit) return inFile(path, circuit.fault());
    return circuit;
}

} // namespace blinkwright::app
