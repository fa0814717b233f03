#include "widgets/curves/axis_style.h"

namespace blinkwright::widgets {

void styleAxis(QCPAxis& axis, const Theme& theme, const QFont& font) {
    const QPen hairline(theme.frame, 1), grid(theme.grid, 1);
    axis.setBasePen(hairline);
    axis.setTickPen(hairline);
    axis.setSubTicks(false);
    axis.setTickLength(0, 4);
    axis.setTickLabelColor(theme.quietInk);
    axis.setLabelColor(theme.quietInk);
    axis.setTickLabelFont(font);
    axis.setLabelFont(font);
    axis.setTickLabelPadding(3);
    axis.setLabelPadding(3);
    axis.grid()->setPen(grid);
    axis.grid()->setZeroLinePen(grid);
    axis.grid()->setSubGridVisible(false);
}

} // namespace blinkwright::widgets
