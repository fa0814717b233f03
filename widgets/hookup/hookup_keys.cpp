// Keyboard and focus of the Hook-up.
#include "widgets/hookup/hookup_view_p.h"

#include <QKeyEvent>

namespace blinkwright::widgets {

namespace {
constexpr int nudgePause_ms = 1000; ///< steps that follow one another within it are one step to undo
constexpr int farStep = 5;          ///< steps of the grid with Shift

std::optional<hookup::Way> wayOf(int key) {
    switch (key) {
    case Qt::Key_Left:
        return hookup::Way::left;
    case Qt::Key_Right:
        return hookup::Way::right;
    case Qt::Key_Up:
        return hookup::Way::up;
    case Qt::Key_Down:
        return hookup::Way::down;
    default:
        return std::nullopt;
    }
}

/// One step of the grid that way.
hookup::Point stepOf(hookup::Way way) {
    using hookup::Way;
    const int x = way == Way::left ? -1 : way == Way::right ? 1 : 0;
    const int y = way == Way::up ? -1 : way == Way::down ? 1 : 0;
    return {x * hookup::pitch, y * hookup::pitch};
}

} // namespace

void HookupView::Private::arrow(hookup::Way way, Qt::KeyboardModifiers keys) {
    const bool shift = keys.testFlag(Qt::ShiftModifier);
    if (keys.testFlag(Qt::ControlModifier)) {
        const hookup::Point step = stepOf(way);
        const int times = shift ? farStep : 1;
        return nudge(times * step.x, times * step.y);
    }
    const auto next = neighbour(drawing.parts(), chosen.current(), way);
    if (!next) return;
    if (shift)
        extendByUser(next);
    else
        chooseByUser(next);
}

void HookupView::Private::nudge(int dx, int dy) {
    if (hand.busy() || chosen.parts().empty()) return;
    if (nudgeGesture == 0 || nudged.elapsed() > nudgePause_ms) nudgeGesture = ++lastGesture;
    nudged.start();
    // Ids of the keyboard's gestures are below 0, so that they never meet those of the mouse.
    wish(hookup::wishes::Move{scene.places(chosen.parts()), dx, dy}, -nudgeGesture);
    if (const auto current = chosen.current()) bring(*current);
}

void HookupView::keyPressEvent(QKeyEvent* event) {
    using hookup::Way;
    if (const auto way = wayOf(event->key())) return d->arrow(*way, event->modifiers());
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        d->zoomMiddle(Private::zoomStep);
        return;
    case Qt::Key_Minus:
        d->zoomMiddle(1 / Private::zoomStep);
        return;
    case Qt::Key_0:
        fit();
        return;
    case Qt::Key_Home:
        d->chooseByUser(neighbour(d->drawing.parts(), std::nullopt, Way::next));
        return;
    case Qt::Key_End:
        d->chooseByUser(neighbour(d->drawing.parts(), std::nullopt, Way::previous));
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (d->hand.doing() == hookup::Gestures::Doing::placing) {
            d->hand.press(d->hand.at(), {}); // where it hangs
            d->handMoved();
        } else if (const auto current = d->chosen.current()) {
            emit partActivated(*current);
        }
        return;
    case Qt::Key_Escape:
        if (d->hand.busy()) {
            d->hand.cancel();
            return d->handMoved();
        }
        if (d->chosen.empty()) break;
        select(std::nullopt);
        return;
    case Qt::Key_Space:
        d->spaceHeld = true;
        d->updateCursor();
        return;
    default:
        break;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

void HookupView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        d->spaceHeld = false;
        d->updateCursor();
        return;
    }
    QAbstractScrollArea::keyReleaseEvent(event);
}

bool HookupView::focusNextPrevChild(bool next) {
    const auto part = d->chosen.current() ? neighbour(d->drawing.parts(), d->chosen.current(),
                                                      next ? hookup::Way::next : hookup::Way::previous)
                                          : std::nullopt;
    if (!part) return QAbstractScrollArea::focusNextPrevChild(next);
    d->chooseByUser(part);
    return true;
}

void HookupView::focusInEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusInEvent(event);
    // Coming by Tab starts at the near end, so that going through the parts never gets stuck in the middle.
    if (event->reason() == Qt::TabFocusReason)
        d->chooseByUser(neighbour(d->drawing.parts(), std::nullopt, hookup::Way::next));
    else if (event->reason() == Qt::BacktabFocusReason)
        d->chooseByUser(neighbour(d->drawing.parts(), std::nullopt, hookup::Way::previous));
}

void HookupView::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    d->spaceHeld = false;
    d->updateCursor();
}

bool HookupView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        // Keys of the drawing come before shortcuts of the window while the drawing has the focus.
        const int key = static_cast<QKeyEvent*>(event)->key();
        const auto modifiers = static_cast<QKeyEvent*>(event)->modifiers() & ~Qt::KeypadModifier;
        const bool arrow = key >= Qt::Key_Left && key <= Qt::Key_Down;
        const bool plain = modifiers == Qt::NoModifier && (key == Qt::Key_0 || key == Qt::Key_Space ||
                                                           key == Qt::Key_Home || key == Qt::Key_End);
        const bool escape = key == Qt::Key_Escape && (d->hand.busy() || !d->chosen.empty());
        if (plain || escape || (arrow && !modifiers.testFlag(Qt::AltModifier))) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
}

} // namespace blinkwright::widgets
