#include "widgets/rooms/room_plot.h"

#include "widgets/curves/axis_style.h"

#include <QAccessibleWidget>

namespace blinkwright::widgets {

namespace {

constexpr int fontPixels = 12;
constexpr int rightMargin = 26; // half of a label under the right end
constexpr qreal wordsPadding = 3;

/// What a screen reader finds: a chart, whose value is its summary.
class Chart : public QAccessibleWidget {
  public:
    explicit Chart(QWidget* plot) : QAccessibleWidget(plot, QAccessible::Chart) {}
    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Value ? widget()->accessibleDescription() : QAccessibleWidget::text(kind);
    }
};

QAccessibleInterface* makeChart(const QString& className, QObject* object) {
    if (className != QLatin1String(RoomPlot::staticMetaObject.className())) return nullptr;
    return new Chart(static_cast<QWidget*>(object));
}

} // namespace

/// Painted last, over all layers.
class RoomPlot::Overlay : public QCPLayerable {
  public:
    explicit Overlay(RoomPlot* plot) : QCPLayerable(plot, QStringLiteral("over")), m_plot(plot) {}

  protected:
    void applyDefaultAntialiasingHint(QCPPainter* painter) const override { painter->setAntialiasing(true); }
    QRect clipRect() const override { return m_plot->viewport(); }
    void draw(QCPPainter* painter) override {
        painter->setFont(m_plot->smallFont());
        if (m_plot->m_message.isEmpty()) return m_plot->paintOver(*painter);
        painter->setPen(m_plot->m_theme.quietInk);
        const QRect room = m_plot->viewport().adjusted(24, 12, -24, -12);
        painter->fillRect(m_plot->viewport(), m_plot->m_theme.paper);
        painter->drawText(room, Qt::AlignCenter | Qt::TextWordWrap, m_plot->m_message);
    }

  private:
    RoomPlot* m_plot;
};

RoomPlot::RoomPlot(Use use, QWidget* parent)
    : QCustomPlot(parent), m_use(use), m_theme(Theme::of(Theme::Mode::light)) {
    static const bool installed = (QAccessible::installFactory(makeChart), true);
    Q_UNUSED(installed);
    setPlottingHints(QCP::phFastPolylines | QCP::phCacheLabels);
    setAutoAddPlottableToLegend(false);
    if (use == Use::screen) setFocusPolicy(Qt::StrongFocus);
    addLayer(QStringLiteral("over"), layer(QStringLiteral("overlay")), limAbove);
    new Overlay(this); // the plot's
    plotLayout()->setRowSpacing(0);
}

RoomPlot::~RoomPlot() = default;

void RoomPlot::setTheme(const Theme& theme) {
    m_theme = theme;
    setBackground(QBrush(theme.paper));
    restyle();
    replot(rpQueuedReplot);
}

void RoomPlot::setMessage(const QString& text) {
    if (std::exchange(m_message, text) != text) replot(rpQueuedReplot);
}

void RoomPlot::setSummary(const QString& text) {
    if (accessibleDescription() == text) return;
    setAccessibleDescription(text);
    if (!QAccessible::isActive()) return;
    QAccessibleValueChangeEvent event(this, text);
    QAccessible::updateAccessibility(&event);
}

QFont RoomPlot::smallFont() const {
    QFont f = font();
    f.setPixelSize(m_use == Use::screen ? std::max(fontPixels, QFontInfo(f).pixelSize()) : fontPixels);
    return f;
}

void RoomPlot::changeEvent(QEvent* event) {
    QCustomPlot::changeEvent(event);
    if (event->type() != QEvent::FontChange || m_use == Use::page) return;
    restyle();
    updateGeometry();
    replot(rpQueuedReplot);
}

QSize RoomPlot::minimumSizeHint() const {
    constexpr int usualLine = 20;
    return {260 * std::max(lineHeight(), usualLine) / usualLine,
            180 * std::max(lineHeight(), usualLine) / usualLine};
}

int RoomPlot::lineHeight() const {
    return QFontMetrics(smallFont()).height() + 4;
}

void RoomPlot::restyle() {
    for (QCPAxisRect* rect : axisRects()) styleRect(rect);
}

void RoomPlot::styleRect(QCPAxisRect* rect) {
    rect->setMinimumMargins(QMargins(0, lineHeight() + 2, rightMargin, 0));
    for (QCPAxis* axis : rect->axes()) styleAxis(*axis, m_theme, smallFont());
}

void RoomPlot::paintKeys(QCPPainter& painter, const QCPAxisRect* rect, const std::vector<Key>& keys) const {
    constexpr qreal sample = 18, gap = 5, between = 14;
    const QFontMetricsF metrics(smallFont());
    qreal x = rect->left();
    const qreal top = rect->top() - lineHeight() - 1, middle = top + lineHeight() / 2.0;
    for (const Key& key : keys) {
        if (key.box)
            painter.fillRect(QRectF(x, middle - 5, sample, 10), key.colour);
        else {
            painter.setPen(QPen(key.colour, 2 * m_theme.stroke, key.style));
            painter.drawLine(QPointF(x, middle), QPointF(x + sample, middle));
        }
        x += sample + gap;
        painter.setPen(m_theme.ink);
        const qreal width = metrics.horizontalAdvance(key.text);
        painter.drawText(QRectF(x, top, width + 2, lineHeight()), Qt::AlignVCenter | Qt::AlignLeft, key.text);
        x += width + between;
    }
}

QRectF RoomPlot::wordsRect(const QString& text) const {
    const QFontMetricsF metrics(smallFont());
    qreal width = 0;
    const QStringList lines = text.split(u'\n');
    for (const QString& line : lines) width = std::max(width, metrics.horizontalAdvance(line));
    return QRectF(0, 0, width + 2 * wordsPadding,
                  metrics.height() * static_cast<qreal>(lines.size()) + wordsPadding);
}

void RoomPlot::paintWords(QCPPainter& painter, const QRectF& at, const QString& text,
                          const QColor& colour) const {
    painter.fillRect(at, m_theme.paper);
    painter.setPen(colour);
    painter.drawText(at, Qt::AlignCenter, text);
}

} // namespace blinkwright::widgets
