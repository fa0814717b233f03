// The columns of an instrument's record as they were read, in SI units, before anything is made of them.
//
//   RawRecord raw{.time_s = {0, 1e-3}, .traces = {{TraceOf::output, true, {0.1, 8.2}}}};
#pragma once

#include "core/circuit/measurement.h"

#include <cstddef>
#include <string>
#include <vector>

namespace blinkwright::study {

struct RawTrace {
    circuit::TraceOf of = circuit::TraceOf::output;
    bool named = false;           ///< by its header or by the user; else its shape decides what it is
    std::vector<double> values_V; ///< one for each time; finite
};

struct RawRecord {
    std::string source = {};      ///< name of the file, without a folder
    std::vector<double> time_s;   ///< never descending; finite
    std::vector<RawTrace> traces; ///< one or two
    std::size_t skipped = 0;      ///< rows without a number where one was wanted
    std::size_t firstSkipped = 0; ///< line of the first of them, from 1; 0 where there is none
};

} // namespace blinkwright::study
