// The menu of rooms, each made when first wanted, then kept.
//
//   RoomActions rooms({window, document, settings, appearance, mayLeave, say, tell});
//   menuBar()->addMenu(rooms.menu());
#pragma once

#include "app/rooms/measure_room.h"

#include <map>
#include <memory>

class QMenu;

namespace blinkwright::app {

class DrawerDesk;

class RoomActions : public QObject {
    Q_OBJECT
  public:
    explicit RoomActions(const Room::House& house);

    QMenu* menu() const { return m_menu; }
    /// The lab sheet, which is a file to make rather than a question.
    void addLabSheetTo(QMenu* menu);
    /// By the name of its frame: `why`. Opens it.
    Room& open(const QString& name);
    DrawerDesk& drawer() { return *m_desk; }
    /// How Measurements imports a record; to be set before that room is first opened.
    void setImportRecord(MeasureRoom::ImportRecord import) { m_importRecord = std::move(import); }

  private:
    using Make = std::function<std::unique_ptr<Room>(const Room::House&)>;
    void add(const QString& text, const QString& keys, const QString& meaning, const QString& name,
             Make make);
    void addTo(QMenu* menu, const QString& text, const QString& keys, const QString& meaning,
               const QString& name, Make make);

    Room::House m_house;
    QMenu* m_menu;
    DrawerDesk* m_desk;
    MeasureRoom::ImportRecord m_importRecord;
    std::map<QString, Make> m_makers;
    std::map<QString, std::unique_ptr<Room>> m_rooms;
};

} // namespace blinkwright::app
