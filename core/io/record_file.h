// Records of instruments from text files: columns of numbers, as oscilloscopes and data loggers write them.
//
//   Result<circuit::Record> record = importRecord("mole-light.csv");   // guess, read, reduce
// or in steps, where the user has a say:
//   RecordLayout layout = guessLayout(readBeginning(path).value()).value();
//   study::RawRecord raw = readRawRecord(path, layout, {.progress = &share, .cancel = &stop}).value();
//   study::Reduction reduction = study::reduceRecord(raw).value();
// Every fault is one sentence with the line, and the column where there is one: "line 12, column 2: ...".
#pragma once

#include "core/io/record_layout.h"
#include "core/study/raw_record.h"

#include <atomic>
#include <string>

namespace blinkwright::io {

inline constexpr std::size_t maxRecordBytes = 256u << 20;
inline constexpr std::size_t maxRecordRows = 20'000'000;

struct ReadControl {
    std::atomic<double>* progress = nullptr;   ///< 0 to 1
    const std::atomic<bool>* cancel = nullptr; ///< the result is a fault then
    std::size_t mostRows = maxRecordRows;      ///< more than these are a fault
};

/// The first layoutBytes of a file, for guessLayout().
Result<std::string> readBeginning(const std::string& path);

/// Reads the columns that the layout names, 24 bytes of memory a row with two voltages. Blank lines are
/// passed over. A row with an empty cell, or one that is no finite number by its own word (nan, inf), is
/// skipped and counted; so is a last line that is cut. Faults: no such file, larger than maxRecordBytes, more
/// rows than may be, a cell that is no number, a number out of all reason, a time before the one of the row
/// above, no rows at all, more than a tenth of the rows skipped.
Result<study::RawRecord> readRawRecord(const std::string& path, const RecordLayout& layout,
                                       const ReadControl& control = {});

/// The whole way with nobody to ask: the layout as guessed, the record from power-on if it looks so. Its
/// source is the file's name.
Result<circuit::Record> importRecord(const std::string& path);

} // namespace blinkwright::io
