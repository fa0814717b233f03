#include "widgets/rooms/spread_tables.h"

#include "core/circuit/reels.h"
#include "widgets/rooms/plain_table.h"
#include "widgets/rooms/share_bar.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QHeaderView>
#include <algorithm>
#include <cmath>
#include <functional>

namespace blinkwright::widgets {

using circuit::PartId;

namespace {

enum Column { refColumn, toleranceColumn, shareColumn, slopeColumn, reelColumn, columns };
constexpr int rowSize = 28, barLeast = 120, reelWidth = 130;

QString percent(double share, int decimals) {
    return plainNumber(std::abs(share * 100), 'f', decimals) + QStringLiteral("\u00A0%");
}

QString toleranceText(const circuit::Interval& tolerance) {
    const auto plain = [](double share) {
        return plainNumber(std::abs(share) * 100, 'g', 4) + QStringLiteral("\u00A0%");
    };
    if (std::abs(tolerance[0] + tolerance[1]) < 1e-12) return QStringLiteral("±\u00A0") + plain(tolerance[1]);
    const auto withSign = [&](double share) { return (share < 0 ? minusSign : QChar(u'+')) + plain(share); };
    return withSign(tolerance[0]) + QStringLiteral(" / ") + withSign(tolerance[1]);
}

} // namespace

FiguresTable::FiguresTable(QWidget* parent) : QTableWidget(0, 3, parent) {
    setObjectName(QStringLiteral("figures"));
    setAccessibleName(tr("Figures of the spread"));
    setWhatsThis(tr("The chosen figure over all boards: mean, scatter, shares, and the worst case within all "
                    "tolerances."));
    prepareTable(*this);
    rowsByText(*this, 24);
    sizedByText(*this, [this] {
        if (rowCount() > 0) fitToTexts();
    });
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void FiguresTable::setFigure(const std::optional<SpreadFigureView>& figure) {
    setRowCount(0);
    setVisible(figure.has_value());
    if (!figure) return;
    setHorizontalHeaderLabels({figure->name, tr("Value"), tr("Off nominal")});
    horizontalHeaderItem(0)->setTextAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    const study::SpreadFigure& s = figure->statistics;
    const auto add = [&](const QString& name, double value, const QString& off, const QString& meaning) {
        const int row = rowCount();
        insertRow(row);
        setItem(row, 0, tableCell(name, false));
        setItem(row, 1, tableCell(figure->text(value), true));
        setItem(row, 2, tableCell(off, true));
        for (int column = 0; column < 3; ++column) item(row, column)->setToolTip(meaning);
    };
    const auto place = [&](const QString& name, double value, const QString& meaning) {
        add(name, value, s.nominal != 0 ? offText(value, s.nominal) : QString(), meaning);
    };
    add(tr("Nominal"), s.nominal, {}, tr("The board with every part at its value"));
    place(tr("Mean"), s.mean, tr("Mean of the random boards"));
    add(tr("Standard deviation"), s.sd, s.nominal != 0 ? percent(s.sd / s.nominal, 2) : QString(),
        tr("Of the random boards; divided by one less than their number"));
    place(tr("Worst case, low"), s.worstLow, tr("The lowest anywhere within all tolerances"));
    const auto below = [](const QString& share) {
        return tr("So many of the boards are below: %1").arg(share);
    };
    for (const auto& [share, value] :
         {std::pair{1, s.p1}, {5, s.p5}, {50, s.p50}, {95, s.p95}, {99, s.p99}}) {
        const QString text = QStringLiteral("%1\u00A0%").arg(share);
        place(share == 50 ? tr("Median") : tr("%1 are below").arg(text), value, below(text));
    }
    place(tr("Worst case, high"), s.worstHigh, tr("The highest anywhere within all tolerances"));
    fitToTexts();
}

// As wide as its texts: the plot beside it has the rest.
void FiguresTable::fitToTexts() {
    resizeColumnsToContents();
    setFixedWidth(horizontalHeader()->length() + 2 * frameWidth() + 2);
}

PartsTable::PartsTable(QWidget* parent)
    : QTableWidget(0, columns, parent), m_theme(Theme::of(Theme::Mode::light)),
      m_bar(std::make_unique<ShareBar>()) {
    setObjectName(QStringLiteral("parts"));
    setAccessibleName(tr("Parts and what they do to the spread"));
    setWhatsThis(tr("Each part with a tolerance: its share of the scatter, and by how much the figure "
                    "changes with one per "
                    "cent of its value."));
    prepareTable(*this);
    rowsByText(*this, rowSize);
    setItemDelegateForColumn(shareColumn, m_bar.get());
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(shareColumn, QHeaderView::Stretch);
    horizontalHeader()->setMinimumSectionSize(40);
    horizontalHeader()->setSectionResizeMode(reelColumn, QHeaderView::Fixed);
    sizedByText(*this, [this] {
        setColumnWidth(reelColumn, withText(*this, reelWidth));
        setMinimumWidth(withText(*this, barLeast + ShareBar::numberRoom + reelWidth + 200));
    });
}

PartsTable::~PartsTable() {
    setItemDelegateForColumn(shareColumn, nullptr);
}

void PartsTable::showColour() {
    m_bar->setColour(m_set == circuit::PartSet::A ? m_theme.setA : m_theme.setB);
}

void PartsTable::clear() {
    setRowCount(0);
}

void PartsTable::setTheme(const Theme& theme) {
    m_theme = theme;
    showColour();
    viewport()->update();
}

void PartsTable::setParts(const study::SpreadOutcome& outcome, const SpreadFigureView& figure,
                          const circuit::Circuit& circuit, circuit::PartSet set) {
    const int chosen = currentRow(), chosenColumn = currentColumn();
    const bool focused = focusWidget() && isAncestorOf(focusWidget());
    m_set = set;
    showColour();
    setRowCount(0);
    setHorizontalHeaderLabels({tr("Part"), tr("Tolerance"), tr("Share of the variance"),
                               tr("1 % more moves it by"), tr("On a reel with")});
    const auto slope = [&](const study::SpreadSensitivity& part) { return figure.sensitivity(part); };
    const std::vector<double> shares = study::varianceShares(outcome.sensitivities, slope);
    std::vector<std::string> refs;
    std::vector<std::size_t> order; // the part that does most comes first
    for (const study::SpreadSensitivity& part : outcome.sensitivities) {
        order.push_back(refs.size());
        refs.push_back(part.ref);
    }
    std::ranges::stable_sort(order, std::greater(), [&](std::size_t k) { return std::abs(shares[k]); });
    for (const std::size_t k : order) {
        const circuit::Part* part = circuit.findRef(refs[k]);
        if (!part) continue;
        const int row = rowCount();
        insertRow(row);
        setItem(row, refColumn, tableCell(QString::fromStdString(part->ref), false));
        setItem(row, toleranceColumn, tableCell(toleranceText(outcome.sensitivities[k].tolerance), true));
        auto* share =
            tableCell((shares[k] < -5e-4 ? QString(minusSign) : QString()) + percent(shares[k], 1), true);
        share->setData(Qt::UserRole, shares[k]);
        setItem(row, shareColumn, share);
        const double by = slope(outcome.sensitivities[k]) * 0.01;
        setItem(row, slopeColumn, tableCell(signedText(by, [](double v) { return percent(v, 3); }), true));
        addReelChoice(row, circuit, *part, refs);
    }
    if (chosen < 0 || chosen >= rowCount()) return;
    setCurrentCell(chosen, chosenColumn);
    // A choice of a reel makes this table anew; the keyboard stays where it was.
    if (focused && cellWidget(chosen, reelColumn)) cellWidget(chosen, reelColumn)->setFocus();
}

void PartsTable::addReelChoice(int row, const circuit::Circuit& circuit, const circuit::Part& part,
                               const std::vector<std::string>& refs) {
    setItem(row, reelColumn, new QTableWidgetItem);
    const auto own = circuit::reelOf(circuit, part.id);
    auto* choice = new QComboBox;
    choice->setObjectName(QStringLiteral("reel ") + QString::fromStdString(part.ref));
    choice->setAccessibleName(tr("%1 is on a reel with").arg(QString::fromStdString(part.ref)));
    choice->setWhatsThis(
        tr("Parts from one reel are off their values by the same share. Then they do not make up for each "
           "other, and the spread changes."));
    choice->addItem(tr("none"));
    const auto names = [&](const std::vector<PartId>& reel) {
        QStringList list;
        for (const PartId id : reel)
            if (id != part.id)
                if (const circuit::Part* other = circuit.find(id)) list << QString::fromStdString(other->ref);
        return list.join(QStringLiteral(", "));
    };
    const auto offer = [&](const QString& text, PartId with) {
        choice->addItem(text, static_cast<uint>(with.n));
    };
    // Parts come from one reel only if they are of one kind.
    for (std::size_t r = 0; r < circuit.reels.size(); ++r) {
        const auto& reel = circuit.reels[r];
        const auto other = std::ranges::find_if(reel, [&](PartId id) { return id != part.id; });
        const circuit::Part* one = other == reel.end() ? nullptr : circuit.find(*other);
        if (one && one->kind == part.kind) offer(names(reel), *other);
        if (one && own == r) choice->setCurrentIndex(choice->count() - 1);
    }
    for (const std::string& ref : refs) {
        const circuit::Part* other = circuit.findRef(ref);
        if (!other || other->id == part.id || other->kind != part.kind) continue;
        if (!circuit::reelOf(circuit, other->id)) offer(QString::fromStdString(ref), other->id);
    }
    choice->setEnabled(choice->count() > 1);
    const int before = choice->currentIndex();
    connect(choice, &QComboBox::activated, this, [this, choice, id = part.id, row, before](int index) {
        setCurrentCell(row, reelColumn);
        if (index == before) return;
        emit reelWished(id,
                        index == 0 ? std::nullopt : std::optional(PartId{choice->currentData().toUInt()}));
    });
    setCellWidget(row, reelColumn, choice);
}

QString tableText(const QTableWidget& table) {
    QString text;
    QStringList head;
    for (int column = 0; column < table.columnCount(); ++column)
        head << (table.horizontalHeaderItem(column) ? table.horizontalHeaderItem(column)->text() : QString());
    text = head.join(u'\t') + u'\n';
    for (int row = 0; row < table.rowCount(); ++row) {
        QStringList cells;
        for (int column = 0; column < table.columnCount(); ++column) {
            const auto* choice = qobject_cast<QComboBox*>(table.cellWidget(row, column));
            const auto* item = table.item(row, column);
            cells << (choice ? choice->currentText() : item ? item->text() : QString());
        }
        text += cells.join(u'\t') + u'\n';
    }
    return text;
}

} // namespace blinkwright::widgets
