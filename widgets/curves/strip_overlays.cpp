#include "widgets/curves/strip_overlays.h"

#include "widgets/curves/strip_band.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {
constexpr double bandKeyWidth = 8;
} // namespace

void StripCaptions::drawCaption(QCPPainter* painter, Strip strip, const QString& title,
                                const std::vector<Key>& keys) const {
    if (!m_plot->isStripShown(strip)) return;
    const QRect strip_px = m_plot->stripRect(strip);
    const QFontMetrics metrics(m_plot->smallFont());
    const int base = strip_px.top() - metrics.descent() - 2;
    double x = strip_px.left() + 1;
    painter->setPen(m_plot->theme().ink);
    painter->drawText(QPointF(x, base), title);
    x += metrics.horizontalAdvance(title) + 14;
    if (!m_plot->pageStyle().legend) return;
    for (std::size_t k = 0; k < keys.size(); ++k) {
        const int width = 16 + metrics.horizontalAdvance(keys[k].text) + 12;
        const QString more = StripCaptions::tr("and %n more", nullptr, static_cast<int>(keys.size() - k));
        const bool lastOne = k + 1 == keys.size();
        const int reserve = lastOne ? 0 : metrics.horizontalAdvance(more);
        if (x + width + reserve - 12 > strip_px.right()) {
            painter->setPen(m_plot->theme().quietInk);
            if (x + metrics.horizontalAdvance(more) <= strip_px.right())
                painter->drawText(QPointF(x, base), more);
            return;
        }
        const double middle = base - metrics.xHeight() / 2.0;
        const QColor stroke = keys[k].pale ? StripBand::shade(keys[k].colour) : keys[k].colour;
        QPen pen(stroke, keys[k].width * m_plot->theme().stroke, Qt::SolidLine, Qt::FlatCap);
        if (!keys[k].dashes.isEmpty()) pen.setDashPattern(keys[k].dashes);
        painter->setPen(pen);
        painter->drawLine(QPointF(x, middle), QPointF(x + 12, middle));
        painter->setPen(keys[k].colour);
        painter->drawText(QPointF(x + 16, base), keys[k].text);
        x += width;
    }
}

void StripCaptions::draw(QCPPainter* painter) {
    const Theme& theme = m_plot->theme();
    painter->setFont(m_plot->smallFont());
    std::vector<Key> sets, lamps; // the sets are named where there are two
    const bool both = m_plot->hasSecond(), greys = m_plot->pageStyle().greys;
    const auto measured = [this](Strip strip) { return m_plot->hasRecord(strip); };
    const bool anyMeasured = measured(Strip::output) || measured(Strip::capacitor);
    if ((both || anyMeasured) && m_plot->hasFirst())
        sets.push_back({tr("Set A"), theme.setA, both ? 1.5 : 2.5});
    if (both)
        sets.push_back(
            {m_plot->secondName(), theme.setB, greys ? 1.5 : 3.5, false, m_plot->dashesOf(0, true)});
    const auto lampName = [&](const LampPoints& lamp, const QString& set) {
        const QString ref = QString::fromStdString(lamp.ref);
        return both ? tr("%1 in %2").arg(ref, set) : ref;
    };
    for (std::size_t k = 0; k < m_plot->lamps().size(); ++k)
        lamps.push_back({lampName(m_plot->lamps()[k], tr("A")), m_plot->lampColours()[k],
                         both || greys ? 1.5 : 2.5, false, m_plot->dashesOf(static_cast<int>(k), false)});
    for (std::size_t k = 0; k < m_plot->secondLamps().size(); ++k)
        lamps.push_back({lampName(m_plot->secondLamps()[k], m_plot->secondBrief()),
                         m_plot->secondLampColours()[k], greys ? 1.5 : 3.5, false,
                         m_plot->dashesOf(static_cast<int>(k), true)});
    const auto title = [this](Strip strip, const QString& what) {
        return m_plot->hasCurves() ? tr("%1 (%2)").arg(what, m_plot->scale(strip).unitText()) : what;
    };
    const auto withMeasured = [&](Strip strip) {
        std::vector<Key> keys = sets;
        if (measured(strip)) keys.push_back({tr("Measured"), theme.measured, 1.5});
        return keys;
    };
    std::vector<Key> ofOutput = withMeasured(Strip::output);
    if (m_plot->hasBand() && m_plot->hasFirst())
        ofOutput.push_back({tr("9 of 10 boards"), theme.setA, bandKeyWidth, true});
    drawCaption(painter, Strip::output, title(Strip::output, tr("Output, pin 3")), ofOutput);
    sets = withMeasured(Strip::capacitor);
    if (m_plot->hasCurves()) sets.push_back({tr("switching levels"), theme.level, 1.0});
    drawCaption(painter, Strip::capacitor, title(Strip::capacitor, tr("Timing capacitor")), sets);
    drawCaption(painter, Strip::lamps,
                m_plot->hasCurves() && lamps.empty() ? tr("Lamp current: no lamp here")
                                                     : title(Strip::lamps, tr("Lamp current")),
                lamps);
    if (m_plot->hasCurves() || m_plot->message().isEmpty()) return;

    QRect all = m_plot->stripRect(Strip::output).united(m_plot->stripRect(Strip::lamps));
    QFont font = m_plot->smallFont();
    font.setPixelSize(font.pixelSize() + 3);
    painter->setFont(font);
    const int flags = Qt::AlignCenter | Qt::TextWordWrap;
    const QRect text =
        QFontMetrics(font).boundingRect(all.adjusted(24, 16, -24, -16), flags, m_plot->message());
    painter->setPen(QPen(theme.frame, 1));
    painter->setBrush(theme.paper);
    painter->drawRoundedRect(QRectF(text.adjusted(-12, -8, 12, 8)), 4, 4);
    painter->setPen(theme.ink);
    painter->drawText(text, flags, m_plot->message());
}

