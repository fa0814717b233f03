// How long the import of a long record takes: a file of 2,000,000 rows with time, output and capacitor is
// read, its levels and switchings are found, and it is thinned. Wall time, median of some runs. Prints a
// figure line.
//
//   build/benchmarks/bin/record_import
#include "core/io/record_file.h"
#include "tests/core/records/made_records.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sys/resource.h>
#include <unistd.h>
#include <vector>

int main() {
    using namespace blinkwright;
    constexpr int rows = 2'000'000, times = 7;
    const auto path =
        std::filesystem::temp_directory_path() / ("record-import-" + std::to_string(getpid()) + ".csv");
    {
        const RandomDraws draws(1, 0);
        const test::MadeSignal signal;
        std::ofstream file(path);
        file << "time [s],output [V],capacitor [V]\n";
        char line[80];
        for (int k = 0; k < rows; ++k) {
            const double t = k * 2e-5;
            const auto draw = static_cast<std::uint64_t>(2 * k);
            file.write(line, std::snprintf(line, sizeof line, "%.6f,%.4f,%.4f\n", t,
                                           signal.output(t) + 0.1 * (draws.uniform(draw) - 0.5),
                                           signal.capacitor(t) + 0.1 * (draws.uniform(draw + 1) - 0.5)));
        }
    }
    std::vector<double> seconds;
    bool whole = true;
    for (int k = 0; k < times; ++k) {
        const auto begin = std::chrono::steady_clock::now();
        const auto record = io::importRecord(path.string());
        seconds.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
        whole &= record.ok() && record.value().switchings_s.size() == 99;
        if (record.ok() && k == 0)
            std::fprintf(stderr, "%zu switchings\n", record.value().switchings_s.size());
    }
    std::filesystem::remove(path);
    rusage used{};
    getrusage(RUSAGE_SELF, &used);
    std::fprintf(stderr, "most memory: %ld MiB\n", used.ru_maxrss >> 10);
    if (!whole) return 1;
    std::ranges::sort(seconds);
    std::printf("import_2m_rows %.3f s\n", seconds[times / 2]);
    std::fprintf(stderr, "import_2m_rows: %.3f to %.3f s\n", seconds.front(), seconds.back());
    return 0;
}
