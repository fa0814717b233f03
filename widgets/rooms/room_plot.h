// What the plots of the rooms have in common: the looks of the axes in either theme, captions above the
// axes, a message where there is nothing to draw, and a summary in words for people who listen.
//
//   class TrendPlot final : public RoomPlot { ... };
//   plot.setTheme(theme);
//   plot.setSummary(tr("R2 68 kΩ: 0.9881 Hz"));
//   std::unique_ptr<RoomPlot> page = plot.forPage();     // the same, for a PageSheet
#pragma once

#include "widgets/theme/theme.h"

#include <memory>
#include <qcustomplot.h>

namespace blinkwright::widgets {

class RoomPlot : public QCustomPlot {
    Q_OBJECT
  public:
    enum class Use { screen, page };
    explicit RoomPlot(Use use, QWidget* parent = nullptr);
    ~RoomPlot() override;

    void setTheme(const Theme& theme);
    const Theme& theme() const { return m_theme; }
    Use use() const { return m_use; }
    void setMessage(const QString& text);
    /// What a screen reader reads out as the chart's value; told anew when it changes.
    void setSummary(const QString& text);
    /// The same picture for paper: black on white, without handles.
    virtual std::unique_ptr<RoomPlot> forPage() const = 0;

    QSize minimumSizeHint() const override;
    QSize sizeHint() const override { return QSize(560, 340).expandedTo(minimumSizeHint()); }

  protected:
    /// One key above an axis rect.
    struct Key {
        QString text;
        QColor colour;
        Qt::PenStyle style = Qt::SolidLine;
        bool box = false; ///< a patch instead of a line
    };
    /// Gives all axes and what hangs on them the theme's colours.
    virtual void restyle();
    /// Over all curves; `painter` clips nothing.
    virtual void paintOver(QCPPainter& painter) = 0;

    void changeEvent(QEvent* event) override;

    QFont smallFont() const;
    int lineHeight() const;
    void styleRect(QCPAxisRect* rect);
    /// Keys in a row above an axis rect, from the left.
    void paintKeys(QCPPainter& painter, const QCPAxisRect* rect, const std::vector<Key>& keys) const;
    /// Words on a ground of paper, for where lines would run through them.
    void paintWords(QCPPainter& painter, const QRectF& at, const QString& text, const QColor& colour) const;
    QRectF wordsRect(const QString& text) const; ///< at 0, 0

  private:
    class Overlay;
    friend class Overlay;
    const Use m_use;
    Theme m_theme;
    QString m_message;
};

} // namespace blinkwright::widgets
