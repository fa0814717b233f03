#include "app/help/tour.h"

#include "app/help/help_pages.h"
#include "app/help/tour_card.h"
#include "app/pane.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMenuBar>
#include <QPushButton>
#include <QToolBar>
#include <array>

namespace blinkwright::app::help {

namespace {

constexpr int gap = 10;

QRect within(const QMainWindow& window, const QWidget& part) {
    return {part.mapTo(&window, QPoint()), part.size()};
}

std::function<QRect()> panel(QMainWindow& window, const QString& page) {
    return [&window, page] {
        for (const Pane* pane : window.findChildren<Pane*>())
            if (pageOf(pane) == page && pane->isVisible()) return within(window, *pane);
        return QRect();
    };
}

bool isKey(const QEvent& event, int key) {
    return (event.type() == QEvent::KeyPress || event.type() == QEvent::ShortcutOverride) &&
           static_cast<const QKeyEvent&>(event).key() == key;
}

} // namespace

std::vector<TourStep> tourSteps(QMainWindow& window) {
    const auto firstMenu = [&window] {
        const QMenuBar& bar = *window.menuBar();
        return bar.actionGeometry(bar.actions().constFirst()).translated(bar.mapTo(&window, QPoint()));
    };
    const auto toolBar = [&window] {
        const auto* bar = window.findChild<QToolBar*>(QStringLiteral("tools"));
        return bar ? within(window, *bar) : QRect();
    };
    return {
        {Tour::tr("Begin with a ready blinker"),
         Tour::tr(
             "File > New from a ready blinker (Ctrl+Shift+N) builds a working circuit from a few answers: "
             "supply, lamp, flashes a minute. Or open one of the samples."),
         firstMenu},
        {Tour::tr("Drag a value"),
         Tour::tr("Drag the slider of R2, or type a value such as 4k7. Everything else follows at once. "
                  "Ctrl+Z takes a whole drag back."),
         panel(window, QStringLiteral("values"))},
        {Tour::tr("See the curves"),
         Tour::tr("Output, timing capacitor and lamp current over time. The curves from before the drag stay "
                  "behind, pale. Drag the vertical line to read off a moment; F9 plays it."),
         panel(window, QStringLiteral("curves"))},
        {Tour::tr("Compare two sets of values"),
         Tour::tr("Ctrl+B shows Set B beside Set A: own sliders, own curves, and what lies between the two "
                  "here in the readings."),
         panel(window, QStringLiteral("readings"))},
        {Tour::tr("Take it with you"),
         Tour::tr(
             "Ctrl+E exports the curves; Ctrl+Shift+L writes a lab sheet as PDF, HTML or ODT. F1 opens the "
             "help that fits where you are."),
         toolBar},
    };
}

QRect besidePlace(const QRect& place, QSize card, const QRect& room) {
    const auto moved = [&](int left, int top) { // as near as it can be
        const int x = std::clamp(left, room.left(), std::max(room.left(), room.right() - card.width() + 1));
        const int y = std::clamp(top, room.top(), std::max(room.top(), room.bottom() - card.height() + 1));
        return QRect(QPoint(x, y), card);
    };
    const QRect right = moved(place.right() + gap, place.top()),
                below = moved(place.left(), place.bottom() + gap),
                left = moved(place.left() - gap - card.width(), place.top()),
                above = moved(place.left(), place.top() - gap - card.height());
    const bool flat = place.height() < card.height() / 2; // of a bar: its other entries stay in sight
    const std::array order =
        flat ? std::array{below, above, right, left} : std::array{right, left, below, above};
    for (const QRect& tried : order)
        if (!tried.intersects(place)) return tried;
    return moved(place.right() - gap - card.width(), place.bottom() - gap - card.height());
}

Tour::Tour(QMainWindow& window, std::vector<TourStep> steps)
    : QObject(&window), m_window(window), m_steps(std::move(steps)), m_outline(new TourOutline(&window)),
      m_card(new TourCard(&window)) {
    connect(&m_card->next(), &QPushButton::clicked, this, [this] { goTo(m_step + 1); });
    connect(&m_card->back(), &QPushButton::clicked, this, [this] { goTo(m_step - 1); });
    connect(&m_card->leave(), &QPushButton::clicked, this, &Tour::leave);
}

Tour::~Tour() = default;

void Tour::begin() {
    if (!isRunning()) {
        QApplication::instance()->installEventFilter(this);
        m_focus = m_window.focusWidget();
    }
    goTo(0);
}

void Tour::leave() {
    if (!isRunning()) return;
    QApplication::instance()->removeEventFilter(this);
    m_step = -1;
    const bool hadFocus = m_card->isAncestorOf(QApplication::focusWidget());
    m_card->hide();
    m_outline->hide();
    if (hadFocus && m_focus) m_focus->setFocus();
}

void Tour::goTo(int step) {
    if (step < 0) return;
    if (step >= count()) return leave();
    m_step = step;
    const TourStep& now = m_steps[static_cast<std::size_t>(step)];
    m_card->showStep(now.title, now.text, step, count());
    put();
    m_card->next().setFocus(Qt::OtherFocusReason);
}

QRect Tour::outlined() const {
    return isRunning() ? m_outline->around() : QRect();
}

void Tour::setTheme(const widgets::Theme& theme) {
    m_card->setTheme(theme);
    m_outline->setTheme(theme);
}

void Tour::put() {
    constexpr int edge = 6;
    const QRect room = m_window.rect().adjusted(edge, edge, -edge, -edge);
    const QRect place = m_steps[static_cast<std::size_t>(m_step)].place();
    m_outline->setAround(place);
    // What is hidden just now cannot be pointed at; it is still spoken of.
    const QRect beside = place.isEmpty() ? QRect(room.center(), QSize()) : place;
    m_card->move(besidePlace(beside, m_card->size(), room).topLeft());
    m_card->raise();
}

bool Tour::eventFilter(QObject* watched, QEvent* event) {
    const auto* widget = qobject_cast<QWidget*>(watched);
    if (!widget || widget->window() != &m_window) return false;
    if (isKey(*event, Qt::Key_Escape) && !QApplication::activePopupWidget()) {
        if (event->type() == QEvent::ShortcutOverride)
            event->accept(); // the key itself comes next
        else
            leave();
        return true;
    }
    const bool moves = event->type() == QEvent::Resize || event->type() == QEvent::Move;
    if (moves && (widget == &m_window || qobject_cast<const Pane*>(widget)))
        QMetaObject::invokeMethod(
            this,
            [this] {
                if (isRunning()) put();
            },
            Qt::QueuedConnection);
    return false;
}

} // namespace blinkwright::app::help
