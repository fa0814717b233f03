#include "widgets/hookup/hookup_view.h"

#include "widgets/hookup/camera.h"
#include "widgets/hookup/drawing.h"
#include "widgets/hookup/traverse.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QPixmap>
#include <QScrollBar>
#include <QToolTip>
#include <QWheelEvent>

#include <cmath>

namespace blinkwright::widgets {

using circuit::PartId;
using hookup::Drawing;
using hookup::PartView;

namespace {
constexpr double zoomStep = 1.2;
constexpr double pinReach = 7, wireReach = 4; ///< [units]
} // namespace

class HookupView::Private {
  public:
    explicit Private(HookupView* owner) : view(owner) {}

    HookupView* view;
    Drawing drawing;
    hookup::Camera camera;
    const Theme* theme = &Theme::of(Theme::Mode::light);
    Theme ownTheme = Theme::of(Theme::Mode::light);
    std::map<PartId, double> glow;
    std::optional<PartId> chosen, hovered;
    bool keepFitted = true; ///< until the user zooms or pans
    bool spaceHeld = false;
    bool syncing = false;
    std::optional<QPoint> panFrom;
    QPixmap ground; ///< everything but marks and lenses, as the viewport shows it
    bool groundStale = true;
    std::vector<QRectF> staleAreas; ///< of the ground, where it is not stale as a whole [units]

    void areasChanged() {
        if (groundStale) return;
        for (const QRectF& area : drawing.changedAreas()) {
            staleAreas.push_back(area);
            view->viewport()->update(pixelsOf(area));
        }
    }
    QRect pixelsOf(const QRectF& area) const {
        return camera.toView(area).toAlignedRect().adjusted(-1, -1, 1, 1);
    }

    void changed() {
        groundStale = true;
        syncBars();
        view->viewport()->update();
    }

    void syncBars() {
        syncing = true;
        const QRectF content = camera.toView(camera.content()).translated(camera.corner());
        const QSize size = view->viewport()->size();
        const auto set = [](QScrollBar* bar, double low, double high, int page, double value) {
            const int least = static_cast<int>(std::floor(low)),
                      most = static_cast<int>(std::ceil(high)) - page;
            // A pixel of rounding is no reason for a scroll bar.
            if (most - least <= 1)
                bar->setRange(0, 0);
            else
                bar->setRange(least, most);
            bar->setPageStep(page);
            bar->setSingleStep(20);
            bar->setValue(static_cast<int>(std::lround(value)));
        };
        set(view->horizontalScrollBar(), content.left(), content.right(), size.width(), camera.corner().x());
        set(view->verticalScrollBar(), content.top(), content.bottom(), size.height(), camera.corner().y());
        syncing = false;
    }

    void renderGround() {
        const double ratio = view->devicePixelRatioF();
        staleAreas.clear();
        const QSize pixels = (QSizeF(view->viewport()->size()) * ratio).toSize().expandedTo(QSize(1, 1));
        if (ground.size() != pixels) ground = QPixmap(pixels);
        ground.setDevicePixelRatio(ratio);
        ground.fill(theme->paper);
        QPainter painter(&ground);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
        painter.setTransform(camera.transform(), true);
        drawing.paint(painter, *theme);
        groundStale = false;
    }
    void mendGround() {
        QRegion pixels;
        for (const QRectF& area : staleAreas) pixels += pixelsOf(area);
        std::vector<QRectF> areas; // what has pixels in the mended ones
        for (const QRect& part : pixels) areas.push_back(camera.toDrawing(part));
        staleAreas.clear();
        QPainter painter(&ground);
        painter.setClipRegion(pixels);
        painter.fillRect(pixels.boundingRect(), theme->paper);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
        painter.setTransform(camera.transform(), true);
        drawing.paint(painter, *theme, areas);
    }

    void zoomAbout(QPointF at, double factor) {
        keepFitted = false;
        camera.zoomAbout(at, factor);
        changed();
    }
    void zoomMiddle(double factor) { zoomAbout(QRectF(view->viewport()->rect()).center(), factor); }

    void updatePart(std::optional<PartId> id) {
        const PartView* part = id ? drawing.find(*id) : nullptr;
        if (!part) return;
        const hookup::Box box = placed(extentOf(*part), part->pose).grown(6);
        const QRectF area(QPointF(box.left, box.top), QPointF(box.right, box.bottom));
        view->viewport()->update(
            camera.toView(area | lensArea(*part)).toAlignedRect().adjusted(-2, -2, 2, 2));
    }

    void choose(std::optional<PartId> id) {
        if (id && !drawing.find(*id)) id.reset();
        if (id == chosen) return;
        updatePart(chosen);
        chosen = id;
        updatePart(chosen);
        describe();
    }

    void chooseByUser(std::optional<PartId> id) {
        view->select(id);
        if (id) emit view->partActivated(*id);
    }

