#include "widgets/measure/meter_dialog.h"

#include "core/base/wording.h"
#include "core/study/meter_accuracy.h"
#include "widgets/measure/measurement_words.h"
#include "widgets/rooms/quantity_field.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/scrolled_form.h"
#include "widgets/text/text_sized.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace blinkwright::widgets {

using circuit::MeterQuantity;
using circuit::MeterReading;
using units::Unit;

namespace {

constexpr int leastWidth = 430;

/// What a meter can be held to, in one circuit.
struct Subject {
    circuit::PartId part;
    std::string key;
    QString name;
};

std::vector<Subject> subjectsOf(const circuit::Circuit& circuit, MeterQuantity quantity) {
    using Kind = circuit::PartKind;
    std::vector<Subject> all;
    for (const circuit::Part& part : circuit.parts()) {
        const QString ref = QString::fromStdString(part.ref);
        if (quantity != MeterQuantity::partValue) {
            const Kind kind = quantity == MeterQuantity::supplyVoltage ? Kind::supply
                              : quantity == MeterQuantity::lampCurrent ? Kind::lamp
                                                                       : Kind::timer;
            if (part.kind == kind) all.push_back({part.id, {}, ref});
            continue;
        }
        // What a meter shows of a part by itself: ohms and farads.
        for (const circuit::KeyInfo& key : circuit::info(part.kind).keys)
            if (key.shape == circuit::Shape::number && (key.unit == Unit::ohm || key.unit == Unit::farad))
                all.push_back({part.id, std::string(key.key),
                               QStringLiteral("%1, %2").arg(ref, keyName(part, std::string(key.key)))});
    }
    return all;
}

} // namespace

class MeterDialog::Private {
  public:
    Private(MeterDialog& dialog, const circuit::Circuit& of) : q(dialog), circuit(of) {}

    static QString tr(const char* text) { return MeterDialog::tr(text); }

    void make() {
        title = new QLineEdit;
        title->setPlaceholderText(tr("may be left empty"));
        title->setWhatsThis(tr("A name for the measurement in lists and on the lab sheet."));
        quantity = new QComboBox;
        quantity->setObjectName(QStringLiteral("quantity"));
        quantity->setWhatsThis(
            tr("What the meter was held to: supply voltage, the output while high or low, the current "
               "of a lamp, or a part by itself."));
        for (const MeterQuantity one : circuit::allMeterQuantities)
            if (!subjectsOf(circuit, one).empty())
                quantity->addItem(quantityName(one), static_cast<int>(one));
        subject = new QComboBox;
        subject->setObjectName(QStringLiteral("part"));
        subject->setWhatsThis(tr("The part at which it was measured."));
        value = new QLineEdit; // as typed, since its last digit counts
        value->setObjectName(QStringLiteral("value"));
        value->setWhatsThis(
            tr("What the meter shows, with all its digits, such as 5.930 V: the last one counts for the "
               "uncertainty."));
        percent = spin("percent", tr(" % of reading"), 2);
        digits = spin("digits", tr(" digits"), 1);
        percent->setAccessibleName(tr("Accuracy, per cent of the reading"));
        percent->setWhatsThis(
            tr("First part of the accuracy in the meter's leaflet: the limit of error, in per cent of the "
               "reading."));
        digits->setWhatsThis(
            tr("Second part of the accuracy in the meter's leaflet: the limit of error, in steps of the "
               "last digit."));
        digits->setAccessibleName(tr("Accuracy, steps of the last digit"));
        stated = new QuantityField;
        stated->setObjectName(QStringLiteral("uncertainty"));
        stated->setWhatsThis(tr(
            "One standard deviation of the reading, with its unit, 0 or more. It follows from the accuracy "
            "unless one is typed."));
        stated->setReader([this](const QString& text) {
            Result<double> read = units::parseQuantity(text.toStdString(), unit());
            if (read && read.value() < 0)
                return Result<double>(Fault{"", wording::inWords("must not be negative")});
            return read;
        });
        note = new QLabel;
        result = new QLabel;
        result->setObjectName(QStringLiteral("result"));
        for (QLabel* label : {note, result}) {
            label->setTextFormat(Qt::PlainText);
            label->setWordWrap(true);
        }
        QFont bold = result->font();
        bold.setBold(true);
        result->setFont(bold);
        layOut();
        connectAll();
        takeQuantity();
    }

    QDoubleSpinBox* spin(const char* name, const QString& suffix, int decimals) {
        auto* made = new QDoubleSpinBox;
        made->setObjectName(QLatin1String(name));
        made->setDecimals(decimals);
        made->setRange(0, 100);
        made->setSingleStep(decimals == 2 ? 0.1 : 1);
        made->setSuffix(suffix);
        wideAsItsValues(*made);
        return made;
    }

