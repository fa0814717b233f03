#include "app/rooms/room.h"

#include "app/help/help_pages.h"
#include "app/save_question.h"
#include "core/circuit/set_edits.h"
#include "widgets/text/text_sized.h"

#include <QEvent>
#include <QFileInfo>

namespace blinkwright::app {

namespace {

constexpr int pause_ms = 40, progressEvery_ms = 60;

} // namespace

Room::Room(const House& house, const QString& title, const QString& name, QSize firstSize)
    : m_house(house), m_frame(new widgets::RoomFrame(title, name, &house.window)) {
    m_pause.setSingleShot(true);
    m_pause.setInterval(pause_ms);
    m_progress.setInterval(progressEvery_ms);
    if (!m_frame->restoreGeometry(m_house.settings.windowState(name)))
        m_frame->resize(widgets::withText(*m_frame, firstSize));
    m_frame->installEventFilter(this);
    help::setPage(m_frame, name);
    connect(m_frame, &widgets::RoomFrame::helpWished, this, [this, name] {
        if (m_house.showHelp) m_house.showHelp(name);
    });
}

Room::~Room() {
    m_house.settings.setWindowState(m_frame->objectName(), m_frame->saveGeometry());
}

void Room::ready() {
    connect(&m_pause, &QTimer::timeout, this, &Room::follow);
    connect(&m_progress, &QTimer::timeout, this, [this] { m_frame->setProgress(progress()); });
    connect(&m_task, &NewestTask::busyChanged, this, [this](bool busy) {
        m_frame->setBusy(busy);
        if (busy)
            m_progress.start();
        else
            m_progress.stop();
    });
    connect(m_frame, &widgets::RoomFrame::cancelWished, this, &Room::giveUp);
    connect(m_frame, &widgets::RoomFrame::setChosen, this, &Room::askSoon);
    if (asksOfCircuit()) {
        connect(&m_house.document, &Document::opened, this, [this] {
            m_task.cancel();
            clear();
        });
        connect(&m_house.document, &Document::changed, this, &Room::askSoon);
    }
    connect(&m_house.appearance, &Appearance::themeChanged, this, [this](const widgets::Theme& theme) {
        m_frame->setTheme(theme);
        showTheme(theme);
    });
    m_frame->setTheme(m_house.appearance.theme());
    showTheme(m_house.appearance.theme());
}

void Room::open() {
    m_frame->show();
    m_frame->raise();
    m_frame->activateWindow();
    if (m_stale) follow();
}

void Room::askSoon() {
    m_stale = true;
    if (m_frame->isVisible()) m_pause.start();
}

void Room::follow() {
    m_pause.stop();
    m_stale = false;
    if (!asksOfCircuit()) return ask();
    m_frame->setSetsDiffer(!circuit::setsAgree(circuit()));
    if (!circuit().parts().empty()) return ask();
    m_task.cancel();
    clear();
    answer(tr("There is no circuit yet: add parts on the Hook-up, or open a file."));
}

void Room::giveUp() {
    m_task.cancel();
    m_stale = true;
    answer(tr("Cancelled. The next change, or opening this window again, asks anew."));
}

void Room::answer(const QString& sentence, bool isFault) {
    m_frame->setMessage(sentence, isFault);
    emit answered();
}

void Room::askFile(const QString& title, const QString& suffix,
                   const std::vector<std::pair<QString, QString>>& kinds,
                   const std::function<Result<void>(const QString& path)>& write) {
    const QString stem = QFileInfo(m_house.document.path()).completeBaseName();
    const QString name = (stem.isEmpty() ? tr("circuit") : stem) + QStringLiteral("-") + suffix;
    const QString path = askWhere(m_frame, {title, name, kinds}, m_house.settings);
    if (path.isEmpty()) return;
    if (Result<void> done = write(path); !done)
        return m_house.tell(tr("The file was not written"), done.fault());
    m_house.say(tr("Exported to %1").arg(QFileInfo(path).fileName()));
}

bool Room::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_frame && event->type() == QEvent::Hide) {
        m_house.settings.setWindowState(m_frame->objectName(), m_frame->saveGeometry());
        if (m_task.isBusy()) {
            m_task.cancel();
            m_stale = true;
        }
    }
    return QObject::eventFilter(watched, event);
}

} // namespace blinkwright::app
