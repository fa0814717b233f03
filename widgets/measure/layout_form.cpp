#include "widgets/measure/layout_form.h"

#include "core/base/wording.h"
#include "core/units/engineering.h"
#include "widgets/measure/record_preview.h"
#include "widgets/rooms/quantity_field.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QSpinBox>

#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr double timeUnits[] = {1, 1e-3, 1e-6};
constexpr double voltUnits[] = {1, 1e-3};
constexpr int mostLinesAbove = 1000;
constexpr double usualStep_s = 1e-3;
constexpr int fewestLetters = 18, widestColumns = 210;

template <std::size_t n>
int indexOf(const double (&units)[n], double unit) {
    for (std::size_t k = 0; k < n; ++k)
        if (std::abs(units[k] / unit - 1) < 1e-9) return static_cast<int>(k);
    return -1;
}

std::size_t at(int index) {
    return static_cast<std::size_t>(std::max(index, 0));
}

} // namespace

LayoutForm::LayoutForm(QWidget* parent) : QWidget(parent) {
    QStringList separators;
    for (const io::Separator each : io::allSeparators)
        separators << QString::fromStdString(wording::inWords(io::name(each)));
    m_separator = chooser("separator", tr("What stands between two columns"), separators);
    m_mark = chooser("decimal mark", tr("Decimal mark"), {tr("point"), tr("comma")});
    m_names = chooser("names", tr("Lines that name the columns"), {tr("none"), tr("one"), tr("two")});
    m_time = chooser("time", tr("Where the time comes from"), {});
    m_timeUnit = chooser("time unit", tr("Unit of the time"), {tr("s"), tr("ms"), tr("µs")});
    m_above = new QSpinBox;
    m_above->setObjectName(QStringLiteral("lines above"));
    m_above->setAccessibleName(tr("Lines above the table that are passed over"));
    m_above->setRange(0, mostLinesAbove);
    m_above->setKeyboardTracking(false);
    m_step = new QuantityField;
    m_step->setObjectName(QStringLiteral("step"));
    m_step->setAccessibleName(tr("Time from one row to the next"));
    m_step->setReader([](const QString& text) -> Result<double> {
        Result<double> step = units::parseQuantity(text.toStdString(), units::Unit::second);
        if (step && !(step.value() > 0))
            return Fault{"", wording::inWords("the time step must be greater than 0")};
        return step;
    });
    m_above->setWhatsThis(
        tr("How many lines stand before the table, such as notes of the instrument. They are not read."));
    m_step->setWhatsThis(
        tr("Time between two rows, above 0, such as 1 ms: for files that have no column of times."));
    m_separator->setWhatsThis(
        tr("The sign between two numbers of a line. It must not be the decimal mark as well."));
    m_mark->setWhatsThis(tr("Whether numbers are written 4.7 or 4,7."));
    m_names->setWhatsThis(tr("How many lines between notes and numbers name the columns or their units."));
    m_time->setWhatsThis(
        tr("The column that holds the time, or none: rows are then evenly apart by a constant step."));
    m_timeUnit->setWhatsThis(tr("Unit that the times of that column are in."));
    m_unitWord = new QLabel(tr("in"));
    m_stepWord = new QLabel(tr("of"));
    const QString ordinal[] = {tr("first voltage"), tr("second voltage")};
    for (std::size_t k = 0; k < m_voltages.size(); ++k) {
        const std::string name = "voltage " + std::to_string(k + 1);
        QStringList meanings;
        for (const circuit::TraceOf of : circuit::allTracesOf) meanings << traceText(of);
        m_voltages[k] = {
            chooser(name.c_str(), tr("Column of the %1").arg(ordinal[k]), {}),
            chooser((name + " unit").c_str(), tr("Unit of the %1").arg(ordinal[k]), {tr("V"), tr("mV")}),
            chooser((name + " of").c_str(), tr("What the %1 is").arg(ordinal[k]), meanings)};
    }

    for (const Voltage& voltage : m_voltages) {
        voltage.column->setWhatsThis(
            tr("The column that holds this voltage. A record has one or two of them."));
        voltage.unit->setWhatsThis(tr("Unit that the voltages of that column are in."));
        voltage.of->setWhatsThis(
            tr("Where it was measured: at the output, across the timing capacitor, or elsewhere. "
               "What the record says of the blinker hangs on it."));
    }

    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    const auto word = [](const QString& text) { return new QLabel(text); };
    addRow(*grid, 0, tr("&Between columns"), {m_separator, word(tr("decimal mark")), m_mark});
    addRow(*grid, 1, tr("&Lines above it"), {m_above, word(tr("lines of names")), m_names});
    addRow(*grid, 2, tr("&Time"), {m_time, m_unitWord, m_timeUnit, m_stepWord, m_step});
    addRow(*grid, 3, tr("&First voltage"),
           {m_voltages[0].column, word(tr("in")), m_voltages[0].unit, word(tr("is")), m_voltages[0].of});
    addRow(*grid, 4, tr("Sec&ond voltage"),
           {m_voltages[1].column, word(tr("in")), m_voltages[1].unit, word(tr("is")), m_voltages[1].of});
    grid->setColumnStretch(1, 1);

    // Names of columns may be long; the lists open to show them whole.
    for (QComboBox* columns : {m_time, m_voltages[0].column, m_voltages[1].column}) {
        columns->setMinimumContentsLength(fewestLetters);
        sizedByText(*columns, [columns] { columns->setMaximumWidth(withText(*columns, widestColumns)); });
    }
    for (QComboBox* table : {m_separator, m_mark, m_names})
        connect(table, &QComboBox::currentIndexChanged, this, [this] {
            if (m_showing) return;
            take();
            emit tableChanged();
        });
    connect(m_above, &QSpinBox::valueChanged, this, [this] {
        if (m_showing) return;
        take();
        emit tableChanged();
    });
    for (QComboBox* each : {m_time, m_timeUnit, m_voltages[0].column, m_voltages[0].unit,
                            m_voltages[1].column, m_voltages[1].unit})
        connect(each, &QComboBox::currentIndexChanged, this, [this] {
            if (m_showing) return;
            take();
            emit changed();
        });
    for (std::size_t k = 0; k < m_voltages.size(); ++k)
        connect(m_voltages[k].of, &QComboBox::currentIndexChanged, this, [this, k] {
            if (m_showing || k >= m_layout.voltages.size()) return;
            m_layout.voltages[k].of = circuit::allTracesOf[at(m_voltages[k].of->currentIndex())];
            m_layout.voltages[k].named = true;
            emit changed();
        });
    connect(m_step, &QuantityField::entered, this, [this](double step) {
        m_layout.step_s = step;
        showLayout();
        emit changed();
    });
    connect(m_step, &QuantityField::refused, this, &LayoutForm::refused);
}

