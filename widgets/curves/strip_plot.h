// The three strips themselves: axes, curves, captions and the moment line, drawn but not yet worked by hand.
//
//   StripPlot plot;
//   plot.setTheme(theme);
//   plot.setVisibleSpan({0, 6});
//   plot.setPicture(stripPicture(curves, echo, {0, 6}, 1200, plot.stripHeights()));
//   plot.redraw(true);
//   plot.setMoment(moment, true); // draws no curve anew
// On screen, what stays while a value is dragged (axes, captions, echo) is kept as a picture. Curves go over
// it, straight onto the window. The plot's own buffers, each cleared, drawn and blended in full, are not
// used.
#pragma once

#include "core/engine/curves.h"
#include "core/study/band.h"
#include "widgets/curves/axis_scale.h"
#include "widgets/curves/page_style.h"
#include "widgets/curves/strip_data.h"
#include "widgets/theme/theme.h"

#include <QPixmap>
#include <optional>

namespace blinkwright::widgets {

class StripBand;
class StripCaptions;
class StripTrace;
class MomentOverlay;

class StripPlot : public QCustomPlot {
    Q_OBJECT
  public:
    /// A page has no moment line, takes no focus, and is drawn in full however long that takes.
    enum class Use { screen, page };
    explicit StripPlot(QWidget* parent = nullptr, Use use = Use::screen);

    void setTheme(const Theme& theme);
    /// Of a page, before its picture. Its font is the plot's own.
    void setPageStyle(const PageStyle& style);
    const PageStyle& pageStyle() const { return m_style; }
    /// How a curve is dashed on a page of greys; solid else.
    QVector<qreal> dashesOf(int curve, bool second) const;
    /// Draws nothing yet; redraw() does.
    void setPicture(const StripPicture& picture, bool hasCurves);
    /// How the curves that are laid over are called: at length (`Set B`), and after a lamp's name (`B`).
    void setSecondName(const QString& name, const QString& brief);
    /// The band of simulated boards behind Set A's curves, on their time axis; null takes it away. It is
    /// drawn, and its room made, with the next picture.
    void setBand(std::shared_ptr<const study::Band> band);
    bool hasBand() const;
    void setVisibleSpan(Span span);
    void setMessage(const QString& text);
    /// Lays out what has changed and has it painted: at once, or with the next paint of the window.
    void redraw(bool atOnce);
    /// @param paint paints it over the curves as they are; else the next redraw() shows it.
    void setMoment(const std::optional<engine::Moment>& moment, bool paint);

    Span visibleSpan() const;
    QRect stripRect(Strip strip) const;
    QRect topStrip() const { return m_panels[firstStrip()].rect->rect(); }   ///< of those that are shown
    QRect bottomStrip() const { return m_panels[lastStrip()].rect->rect(); } ///< of those that are shown
    std::array<int, stripCount> stripHeights() const;
    double timeAt(double x_px) const;
    double pixelAt(double time_s) const;

    const Theme& theme() const { return m_theme; }
    const AxisScale& scale(Strip strip) const;
    const AxisScale& timeScale() const;
    QString valueText(Strip strip, double value) const; ///< in the strip's prefix: `4.62 V`
    QString timeText(double time_s) const;
    const std::vector<QColor>& lampColours() const { return m_lampColours; }
    const std::vector<LampPoints>& lamps() const { return m_lamps; }
    bool hasFirst() const { return m_hasFirst; }
    bool hasSecond() const { return m_hasSecond; }
    /// Whether a record of the real board is laid over a strip.
    bool hasRecord(Strip strip) const { return m_hasRecord[static_cast<std::size_t>(strip)]; }
    const QString& secondName() const { return m_secondName; }
    const QString& secondBrief() const { return m_secondBrief; }
    const std::vector<QColor>& secondLampColours() const { return m_secondColours; }
    const std::vector<LampPoints>& secondLamps() const { return m_secondLamps; }
    double valuePixel(Strip strip, double value) const;
    bool isStripShown(Strip strip) const { return m_style.strips[static_cast<std::size_t>(strip)]; }
    bool hasCurves() const { return m_hasCurves; }
    const QString& message() const { return m_message; }
    const std::optional<engine::Moment>& moment() const { return m_moment; }
    /// Shares a height out among the strips; resizing does it for a plot on screen.
    void layOut(int height_px);
    QFont smallFont() const;
    int captionHeight() const;

  signals:
    void redrawn(); ///< by redraw()
    void aboutToPaint();
    void painted(); ///< after a paint with curves in it

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void updateLayout() override;
    QSize minimumSizeHint() const override;

  private:
    struct Panel {
        QCPAxisRect* rect = nullptr;
        QSharedPointer<ScaleTicker> ticker;
        Span range;
    };
    QPen line(const QColor& colour, double width) const; ///< as wide as the theme has it
    int headRows() const;                                ///< caption rows above the first strip
    void styleAxes();
    void labelAxes();
    StripTrace* addTrace(Strip strip, const char* layer);
    void matchGraphs(std::vector<StripTrace*>& graphs, std::size_t count, const char* layer);
    void setRecords(const std::vector<RecordPoints>& records);
    void paintGraphs();
    void paintGround();
    void paintCurves(QCPPainter& painter);
    void fitPicture(QPixmap& picture) const;

    void styleMargins();
    std::size_t firstStrip() const;
    std::size_t lastStrip() const;

    Use m_use;
    PageStyle m_style;
    Theme m_theme;
    std::array<Panel, stripCount> m_panels;
    QSharedPointer<ScaleTicker> m_timeTicker;
    StripTrace *m_output, *m_capacitor, *m_upper, *m_lower, *m_echoOutput, *m_echoCapacitor;
    StripTrace *m_secondOutput, *m_secondCapacitor, *m_secondUpper, *m_secondLower;
    std::vector<StripTrace*> m_lampGraphs, m_secondLampGraphs, m_echoLampGraphs;
    std::vector<StripTrace*> m_recordOutputs, m_recordCapacitors;
    std::vector<LampPoints> m_lamps, m_secondLamps; ///< without their points
    CurvePoints m_echo;
    bool m_echoOfSecond = false;
    std::vector<QColor> m_lampColours, m_secondColours;
    QString m_secondName, m_secondBrief;
    bool m_hasFirst = false;
    bool m_hasSecond = false;
    StripBand* m_band;
    std::array<bool, stripCount> m_hasRecord{};
    StripCaptions* m_captions;
    MomentOverlay* m_overlay;
    std::optional<engine::Moment> m_moment;
    QString m_message;
    bool m_hasCurves = false;
    bool m_dense = false; ///< so many lines that only thin ones are drawn in time

    QPixmap m_ground;  ///< all that stands behind the curves
    QPixmap m_picture; ///< ground and curves, made when they are painted again as they are
    bool m_pictureStale = true;
    bool m_groundStale = true; ///< and the layout of axes with it
    bool m_curvesFresh = true; ///< not painted yet
};

} // namespace blinkwright::widgets
