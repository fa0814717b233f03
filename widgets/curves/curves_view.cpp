#include "widgets/curves/curves_view.h"

#include "widgets/curves/curves_accessible.h"
#include "widgets/curves/strip_plot.h"

#include <QPointer>
#include <QThreadPool>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {
constexpr int grabDistance_px = 6;
constexpr double leastSpan_s = 1e-8;
constexpr double zoomStep = 1.25;
constexpr int echoWait_ms = 40; ///< in this time the first change of a drag has come, if there is one
/// From this many values on, the cutting down is left to another thread: about 1.5 ms of work.
constexpr std::size_t valuesAtOnce = 300'000;

Span wholeSpan(const engine::Curves& c) {
    return {c.time_s.front(), c.time_s.back()};
}
bool drawable(const CurvesView::Shared& c) {
    return c && c->time_s.size() > 1 && c->time_s.back() > c->time_s.front();
}
/// The span of the curves that can be drawn, all together.
std::optional<Span> spanOf(std::initializer_list<CurvesView::Shared> all) {
    std::optional<Span> span;
    for (const CurvesView::Shared& c : all) {
        if (!drawable(c)) continue;
        const Span own = wholeSpan(*c);
        span = span ? Span{std::min(span->begin, own.begin), std::max(span->end, own.end)} : own;
    }
    return span;
}
} // namespace

class CurvesView::Private : public QObject {
  public:
    explicit Private(CurvesView* view) : q(view), plot(new StripPlot(view)) {
        auto* layout = new QVBoxLayout(view);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(plot);
        view->setFocusProxy(plot);
        plot->setContextMenuPolicy(Qt::NoContextMenu); // the right button pans
        plot->installEventFilter(this);
        connect(plot, &StripPlot::painted, q, &CurvesView::painted);
        connect(plot, &StripPlot::aboutToPaint, this, [this] {
            if (dirty) refresh(false);
        });
        makeChartsAccessible();
        name();
    }

    void name() {
        const QString title = CurvesView::tr("Curves");
        q->setAccessibleName(title);
        plot->setAccessibleName(title);
        plot->setWhatsThis(CurvesView::tr(
            "Output, timing capacitor and lamp currents over time. Click or use the arrow keys to set the "
            "moment line, Ctrl "
            "with them goes to the next switching; + and - or the wheel zoom, F fits the whole run."));
        describe();
    }

    // --- what is shown
    Span fitted() const {
        // The echo holds the time axis still while a value is dragged, so that what moves is the curve; only
        // a rate that has doubled or halved since then takes the axis along.
        const std::optional<Span> now = spanOf({curves, second});
        if (!now) return drawable(echo) ? wholeSpan(*echo) : Span{0, 1};
        const Span own = *now;
        if (!drawable(echo)) return own;
        const Span old = *spanOf({echo, echoOfSecond ? curves : second});
        const double ratio = own.length() / old.length();
        return ratio >= 0.5 && ratio <= 2 ? old : own;
    }
    /// Everything that there is to see: how far zooming out and panning go.
    Span reach() const {
        const Span all = spanOf({curves, second}).value_or(Span{0, 1});
        const Span fit = fitted();
        return {std::min(all.begin, fit.begin), std::max(all.end, fit.end)};
    }
    void dataChanged(int wait_ms = 0) {
        const std::optional<Span> all = spanOf({curves, second});
        if (!chosen || !all || shown.end <= all->begin || shown.begin >= all->end) {
            chosen = false;
            shown = fitted();
        }
        soon(wait_ms);
    }
    void showFitted() {
        chosen = false;
        shown = fitted();
        soon();
    }
    void show(Span span) {
        const Span all = reach();
        const double length = std::clamp(span.length(), leastSpan_s, std::max(all.length(), leastSpan_s));
        const double middle = (span.begin + span.end) / 2;
        const double begin =
            std::clamp(middle - length / 2, all.begin, std::max(all.begin, all.end - length));
        shown = {begin, begin + length};
        chosen = true;
        soon();
    }
    void zoom(double factor, double about_s) {
        show({about_s + (shown.begin - about_s) * factor, about_s + (shown.end - about_s) * factor});
    }

