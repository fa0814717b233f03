// What the verbs that ask further than one run print.
#pragma once

#include "core/study/why.h"

#include <string>

namespace blinkwright::io {

/// Format "blinkwright-why", version 1.
std::string whyJson(const study::Why& why);

} // namespace blinkwright::io
