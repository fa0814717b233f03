// The user's drawer: kept in a file of the user's data folder from one start to the next, and shown in a
// dialog. Every edit is written at once, the file whole.
//
//   DrawerDesk desk(house);
//   desk.stock();                                 // what is owned
//   connect(&desk, &DrawerDesk::changed, ...);
//   desk.open();
#pragma once

#include "app/rooms/room.h"
#include "core/study/wish.h"

namespace blinkwright::widgets {
class DrawerDialog;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class DrawerDesk : public QObject {
    Q_OBJECT
  public:
    explicit DrawerDesk(const Room::House& house);

    std::vector<study::Stock> stock();
    void open();
    widgets::DrawerDialog& dialog();

    /// Adds what a file holds. On a fault nothing is added.
    Result<void> importFrom(const QString& path);
    Result<void> exportTo(const QString& path);

  signals:
    void changed();

  private:
    void load();
    void keep();
    void askImport();
    void askExport();
    void say(const QString& title, const Fault& fault);

    const Room::House m_house;
    const QString m_path;
    widgets::DrawerDialog* m_dialog = nullptr; ///< made when first wanted, then kept
    bool m_unread = false; ///< the file is there and cannot be read: it must not be written over
};

} // namespace blinkwright::app
