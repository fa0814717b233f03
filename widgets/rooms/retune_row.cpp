#include "widgets/rooms/retune_row.h"

#include "widgets/rooms/quantity_field.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/plain_number.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <cmath>

namespace blinkwright::widgets {

namespace {

enum RateUnit { perMinute, hertz, secondsEach };
constexpr double leastRate = 1e-4, mostRate = 1e6; ///< [Hz]
const char rateAnswer[] = "rate", unitAnswer[] = "unit", partAnswer[] = "part", sourceAnswer[] = "source";

} // namespace

RetuneRow::RetuneRow(QWidget* parent)
    : QWidget(parent), m_field(new QuantityField), m_unit(new QComboBox), m_part(new QComboBox),
      m_source(new QComboBox), m_answer(new QLabel) {
    m_field->setObjectName(QStringLiteral("wanted"));
    m_field->setAccessibleName(tr("Wanted rate"));
    m_field->setWhatsThis(
        tr("The rate that the real board is to have, between 0.0001 Hz and 1 MHz, in the unit beside it."));
    m_unit->setObjectName(QStringLiteral("wanted unit"));
    m_unit->setAccessibleName(tr("Unit of the wanted rate"));
    m_unit->setWhatsThis(
        tr("Unit of the rate beside it. The rate stays the same; its number is worked out anew."));
    m_unit->addItems({tr("a minute"), tr("Hz"), tr("s a cycle")});
    m_part->setObjectName(QStringLiteral("changed part"));
    m_part->setAccessibleName(tr("Part to change"));
    m_part->setWhatsThis(tr("The part that gets another value. All others keep their fitted ones."));
    m_source->setObjectName(QStringLiteral("new value from"));
    m_source->setAccessibleName(tr("Where the new value comes from"));
    m_source->setWhatsThis(
        tr("A preferred series, E24 with 24 values in a decade, or the stock in the drawer. Of these the "
           "value is taken that comes nearest."));
    for (const units::Series series : units::allSeries) {
        const auto name = units::name(series);
        m_source->addItem(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())),
                          static_cast<int>(series));
    }
    m_source->addItem(tr("the drawer"), -1);
    m_source->setCurrentIndex(m_source->findData(static_cast<int>(units::Series::E24)));
    m_answer->setObjectName(QStringLiteral("retuned"));
    m_answer->setTextFormat(Qt::PlainText);
    m_answer->setWordWrap(true);
    m_answer->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_answer->setAccessibleName(tr("Value to fit and rate to expect"));

    auto* question = new QHBoxLayout;
    question->setContentsMargins(0, 0, 0, 0);
    auto* before = new QLabel(tr("To &flash at"));
    before->setBuddy(m_field);
    question->addWidget(before);
    question->addWidget(m_field);
    question->addWidget(m_unit);
    question->addWidget(new QLabel(tr("change")));
    question->addWidget(m_part);
    question->addWidget(new QLabel(tr("to a value from")));
    question->addWidget(m_source);
    question->addStretch(1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addLayout(question);
    whole->addWidget(m_answer);

    m_field->setReader([this](const QString& text) -> Result<double> {
        Result<double> read = units::parseQuantity(
            text.toStdString(), m_unit->currentIndex() == hertz         ? units::Unit::hertz
                                : m_unit->currentIndex() == secondsEach ? units::Unit::second
                                                                        : units::Unit::none);
        if (!read) return read;
        if (!(read.value() > 0)) return Fault{"", tr("A rate is above 0.").toStdString()};
        const double rate = hertzOf(read.value());
        if (!(rate >= leastRate && rate <= mostRate))
            return Fault{"", tr("A rate between 0.0001 Hz and 1 MHz is wanted.").toStdString()};
        return rate;
    });
    connect(m_field, &QuantityField::entered, this, [this](double rate) {
        m_rate_Hz = rate;
        m_wished = true;
        showRate();
        emit changed();
    });
    connect(m_field, &QuantityField::refused, m_answer, &QLabel::setText);
    connect(m_unit, &QComboBox::currentIndexChanged, this, &RetuneRow::showRate);
    connect(m_part, &QComboBox::activated, this, &RetuneRow::changed);
    connect(m_source, &QComboBox::activated, this, &RetuneRow::changed);
    showRate();
}

