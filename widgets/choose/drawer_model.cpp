#include "widgets/choose/drawer_model.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/words.h"

#include <algorithm>
#include <functional>

namespace blinkwright::widgets {

using study::DrawerColumn;
using study::Stock;

namespace {

constexpr std::size_t mostSteps = 200; // that can be taken back

QString columnText(DrawerColumn column) {
    switch (column) {
    case DrawerColumn::kind:
        return Words::tr("Kind");
    case DrawerColumn::value:
        return Words::tr("Value");
    case DrawerColumn::tolerance:
        return Words::tr("Tolerance");
    case DrawerColumn::rating:
        return Words::tr("Rating");
    case DrawerColumn::quantity:
        return Words::tr("Quantity");
    }
    return {};
}

DrawerColumn columnOf(const QModelIndex& index) {
    return study::drawerColumns[static_cast<std::size_t>(index.column())];
}

} // namespace

DrawerModel::DrawerModel(QObject* parent)
    : QAbstractTableModel(parent), m_fault(Theme::of(Theme::Mode::light).fault) {
}

QString DrawerModel::kindText(Stock::Kind kind) {
    switch (kind) {
    case Stock::Kind::resistor:
        return tr("Resistor");
    case Stock::Kind::capacitor:
        return tr("Capacitor");
    case Stock::Kind::variable:
        return tr("Variable resistor");
    }
    return {};
}

void DrawerModel::setStock(const std::vector<Stock>& stock) {
    m_before.clear();
    m_after.clear();
    Rows rows;
    for (const Stock& one : stock) rows.push_back({one, {}});
    show(std::move(rows));
}

void DrawerModel::addStock(const std::vector<Stock>& stock) {
    Rows rows = m_rows;
    for (const Stock& one : stock) rows.push_back({one, {}});
    change(std::move(rows));
}

std::vector<Stock> DrawerModel::stock() const {
    std::vector<Stock> stock;
    for (const Row& row : m_rows)
        if (row.stock.value > 0) stock.push_back(row.stock);
    return stock;
}

QModelIndex DrawerModel::faultIndex() const {
    for (std::size_t row = 0; row < m_rows.size(); ++row)
        for (std::size_t column = 0; column < m_rows[row].wrong.size(); ++column)
            if (m_rows[row].wrong[column]) return index(static_cast<int>(row), static_cast<int>(column));
    return {};
}

QString DrawerModel::fault() const {
    const QModelIndex at = faultIndex();
    if (!at.isValid()) return {};
    return tr("Row %1, %2: %3")
        .arg(at.row() + 1)
        .arg(inSentence(columnText(columnOf(at))), data(at, Qt::ToolTipRole).toString());
}

int DrawerModel::addRow(Stock::Kind kind) {
    Rows rows = m_rows;
    rows.push_back({Stock{.kind = kind, .value = 0, .tolerance = {}, .rating = {}, .quantity = 1}, {}});
    change(std::move(rows));
    return rowCount() - 1;
}

void DrawerModel::removeRows(std::vector<int> which) {
    if (which.empty()) return;
    std::ranges::sort(which, std::greater());
    Rows rows = m_rows;
    for (const int row : which) rows.erase(rows.begin() + row);
    change(std::move(rows));
}

void DrawerModel::change(Rows rows) {
    m_before.push_back(m_rows);
    if (m_before.size() > mostSteps) m_before.erase(m_before.begin());
    m_after.clear();
    show(std::move(rows));
    emit edited();
}

void DrawerModel::show(Rows rows) {
    if (rows.size() == m_rows.size()) { // the view keeps where it is
        m_rows = std::move(rows);
        if (!m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        return;
    }
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

void DrawerModel::undo() {
    if (!canUndo()) return;
    m_after.push_back(m_rows);
    Rows rows = std::move(m_before.back());
    m_before.pop_back();
    show(std::move(rows));
    emit edited();
}

void DrawerModel::redo() {
    if (!canRedo()) return;
    m_before.push_back(m_rows);
    Rows rows = std::move(m_after.back());
    m_after.pop_back();
    show(std::move(rows));
    emit edited();
}

void DrawerModel::setTheme(const Theme& theme) {
    m_fault = theme.fault;
    if (!m_rows.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

int DrawerModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int DrawerModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(std::size(study::drawerColumns));
}

QVariant DrawerModel::data(const QModelIndex& index, int role) const {
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    const auto& wrong = row.wrong[static_cast<std::size_t>(index.column())];
    const DrawerColumn column = columnOf(index);
    switch (role) {
    case Qt::DisplayRole:
    case Qt::EditRole:
        if (wrong) return wrong->typed;
        if (column == DrawerColumn::kind)
            return role == Qt::EditRole ? QVariant(static_cast<int>(row.stock.kind))
                                        : QVariant(kindText(row.stock.kind));
        return QString::fromStdString(drawerCell(row.stock, column));
    case Qt::ForegroundRole:
        return wrong ? QVariant(m_fault) : QVariant();
    case Qt::ToolTipRole:
        return wrong ? QVariant(wrong->why) : QVariant();
    case Qt::AccessibleDescriptionRole:
        return wrong ? wrong->why : QString();
    case Qt::TextAlignmentRole:
        return column == DrawerColumn::kind ? QVariant() : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    default:
        return {};
    }
}

QVariant DrawerModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::TextAlignmentRole && orientation == Qt::Horizontal)
        return section == 0 ? QVariant(Qt::AlignLeft | Qt::AlignVCenter)
                            : QVariant(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return section + 1;
    return columnText(study::drawerColumns[static_cast<std::size_t>(section)]);
}

Qt::ItemFlags DrawerModel::flags(const QModelIndex& index) const {
    return QAbstractTableModel::flags(index) | Qt::ItemIsEditable;
}

void DrawerModel::type(Row& row, DrawerColumn column, const QString& text) {
    auto& wrong = row.wrong[static_cast<std::size_t>(column)];
    const Result<void> done = setDrawerCell(row.stock, column, text.toStdString());
    if (done) {
        wrong.reset();
        return;
    }
    QString why = QString::fromStdString(done.fault().text);
    wrong = Wrong{text, why.endsWith(u'.') ? why : why + u'.'};
}

bool DrawerModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid()) return false;
    if (value == data(index, Qt::EditRole)) return true; // looked at, not changed
    Rows rows = m_rows;
    Row& row = rows[static_cast<std::size_t>(index.row())];
    const DrawerColumn column = columnOf(index);
    if (column != DrawerColumn::kind) {
        type(row, column, value.toString().trimmed());
    } else {
        row.stock.kind = static_cast<Stock::Kind>(value.toInt());
        // What could not be read as ohms may be farads.
        for (const DrawerColumn other : {DrawerColumn::value, DrawerColumn::rating})
            if (const auto wrong = row.wrong[static_cast<std::size_t>(other)]; wrong)
                type(row, other, wrong->typed);
    }
    change(std::move(rows));
    return true;
}

} // namespace blinkwright::widgets
