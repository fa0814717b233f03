// Words of core's tables, which core marks and whoever shows them says.
//
//   said(study::dcMeter.words);
#pragma once

#include "core/base/wording.h"

#include <QString>

namespace blinkwright::widgets {

/// @param marked see wording::marked()
inline QString said(std::string_view marked) {
    return QString::fromStdString(wording::inWords(marked));
}

} // namespace blinkwright::widgets
