#include "app/play_actions.h"

#include "app/live_panels.h"
#include "app/moment.h"
#include "app/play_strip.h"
#include "widgets/curves/curves_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/text/plain_number.h"

#include <QActionGroup>
#include <QEvent>
#include <QMainWindow>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>

namespace blinkwright::app {

namespace {

constexpr int frame_ms = 16;

QString withKeys(const QString& text, const QAction* action) {
    return PlayActions::tr("%1 (%2)").arg(text, action->shortcut().toString(QKeySequence::NativeText));
}

} // namespace

PlayActions::PlayActions(const Places& places, Settings& settings)
    : QObject(&places.window), m_at(places), m_settings(settings),
      m_theme(widgets::Theme::of(widgets::Theme::Mode::light)) {
    makeActions();
    m_at.strip.setActions({m_previous, m_toggle, m_next, m_loop}, m_ratios);
    m_timer.setTimerType(Qt::PreciseTimer);
    m_timer.setInterval(frame_ms);
    connect(&m_timer, &QTimer::timeout, this, &PlayActions::frame);
    connect(&m_at.live, &LivePanels::studyShown, this, &PlayActions::takeStudy);
    connect(&m_at.curves, &widgets::CurvesView::momentMoved, this, [this](double time_s) {
        m_play.moveTo(time_s); // before the pause, which shows where the line stands
        pause();
    });
    m_at.window.installEventFilter(this);
    m_at.hookup.setLampsAsBars(m_settings.lampsAsBars());
    showState();
}

void PlayActions::makeActions() {
    m_menu = new QMenu(tr("Pla&y"), &m_at.window);
    const auto add = [this](const QString& text, const QString& keys, const QString& meaning, auto done) {
        QAction* action = m_menu->addAction(text);
        action->setWhatsThis(meaning);
        action->setShortcut(QKeySequence(keys));
        connect(action, &QAction::triggered, this, done);
        return action;
    };
    m_toggle =
        add(tr("&Play"), tr("F9"),
            tr("Moves the moment line over the run, or stops it. The lamps of the Hook-up glow meanwhile as "
               "their current says."),
            &PlayActions::toggle);
    m_previous = add(tr("To the pre&vious switching"), tr("F7"),
                     tr("Moves the moment line back to where an output turned high or low last."),
                     [this] { step(&Play::toPreviousSwitching); });
    m_next = add(tr("To the &next switching"), tr("F8"),
                 tr("Moves the moment line on to where an output turns high or low next."),
                 [this] { step(&Play::toNextSwitching); });
    m_menu->addSeparator();
    m_ratios = new QActionGroup(this);
    const QString words[] = {tr("As fast as the &board"), tr("&Four times slower"),
                             tr("&Twenty times slower")};
    const QString keys[] = {tr("Ctrl+5"), tr("Ctrl+6"), tr("Ctrl+7")};
    for (std::size_t k = 0; k < std::size(Play::ratios); ++k) {
        const int ratio = Play::ratios[k];
        QAction* action = m_ratios->addAction(m_menu->addAction(tr("%1, 1:%2").arg(words[k]).arg(ratio)));
        action->setIconText(tr("1:%1").arg(ratio));
        action->setWhatsThis(
            tr("One second of the board takes %1 s to play. Slower shows what is too fast to see.")
                .arg(ratio));
        action->setShortcut(QKeySequence(keys[k]));
        action->setCheckable(true);
        action->setChecked(ratio == m_play.ratio());
        connect(action, &QAction::triggered, this, [this, ratio] {
            m_play.setRatio(ratio);
            if (m_play.running() && m_play.isLively() && !m_settings.flickerAnswered()) {
                pause();
                askAboutFlicker();
            }
            showState();
        });
    }
    m_menu->addSeparator();
    m_loop =
        add(tr("Go &round in the settled cycles"), tr("Ctrl+R"),
            tr("Plays the settled cycles over and over. Without it, playing stops at the end of the run."),
            [this](bool on) { m_play.setLoop(on); });
    m_loop->setCheckable(true);
    m_loop->setChecked(true); // a fast run is over before anybody has looked
    m_play.setLoop(true);
    m_bars = add(tr("Show &lamps as bars"), tr("Ctrl+G"),
                 tr("Shows the current of each lamp as a bar beside it instead of a glow: nothing flickers."),
                 [this](bool on) { setBars(on); });
    m_bars->setCheckable(true);
    m_bars->setChecked(m_settings.lampsAsBars());
    m_next->setToolTip(withKeys(tr("To the next switching"), m_next));
    m_previous->setToolTip(withKeys(tr("To the previous switching"), m_previous));
}

void PlayActions::setTheme(const widgets::Theme& theme) {
    m_theme = theme;
    m_previous->setIcon(icon(Icon::stepBack, theme));
    m_next->setIcon(icon(Icon::stepOn, theme));
    m_loop->setIcon(icon(Icon::loop, theme));
    showState();
}

void PlayActions::toggle() {
    if (m_play.running()) return pause();
    if (m_play.isLively() && !m_settings.flickerAnswered()) return askAboutFlicker();
    startPlaying();
}

void PlayActions::startPlaying() {
    // A window that nobody sees plays nothing; the answer to a question may come after it was hidden.
    if (!m_at.window.isVisible()) return;
    takeLine();
    if (!m_play.start()) return;
    m_since.start();
    m_timer.start();
    showMoment(m_play.moment_s());
    showState();
    if (const QString text = note(); !text.isEmpty()) emit said(text);
}

void PlayActions::pause() {
    if (!m_timer.isActive()) return;
    m_timer.stop();
    m_play.pause();
    showState();
    stepTo(m_play.moment_s());
}

void PlayActions::frame() {
    const double before_s = m_play.moment_s();
    m_play.advance(static_cast<double>(m_since.nsecsElapsed()) * 1e-9);
    m_since.start();
    if (!m_play.running()) return pause();
    m_at.curves.playMoment(m_play.moment_s());
    showMoment(before_s);
    emit momentChanged();
}

void PlayActions::takeLine() {
    // The line also moves with a file that is opened and with a run that is shorter.
    if (!m_play.running()) m_play.moveTo(m_at.curves.moment_s());
}

void PlayActions::step(double (Play::*way)()) {
    takeLine();
    stepTo((m_play.*way)());
}

void PlayActions::stepTo(double time_s) {
    if (m_timer.isActive()) {
        m_timer.stop();
        showState();
    }
    if (m_play.tape().empty()) return;
    m_at.curves.playMoment(time_s);
    m_at.curves.setMoment(time_s);
    showMoment(time_s);
    emit momentChanged();
}

void PlayActions::takeStudy() {
    const auto study = m_at.live.shown();
    m_play.setTape(study ? tapeOf(*study) : Tape{});
    const Stretch cycles = m_play.tape().cycles;
    m_mean = study ? meanGlow(*study, cycles.begin_s, cycles.end_s) : std::map<circuit::PartId, double>{};
    if (!m_timer.isActive()) m_play.moveTo(m_at.curves.moment_s());
    if (m_timer.isActive() && !m_play.running()) m_timer.stop();
    // A value that was changed meanwhile may have made it fast.
    if (m_timer.isActive() && m_play.isLively() && !m_settings.flickerAnswered()) {
        pause();
        askAboutFlicker();
    }
    if (m_timer.isActive()) showMoment(m_play.moment_s());
    showState();
}

bool PlayActions::steady() const {
    return m_play.showing() == Showing::steady || (m_settings.lampsAsBars() && m_play.isLively());
}

void PlayActions::showMoment(double from_s) {
    const auto study = m_at.live.shown();
    if (!study) return;
    if (m_play.running() && steady()) return m_at.hookup.setGlow(m_mean);
    // A short flash between two pictures is not lost: each picture shows the mean since the one before.
    m_at.hookup.setGlow(meanGlow(*study, std::min(from_s, m_play.moment_s()), m_play.moment_s()));
}

void PlayActions::showState() {
    m_at.strip.setNote(note());
    // A change of an action has the window laid out anew: not at every run of a drag.
    const Shown now{m_play.running(), !m_play.tape().empty(), m_theme.mode};
    if (m_shown == now) return;
    m_shown = now;
    m_toggle->setText(now.running ? tr("&Pause") : tr("&Play"));
    m_toggle->setIcon(icon(now.running ? Icon::pause : Icon::play, m_theme));
    m_toggle->setToolTip(
        withKeys(now.running ? tr("Pause") : tr("Play: move the moment line over the run"), m_toggle));
    for (QAction* action : {m_toggle, m_next, m_previous, m_loop}) action->setEnabled(now.can);
}

QString PlayActions::note() const {
    if (m_play.tape().empty()) return {};
    const QString rate = widgets::plainNumber(m_play.seenRate_Hz(), 'g', 3);
    if (m_play.showing() == Showing::steady)
        return tr("Steady: the display cannot follow %1 flashes a second; the eye still may.").arg(rate);
    if (steady()) return tr("Bars show the mean current: %1 flashes a second.").arg(rate);
    return {};
}

void PlayActions::setBars(bool on) {
    m_settings.setLampsAsBars(on);
    m_bars->setChecked(on);
    m_at.hookup.setLampsAsBars(on);
    showMoment(m_play.moment_s());
    showState();
}

void PlayActions::askAboutFlicker() {
    auto* box = new QMessageBox(&m_at.window);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->setIcon(QMessageBox::Question);
    box->setWindowTitle(tr("How to show the lamps"));
    box->setText(tr("This blinker flashes %1 times a second at this speed.")
                     .arg(widgets::plainNumber(m_play.seenRate_Hz(), 'g', 2)));
    box->setInformativeText(
        tr("The lamps can glow as they flash. Or bars can show the current, without flicker: easier on the "
           "eyes of some people.\n\nThe Play menu changes this at any time."));
    QPushButton* glow = box->addButton(tr("&Glow"), QMessageBox::AcceptRole);
    QPushButton* bars = box->addButton(tr("&Bars"), QMessageBox::AcceptRole);
    box->addButton(QMessageBox::Cancel);
    box->setDefaultButton(bars);
    connect(box, &QMessageBox::buttonClicked, this, [this, glow, bars](const QAbstractButton* pressed) {
        if (pressed != glow && pressed != bars) return; // asked again next time
        m_settings.setFlickerAnswered();
        setBars(pressed == bars);
        startPlaying();
    });
    box->open();
}

bool PlayActions::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Hide ||
        (event->type() == QEvent::WindowStateChange && m_at.window.isMinimized()))
        pause();
    return QObject::eventFilter(watched, event);
}

} // namespace blinkwright::app
