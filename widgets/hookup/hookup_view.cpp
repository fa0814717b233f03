#include "widgets/hookup/hookup_view.h"

#include "widgets/hookup/add_parts.h"
#include "widgets/hookup/hookup_accessible.h"
#include "widgets/hookup/hookup_view_p.h"
#include "widgets/hookup/lamp_bar.h"
#include "widgets/hookup/preview.h"
#include "widgets/hookup/symbols.h"
#include "widgets/text/text_sized.h"

#include <QPaintEvent>
#include <QPainter>

namespace blinkwright::widgets {

HookupView::Private::Private(HookupView* owner)
    : view(owner), hand(scene, chosen,
                        {.wish = [this](const hookup::Wish& w, int gesture) { wish(w, gesture); },
                         .say = [this](const QString& why) { emit view->said(why); },
                         .activate = [this](PartId part) { emit view->partActivated(part); }}) {
}

void HookupView::Private::bring(PartId id) {
    const PartView* part = drawing.find(id);
    if (!part) return;
    const hookup::Box box = placed(extentOf(*part), part->pose).grown(hookup::pitch);
    const QPointF before = camera.corner();
    camera.bring(QRectF(QPointF(box.left, box.top), QPointF(box.right, box.bottom)));
    if (camera.corner() != before) changed();
}

void HookupView::Private::takeTextSize() {
    constexpr int most = 2 * hookup::labelSize;
    drawing.setTextSize(std::min(withText(*view, hookup::labelSize), most));
    camera.lookAt(drawing.bounds(), !keepFitted);
    if (keepFitted) fitCamera();
    changed();
}

HookupView::HookupView(QWidget* parent) : QAbstractScrollArea(parent), d(std::make_unique<Private>(this)) {
    hookup::makeAccessible(*this); // before the first name, with which the toolkit asks
    setAccessibleName(tr("Hook-up"));
    setWhatsThis(tr("The circuit as a drawing. Arrow keys choose a part and Ctrl with them moves it; F2 "
                    "opens its values, J joins "
                    "two pins, A adds a part. With the mouse, drag from pin to pin to draw a wire."));
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    setMinimumSize(160, 120);
    d->camera.lookAt(d->drawing.bounds());
    sizedByText(*this, [this] { d->takeTextSize(); });
    d->describe();
}

HookupView::~HookupView() = default;

void HookupView::setCircuit(const circuit::Circuit& circuit) {
    const Drawing::Change change = d->drawing.show(circuit);
    if (change == Drawing::Change::nothing) return;
    const QTransform seenAs = d->camera.transform();
    if (change == Drawing::Change::layout) {
        d->scene.setNets(circuit.nets());
        d->camera.lookAt(d->drawing.bounds(), !d->keepFitted);
        if (d->keepFitted) d->fitCamera();
        d->chosen.keep([this](PartId id) { return d->drawing.find(id) != nullptr; },
                       [this](circuit::NetId id) { return d->scene.hasNet(id); });
        if (d->hovered && !d->drawing.find(*d->hovered)) d->hovered.reset();
        std::erase_if(d->glow, [this](const auto& lamp) { return !d->drawing.find(lamp.first); });
        d->hand.forget();
        d->selectionTouched();
    }
    d->describe();
    if (change == Drawing::Change::layout) d->syncBars();
    if (d->camera.transform() != seenAs || d->drawing.changedAreas().empty())
        d->changed();
    else
        d->areasChanged();
}

void HookupView::setTheme(const Theme& theme) {
    d->ownTheme = theme;
    d->theme = &d->ownTheme;
    d->camera.setInk(hookup::inkWidthOf(theme));
    d->changed();
}

void HookupView::setSymbolStyle(const hookup::SymbolStyle& style) {
    d->drawing.setStyle(style);
}

hookup::SymbolStyle HookupView::symbolStyle() const {
    return d->drawing.style();
}

void HookupView::setGlow(const std::map<PartId, double>& shares) {
    for (const PartView& part : d->drawing.parts()) {
        if (part.kind != circuit::PartKind::lamp) continue;
        const auto now = shares.find(part.id);
        const double share =
            now == shares.end() || !std::isfinite(now->second) ? 0 : std::clamp(now->second, 0.0, 1.0);
        double& held = d->glow[part.id];
        if (std::abs(held - share) < 1e-4) continue;
        held = share;
        viewport()->update(d->camera.toView(lensArea(part)).toAlignedRect().adjusted(-1, -1, 1, 1));
    }
}

double HookupView::glow(PartId lamp) const {
    const auto held = d->glow.find(lamp);
    return held == d->glow.end() ? 0 : held->second;
}

void HookupView::setLampsAsBars(bool on) {
    if (d->lampsAsBars == on) return;
    d->lampsAsBars = on;
    viewport()->update();
}

void HookupView::select(std::optional<PartId> part) {
    d->choose(part);
    if (const auto current = d->chosen.current()) d->bring(*current);
}

std::optional<PartId> HookupView::selected() const {
    return d->chosen.current();
}

const hookup::Selection& HookupView::selection() const {
    return d->chosen;
}

void HookupView::setSelection(const std::vector<PartId>& parts) {
    d->chosen.choose(parts);
    d->chosen.keep([this](PartId id) { return d->drawing.find(id) != nullptr; },
                   [](circuit::NetId) { return false; });
    d->selectionTouched();
    const auto current = d->chosen.current();
    if (current) d->bring(*current);
    if (current && d->chosen.parts().size() == 1) emit partActivated(*current);
}

void HookupView::selectAll() {
    std::vector<PartId> all;
    for (const PartView& part : d->drawing.parts()) all.push_back(part.id);
    d->chosen.choose(all);
    d->selectionTouched();
}

circuit::Places HookupView::shownPlaces() const {
    return d->scene.places();
}

circuit::Places HookupView::chosenPlaces() const {
    return d->scene.places(d->chosen.parts());
}

circuit::Placement HookupView::placeForNew(circuit::PartKind kind) const {
    const QPointF near = d->pointer ? d->camera.toDrawing(*d->pointer) : d->camera.seen().center();
    return freePlace(d->drawing.parts(), kind,
                     {static_cast<int>(std::lround(near.x())), static_cast<int>(std::lround(near.y()))},
                     d->drawing.style().timer);
}

circuit::Placement HookupView::placeAt(circuit::PartKind kind, QPoint inView) const {
    const QPointF at = d->camera.toDrawing(QPointF(inView));
    circuit::Placement place = hookup::usualPose(kind);
    place.x = at.x();
    place.y = at.y();
    const hookup::Pose onGrid = hookup::poseOf(place);
    place.x = onGrid.at.x;
    place.y = onGrid.at.y;
    return place;
}

QPointF HookupView::pinPlace(circuit::PinRef pin) const {
    return d->scene.pinPoint(pin);
}

QPoint HookupView::inView(QPointF place) const {
    return d->camera.transform().map(place).toPoint();
}

QPointF HookupView::inDrawing(QPoint point) const {
    return d->camera.toDrawing(QPointF(point));
}

hookup::Point HookupView::shiftForPasted(const circuit::Circuit& copies) const {
    return freeShift(d->drawing.parts(), copies, d->drawing.style().timer);
}

void HookupView::zoomBy(double factor) {
    d->zoomMiddle(factor);
}

void HookupView::fit() {
    d->keepFitted = true;
    d->fitCamera();
    d->changed();
}

void HookupView::fitForNow() {
    if (!d->kept) d->kept = Private::Sight{d->camera, d->keepFitted, viewport()->size()};
    d->wayBack.reset();
    fit();
}

void HookupView::lookAgain() {
    d->wayBack = std::exchange(d->kept, std::nullopt);
    if (!d->wayBack) return;
    d->keepFitted = d->wayBack->fitted;
    if (d->keepFitted)
        d->fitCamera();
    else
        d->lookAs(*d->wayBack);
    if (d->keepFitted || d->wayBack->view == viewport()->size()) d->wayBack.reset();
    d->changed();
}

void HookupView::startAfresh() {
    d->kept.reset();
    d->wayBack.reset();
    fit();
}

double HookupView::zoom() const {
    return d->camera.zoom();
}

const Drawing& HookupView::drawing() const {
    return d->drawing;
}

QRectF HookupView::toViewport(const QRectF& area) const {
    return d->camera.toView(area);
}

QPointF HookupView::toDrawing(QPointF inViewport) const {
    return d->camera.toDrawing(inViewport);
}

QSize HookupView::sizeHint() const {
    return {560, 440};
}

void HookupView::paintEvent(QPaintEvent* event) {
    if (d->groundStale || d->ground.devicePixelRatio() != devicePixelRatioF()) {
        d->camera.resize(viewport()->size(), devicePixelRatioF()); // moved to a screen of another ratio
        d->renderGround();
    } else if (!d->staleAreas.empty()) {
        d->mendGround();
    }
    QPainter painter(viewport());
    const double ratio = d->ground.devicePixelRatio();
    // By rectangles: two changed labels in opposite corners are no reason to copy all between them.
    for (const QRect& dirty : event->region())
        painter.drawPixmap(QRectF(dirty), d->ground,
                           QRectF(QPointF(dirty.topLeft()) * ratio, QSizeF(dirty.size()) * ratio));
    painter.setClipRegion(event->region());

    painter.setRenderHint(QPainter::Antialiasing);
    painter.save();
    painter.setTransform(d->camera.transform(), true);
    if (const auto net = d->chosen.net()) paintChosenNet(painter, *net, d->scene, *d->theme);
    if (const PartView* under = d->hovered ? d->drawing.find(*d->hovered) : nullptr;
        under && !d->chosen.holds(under->id))
        paintMark(painter, *under, *d->theme, hookup::Mark::hovered);
    for (const PartId id : d->chosen.parts())
        if (const PartView* part = d->drawing.find(id))
            paintMark(painter, *part, *d->theme, hookup::Mark::selected);
    for (const PartView& part : d->drawing.parts())
        if (part.kind == circuit::PartKind::lamp) {
            if (!event->region().intersects(d->pixelsOf(lensArea(part)))) continue;
            const auto share = d->glow.find(part.id);
            const auto paintLamp = d->lampsAsBars ? hookup::paintLampBar : hookup::paintLens;
            paintLamp(painter, part, *d->theme, share == d->glow.end() ? 0 : share->second);
        }
    paintPreview(painter, d->hand, d->drawing, d->scene, *d->theme);
    painter.restore();
    if (d->drawing.parts().empty() && !d->hand.busy())
        hookup::paintInvitation(painter, viewport()->rect(), *d->theme);
}

void HookupView::resizeEvent(QResizeEvent*) {
    const QPointF corner = d->camera.corner();
    d->camera.resize(viewport()->size(), devicePixelRatioF());
    // A scroll bar that comes while something is dragged must not move the drawing under the hand.
    if (d->keepFitted)
        d->fitCamera();
    else if (d->wayBack)
        d->lookAs(*d->wayBack);
    else
        d->camera.panBy(corner - d->camera.corner());
    if (d->wayBack && d->wayBack->view == viewport()->size()) d->wayBack.reset();
    d->changed();
}

void HookupView::scrollContentsBy(int, int) {
    if (d->syncing) return;
    d->letGoOfFit();
    const QPointF wanted(horizontalScrollBar()->value(), verticalScrollBar()->value());
    const QPointF corner = d->camera.corner();
    // A bar without a range says nothing about where the drawing stands.
    d->camera.panBy(
        {horizontalScrollBar()->maximum() > horizontalScrollBar()->minimum() ? wanted.x() - corner.x() : 0,
         verticalScrollBar()->maximum() > verticalScrollBar()->minimum() ? wanted.y() - corner.y() : 0});
    d->groundStale = true;
    viewport()->update();
}

void HookupView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        setAccessibleName(tr("Hook-up"));
        d->describe();
    }
}

} // namespace blinkwright::widgets
