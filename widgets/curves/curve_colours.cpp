#include "widgets/curves/curve_colours.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace blinkwright::widgets {

namespace {
double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}
double luminance(const QColor& c) {
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}
constexpr double leastContrast = 4.6; // a little over 4.5, for rounding to eight bits
constexpr double roomAbove = 8.8;     // 1.9 times less is still leastContrast
} // namespace

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QColor withContrast(const QColor& colour, const QColor& paper, double ratio) {
    const bool darken = luminance(paper) > 0.18; // about middle grey: where black and white contrast alike
    const double hue = std::max(0.0, static_cast<double>(colour.hslHueF()));
    const double saturation = colour.hslHueF() < 0 ? 0.0 : static_cast<double>(colour.hslSaturationF());
    double low = 0, high = 1; // lightness; luminance grows with it at fixed hue and saturation
    QColor best;
    for (int k = 0; k < 24; ++k) {
        const double middle = (low + high) / 2;
        const QColor tried = QColor::fromHslF(static_cast<float>(hue), static_cast<float>(saturation),
                                              static_cast<float>(middle));
        const bool enough =
            contrast(tried, paper) >= ratio && (luminance(tried) < luminance(paper)) == darken;
        if (enough) best = tried;
        if (enough == darken)
            low = middle;
        else
            high = middle;
    }
    return best.isValid() ? best : QColor(darken ? Qt::black : Qt::white);
}

namespace {
/// The colour of the lamp that is the `twin`th of its colour, counted from 0.
QColor twinColour(const Theme& theme, QColor own, int twin) {
    if (const int turn = twin / 3; turn > 0 && own.hslHueF() >= 0)
        own = QColor::fromHslF(static_cast<float>(std::fmod(own.hslHueF() + 0.06 * turn, 1.0)),
                               own.hslSaturationF(), own.lightnessF());
    // A colour that is legible stays as it is; twins stand out more than it where there is room, else less.
    const double ratio = std::max(leastContrast, contrast(own, theme.paper));
    const double away = ratio < roomAbove ? 1.0 : -1.0;
    const double part = std::pow(twin % 3 == 1 ? 1.9 : twin % 3 == 2 ? 1.38 : 1.0, away);
    const bool keep = twin % 3 == 0 && contrast(own, theme.paper) >= leastContrast;
    return keep ? own : withContrast(own, theme.paper, std::max(leastContrast, ratio * part));
}
} // namespace

std::vector<QColor> lampCurveColours(const Theme& theme, const std::vector<std::string>& colours) {
    std::map<std::string, int> seen;
    std::vector<QColor> out;
    out.reserve(colours.size());
    for (const std::string& name : colours)
        out.push_back(twinColour(theme, theme.lamp(QString::fromStdString(name)), seen[name]++));
    return out;
}

std::vector<QColor> lampCurveColours(const Theme& theme, const QColor& own, std::size_t count) {
    std::vector<QColor> out;
    out.reserve(count);
    for (std::size_t k = 0; k < count; ++k) out.push_back(twinColour(theme, own, static_cast<int>(k)));
    return out;
}

} // namespace blinkwright::widgets
