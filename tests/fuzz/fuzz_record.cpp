// Records of instruments: any file is refused or read; what is read is a measurement that a circuit may hold.
#include "core/circuit/circuit.h"
#include "core/io/record_file.h"
#include "core/study/measured_readings.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <unistd.h>

using namespace blinkwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    // The reader maps files; one in memory costs no disk.
    static const std::string path = "/dev/shm/blinkwright-fuzz-" + std::to_string(::getpid()) + ".csv";
    std::FILE* file = std::fopen(path.c_str(), "wb");
    if (!file) std::abort();
    std::fwrite(data, 1, size, file);
    std::fclose(file);
    const auto record = io::importRecord(path);
    if (!record) {
        if (record.fault().message().empty()) std::abort();
        return 0;
    }
    circuit::Measurement measurement;
    measurement.what = record.value();
    if (!circuit::Circuit().canMeasure(measurement)) std::abort();
    (void)study::figuresOf(record.value());
    return 0;
}