    void layOut() {
        auto* form = new QFormLayout;
        form->addRow(tr("&Quantity"), quantity);
        form->addRow(tr("&Part"), subject);
        form->addRow(tr("&Value as read"), value);
        auto* accuracy = new QGroupBox(tr("How well it is known"));
        auto* inside = new QFormLayout(accuracy);
        auto* both = new QHBoxLayout;
        auto* plus = new QLabel(QStringLiteral("+"));
        both->addWidget(percent, 1);
        both->addWidget(plus);
        both->addWidget(digits, 1);
        auto* label = new QLabel(tr("Meter's &accuracy, ±"));
        label->setBuddy(percent);
        inside->addRow(label, both);
        inside->addRow(tr("&Standard uncertainty"), stated);
        inside->addRow(note);
        auto* named = new QFormLayout;
        named->addRow(tr("Tit&le"), title);
        auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
        QObject::connect(buttons, &QDialogButtonBox::accepted, &q, &QDialog::accept);
        QObject::connect(buttons, &QDialogButtonBox::rejected, &q, &QDialog::reject);
        auto* forms = new QWidget;
        auto* column = new QVBoxLayout(forms);
        column->setContentsMargins(0, 0, 0, 0);
        column->addLayout(form);
        column->addWidget(accuracy);
        column->addLayout(named);
        column->addStretch(1);
        auto* whole = new QVBoxLayout(&q);
        whole->addWidget(new ScrolledForm(forms, tr("Value and its uncertainty")), 1);
        whole->addWidget(result);
        whole->addWidget(buttons);
        sizedByText(q, [this] { q.setMinimumWidth(withText(q, leastWidth)); });
        growWithTexts(q);
        value->setFocus();
    }

    void connectAll() {
        QObject::connect(quantity, &QComboBox::currentIndexChanged, &q, [this] { takeQuantity(); });
        QObject::connect(subject, &QComboBox::currentIndexChanged, &q, [this] { takeSubject(); });
        QObject::connect(value, &QLineEdit::textEdited, &q, [this] { work(); });
        for (QDoubleSpinBox* one : {percent, digits})
            QObject::connect(one, &QDoubleSpinBox::valueChanged, &q, [this] {
                if (filling) return;
                byHand = false; // the accuracy is what counts again
                work();
            });
        QObject::connect(stated, &QuantityField::entered, &q, [this](double typed) {
            uncertainty = typed;
            byHand = true;
            work();
        });
        QObject::connect(stated, &QuantityField::refused, &q,
                         [this](const QString& why) { result->setText(why); });
    }

    MeterQuantity chosenQuantity() const {
        return static_cast<MeterQuantity>(quantity->currentData().toInt());
    }
    MeterReading reading() const {
        MeterReading r{
            .quantity = chosenQuantity(), .part = {}, .key = {}, .value = {number.value_or(0), uncertainty}};
        const auto at = static_cast<std::size_t>(std::max(subject->currentIndex(), 0));
        if (at < subjects.size()) {
            r.part = subjects[at].part;
            r.key = subjects[at].key;
        }
        return r;
    }
    Unit unit() const { return unitOf(reading(), circuit); }

    void takeQuantity() {
        subjects = subjectsOf(circuit, chosenQuantity());
        const QSignalBlocker quiet(subject);
        subject->clear();
        for (const Subject& one : subjects) subject->addItem(one.name);
        takeSubject();
    }

