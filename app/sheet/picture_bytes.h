// Pictures of a lab sheet as files of their own.
#pragma once

#include "app/sheet/lab_sheet.h"

#include <QByteArray>

namespace blinkwright::app::sheet {

/// An `svg` element without a head before it. @param tag keeps its names apart from those of another picture.
QByteArray svgOf(const Picture& picture, const QString& tag);
QByteArray pngOf(const Picture& picture, int dpi);
/// A formula as a picture, for programs that know no formulas.
Picture pictureOf(const Formula& formula);

} // namespace blinkwright::app::sheet
