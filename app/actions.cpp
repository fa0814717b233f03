// Menus and tool bar of the window.
#include "app/band_behind.h"
#include "app/help/help_desk.h"
#include "app/hookup_actions.h"
#include "app/icons.h"
#include "app/main_window.h"
#include "app/measured_panels.h"
#include "app/pins_actions.h"
#include "app/projector_view.h"
#include "app/ready_actions.h"
#include "app/rooms/room_actions.h"
#include "app/second_set.h"
#include "app/set_actions.h"
#include "app/what_is_this.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/text/text_sized.h"
#include "widgets/values/value_panel.h"

#include <QActionGroup>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QLabel>
#include <QMenuBar>
#include <QMessageBox>
#include <QSpinBox>
#include <QToolBar>
#include <QToolButton>

namespace blinkwright::app {

namespace {

// The range that RunSettings states.
constexpr int mostFlashes = 10000;
/// Steps of the spin box that follow one another within this time are one step to undo.
constexpr int gesturePause_ms = 1000;
constexpr double zoomStep = 1.25;
constexpr int iconSide = 20;

template <class Done>
QAction* add(QMenu* menu, const QString& text, const QKeySequence& keys, const QString& meaning,
             MainWindow* window, Done done) {
    QAction* action = menu->addAction(text);
    action->setShortcut(keys);
    action->setWhatsThis(meaning);
    QObject::connect(action, &QAction::triggered, window, done);
    return action;
}

/// A tool tip that teaches the keys: `Open (Ctrl+O)`.
QString withKeys(const QString& text, const QKeySequence& keys) {
    return keys.isEmpty() ? text
                          : MainWindow::tr("%1 (%2)").arg(text, keys.toString(QKeySequence::NativeText));
}

} // namespace

void MainWindow::makeFileMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&File"));
    add(menu, tr("&New"), QKeySequence::New,
        tr("Begins an empty circuit. Changes that are not saved are asked about first."), this,
        &MainWindow::startNew);
    m_readyActions->addNewTo(menu);
    m_openAction =
        add(menu, tr("&Open…"), QKeySequence::Open,
            tr("Opens a circuit file (.blinkwright) in place of what is open. Changes that are not "
               "saved are asked about first."),
            this, &MainWindow::askOpen);
    m_recent = menu->addMenu(tr("Open &recent"));
    m_recent->menuAction()->setWhatsThis(tr("Circuit files that were open before, the latest first."));
    connect(m_recent, &QMenu::aboutToShow, this, &MainWindow::fillRecentMenu);
    menu->addSeparator();
    m_save =
        add(menu, tr("&Save"), QKeySequence::Save,
            tr("Writes the circuit to its file, with both sets of values and all measurements. A new one is "
               "asked for a name."),
            this, &MainWindow::save);
    m_saveAs =
        add(menu, tr("Save &as…"), QKeySequence(tr("Ctrl+Shift+S")),
            tr("Writes the circuit to another file and goes on with that one. The file that was open stays "
               "as it was last saved."),
            this, &MainWindow::askSaveAs);
    menu->addSeparator();
    add(menu, tr("&Import a record…"), QKeySequence(tr("Ctrl+Shift+I")),
        tr("Reads voltages over time from an instrument's table (.csv, .txt, .tsv, .dat). They become a "
           "measurement of this circuit."),
        this, &MainWindow::askImportRecord);
    menu->addSeparator();
    m_export = add(menu, tr("&Export curves…"), QKeySequence(tr("Ctrl+E")),
                   tr("Writes the curves as picture (.png), drawing (.svg), page (.pdf) or table of numbers "
                      "(.csv). A form with a preview comes first."),
                   this, &MainWindow::askExport);
    m_copyPicture = add(menu, tr("Copy &picture of the curves"), QKeySequence(tr("Ctrl+Shift+P")),
                        tr("Puts the curves on the clipboard as a picture on white, in the size and with the "
                           "choices of the last export."),
                        this, &MainWindow::copyPicture);
    m_setActions->addExportChoiceTo(menu);
    menu->addSeparator();
    m_setActions->addToFileMenu(menu);
    menu->addSeparator();
    m_readyActions->addWiringListTo(menu);
    m_rooms->addLabSheetTo(menu);
    menu->addSeparator();
    QAction* quit = add(menu, tr("&Quit"), QKeySequence(tr("Ctrl+Q")),
                        tr("Ends the program. Changes that are not saved are asked about first."), this,
                        &MainWindow::close);
    quit->setMenuRole(QAction::QuitRole);
}

