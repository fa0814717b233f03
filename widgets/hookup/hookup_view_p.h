// The inside of HookupView, shared by the sources that make it up: hookup_view.cpp (what it shows),
// hookup_pointer.cpp (mouse and menus), hookup_keys.cpp (keyboard and focus).
#pragma once

#include "widgets/hookup/camera.h"
#include "widgets/hookup/drawing_scene.h"
#include "widgets/hookup/gestures.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/hookup/traverse.h"

#include <QElapsedTimer>
#include <QPixmap>
#include <QScrollBar>

#include <cmath>

namespace blinkwright::widgets {

using circuit::PartId;
using hookup::Drawing;
using hookup::PartView;

class HookupView::Private {
  public:
    explicit Private(HookupView* owner);

    HookupView* view;
    Drawing drawing;
    hookup::Camera camera;
    const Theme* theme = &Theme::of(Theme::Mode::light);
    Theme ownTheme = Theme::of(Theme::Mode::light);
    std::map<PartId, double> glow;
    hookup::DrawingScene scene{drawing};
    hookup::Selection chosen;
    hookup::Gestures hand;
    hookup::Selection shownChosen; ///< as last told
    std::optional<PartId> hovered;
    int nudgeGesture = 0; ///< of a run of steps by the keyboard
    QElapsedTimer nudged;
    int lastGesture = 0;
    static constexpr double zoomStep = 1.2;
    static constexpr double clickSlack_px = 4, edgeRoom_px = 8;
    static constexpr double pinReach = 7, wireReach = 4; ///< [units]
    QString lastRefusal;
    hookup::Gestures::Doing lastDoing = hookup::Gestures::Doing::nothing;
    std::optional<QPointF> pointer; ///< over the viewport
    bool keepFitted = true;         ///< until the user zooms or pans
    struct Sight {
        hookup::Camera camera;
        bool fitted;
        QSize view;
    };
    std::optional<Sight> kept;    ///< while all is fitted for now
    std::optional<Sight> wayBack; ///< until the view has its former size, or somebody zooms or pans
    bool lampsAsBars = false;
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
        scene.setReach(reachHere(pinReach), reachHere(wireReach));
        hand.setSlack(clickSlack_px / camera.zoom());
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

    void fitCamera() {
        camera.fit(kept ? hookup::Camera::mostFilledZoom : hookup::Camera::mostFitZoom);
        // Nothing is there to fit: parts come at their own size.
        if (drawing.parts().empty()) camera.zoomAbout({}, 1 / camera.zoom());
        camera.lookAt(drawing.bounds(), drawing.parts().empty());
    }

    /// From now on a hand says what is in view.
    void letGoOfFit() {
        keepFitted = false;
        wayBack.reset();
    }
    void lookAs(const Sight& sight) {
        camera = sight.camera;
        camera.resize(view->viewport()->size(), view->devicePixelRatioF());
        camera.lookAt(drawing.bounds(), true);
    }
    /// Texts of labels follow those of the window, as far as a drawing has room for them.
    void takeTextSize();

    void zoomAbout(QPointF at, double factor) {
        letGoOfFit();
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

    /// After the selection may have changed.
    void selectionTouched() {
        if (chosen == shownChosen) return;
        shownChosen = chosen;
        nudgeGesture = 0;
        view->viewport()->update();
        describe();
        emit view->selectionChanged();
    }
    void choose(std::optional<PartId> id) {
        if (id && drawing.find(*id))
            chosen.choose(*id);
        else
            chosen.clear();
        selectionTouched();
    }
    void chooseByUser(std::optional<PartId> id) {
        view->select(id);
        if (id) emit view->partActivated(*id);
    }
    void extendByUser(std::optional<PartId> id) {
        chosen.add({*id});
        selectionTouched();
        bring(*id);
    }
    void bring(PartId id);
    void wish(const hookup::Wish& wish, int gesture) {
        letGoOfFit(); // what the hand works on must not move away under it
        emit view->wished(wish, gesture);
    }
    void followPointer(QPointF at);
    void handMoved(); ///< after each step of a gesture
    void arrow(hookup::Way way, Qt::KeyboardModifiers keys);
    void nudge(int dx, int dy);
    /// The same on the screen at every zoom, but never so far that a part cannot be taken between its pins.
    double reachHere(double units) const {
        constexpr double most = 1.4;
        return units * std::clamp(1 / camera.zoom(), 1.0, most);
    }

    void hover(std::optional<PartId> id) {
        if (id == hovered) return;
        updatePart(hovered);
        hovered = id;
        updatePart(hovered);
    }

    void describe() {
        QString text = HookupView::tr("Drawing of the circuit, %n part(s).", nullptr,
                                      static_cast<int>(drawing.parts().size()));
        QStringList names;
        for (const PartId id : chosen.parts())
            if (const PartView* part = drawing.find(id)) names << partText(*part);
        if (const auto net = chosen.net()) names << HookupView::tr("net %1").arg(scene.netText(*net));
        if (!names.isEmpty())
            text += QLatin1Char(' ') + HookupView::tr("Selected: %1.").arg(names.join(QStringLiteral("; ")));
        view->setAccessibleDescription(text);
    }

    QString toolTipAt(QPointF at) const {
        if (const auto pin = drawing.pinAt(at, reachHere(pinReach))) {
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
    void updateCursor();
};

} // namespace blinkwright::widgets
