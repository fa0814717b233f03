#include "widgets/hookup/camera.h"

#include "widgets/hookup/geometry.h"
#include "widgets/hookup/symbols.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets::hookup {

Camera::Camera() : m_ink(inkWidth) {
}

QPointF Camera::corner() const {
    const QPointF exact = m_centre * m_zoom - QPointF(m_view.width() / 2, m_view.height() / 2);
    // A line of an odd number of device pixels is sharp when its middle is the middle of one.
    const bool odd = std::lround(std::max(1.0, m_ink * m_zoom * m_ratio)) % 2 == 1;
    const auto snap = [&](double v) { return (std::round(v * m_ratio) - (odd ? 0.5 : 0.0)) / m_ratio; };
    return {snap(exact.x()), snap(exact.y())};
}

QRectF Camera::seen() const {
    const QSizeF size = m_view / m_zoom;
    return {m_centre - QPointF(size.width(), size.height()) / 2, size};
}

void Camera::setZoom(double zoom) {
    m_wanted = std::clamp(zoom, leastZoom, mostZoom);
    const double steps = m_wanted * pitch * m_ratio; // device pixels a step of the grid
    m_zoom = std::max(1.0, std::floor(steps + 1e-9)) / (pitch * m_ratio);
}

void Camera::resize(QSizeF view, double ratio) {
    m_view = view.expandedTo(QSizeF(1, 1));
    m_ratio = ratio;
    setZoom(m_wanted);
    clamp();
}

void Camera::lookAt(const QRectF& drawing, bool keepStill) {
    m_content = drawing.adjusted(-margin, -margin, margin, margin);
    m_paper = keepStill ? m_content | seen() : m_content;
    clamp();
}

void Camera::fit(double most) {
    setZoom(std::min({m_view.width() / m_content.width(), m_view.height() / m_content.height(), most}));
    m_centre = m_content.center();
    m_paper = m_content;
}

void Camera::zoomAbout(QPointF inView, double factor) {
    const QPointF spot = toDrawing(inView);
    setZoom(m_wanted * factor);
    m_centre += spot - toDrawing(inView);
    clamp();
}

void Camera::panBy(QPointF pixels) {
    m_centre += pixels / m_zoom;
    clamp();
}

void Camera::bring(const QRectF& area) {
    const QRectF seen = this->seen();
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
    m_centre.setX(axis(m_centre.x(), m_paper.left(), m_paper.right(), m_view.width() / m_zoom));
    m_centre.setY(axis(m_centre.y(), m_paper.top(), m_paper.bottom(), m_view.height() / m_zoom));
}

} // namespace blinkwright::widgets::hookup
