// Play: moves the moment line over a run that is computed already, at a fixed ratio to real time. It has no
// clock of its own: the time that has passed is handed in.
//
//   Play play;
//   play.setTape(tapeOf(study));
//   play.setRatio(4);                  // 1:4, four times slower than the board
//   play.start();
//   double now_s = play.advance(0.016); // a frame later
//   play.moment_s();
#pragma once

#include "core/study/study.h"

#include <vector>

namespace blinkwright::app {

/// A stretch of a run [s].
struct Stretch {
    double begin_s = 0;
    double end_s = 0;
    double length_s() const { return end_s - begin_s; }
    bool operator==(const Stretch&) const = default;
};

/// What of a run play needs to know.
struct Tape {
    Stretch whole;
    Stretch cycles;                   ///< settled cycles to go round in; the whole run where there are none
    std::vector<double> switchings_s; ///< of the first timer, ascending
    double flashes_Hz = 0;            ///< the fastest flashing of any timer in the run; 0: none
    bool empty() const { return !(whole.end_s > whole.begin_s); }
};

/// @return an empty tape for a study without curves.
Tape tapeOf(const study::Study& study);

/// How the lamps can be shown at a rate of flashing on the screen.
enum class Showing { moments, steady };

class Play {
  public:
    /// Ratios of board time to real time: 1:1, 1:4, 1:20.
    static constexpr int ratios[] = {1, 4, 20};
    /// Above this many flashes a second a display of 60 pictures a second shows no true flashing any more.
    static constexpr double mostShown_Hz = 20;
    /// Above this many, flashing is offered as bars: WCAG 2.2, success criterion 2.3.1, three flashes.
    static constexpr double mostCalm_Hz = 3;

    /// Another run; the line stays where it is, or moves to the nearer end. An empty tape stops the play.
    void setTape(Tape tape);
    const Tape& tape() const { return m_tape; }
    void setRatio(int slower); ///< one of ratios
    int ratio() const { return m_ratio; }
    void setLoop(bool on) { m_loop = on; }
    bool loops() const { return m_loop; }

    /// From the line's place; from the begin if the line stands at the end. @return false: nothing to play.
    bool start();
    void pause() { m_running = false; }
    bool running() const { return m_running; }

    double moment_s() const { return m_moment_s; }
    void moveTo(double time_s); ///< by hand
    /// @param elapsed_s real time since the last call, >= 0; one picture is never more than a quarter of a
    /// second long, so that a window that was held up does not jump. @return the line's new place [s].
    double advance(double elapsed_s);
    /// Pauses on the next switching, or at the end. @return the line's new place [s].
    double toNextSwitching();
    double toPreviousSwitching();

    /// Flashes a second as they come from the screen at this ratio.
    double seenRate_Hz() const { return m_tape.flashes_Hz / m_ratio; }
    Showing showing() const { return seenRate_Hz() > mostShown_Hz ? Showing::steady : Showing::moments; }
    bool isLively() const { return seenRate_Hz() > mostCalm_Hz; }

  private:
    Stretch stretch() const { return m_loop ? m_tape.cycles : m_tape.whole; }

    Tape m_tape;
    int m_ratio = 1;
    bool m_loop = false;
    bool m_running = false;
    double m_moment_s = 0;
};

} // namespace blinkwright::app
