// A page with a plot on it: title and part values above, the plot in the room below, all on white. What the
// exports of curves and of the rooms are made of.
//
//   PageSheet sheet(page);
//   plot.setFont(PageSheet::font());  plot.setTheme(PageSheet::theme());  plot.resize(sheet.room().size());
//   Result<QByteArray> bytes = sheet.written(plot, PageFormat::svg);
#pragma once

#include "widgets/curves/curves_export.h"
#include "widgets/theme/theme.h"

#include <QFont>
#include <QRect>

class QCPPainter;
class QCustomPlot;
class QPainter;

namespace blinkwright::widgets {

class PageSheet {
  public:
    /// Pages are laid out in pixels of this resolution, whatever they are drawn on.
    static constexpr double layoutDpi = 96;
    static Theme theme();
    static QFont font(double points = CurvesPage::usualFontPoints); ///< of a plot on a page, by its name

    explicit PageSheet(const CurvesPage& page);

    const QRect& room() const { return m_room; } ///< of the plot, in layout pixels
    double scale() const;                        ///< of a picture in dots to a layout pixel
    QImage image(QCustomPlot& plot) const;       ///< at the page's resolution
    Result<QByteArray> written(QCustomPlot& plot, PageFormat format) const; ///< the bytes of a file

  private:
    void drawTexts(QPainter& painter) const;
    void drawVector(QCPPainter& painter, QCustomPlot& plot) const;

    CurvesPage m_page;
    QSize m_size;
    QRect m_title, m_values, m_room;
};

} // namespace blinkwright::widgets
