// The wiring list and the parts list as a page to print: always black on white.
//
//   QPrinter printer;
//   printBuildPage(printer, circuit, PartSet::A);
#pragma once

#include "core/circuit/circuit.h"

class QPrinter;

namespace blinkwright::widgets {

void printBuildPage(QPrinter& printer, const circuit::Circuit& circuit, circuit::PartSet set);

} // namespace blinkwright::widgets
