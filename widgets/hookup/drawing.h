// The whole drawing of one circuit: places, wires, labels, ready to paint and to ask what is where.
//
//   Drawing drawing;
//   drawing.show(circuit);                 // lays out and routes
//   drawing.show(circuitWithOtherValue);   // only texts change: well under a millisecond
//   drawing.show(circuitWithAMovedPart);   // lays anew only the wires that this can reach
//   drawing.paint(painter, theme);
//   drawing.partAt({12, 40});
// However it came about, it is the drawing that a fresh one would make of the circuit: what is kept from the
// drawing before is only what would come out the same.
#pragma once

#include "widgets/hookup/labels.h"
#include "widgets/hookup/paint.h"

#include <optional>

namespace blinkwright::widgets::hookup {

class Drawing {
  public:
    enum class Change { nothing, texts, layout };
    Change show(const circuit::Circuit& circuit);
    /// How symbols are drawn; the next show() takes it up.
    void setStyle(const SymbolStyle& style) { m_wantedStyle = style; }
    const SymbolStyle& style() const { return m_wantedStyle; }
    /// How high the texts of labels are where there is room [units]: at once. Those in a timer stay.
    void setTextSize(double size);
    double textSize() const { return m_textSize; }
    /// After a change: where the drawing looks other than before [units]; empty after Change::layout:
    /// everywhere.
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
        std::optional<Pose> pose; ///< as stated
        bool operator==(const Shape&) const = default;
    };
    struct RailEnd {
        QPointF at;
        QString text;
        bool operator==(const RailEnd&) const = default;
    };
    struct Stated { ///< of one part: what its view is made of
        circuit::Values own, overrides;
        bool operator==(const Stated&) const = default;
    };
    /// What is drawn, to tell what of it has changed.
    struct Drawn {
        std::vector<PartView> parts;
        Routes routes;
        std::vector<Label> labels;
        std::vector<RailEnd> railEnds;
    };
    bool takeShapes(const circuit::Circuit& circuit);
    void takeViews(const circuit::Circuit& circuit, const std::vector<Pose>& poses);
    void rebuild(const circuit::Circuit& circuit);
    void noteTexts(const std::vector<PartView>& before);
    void noteChanges(const Drawn& before);
    void placeRailTexts(const circuit::Circuit& circuit);
    void measure();

    SymbolStyle m_wantedStyle, m_style;
    double m_textSize = labelSize;
    Router m_router;
    std::vector<Shape> m_shapes;
    std::vector<Stated> m_stated;
    std::vector<circuit::Net> m_nets;
    std::vector<PartView> m_parts;
    Routes m_routes;
    std::vector<Label> m_labels;
    std::vector<RailEnd> m_railEnds;
    std::vector<QRectF> m_changed;
    QRectF m_bounds{-50, -50, 100, 100};
};

} // namespace blinkwright::widgets::hookup
