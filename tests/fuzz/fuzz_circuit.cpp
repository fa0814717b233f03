// Circuit files: any text is refused or read; what is read is written as text that reads back the same.
#include "core/io/circuit_file.h"

#include <cstdint>
#include <cstdlib>

using namespace blinkwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto read = io::readCircuit(text);
    if (!read) {
        if (read.fault().message().empty()) std::abort(); // a refusal says why
        return 0;
    }
    const std::string written = io::writeCircuit(read.value());
    const auto again = io::readCircuit(written);
    if (!again || !again.value().sameAs(read.value()) || io::writeCircuit(again.value()) != written) std::abort();
    return 0;
}
