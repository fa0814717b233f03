#include "widgets/text/marks_by_text.h"

#include "widgets/text/text_sized.h"

namespace blinkwright::widgets {

int MarksByText::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    switch (metric) {
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
    case PM_ExclusiveIndicatorWidth:
    case PM_ExclusiveIndicatorHeight:
        return widget ? withText(*widget, usual) : usual;
    default:
        return usual;
    }
}

} // namespace blinkwright::widgets
