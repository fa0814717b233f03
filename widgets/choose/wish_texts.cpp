#include "widgets/choose/wish_texts.h"

#include "core/units/engineering.h"
#include "widgets/text/in_sentence.h"
#include "widgets/text/words.h"

#include <cmath>

namespace blinkwright::widgets {

using units::Unit;

namespace {

QString sentence(const std::string& fault) {
    const QString text = sentenceCase(QString::fromStdString(fault));
    return text.endsWith(u'.') ? text : text + u'.';
}

class Reader {
  public:
    explicit Reader(WishRead& into) : m_into(into) {}

    /// A number above 0, or a fault. @return 1 where there is a fault, so that what follows stays finite.
    double positive(WishField field, const QString& text, Unit unit) {
        const auto number = units::parseQuantity(text.trimmed().toStdString(), unit);
        if (!number) return fault(field, sentence(number.fault().text));
        if (!(number.value() > 0)) return fault(field, Words::tr("Must be greater than 0."));
        return number.value();
    }
    double fault(WishField field, const QString& words) {
        m_into.faults.emplace(field, words);
        return 1;
    }

  private:
    WishRead& m_into;
};

double rateFrom(Reader& reader, WishField field, const QString& text, RateUnit unit) {
    switch (unit) {
    case RateUnit::perMinute:
        return reader.positive(field, text, Unit::none) / 60;
    case RateUnit::hertz:
        return reader.positive(field, text, Unit::hertz);
    case RateUnit::seconds:
        return 1 / reader.positive(field, text, Unit::second);
    }
    return 1;
}

QString rateText(double rate_Hz, RateUnit unit) {
    constexpr int digits = 5; // half a per cent off is still the same range
    const double number = unit == RateUnit::perMinute ? 60 * rate_Hz
                          : unit == RateUnit::hertz   ? rate_Hz
                                                      : 1 / rate_Hz;
    return QString::fromStdString(units::formatQuantity(number, Unit::none, digits));
}

QString quantity(double value, Unit unit, int digits = 4) {
    return QString::fromStdString(units::formatQuantity(value, unit, digits));
}

void readLit(Reader& reader, const WishTexts& texts, study::Wish& wish) {
    if (texts.litUnit == LitUnit::share) {
        // A bare number is per cent, as the sentence has it.
        QString text = texts.lit.trimmed();
        if (text.endsWith(u'%')) text.chop(1);
        wish.lit = reader.positive(WishField::lit, text, Unit::none) / 100;
        if (wish.lit >= 1) reader.fault(WishField::lit, Words::tr("Must be less than 100 %."));
        return;
    }
    const double lit_s = reader.positive(WishField::lit, texts.lit, Unit::second);
    wish.lit = lit_s * wish.slowest_Hz();
    if (wish.rateTo_Hz) wish.lit = lit_s * std::sqrt(wish.slowest_Hz() * wish.fastest_Hz());
    if (wish.lit >= 1)
        reader.fault(WishField::lit,
                     Words::tr("Must be shorter than a cycle, %1.")
                         .arg(quantity(1 / std::sqrt(wish.slowest_Hz() * wish.fastest_Hz()), Unit::second)));
}

struct TextKey {
    const char* key;
    QString WishTexts::*text;
};
constexpr TextKey textKeys[] = {{"rate", &WishTexts::rate},
                                {"rate-to", &WishTexts::rateTo},
                                {"lit", &WishTexts::lit},
                                {"colour", &WishTexts::colour},
                                {"second", &WishTexts::second},
                                {"current", &WishTexts::current},
                                {"supply", &WishTexts::supply},
                                {"stay", &WishTexts::stayLit},
                                {"intensity", &WishTexts::intensity},
                                {"second-intensity", &WishTexts::secondIntensity}};
struct FlagKey {
    const char* key;
    bool WishTexts::*flag;
};
constexpr FlagKey flagKeys[] = {{"range", &WishTexts::range},
                                {"cmos", &WishTexts::cmos},
                                {"equal", &WishTexts::equalBrightness},
                                {"drawer", &WishTexts::fromDrawer}};
struct SeriesKey {
    const char* key;
    units::Series WishTexts::*series;
};
constexpr SeriesKey seriesKeys[] = {{"R1", &WishTexts::r1}, {"R2", &WishTexts::r2}, {"C1", &WishTexts::c1}};
const QString rateUnitKey = QStringLiteral("rate-unit"), litUnitKey = QStringLiteral("lit-unit"),
              lampsKey = QStringLiteral("lamps"), lampToKey = QStringLiteral("lamp-to");

} // namespace

WishRead readWish(const WishTexts& texts) {
    WishRead read;
    Reader reader(read);
    study::Wish& wish = read.wish;
    wish.rate_Hz = rateFrom(reader, WishField::rate, texts.rate, texts.rateUnit);
    if (texts.range) {
        wish.rateTo_Hz = rateFrom(reader, WishField::rateTo, texts.rateTo, texts.rateUnit);
        if (read.faults.empty() && *wish.rateTo_Hz == wish.rate_Hz)
            reader.fault(WishField::rateTo, Words::tr("A range needs two rates that differ."));
    }
    readLit(reader, texts, wish);
    wish.lamps = texts.lamps;
    wish.lampTo = texts.lampTo;
    wish.colours = {texts.colour.toStdString(), texts.second.toStdString()};
    wish.lampCurrent_A = reader.positive(WishField::current, texts.current, Unit::ampere);
    wish.supply_V = reader.positive(WishField::supply, texts.supply, Unit::volt);
    wish.cmos = texts.cmos;
    wish.r1 = texts.r1;
    wish.r2 = texts.r2;
    wish.c1 = texts.c1;
    if (texts.lamps != 2) return read;
    if (!texts.stayLit.trimmed().isEmpty())
        wish.stayLit_s = reader.positive(WishField::stayLit, texts.stayLit, Unit::second);
    wish.equalBrightness = texts.equalBrightness;
    const bool first = !texts.intensity.trimmed().isEmpty();
    const bool second = !texts.secondIntensity.trimmed().isEmpty();
    if (!texts.equalBrightness || (!first && !second)) return read;
    if (!first || !second) {
        reader.fault(first ? WishField::secondIntensity : WishField::intensity,
                     Words::tr("Both intensities are needed, or none."));
        return read;
    }
    wish.intensity_cd = {reader.positive(WishField::intensity, texts.intensity, Unit::candela),
                         reader.positive(WishField::secondIntensity, texts.secondIntensity, Unit::candela)};
    return read;
}

WishTexts withNearest(WishTexts texts, const study::Unmet& unmet) {
    if (unmet.rate_Hz > 0) texts.rate = rateText(unmet.rate_Hz, texts.rateUnit);
    if (unmet.rateTo_Hz && texts.range) texts.rateTo = rateText(*unmet.rateTo_Hz, texts.rateUnit);
    if (unmet.lit > 0) {
        const double rate = unmet.rateTo_Hz ? std::sqrt(unmet.rate_Hz * *unmet.rateTo_Hz) : unmet.rate_Hz;
        texts.lit = texts.litUnit == LitUnit::share || rate <= 0 ? quantity(100 * unmet.lit, Unit::none)
                                                                 : quantity(unmet.lit / rate, Unit::second);
    }
    if (unmet.supply_V > 0) texts.supply = quantity(unmet.supply_V, Unit::volt);
    // Rounded down: a longer time than the turn would be refused again.
    if (unmet.stayLit_s) texts.stayLit = quantity(std::floor(1e4 * *unmet.stayLit_s) / 1e4, Unit::second);
    return texts;
}

QVariantMap kept(const WishTexts& texts) {
    QVariantMap map{{rateUnitKey, static_cast<int>(texts.rateUnit)},
                    {litUnitKey, static_cast<int>(texts.litUnit)},
                    {lampsKey, texts.lamps},
                    {lampToKey, static_cast<int>(texts.lampTo)}};
    for (const TextKey& key : textKeys) map.insert(QLatin1String(key.key), texts.*key.text);
    for (const FlagKey& key : flagKeys) map.insert(QLatin1String(key.key), texts.*key.flag);
    for (const SeriesKey& key : seriesKeys) {
        const auto name = units::name(texts.*key.series);
        map.insert(QLatin1String(key.key), QString::fromLatin1(name.data(), static_cast<int>(name.size())));
    }
    return map;
}

WishTexts restored(const QVariantMap& map) {
    WishTexts texts;
    const auto choice = [&](const QString& key, int most, int otherwise) {
        const int value = map.value(key, otherwise).toInt();
        return value >= 0 && value <= most ? value : otherwise;
    };
    texts.rateUnit = static_cast<RateUnit>(choice(rateUnitKey, 2, 0));
    texts.litUnit = static_cast<LitUnit>(choice(litUnitKey, 1, 0));
    texts.lamps = choice(lampsKey, 2, 1) == 2 ? 2 : 1;
    texts.lampTo = static_cast<study::LampTo>(choice(lampToKey, 2, static_cast<int>(texts.lampTo)));
    for (const TextKey& key : textKeys)
        texts.*key.text = map.value(QLatin1String(key.key), texts.*key.text).toString();
    for (const FlagKey& key : flagKeys)
        texts.*key.flag = map.value(QLatin1String(key.key), texts.*key.flag).toBool();
    for (const SeriesKey& key : seriesKeys)
        if (const auto known = units::seriesNamed(map.value(QLatin1String(key.key)).toString().toStdString()))
            texts.*key.series = *known;
    return texts;
}

} // namespace blinkwright::widgets