    // --- painting: at most once an event loop turn
    void soon(int wait_ms = 0) {
        dirty = true;
        if (wait_ms > 0) {
            QTimer::singleShot(wait_ms, this, [this] {
                if (dirty) refresh(true);
            });
            return;
        }
        if (queued) return;
        queued = true;
        QTimer::singleShot(0, this, [this] {
            queued = false;
            if (dirty) refresh(true);
        });
    }
    /// @param atOnce paints too; otherwise it is about to be painted anyway.
    void refresh(bool atOnce) {
        dirty = false;
        const int columns = static_cast<int>(std::max(64, plot->width()) * plot->devicePixelRatioF());
        const auto values = [](const Shared& c) { return c ? c->time_s.size() * (4 + c->lamps.size()) : 0; };
        std::size_t recorded = 0;
        for (const RecordCurve& record : records) recorded += 2 * record.record().time_s.size();
        ++serial;
        const StripSources sources{curves.get(), echo.get(), second.get(), echoOfSecond, &records};
        if (values(curves) + values(echo) + values(second) + recorded <= valuesAtOnce) {
            const Cut cut{echo, shown, columns, plot->stripHeights(), records};
            // While a value is dragged, its echo and what was measured stay as they are.
            const bool keeps = drawable(echo) || !records.empty();
            const StripPicture* before = keeps && cut == lastCut ? &lastPicture : nullptr;
            lastPicture = stripPicture(sources, shown, columns, cut.heights, before);
            lastCut = cut;
            put(lastPicture, shown, atOnce);
            return;
        }
        QThreadPool::globalInstance()->start([self = QPointer<Private>(this), app = qApp, columns,
                                              span = shown, kept = std::array{curves, echo, second}, sources,
                                              laidOver = records, mine = serial,
                                              heights = plot->stripHeights()] {
            StripSources all = sources;
            all.records = &laidOver;
            auto picture = std::make_shared<StripPicture>(stripPicture(all, span, columns, heights));
            QMetaObject::invokeMethod(app, [self, picture, span, mine] {
                if (self && self->serial == mine) self->put(*picture, span, true);
            });
        });
    }
    void put(const StripPicture& picture, Span span, bool atOnce) {
        plot->setVisibleSpan(span);
        plot->setPicture(picture, drawable(curves) || drawable(second));
        plot->setMoment(momentNow(), false);
        plot->redraw(atOnce);
        describe();
    }

    // --- the moment line
    double clamped(double time_s) const {
        return drawable(curves) ? std::clamp(time_s, curves->time_s.front(), curves->time_s.back()) : time_s;
    }
    void touchMoment() {
        plot->setMoment(momentNow(), true);
        describe();
    }
    std::optional<engine::Moment> momentNow() const {
        if (!drawable(curves)) return std::nullopt;
        return engine::momentOf(*curves, clamped(wanted));
    }
    void moveByHand(double time_s, bool follow) {
        if (!drawable(curves)) return;
        wanted = clamped(time_s);
        if (follow && wanted < shown.begin) show({wanted, wanted + shown.length()});
        if (follow && wanted > shown.end) show({wanted - shown.length(), wanted});
        touchMoment();
        emit q->momentMoved(wanted);
    }
    void toSwitching(int direction) {
        if (!drawable(curves)) return;
        const std::vector<double>& s = curves->switchings_s;
        const double now = clamped(wanted);
        if (direction > 0) {
            const auto next = std::upper_bound(s.begin(), s.end(), now);
            moveByHand(next == s.end() ? curves->time_s.back() : *next, true);
        } else {
            const auto next = std::lower_bound(s.begin(), s.end(), now);
            moveByHand(next == s.begin() ? curves->time_s.front() : *std::prev(next), true);
        }
    }
    void describe() {
        QString text;
        if (const auto& m = plot->moment(); m && drawable(curves)) {
            const auto peak = [](const std::vector<double>& v) { return *std::ranges::max_element(v); };
            text =
                CurvesView::tr("From %1 to %2 with %n switching(s): output up to %3, timing capacitor up to "
                               "%4. ",
                               nullptr, static_cast<int>(curves->switchings_s.size()))
                    .arg(plot->timeText(curves->time_s.front()), plot->timeText(curves->time_s.back()),
                         plot->valueText(Strip::output, peak(curves->output_V)),
                         plot->valueText(Strip::capacitor, peak(curves->capacitor_V)));
            text += CurvesView::tr("At %1: output %2, timing capacitor %3")
                        .arg(plot->timeText(m->time_s), plot->valueText(Strip::output, m->output_V),
                             plot->valueText(Strip::capacitor, m->capacitor_V));
            for (std::size_t k = 0; k < std::min(m->lamps_A.size(), curves->lamps.size()); ++k)
                text += QStringLiteral(", %1 %2").arg(QString::fromStdString(curves->lamps[k].ref),
                                                      plot->valueText(Strip::lamps, m->lamps_A[k]));
            text += QStringLiteral(". ");
            if (drawable(second))
                text += CurvesView::tr("%1 is laid over, from %2 to %3: output up to %4. ")
                            .arg(plot->secondName(), plot->timeText(second->time_s.front()),
                                 plot->timeText(second->time_s.back()),
                                 plot->valueText(Strip::output, peak(second->output_V)));
            if (!records.empty())
                text += CurvesView::tr("%n measured record(s) laid over. ", nullptr,
                                       static_cast<int>(records.size()));
            text +=
                CurvesView::tr("Arrow keys move the moment line, brackets go from switching to switching, "
                               "plus and minus zoom, F fits.");
        } else {
            text = plot->message();
        }
        plot->setAccessibleDescription(text);
        q->setAccessibleDescription(text);
    }

