#include "app/projector_view.h"

#include "widgets/hookup/hookup_view.h"

#include <QAction>
#include <QApplication>
#include <QEvent>
#include <QMainWindow>
#include <QSplitter>

#include <utility>

namespace blinkwright::app {

namespace {

constexpr int hookupShare = 50, curvesShare = 50; ///< of the width [%]
constexpr int comesBackWithin_ms = 500; ///< the window manager takes its time: common practice, no source

void settleLayouts() {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
}

} // namespace

ProjectorView::ProjectorView(const Parts& parts)
    : QObject(&parts.window), m_parts(parts), m_action(new QAction(tr("Pro&jector view"), this)) {
    m_action->setShortcut(QKeySequence(tr("F11")));
    m_action->setCheckable(true);
    m_action->setToolTip(tr("Hook-up and Curves alone, with large texts and wide lines, for a class"));
    m_action->setWhatsThis(tr(
        "Shows Hook-up and Curves alone on the whole screen, with large texts and wide lines, for a class. "
        "Leaving it brings back all that was."));
    m_comingBack.setSingleShot(true);
    m_comingBack.setInterval(comesBackWithin_ms);
    m_parts.window.installEventFilter(this);
    connect(m_action, &QAction::triggered, this, &ProjectorView::set);
}

void ProjectorView::set(bool on) {
    m_parts.settings.setProjected(on);
    if (std::exchange(m_on, on) == on) return;
    m_action->setChecked(on);
    if (on)
        enter();
    else
        leave();
}

void ProjectorView::restore() {
    set(m_parts.settings.projected());
}

void ProjectorView::enter() {
    m_comingBack.stop();
    m_geometry = m_parts.window.saveGeometry();
    m_size = m_parts.window.size();
    m_state = m_parts.window.windowState();
    for (const QSplitter* splitter : m_parts.splitters) m_states[splitter] = splitter->saveState();
    m_parts.hookup.fitForNow(); // while it has its size of before
    const QWidget* focus = m_parts.window.focusWidget();
    m_hidden.clear();
    for (QWidget* part : m_parts.away) {
        if (part->isHidden()) continue;
        if (focus && part->isAncestorOf(focus)) m_parts.hookup.setFocus(Qt::OtherFocusReason);
        part->hide();
        m_hidden.push_back(part);
    }
    m_parts.appearance.setProjected(true);
    m_parts.window.setWindowState(m_state | Qt::WindowFullScreen);
    const int width = m_parts.sides->width();
    m_parts.sides->setSizes({hookupShare * width / 100, curvesShare * width / 100});
    emit said(tr("Projector view: %1 or Esc leaves it.")
                  .arg(m_action->shortcut().toString(QKeySequence::NativeText)));
}

void ProjectorView::leave() {
    QMainWindow& window = m_parts.window;
    // Unless a hand has taken it off the whole screen meanwhile, and given it a size.
    const bool wasFull = window.isFullScreen();
    for (QWidget* part : m_hidden) part->show(); // first: what is hidden keeps the sizes of the large texts
    m_parts.appearance.setProjected(false);
    settleLayouts();
    if (wasFull) window.setWindowState(m_state);
    m_toSize = wasFull && !(m_state & (Qt::WindowMaximized | Qt::WindowFullScreen));
    m_parts.hookup.lookAgain();
    m_comingBack.start();
    comeBack();
    // What measures texts only once all their fonts have come gives its room back late.
    QTimer::singleShot(0, this, &ProjectorView::comeBack);
}

/// Again with each size that the window manager gives.
void ProjectorView::comeBack() {
    if (!m_comingBack.isActive()) return;
    settleLayouts();
    if (m_toSize && m_parts.window.size() != m_size) m_parts.window.resize(m_size);
    for (QSplitter* splitter : m_parts.splitters) splitter->restoreState(m_states[splitter]);
}

bool ProjectorView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && m_comingBack.isActive())
        QTimer::singleShot(0, this, &ProjectorView::comeBack);
    return QObject::eventFilter(watched, event);
}

QByteArray ProjectorView::geometry() const {
    return m_on ? m_geometry : m_parts.window.saveGeometry();
}

QByteArray ProjectorView::stateOf(const QSplitter* splitter) const {
    const auto kept = m_states.find(splitter);
    return m_on && kept != m_states.end() ? kept->second : splitter->saveState();
}

} // namespace blinkwright::app
