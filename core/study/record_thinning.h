// Few samples in place of many, such that a picture of them shows the same: of each stretch of the record the
// lowest and the highest value of every trace stays.
//
//   std::vector<std::size_t> kept = keptSamples(traces, circuit::maxRecordSamples);
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace blinkwright::study {

/// Indices in ascending order, the first and the last sample among them; all of them where there are few
/// enough.
/// @param traces of one length. @param most at least 8 for one trace, 12 for two.
std::vector<std::size_t> keptSamples(std::span<const std::span<const double>> traces, std::size_t most);

} // namespace blinkwright::study
