#include "app/export_choice.h"

#include <algorithm>

namespace blinkwright::app {

namespace {

const QString stripKeys[] = {QStringLiteral("output"), QStringLiteral("capacitor"), QStringLiteral("lamps")};

double within(const QVariantMap& kept, const QString& key, double usual, double low, double high) {
    bool isNumber = false;
    const double value = kept.value(key, usual).toDouble(&isNumber);
    return isNumber && value >= low && value <= high ? value : usual;
}

} // namespace

ExportChoice ExportChoice::from(const QVariantMap& kept) {
    ExportChoice c;
    c.width_mm = within(kept, QStringLiteral("width"), c.width_mm, 40, 400);
    c.height_mm = within(kept, QStringLiteral("height"), c.height_mm, 40, 400);
    c.dpi = static_cast<int>(within(kept, QStringLiteral("dpi"), c.dpi, 72, 1200));
    c.fontPoints = within(kept, QStringLiteral("font"), c.fontPoints, 5, 24);
    for (std::size_t s = 0; s < widgets::stripCount; ++s)
        c.style.strips[s] = kept.value(stripKeys[s], true).toBool();
    if (std::ranges::find(c.style.strips, true) == c.style.strips.end()) c.style.strips.fill(true);
    c.style.legend = kept.value(QStringLiteral("legend"), true).toBool();
    c.style.greys = kept.value(QStringLiteral("greys")).toBool();
    c.visibleOnly = kept.value(QStringLiteral("visible")).toBool();
    c.moment = kept.value(QStringLiteral("moment")).toBool();
    return c;
}

QVariantMap ExportChoice::kept() const {
    QVariantMap map{{QStringLiteral("width"), width_mm},
                    {QStringLiteral("height"), height_mm},
                    {QStringLiteral("dpi"), dpi},
                    {QStringLiteral("font"), fontPoints},
                    {QStringLiteral("legend"), style.legend},
                    {QStringLiteral("greys"), style.greys},
                    {QStringLiteral("visible"), visibleOnly},
                    {QStringLiteral("moment"), moment}};
    for (std::size_t s = 0; s < widgets::stripCount; ++s) map[stripKeys[s]] = style.strips[s];
    return map;
}

void ExportChoice::applyTo(widgets::CurvesPage& page, widgets::Span visible, double moment_s) const {
    page.width_mm = width_mm;
    page.height_mm = height_mm;
    page.dpi = dpi;
    page.fontPoints = fontPoints;
    page.style = style;
    if (visibleOnly) page.span = visible;
    if (moment && (!visibleOnly || (moment_s >= visible.begin && moment_s <= visible.end)))
        page.moment_s = moment_s;
}

} // namespace blinkwright::app
