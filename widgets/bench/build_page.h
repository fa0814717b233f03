// The wiring list and the parts list as pages to print: always black on white, each with its number and the
// title below. The printer's paper, range of pages and number of copies are kept to.
//
//   QPrinter printer;
//   printBuildPage(printer, circuit, PartSet::A);
#pragma once

#include "core/circuit/circuit.h"

class QPrinter;

namespace blinkwright::widgets {

void printBuildPage(QPrinter& printer, const circuit::Circuit& circuit, circuit::PartSet set);

} // namespace blinkwright::widgets