QComboBox* LayoutForm::chooser(const char* object, const QString& accessible, const QStringList& texts) {
    auto* made = new QComboBox;
    made->setObjectName(QLatin1String(object));
    made->setAccessibleName(accessible);
    made->addItems(texts);
    made->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    return made;
}

void LayoutForm::addRow(QGridLayout& grid, int row, const QString& label,
                        std::initializer_list<QWidget*> parts) {
    auto* words = new QLabel(label);
    words->setBuddy(*parts.begin());
    grid.addWidget(words, row, 0);
    auto* line = new QHBoxLayout;
    for (QWidget* part : parts) line->addWidget(part);
    line->addStretch(1);
    grid.addLayout(line, row, 1);
}

void LayoutForm::setRecordLayout(const io::RecordLayout& layout) {
    m_layout = layout;
    showLayout();
}

void LayoutForm::showLayout() {
    m_showing = true;
    m_separator->setCurrentIndex(static_cast<int>(m_layout.separator));
    m_mark->setCurrentIndex(m_layout.decimalMark == ',' ? 1 : 0);
    m_above->setValue(static_cast<int>(m_layout.preambleLines));
    m_names->setCurrentIndex(static_cast<int>(m_layout.headerLines));
    QStringList columns;
    for (std::size_t c = 0; c < m_layout.columns.size(); ++c) {
        const QString name = QString::fromStdString(m_layout.columns[c]);
        columns << (name.isEmpty() ? tr("column %1").arg(c + 1)
                                   : tr("column %1: %2").arg(c + 1).arg(name.left(24)));
    }
    const auto fill = [](QComboBox* combo, const QStringList& texts, int index) {
        combo->clear();
        combo->addItems(texts);
        combo->setCurrentIndex(std::min(index, combo->count() - 1));
    };
    fill(m_time, columns + QStringList{tr("constant step")},
         m_layout.timeColumn ? static_cast<int>(*m_layout.timeColumn) : static_cast<int>(columns.size()));
    m_timeUnit->setCurrentIndex(indexOf(timeUnits, m_layout.timeUnit_s));
    m_unitWord->setVisible(m_layout.timeColumn.has_value());
    m_timeUnit->setVisible(m_layout.timeColumn.has_value());
    m_stepWord->setVisible(!m_layout.timeColumn);
    m_step->setVisible(!m_layout.timeColumn);
    m_step->showText(m_layout.timeColumn ? QString()
                                         : QString::fromStdString(units::formatQuantity(
                                               m_layout.step_s, units::Unit::second, 6)));
    for (std::size_t k = 0; k < m_voltages.size(); ++k) {
        const bool there = k < m_layout.voltages.size();
        const QStringList none = k > 0 ? QStringList{tr("none")} : QStringList();
        const int index =
            there ? static_cast<int>(m_layout.voltages[k].column) + static_cast<int>(none.size()) : 0;
        fill(m_voltages[k].column, none + columns, index);
        m_voltages[k].unit->setCurrentIndex(there ? indexOf(voltUnits, m_layout.voltages[k].unit_V) : 0);
        m_voltages[k].of->setCurrentIndex(there ? static_cast<int>(m_layout.voltages[k].of) : 0);
        m_voltages[k].unit->setEnabled(there);
        m_voltages[k].of->setEnabled(there);
    }
    m_showing = false;
}

