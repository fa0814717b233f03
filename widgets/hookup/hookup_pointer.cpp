// Mouse and menus of the Hook-up: events become steps of the gestures.
#include "widgets/hookup/add_parts.h"
#include "widgets/hookup/hookup_view_p.h"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QToolTip>
#include <QWheelEvent>

namespace blinkwright::widgets {

void HookupView::wheelEvent(QWheelEvent* event) {
    event->accept();
    const bool zooming = event->modifiers() & Qt::ControlModifier;
    const QPoint fine = event->pixelDelta(), coarse = event->angleDelta();
    if (!zooming && !fine.isNull()) { // a touch pad: two fingers move the paper
        d->letGoOfFit();
        d->camera.panBy(-QPointF(fine));
        d->changed();
    } else if (!zooming && (event->modifiers() & Qt::ShiftModifier || coarse.y() == 0)) {
        d->letGoOfFit();
        d->camera.panBy({-(coarse.x() != 0 ? coarse.x() : coarse.y()) / 2.0, 0});
        d->changed();
    } else {
        d->zoomAbout(event->position(), std::pow(Private::zoomStep, coarse.y() / 120.0));
    }
}

void HookupView::mousePressEvent(QMouseEvent* event) {
    d->pointer = event->position();
    if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && d->spaceHeld)) {
        d->panFrom = event->pos();
        d->updateCursor();
    } else if (event->button() == Qt::LeftButton) {
        d->hand.press(d->camera.toDrawing(event->position()),
                      {.extend = event->modifiers().testFlag(Qt::ControlModifier),
                       .pull = event->modifiers().testFlag(Qt::ShiftModifier)});
        d->handMoved();
    }
}

void HookupView::mouseMoveEvent(QMouseEvent* event) {
    d->pointer = event->position();
    if (d->panFrom) {
        d->letGoOfFit();
        d->camera.panBy(*d->panFrom - event->pos());
        d->panFrom = event->pos();
        d->changed();
        return;
    }
    const QPointF at = d->camera.toDrawing(event->position());
    const bool placing = d->hand.doing() == hookup::Gestures::Doing::placing;
    if (d->hand.busy() && !placing && !event->buttons().testFlag(Qt::LeftButton)) {
        d->hand.letGo(); // a dialog had taken the mouse when the button came up
        d->handMoved();
    }
    if (d->hand.busy()) {
        d->hand.move(at);
        d->handMoved();
        if (!placing) d->followPointer(at);
        return;
    }
    d->hover(d->drawing.partAt(at));
    d->updateCursor();
}

void HookupView::mouseReleaseEvent(QMouseEvent* event) {
    d->panFrom.reset();
    if (event->button() == Qt::LeftButton && d->hand.busy()) {
        d->hand.release(d->camera.toDrawing(event->position()));
        d->handMoved();
    }
    d->updateCursor();
}

void HookupView::mouseDoubleClickEvent(QMouseEvent* event) {
    mousePressEvent(event);
    if (event->button() != Qt::LeftButton) return;
    if (const auto part = d->drawing.partAt(d->camera.toDrawing(event->position()))) {
        d->hand.cancel();
        emit editWished(*part);
    }
}

void HookupView::contextMenuEvent(QContextMenuEvent* event) {
    d->hand.cancel();
    d->handMoved();
    if (event->reason() != QContextMenuEvent::Mouse) {
        const auto current = d->chosen.current();
        const PartView* part = current ? d->drawing.find(*current) : nullptr;
        const QPoint at =
            part ? d->camera.toView(QRectF(part->pose.at.x, part->pose.at.y, 0, 0)).topLeft().toPoint()
                 : viewport()->rect().center();
        Spot spot{at, std::nullopt, current, d->chosen.net()};
        emit menuWished(viewport()->mapToGlobal(at), spot);
        return;
    }
    const QPointF at = d->camera.toDrawing(QPointF(event->pos()));
    Spot spot{event->pos(), d->scene.pinAt(at), d->drawing.partAt(at), std::nullopt};
    if (spot.pin) spot.part = spot.pin->part;
    if (!spot.part) spot.net = d->scene.netAt(at);
    if (spot.part && !d->chosen.holds(*spot.part))
        d->chooseByUser(spot.part);
    else if (spot.net)
        d->chosen.chooseNet(*spot.net);
    d->selectionTouched();
    emit menuWished(event->globalPos(), spot);
}

