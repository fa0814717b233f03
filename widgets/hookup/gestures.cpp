#include "widgets/hookup/gestures.h"

#include "widgets/hookup/geometry.h"
#include "widgets/text/words.h"

#include <cmath>

namespace blinkwright::widgets::hookup {

using circuit::NetId;
using circuit::PartId;
using circuit::PinRef;

namespace {

int onGrid(double v) {
    return pitch * static_cast<int>(std::lround(v / pitch));
}

} // namespace

void Gestures::press(QPointF at, Keys keys) {
    if (m_doing == Doing::placing) {
        move(at);
        const wishes::Add add{m_kind, m_place};
        m_doing = Doing::nothing;
        return wish(add);
    }
    m_doing = Doing::pressing;
    m_keys = keys;
    m_from = m_at = at;
    m_before = m_selection;
    m_target = {};
    m_part.reset();
    m_pull = false;
    m_pin = m_scene.pinAt(at);
    if (m_pin && keys.pull) m_pull = m_scene.netOf(*m_pin).has_value();
    if (m_pin) {
        m_part = m_pin->part;
    } else if ((m_part = m_scene.partAt(at)); !m_part) {
        m_pin = m_scene.wireEndAt(at);
        m_pull = m_pin.has_value();
    }
    if (m_part && keys.extend) {
        m_selection.toggle(*m_part);
    } else if (m_part && !m_selection.holds(*m_part)) {
        m_selection.choose(*m_part);
    }
}

void Gestures::begin(QPointF at) {
    if (m_pin) {
        m_doing = m_pull ? Doing::pulling : Doing::wiring;
        if (m_pull) m_selection = m_before;
        return aim(at);
    }
    if (m_part) {
        if (!m_selection.holds(*m_part)) m_selection.add({*m_part}); // Ctrl had just taken it out
        m_doing = Doing::moving;
        m_shown = m_scene.places(m_selection.parts());
        m_dx = m_dy = 0;
        ++m_gesture;
        return moveParts(at);
    }
    m_doing = Doing::banding;
}

void Gestures::move(QPointF at) {
    m_at = at;
    switch (m_doing) {
    case Doing::nothing:
        return;
    case Doing::pressing:
        if (std::hypot(at.x() - m_from.x(), at.y() - m_from.y()) >= m_slack) begin(at);
        return;
    case Doing::moving:
        return moveParts(at);
    case Doing::banding:
        return;
    case Doing::wiring:
    case Doing::pulling:
        return aim(at);
    case Doing::placing:
        m_place.x = onGrid(at.x());
        m_place.y = onGrid(at.y());
        return;
    }
}

void Gestures::moveParts(QPointF at) {
    const int dx = onGrid(at.x() - m_from.x()), dy = onGrid(at.y() - m_from.y());
    if (dx == m_dx && dy == m_dy) return;
    m_dx = dx;
    m_dy = dy;
    wish(wishes::Move{m_shown, dx, dy}, m_gesture);
}

QString Gestures::refusal(PinRef to) const {
    if (!m_pin) return {};
    if (to == *m_pin) {
        return m_doing == Doing::pulling
                   ? Words::tr("The wire ends at %1 already.").arg(m_scene.pinText(to))
                   : Words::tr("%1 cannot be joined to itself.").arg(m_scene.pinText(to));
    }
    const auto net = m_scene.netOf(*m_pin);
    if (!net || net != m_scene.netOf(to)) return {};
    return Words::tr("%1 and %2 are joined already, by the net %3.")
        .arg(m_scene.pinText(*m_pin), m_scene.pinText(to), m_scene.netText(*net));
}

QString Gestures::refusal(NetId to) const {
    if (!m_pin || m_scene.netOf(*m_pin) != to) return {};
    return Words::tr("%1 is in the net %2 already.").arg(m_scene.pinText(*m_pin), m_scene.netText(to));
}

void Gestures::aim(QPointF at) {
    m_target = {};
    if (const auto pin = m_scene.pinAt(at)) {
        m_target.pin = pin;
        m_target.refusal = refusal(*pin);
    } else if (const auto net = m_scene.netAt(at)) {
        // While a wire is pulled off, its own net is still drawn: being over it says nothing.
        if (m_doing == Doing::pulling && m_scene.netOf(*m_pin) == net) return;
        m_target.net = net;
        m_target.refusal = refusal(*net);
    }
}

void Gestures::drop() {
    const bool pulling = m_doing == Doing::pulling;
    const Target target = m_target;
    const PinRef from = *m_pin;
    m_doing = Doing::nothing;
    m_target = {};
    if (!target.refusal.isEmpty()) {
        // A wire's end that is put back, or on a pin of its own net.
        if (pulling && target.pin && *target.pin != from) return wish(wishes::TakeOff{from});
        return m_says.say(target.refusal);
    }
    if (target.pin)
        return pulling ? wish(wishes::PullToPin{from, *target.pin})
                       : wish(wishes::JoinPins{from, *target.pin});
    if (target.net)
        return pulling ? wish(wishes::PullToNet{from, *target.net})
                       : wish(wishes::JoinToNet{from, *target.net});
    if (pulling) return wish(wishes::TakeOff{from});
    m_says.say(Words::tr("No wire was drawn from %1: a wire ends on a pin or on another wire.")
                   .arg(m_scene.pinText(from)));
}

void Gestures::release(QPointF at) {
    move(at);
    switch (m_doing) {
    case Doing::nothing:
    case Doing::placing:
        return;
    case Doing::pressing:
        m_doing = Doing::nothing;
        if (m_part && !m_keys.extend) {
            m_selection.choose(*m_part);
            return m_says.activate(*m_part);
        }
        if (m_part || m_keys.extend) return;
        if (const auto net = m_scene.netAt(at))
            m_selection.chooseNet(*net);
        else
            m_selection.clear();
        return;
    case Doing::moving:
        m_doing = Doing::nothing;
        return;
    case Doing::banding:
        m_doing = Doing::nothing;
        if (m_keys.extend)
            m_selection.add(m_scene.partsIn(band()));
        else
            m_selection.choose(m_scene.partsIn(band()));
        return;
    case Doing::wiring:
    case Doing::pulling:
        return drop();
    }
}

void Gestures::cancel() {
    const Doing before = std::exchange(m_doing, Doing::nothing);
    m_target = {};
    if (before == Doing::moving && (m_dx != 0 || m_dy != 0)) wish(wishes::Move{m_shown, 0, 0}, m_gesture);
    if (before != Doing::nothing && before != Doing::placing) m_selection = m_before;
}

void Gestures::letGo() {
    m_doing = Doing::nothing;
    m_target = {};
}

void Gestures::forget() {
    const auto there = [this](PartId part) { return !m_scene.places({part}).empty(); };
    bool gone = (m_pin && !there(m_pin->part)) || (m_part && !there(*m_part));
    if (m_doing == Doing::pulling && m_pin && !m_scene.netOf(*m_pin)) gone = true;
    for (const auto& [part, place] : m_shown)
        if (m_doing == Doing::moving && !there(part)) gone = true;
    if (!gone) return;
    m_pin.reset();
    m_part.reset();
    if (m_doing != Doing::placing) m_doing = Doing::nothing;
}

void Gestures::place(circuit::PartKind kind, const circuit::Placement& pose) {
    cancel();
    m_doing = Doing::placing;
    m_kind = kind;
    m_place = pose;
    m_pin.reset();
}

void Gestures::turnPlaced() {
    m_place.turn = (m_place.turn + 90) % 360;
}

void Gestures::mirrorPlaced() {
    m_place.turn = (360 - m_place.turn) % 360;
    m_place.mirror = !m_place.mirror;
}

} // namespace blinkwright::widgets::hookup
