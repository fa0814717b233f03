// The check card as a page to print: what a meter reads at every pin and lamp, with a line to write beside
// it.
//
//   printCheckCard(printer, circuit, PartSet::A, expected);
#pragma once

#include "core/study/expected_readings.h"

class QPrinter;

namespace blinkwright::widgets {

void printCheckCard(QPrinter& printer, const circuit::Circuit& circuit, circuit::PartSet set,
                    const study::ExpectedReadings& expected);

} // namespace blinkwright::widgets
