// The whole drawing of one circuit: places, wires, labels, ready to paint and to ask what is where.
//
//   Drawing drawing;
//   drawing.show(circuit);                 // lays out and routes
//   drawing.show(circuitWithOtherValue);   // only texts change: well under a millisecond
//   drawing.paint(painter, theme);
//   drawing.partAt({12, 40});
#pragma once

#include "widgets/hookup/labels.h"
#include "widgets/hookup/paint.h"

#include <optional>

namespace blinkwright::widgets::hookup {

class Drawing {
  public:
    enum class Change { nothing, texts, layout };
    Change show(const circuit::Circuit& circuit);
    /// After Change::texts: where the drawing looks other than before [units].
    const std::vector<QRectF>& changedAreas() const { return m_changed; }

    const std::vector<PartView>& parts() const { return m_parts; }
    const std::vector<Label>& labels() const { return m_labels; }
    const Routes& routes() const { return m_routes; }
    const PartView* find(circuit::PartId id) const;
    /// Everything that is drawn, labels included; a small area about the origin where there is nothing.
    QRectF bounds() const { return m_bounds; }

    /// All but lenses and marks. @param areas what lies in none of them may be left out; the painter is
    /// clipped to them by the caller. Empty: everything.
    void paint(QPainter& painter, const Theme& theme, const std::vector<QRectF>& areas = {}) const;

    std::optional<circuit::PartId> partAt(QPointF at) const;
    struct Pin {
        circuit::PartId part;
        int pin;
    };
    std::optional<Pin> pinAt(QPointF at, double reach) const;
    /// Name of the net whose wire passes within reach.
    std::optional<QString> wireAt(QPointF at, double reach) const;
    QString netName(circuit::PartId part, int pin) const; ///< empty for an open pin

  private:
    struct Shape { ///< of one part: what layout and routing depend on
        circuit::PartId id;
        circuit::PartKind kind;
        std::string ref;
        std::optional<circuit::Placement> placement;
        bool operator==(const Shape&) const = default;
    };
    struct RailEnd {
        QPointF at;
        QString text;
    };
    void rebuild(const circuit::Circuit& circuit);
    void placeRailTexts(const circuit::Circuit& circuit);
    void measure();

    std::vector<Shape> m_shapes;
    std::vector<circuit::Net> m_nets;
    std::vector<PartView> m_parts;
    Routes m_routes;
    std::vector<Label> m_labels;
    std::vector<RailEnd> m_railEnds;
    std::vector<QRectF> m_changed;
    QRectF m_bounds{-50, -50, 100, 100};
};

} // namespace blinkwright::widgets::hookup
