// What press, move and release mean on the Hook-up: a state machine of plain points and ids, without a
// window. It asks a Scene what lies where, keeps the selection, and answers with wishes.
//
//   Gestures hand(scene, selection, {.wish = emitWish, .say = showSentence});
//   hand.press({0, 0}, {});   hand.move({40, 0});   hand.release({40, 0});
//
// Press on a pin and drag: a wire to another pin or wire. With Shift, or on the last straight run of a wire:
// its end comes off that pin. On a part: it moves, with all that are chosen. On the paper: a rubber band.
#pragma once

#include "widgets/hookup/selection.h"
#include "widgets/hookup/wish.h"

#include <QPointF>
#include <QRectF>
#include <QString>

namespace blinkwright::widgets::hookup {

/// What the drawing knows of a place. Coordinates are the drawing's [units].
class Scene {
  public:
    virtual ~Scene() = default;
    virtual std::optional<circuit::PinRef> pinAt(QPointF at) const = 0;
    virtual std::optional<circuit::PartId> partAt(QPointF at) const = 0;
    virtual std::optional<circuit::NetId> netAt(QPointF at) const = 0;
    /// The pin that the straight run of wire under a point ends at.
    virtual std::optional<circuit::PinRef> wireEndAt(QPointF at) const = 0;
    virtual std::vector<circuit::PartId> partsIn(const QRectF& area) const = 0;
    virtual circuit::Places places(const std::vector<circuit::PartId>& parts) const = 0;
    virtual std::optional<circuit::NetId> netOf(circuit::PinRef pin) const = 0;
    virtual QPointF pinPoint(circuit::PinRef pin) const = 0;
    virtual QString pinText(circuit::PinRef pin) const = 0;
    virtual QString netText(circuit::NetId net) const = 0;
};

class Gestures {
  public:
    struct Says {
        std::function<void(const Wish&, int gesture)> wish;
        std::function<void(const QString&)> say; ///< why something cannot be done
        std::function<void(circuit::PartId)> activate = [](circuit::PartId) {};
    };
    struct Keys {
        bool extend = false; ///< Ctrl: add to what is chosen
        bool pull = false;   ///< Shift: take the wire off the pin
    };
    enum class Doing {
        nothing,
        pressing, ///< the button is down, but nothing has moved far enough
        moving,
        banding,
        wiring,  ///< drawing a wire from a pin
        pulling, ///< a wire's end is off its pin
        placing, ///< a new part hangs on the pointer
    };
    /// Where a wire that is being drawn would end if it were let go now.
    struct Target {
        std::optional<circuit::PinRef> pin;
        std::optional<circuit::NetId> net; ///< a wire of it
        QString refusal;                   ///< empty: legal
        bool legal() const { return (pin || net) && refusal.isEmpty(); }
    };

    Gestures(const Scene& scene, Selection& selection, Says says)
        : m_scene(scene), m_selection(selection), m_says(std::move(says)) {}

    /// How far a press may wander and still be a click [units].
    void setSlack(double units) { m_slack = units; }

    void press(QPointF at, Keys keys);
    void move(QPointF at);
    void release(QPointF at);
    /// Puts everything back as it was before the press.
    void cancel();
    /// Lets go where things are, without a wish: the button came up where nobody told.
    void letGo();
    /// The circuit has changed under the hand: what it holds may be gone.
    void forget();

    /// A new part of a kind hangs on the pointer until a press puts it down.
    void place(circuit::PartKind kind, const circuit::Placement& pose);
    void turnPlaced();
    void mirrorPlaced();

    Doing doing() const { return m_doing; }
    bool busy() const { return m_doing != Doing::nothing; }
    QRectF band() const { return QRectF(m_from, m_at).normalized(); }
    std::optional<circuit::PinRef> fixedPin() const { return m_pin; } ///< of a wire: where it began
    const Target& target() const { return m_target; }
    QPointF at() const { return m_at; }
    circuit::PartKind placedKind() const { return m_kind; }
    const circuit::Placement& placed() const { return m_place; }

    /// Whether a wire from the fixed pin may end on a pin.
    QString refusal(circuit::PinRef to) const;
    QString refusal(circuit::NetId to) const;

  private:
    void begin(QPointF at);
    void moveParts(QPointF at);
    void aim(QPointF at);
    void drop();
    void wish(const Wish& wish, int gesture = 0) const { m_says.wish(wish, gesture); }

    const Scene& m_scene;
    Selection& m_selection;
    Says m_says;
    double m_slack = 4;

    Doing m_doing = Doing::nothing;
    Keys m_keys;
    QPointF m_from, m_at;
    std::optional<circuit::PinRef> m_pin;
    bool m_pull = false;
    std::optional<circuit::PartId> m_part;
    Selection m_before; ///< the selection when the button went down
    circuit::Places m_shown;
    int m_dx = 0, m_dy = 0;
    int m_gesture = 0;
    Target m_target;
    circuit::PartKind m_kind = circuit::PartKind::resistor;
    circuit::Placement m_place;
};

} // namespace blinkwright::widgets::hookup
