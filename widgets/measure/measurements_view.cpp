#include "widgets/measure/measurements_view.h"

#include "widgets/text/text_sized.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr int titleWidth = 180, textWidth = 560;

QString emptyText() {
    return MeasurementsView::tr(
        "<p>Nothing has been measured yet. Three kinds of measurement can be entered:</p>"
        "<p><b>Stopwatch</b>: how long a number of flashes takes. Or tap along with the flashes; the taps "
        "make "
        "the count.</p>"
        "<p><b>Meter reading</b>: supply voltage, output while high or low, current of a lamp, or a part by "
        "itself on the meter.</p>"
        "<p><b>Record</b>: the output or the timing capacitor over time, from an instrument's file.</p>"
        "<p>Each has an uncertainty. What is measured then stands in the Readings beside Set A, records lie "
        "over "
        "the Curves, and <i>Why it differs</i> ends at what was measured.</p>");
}

} // namespace

MeasurementsView::MeasurementsView(QWidget* parent)
    : QWidget(parent), m_list(new QTableView), m_table(new MeasuredTable), m_ground(new QWidget),
      m_empty(new QLabel(emptyText())), m_heading(new QLabel(tr("All together, beside the simulation"))),
      m_pages(new QStackedWidget) {
    m_list->setObjectName(QStringLiteral("measurements"));
    m_list->setAccessibleName(tr("Measurements"));
    m_list->setWhatsThis(
        tr("All measurements of the circuit. The space bar takes one into use or leaves it out, F2 edits a "
           "cell, Enter opens its form, Delete takes it away."));
    m_list->setModel(&m_model);
    m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_list->setTabKeyNavigation(false);
    m_list->setShowGrid(false);
    m_list->setWordWrap(false);
    m_list->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked);
    m_list->verticalHeader()->hide();
    rowsByText(*m_list);
    m_list->verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    QHeaderView* head = m_list->horizontalHeader();
    head->setHighlightSections(false);
    head->setSectionResizeMode(QHeaderView::ResizeToContents);
    head->setSectionResizeMode(MeasurementModel::title, QHeaderView::Interactive);
    head->setSectionResizeMode(MeasurementModel::what, QHeaderView::Stretch);
    sizedByText(*m_list,
                [this] { m_list->setColumnWidth(MeasurementModel::title, withText(*m_list, titleWidth)); });
    m_list->installEventFilter(this);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &MeasurementsView::chosenChanged);
    connect(&m_model, &MeasurementModel::modelReset, this, &MeasurementsView::chosenChanged);
    connect(m_list, &QTableView::doubleClicked, this, [this](const QModelIndex& at) {
        if (!(m_model.flags(at) & (Qt::ItemIsEditable | Qt::ItemIsUserCheckable)))
            emit changeWished(at.row());
    });

    m_empty->setObjectName(QStringLiteral("empty"));
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    sizedByText(*m_empty, [this] { m_empty->setMaximumWidth(withText(*m_empty, textWidth)); });
    m_empty->setTextFormat(Qt::RichText);
    m_ground->setAutoFillBackground(true);
    auto* beside = new QHBoxLayout(m_ground);
    beside->setContentsMargins(24, 24, 24, 24);
    beside->addStretch(1);
    beside->addWidget(m_empty, 100);
    beside->addStretch(1);
    QFont bold = m_heading->font();
    bold.setBold(true);
    m_heading->setFont(bold);

    auto* lower = new QWidget;
    auto* column = new QVBoxLayout(lower);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_heading);
    column->addWidget(m_table, 1);
    auto* both = new QSplitter(Qt::Vertical);
    both->setChildrenCollapsible(false);
    both->addWidget(m_list);
    both->addWidget(lower);
    both->setSizes({200, 260});
    m_pages->addWidget(m_ground);
    m_pages->addWidget(both);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(m_pages);
}

MeasurementsView::~MeasurementsView() {
    m_list->setModel(nullptr); // the model goes before its view does
}

void MeasurementsView::setCircuit(const circuit::Circuit& circuit) {
    const int row = chosen(), column = std::max(m_list->currentIndex().column(), 0);
    const circuit::Measurements before = m_model.circuit().measurements;
    m_model.setCircuit(circuit);
    m_pages->setCurrentIndex(isEmpty() ? 0 : 1);
    const circuit::Measurements& now = circuit.measurements;
    if (now.size() == before.size() || now.empty()) return;
    // The one that is new; after a deletion the one that follows.
    const auto fresh = std::ranges::find_if(
        now, [&](const auto& one) { return std::ranges::find(before, one) == before.end(); });
    const auto at = fresh != now.end() ? static_cast<int>(fresh - now.begin())
                                       : std::clamp(row, 0, static_cast<int>(now.size()) - 1);
    m_list->setCurrentIndex(m_model.index(at, column));
}

void MeasurementsView::setTheme(const Theme& theme) {
    m_model.setTheme(theme);
    m_table->setTheme(theme);
    QPalette palette = theme.palette();
    palette.setColor(QPalette::Window, theme.paper);
    m_ground->setPalette(palette);
    // The style draws the frames of check boxes from the window's colour, which the dark paper swallows.
    palette.setColor(QPalette::Window, theme.quietInk);
    m_list->setPalette(palette);
    for (QWidget* part : std::initializer_list<QWidget*>{
             m_list->horizontalHeader(), m_list->verticalScrollBar(), m_list->horizontalScrollBar()})
        part->setPalette(theme.palette());
}

int MeasurementsView::chosen() const {
    const QModelIndex at = m_list->currentIndex();
    return at.isValid() ? at.row() : -1;
}

void MeasurementsView::choose(int row) {
    m_list->setCurrentIndex(m_model.index(row, MeasurementModel::title));
}

void MeasurementsView::removeChosen() {
    std::vector<int> rows;
    for (const QModelIndex& at : m_list->selectionModel()->selectedRows()) rows.push_back(at.row());
    if (rows.empty() && chosen() >= 0) rows.push_back(chosen());
    m_model.remove(rows);
}

void MeasurementsView::duplicateChosen() {
    m_model.duplicate(chosen());
}

void MeasurementsView::changeChosen() {
    if (chosen() >= 0) emit changeWished(chosen());
}

bool MeasurementsView::eventFilter(QObject* watched, QEvent* event) {
    if (watched != m_list || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    switch (key->key()) {
    case Qt::Key_Delete:
        removeChosen();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        changeChosen();
        return true;
    case Qt::Key_Space: { // from any column of the row
        if (chosen() < 0) return true;
        const bool used = m_model.at(chosen()).used;
        const QModelIndex at = m_model.index(chosen(), MeasurementModel::used);
        if (m_model.flags(at) & Qt::ItemIsUserCheckable)
            m_model.setData(at, used ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
        return true;
    }
    case Qt::Key_D:
        if (!(key->modifiers() & Qt::ControlModifier)) return false;
        duplicateChosen();
        return true;
    default:
        return false;
    }
}

QString MeasurementsView::asText() const {
    return m_model.asText() + u'\n' + m_table->asText();
}

} // namespace blinkwright::widgets
