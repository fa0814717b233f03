#include "app/rooms/room_actions.h"

#include "app/rooms/account_room.h"
#include "app/rooms/choose_room.h"
#include "app/rooms/drawer_desk.h"
#include "app/rooms/eye_room.h"
#include "app/rooms/lab_sheet_room.h"
#include "app/rooms/spread_room.h"
#include "app/rooms/symptoms_room.h"
#include "app/rooms/trend_room.h"
#include "app/rooms/why_room.h"

#include <QAction>
#include <QMenu>

namespace blinkwright::app {

namespace {

template <class Kind>
std::unique_ptr<Room> makeRoom(const Room::House& house) {
    return std::make_unique<Kind>(house);
}

} // namespace

RoomActions::RoomActions(const Room::House& house)
    : QObject(&house.window), m_house(house), m_menu(new QMenu(tr("&Ask"), &house.window)),
      m_desk(new DrawerDesk(house)) {
    add(tr("&Why it differs…"), tr("Ctrl+Shift+Y"), QStringLiteral("why"), &makeRoom<WhyRoom>);
    add(tr("What the &eye sees…"), tr("Ctrl+I"), QStringLiteral("eye"), &makeRoom<EyeRoom>);
    add(tr("&Trend…"), tr("Ctrl+T"), QStringLiteral("trend"), &makeRoom<TrendRoom>);
    add(tr("&Spread…"), tr("Ctrl+Shift+D"), QStringLiteral("spread"), &makeRoom<SpreadRoom>);
    add(tr("&Choose values…"), tr("Ctrl+K"), QStringLiteral("choose"),
        [this](const Room::House& of) { return std::make_unique<ChooseRoom>(of, *m_desk); });
    add(tr("&Measurements…"), tr("Ctrl+M"), QStringLiteral("measure"),
        [this](const Room::House& of) { return std::make_unique<MeasureRoom>(of, m_importRecord); });
    add(tr("&Account for it…"), tr("Ctrl+Shift+M"), QStringLiteral("account"), [this](const Room::House& of) {
        return std::make_unique<AccountRoom>(of, *m_desk, [this] { open(QStringLiteral("measure")); });
    });
    add(tr("S&ymptoms…"), tr("Ctrl+Shift+F"), QStringLiteral("symptoms"), &makeRoom<SymptomsRoom>);
    QAction* drawer = m_menu->addAction(tr("The &drawer…"));
    drawer->setObjectName(QStringLiteral("drawer"));
    drawer->setShortcut(QKeySequence(tr("Ctrl+Shift+K")));
    connect(drawer, &QAction::triggered, m_desk, &DrawerDesk::open);
}

void RoomActions::addLabSheetTo(QMenu* menu) {
    addTo(menu, tr("&Lab sheet…"), tr("Ctrl+Shift+L"), QStringLiteral("labSheet"), &makeRoom<LabSheetRoom>);
}

void RoomActions::add(const QString& text, const QString& keys, const QString& name, Make make) {
    addTo(m_menu, text, keys, name, std::move(make));
}

void RoomActions::addTo(QMenu* menu, const QString& text, const QString& keys, const QString& name,
                        Make make) {
    m_makers[name] = std::move(make);
    QAction* action = menu->addAction(text);
    action->setObjectName(name);
    action->setShortcut(QKeySequence(keys));
    connect(action, &QAction::triggered, this, [this, name] { open(name); });
}

Room& RoomActions::open(const QString& name) {
    std::unique_ptr<Room>& room = m_rooms[name];
    if (!room) room = m_makers.at(name)(m_house);
    room->open();
    return *room;
}

} // namespace blinkwright::app