    // --- hands
    bool eventFilter(QObject*, QEvent* event) override {
        switch (event->type()) {
        case QEvent::Resize:
            soon();
            return false;
        case QEvent::LanguageChange:
            name();
            return false;
        case QEvent::MouseButtonPress:
            return press(static_cast<QMouseEvent*>(event));
        case QEvent::MouseMove:
            return move(static_cast<QMouseEvent*>(event));
        case QEvent::MouseButtonRelease:
            hand = Hand::none;
            aim(static_cast<QMouseEvent*>(event)->pos());
            return true;
        case QEvent::MouseButtonDblClick:
            if (static_cast<QMouseEvent*>(event)->button() == Qt::LeftButton) showFitted();
            return true;
        case QEvent::Wheel:
            return wheel(static_cast<QWheelEvent*>(event));
        case QEvent::KeyPress:
            return key(static_cast<QKeyEvent*>(event));
        default:
            return false;
        }
    }
    bool press(QMouseEvent* event) {
        if (!drawable(curves)) return false;
        plot->setFocus(Qt::MouseFocusReason);
        const bool left = event->button() == Qt::LeftButton;
        if (left && !(event->modifiers() & Qt::ShiftModifier)) {
            hand = Hand::moment;
            moveByHand(plot->timeAt(event->position().x()), false);
        } else if (left || event->button() == Qt::RightButton || event->button() == Qt::MiddleButton) {
            hand = Hand::pan;
            panFrom = shown;
            panX = event->position().x();
            plot->setCursor(Qt::ClosedHandCursor);
        }
        return true;
    }
    bool move(QMouseEvent* event) {
        const double x = event->position().x();
        if (hand == Hand::moment) {
            moveByHand(std::clamp(plot->timeAt(x), shown.begin, shown.end), false);
        } else if (hand == Hand::pan) {
            const double shift =
                (x - panX) * panFrom.length() / std::max(1, plot->stripRect(Strip::output).width());
            show({panFrom.begin - shift, panFrom.end - shift});
        } else {
            aim(event->pos());
        }
        return true;
    }
    void aim(QPoint at) {
        const bool near =
            drawable(curves) && std::abs(plot->pixelAt(clamped(wanted)) - at.x()) <= grabDistance_px;
        plot->setCursor(near ? Qt::SplitHCursor : Qt::ArrowCursor);
    }
    bool wheel(QWheelEvent* event) {
        if (!drawable(curves)) return false;
        const QPoint turn = event->angleDelta();
        if (std::abs(turn.x()) > std::abs(turn.y())) {
            const double shift = -turn.x() / 1200.0 * shown.length();
            show({shown.begin + shift, shown.end + shift});
        } else {
            zoom(std::pow(zoomStep, -turn.y() / 120.0),
                 std::clamp(plot->timeAt(event->position().x()), shown.begin, shown.end));
        }
        return true;
    }
    bool key(QKeyEvent* event) {
        if (!drawable(curves)) return false;
        const bool control = event->modifiers() & Qt::ControlModifier;
        const double pixel_s = shown.length() / std::max(1, plot->stripRect(Strip::output).width());
        const double about = std::clamp(clamped(wanted), shown.begin, shown.end);
        switch (event->key()) {
        case Qt::Key_Left:
            control ? toSwitching(-1) : moveByHand(clamped(wanted) - pixel_s, true);
            break;
        case Qt::Key_Right:
            control ? toSwitching(1) : moveByHand(clamped(wanted) + pixel_s, true);
            break;
        case Qt::Key_BracketLeft:
            toSwitching(-1);
            break;
        case Qt::Key_BracketRight:
            toSwitching(1);
            break;
        case Qt::Key_PageUp:
            moveByHand(clamped(wanted) - shown.length() / 10, true);
            break;
        case Qt::Key_PageDown:
            moveByHand(clamped(wanted) + shown.length() / 10, true);
            break;
        case Qt::Key_Home:
            moveByHand(curves->time_s.front(), true);
            break;
        case Qt::Key_End:
            moveByHand(curves->time_s.back(), true);
            break;
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            zoom(1 / zoomStep, about);
            break;
        case Qt::Key_Minus:
            zoom(zoomStep, about);
            break;
        case Qt::Key_F:
            if (control) return false;
            showFitted();
            break;
        case Qt::Key_0:
            if (!control) return false;
            showFitted();
            break;
        default:
            return false;
        }
        return true;
    }