double RetuneRow::hertzOf(double value) const {
    switch (m_unit->currentIndex()) {
    case perMinute:
        return value / 60;
    case secondsEach:
        return 1 / value;
    default:
        return value;
    }
}

void RetuneRow::showRate() {
    const double value = m_unit->currentIndex() == perMinute     ? 60 * m_rate_Hz
                         : m_unit->currentIndex() == secondsEach ? 1 / m_rate_Hz
                                                                 : m_rate_Hz;
    m_field->showText(plainNumber(value, 'g', 4));
}

void RetuneRow::setParts(const std::vector<std::string>& refs) {
    const QSignalBlocker quiet(m_part);
    const QString chosen =
        m_part->count() > 0 ? m_part->currentText() : m_part->property("wanted").toString();
    m_part->clear();
    for (const std::string& ref : refs) m_part->addItem(QString::fromStdString(ref));
    int at = m_part->findText(chosen);
    if (at < 0) at = m_part->count() - 1; // the last resistor moves the rate most, and the duty cycle least
    m_part->setCurrentIndex(at);
    setEnabled(!refs.empty());
}

void RetuneRow::proposeRate(double rate_Hz) {
    if (m_wished) return;
    m_rate_Hz = rate_Hz;
    showRate();
}

std::string RetuneRow::part() const {
    return m_part->currentText().toStdString();
}

std::optional<units::Series> RetuneRow::series() const {
    const int series = m_source->currentData().toInt();
    return series < 0 ? std::nullopt : std::optional(static_cast<units::Series>(series));
}

QString RetuneRow::words(const study::Retuning& r) const {
    if (r.proposals.empty()) return QString::fromStdString(r.reason);
    const auto value = [&](double v) { return QString::fromStdString(units::formatQuantity(v, r.unit, 3)); };
    const auto rate = [](const circuit::Measured& m) {
        return tr("%1 flashes a minute").arg(measuredText({60 * m.value, 60 * m.uncertainty}, numberText));
    };
    const study::RetuneProposal& best = r.proposals.front();
    const QString percent = plainNumber(best.tolerance * 100, 'g', 3) + QStringLiteral("\u00A0%");
    QString text = tr("With %1 = %2 (%3), %4 are to be expected, duty cycle %5. Exactly right would be %6.")
                       .arg(QString::fromStdString(r.ref), value(best.value), percent, rate(best.rate_Hz),
                            shareText(best.duty), value(r.exact));
    QStringList others;
    for (std::size_t k = 1; k < r.proposals.size(); ++k)
        others << tr("%1 gives %2").arg(value(r.proposals[k].value), rate(r.proposals[k].rate_Hz));
    if (!others.isEmpty()) text += QChar(u' ') + tr("Next to it: %1.").arg(others.join(QStringLiteral("; ")));
    return text;
}

void RetuneRow::setRetuning(const std::optional<study::Retuning>& retuning) {
    m_answer->setText(retuning ? words(*retuning) : QString());
}

QString RetuneRow::answerText() const {
    return m_answer->text();
}

QVariantMap RetuneRow::answers() const {
    QVariantMap all{{QLatin1String(unitAnswer), m_unit->currentIndex()},
                    {QLatin1String(partAnswer), m_part->currentText()},
                    {QLatin1String(sourceAnswer), m_source->currentData()}};
    if (m_wished) all[QLatin1String(rateAnswer)] = m_rate_Hz;
    return all;
}

void RetuneRow::restore(const QVariantMap& answers) {
    const QSignalBlocker quiet(this);
    m_unit->setCurrentIndex(std::clamp(answers.value(QLatin1String(unitAnswer)).toInt(), 0, 2));
    m_part->setProperty("wanted", answers.value(QLatin1String(partAnswer)));
    if (const int at = m_source->findData(answers.value(QLatin1String(sourceAnswer), -2).toInt()); at >= 0)
        m_source->setCurrentIndex(at);
    const double rate = answers.value(QLatin1String(rateAnswer)).toDouble();
    m_wished = rate >= leastRate && rate <= mostRate;
    if (m_wished) m_rate_Hz = rate;
    showRate();
}

} // namespace blinkwright::widgets
