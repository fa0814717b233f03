// The present value in a hand: by mouse and by keys.
#include "widgets/rooms/trend_plot.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {
constexpr double reach = 9, finer = 0.1; // pixels from a line; with Shift
} // namespace

const TrendLine* TrendPlot::lineNear(double x) const {
    const TrendLine* best = nullptr;
    for (const TrendLine& line : m_picture.lines) {
        if (!m_picture.range.holds(line.present)) continue;
        const double off = std::abs(xOf(line.present) - x);
        if (off > reach) continue;
        const double bestOff = best ? std::abs(xOf(best->present) - x) : reach + 1;
        // Of two that stand together the one in hand is meant.
        if (off < bestOff || (off == bestOff && line.set == m_picture.held)) best = &line;
    }
    return best;
}

void TrendPlot::wish(double value) {
    const TrendLine* line = lineOf(m_picture.held);
    if (!line || value == line->present) return;
    emit wished(m_picture.held, std::clamp(value, m_picture.range.from, m_picture.range.to));
}

void TrendPlot::endGesture() {
    if (!inGesture()) return;
    m_dragging = m_bursting = false;
    m_quiet.stop();
    emit ended();
}

void TrendPlot::mousePressEvent(QMouseEvent* event) {
    const TrendLine* line = lineNear(event->position().x());
    if (event->button() != Qt::LeftButton || m_dragging || !line) return RoomPlot::mousePressEvent(event);
    endGesture();
    if (line->set != m_picture.held) {
        setHeld(line->set);
        emit heldChanged(line->set);
    }
    const ValueScale scale = scaleOf(m_picture.value, m_picture.range);
    m_dragging = true;
    m_lastX = event->position().x();
    m_before = line->present;
    m_place = scale.place(line->present);
    setFocus(Qt::MouseFocusReason);
    emit began();
}

void TrendPlot::mouseMoveEvent(QMouseEvent* event) {
    const double x = event->position().x();
    if (!m_dragging) {
        setCursor(lineNear(x) ? Qt::SizeHorCursor : Qt::ArrowCursor);
        return RoomPlot::mouseMoveEvent(event);
    }
    const double pace = event->modifiers().testFlag(Qt::ShiftModifier) ? finer : 1;
    m_place += pace * (x - m_lastX) / std::max(1, axisRect()->width());
    m_lastX = x;
    wish(roundedTo3(scaleOf(m_picture.value, m_picture.range).at(m_place)));
}

void TrendPlot::mouseReleaseEvent(QMouseEvent* event) {
    if (!m_dragging || event->button() != Qt::LeftButton) return RoomPlot::mouseReleaseEvent(event);
    endGesture();
}

void TrendPlot::burst(double value) {
    if (m_dragging) return;
    if (!std::exchange(m_bursting, true)) emit began();
    m_quiet.start();
    wish(value);
}

void TrendPlot::keyPressEvent(QKeyEvent* event) {
    const TrendLine* line = lineOf(m_picture.held);
    if (event->key() == Qt::Key_Escape && m_dragging) {
        wish(m_before);
        return endGesture();
    }
    if (!line || m_dragging) return RoomPlot::keyPressEvent(event);
    const ValueScale scale = scaleOf(m_picture.value, m_picture.range);
    switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Up:
        return burst(scale.stepped(line->present, 1, false));
    case Qt::Key_Left:
    case Qt::Key_Down:
        return burst(scale.stepped(line->present, -1, false));
    case Qt::Key_PageUp:
        return burst(scale.stepped(line->present, 1, true));
    case Qt::Key_PageDown:
        return burst(scale.stepped(line->present, -1, true));
    case Qt::Key_Home:
        return burst(m_picture.range.from);
    case Qt::Key_End:
        return burst(m_picture.range.to);
    default:
        RoomPlot::keyPressEvent(event);
    }
}

void TrendPlot::focusOutEvent(QFocusEvent* event) {
    if (m_bursting) endGesture();
    RoomPlot::focusOutEvent(event);
}

} // namespace blinkwright::widgets