void MainWindow::fillRecentMenu() {
    m_recent->clear();
    int number = 0;
    for (const QString& path : m_settings.recentFiles()) {
        QString name = QFileInfo(path).fileName();
        QAction* action = m_recent->addAction(
            tr("&%1  %2").arg(++number % 10).arg(name.replace(u'&', QStringLiteral("&&"))));
        action->setToolTip(path);
        action->setWhatsThis(tr("Opens %1 in place of what is open.").arg(path));
        connect(action, &QAction::triggered, this, [this, path] { openInstead(path); });
    }
    m_recent->setToolTipsVisible(true);
    if (number > 0) m_recent->addSeparator();
    QAction* clear = m_recent->addAction(tr("&Clear this list"));
    clear->setEnabled(number > 0);
    clear->setWhatsThis(tr("Forgets the names of these files. The files themselves stay where they are."));
    connect(clear, &QAction::triggered, this, [this] { m_settings.clearRecentFiles(); });
}

void MainWindow::makeEditMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Edit"));
    m_undo = m_document.undoStack().createUndoAction(this, tr("&Undo"));
    m_undo->setShortcut(QKeySequence::Undo);
    m_undo->setWhatsThis(
        tr("Takes back the last step. Every change of the circuit can be taken back, one by one; "
           "the drag of a slider is one step."));
    m_redo = m_document.undoStack().createRedoAction(this, tr("&Redo"));
    m_redo->setShortcuts({QKeySequence(tr("Ctrl+Shift+Z")), QKeySequence(tr("Ctrl+Y"))});
    m_redo->setWhatsThis(tr("Does again the step that was taken back last. It is gone once something else is "
                            "changed."));
    menu->addAction(m_undo);
    menu->addAction(m_redo);
    m_hookupActions->addToEditMenu(menu);
    menu->addSeparator();
    m_copyReadings = add(
        menu, tr("Copy readin&gs"), QKeySequence(tr("Ctrl+Shift+C")),
        tr("Puts the table of Readings on the clipboard as text with units, for a report or a spreadsheet."),
        this, &MainWindow::copyReadings);
}

