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
    add(tr("&Why it differs…"), tr("Ctrl+Shift+Y"),
        tr("Goes from the cycle time of the textbook to that of the simulated board, cause by cause."),
        QStringLiteral("why"), &makeRoom<WhyRoom>);
    add(tr("What the &eye sees…"), tr("Ctrl+I"),
        tr("What each lamp looks like: flashes or flicker, how bright, and which stated uses its rate "
           "suits."),
        QStringLiteral("eye"), &makeRoom<EyeRoom>);
    add(tr("&Trend…"), tr("Ctrl+T"),
        tr("Draws a figure, such as the flash rate, over one value of the circuit. The value can be dragged "
           "on it."),
        QStringLiteral("trend"), &makeRoom<TrendRoom>);
    add(tr("&Spread…"), tr("Ctrl+Shift+D"),
        tr("How far the figures of thousands of boards scatter whose parts are within their tolerances, and "
           "which part does most of it."),
        QStringLiteral("spread"), &makeRoom<SpreadRoom>);
    add(tr("&Choose values…"), tr("Ctrl+K"),
        tr("Finds resistors and a capacitor for a wished rate and lit time, from preferred series or from "
           "the drawer."),
        QStringLiteral("choose"),
        [this](const Room::House& of) { return std::make_unique<ChooseRoom>(of, *m_desk); });
    add(tr("&Measurements…"), tr("Ctrl+M"),
        tr("What was measured on the real board: counted flashes, meter readings and records, each with its "
           "uncertainty."),
        QStringLiteral("measure"),
        [this](const Room::House& of) { return std::make_unique<MeasureRoom>(of, m_importRecord); });
    add(tr("&Account for it…"), tr("Ctrl+Shift+M"),
        tr("Finds the values of the parts that explain the measurements best, and which part to change for a "
           "wished rate."),
        QStringLiteral("account"), [this](const Room::House& of) {
            return std::make_unique<AccountRoom>(of, *m_desk, [this] { open(QStringLiteral("measure")); });
        });
    add(tr("S&ymptoms…"), tr("Ctrl+Shift+F"),
        tr("Ranks what is likely wrong with a board, from what is seen and measured. It also has a card of "
           "the readings to expect."),
        QStringLiteral("symptoms"), &makeRoom<SymptomsRoom>);
    QAction* drawer = m_menu->addAction(tr("The &drawer…"));
    drawer->setObjectName(QStringLiteral("drawer"));
    drawer->setShortcut(QKeySequence(tr("Ctrl+Shift+K")));
    drawer->setWhatsThis(
        tr("The stock of resistors and capacitors at hand. Values can be chosen and boards retuned from "
           "it."));
    connect(drawer, &QAction::triggered, m_desk, &DrawerDesk::open);
}

void RoomActions::addLabSheetTo(QMenu* menu) {
    addTo(menu, tr("&Lab sheet…"), tr("Ctrl+Shift+L"),
          tr("A report of the circuit to print or hand out, with theory, drawing, values, curves and tables "
             "to fill in."),
          QStringLiteral("labSheet"), &makeRoom<LabSheetRoom>);
}

void RoomActions::add(const QString& text, const QString& keys, const QString& meaning, const QString& name,
                      Make make) {
    addTo(m_menu, text, keys, meaning, name, std::move(make));
}

void RoomActions::addTo(QMenu* menu, const QString& text, const QString& keys, const QString& meaning,
                        const QString& name, Make make) {
    // What the room is for answers for all of its window that has no answer of its own.
    m_makers[name] = [make = std::move(make), meaning](const Room::House& house) {
        std::unique_ptr<Room> room = make(house);
        room->frame().setWhatsThis(meaning);
        return room;
    };
    QAction* action = menu->addAction(text);
    action->setObjectName(name);
    action->setShortcut(QKeySequence(keys));
    action->setWhatsThis(meaning);
    connect(action, &QAction::triggered, this, [this, name] { open(name); });
}

Room& RoomActions::open(const QString& name) {
    std::unique_ptr<Room>& room = m_rooms[name];
    if (!room) room = m_makers.at(name)(m_house);
    room->open();
    return *room;
}

} // namespace blinkwright::app
