// Play in the window: its menu, its keys, its strip, and the timer that hands the time to the state machine.
//
//   auto* play = new PlayActions({window, live, curves, hookup, strip}, settings);
//   menuBar()->addMenu(play->menu());
//   connect(play, &PlayActions::momentChanged, ...);
#pragma once

#include "app/icons.h"
#include "app/play.h"
#include "app/settings.h"
#include "widgets/theme/theme.h"

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <optional>

class QAction;
class QActionGroup;
class QMainWindow;
class QMenu;

namespace blinkwright::widgets {
class CurvesView;
class HookupView;
} // namespace blinkwright::widgets

namespace blinkwright::app {

class LivePanels;
class PlayStrip;

class PlayActions : public QObject {
    Q_OBJECT
  public:
    struct Places {
        QMainWindow& window;
        LivePanels& live;
        widgets::CurvesView& curves;
        widgets::HookupView& hookup;
        PlayStrip& strip;
    };
    PlayActions(const Places& places, Settings& settings);

    QMenu* menu() const { return m_menu; }
    const Play& play() const { return m_play; }
    void setTheme(const widgets::Theme& theme);

  signals:
    void momentChanged(); ///< by play or by a step; not more often than pictures are shown
    void said(const QString& sentence);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void makeActions();
    void toggle();
    void startPlaying();
    void pause();
    void frame();
    void takeLine();
    void step(double (Play::*way)());
    void stepTo(double time_s);
    void takeStudy();
    void showMoment(double from_s);
    void showState();
    void setBars(bool on);
    /// Asks, once, how lamps shall be shown that flash fast; plays after the answer.
    void askAboutFlicker();
    QString note() const;
    bool steady() const;

    Places m_at;
    Settings& m_settings;
    Play m_play;
    QTimer m_timer;
    QElapsedTimer m_since;
    std::map<circuit::PartId, double> m_mean; ///< over the settled cycles
    struct Shown {                            ///< what the actions say now
        bool running = false, can = false;
        widgets::Theme::Mode mode = widgets::Theme::Mode::light;
        bool operator==(const Shown&) const = default;
    };
    std::optional<Shown> m_shown;
    widgets::Theme m_theme;
    QMenu* m_menu;
    QAction *m_toggle, *m_next, *m_previous, *m_loop, *m_bars;
    QActionGroup* m_ratios;
};

} // namespace blinkwright::app