    CurvesView* q;
    StripPlot* plot;
    Shared curves, echo, second;
    RecordCurves records;
    bool echoOfSecond = false;
    Span shown{0, 1};
    bool chosen = false;
    bool dirty = true, queued = false;
    quint64 serial = 0;
    struct Cut { ///< what the points of an echo depend on, besides the ranges of the strips
        Shared echo;
        Span span;
        int columns = 0;
        std::array<int, stripCount> heights{};
        RecordCurves records;
        bool operator==(const Cut&) const = default;
    };
    Cut lastCut;
    StripPicture lastPicture;
    double wanted = 0;
    enum class Hand { none, moment, pan } hand = Hand::none;
    Span panFrom;
    double panX = 0;
};

CurvesView::CurvesView(QWidget* parent) : QWidget(parent), d(std::make_unique<Private>(this)) {
}
CurvesView::~CurvesView() = default;

void CurvesView::setTheme(const Theme& theme) {
    d->plot->setTheme(theme);
    d->soon();
}

void CurvesView::setCurves(Shared curves) {
    d->curves = std::move(curves);
    d->dataChanged();
}

void CurvesView::setSecond(Shared curves, const QString& name, const QString& brief) {
    d->plot->setSecondName(name, brief);
    if (d->second == curves) return d->soon();
    d->second = std::move(curves);
    d->dataChanged();
}

void CurvesView::setEcho(Shared curves, bool ofSecond) {
    if (d->echo == curves && d->echoOfSecond == ofSecond) return;
    d->echo = std::move(curves);
    d->echoOfSecond = ofSecond;
    // As a drag begins it lies under the very curves that are shown: the first new ones will show it.
    d->dataChanged(d->echo && d->echo == (ofSecond ? d->second : d->curves) ? echoWait_ms : 0);
}

void CurvesView::setBand(std::shared_ptr<const study::Band> band) {
    if (!band && !d->plot->hasBand()) return;
    d->plot->setBand(std::move(band));
    d->soon();
}

bool CurvesView::hasBand() const {
    return d->plot->hasBand();
}

void CurvesView::setRecords(RecordCurves records) {
    if (d->records == records) return;
    d->records = std::move(records);
    d->describe();
    d->soon();
}

void CurvesView::setMessage(const QString& text) {
    if (d->plot->message() == text) return;
    d->plot->setMessage(text);
    d->describe();
    d->soon();
}

double CurvesView::moment_s() const {
    return d->clamped(d->wanted);
}

Span CurvesView::visibleSpan() const {
    return d->shown;
}

void CurvesView::setMoment(double time_s) {
    d->wanted = time_s;
    d->touchMoment();
}

void CurvesView::playMoment(double time_s) {
    if (!drawable(d->curves)) return;
    d->wanted = d->clamped(time_s);
    if (d->wanted < d->shown.begin || d->wanted > d->shown.end)
        d->show({d->wanted, d->wanted + d->shown.length()});
    d->plot->setMoment(d->momentNow(), true);
}

void CurvesView::fit() {
    d->showFitted();
}

void CurvesView::zoomBy(double factor) {
    if (drawable(d->curves))
        d->zoom(1 / factor, std::clamp(d->clamped(d->wanted), d->shown.begin, d->shown.end));
}

} // namespace blinkwright::widgets