void MainWindow::makeViewMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&View"));
    m_fitCurves = add(menu, tr("Fit the &curves"), QKeySequence(tr("Ctrl+0")),
                      tr("Shows the whole run along the time axis again, after zooming or panning."), this,
                      [this] { m_curves->fit(); });
    m_fitHookup =
        add(menu, tr("Fit the &Hook-up"), QKeySequence(tr("Ctrl+9")),
            tr("Makes the whole drawing as large as its panel holds."), this, [this] { m_hookup->fit(); });
    m_zoomIn =
        add(menu, tr("Zoom &in"), QKeySequence::ZoomIn,
            tr("Shows a shorter time of the curves, larger. While the Hook-up has the focus, it is enlarged "
               "instead."),
            this, [this] { zoomBy(zoomStep); });
    m_zoomIn->setShortcuts({QKeySequence(tr("Ctrl++")), QKeySequence(tr("Ctrl+="))});
    m_zoomOut = add(
        menu, tr("Zoom &out"), QKeySequence(tr("Ctrl+-")),
        tr("Shows a longer time of the curves, smaller. While the Hook-up has the focus, it is made smaller "
           "instead."),
        this, [this] { zoomBy(1 / zoomStep); });
    m_clearEcho =
        add(menu, tr("Clear the &echo") + QStringLiteral("\t") + tr("Esc"), {},
            tr("Takes away the faint curves of before the last change. The circuit stays as it is."), this,
            [this] { m_live->clearEcho(); });
    menu->addSeparator();

    menu->addActions(m_pinsActions->faces());
    menu->addSeparator();
    m_setActions->addToViewMenu(menu);
    m_band->addToViewMenu(menu);
    m_measured->addToViewMenu(menu);
    menu->addSeparator();

    auto* begin = new QActionGroup(this);
    m_fromPowerOn = menu->addAction(tr("Curves from po&wer-on"));
    m_fromPowerOn->setIconText(tr("From power-on"));
    m_fromPowerOn->setToolTip(withKeys(tr("Curves from the moment the supply is switched on"), tr("Ctrl+1")));
    m_fromPowerOn->setShortcut(QKeySequence(tr("Ctrl+1")));
    m_fromPowerOn->setWhatsThis(
        tr("The run begins when the supply is switched on, with each capacitor at its initial "
           "voltage. It shows the first flash, which is usually longer than the others."));
    m_settled = menu->addAction(tr("Curves when &settled"));
    m_settled->setIconText(tr("When settled"));
    m_settled->setToolTip(
        withKeys(tr("Curves of the settled state, where every flash is like the last"), tr("Ctrl+2")));
    m_settled->setShortcut(QKeySequence(tr("Ctrl+2")));
    m_settled->setWhatsThis(
        tr("The run begins where each cycle is like the one before: what the blinker does in the "
           "long run. That state is solved for, however slow the circuit gets there."));
    for (QAction* action : {m_fromPowerOn, m_settled}) {
        action->setCheckable(true);
        begin->addAction(action);
    }
    connect(begin, &QActionGroup::triggered, this, [this](const QAction* chosen) {
        circuit::RunSettings run = m_document.circuit().run;
        run.begin = chosen == m_settled ? circuit::Begin::settled : circuit::Begin::powerOn;
        setRun(run, 0);
    });
    menu->addSeparator();

    menu->addAction(m_projector->action());
    addLooksChoice(menu);
    addTextSizeChoice(menu);
    addSymbolChoices(menu);
    addLanguageChoice(menu);
    menu->addSeparator();
    add(menu, tr("&Next panel"), QKeySequence(tr("F6")),
        tr("Takes the focus on: Hook-up, Curves, Readings, Values, Findings, and round again."), this,
        [this] { goToPane(1); });
    add(menu, tr("Pre&vious panel"), QKeySequence(tr("Shift+F6")),
        tr("Takes the focus back: Findings, Values, Readings, Curves, Hook-up, and round again."), this,
        [this] { goToPane(-1); });
}

void MainWindow::zoomBy(double factor) {
    if (m_hookup->hasFocus())
        m_hookup->zoomBy(factor);
    else
        m_curves->zoomBy(factor);
}

void MainWindow::makeHelpMenu() {
    QMenu* menu = menuBar()->addMenu(tr("&Help"));
    m_help->addTo(menu);
    menu->addSeparator();
    (new WhatIsThis(this))->addTo(menu);
}

