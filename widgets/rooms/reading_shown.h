// A meter reading as the screen shows it: three digits, a true minus sign.
//
//   readingShown(place, -2.12)        // "−2.12 V"
#pragma once

#include "core/study/expected_readings.h"
#include "widgets/text/signs.h"

#include <QString>

namespace blinkwright::widgets {

inline QString readingShown(const study::ReadingPlace& place, double value) {
    return QString::fromStdString(study::readingText(place, value)).replace(u'-', minusSign);
}

} // namespace blinkwright::widgets