    void takeSubject() {
        const Unit now = unit();
        const std::string_view symbol = units::symbol(now);
        const char* examples[] = {"5.93 V", "12.1 mA", "9.93 kΩ", "9.6 µF"};
        const int which = now == Unit::ampere ? 1 : now == Unit::ohm ? 2 : now == Unit::farad ? 3 : 0;
        value->setPlaceholderText(tr("as the meter shows it: %1").arg(QString::fromUtf8(examples[which])));
        value->setToolTip(tr("In %1, with or without a prefix; the last digit counts for the accuracy")
                              .arg(QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size()))));
        if (shownUnit != now) {
            shownUnit = now;
            const study::MeterAccuracy usual = study::usualAccuracy(now);
            filling = true;
            percent->setValue(100 * usual.ofReading);
            digits->setValue(usual.digits);
            filling = false;
            byHand = false;
        }
        work();
    }

    void work() {
        const std::string typed = value->text().toStdString();
        const Result<double> read = units::parseQuantity(typed, unit());
        number = read ? std::optional(read.value()) : std::nullopt;
        // What nobody has touched is not rounded to the text's figures.
        if (!firstText.isEmpty() && value->text() == firstText)
            number = std::get<MeterReading>(kept.what).value.value;
        const auto digit = study::lastDigit(typed, unit());
        if (!byHand && number)
            uncertainty = study::standardUncertainty({percent->value() / 100, digits->value()}, *number,
                                                     digit.value_or(0));
        stated->showText(number || byHand ? uncertaintyTyped() : QString());
        note->setText(
            byHand ? tr("As stated; a change of the accuracy works it out anew.")
                   : tr("Usual for a hand-held meter (from memory): see your meter's leaflet. The limits "
                        "over √3, since any value between them is as likely."));
        if (!number)
            return result->setText(typed.empty() ? tr("No value yet.")
                                                 : QString::fromStdString(read.fault().message()));
        const MeterReading now = reading();
        circuit::Measurement tried;
        tried.what = now;
        const Result<void> can = circuit.canMeasure(tried);
        result->setText(
            can ? tr("%1: %2").arg(whatText(tried, circuit), measuredText(now.value, figureTextOf(unit())))
                : tr("The value %1.").arg(QString::fromStdString(can.fault().text)));
    }

    /// A file may name values that the list does not offer.
    void chooseSubject(const MeterReading& of) {
        auto at = std::ranges::find_if(
            subjects, [&](const Subject& one) { return one.part == of.part && one.key == of.key; });
        if (at == subjects.end()) {
            circuit::Measurement named;
            named.what = of;
            subjects.push_back({of.part, of.key, whatText(named, circuit)});
            const QSignalBlocker quiet(subject);
            subject->addItem(subjects.back().name);
            at = subjects.end() - 1;
        }
        subject->setCurrentIndex(static_cast<int>(at - subjects.begin()));
    }

    QString uncertaintyTyped() const {
        return QString::fromStdString(units::formatQuantity(uncertainty, unit(), 3));
    }

    MeterDialog& q;
    const circuit::Circuit circuit;
    circuit::Measurement kept; ///< what the form does not show of it
    std::vector<Subject> subjects;
    QString firstText; ///< of the value that is to be changed
    std::optional<double> number;
    double uncertainty = 0;
    bool byHand = false;  ///< the uncertainty is stated, not worked out
    bool filling = false; ///< the spin boxes are being set
    std::optional<Unit> shownUnit;
    QLineEdit *title = nullptr, *value = nullptr;
    QComboBox *quantity = nullptr, *subject = nullptr;
    QDoubleSpinBox *percent = nullptr, *digits = nullptr;
    QuantityField* stated = nullptr;
    QLabel *note = nullptr, *result = nullptr;
};

MeterDialog::MeterDialog(const circuit::Circuit& circuit, QWidget* parent)
    : QDialog(parent), d(std::make_unique<Private>(*this, circuit)) {
    setObjectName(QStringLiteral("meter"));
    setWindowTitle(tr("Meter reading"));
    d->make();
}

MeterDialog::~MeterDialog() = default;

bool MeterDialog::hasSubjects(const circuit::Circuit& circuit) {
    return std::ranges::any_of(circuit::allMeterQuantities,
                               [&](MeterQuantity one) { return !subjectsOf(circuit, one).empty(); });
}

void MeterDialog::setMeasurement(const circuit::Measurement& measurement) {
    d->kept = measurement;
    const auto& reading = std::get<MeterReading>(measurement.what);
    d->title->setText(QString::fromStdString(measurement.title));
    const int of = static_cast<int>(reading.quantity);
    if (d->quantity->findData(of) < 0) d->quantity->addItem(quantityName(reading.quantity), of);
    d->quantity->setCurrentIndex(d->quantity->findData(of));
    d->chooseSubject(reading);
    d->value->setText(QString::fromStdString(units::formatQuantity(reading.value.value, d->unit(), 6)));
    d->firstText = d->value->text();
    d->uncertainty = reading.value.uncertainty;
    d->byHand = true;
    d->work();
}

circuit::Measurement MeterDialog::measurement() const {
    circuit::Measurement m = d->kept;
    m.title = d->title->text().trimmed().toStdString();
    m.what = d->reading();
    return m;
}

void MeterDialog::accept() {
    circuit::Measurement tried = measurement();
    if (d->number && d->circuit.canMeasure(tried)) return QDialog::accept();
    if (!d->number && d->value->text().isEmpty())
        d->result->setText(tr("Enter the value as the meter shows it."));
    d->value->setFocus();
    d->value->selectAll();
}

} // namespace blinkwright::widgets
