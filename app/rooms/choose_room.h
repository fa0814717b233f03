// "Choose values": from a wish, said in one sentence, to parts that exist, and to a circuit.
#pragma once

#include "app/rooms/room.h"
#include "core/study/wish.h"

class QPushButton;

namespace blinkwright::widgets {
class ChooseView;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class DrawerDesk;

class ChooseRoom : public Room {
    Q_OBJECT
  public:
    ChooseRoom(const House& house, DrawerDesk& desk);
    ~ChooseRoom() override;

    widgets::ChooseView& view() { return *m_view; }

  public slots:
    void makeIt();
    void takeAsSetB();
    void takeNearest();
    void copyTable();
    void exportTable();

  protected:
    bool asksOfCircuit() const override { return false; }
    void ask() override;
    void clear() override {} // a wish stands without a circuit
    void showTheme(const widgets::Theme& theme) override;
    double progress() const override;

  private:
    void keepTexts();
    void show(const study::Wish& wish, std::shared_ptr<const study::Choices> choices);
    void showButtons();
    QString sentence(const study::Wish& wish, const study::Choices& choices) const;

    DrawerDesk& m_desk;
    widgets::ChooseView* m_view;
    QPushButton *m_make, *m_take, *m_copy, *m_export;
    std::shared_ptr<const study::Choices> m_choices, m_shown; ///< of an unmet wish the nearest is shown
    /// Boards of the newest question; each question has a counter of its own.
    std::shared_ptr<std::atomic<std::size_t>> m_done;
};

} // namespace blinkwright::app
