// What edits of a circuit answer where they cannot be made.
#pragma once

#include "core/base/result.h"
#include "core/base/wording.h"

namespace blinkwright::circuit {

inline Fault noSuchPart() {
    return {"", wording::inWords("there is no such part")};
}
inline Fault noSuchNet() {
    return {"", wording::inWords("there is no such net")};
}

} // namespace blinkwright::circuit
