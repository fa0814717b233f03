#include "widgets/rooms/account_words.h"

#include "widgets/text/measured_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/words.h"

#include <cmath>

namespace blinkwright::widgets {

using study::BudgetFigure;
using study::FitFigure;
using study::PriorFrom;
using study::UnknownKind;
using units::Unit;

namespace {

/// Of a value by its key as in files.
QString keyName(const std::string& key) {
    if (key == "leakage_conductance") return Words::tr("leakage");
    if (key == "levels") return Words::tr("switching levels");
    if (key == "voltage") return Words::tr("voltage without load");
    if (key == "device.discharge_offset") return Words::tr("voltage left by pin 7");
    if (key == "device.discharge_resistance") return Words::tr("resistance of pin 7");
    if (key == "device.high_drop_1mA") return Words::tr("drop of the output high");
    if (key == "device.high_resistance") return Words::tr("resistance of the output high");
    if (key == "device.low_resistance") return Words::tr("resistance of the output low");
    if (key == "forward_voltage") return Words::tr("forward voltage");
    return {}; // the part's main value needs no name
}

/// Of a difference of two shares.
QString pointsText(double share) {
    return Words::tr("%1 points").arg(numberText(100 * share));
}

QString named(const std::string& ref, const std::string& key) {
    const QString part = QString::fromStdString(ref), value = keyName(key);
    return value.isEmpty() ? part : Words::tr("%1, %2").arg(part, value);
}

} // namespace

QString valueName(const study::Unknown& value) {
    return named(value.ref, value.key);
}

QString statedText(const study::FittedValue& value) {
    if (value.kind == UnknownKind::levels) return Words::tr("as they should be");
    if (value.kind == UnknownKind::leakage && value.nominal == 0) return Words::tr("none");
    return QString::fromStdString(units::formatQuantity(value.nominal, value.unit));
}

QString beforehandText(const study::FittedValue& value) {
    const QString text = measuredText(value.prior, formOf(value.unit));
    switch (value.from) {
    case PriorFrom::tolerance:
        return Words::tr("%1, by tolerance").arg(text);
    case PriorFrom::reading:
        return Words::tr("%1, on the meter").arg(text);
    case PriorFrom::usual:
        break;
    }
    return Words::tr("%1, as usual").arg(text);
}

QString figureName(const study::FittedFigure& figure) {
    const QString part = QString::fromStdString(figure.ref);
    switch (figure.figure) {
    case FitFigure::rate:
        return Words::tr("Flash rate");
    case FitFigure::period:
        return Words::tr("Cycle time");
    case FitFigure::high:
        return Words::tr("Pulse width (high)");
    case FitFigure::low:
        return Words::tr("Space width (low)");
    case FitFigure::duty:
        return Words::tr("Duty cycle");
    case FitFigure::firstHigh:
        return Words::tr("First flash");
    case FitFigure::supplyVoltage:
        return Words::tr("%1 at its terminals").arg(part);
    case FitFigure::outputHigh:
        return Words::tr("Output of %1, high").arg(part);
    case FitFigure::outputLow:
        return Words::tr("Output of %1, low").arg(part);
    case FitFigure::lampCurrent:
        return Words::tr("Current of %1 while lit").arg(part);
    }
    return {};
}

FigureText formOf(Unit unit) {
    return unit == Unit::none ? shareText : figureTextOf(unit);
}

FigureText formOf(const study::BudgetRow& row) {
    return row.what == "time base" ? numberText : formOf(row.unit);
}

QString budgetFigureName(BudgetFigure figure) {
    switch (figure) {
    case BudgetFigure::rate:
        return Words::tr("Flash rate");
    case BudgetFigure::period:
        return Words::tr("Cycle time");
    case BudgetFigure::duty:
        break;
    }
    return Words::tr("Duty cycle");
}

QString budgetRowName(const study::BudgetRow& row) {
    const bool count = row.ref == "count", record = row.ref == "record";
    if (!count && !record) return named(row.ref, row.key);
    const QString kind = count ? Words::tr("Count") : Words::tr("Record");
    return row.key.empty() ? kind : Words::tr("%1 “%2”").arg(kind, QString::fromStdString(row.key));
}

QString budgetRowSource(const study::BudgetRow& row) {
    if (row.what == "tolerance") return Words::tr("tolerance");
    if (row.what == "timing tolerance") return Words::tr("timing tolerance");
    if (row.what == "its reading") return Words::tr("its reading on the meter");
    if (row.what == "what is usual") return Words::tr("what is usual");
    if (row.what == "start and stop by hand") return Words::tr("start and stop by hand");
    if (row.what == "scatter of the switchings") return Words::tr("scatter of the switchings");
    if (row.what == "step between samples") return Words::tr("step between samples");
    if (row.what == "time base") return Words::tr("time base");
    return QString::fromStdString(row.what);
}

QString sensitivityText(const study::BudgetRow& row, BudgetFigure figure) {
    // In the prefix that the value of the row is shown with.
    const double size = std::max(std::abs(row.value), row.uncertainty);
    const units::Prefix prefix =
        row.unit == Unit::none || size == 0 ? units::Prefix{"", 1} : units::prefixFor(size);
    const double slope = row.sensitivity * prefix.factor;
    QString text = plainNumber(std::abs(slope), 'g', 3);
    if (const auto e = text.indexOf(u'e'); e >= 0)
        text = QStringLiteral("%1·10%2").arg(text.left(e), [&] {
            QString power;
            for (const QChar c : QString::number(text.mid(e + 1).toInt()))
                power += c == u'-'   ? QChar(0x207B)
                         : c == u'1' ? QChar(0x00B9)
                         : c == u'2' ? QChar(0x00B2)
                         : c == u'3' ? QChar(0x00B3)
                                     : QChar(0x2070 + c.digitValue());
            return power;
        }());
    if (slope < 0) text.prepend(minusSign);
    const QString below = QString::fromUtf8(prefix.text.data(), static_cast<qsizetype>(prefix.text.size())) +
                          QString::fromUtf8(units::symbol(row.unit).data(),
                                            static_cast<qsizetype>(units::symbol(row.unit).size()));
    const auto above = units::symbol(study::unitOf(figure));
    const QString over = QString::fromUtf8(above.data(), static_cast<qsizetype>(above.size()));
    const QString unit =
        below.isEmpty() ? over : (over.isEmpty() ? QStringLiteral("1") : over) + u'/' + below;
    return unit.isEmpty() ? text : text + QChar(QChar::Nbsp) + unit;
}

QString agreementWords(const study::Budget& predicted, const study::Budget& measured) {
    const study::Agreement a = compare(predicted, measured);
    const FigureText form =
        predicted.figure == BudgetFigure::duty ? pointsText : formOf(unitOf(predicted.figure));
    const QString difference = signedText(a.difference, form), limit = form(a.limit);
    return a.agree
               ? Words::tr("Prediction and measurement agree: they differ by %1, and may by %2.")
                     .arg(difference, limit)
               : Words::tr("Prediction and measurement do not agree: they differ by %1, and may by %2 only.")
                     .arg(difference, limit);
}

} // namespace blinkwright::widgets
