// A hand on the real window's Hook-up: finds where parts, pins and buttons are and sends the events that a
// mouse would.
//
//   Hand hand(window);
//   hand.add(PartKind::resistor, {120, 40});          // from the strip, then a click on the paper
//   hand.drag(hand.pin("R1:1"), hand.pin("U1:8"));    // a wire
#pragma once

#include "app/main_window.h"
#include "widgets/hookup/drawing.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/hookup/part_palette.h"

#include <QTest>
#include <QToolButton>

#include <stdexcept>

namespace blinkwright::test {

class Hand {
  public:
    explicit Hand(app::MainWindow& window) : m_window(window), m_view(window.hookup()) {}

    QWidget* paper() const { return m_view.viewport(); }
    circuit::PartId part(const char* ref) const {
        const circuit::Part* found = m_window.document().circuit().findRef(ref);
        if (!found) throw std::runtime_error(ref);
        return found->id;
    }
    /// Where a place of the drawing is in the viewport, as the view itself says.
    QPoint at(QPointF place) const { return m_view.inView(place); }
    QPoint middle(const char* ref) const {
        const auto place = m_view.shownPlaces().at(part(ref));
        return at(QPointF(place.x, place.y));
    }
    QPointF pinPlace(const char* name) const {
        const auto pin = m_window.document().circuit().pinNamed(name);
        if (!pin) throw std::runtime_error(name);
        const auto place = m_view.shownPlaces().at(pin.value().part);
        const circuit::PartKind kind = m_window.document().circuit().find(pin.value().part)->kind;
        const widgets::hookup::Point p =
            placed(widgets::hookup::pinsOf(kind)[static_cast<std::size_t>(pin.value().pin)],
                   widgets::hookup::poseOf(place));
        return {static_cast<double>(p.x), static_cast<double>(p.y)};
    }
    QPoint pin(const char* name) const { return at(pinPlace(name)); }

    void press(QPoint from, Qt::KeyboardModifiers keys = {}) {
        QTest::mouseMove(paper(), from);
        QTest::mousePress(paper(), Qt::LeftButton, keys, from);
    }
    void moveTo(QPoint to) { QTest::mouseMove(paper(), to); }
    void release(QPoint to, Qt::KeyboardModifiers keys = {}) {
        QTest::mouseRelease(paper(), Qt::LeftButton, keys, to);
    }
    /// In a few steps, as a hand moves.
    void drag(QPoint from, QPoint to, Qt::KeyboardModifiers keys = {}) {
        constexpr int steps = 5;
        press(from, keys);
        for (int k = 1; k <= steps; ++k) moveTo(from + (to - from) * k / steps);
        release(to, keys);
    }
    void click(QPoint where, Qt::KeyboardModifiers keys = {}) {
        QTest::mouseMove(paper(), where);
        QTest::mouseClick(paper(), Qt::LeftButton, keys, where);
    }
    void key(Qt::Key k, Qt::KeyboardModifiers keys = {}) { QTest::keyClick(&m_view, k, keys); }

    /// A click on the strip, turns by the keyboard until it stands right, and a click on the paper.
    void add(circuit::PartKind kind, QPointF place, int turn) {
        auto* strip = m_window.findChild<widgets::PartPalette*>();
        QTest::mouseClick(strip->button(kind), Qt::LeftButton);
        moveTo(at(place));
        const int usual = kind == circuit::PartKind::timer ? 0 : 90;
        for (int t = usual; t != turn; t = (t + 90) % 360) key(Qt::Key_T);
        click(at(place));
    }

  private:
    app::MainWindow& m_window;
    widgets::HookupView& m_view;
};

} // namespace blinkwright::test
