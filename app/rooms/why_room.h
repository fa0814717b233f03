// Why it differs: from the textbook to this board, cause by cause.
#pragma once

#include "app/rooms/room.h"

namespace blinkwright::widgets {
class WhyView;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class WhyRoom : public Room {
    Q_OBJECT
  public:
    explicit WhyRoom(const House& house);

    widgets::WhyView& view() { return *m_view; }

  protected:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;

  private:
    widgets::WhyView* m_view;
};

} // namespace blinkwright::app
