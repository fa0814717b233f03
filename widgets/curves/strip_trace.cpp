#include "widgets/curves/strip_trace.h"

namespace blinkwright::widgets {

StripTrace::StripTrace(QCPAxis* time, QCPAxis* value) : QCPGraph(time, value) {
    setAdaptiveSampling(false); // the points come thinned
    setSelectable(QCP::stNone);
}

void StripTrace::paintOn(QCPPainter* painter) {
    painter->save();
    painter->setClipRect(clipRect());
    draw(painter);
    painter->restore();
}

void StripTrace::drawLinePlot(QCPPainter* painter, const QVector<QPointF>& points) const {
    const bool dashed = painter->pen().style() != Qt::SolidLine; // line by line they would begin anew
    if (dashed || painter->modes() & (QCPPainter::pmVectorized | QCPPainter::pmNoCaching)) {
        QCPGraph::drawLinePlot(painter, points);
        return;
    }
    applyDefaultAntialiasingHint(painter);
    const qsizetype lines = points.size() - 1;
    if (painter->antialiasing()) {
        QVarLengthArray<QLineF, 1024> drawn;
        drawn.reserve(std::max<qsizetype>(lines, 0));
        for (qsizetype k = 0; k < lines; ++k) drawn.append({points[k], points[k + 1]});
        painter->QPainter::drawLines(drawn.constData(), static_cast<int>(drawn.size()));
    } else { // on whole pixels, as the plot does it
        QVarLengthArray<QLine, 1024> drawn;
        drawn.reserve(std::max<qsizetype>(lines, 0));
        for (qsizetype k = 0; k < lines; ++k) drawn.append(QLineF(points[k], points[k + 1]).toLine());
        painter->QPainter::drawLines(drawn.constData(), static_cast<int>(drawn.size()));
    }
}

} // namespace blinkwright::widgets