void LayoutForm::take() {
    m_layout.separator = io::allSeparators[at(m_separator->currentIndex())];
    m_layout.decimalMark = m_mark->currentIndex() == 1 ? ',' : '.';
    m_layout.preambleLines = at(m_above->value());
    m_layout.headerLines = at(m_names->currentIndex());
    const std::size_t time = at(m_time->currentIndex());
    m_layout.timeColumn = time < m_layout.columns.size() ? std::optional(time) : std::nullopt;
    if (!m_layout.timeColumn && !(m_layout.step_s > 0)) m_layout.step_s = usualStep_s;
    if (m_timeUnit->currentIndex() >= 0) m_layout.timeUnit_s = timeUnits[at(m_timeUnit->currentIndex())];
    std::vector<io::VoltageColumn> voltages;
    for (std::size_t k = 0; k < m_voltages.size(); ++k) {
        const int index = m_voltages[k].column->currentIndex() - (k > 0 ? 1 : 0);
        if (index < 0) continue;
        io::VoltageColumn voltage;
        if (k < m_layout.voltages.size()) voltage = m_layout.voltages[k];
        // Another column is something else, until its shape says what.
        if (k >= m_layout.voltages.size() || voltage.column != at(index))
            voltage = {at(index), 1, k == 0 ? circuit::TraceOf::output : circuit::TraceOf::capacitor, false};
        else if (m_voltages[k].unit->currentIndex() >= 0)
            voltage.unit_V = voltUnits[at(m_voltages[k].unit->currentIndex())];
        voltages.push_back(voltage);
    }
    m_layout.voltages = std::move(voltages);
    showLayout();
}

} // namespace blinkwright::widgets
