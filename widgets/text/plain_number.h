// A number for people, written with the decimal sign of the language.
//
//   plainNumber(0.5, 'f', 1);   // "0.5", in German "0,5"
#pragma once

#include "core/base/wording.h"

#include <QString>

namespace blinkwright::widgets {

/// @param form, precision as of QString::number()
inline QString plainNumber(double value, char form, int precision) {
    return QString::number(value, form, precision).replace(u'.', QLatin1Char(wording::decimalSign()));
}

} // namespace blinkwright::widgets
