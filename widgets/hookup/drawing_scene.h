// A drawing and its nets, as the gestures ask about them.
//
//   DrawingScene scene(drawing);
//   scene.setNets(circuit.nets());
//   scene.setReach(7, 4);
//   scene.pinAt({-30, 0});     // R1:1
#pragma once

#include "widgets/hookup/drawing.h"
#include "widgets/hookup/gestures.h"

namespace blinkwright::widgets::hookup {

class DrawingScene : public Scene {
  public:
    explicit DrawingScene(const Drawing& drawing) : m_drawing(drawing) {}

    /// The nets that the drawing's wires were drawn for, in their order.
    void setNets(const std::vector<circuit::Net>& nets) {
        if (nets != m_nets) m_nets = nets;
    }
    /// How near a pin or a wire must be to be meant [units].
    void setReach(double pin, double wire) {
        m_pinReach = pin;
        m_wireReach = wire;
    }
    bool hasNet(circuit::NetId net) const { return index(net) >= 0; }
    const std::vector<circuit::Net>& nets() const { return m_nets; }

    std::optional<circuit::PinRef> pinAt(QPointF at) const override;
    std::optional<circuit::PartId> partAt(QPointF at) const override { return m_drawing.partAt(at); }
    std::optional<circuit::NetId> netAt(QPointF at) const override;
    std::optional<circuit::PinRef> wireEndAt(QPointF at) const override;
    std::vector<circuit::PartId> partsIn(const QRectF& area) const override;
    circuit::Places places(const std::vector<circuit::PartId>& parts) const override;
    std::optional<circuit::NetId> netOf(circuit::PinRef pin) const override;
    QPointF pinPoint(circuit::PinRef pin) const override;
    QString pinText(circuit::PinRef pin) const override;
    QString netText(circuit::NetId net) const override;

    /// Every part where it is drawn.
    circuit::Places places() const;
    /// Straight runs of a net's wires.
    std::vector<Segment> segmentsOf(circuit::NetId net) const;

  private:
    int index(circuit::NetId net) const;
    const Segment* segmentAt(QPointF at) const;

    const Drawing& m_drawing;
    std::vector<circuit::Net> m_nets;
    double m_pinReach = 7, m_wireReach = 4;
};

} // namespace blinkwright::widgets::hookup
