#include "app/play.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace blinkwright::app {

namespace {

constexpr double longestPicture_s = 0.25;
/// Cycles this close to the settled period count as settled: too little for an eye or a reading to tell.
constexpr double settledWithin = 0.01;

/// The fastest cycle of a timer: from one switching to the next but one.
double fastest_Hz(const std::vector<double>& switchings_s) {
    double shortest_s = 0;
    for (std::size_t k = 0; k + 2 < switchings_s.size(); ++k) {
        const double cycle_s = switchings_s[k + 2] - switchings_s[k];
        if (cycle_s > 0 && (shortest_s <= 0 || cycle_s < shortest_s)) shortest_s = cycle_s;
    }
    return shortest_s > 0 ? 1 / shortest_s : 0;
}

/// As many whole cycles at the end of the run as last as long as the settled one, at least the last.
Stretch settledCycles(const std::vector<double>& s, double period_s, Stretch whole) {
    if (s.size() < 3) return whole;
    const std::size_t last = s.size() - 1;
    std::size_t first = last - 2;
    while (first >= 2 && std::abs(s[first] - s[first - 2] - period_s) <= settledWithin * period_s) first -= 2;
    return s[first] < s[last] ? Stretch{s[first], s[last]} : whole;
}

} // namespace

Tape tapeOf(const study::Study& study) {
    Tape tape;
    const engine::Curves& curves = study.curves;
    if (curves.time_s.size() < 2) return tape;
    tape.whole = tape.cycles = {curves.time_s.front(), curves.time_s.back()};
    tape.switchings_s = curves.switchings_s;
    for (const study::TimerReading& timer : study.readings.timers) {
        tape.flashes_Hz = std::max(tape.flashes_Hz, fastest_Hz(timer.switchings_s));
        if (timer.settled) tape.flashes_Hz = std::max(tape.flashes_Hz, timer.settled->rate_Hz());
    }
    if (study.readings.timers.empty()) return tape;
    const study::TimerReading& first = study.readings.timers.front();
    // What is shown of a settled state is whole cycles from its begin to its end.
    if (first.firstHigh_s && first.settled)
        tape.cycles = settledCycles(tape.switchings_s, first.settled->period_s(), tape.whole);
    return tape;
}

void Play::setTape(Tape tape) {
    m_tape = std::move(tape);
    if (m_tape.empty()) m_running = false;
    moveTo(m_moment_s);
}

void Play::setRatio(int slower) {
    assert(std::ranges::find(ratios, slower) != std::end(ratios));
    m_ratio = slower;
}

bool Play::start() {
    if (m_tape.empty()) return false;
    const Stretch over = stretch();
    if (m_moment_s >= over.end_s) m_moment_s = over.begin_s;
    m_running = true;
    return true;
}

void Play::moveTo(double time_s) {
    m_moment_s = m_tape.empty() ? time_s : std::clamp(time_s, m_tape.whole.begin_s, m_tape.whole.end_s);
}

double Play::advance(double elapsed_s) {
    if (!m_running) return m_moment_s;
    m_moment_s += std::clamp(elapsed_s, 0.0, longestPicture_s) / m_ratio;
    const Stretch over = stretch();
    if (m_moment_s < over.end_s) return m_moment_s;
    if (m_loop) {
        m_moment_s = over.begin_s + std::fmod(m_moment_s - over.end_s, over.length_s());
    } else {
        m_moment_s = over.end_s;
        m_running = false;
    }
    return m_moment_s;
}

double Play::toNextSwitching() {
    pause();
    const std::vector<double>& s = m_tape.switchings_s;
    const auto next = std::upper_bound(s.begin(), s.end(), m_moment_s);
    moveTo(next == s.end() ? m_tape.whole.end_s : *next);
    return m_moment_s;
}

double Play::toPreviousSwitching() {
    pause();
    const std::vector<double>& s = m_tape.switchings_s;
    const auto next = std::lower_bound(s.begin(), s.end(), m_moment_s);
    moveTo(next == s.begin() ? m_tape.whole.begin_s : *std::prev(next));
    return m_moment_s;
}

} // namespace blinkwright::app
