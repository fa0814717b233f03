#include "widgets/hookup/camera.h"

#include <algorithm>

namespace blinkwright::widgets::hookup {

void Camera::resize(QSizeF view) {
    m_view = view.expandedTo(QSizeF(1, 1));
    clamp();
}

void Camera::lookAt(const QRectF& drawing) {
    m_content = drawing.adjusted(-margin, -margin, margin, margin);
    clamp();
}

void Camera::fit() {
    m_zoom = std::min(m_view.width() / m_content.width(), m_view.height() / m_content.height());
    m_zoom = std::clamp(m_zoom, leastZoom, mostFitZoom);
    m_centre = m_content.center();
}

void Camera::zoomAbout(QPointF inView, double factor) {
    const QPointF spot = toDrawing(inView);
    m_zoom = std::clamp(m_zoom * factor, leastZoom, mostZoom);
    m_centre += spot - toDrawing(inView);
    clamp();
}

void Camera::panBy(QPointF pixels) {
    m_centre += pixels / m_zoom;
    clamp();
}

void Camera::bring(const QRectF& area) {
    const QRectF seen = transform().inverted().mapRect(QRectF(QPointF(0, 0), m_view));
    QPointF move;
    if (area.right() > seen.right()) move.setX(area.right() - seen.right());
    if (area.left() < seen.left()) move.setX(area.left() - seen.left());
    if (area.bottom() > seen.bottom()) move.setY(area.bottom() - seen.bottom());
    if (area.top() < seen.top()) move.setY(area.top() - seen.top());
    m_centre += move;
    clamp();
}

QTransform Camera::transform() const {
    const QPointF at = corner();
    return QTransform(m_zoom, 0, 0, m_zoom, -at.x(), -at.y());
}

void Camera::clamp() {
    const auto axis = [](double centre, double low, double high, double seen) {
        return high - low <= seen ? (low + high) / 2 : std::clamp(centre, low + seen / 2, high - seen / 2);
    };
    m_centre.setX(axis(m_centre.x(), m_content.left(), m_content.right(), m_view.width() / m_zoom));
    m_centre.setY(axis(m_centre.y(), m_content.top(), m_content.bottom(), m_view.height() / m_zoom));
}

} // namespace blinkwright::widgets::hookup
