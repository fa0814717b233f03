#include "app/rooms/spread_room.h"

#include "app/exporter.h"
#include "app/rooms/plot_file.h"
#include "app/save_question.h"
#include "app/whole_file.h"
#include "core/circuit/reels.h"
#include "core/io/study_reports.h"
#include "widgets/rooms/room_plot.h"
#include "widgets/rooms/spread_view.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QMenu>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>

#include <algorithm>
#include <limits>

namespace blinkwright::app {

namespace {

constexpr int leastBoards = 100, mostBoards = 1'000'000, usualBoards = 10'000, bandBoards = 200;
constexpr int typing_ms = 400; // between two digits of a number
const char boardsAnswer[] = "boards", seedAnswer[] = "seed", drawAnswer[] = "draw";

} // namespace

struct SpreadRoom::Found {
    std::shared_ptr<const study::SpreadOutcome> outcome;
    std::shared_ptr<const study::Band> band;
    std::optional<Fault> fault;
    circuit::Circuit circuit;
    circuit::PartSet set;
};

SpreadRoom::SpreadRoom(const House& house)
    : Room(house, tr("Spread"), QStringLiteral("spread"), QSize(900, 560)), m_figure(new QComboBox),
      m_draw(new QComboBox), m_boards(new QSpinBox), m_seed(new QSpinBox), m_view(new widgets::SpreadView) {
    makeControls();
    makeButtons();
    frame().setBody(m_view);
    connect(m_view, &widgets::SpreadView::reelWished, this, &SpreadRoom::tie);
    ready();
}

SpreadRoom::~SpreadRoom() {
    m_view->disconnect(this);
}

void SpreadRoom::makeControls() {
    const QVariantMap known = remembered();
    m_figure->setObjectName(QStringLiteral("figure"));
    m_figure->setWhatsThis(tr("Which figure of the boards is drawn and tabled, such as the flash rate."));
    m_figure->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_boards->setObjectName(QStringLiteral("boards"));
    m_boards->setWhatsThis(
        tr("How many random boards are simulated. Four times as many make the figures twice as sure."));
    m_boards->setRange(leastBoards, mostBoards);
    m_boards->setStepType(QAbstractSpinBox::AdaptiveDecimalStepType);
    m_boards->setValue(known.value(QLatin1String(boardsAnswer), usualBoards).toInt());
    m_seed->setObjectName(QStringLiteral("seed"));
    m_seed->setWhatsThis(
        tr("Which random boards are drawn: another seed gives others, the same one the same again. What "
           "changes with the seed is chance."));
    m_seed->setRange(1, std::numeric_limits<int>::max());
    m_seed->setValue(known.value(QLatin1String(seedAnswer), 1).toInt());
    m_seed->setToolTip(tr("The same seed gives the same boards"));
    m_draw->setObjectName(QStringLiteral("draw"));
    m_draw->setWhatsThis(
        tr("How the values of parts lie within their tolerances. Evenly is the most careful; normally, "
           "as from a good maker, has most of them near the middle."));
    m_draw->addItem(tr("evenly over the tolerance"), static_cast<int>(Spread::uniform));
    m_draw->addItem(tr("normally, three sigma at the limit"), static_cast<int>(Spread::normal));
    m_draw->addItem(tr("as a triangle"), static_cast<int>(Spread::triangular));
    m_draw->setCurrentIndex(std::clamp(known.value(QLatin1String(drawAnswer), 0).toInt(), 0, 2));
    frame().addControl(tr("&Show:"), m_figure);
    frame().addControl(tr("&Boards:"), m_boards, 1);
    frame().addControl(tr("S&eed:"), m_seed, 1);
    frame().addControl(tr("Va&lues lie:"), m_draw, 1);

    connect(m_figure, &QComboBox::activated, this, [this](int index) {
        m_view->setFigure(static_cast<std::size_t>(index));
        answer(m_view->words());
    });
    auto* typing = new QTimer(this);
    typing->setSingleShot(true);
    typing->setInterval(typing_ms);
    connect(typing, &QTimer::timeout, this, [this] {
        rememberControls();
        askSoon();
    });
    for (QSpinBox* box : {m_boards, m_seed})
        connect(box, &QSpinBox::valueChanged, typing, qOverload<>(&QTimer::start));
    connect(m_draw, &QComboBox::activated, this, [this] {
        rememberControls();
        askSoon();
    });
}

void SpreadRoom::rememberControls() {
    remember({{QLatin1String(boardsAnswer), m_boards->value()},
              {QLatin1String(seedAnswer), m_seed->value()},
              {QLatin1String(drawAnswer), m_draw->currentIndex()}});
}

void SpreadRoom::makeButtons() {
    QPushButton* copy = frame().addButton(tr("Co&py table"));
    copy->setWhatsThis(
        tr("Puts the table of the page in front on the clipboard as text: figures, or parts."));
    connect(copy, &QPushButton::clicked, this, [this] {
        QApplication::clipboard()->setText(m_view->text());
        this->house().say(tr("The table is on the clipboard."));
    });
    QPushButton* button = frame().addButton(tr("E&xport"));
    button->setWhatsThis(
        tr("Writes the picture in front, the figures, or the values and figures of every board."));
    auto* menu = new QMenu(button);
    const auto add = [&](const QString& text, const QString& meaning, const QString& title,
                         const QString& suffix, const std::vector<std::pair<QString, QString>>& kinds,
                         const std::function<Result<void>(const QString&)>& write) {
        QAction* action = menu->addAction(text);
        action->setWhatsThis(meaning);
        connect(action, &QAction::triggered, this, [=, this] { askFile(title, suffix, kinds, write); });
    };
    const std::pair<QString, QString> table{tr("Table"), QStringLiteral("csv")};
    add(tr("&Picture…"),
        tr("Writes the picture in front as dots (PNG), as a drawing (SVG) or as a page (PDF)."),
        tr("Export the picture"), QStringLiteral("spread"),
        {{tr("Picture"), QStringLiteral("png")},
         {tr("Drawing"), QStringLiteral("svg")},
         {tr("Page"), QStringLiteral("pdf")}},
        [this](const QString& path) { return writePicture(path); });
    add(tr("&Figures…"),
        tr("Writes a table (CSV) of every figure: nominal, mean, standard deviation, shares and worst case."),
        tr("Export the figures"), QStringLiteral("spread-figures"), {table},
        [this](const QString& path) { return writeTable(path, Table::figures); });
    add(tr("All &boards…"),
        tr("Writes a table (CSV) with a row for each board: its part values, and its figures."),
        tr("Export all boards"), QStringLiteral("spread-boards"), {table},
        [this](const QString& path) { return writeTable(path, Table::boards); });
    button->setMenu(menu);
}

double SpreadRoom::progress() const {
    if (!m_done || m_asked <= 0) return -1;
    const long done = m_done->load();
    return done >= m_asked ? -1 : static_cast<double>(done) / static_cast<double>(m_asked);
}

void SpreadRoom::ask() {
    study::SpreadRequest request;
    request.boards = m_asked = m_boards->value();
    request.seed = static_cast<std::uint64_t>(m_seed->value());
    request.draw = static_cast<Spread>(m_draw->currentData().toInt());
    const auto done = m_done = std::make_shared<std::atomic<long>>(0);
    task().start([this, request, done, circuit = circuit(),
                  set = set()](const std::atomic<bool>& cancel) mutable -> NewestTask::Answer {
        request.cancel = &cancel;
        request.done = done.get();
        auto found = std::make_shared<Found>(Found{nullptr, nullptr, {}, circuit, set});
        auto outcome = study::spread(circuit, set, request);
        if (!outcome) {
            found->fault = outcome.fault();
            return [this, found] { showAnswer(*found); };
        }
        auto band = study::band(
            circuit, set,
            {.boards = bandBoards, .seed = request.seed, .draw = request.draw, .cancel = &cancel});
        if (outcome.value().cancelled || (band && band.value().cancelled)) return [] {};
        found->outcome = std::make_shared<const study::SpreadOutcome>(std::move(outcome).value());
        if (band) found->band = std::make_shared<const study::Band>(std::move(band).value());
        return [this, found] { showAnswer(*found); };
    });
}

void SpreadRoom::showAnswer(const Found& found) {
    if (found.fault) {
        clear();
        return answer(QString::fromStdString(found.fault->message()), true);
    }
    if (!found.outcome->rate_Hz) {
        clear();
        return answer(QString::fromStdString(found.outcome->reason), true);
    }
    m_view->setOutcome(found.outcome, found.band, found.circuit, found.set);
    showFigures();
    if (found.outcome->sensitivities.empty())
        return answer(
            tr("No part states a tolerance: all boards are alike. Give parts one by F2 on the Hook-up."));
    answer(m_view->words());
}

void SpreadRoom::showFigures() {
    const QSignalBlocker quiet(m_figure);
    const QString chosen = m_figure->currentText();
    m_figure->clear();
    for (const widgets::SpreadFigureView& figure : m_view->figures()) m_figure->addItem(figure.name);
    m_figure->setCurrentIndex(std::max(0, m_figure->findText(chosen)));
    m_view->setFigure(static_cast<std::size_t>(m_figure->currentIndex()));
}

void SpreadRoom::tie(circuit::PartId part, std::optional<circuit::PartId> with) {
    const circuit::Circuit& now = circuit();
    if (!now.find(part) || (with && !now.find(*with))) return;
    const circuit::Edit edit = with ? circuit::onReelWith(now, part, *with) : circuit::offReel(now, part);
    if (Result<void> done = house().document.apply(edit); !done)
        house().say(QString::fromStdString(done.fault().message()));
}

Result<void> SpreadRoom::writeTable(const QString& path, Table table) const {
    const auto outcome = m_view->outcome();
    if (!outcome) return notWritten(path, tr("there is nothing to write"));
    const std::string csv =
        table == Table::boards ? io::spreadBoardsCsv(*outcome) : io::spreadFiguresCsv(*outcome);
    return app::writeTable(path, csv, house().settings);
}

Result<void> SpreadRoom::writePicture(const QString& path) const {
    if (!m_view->outcome()) return notWritten(path, tr("there is nothing to write"));
    return writePlot(m_view->plotInFront(), curvesPage(circuit(), set()), path);
}

void SpreadRoom::clear() {
    m_view->clear();
}

void SpreadRoom::showTheme(const widgets::Theme& theme) {
    m_view->setTheme(theme);
}

} // namespace blinkwright::app
