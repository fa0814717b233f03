// Which stretch of a drawing a view shows, and how large. Zoom and place are kept to steps that put the
// drawing's grid on whole device pixels, so that wires are sharp at every zoom and pixel ratio.
//
//   Camera camera;
//   camera.resize(size, 1.0);  camera.lookAt(drawing.bounds());  camera.fit();
//   painter.setTransform(camera.transform());
//   camera.zoomAbout(pointer, 1.2);     // the spot under the pointer stays
#pragma once

#include <QPointF>
#include <QRectF>
#include <QTransform>

namespace blinkwright::widgets::hookup {

class Camera {
  public:
    static constexpr double leastZoom = 0.1, mostZoom = 8, mostFitZoom = 2, mostFilledZoom = 4;
    static constexpr double margin = 26; ///< shown around the drawing [units]

    Camera();

    double zoom() const { return m_zoom; }
    QRectF content() const { return m_paper; } ///< what can be brought into view [units]
    QRectF seen() const;                       ///< what is in view, before it is rounded to pixels [units]
    /// Pixels from the drawing's origin to the view's left upper corner.
    QPointF corner() const;

    /// @param ratio device pixels a pixel.
    void resize(QSizeF view, double ratio);
    /// @param keepStill what is in view stays where it is, even if the drawing would fit otherwise: for
    /// changes made by hand.
    void lookAt(const QRectF& drawing, bool keepStill = false);
    /// @param most so large a small drawing gets
    void fit(double most = mostFitZoom);
    /// @param width of the drawing's lines [units], whose edges are kept on whole pixels
    void setInk(double width) { m_ink = width; }
    void zoomAbout(QPointF inView, double factor);
    /// Moves the view by pixels.
    void panBy(QPointF pixels);
    /// The least move that brings an area into view.
    void bring(const QRectF& area);

    QTransform transform() const;
    QPointF toDrawing(QPointF inView) const { return transform().inverted().map(inView); }
    QRectF toDrawing(const QRectF& inView) const { return transform().inverted().mapRect(inView); }
    QRectF toView(const QRectF& area) const { return transform().mapRect(area); }

  private:
    void clamp();
    void setZoom(double zoom);
    double m_wanted = 1; ///< before it is rounded to a step, so that small turns of a wheel add up
    double m_zoom = 1;
    double m_ratio = 1;
    double m_ink; ///< [units]
    QPointF m_centre;
    QSizeF m_view{1, 1};
    QRectF m_content{-50, -50, 100, 100}; ///< drawing and margin
    QRectF m_paper = m_content;           ///< content and what was kept in view beside it
};

} // namespace blinkwright::widgets::hookup
