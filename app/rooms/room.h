// A room: a window that asks one question of the open circuit, beside the main one. It asks again after every
// change of the circuit while it is open, off the event loop; what runs can be cancelled.
//
//   class TrendRoom : public Room {
//       void ask() override;      // task().start(...), with circuit() and set()
//       void showTheme(const widgets::Theme&) override;
//   };
//   room.open();
// Rooms are kept once made. RoomActions has the menu.
#pragma once

#include "app/appearance.h"
#include "app/document.h"
#include "app/newest_task.h"
#include "app/settings.h"
#include "widgets/rooms/room_frame.h"

#include <QTimer>
#include <functional>

namespace blinkwright::app {

class Room : public QObject {
    Q_OBJECT
  public:
    /// What all rooms of a window share, and what the window does for them.
    struct House {
        QWidget& window;
        Document& document;
        Settings& settings;
        Appearance& appearance;
        std::function<bool()> mayLeave; ///< asks about unsaved changes
        std::function<void(const QString&)> say;
        std::function<void(const QString& title, const Fault&)> tell;
        std::function<void(const QString& place)> showPlace = {}; ///< `R1`, `U1:7`: on the Hook-up
        std::function<void(const QString& page)> showHelp = {};
    };

    /// @param name of the frame, by which its place on the screen and its answers are remembered; also that
    /// of its page in the help
    Room(const House& house, const QString& title, const QString& name, QSize firstSize);
    ~Room() override;

    /// Brings the window up and asks, where something has changed since.
    void open();
    widgets::RoomFrame& frame() { return *m_frame; }
    bool isBusy() const { return m_task.isBusy() || m_pause.isActive(); }

  signals:
    void answered(); ///< a new answer is shown

  protected:
    /// Puts the question of now to task(). Called only while the room is open and there is a circuit.
    virtual void ask() = 0;
    /// No parts on the Hook-up, or another circuit: what is shown is of no use any more.
    virtual void clear() = 0;
    /// Whether there is a question only about a circuit, and asked anew with each change of it.
    virtual bool asksOfCircuit() const { return true; }
    virtual void showTheme(const widgets::Theme& theme) = 0;
    /// 0 to 1, asked for while work runs; below 0 where nobody knows.
    virtual double progress() const { return -1; }

    /// Asks when the circuit has stood still for a moment; for a control that changes the question.
    void askSoon();
    /// To be called by a subclass at the end of its constructor.
    void ready();
    /// Shows a sentence and tells that the answer is there.
    void answer(const QString& sentence, bool isFault = false);
    /// Asks for a file to write and writes it; says so, or tells the fault.
    /// @param suffix put behind the circuit's own file name: `mole-light-trend.csv`
    void askFile(const QString& title, const QString& suffix,
                 const std::vector<std::pair<QString, QString>>& kinds, ///< words and ending
                 const std::function<Result<void>(const QString& path)>& write);

    const House& house() const { return m_house; }
    /// What was set in the room's controls, as it was left the last time.
    QVariantMap remembered() const { return m_house.settings.answers(m_frame->objectName()); }
    void remember(const QVariantMap& answers) { m_house.settings.setAnswers(m_frame->objectName(), answers); }
    const circuit::Circuit& circuit() const { return m_house.document.circuit(); }
    circuit::PartSet set() const { return m_frame->set(); }
    NewestTask& task() { return m_task; }

  private:
    void follow();
    void giveUp();
    bool eventFilter(QObject* watched, QEvent* event) override;

    const House m_house;
    widgets::RoomFrame* m_frame;
    QTimer m_pause;    ///< between a change and the question
    QTimer m_progress; ///< while work runs
    bool m_stale = true;
    NewestTask m_task;
};

} // namespace blinkwright::app
