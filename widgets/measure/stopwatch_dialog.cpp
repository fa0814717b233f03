#include "widgets/measure/stopwatch_dialog.h"

#include "core/base/wording.h"
#include "widgets/measure/tap_timer.h"
#include "widgets/rooms/quantity_field.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/scrolled_form.h"
#include "widgets/text/text_sized.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <cmath>

namespace blinkwright::widgets {

using units::Unit;

namespace {

constexpr int mostFlashes = 1'000'000, usualFlashes = 20, leastWidth = 430;

Result<double> seconds(const QString& text, bool mayBeZero) {
    Result<double> read = units::parseQuantity(text.toStdString(), Unit::second);
    if (!read) return read;
    if (read.value() < 0 || (read.value() == 0 && !mayBeZero))
        return Fault{"", wording::inWords("must be greater than 0")};
    return read;
}

QString shortText(double value_s, int figures) {
    return QString::fromStdString(units::formatQuantity(value_s, Unit::second, figures));
}

} // namespace

class StopwatchDialog::Private {
  public:
    explicit Private(StopwatchDialog& dialog) : q(dialog) {}

    static QString tr(const char* text) { return StopwatchDialog::tr(text); }

    void make() {
        title = new QLineEdit;
        title->setPlaceholderText(tr("may be left empty"));
        title->setWhatsThis(tr("A name for the measurement in lists and on the lab sheet."));
        flashes = new QSpinBox;
        flashes->setObjectName(QStringLiteral("flashes"));
        flashes->setRange(1, mostFlashes);
        wideAsItsValues(*flashes);
        flashes->setWhatsThis(
            tr("How many cycles the time was taken for. The press that starts the watch counts as 0. More "
               "flashes make the rate surer."));
        time = field("time", false, [this](double value) { byHand([&] { count.time_s.value = value; }); });
        press = field("press", true, [this](double value) {
            byHand([&] { count.time_s.uncertainty = study::startAndStop(value); });
        });
        time->setWhatsThis(tr("Time for all the flashes together, in seconds or with a unit, above 0."));
        press->setWhatsThis(
            tr("How far a press of the button may be off, as one standard deviation. It sets the "
               "uncertainty of the time."));
        press->setToolTip(
            tr("Standard uncertainty of one press of the button, start or stop. People's reaction "
               "times differ by 0.1 to 0.2 s from press to press (from memory, no source)."));
        note = new QLabel;
        result = new QLabel;
        for (QLabel* label : {note, result}) {
            label->setTextFormat(Qt::PlainText);
            label->setWordWrap(true);
        }
        note->setObjectName(QStringLiteral("note"));
        result->setObjectName(QStringLiteral("result"));
        QFont bold = result->font();
        bold.setBold(true);
        result->setFont(bold);
        timer = new TapTimer;
        QObject::connect(flashes, &QSpinBox::valueChanged, &q,
                         [this](int n) { byHand([&] { count.flashes = n; }); });
        QObject::connect(timer, &TapTimer::tapped, &q, [this] { takeTaps(); });
        layOut();
        show();
    }

    QuantityField* field(const char* name, bool mayBeZero, const std::function<void(double)>& take) {
        auto* made = new QuantityField;
        made->setObjectName(QLatin1String(name));
        made->setReader([mayBeZero](const QString& text) { return seconds(text, mayBeZero); });
        QObject::connect(made, &QuantityField::entered, &q, take);
        QObject::connect(made, &QuantityField::refused, &q,
                         [this](const QString& why) { result->setText(why); });
        return made;
    }

    void layOut() {
        auto* tapping = new QGroupBox(tr("Tap along"));
        auto* inside = new QVBoxLayout(tapping);
        inside->addWidget(timer);
        auto* typed = new QGroupBox(tr("Or read off a stopwatch"));
        auto* form = new QFormLayout(typed);
        form->addRow(tr("&Flashes counted"), flashes);
        form->addRow(tr("T&ime for them"), time);
        form->addRow(tr("&Each press known to"), press);
        form->addRow(note);
        auto* named = new QFormLayout;
        named->addRow(tr("Tit&le"), title);
        auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
        QObject::connect(buttons, &QDialogButtonBox::accepted, &q, &QDialog::accept);
        QObject::connect(buttons, &QDialogButtonBox::rejected, &q, &QDialog::reject);
        auto* forms = new QWidget;
        auto* column = new QVBoxLayout(forms);
        column->setContentsMargins(0, 0, 0, 0);
        column->addWidget(tapping);
        column->addWidget(typed);
        column->addLayout(named);
        auto* whole = new QVBoxLayout(&q);
        whole->addWidget(new ScrolledForm(forms, tr("Count and time")), 1);
        whole->addWidget(result);
        whole->addWidget(buttons);
        sizedByText(q, [this] { q.setMinimumWidth(withText(q, leastWidth)); });
        growWithTexts(q);
        timer->setFocus(); // the space bar taps at once
    }

