// The formulas of the help by their names, as pages ask for them: <img src="formula:period">.
#pragma once

#include "widgets/text/formula.h"

#include <QFont>
#include <QImage>
#include <QStringList>
#include <optional>

namespace blinkwright::app::help {

QStringList formulaNames();
std::optional<widgets::formula::Formula> formulaNamed(const QString& name);
/// Drawn on a clear ground. @param scale dots to a pixel of the font, above 0
QImage formulaImage(const widgets::formula::Formula& formula, const QFont& font, const QColor& ink,
                    double scale);

} // namespace blinkwright::app::help
