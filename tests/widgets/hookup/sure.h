// What must be so in a test's own making: a fault there ends the test.
//
//   circuit::PartId id = sure(circuit.addPart(...));
#pragma once

#include "core/base/result.h"

#include <stdexcept>

namespace blinkwright::widgets::test {

template <class T>
T sure(Result<T> result) {
    if (!result) throw std::runtime_error(result.fault().message());
    return std::move(result).value();
}
inline void sure(Result<void> result) {
    if (!result) throw std::runtime_error(result.fault().message());
}

} // namespace blinkwright::widgets::test
