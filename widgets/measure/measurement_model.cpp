#include "widgets/measure/measurement_model.h"

#include "widgets/text/measured_text.h"
#include "widgets/text/signs.h"

#include <algorithm>

namespace blinkwright::widgets {

using circuit::Measurement;

namespace {

constexpr int typedFigures = 6;

/// As a field shows it for editing: engineering text that reads back.
QString typedText(double value, units::Unit unit) {
    return QString::fromStdString(units::formatQuantity(value, unit, typedFigures));
}

circuit::Measured* numberOf(Measurement& m) {
    if (auto* count = std::get_if<circuit::Count>(&m.what)) return &count->time_s;
    if (auto* reading = std::get_if<circuit::MeterReading>(&m.what)) return &reading->value;
    return nullptr;
}

} // namespace

MeasurementModel::MeasurementModel(QObject* parent)
    : QAbstractTableModel(parent), m_quiet(Theme::of(Theme::Mode::light).quietInk) {
}

void MeasurementModel::setCircuit(const circuit::Circuit& circuit) {
    std::vector<Row> rows = rowsOf(circuit);
    const bool other = rows.size() != m_rows.size();
    if (other) beginResetModel();
    m_circuit = circuit;
    m_rows = std::move(rows);
    if (other) return endResetModel();
    // Names of parts may have changed in any of them.
    if (!m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

std::vector<MeasurementModel::Row> MeasurementModel::rowsOf(const circuit::Circuit& circuit) const {
    std::vector<Row> rows;
    for (const auto& measurement : circuit.measurements) {
        const auto known = std::ranges::find(m_rows, measurement, &Row::of);
        if (known != m_rows.end() && std::holds_alternative<circuit::Record>(measurement->what))
            rows.push_back(*known);
        else
            rows.push_back(
                {measurement, whatText(*measurement, circuit), statedNumber(*measurement, circuit)});
    }
    return rows;
}

const Measurement& MeasurementModel::at(int row) const {
    return *m_circuit.measurements.at(static_cast<std::size_t>(row));
}

void MeasurementModel::setTheme(const Theme& theme) {
    m_quiet = theme.quietInk;
    if (rowCount() > 0)
        emit dataChanged(index(0, 0), index(rowCount() - 1, columns - 1), {Qt::ForegroundRole});
}

void MeasurementModel::add(Measurement measurement) {
    circuit::Measurements list = m_circuit.measurements;
    const QString text = tr("Add measurement “%1”").arg(nameOf(measurement, m_circuit));
    list.push_back(std::make_shared<const Measurement>(std::move(measurement)));
    emit wished(list, text);
}

void MeasurementModel::replace(int row, Measurement measurement) {
    if (row < 0 || row >= rowCount() || measurement == at(row)) return;
    const QString text = tr("Change measurement “%1”").arg(nameOf(measurement, m_circuit));
    wish(row, std::move(measurement), text);
}

void MeasurementModel::wish(int row, Measurement measurement, const QString& text) {
    circuit::Measurements list = m_circuit.measurements;
    list.at(static_cast<std::size_t>(row)) = std::make_shared<const Measurement>(std::move(measurement));
    emit wished(list, text);
}

void MeasurementModel::remove(std::vector<int> rows) {
    std::erase_if(rows, [this](int row) { return row < 0 || row >= rowCount(); });
    if (rows.empty()) return;
    const QString text = rows.size() == 1
                             ? tr("Delete measurement “%1”").arg(nameOf(at(rows.front()), m_circuit))
                             : tr("Delete %1 measurements").arg(rows.size());
    circuit::Measurements left;
    for (int row = 0; row < rowCount(); ++row)
        if (std::ranges::find(rows, row) == rows.end())
            left.push_back(m_circuit.measurements[static_cast<std::size_t>(row)]);
    emit wished(left, text);
}

void MeasurementModel::duplicate(int row) {
    if (row < 0 || row >= rowCount()) return;
    Measurement copy = at(row);
    copy.title = tr("%1 (copy)").arg(nameOf(copy, m_circuit)).toStdString();
    circuit::Measurements list = m_circuit.measurements;
    list.insert(list.begin() + row + 1, std::make_shared<const Measurement>(std::move(copy)));
    emit wished(list, tr("Duplicate measurement “%1”").arg(nameOf(at(row), m_circuit)));
}

int MeasurementModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}
int MeasurementModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columns;
}

QString MeasurementModel::cellText(int at, int column) const {
    const Measurement& m = *row(at).of;
    switch (column) {
    case title:
        return QString::fromStdString(m.title);
    case kind:
        return kindText(m);
    case what:
        return row(at).what;
    default:
        break;
    }
    const auto& number = row(at).number;
    if (column == used) return {};
    if (!number) return noValue;
    const FigureText form = figureTextOf(number->unit);
    return column == value ? form(number->value.value) : uncertaintyText(number->value.uncertainty, form);
}

QVariant MeasurementModel::data(const QModelIndex& index, int role) const {
    const int at = index.row(), column = index.column();
    const Measurement& m = *row(at).of;
    switch (role) {
    case Qt::DisplayRole:
        return cellText(at, column);
    case Qt::EditRole: {
        const auto& number = row(at).number;
        if (column == value && number) return typedText(number->value.value, number->unit);
        if (column == uncertainty && number) return typedText(number->value.uncertainty, number->unit);
        return cellText(at, column);
    }
    case Qt::CheckStateRole:
        return column == used ? QVariant(m.used ? Qt::Checked : Qt::Unchecked) : QVariant();
    case Qt::TextAlignmentRole:
        return QVariant(Qt::AlignVCenter | (column >= value ? Qt::AlignRight : Qt::AlignLeft));
    case Qt::ForegroundRole:
        return m.used ? QVariant() : QVariant(m_quiet);
    case Qt::ToolTipRole:
        if (column == used) return tr("Whether readings, fits and lab sheets take it into account");
        if (std::holds_alternative<circuit::Record>(m.what) && column >= value)
            return tr("The cycle time that the record shows");
        if (column >= title) return cellText(at, column);
        return {};
    case Qt::AccessibleTextRole:
        if (column == used) return m.used ? tr("In use") : tr("Not in use");
        return tr("%1: %2").arg(headerData(column, Qt::Horizontal, Qt::DisplayRole).toString(),
                                cellText(at, column));
    default:
        return {};
    }
}

QVariant MeasurementModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant(Qt::AlignVCenter | (section >= value ? Qt::AlignRight : Qt::AlignLeft));
    if (role == Qt::ToolTipRole && section == uncertainty)
        return tr("Standard uncertainty: one standard deviation");
    if (role != Qt::DisplayRole) return {};
    const QString names[] = {tr("Used"), tr("Title"), tr("Kind"), tr("What"), tr("Value"), tr("Uncertainty")};
    return names[section];
}

