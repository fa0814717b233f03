#include "app/rooms/trend_room.h"

#include "app/exporter.h"
#include "app/rooms/plot_file.h"
#include "app/save_question.h"
#include "app/whole_file.h"
#include "core/circuit/set_edits.h"
#include "core/devices/board.h"
#include "core/io/study_reports.h"
#include "core/study/supply_range.h"
#include "widgets/rooms/quantity_field.h"
#include "widgets/rooms/trend_words.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>

namespace blinkwright::app {

using circuit::PartSet;
using widgets::TrendRange;
using widgets::TrendValue;

namespace {

const char valueAnswer[] = "value", figureAnswer[] = "figure"; // beside the ranges, which have a dot in them

} // namespace

TrendRoom::TrendRoom(const House& house)
    : Room(house, tr("Trend"), QStringLiteral("trend"), QSize(860, 560)), m_valueBox(new QComboBox),
      m_figureBox(new QComboBox), m_stepsBox(new QComboBox), m_from(new widgets::QuantityField),
      m_to(new widgets::QuantityField), m_plot(new widgets::TrendPlot(widgets::RoomPlot::Use::screen)) {
    makeControls();
    frame().setBody(m_plot);
    connect(m_plot, &widgets::TrendPlot::began, this,
            [this] { m_gesture = this->house().document.newGesture(); });
    connect(m_plot, &widgets::TrendPlot::ended, this, [this] {
        m_gesture = 0;
        say();
    });
    connect(m_plot, &widgets::TrendPlot::wished, this, &TrendRoom::wish);
    connect(m_plot, &widgets::TrendPlot::heldChanged, &frame(), &widgets::RoomFrame::chooseSet);
    connect(&frame(), &widgets::RoomFrame::setChosen, this, [this] { m_plot->setHeld(set()); });
    connect(&house.document, &Document::changed, this, &TrendRoom::followPresent);
    QPushButton* copy = frame().addButton(tr("Co&py data"));
    copy->setWhatsThis(tr("Puts the points of the trend on the clipboard as a table, one line a value."));
    connect(copy, &QPushButton::clicked, this, [this] {
        QApplication::clipboard()->setText(widgets::trendTable(m_plot->picture()));
        this->house().say(tr("The points of the curves are on the clipboard."));
    });
    QPushButton* write = frame().addButton(tr("E&xport…"));
    write->setWhatsThis(
        tr("Writes the trend as picture (.png), drawing (.svg), page (.pdf) or table (.csv)."));
    connect(write, &QPushButton::clicked, this, [this] {
        askFile(tr("Export the trend"), QStringLiteral("trend"),
                {{tr("Picture"), QStringLiteral("png")},
                 {tr("Drawing"), QStringLiteral("svg")},
                 {tr("Page"), QStringLiteral("pdf")},
                 {tr("Table"), QStringLiteral("csv")}},
                [this](const QString& path) { return this->write(path); });
    });
    ready();
}

TrendRoom::~TrendRoom() {
    m_plot->disconnect(this); // the frame, and the plot in it, go after this
}

void TrendRoom::makeControls() {
    const QVariantMap known = remembered();
    if (known.contains(QLatin1String(figureAnswer)))
        m_wantedFigure = known.value(QLatin1String(figureAnswer)).toString().toStdString();
    m_valueBox->setObjectName(QStringLiteral("value"));
    m_valueBox->setWhatsThis(
        tr("Which value of the circuit runs along the axis: a resistance, a capacitance, a setting or a "
           "supply voltage. All others stay as they are."));
    m_valueBox->setMaxVisibleItems(20);
    m_valueBox->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_figureBox->setObjectName(QStringLiteral("figure"));
    m_figureBox->setWhatsThis(tr("Which figure of the settled board is drawn over the value."));
    m_figureBox->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_stepsBox->setObjectName(QStringLiteral("steps"));
    m_stepsBox->addItems({tr("in equal ratios"), tr("in even steps")});
    m_stepsBox->setAccessibleName(tr("Steps"));
    m_stepsBox->setWhatsThis(
        tr("Equal ratios suit resistances and capacitances over decades, even steps suit voltages "
           "and settings."));
    m_stepsBox->setToolTip(tr("How the values lie along the axis: in equal ratios (logarithmic) or evenly"));
    m_from->setObjectName(QStringLiteral("from"));
    m_from->setWhatsThis(
        tr("Lower end of the axis, with its unit, such as 4k7. Enter draws the trend anew."));
    m_to->setObjectName(QStringLiteral("to"));
    m_to->setWhatsThis(tr("Upper end of the axis, with its unit, such as 470k. Enter draws the trend anew."));
    auto* usual = new QPushButton(tr("&Usual range"));
    usual->setObjectName(QStringLiteral("usual"));
    usual->setAutoDefault(false);
    usual->setWhatsThis(tr("Takes the range that is usual for this value."));
    usual->setToolTip(tr("Two decades around the present value; for a supply, the fall of a battery"));
    frame().addControl(tr("&Value:"), m_valueBox);
    frame().addControl(tr("&Show:"), m_figureBox);
    frame().addControl(tr("&From:"), m_from, 1);
    frame().addControl(tr("&to:"), m_to, 1);
    frame().addControl({}, m_stepsBox, 1);
    frame().addControl({}, usual, 1);
    connect(m_valueBox, &QComboBox::activated, this, [this] {
        chooseValue();
        askSoon();
    });
    connect(m_figureBox, &QComboBox::activated, this, [this](int index) {
        const auto figure = m_figures[static_cast<std::size_t>(index)].name;
        QVariantMap answers = remembered();
        answers[QLatin1String(figureAnswer)] = figure;
        remember(answers);
        m_wantedFigure = figure.toStdString();
        showPicture();
    });
    connect(m_stepsBox, &QComboBox::activated, this, [this](int index) {
        chooseRange({m_range.from, m_range.to, index == 1});
    });
    connect(usual, &QPushButton::clicked, this, &TrendRoom::chooseUsualRange);
    for (auto* field : {m_from, m_to}) {
        connect(field, &widgets::QuantityField::entered, this,
                [this, field](double value) { enterEnd(value, field == m_from); });
        connect(field, &widgets::QuantityField::refused, this,
                [this](const QString& reason) { answer(reason, true); });
    }
}

const TrendValue* TrendRoom::value() const {
    if (!m_chosen) return nullptr;
    const auto found = std::ranges::find(m_values, *m_chosen, &TrendValue::which);
    return found == m_values.end() ? nullptr : &*found;
}

QString TrendRoom::valueKey() const {
    const TrendValue* chosen = value();
    return chosen ? QString::fromStdString(chosen->ref + "." + chosen->which.key) : QString();
}

void TrendRoom::refreshValues() {
    std::vector<TrendValue> values = widgets::trendValues(circuit(), set());
    if (values == m_values && value()) return;
    m_values = std::move(values);
    const QSignalBlocker quiet(m_valueBox);
    m_valueBox->clear();
    for (std::size_t k = 0; k < m_values.size(); ++k) {
        const bool own = m_values[k].which.key.starts_with(circuit::devicePrefix);
        if (own && k > 0 && !m_values[k - 1].which.key.starts_with(circuit::devicePrefix))
            m_valueBox->insertSeparator(m_valueBox->count());
        m_valueBox->addItem(m_values[k].name, static_cast<int>(k));
    }
    if (m_values.empty()) return;
    std::size_t at = 0;
    const QString last = remembered().value(QLatin1String(valueAnswer)).toString();
    for (std::size_t k = m_values.size(); k-- > 0;) {
        const QString key = QString::fromStdString(m_values[k].ref + "." + m_values[k].which.key);
        if (m_chosen ? m_values[k].which == *m_chosen : key == last) at = k;
    }
    m_valueBox->setCurrentIndex(m_valueBox->findData(static_cast<int>(at)));
    if (!value()) chooseValue();
}

void TrendRoom::chooseValue() {
    const std::size_t at = static_cast<std::size_t>(m_valueBox->currentData().toInt());
    m_chosen = m_values[at].which;
    QVariantMap answers = remembered();
    answers[QLatin1String(valueAnswer)] = valueKey();
    remember(answers);
    const QVariantList kept = answers.value(valueKey()).toList();
    const double present = presentOf(circuit(), set(), *m_chosen);
    m_range = widgets::usualRange(m_values[at], present, leastSupply_V());
    if (kept.size() == 3) {
        const TrendRange range{kept[0].toDouble(), kept[1].toDouble(), kept[2].toBool()};
        // Of another circuit's part it may be far from what this one has.
        if (range.from < range.to && range.holds(present) && (range.even || range.from > 0)) m_range = range;
    }
    for (auto* field : {m_from, m_to})
        field->setReader([value = m_values[at]](const QString& text) { return value.read(text); });
    showRange();
}

void TrendRoom::showRange() {
    if (const TrendValue* chosen = value()) {
        m_from->showText(chosen->text(m_range.from));
        m_to->showText(chosen->text(m_range.to));
    }
    m_stepsBox->setCurrentIndex(m_range.even ? 1 : 0);
}

void TrendRoom::chooseRange(const TrendRange& range) {
    const bool backwards = !(range.from < range.to);
    if (backwards || (!range.even && !(range.from > 0))) {
        showRange();
        return answer(backwards ? tr("A range wants its smaller end first, and two different ends.")
                                : tr("Equal ratios want both ends above 0."),
                      true);
    }
    m_range = range;
    showRange();
    QVariantMap answers = remembered();
    answers[valueKey()] = QVariantList{range.from, range.to, range.even};
    remember(answers);
    askSoon();
}

void TrendRoom::enterEnd(double value, bool isFrom) {
    TrendRange range = m_range;
    (isFrom ? range.from : range.to) = value;
    chooseRange(range);
}

void TrendRoom::chooseUsualRange() {
    if (const TrendValue* chosen = value())
        chooseRange(
            widgets::usualRange(*chosen, presentOf(circuit(), set(), chosen->which), leastSupply_V()));
}

double TrendRoom::leastSupply_V() const {
    const auto board = devices::makeBoard(circuit(), set());
    const bool cmos = board && !board.value().timers.empty() && board.value().timers.front().cmos;
    return study::supplyRange(cmos).least_V;
}

std::vector<widgets::TrendMark> TrendRoom::marks() const {
    const TrendValue* chosen = value();
    std::vector<widgets::TrendMark> list;
    if (chosen->isSetting())
        for (const double end : {0.0, 1.0})
            list.push_back({end, tr("end of travel, %1").arg(chosen->text(end)), true});
    if (!chosen->isSupplyVoltage()) return list;
    const auto board = devices::makeBoard(circuit(), set());
    if (!board || board.value().timers.empty()) return list;
    const study::SupplyRange& sure = study::supplyRange(board.value().timers.front().cmos);
    list.push_back({sure.least_V, tr("timer sure from %1").arg(chosen->text(sure.least_V)), true});
    list.push_back({sure.most_V, tr("timer up to %1").arg(chosen->text(sure.most_V)), false});
    for (const devices::Supply& supply : board.value().supplies)
        if (supply.id == chosen->which.part && supply.endVoltage && *supply.endVoltage != sure.least_V)
            list.push_back(
                {*supply.endVoltage, tr("battery empty, %1").arg(chosen->text(*supply.endVoltage)), true});
    return list;
}

void TrendRoom::ask() {
    refreshValues();
    if (!value()) {
        task().cancel();
        clear();
        return answer(tr("There is no number here that could move."), true);
    }
    TrendQuestion question{circuit(), *value(), m_range, {PartSet::A}, {}};
    if (!circuit::setsAgree(circuit())) question.sets.push_back(PartSet::B);
    for (const widgets::TrendMark& mark : marks())
        if (mark.withFigure && m_range.holds(mark.value)) question.marks.push_back(mark.value);
    std::vector<widgets::TrendLine> curves;
    if (m_asked && question.hasCurvesOf(*m_asked)) curves = m_lines;
    task().start([this, question, curves](const std::atomic<bool>& cancel) -> NewestTask::Answer {
        auto found = std::make_shared<TrendAnswer>(answerTrend(question, curves, cancel));
        return [this, question, found] { showAnswer(question, std::move(*found)); };
    });
}

void TrendRoom::showAnswer(const TrendQuestion& question, TrendAnswer found) {
    if (found.fault) {
        clear();
        return answer(QString::fromStdString(found.fault->message()), true);
    }
    m_asked = question;
    m_lines = std::move(found.lines);
    showFigures(m_lines.front().trend->lamps);
    showPicture();
}

void TrendRoom::showFigures(const std::vector<std::string>& lamps) {
    std::vector<widgets::TrendFigure> figures = widgets::trendFigures(lamps);
    const auto same = [](const auto& a, const auto& b) { return a == b && a.name == b.name; };
    if (std::ranges::equal(figures, m_figures, same)) return;
    m_figures = std::move(figures);
    const QSignalBlocker quiet(m_figureBox);
    m_figureBox->clear();
    for (const widgets::TrendFigure& figure : m_figures) m_figureBox->addItem(figure.name);
    if (m_wantedFigure)
        m_figureBox->setCurrentIndex(
            std::max(0, m_figureBox->findText(QString::fromStdString(*m_wantedFigure))));
}

void TrendRoom::showPicture() {
    if (!m_asked || m_lines.empty()) return;
    const auto figure = static_cast<std::size_t>(std::max(0, m_figureBox->currentIndex()));
    widgets::TrendPicture picture{m_asked->value, m_asked->range, m_figures[figure], m_lines, set(), marks()};
    // A drag may have gone on while this was computed.
    for (widgets::TrendLine& line : picture.lines)
        line.present = presentOf(circuit(), line.set, m_asked->value.which);
    m_plot->setPicture(std::move(picture));
    say();
}

void TrendRoom::followPresent() {
    if (!m_asked || !circuit().find(m_asked->value.which.part)) return;
    for (const PartSet set : {PartSet::A, PartSet::B})
        m_plot->setPresent(set, presentOf(circuit(), set, m_asked->value.which));
}

void TrendRoom::say() {
    if (m_plot->picture().lines.empty()) return;
    const QString words = widgets::trendWords(m_plot->picture());
    m_plot->setSummary(words);
    answer(words);
}

void TrendRoom::wish(PartSet set, double value) {
    const circuit::ValueRef& which = m_asked->value.which;
    if (!circuit().find(which.part)) return;
    const circuit::Edit edit = circuit::setValue(circuit(), set, which.part, which.key, value);
    if (Result<void> done = house().document.apply(edit, m_gesture); !done)
        house().say(QString::fromStdString(done.fault().message()));
}

Result<void> TrendRoom::write(const QString& path) const {
    const widgets::TrendPicture& picture = m_plot->picture();
    if (picture.lines.empty()) return notWritten(path, tr("there is nothing to write"));
    if (exportKind(path) == ExportKind::csv) {
        const auto& lines = picture.lines;
        const std::string csv =
            lines.size() > 1 ? io::trendCsv(*lines[0].trend, *lines[1].trend, lines[1].name.toStdString())
                             : io::trendCsv(*lines[0].trend);
        return writeTable(path, csv, house().settings);
    }
    widgets::CurvesPage page = curvesPage(circuit(), PartSet::A);
    if (picture.lines.size() > 1)
        page.values += tr(". Set B: %1").arg(partValues(circuit(), PartSet::B, PartSet::A));
    return writePlot(*m_plot, page, path);
}

void TrendRoom::clear() {
    m_asked.reset();
    m_lines.clear();
    m_values.clear();
    m_chosen.reset();
    m_figures.clear();
    {
        const QSignalBlocker quiet(m_valueBox), quieter(m_figureBox);
        m_valueBox->clear();
        m_figureBox->clear();
    }
    m_plot->clear();
    m_plot->setSummary({});
}

void TrendRoom::showTheme(const widgets::Theme& theme) {
    m_plot->setTheme(theme);
}

} // namespace blinkwright::app
