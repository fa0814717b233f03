#include "widgets/readings/reading_rows.h"

#include "widgets/text/figure_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/words.h"

#include <cmath>

namespace blinkwright::widgets {

namespace {

using units::Unit;

ReadingCell cell(std::optional<double> value, FigureText form, const QString& why) {
    if (value && std::isfinite(*value)) return {form(*value), {}};
    return {noValue, why};
}

/// Why columns are empty, said in the cells' tooltips.
struct Whys {
    QString textbook, setA;
};

ReadingRow row(const QString& figure, const QString& meaning, std::optional<double> textbook,
               std::optional<double> setA, FigureText form, const Whys& whys) {
    ReadingRow r;
    r.figure = figure;
    r.meaning = meaning;
    r.value = setA && std::isfinite(*setA) ? setA : std::nullopt;
    r.form = form;
    r.isShare = form == shareText;
    r.textbook = cell(textbook, form, whys.textbook);
    r.setA = cell(setA, form, whys.setA);
    if (textbook && setA && *textbook != 0)
        r.difference = {offText(*setA, *textbook), {}};
    else
        r.difference = {noValue, textbook ? whys.setA : whys.textbook};
    return r;
}

ReadingRow heading(const QString& text) {
    ReadingRow r;
    r.heading = true;
    r.figure = text;
    return r;
}

template <class T, class Get>
auto of(const std::optional<T>& thing, Get get) -> std::optional<double> {
    return thing ? std::optional<double>(get(*thing)) : std::nullopt;
}

void timerRows(const study::TimerReading& t, bool isFirst, const Whys& whys, std::vector<ReadingRow>& rows) {
    using Measured = study::MeasuredFigure;
    // What is measured is of the first timer.
    const auto measuring = [&](Measured figure) {
        if (isFirst) rows.back().figureOf = figure;
    };
    std::optional<study::Phase> book;
    if (t.textbook) book = t.textbook->phase;
    const auto add = [&](const QString& figure, const QString& meaning, FigureText form, Measured measures,
                         auto get) {
        rows.push_back(row(figure, meaning, of(book, get), of(t.settled, get), form, whys));
        measuring(measures);
    };
    using P = const study::Phase&;
    add(Words::tr("Flash rate"), Words::tr("Cycles of the output in a second"), rateText, Measured::rate,
        [](P p) { return p.rate_Hz(); });
    add(Words::tr("Flashes a minute"), Words::tr("Cycles of the output in a minute"), numberText,
        Measured::perMinute, [](P p) { return 60 * p.rate_Hz(); });
    add(Words::tr("Cycle time"), Words::tr("From one rise of the output to the next"), secondsText,
        Measured::period, [](P p) { return p.period_s(); });
    add(Words::tr("Pulse width (high)"), Words::tr("How long the output is high in a cycle"), secondsText,
        Measured::high, [](P p) { return p.high_s; });
    add(Words::tr("Space width (low)"), Words::tr("How long the output is low in a cycle"), secondsText,
        Measured::low, [](P p) { return p.low_s; });
    add(Words::tr("Duty cycle"), Words::tr("Pulse width over cycle time"), shareText, Measured::duty,
        [](P p) { return p.duty(); });
    std::optional<double> bookFirst;
    if (t.textbook) bookFirst = t.textbook->firstHigh_s;
    Whys first = whys;
    if (first.setA.isEmpty()) first.setA = Words::tr("The run does not begin at power-on.");
    rows.push_back(row(Words::tr("First flash"),
                       Words::tr("How long the output is first high after power-on"), bookFirst,
                       t.firstHigh_s, secondsText, first));
    measuring(Measured::firstHigh);
}

/// Flashes a minute, to three digits.
QString rateText(const study::Readings& r) {
    if (r.timers.empty() || !r.timers.front().settled) return {};
    const double minute = 60 * r.timers.front().settled->rate_Hz();
    return minute >= 1000 ? plainNumber(minute, 'f', 0)
                          : QString::fromStdString(units::formatQuantity(minute, Unit::none, 3, true));
}

QString verdictText(const study::Readings& r) {
    QString text;
    switch (r.verdict) {
    case study::Verdict::blinks:
        text = Words::tr("Blinks");
        if (const QString minute = rateText(r); !minute.isEmpty())
            text += Words::tr(": %1 flashes a minute").arg(minute);
        if (r.overRun) text += Words::tr(" (figures over the whole cycles of the run)");
        break;
    case study::Verdict::settlesHigh:
        text = Words::tr("Does not blink: the output settles high");
        break;
    case study::Verdict::settlesLow:
        text = Words::tr("Does not blink: the output settles low");
        break;
    case study::Verdict::doesNotSettle:
        text = Words::tr("Does not settle into even flashes");
        break;
    case study::Verdict::cannotRun:
        text = Words::tr("Cannot run");
        break;
    }
    for (const std::string& reason : r.reasons) text += QLatin1Char('\n') + QString::fromStdString(reason);
    return text;
}

QString titled(const char* kind, const std::string& ref) {
    return Words::tr(kind).arg(QString::fromStdString(ref));
}

} // namespace

QString durationText(double time_s) {
    const auto three = [](double v, const char* unit) {
        const int decimals = v >= 100 ? 0 : v >= 10 ? 1 : 2;
        return plainNumber(v, 'f', decimals) + QStringLiteral("\u00A0") + QLatin1String(unit);
    };
    if (time_s < 120) return three(time_s, "s");
    if (time_s < 7200) return three(time_s / 60, "min");
    if (time_s < 48 * 3600) return three(time_s / 3600, "h");
    return three(time_s / 86400, "d");
}

ReadingTable readingTable(const study::Readings& readings) {
    ReadingTable table;
    table.verdict = verdictText(readings);
    if (readings.verdict == study::Verdict::blinks && !readings.overRun && readings.reasons.empty())
        table.rate = rateText(readings);
    const QString stopped = readings.verdict == study::Verdict::blinks
                                ? Words::tr("This timer has no cycle of its own.")
                                : Words::tr("The circuit does not blink.");
    for (const study::TimerReading& t : readings.timers) {
        if (readings.timers.size() > 1) table.rows.push_back(heading(titled("Timer %1", t.ref)));
        timerRows(t, &t == readings.timers.data(),
                  {t.textbook ? QString() : Words::tr("There is no textbook formula for this wiring."),
                   t.settled ? QString() : stopped},
                  table.rows);
    }
    std::optional<double> period;
    if (!readings.timers.empty())
        period = of(readings.timers.front().settled, [](const study::Phase& p) { return p.period_s(); });

    const QString noRun = period ? Words::tr("The run gave no figure for this.") : stopped;
    const Whys own{Words::tr("The textbook formulas speak of times only."), noRun};
    for (const study::LampReading& lamp : readings.lamps) {
        table.rows.push_back(heading(titled("Lamp %1", lamp.ref)));
        const auto add = [&](const QString& figure, const QString& meaning, std::optional<double> value,
                             FigureText form) {
            table.rows.push_back(row(figure, meaning, {}, value, form, own));
            table.rows.back().part = lamp.id;
        };
        add(Words::tr("Lit time"), Words::tr("Time in a cycle with more than 5 % of the rated current"),
            lamp.litTime_s, secondsText);
        add(Words::tr("Share lit"), Words::tr("Lit time over cycle time"),
            lamp.litTime_s && period ? std::optional(*lamp.litTime_s / *period) : std::nullopt, shareText);
        add(Words::tr("Peak current"), Words::tr("Largest current in a cycle"), lamp.peak_A,
            textIn<Unit::ampere>);
        add(Words::tr("Mean current"), Words::tr("Mean over a cycle"), lamp.mean_A, textIn<Unit::ampere>);
        add(Words::tr("Effective current"), Words::tr("Root of the mean square over a cycle"), lamp.rms_A,
            textIn<Unit::ampere>);
        add(Words::tr("Charge a flash"), Words::tr("Current times time in a cycle"), lamp.charge_C,
            textIn<Unit::coulomb>);
    }
    if (readings.supply) {
        const study::SupplyReading& s = *readings.supply;
        table.rows.push_back(heading(titled("Supply %1", s.ref)));
        table.rows.push_back(row(Words::tr("Mean current"),
                                 Words::tr("Mean over a cycle, out of the plus pin"), {}, s.mean_A,
                                 textIn<Unit::ampere>, own));
        table.rows.push_back(row(Words::tr("Peak current"), Words::tr("Largest current in a cycle"), {},
                                 s.peak_A, textIn<Unit::ampere>, own));
        table.rows.push_back(row(Words::tr("Energy a flash"),
                                 Words::tr("No-load voltage times charge in a cycle"), {}, s.energy_J,
                                 textIn<Unit::joule>, own));
        Whys life = own;
        if (s.mean_A) life.setA = Words::tr("The supply states no capacity.");
        table.rows.push_back(row(Words::tr("Battery life"), Words::tr("Stated capacity over mean current"),
                                 {}, s.batteryLife_s, durationText, life));
    }
    return table;
}

} // namespace blinkwright::widgets