    void hover(std::optional<PartId> id) {
        if (id == hovered) return;
        updatePart(hovered);
        hovered = id;
        updatePart(hovered);
    }

    static QString partText(const PartView& part) {
        const QString kind = hookup::kindText(part.kind);
        return part.value.isEmpty() ? HookupView::tr("%1, %2").arg(part.ref, kind)
                                    : HookupView::tr("%1, %2, %3").arg(part.ref, kind, part.value);
    }

    void describe() {
        QString text = HookupView::tr("Drawing of the circuit, %n part(s).", nullptr,
                                      static_cast<int>(drawing.parts().size()));
        if (const PartView* part = chosen ? drawing.find(*chosen) : nullptr)
            text += QLatin1Char(' ') + HookupView::tr("Selected: %1.").arg(partText(*part));
        view->setAccessibleDescription(text);
    }

    QString toolTipAt(QPointF at) const {
        if (const auto pin = drawing.pinAt(at, pinReach)) {
            const PartView* part = drawing.find(pin->part);
            const QString net = drawing.netName(pin->part, pin->pin);
            const QString name =
                HookupView::tr("%1, %2").arg(part->ref, hookup::pinText(part->kind, pin->pin));
            return net.isEmpty() ? HookupView::tr("%1\nin no net").arg(name)
                                 : HookupView::tr("%1\nnet %2").arg(name, net);
        }
        if (const auto part = drawing.partAt(at)) return partText(*drawing.find(*part));
        if (const auto net = drawing.wireAt(at, wireReach)) return HookupView::tr("net %1").arg(*net);
        return {};
    }

    bool panning() const { return panFrom.has_value(); }
    void updateCursor() {
        QWidget* port = view->viewport();
        if (panning())
            port->setCursor(Qt::ClosedHandCursor);
        else if (spaceHeld)
            port->setCursor(Qt::OpenHandCursor);
        else if (hovered)
            port->setCursor(Qt::PointingHandCursor);
        else
            port->unsetCursor();
    }
};

HookupView::HookupView(QWidget* parent) : QAbstractScrollArea(parent), d(std::make_unique<Private>(this)) {
    setAccessibleName(tr("Hook-up"));
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    viewport()->setMouseTracking(true);
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent);
    setMinimumSize(160, 120);
    d->camera.lookAt(d->drawing.bounds());
    d->describe();
}

HookupView::~HookupView() = default;

void HookupView::setCircuit(const circuit::Circuit& circuit) {
    const Drawing::Change change = d->drawing.show(circuit);
    if (change == Drawing::Change::nothing) return;
    const QTransform seenAs = d->camera.transform();
    if (change == Drawing::Change::layout) {
        d->camera.lookAt(d->drawing.bounds());
        if (d->keepFitted) d->camera.fit();
        if (d->chosen && !d->drawing.find(*d->chosen)) d->chosen.reset();
        if (d->hovered && !d->drawing.find(*d->hovered)) d->hovered.reset();
        std::erase_if(d->glow, [this](const auto& lamp) { return !d->drawing.find(lamp.first); });
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

void HookupView::select(std::optional<PartId> part) {
    d->choose(part);
    const PartView* view = d->chosen ? d->drawing.find(*d->chosen) : nullptr;
    if (!view) return;
    const hookup::Box box = placed(extentOf(*view), view->pose).grown(hookup::pitch);
    const QPointF before = d->camera.corner();
    d->camera.bring(QRectF(QPointF(box.left, box.top), QPointF(box.right, box.bottom)));
    if (d->camera.corner() != before) d->changed();
}

std::optional<PartId> HookupView::selected() const {
    return d->chosen;
}

void HookupView::zoomBy(double factor) {
    d->zoomMiddle(factor);
}

void HookupView::fit() {
    d->keepFitted = true;
    d->camera.fit();
    d->changed();
}

double HookupView::zoom() const {
    return d->camera.zoom();
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
    const PartView* chosen = d->chosen ? d->drawing.find(*d->chosen) : nullptr;
    if (const PartView* under = d->hovered ? d->drawing.find(*d->hovered) : nullptr; under && under != chosen)
        paintMark(painter, *under, *d->theme, hookup::Mark::hovered);
    if (chosen) paintMark(painter, *chosen, *d->theme, hookup::Mark::selected);
    for (const PartView& part : d->drawing.parts())
        if (part.kind == circuit::PartKind::lamp) {
            if (!event->region().intersects(d->pixelsOf(lensArea(part)))) continue;
            const auto share = d->glow.find(part.id);
            paintLens(painter, part, *d->theme, share == d->glow.end() ? 0 : share->second);
        }
    painter.restore();
    if (hasFocus()) {
        painter.setPen(QPen(d->theme->accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(viewport()->rect()).adjusted(1, 1, -1, -1));
    }
}

void HookupView::resizeEvent(QResizeEvent*) {
    d->camera.resize(viewport()->size(), devicePixelRatioF());
    if (d->keepFitted) d->camera.fit();
    d->changed();
}

void HookupView::scrollContentsBy(int, int) {
    if (d->syncing) return;
    d->keepFitted = false;
    const QPointF wanted(horizontalScrollBar()->value(), verticalScrollBar()->value());
    const QPointF corner = d->camera.corner();
    // A bar without a range says nothing about where the drawing stands.
    d->camera.panBy(
        {horizontalScrollBar()->maximum() > horizontalScrollBar()->minimum() ? wanted.x() - corner.x() : 0,
         verticalScrollBar()->maximum() > verticalScrollBar()->minimum() ? wanted.y() - corner.y() : 0});
    d->groundStale = true;
    viewport()->update();
}

void HookupView::wheelEvent(QWheelEvent* event) {
    event->accept();
    const bool zooming = event->modifiers() & Qt::ControlModifier;
    const QPoint fine = event->pixelDelta(), coarse = event->angleDelta();
    if (!zooming && !fine.isNull()) { // a touch pad: two fingers move the paper
        d->keepFitted = false;
        d->camera.panBy(-QPointF(fine));
        d->changed();
    } else if (!zooming && (event->modifiers() & Qt::ShiftModifier || coarse.y() == 0)) {
        d->keepFitted = false;
        d->camera.panBy({-(coarse.x() != 0 ? coarse.x() : coarse.y()) / 2.0, 0});
        d->changed();
    } else {
        d->zoomAbout(event->position(), std::pow(zoomStep, coarse.y() / 120.0));
    }
}

void HookupView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && d->spaceHeld)) {
        d->panFrom = event->pos();
        d->updateCursor();
    } else if (event->button() == Qt::LeftButton) {
        d->chooseByUser(d->drawing.partAt(d->camera.toDrawing(event->position())));
    }
}

