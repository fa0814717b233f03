#include "app/main_window.h"

#include "app/band_behind.h"
#include "app/help/help_desk.h"
#include "app/help/help_pages.h"
#include "app/hookup_actions.h"
#include "app/hookup_wishes.h"
#include "app/measured_panels.h"
#include "app/pane.h"
#include "app/pins_actions.h"
#include "app/play_actions.h"
#include "app/play_strip.h"
#include "app/projector_view.h"
#include "app/ready_actions.h"
#include "app/recovery.h"
#include "app/rooms/room_actions.h"
#include "app/second_set.h"
#include "app/set_actions.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/hookup/part_palette.h"
#include "widgets/keyboard/focus_outline.h"
#include "widgets/keyboard/tab_order.h"
#include "widgets/pins/pins_view.h"
#include "widgets/readings/readings_view.h"
#include "widgets/text/steady_label.h"
#include "widgets/text/text_sized.h"
#include "widgets/text/texts_while_open.h"
#include "widgets/text/whole_cells.h"
#include "widgets/values/value_panel.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDragEnterEvent>
#include <QFileInfo>
#include <QKeyEvent>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QScreen>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>

namespace blinkwright::app {

namespace {

constexpr QSize firstSize(1280, 800);
constexpr int sayFor_ms = 8000;

QSplitter* splitter(Qt::Orientation orientation, const QString& name, std::initializer_list<QWidget*> parts,
                    const QList<int>& sizes) {
    auto* made = new QSplitter(orientation);
    made->setObjectName(name);
    made->setChildrenCollapsible(false);
    made->setHandleWidth(6);
    for (QWidget* part : parts) made->addWidget(part);
    made->setSizes(sizes);
    for (int k = 0; k < made->count(); ++k) made->setStretchFactor(k, sizes[k]);
    return made;
}

/// The one local file that is being dragged, or nothing.
QString droppedFile(const QMimeData* data) {
    const QList<QUrl> urls = data->urls();
    return urls.size() == 1 && urls.front().isLocalFile() ? urls.front().toLocalFile() : QString();
}

bool isTable(const QString& file) {
    static const QStringList endings{"csv", "txt", "tsv", "dat"};
    return endings.contains(QFileInfo(file).suffix().toLower());
}

} // namespace

MainWindow::MainWindow(Settings& settings, QWidget* parent) : QMainWindow(parent), m_settings(settings) {
    m_appearance.setTextSize(m_settings.textSize()); // before anything takes its measures
    m_appearance.choose(m_settings.looks());
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    QApplication::setAttribute(Qt::AA_DontShowIconsInMenus); // few entries have one: a ragged column
    makeLayout();
    new widgets::WholeCells(this);
    new widgets::TextsWhileOpen(this);
    const LivePanels::Panels panels{*m_hookup, *m_values, *m_curves, *m_readings, *m_findings};
    m_live = new LivePanels(m_document, panels, this);
    m_second = new SecondSet(m_document, *m_live, panels, this);
    m_setActions = new SetActions(*this, m_document, *m_second, *m_values, m_settings,
                                  {[this](const QString& title, const Fault& fault) { tell(title, fault); },
                                   [this](const QString& sentence) { say(sentence); }});
    m_band = new BandBehind(m_document, *m_live, *m_curves, m_settings, this);
    m_measured = new MeasuredPanels(m_document, *m_live, *m_curves, *m_readings, m_settings, this);
    m_wishes = new HookupWishes(m_document, *m_hookup, this);
    m_hookupActions = new HookupActions(*this, m_document, *m_hookup, *m_wishes);
    m_play = new PlayActions({*this, *m_live, *m_curves, *m_hookup, *m_playStrip}, m_settings);
    m_pinsActions = new PinsActions(
        {m_document, *m_live, *m_hookup, *m_pins, *m_values, *m_curves, *m_hookupFaces, *m_hookupActions},
        *m_play, this);
    m_hookupPane->setCorner(m_pinsActions->makeSwitch());
    m_readyActions =
        new ReadyActions(*this, m_document, m_settings, m_appearance,
                         {[this] { return mayLeave(); }, [this](const QString& sentence) { say(sentence); },
                          [this](const QString& title, const Fault& fault) { tell(title, fault); }});
    m_rooms = new RoomActions({*this, m_document, m_settings, m_appearance, [this] { return mayLeave(); },
                               [this](const QString& sentence) { say(sentence); },
                               [this](const QString& title, const Fault& fault) { tell(title, fault); },
                               [this](const QString& place) { m_live->activate(place); },
                               [this](const QString& page) { m_help->show(page); }});
    m_rooms->setImportRecord([this](QWidget* over) -> std::optional<circuit::Measurement> {
        const QString path = askRecordFile(over);
        return path.isEmpty() ? std::nullopt : readRecord(over, path);
    });
    m_recovery = new Recovery(m_document, m_settings.stateFolder(), this);
    connect(m_recovery, &Recovery::failed, this, [this](const Fault& fault) {
        say(tr("Unsaved changes are not kept for a crash: %1").arg(QString::fromStdString(fault.message())));
    });
    m_projector = new ProjectorView({*this,
                                     m_appearance,
                                     m_settings,
                                     *m_hookup,
                                     {m_bottom, m_readingsPane, m_palette},
                                     {m_rows, m_top, m_right, m_bottom},
                                     m_top});
    m_help = new help::HelpDesk(*this, m_settings, m_appearance);
    new widgets::TabOrder(this);
    new widgets::FocusOutline(this);
    makeFileMenu();
    makeEditMenu();
    menuBar()->addMenu(m_hookupActions->partMenu());
    menuBar()->addMenu(m_setActions->menu());
    makeViewMenu();
    menuBar()->addMenu(m_play->menu());
    menuBar()->addMenu(m_rooms->menu());
    makeHelpMenu();
    makeToolBar();
    makeStatusBar();

    connect(m_projector, &ProjectorView::said, this, &MainWindow::say);
    connect(m_live, &LivePanels::refused, this, &MainWindow::say);
    connect(m_band, &BandBehind::said, this, &MainWindow::say);
    connect(m_play, &PlayActions::said, this, &MainWindow::say);
    connect(m_pinsActions, &PinsActions::refused, this, &MainWindow::say);
    connect(m_wishes, &HookupWishes::said, this, &MainWindow::say);
    connect(m_palette, &widgets::PartPalette::chosen, m_hookup, &widgets::HookupView::placePart);
    connect(m_live, &LivePanels::studyShown, this, &MainWindow::showAvailability);
    connect(m_live, &LivePanels::echoChanged, this, &MainWindow::showAvailability);
    connect(m_second, &SecondSet::changed, this, &MainWindow::showAvailability);
    connect(&m_document, &Document::changed, this, &MainWindow::showRun);
    connect(&m_document, &Document::changed, this, &MainWindow::showTitle);
    connect(&m_document, &Document::changed, this, &MainWindow::showAvailability);
    connect(&m_document, &Document::pathChanged, this, &MainWindow::showTitle);
    connect(&m_document, &Document::modifiedChanged, this, &MainWindow::setWindowModified);
    connect(&m_appearance, &Appearance::themeChanged, this, &MainWindow::showTheme);
    connect(m_curves, &widgets::CurvesView::painted, this, [this] {
        if (std::exchange(m_painted, true)) return;
        emit firstCurvePainted();
    });

    m_curves->setMessage(tr("Open a circuit file, or drop one here."));
    showTheme(m_appearance.theme());
    showTitle();
    showRun();
    showAvailability();
    restoreState();
}

MainWindow::~MainWindow() {
    // A cell that is still being edited when the window goes must find nobody who would change the document.
    delete m_recovery; // in order: nothing is left behind
    delete m_pinsActions;
    delete m_play;
    delete m_band;
    delete m_rooms; // before the document that rooms ask about
}

void MainWindow::makeLayout() {
    m_hookup = new widgets::HookupView;
    m_values = new widgets::ValuePanel;
    m_curves = new widgets::CurvesView;
    m_readings = new widgets::ReadingsView;
    m_findings = new widgets::FindingsView;
    auto* board = new QWidget;
    auto* boardColumn = new QVBoxLayout(board);
    boardColumn->setContentsMargins(0, 0, 0, 0);
    boardColumn->setSpacing(0);
    m_palette = new widgets::PartPalette;
    boardColumn->addWidget(m_palette);
    boardColumn->addWidget(m_hookup, 1);
    board->setFocusProxy(m_hookup);
    m_pins = new widgets::PinsView;
    m_hookupFaces = new QStackedWidget;
    m_hookupFaces->addWidget(board);
    m_hookupFaces->addWidget(m_pins);
    auto* hookup = m_hookupPane = new Pane(tr("Hook-up"), m_hookupFaces);
    m_playStrip = new PlayStrip;
    auto* played = new QWidget;
    auto* under = new QVBoxLayout(played);
    under->setContentsMargins(0, 0, 0, 0);
    under->setSpacing(0);
    under->addWidget(m_curves, 1);
    under->addWidget(m_playStrip);
    auto* curves = new Pane(tr("Curves"), played);
    auto* readings = m_readingsPane = new Pane(tr("Readings"), m_readings);
    auto* values = new Pane(tr("Values"), m_values);
    auto* findings = new Pane(tr("Findings"), m_findings);
    m_panes = {hookup, curves, readings, values, findings};
    const std::pair<QWidget*, const char*> pages[] = {
        {hookup, "hookup"}, {m_pins, "pins"},       {curves, "curves"},    {m_playStrip, "play"},
        {values, "values"}, {readings, "readings"}, {findings, "findings"}};
    for (const auto& [widget, page] : pages) help::setPage(widget, QLatin1String(page));

    m_right = splitter(Qt::Vertical, QStringLiteral("right"), {curves, readings}, {346, 189});
    m_top = splitter(Qt::Horizontal, QStringLiteral("top"), {hookup, m_right}, {560, 720});
    m_bottom = splitter(Qt::Horizontal, QStringLiteral("bottom"), {values, findings}, {850, 430});
    m_rows = splitter(Qt::Vertical, QStringLiteral("rows"), {m_top, m_bottom}, {541, 178});

    auto* ground = new QWidget;
    auto* column = new QVBoxLayout(ground);
    constexpr int margin = 6;
    column->setContentsMargins(margin, 0, margin, 0);
    column->addWidget(m_rows);
    setCentralWidget(ground);
    ground->setFocusPolicy(Qt::ClickFocus);
    m_hookup->setFocus(); // so that the keyboard works at once
}

void MainWindow::makeStatusBar() {
    auto* report = new widgets::SteadyLabel;
    m_report = report->label();
    m_report->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    m_report->setObjectName(QStringLiteral("report"));
    m_report->setAccessibleName(tr("What the last run did"));
    statusBar()->addPermanentWidget(report);
    connect(m_live, &LivePanels::reported, report, &widgets::SteadyLabel::setText);
}

void MainWindow::say(const QString& sentence) {
    statusBar()->showMessage(sentence, sayFor_ms);
}

void MainWindow::showTheme(const widgets::Theme& theme) {
    m_live->setTheme(theme);
    m_pins->setTheme(theme);
    m_play->setTheme(theme);
    m_palette->setTheme(theme);
    for (Pane* pane : m_panes) pane->setTheme(theme);
    QPalette quiet = m_report->palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    m_report->setPalette(quiet);
    showIcons(theme);
}

void MainWindow::offerTour() {
    m_help->offerTour();
}

void MainWindow::showTitle() {
    const QString title = QString::fromStdString(m_document.circuit().title);
    const QString file = QFileInfo(m_document.path()).fileName();
    QString shown = title.isEmpty() ? file : tr("%1 (%2)").arg(title, file);
    if (m_document.path().isEmpty()) shown = title.isEmpty() ? tr("New circuit") : title;
    setWindowTitle(
        tr("%1[*] – Blinkwright").arg(shown.replace(QStringLiteral("[*]"), QStringLiteral("[*][*]"))));
    setWindowFilePath({});
}

void MainWindow::restoreState() {
    // A state from a screen of quite another size is refused; either way all of the window must be in reach.
    if (!restoreGeometry(m_settings.windowState(QStringLiteral("geometry"))))
        resize(widgets::withText(*this, firstSize.boundedTo(screen()->availableSize() - widgets::frameRoom)));
    for (QSplitter* part : {m_rows, m_top, m_right, m_bottom})
        part->restoreState(m_settings.windowState(part->objectName()));
    m_projector->restore();
}

void MainWindow::keepState() {
    m_settings.setWindowState(QStringLiteral("geometry"), m_projector->geometry());
    for (const QSplitter* part : {m_rows, m_top, m_right, m_bottom})
        m_settings.setWindowState(part->objectName(), m_projector->stateOf(part));
    m_settings.sync();
}

void MainWindow::goToPane(int step) {
    const int count = static_cast<int>(m_panes.size());
    int at = step > 0 ? -1 : count;
    for (int k = 0; k < count; ++k)
        if (m_panes[static_cast<std::size_t>(k)]->hasFocusWithin()) at = k;
    // A panel with nothing in it, such as Findings without a finding, is passed by.
    for (int tries = 0; tries < count; ++tries) {
        at = (at + step + count) % count;
        if (m_panes[static_cast<std::size_t>(at)]->takeFocus()) return;
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!mayLeave()) return event->ignore();
    keepState();
    event->accept();
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    // Only when no panel wants the key: a field takes its own entry back with it.
    if (event->key() == Qt::Key_Escape && m_live->hasEcho()) return m_live->clearEcho();
    if (event->key() == Qt::Key_Escape && m_projector->isOn()) return m_projector->set(false);
    QMainWindow::keyPressEvent(event);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedFile(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString file = droppedFile(event->mimeData());
    if (file.isEmpty()) return;
    event->acceptProposedAction();
    if (!isTable(file)) return openInstead(file);
    // Not from within the drop: whoever drags waits for its end.
    QTimer::singleShot(0, this, [this, file] { importRecord(file); });
}

} // namespace blinkwright::app
