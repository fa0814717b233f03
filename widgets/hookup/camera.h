// Which stretch of a drawing a view shows, and how large.
//
//   Camera camera;
//   camera.resize(size);  camera.lookAt(drawing.bounds());  camera.fit();
//   painter.setTransform(camera.transform());
//   camera.zoomAbout(pointer, 1.2);     // the spot under the pointer stays
#pragma once

#include <QPointF>
#include <QRectF>
#include <QTransform>

namespace blinkwright::widgets::hookup {

class Camera {
  public:
    static constexpr double leastZoom = 0.1, mostZoom = 8, mostFitZoom = 2;
    static constexpr double margin = 26; ///< shown around the drawing [units]

    double zoom() const { return m_zoom; }
    QRectF content() const { return m_content; } ///< drawing and margin [units]
    QPointF corner() const { return m_centre * m_zoom - QPointF(m_view.width() / 2, m_view.height() / 2); }

    void resize(QSizeF view);
    void lookAt(const QRectF& drawing);
    void fit();
    void zoomAbout(QPointF inView, double factor);
    /// Moves the view by pixels.
    void panBy(QPointF pixels);
    /// The least move that brings an area into view.
    void bring(const QRectF& area);

    QTransform transform() const;
    QPointF toDrawing(QPointF inView) const { return transform().inverted().map(inView); }
    QRectF toView(const QRectF& area) const { return transform().mapRect(area); }

  private:
    void clamp();
    double m_zoom = 1;
    QPointF m_centre;
    QSizeF m_view{1, 1};
    QRectF m_content{-50, -50, 100, 100};
};

} // namespace blinkwright::widgets::hookup
