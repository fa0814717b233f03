// Signs of figures and tables that no keyboard has.
#pragma once

#include <QString>

namespace blinkwright::widgets {

inline const QString noValue = QStringLiteral("–"); ///< in a cell or a field with nothing to show
inline constexpr QChar minusSign(0x2212);           ///< before a negative figure

} // namespace blinkwright::widgets