    template <class Change>
    void byHand(Change change) {
        if (showing) return;
        if (tapped) { // what was tapped is not what is typed: the press counts again
            tapped = false;
            count.time_s.uncertainty = study::startAndStop(study::pressUncertainty_s);
        }
        change();
        known = known || count.time_s.value > 0;
        show();
    }

    void takeTaps() {
        const auto counted = timer->count();
        if (counted) {
            if (!tapped) untapped = known ? std::optional(count) : std::nullopt;
            count = counted->count;
        } else {
            if (!tapped) return;
            count = untapped.value_or(usualCount()); // forgotten taps count for nothing
        }
        tapped = counted.has_value();
        known = tapped || untapped;
        show();
    }

    void show() {
        showing = true;
        flashes->setValue(count.flashes);
        time->showText(known ? shortText(count.time_s.value, 6) : QString());
        press->showText(shortText(tapped ? timer->count()->scatter_s.value_or(study::pressUncertainty_s)
                                         : count.time_s.uncertainty / std::sqrt(2.0),
                                  3));
        showing = false;
        note->setText(tapped ? tr("From the taps: the scatter of a tap about an even beat gives the time an "
                                  "uncertainty of %1.")
                                   .arg(uncertaintyText(count.time_s.uncertainty, secondsText))
                             : tr("Standard uncertainty; usually 0.1 to 0.2 s (from memory). Start and stop "
                                  "together: %1.")
                                   .arg(uncertaintyText(count.time_s.uncertainty, secondsText)));
        if (!known) return result->setText(tr("No time yet."));
        const double n = count.flashes;
        const circuit::Measured cycle{count.time_s.value / n, count.time_s.uncertainty / n};
        const double rate = 1 / cycle.value;
        const circuit::Measured minute{60 * rate, 60 * rate * cycle.uncertainty / cycle.value};
        result->setText(tr("Cycle time %1; %2 flashes a minute")
                            .arg(measuredText(cycle, secondsText), measuredText(minute, numberText)));
    }

    StopwatchDialog& q;
    circuit::Measurement kept; ///< what the form does not show of it
    static circuit::Count usualCount() {
        return {usualFlashes, {0, study::startAndStop(study::pressUncertainty_s)}};
    }
    circuit::Count count = usualCount();
    std::optional<circuit::Count> untapped; ///< what stood there before the taps
    bool known = false;                     ///< there is a time
    bool tapped = false;                    ///< it is from taps
    bool showing = false;
    QLineEdit* title = nullptr;
    QSpinBox* flashes = nullptr;
    QuantityField *time = nullptr, *press = nullptr;
    QLabel *note = nullptr, *result = nullptr;
    TapTimer* timer = nullptr;
};

StopwatchDialog::StopwatchDialog(QWidget* parent) : QDialog(parent), d(std::make_unique<Private>(*this)) {
    setObjectName(QStringLiteral("stopwatch"));
    setWindowTitle(tr("Stopwatch"));
    d->make();
}

StopwatchDialog::~StopwatchDialog() = default;

void StopwatchDialog::setMeasurement(const circuit::Measurement& measurement) {
    d->kept = measurement;
    d->count = std::get<circuit::Count>(measurement.what);
    d->known = true;
    d->title->setText(QString::fromStdString(measurement.title));
    d->show();
    d->time->setFocus();
}

circuit::Measurement StopwatchDialog::measurement() const {
    circuit::Measurement m = d->kept;
    m.title = d->title->text().trimmed().toStdString();
    m.what = d->count;
    return m;
}

void StopwatchDialog::accept() {
    if (d->known) return QDialog::accept();
    d->result->setText(tr("Enter the time that the flashes took, or tap along with them."));
    d->time->setFocus();
}

TapTimer& StopwatchDialog::taps() {
    return *d->timer;
}

} // namespace blinkwright::widgets