void HookupView::placePart(circuit::PartKind kind) {
    setFocus(Qt::OtherFocusReason);
    circuit::Placement place = hookup::usualPose(kind);
    const QPointF at = d->pointer ? d->camera.toDrawing(*d->pointer) : d->camera.seen().center();
    place.x = at.x();
    place.y = at.y();
    d->hand.place(kind, place);
    d->hand.move(at);
    d->handMoved();
}

void HookupView::turnChosen() {
    if (d->hand.doing() == hookup::Gestures::Doing::placing) {
        d->hand.turnPlaced();
        return d->handMoved();
    }
    if (!d->hand.busy() && !d->chosen.parts().empty()) d->wish(hookup::wishes::Turn{chosenPlaces()}, 0);
}

void HookupView::mirrorChosen() {
    if (d->hand.doing() == hookup::Gestures::Doing::placing) {
        d->hand.mirrorPlaced();
        return d->handMoved();
    }
    if (!d->hand.busy() && !d->chosen.parts().empty()) d->wish(hookup::wishes::Mirror{chosenPlaces()}, 0);
}

void HookupView::deleteChosen() {
    if (d->hand.busy()) return;
    if (const auto net = d->chosen.net())
        d->wish(hookup::wishes::DeleteNet{*net}, 0);
    else if (!d->chosen.parts().empty())
        d->wish(hookup::wishes::Delete{d->chosen.parts()}, 0);
}

/// What is dragged to the edge of the view brings along the drawing behind it.
void HookupView::Private::followPointer(QPointF at) {
    const double room = edgeRoom_px / camera.zoom();
    const QPointF before = camera.corner();
    camera.bring(QRectF(at, at).adjusted(-room, -room, room, room));
    if (camera.corner() != before) changed();
}

void HookupView::Private::handMoved() {
    using Doing = hookup::Gestures::Doing;
    selectionTouched();
    const Doing doing = hand.doing();
    if (doing != Doing::nothing) letGoOfFit();
    const QString refusal =
        doing == Doing::wiring || doing == Doing::pulling ? hand.target().refusal : QString();
    if (!refusal.isEmpty() && refusal != lastRefusal) emit view->said(refusal);
    lastRefusal = refusal;
    if (doing != Doing::nothing || lastDoing != Doing::nothing) view->viewport()->update();
    lastDoing = doing;
    updateCursor();
}

void HookupView::Private::updateCursor() {
    using Doing = hookup::Gestures::Doing;
    QWidget* port = view->viewport();
    if (panning()) return port->setCursor(Qt::ClosedHandCursor);
    if (spaceHeld) return port->setCursor(Qt::OpenHandCursor);
    switch (hand.doing()) {
    case Doing::moving:
        return port->setCursor(Qt::SizeAllCursor);
    case Doing::wiring:
    case Doing::pulling:
        return port->setCursor(hand.target().refusal.isEmpty() ? Qt::CrossCursor : Qt::ForbiddenCursor);
    case Doing::placing:
        return port->setCursor(Qt::CrossCursor);
    case Doing::nothing:
    case Doing::pressing:
    case Doing::banding:
        break;
    }
    const auto at = pointer ? std::optional(camera.toDrawing(*pointer)) : std::nullopt;
    if (at && scene.pinAt(*at))
        port->setCursor(Qt::CrossCursor);
    else if (hovered)
        port->setCursor(Qt::PointingHandCursor);
    else if (at && scene.wireEndAt(*at))
        port->setCursor(Qt::OpenHandCursor);
    else
        port->unsetCursor();
}

bool HookupView::viewportEvent(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const QString text = d->toolTipAt(d->camera.toDrawing(help->pos()));
        if (text.isEmpty())
            QToolTip::hideText();
        else
            QToolTip::showText(help->globalPos(), text, viewport());
        return true;
    }
    if (event->type() == QEvent::Leave) {
        d->pointer.reset();
        d->hover(std::nullopt);
        d->updateCursor();
    }
    return QAbstractScrollArea::viewportEvent(event);
}

} // namespace blinkwright::widgets
