// What the colour of a lamp is called.
#pragma once

#include <QString>

#include <string>

namespace blinkwright::widgets {

/// @param colour as circuits have it: `pure-green`
QString colourText(const std::string& colour);

} // namespace blinkwright::widgets
