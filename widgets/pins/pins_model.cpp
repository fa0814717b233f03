#include "widgets/pins/pins_model.h"

#include "widgets/text/signs.h"

#include <algorithm>

namespace blinkwright::widgets {

int PinsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int PinsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : pinColumnCount;
}

std::optional<double> PinsModel::voltage(const PinRow& row) const {
    if (!row.net) return std::nullopt;
    const auto found = m_voltages.find(*row.net);
    return found == m_voltages.end() ? std::nullopt : std::optional(found->second);
}

QString PinsModel::text(const PinRow& row, int column) const {
    switch (column) {
    case pinColumn:
        return row.name;
    case partColumn:
        return row.part;
    case roleColumn:
        return row.role;
    case netColumn:
        return row.netName.isEmpty() ? noValue : row.netName;
    default:
        const std::optional<double> volt = voltage(row);
        return volt ? voltText(*volt) : noValue;
    }
}

QString PinsModel::sentence(const PinRow& row) const {
    const QString name = tr("%1, %2, %3").arg(row.name, row.part, row.role);
    const QString place =
        row.netName.isEmpty() ? tr("%1, in no net").arg(name) : tr("%1, net %2").arg(name, row.netName);
    const std::optional<double> volt = voltage(row);
    return volt ? tr("%1, %2").arg(place, voltText(*volt)) : place;
}

QVariant PinsModel::data(const QModelIndex& index, int role) const {
    const PinRow& row = m_rows.at(static_cast<std::size_t>(index.row()));
    switch (role) {
    case Qt::DisplayRole:
        return text(row, index.column());
    case Qt::EditRole:
        return index.column() == netColumn ? row.netName : text(row, index.column());
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
        return sentence(row);
    case Qt::TextAlignmentRole:
        return int((index.column() == voltageColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    case Qt::ForegroundRole:
        return index.column() == partColumn || index.column() == roleColumn ? QVariant(m_theme.quietInk)
                                                                            : QVariant();
    case sortRole:
        if (index.column() == voltageColumn) {
            const std::optional<double> volt = voltage(row);
            return volt ? QVariant(*volt) : QVariant();
        }
        return index.column() == netColumn ? row.netName : text(row, index.column());
    default:
        return {};
    }
}

QVariant PinsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return int((section == voltageColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case pinColumn:
        return tr("Pin");
    case partColumn:
        return tr("Part");
    case roleColumn:
        return tr("Role");
    case netColumn:
        return tr("Net");
    default:
        return tr("Voltage");
    }
}

Qt::ItemFlags PinsModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags plain = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return index.column() == netColumn ? plain | Qt::ItemIsEditable : plain;
}

bool PinsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || index.column() != netColumn) return false;
    emit netWished(m_rows.at(static_cast<std::size_t>(index.row())).pin, value.toString());
    return true;
}

bool PinsModel::setRows(std::vector<PinRow> rows) {
    const bool same = std::ranges::equal(rows, m_rows, {}, &PinRow::pin, &PinRow::pin);
    if (!same) {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
        return true;
    }
    for (std::size_t k = 0; k < rows.size(); ++k) {
        if (rows[k] == m_rows[k]) continue;
        m_rows[k] = std::move(rows[k]);
        const int at = static_cast<int>(k);
        emit dataChanged(index(at, 0), index(at, pinColumnCount - 1));
    }
    return false;
}

void PinsModel::setVoltages(const std::map<circuit::NetId, double>& voltages) {
    if (voltages == m_voltages) return;
    m_voltages = voltages;
    if (!m_rows.empty())
        emit dataChanged(index(0, voltageColumn), index(static_cast<int>(m_rows.size()) - 1, voltageColumn));
}

PinsOrder::PinsOrder(QObject* parent) : QSortFilterProxyModel(parent) {
    // Voltages change many times a second while it plays: rows must not jump under the eye for that.
    setDynamicSortFilter(false);
    setSortRole(PinsModel::sortRole);
}

void PinsOrder::setWords(const QString& text) {
    m_words = text.split(u' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

bool PinsOrder::filterAcceptsRow(int row, const QModelIndex&) const {
    const PinRow& pin =
        static_cast<const PinsModel*>(sourceModel())->rows().at(static_cast<std::size_t>(row));
    return std::ranges::all_of(m_words, [&](const QString& word) {
        return std::ranges::any_of(
            std::initializer_list<const QString*>{&pin.name, &pin.part, &pin.role, &pin.netName},
            [&](const QString* text) { return text->contains(word, Qt::CaseInsensitive); });
    });
}

bool PinsOrder::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    const auto inOrder = [&] { return left.row() < right.row(); };
    if (left.column() == pinColumn) return inOrder();
    const QVariant a = left.data(PinsModel::sortRole), b = right.data(PinsModel::sortRole);
    if (left.column() == voltageColumn) {
        if (!a.isValid() || !b.isValid()) return a.isValid() != b.isValid() ? a.isValid() : inOrder();
        return a.toDouble() != b.toDouble() ? a.toDouble() < b.toDouble() : inOrder();
    }
    // Open pins come last: the nets are what is looked for.
    if (a.toString().isEmpty() != b.toString().isEmpty()) return b.toString().isEmpty();
    const int order = a.toString().localeAwareCompare(b.toString());
    return order != 0 ? order < 0 : inOrder();
}

} // namespace blinkwright::widgets
