// Chosen values as a table for a spreadsheet: one proposal a line, best first, plain SI numbers.
//
//   std::string csv = choicesCsv(choices);
#pragma once

#include "core/study/wish.h"

#include <string>

namespace blinkwright::io {

/// With header; what a proposal does not have is an empty field; CRLF line ends (RFC 4180).
std::string choicesCsv(const study::Choices& choices);

} // namespace blinkwright::io