void MainWindow::makeToolBar() {
    QToolBar* bar = addToolBar(tr("Tools"));
    bar->setObjectName(QStringLiteral("tools"));
    bar->setMovable(false);
    bar->setFloatable(false);
    bar->setContextMenuPolicy(Qt::PreventContextMenu);
    widgets::sizedByText(*bar, [this, bar] {
        const int side = widgets::withText(*bar, iconSide);
        bar->setIconSize({side, side});
        for (QToolButton* button : m_steadyButtons) {
            button->setIconSize(bar->iconSize());
            button->setFixedSize(button->sizeHint());
        }
    });
    m_projector->alsoAway(*bar);
    bar->addAction(m_openAction);
    bar->addAction(m_save);
    bar->addSeparator();
    // Their texts name the last step, and so change with every one. An action of the bar itself would have
    // the window laid out anew each time; a button of a size of its own does not.
    for (QAction* action : {m_undo, m_redo}) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setAutoRaise(true);
        button->setIconSize(bar->iconSize());
        bar->addWidget(button);
        m_steadyButtons.push_back(button);
    }
    bar->addSeparator();
    bar->addAction(m_fitCurves);
    bar->addAction(m_export);
    bar->addSeparator();

    for (QAction* action : {m_openAction, m_save, m_fitCurves, m_export})
        action->setToolTip(withKeys(action->toolTip(), action->shortcut()));

    const auto label = [bar](const QString& text) {
        auto* made = new QLabel(text);
        made->setContentsMargins(8, 0, 4, 0);
        bar->addWidget(made);
        return made;
    };
    label(tr("Curves"));
    bar->addAction(m_fromPowerOn);
    bar->addAction(m_settled);
    QLabel* flashes = label(tr("F&lashes"));
    m_flashes = new QSpinBox;
    m_flashes->setObjectName(QStringLiteral("flashes"));
    m_flashes->setAccessibleName(tr("Number of flashes shown"));
    m_flashes->setToolTip(tr("Number of flashes shown"));
    m_flashes->setWhatsThis(
        tr("How many flashes the curves show, on from their beginning. More of them take longer "
           "to simulate."));
    m_flashes->setRange(1, mostFlashes);
    m_flashes->setKeyboardTracking(false);
    flashes->setBuddy(m_flashes);
    bar->addWidget(m_flashes);

    // A tool bar keeps the keyboard out of its buttons.
    for (QToolButton* button : bar->findChildren<QToolButton*>()) button->setFocusPolicy(Qt::TabFocus);

    connect(m_flashes, &QSpinBox::valueChanged, this,
            [this, gesture = 0, since = QElapsedTimer()](int wanted) mutable {
                circuit::RunSettings run = m_document.circuit().run;
                if (run.flashes == wanted) return;
                if (!since.isValid() || since.elapsed() > gesturePause_ms) gesture = m_document.newGesture();
                since.start();
                run.flashes = wanted;
                setRun(run, gesture);
            });
}

void MainWindow::setRun(const circuit::RunSettings& run, int gesture) {
    if (run == m_document.circuit().run) return;
    if (Result<void> done = m_document.apply({circuit::edits::SetRun{run}}, gesture); !done) {
        showRun();
        say(QString::fromStdString(done.fault().message()));
    }
}

void MainWindow::showRun() {
    const circuit::RunSettings& run = m_document.circuit().run;
    (run.begin == circuit::Begin::settled ? m_settled : m_fromPowerOn)->setChecked(true);
    const QSignalBlocker quiet(m_flashes);
    m_flashes->setValue(run.flashes);
}

void MainWindow::showAvailability() {
    const bool open = !m_document.circuit().parts().empty();
    const auto study = m_live->shown();
    const auto drawn = [](const auto& shown) { return shown && !shown->curves.time_s.empty(); };
    const bool curves = drawn(study) || (m_second->isApart() && drawn(m_second->shown()));
    // An empty circuit can be saved too: a beginning is worth keeping.
    for (QAction* action : {m_fitHookup, m_zoomIn, m_zoomOut, m_fromPowerOn, m_settled})
        action->setEnabled(open);
    for (QAction* action : {m_export, m_copyPicture, m_fitCurves}) action->setEnabled(curves);
    m_copyReadings->setEnabled(study != nullptr);
    m_flashes->setEnabled(open);
    m_values->setVisible(open);
    m_findings->setVisible(study != nullptr); // "No findings" before there is a result would mislead
    m_clearEcho->setEnabled(m_live->hasEcho());
}

void MainWindow::showIcons(const widgets::Theme& theme) {
    m_openAction->setIcon(icon(Icon::open, theme));
    m_save->setIcon(icon(Icon::save, theme));
    m_undo->setIcon(icon(Icon::undo, theme));
    m_redo->setIcon(icon(Icon::redo, theme));
    m_fitCurves->setIcon(icon(Icon::fit, theme));
    m_export->setIcon(icon(Icon::exportCurves, theme));
    for (QToolButton* button : m_steadyButtons) button->setFixedSize(button->sizeHint());
}

} // namespace blinkwright::app