void HookupView::mouseMoveEvent(QMouseEvent* event) {
    if (d->panFrom) {
        d->keepFitted = false;
        d->camera.panBy(*d->panFrom - event->pos());
        d->panFrom = event->pos();
        d->changed();
        return;
    }
    d->hover(d->drawing.partAt(d->camera.toDrawing(event->position())));
    d->updateCursor();
}

void HookupView::mouseReleaseEvent(QMouseEvent*) {
    d->panFrom.reset();
    d->updateCursor();
}

void HookupView::keyPressEvent(QKeyEvent* event) {
    using hookup::Way;
    const auto step = [&](Way way) {
        if (const auto next = neighbour(d->drawing.parts(), d->chosen, way)) d->chooseByUser(next);
    };
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        d->zoomMiddle(zoomStep);
        return;
    case Qt::Key_Minus:
        d->zoomMiddle(1 / zoomStep);
        return;
    case Qt::Key_0:
        fit();
        return;
    case Qt::Key_Left:
        step(Way::left);
        return;
    case Qt::Key_Right:
        step(Way::right);
        return;
    case Qt::Key_Up:
        step(Way::up);
        return;
    case Qt::Key_Down:
        step(Way::down);
        return;
    case Qt::Key_Home:
        d->chooseByUser(neighbour(d->drawing.parts(), std::nullopt, Way::next));
        return;
    case Qt::Key_End:
        d->chooseByUser(neighbour(d->drawing.parts(), std::nullopt, Way::previous));
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (d->chosen) emit partActivated(*d->chosen);
        return;
    case Qt::Key_Escape:
        if (!d->chosen) break;
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
    const auto part =
        d->chosen ? neighbour(d->drawing.parts(), d->chosen, next ? hookup::Way::next : hookup::Way::previous)
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
    viewport()->update();
}

void HookupView::focusOutEvent(QFocusEvent* event) {
    QAbstractScrollArea::focusOutEvent(event);
    d->spaceHeld = false;
    d->updateCursor();
    viewport()->update();
}

void HookupView::changeEvent(QEvent* event) {
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        setAccessibleName(tr("Hook-up"));
        d->describe();
    }
}

bool HookupView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride) {
        // Keys of the drawing come before shortcuts of the window while the drawing has the focus.
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (static_cast<QKeyEvent*>(event)->modifiers() == Qt::NoModifier &&
            (key == Qt::Key_0 || key == Qt::Key_Space || key == Qt::Key_Home || key == Qt::Key_End ||
             (key >= Qt::Key_Left && key <= Qt::Key_Down))) {
            event->accept();
            return true;
        }
    }
    return QAbstractScrollArea::event(event);
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
        d->hover(std::nullopt);
        d->updateCursor();
    }
    return QAbstractScrollArea::viewportEvent(event);
}

} // namespace blinkwright::widgets