void MomentOverlay::drawLabels(QCPPainter* painter, Strip strip, double x, std::vector<Label> labels) const {
    if (!m_plot->isStripShown(strip)) return;
    const Theme& theme = m_plot->theme();
    const QRect rect = m_plot->stripRect(strip);
    const QFontMetrics metrics(m_plot->smallFont());
    const double height = metrics.height() + 2;
    const auto room = static_cast<std::size_t>(std::max(1.0, std::floor(rect.height() / height)));
    if (labels.size() > room) labels.resize(room);

    // Beside their values, pushed apart downwards, then back up from the bottom edge.
    std::stable_sort(labels.begin(), labels.end(),
                     [](const Label& a, const Label& b) { return a.at_px < b.at_px; });
    double free = rect.top();
    for (Label& label : labels) {
        label.top_px = std::max(free, label.at_px - height / 2);
        free = label.top_px + height;
    }
    double limit = rect.bottom();
    for (auto label = labels.rbegin(); label != labels.rend(); ++label) {
        label->top_px = std::min(label->top_px, limit - height);
        limit = label->top_px;
    }
    double widest = 0;
    for (const Label& label : labels)
        widest = std::max(widest, static_cast<double>(metrics.horizontalAdvance(label.text)) + 10);
    const bool right = x + 7 + widest <= rect.right();
    for (const Label& label : labels) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(label.colour);
        if (label.at_px >= rect.top() - 1 && label.at_px <= rect.bottom() + 1)
            painter->drawEllipse(QPointF(x, label.at_px), 3, 3);
        const double width = metrics.horizontalAdvance(label.text) + 10;
        // Whole pixels: the plot's painter shifts antialiased lines onto pixel centres by itself.
        const QRectF box(std::floor(right ? x + 7 : x - 7 - width), std::floor(label.top_px),
                         std::ceil(width), height - 1);
        painter->setPen(QPen(theme.frame, 1));
        painter->setBrush(theme.paper);
        painter->drawRoundedRect(box, 3, 3);
        painter->setPen(label.colour);
        painter->drawText(box, Qt::AlignCenter, label.text);
    }
}

void MomentOverlay::paintOn(QCPPainter* painter) {
    painter->save();
    applyDefaultAntialiasingHint(painter);
    draw(painter);
    painter->restore();
}

void MomentOverlay::draw(QCPPainter* painter) {
    const Theme& theme = m_plot->theme();
    painter->setFont(m_plot->smallFont());
    const auto& moment = m_plot->moment();
    if (!moment || !m_plot->hasCurves()) return;
    const QRect top = m_plot->topStrip(), bottom = m_plot->bottomStrip();
    const double x = m_plot->pixelAt(moment->time_s);
    if (x < top.left() - 0.5 || x > top.right() + 1.5) return;

    const QFontMetrics metrics(m_plot->smallFont());
    const double line = std::floor(x);
    const double headTop = top.top() - 2 * m_plot->captionHeight() + 2;
    const QString time = m_plot->timeText(moment->time_s);
    const double width = metrics.horizontalAdvance(time) + 12;
    const double left = std::clamp(x - width / 2, 2.0, std::max(2.0, m_plot->width() - width - 2));
    const QRectF head(std::floor(left), headTop, width, metrics.height() + 2);
    painter->setPen(QPen(theme.moment, 1));
    painter->drawLine(QPointF(line, head.bottom()), QPointF(line, bottom.bottom()));
    painter->setPen(Qt::NoPen);
    painter->setBrush(theme.moment);
    painter->drawRoundedRect(head, 3, 3);
    painter->setPen(theme.paper);
    painter->drawText(head, Qt::AlignCenter, time);

    const auto one = [&](Strip strip, double value, const QColor& colour, const QString& name = {}) {
        const QString text = m_plot->valueText(strip, value);
        return Label{name.isEmpty() ? text : name + QStringLiteral("  ") + text, colour,
                     m_plot->valuePixel(strip, value), 0};
    };
    drawLabels(painter, Strip::output, x, {one(Strip::output, moment->output_V, theme.setA)});
    drawLabels(painter, Strip::capacitor, x, {one(Strip::capacitor, moment->capacitor_V, theme.setA)});
    std::vector<Label> lamps;
    for (std::size_t k = 0; k < std::min(moment->lamps_A.size(), m_plot->lamps().size()); ++k)
        lamps.push_back(one(Strip::lamps, moment->lamps_A[k], m_plot->lampColours()[k],
                            QString::fromStdString(m_plot->lamps()[k].ref)));
    drawLabels(painter, Strip::lamps, x, std::move(lamps));
}

} // namespace blinkwright::widgets
