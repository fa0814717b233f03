#include "widgets/choose/choice_model.h"

#include "widgets/text/figure_text.h"

#include <algorithm>

namespace blinkwright::widgets {

using study::Choice;
using study::Wish;
using units::Unit;

namespace {

/// A value as it is printed on the bag: preferred figures, no zeros behind.
QString valueText(double value, Unit unit) {
    return value > 0 ? QString::fromStdString(units::formatQuantity(value, unit)) : QString();
}

QString optionalText(const std::optional<double>& value, Unit unit) {
    return value ? valueText(*value, unit) : QString();
}

QString toText(const QString& from, const QString& to) {
    return ChoiceModel::tr("%1 to %2").arg(from, to);
}

} // namespace

QString lampsText(const Choice& choice) {
    if (choice.scheme.coupledPair) return ChoiceModel::tr("behind C4");
    if (choice.r4_ohm) return ChoiceModel::tr("one each way");
    return choice.scheme.lampToRail ? ChoiceModel::tr("to supply") : ChoiceModel::tr("to ground");
}

QString ChoiceModel::rate(const Asked& asked, double rate_Hz) {
    switch (asked.unit) {
    case RateUnit::perMinute:
        return tr("%1\u00A0/min").arg(numberText(60 * rate_Hz));
    case RateUnit::hertz:
        return rateText(rate_Hz);
    case RateUnit::seconds:
        return secondsText(1 / rate_Hz);
    }
    return {};
}

std::vector<ChoiceModel::Column> ChoiceModel::allColumns() {
    return {
        {tr("R1"), tr("Charges C1 together with R2"),
         [](const Asked&, const Choice& c) { return valueText(c.r1_ohm, Unit::ohm); }},
        {tr("R2"), tr("Discharges C1; with a variable resistor its end stop"),
         [](const Asked&, const Choice& c) { return valueText(c.r2_ohm, Unit::ohm); }},
        {tr("RV1"), tr("Variable resistor in series with R2, end to end"),
         [](const Asked&, const Choice& c) { return optionalText(c.variable_ohm, Unit::ohm); }},
        {tr("C1"), tr("Timing capacitor"),
         [](const Asked&, const Choice& c) { return valueText(c.c1_farad, Unit::farad); }},
        {tr("R3"), tr("Resistor of the lamp, or of the pair"),
         [](const Asked&, const Choice& c) { return valueText(c.r3_ohm, Unit::ohm); }},
        {tr("R4"), tr("Resistor of the second lamp; of a pair behind C4 from the output to ground"),
         [](const Asked&, const Choice& c) {
             return c.coupling_farad ? valueText(c.bleeder_ohm, Unit::ohm)
                                     : optionalText(c.r4_ohm, Unit::ohm);
         }},
        {tr("C4"), tr("Coupling capacitor of the pair"),
         [](const Asked&, const Choice& c) { return optionalText(c.coupling_farad, Unit::farad); }},
        {tr("Diode"), tr("Across R2, so that R1 alone sets the high time"),
         [](const Asked&, const Choice& c) { return c.scheme.diode ? tr("D3") : QString(); }},
        {tr("Lamps"), tr("Where the lamps hang"), [](const Asked&, const Choice& c) { return lampsText(c); }},
        {tr("Rate"), tr("Of the simulated board, settled"),
         [](const Asked& asked, const Choice& c) {
             return c.fast ? toText(rate(asked, c.rate_Hz), rate(asked, c.fast->rate_Hz))
                           : rate(asked, c.rate_Hz);
         }},
        {tr("Off wish"), tr("Rate over the wished one"),
         [](const Asked& asked, const Choice& c) {
             return c.fast ? toText(offText(c.rate_Hz, asked.wish.slowest_Hz()),
                                    offText(c.fast->rate_Hz, asked.wish.fastest_Hz()))
                           : offText(c.rate_Hz, asked.wish.rate_Hz);
         }},
        {tr("Lit"), tr("Lit share of the first lamp"),
         [](const Asked&, const Choice& c) {
             return c.fast ? toText(shareText(c.lit), shareText(c.fast->lit)) : shareText(c.lit);
         }},
        {tr("Band"), tr("Rates with the timing parts at the ends of their tolerances"),
         [](const Asked& asked, const Choice& c) {
             return c.rateLow_Hz > 0 && c.rateHigh_Hz > 0
                        ? toText(rate(asked, c.rateLow_Hz), rate(asked, c.rateHigh_Hz))
                        : QString();
         }},
        {tr("Stall margin"), tr("Charging current at the upper level over the leakage to be expected there"),
         [](const Asked&, const Choice& c) {
             return c.stallMargin > 1000 ? tr("over 1000") : numberText(c.stallMargin);
         }},
        {tr("Supply"), tr("Mean supply current"),
         [](const Asked&, const Choice& c) { return quantityText(c.supplyMean_A, Unit::ampere); }},
        {tr("Left"), tr("How many of its scarcest part are left in the drawer"),
         [](const Asked&, const Choice& c) { return c.left ? QString::number(*c.left) : QString(); }}};
}

void ChoiceModel::setChoices(const Wish& wish, RateUnit unit, std::shared_ptr<const study::Choices> choices) {
    beginResetModel();
    m_asked = {wish, unit};
    m_choices = std::move(choices);
    m_columns.clear();
    for (Column& column : allColumns())
        if (m_choices && std::ranges::any_of(m_choices->best, [&](const Choice& c) {
                return !column.text(m_asked, c).isEmpty();
            }))
            m_columns.push_back(std::move(column));
    endResetModel();
}

const Choice& ChoiceModel::choice(int row) const {
    return m_choices->best[static_cast<std::size_t>(row)];
}

QString ChoiceModel::asText() const {
    QStringList lines;
    QStringList titles;
    for (const Column& column : m_columns) titles << column.title;
    lines << titles.join(u'\t');
    for (int row = 0; row < rowCount(); ++row) {
        QStringList cells;
        for (const Column& column : m_columns) cells << column.text(m_asked, choice(row));
        lines << cells.join(u'\t');
    }
    return lines.join(u'\n') + u'\n';
}

int ChoiceModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !m_choices ? 0 : static_cast<int>(m_choices->best.size());
}

int ChoiceModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QVariant ChoiceModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::DisplayRole)
        return m_columns[static_cast<std::size_t>(index.column())].text(m_asked, choice(index.row()));
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant ChoiceModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) return role == Qt::DisplayRole ? QVariant(section + 1) : QVariant();
    const Column& column = m_columns[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole) return column.title;
    if (role == Qt::ToolTipRole) return column.meaning;
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

} // namespace blinkwright::widgets
