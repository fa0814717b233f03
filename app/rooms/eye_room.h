// What the eye sees: how long and how bright the flashes look, their rhythm, and stated uses of the rate.
#pragma once

#include "app/rooms/room.h"
#include "core/study/eye.h"

class QLabel;

namespace blinkwright::widgets {
class EyeView;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class EyeRoom : public Room {
    Q_OBJECT
  public:
    explicit EyeRoom(const House& house);

    widgets::EyeView& view() { return *m_view; }

  protected:
    void ask() override;
    void clear() override;
    void showTheme(const widgets::Theme& theme) override;

  private:
    void show(const std::vector<study::EyeReading>& lamps);

    widgets::EyeView* m_view;
    QLabel* m_cautions;
    bool m_flickers = false;
};

} // namespace blinkwright::app
