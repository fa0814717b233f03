// What is written over the strips: titles and keys, the message of an empty view, and the moment line with
// the values under it. The moment line is painted last, over a kept picture of all else, so that moving it
// draws no curve anew.
#pragma once

#include "widgets/curves/strip_plot.h"

namespace blinkwright::widgets {

class StripCaptions : public QCPLayerable {
    Q_OBJECT
  public:
    explicit StripCaptions(StripPlot* plot) : QCPLayerable(plot, "captions"), m_plot(plot) {}

  protected:
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override { painter->setAntialiasing(true); }
    void draw(QCPPainter* painter) override;

  private:
    struct Key {
        QString text;
        QColor colour;
        double width;
        bool pale = false; ///< its stroke is that of a band
        QVector<qreal> dashes = {};
    };
    void drawCaption(QCPPainter* painter, Strip strip, const QString& title,
                     const std::vector<Key>& keys) const;
    StripPlot* m_plot;
};

class MomentOverlay : public QCPLayerable {
    Q_OBJECT
  public:
    explicit MomentOverlay(StripPlot* plot) : QCPLayerable(plot, "moment"), m_plot(plot) {}
    void paintOn(QCPPainter* painter);

  protected:
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override { painter->setAntialiasing(true); }
    void draw(QCPPainter* painter) override;

  private:
    struct Label {
        QString text;
        QColor colour;
        double at_px;  ///< where the value is
        double top_px; ///< where the label stands
    };
    void drawLabels(QCPPainter* painter, Strip strip, double x, std::vector<Label> labels) const;
    StripPlot* m_plot;
};

} // namespace blinkwright::widgets