Qt::ItemFlags MeasurementModel::flags(const QModelIndex& index) const {
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    const Measurement& m = at(index.row());
    const bool known = !std::holds_alternative<circuit::OtherMeasurement>(m.what);
    if (index.column() == used && known) flags |= Qt::ItemIsUserCheckable;
    if (index.column() == title && known) flags |= Qt::ItemIsEditable;
    const auto& number = row(index.row()).number;
    if (index.column() >= value && number && number->isEditable) flags |= Qt::ItemIsEditable;
    return flags;
}

bool MeasurementModel::setData(const QModelIndex& index, const QVariant& entered, int role) {
    const int row = index.row();
    if (role == Qt::CheckStateRole && index.column() == used)
        return setUsed(row, entered.toInt() == Qt::Checked);
    if (role != Qt::EditRole || entered == data(index, Qt::EditRole)) return false;
    if (index.column() == title) return setTitle(row, entered.toString().trimmed());
    return setNumber(row, index.column(), entered.toString());
}

bool MeasurementModel::setUsed(int row, bool on) {
    Measurement m = at(row);
    if (std::exchange(m.used, on) == on) return false;
    const QString text =
        (on ? tr("Use measurement “%1”") : tr("Leave out measurement “%1”")).arg(nameOf(m, m_circuit));
    wish(row, std::move(m), text);
    return true;
}

bool MeasurementModel::setTitle(int row, const QString& typed) {
    Measurement m = at(row);
    const QString text = tr("Rename measurement “%1”").arg(nameOf(m, m_circuit));
    m.title = typed.toStdString();
    wish(row, std::move(m), text);
    return true;
}

bool MeasurementModel::setNumber(int row, int column, const QString& typed) {
    Measurement m = at(row);
    circuit::Measured* number = numberOf(m);
    if (!number) return false;
    const Result<double> read = units::parseQuantity(typed.toStdString(), statedNumber(m, m_circuit)->unit);
    if (!read) {
        emit refused(QString::fromStdString(read.fault().message()));
        return false;
    }
    (column == value ? number->value : number->uncertainty) = read.value();
    if (Result<void> can = m_circuit.canMeasure(m); !can) {
        emit refused(tr("The %1 %2.")
                         .arg(column == value ? tr("value") : tr("uncertainty"),
                              QString::fromStdString(can.fault().text)));
        return false;
    }
    const QString text =
        tr("Set %1 to %2")
            .arg(nameOf(m, m_circuit), measuredText(*number, figureTextOf(statedNumber(m, m_circuit)->unit)));
    wish(row, std::move(m), text);
    return true;
}

QString MeasurementModel::asText() const {
    QString text;
    for (int column = title; column < columns; ++column)
        text += headerData(column, Qt::Horizontal, Qt::DisplayRole).toString() +
                (column + 1 < columns ? u'\t' : u'\n');
    for (int row = 0; row < rowCount(); ++row) {
        if (!at(row).used) continue;
        for (int column = title; column < columns; ++column)
            text += cellText(row, column) + (column + 1 < columns ? u'\t' : u'\n');
    }
    return text;
}

} // namespace blinkwright::widgets
