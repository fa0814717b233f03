#include "app/projector_view.h"

#include <QAction>
#include <QApplication>
#include <QMainWindow>
#include <QSplitter>

#include <utility>

namespace blinkwright::app {

namespace {

constexpr int hookupShare = 45, curvesShare = 55; ///< of the width [%]

} // namespace

ProjectorView::ProjectorView(const Parts& parts)
    : QObject(&parts.window), m_parts(parts), m_action(new QAction(tr("Pro&jector view"), this)) {
    m_action->setShortcut(QKeySequence(tr("F11")));
    m_action->setCheckable(true);
    m_action->setToolTip(tr("Hook-up and Curves alone, with large texts and wide lines, for a class"));
    m_action->setWhatsThis(
        tr("Shows Hook-up and Curves alone, with large texts and wide lines, for a class. Leaving it "
           "brings back all that was."));
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
    m_geometry = m_parts.window.saveGeometry();
    m_size = m_parts.window.size();
    for (const QSplitter* splitter : m_parts.splitters) m_states[splitter] = splitter->saveState();
    const QWidget* focus = m_parts.window.focusWidget();
    m_hidden.clear();
    for (QWidget* part : m_parts.away) {
        if (part->isHidden()) continue;
        if (focus && part->isAncestorOf(focus)) m_parts.hookup.setFocus(Qt::OtherFocusReason);
        part->hide();
        m_hidden.push_back(part);
    }
    m_parts.appearance.setProjected(true);
    m_parts.sides->setSizes({hookupShare * m_size.width() / 100, curvesShare * m_size.width() / 100});
    QCoreApplication::sendPostedEvents(nullptr,
                                       QEvent::LayoutRequest); // larger texts may want a larger window
    m_grown = m_parts.window.size();
    emit said(tr("Projector view: %1 or Esc leaves it.")
                  .arg(m_action->shortcut().toString(QKeySequence::NativeText)));
}

void ProjectorView::leave() {
    m_parts.appearance.setProjected(false);
    for (QWidget* part : m_hidden) part->show();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    // Unless a hand has made it another size meanwhile.
    if (m_parts.window.size() == m_grown) m_parts.window.resize(m_size);
    for (QSplitter* splitter : m_parts.splitters) splitter->restoreState(m_states[splitter]);
}

QByteArray ProjectorView::geometry() const {
    return m_on && m_parts.window.size() == m_grown ? m_geometry : m_parts.window.saveGeometry();
}

QByteArray ProjectorView::stateOf(const QSplitter* splitter) const {
    const auto kept = m_states.find(splitter);
    return m_on && kept != m_states.end() ? kept->second : splitter->saveState();
}

} // namespace blinkwright::app
