// What the verbs that ask further than one run print.
#pragma once

#include "core/study/spread.h"
#include "core/study/trend.h"
#include "core/study/unexplained.h"
#include "core/study/wish.h"

#include <string>

namespace blinkwright::io {

/// Format "blinkwright-why", version 1.
/// @param measured what the board was measured to; where it is there, with the keys `measured` and
/// `unexplained` (measured minus simulated, with its standard uncertainty)
std::string whyJson(const study::Why& why, const study::WhyMeasured& measured = {});
/// Format "blinkwright-spread", version 1.
std::string spreadJson(const study::SpreadOutcome& spread);
/// RFC 4180, CRLF, one line for each board that blinks: period, rate, duty cycle, each lamp's mean current.
std::string spreadBoardsCsv(const study::SpreadOutcome& spread);
/// RFC 4180, CRLF, one line a figure: nominal, mean, standard deviation, percentiles, worst case. SI units.
std::string spreadFiguresCsv(const study::SpreadOutcome& spread);
/// Format "blinkwright-choices", version 1.
std::string choicesJson(const study::Wish& wish, const study::Choices& choices);
/// RFC 4180, decimal point, CRLF line ends, one line a point: the value, period, rate, high, low and duty
/// cycle, each lamp's peak and mean current, the supply's mean current, and the textbook rate. What does not
/// exist is empty.
std::string trendCsv(const study::Trend& trend);
/// Two trends over the same values; the second's columns behind, each with its name before: `Set B rate [Hz]`.
std::string trendCsv(const study::Trend& trend, const study::Trend& second, const std::string& secondName);

} // namespace blinkwright::io
