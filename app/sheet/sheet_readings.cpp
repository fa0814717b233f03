// The table of readings: textbook, simulated, measured, and how far they lie apart.
#include "app/sheet/sheet_sections.h"
#include "core/study/measured_against.h"
#include "core/units/rounding.h"
#include "widgets/readings/reading_rows.h"
#include "widgets/text/figure_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::app::sheet {

namespace {

using circuit::Measured;
using units::Unit;
using widgets::noValue;

enum class Form { seconds, hertz, share, number, ampere, volt, coulomb, duration };

struct Figure {
    QString name;
    Form form{};
    std::optional<double> book, a, b;
    std::optional<Measured> measured;
    bool byHand = true; ///< can be measured on the bench
};

Unit unitOf(Form form) {
    switch (form) {
    case Form::seconds:
    case Form::duration:
        return Unit::second;
    case Form::hertz:
        return Unit::hertz;
    case Form::ampere:
        return Unit::ampere;
    case Form::volt:
        return Unit::volt;
    case Form::coulomb:
        return Unit::coulomb;
    case Form::share:
    case Form::number:
        break;
    }
    return Unit::none;
}

QString text(Form form, double value) {
    switch (form) {
    case Form::seconds:
        return widgets::secondsText(value);
    case Form::hertz:
        return widgets::rateText(value);
    case Form::share:
        return widgets::shareText(value);
    case Form::number:
        return widgets::numberText(value);
    case Form::duration:
        return widgets::durationText(value);
    default:
        return widgets::quantityText(value, unitOf(form));
    }
}

units::Rounding roundingOf(const Figure& f, double value, double uncertainty) {
    return f.form == Form::share ? units::percentRounding(value, uncertainty)
                                 : units::roundingOf(value, uncertainty, unitOf(f.form));
}

/// What a table of readings has besides the names of the figures.
struct Wanted {
    bool book = false, second = false, measured = false, measuring = false;
};

class Rows {
  public:
    Rows(const Making& making, Table& table) : m_making(making), m_table(table) {
        const study::MeasuredReadings& m = making.facts.measured;
        m_wanted.measured = !m.empty();
        m_wanted.second = making.facts.b.has_value();
        const auto* timer = making.timer();
        m_wanted.book = timer && timer->textbook;
        if (making.student())
            studentColumns();
        else
            columns();
    }

    void head(const QString& name) { m_pendingHead = name; }

    void add(const Figure& f) {
        const bool nothing = !f.book && !f.a && !f.b && !f.measured;
        if (nothing || (m_making.student() && !f.byHand)) return;
        if (!m_pendingHead.isEmpty()) m_table.rows.push_back({{{m_pendingHead}}, true});
        m_pendingHead.clear();
        m_table.rows.push_back({m_making.student() ? studentCells(f) : cells(f), false});
    }

  private:
    void studentColumns() {
        m_table.columns = {{Words::tr("Figure"), 2.2},
                           {Words::tr("Predicted"), 1.2},
                           {Words::tr("Measured"), 1.2},
                           {Words::tr("Uncertainty"), 1.1},
                           {Words::tr("Measured − predicted"), 1.3},
                           {Words::tr("in %"), 0.9}};
    }
    std::vector<Cell> studentCells(const Figure& f) const {
        std::vector<Cell> cells{{f.name}};
        // No formula, no prediction.
        cells.push_back(f.book ? Cell{{}, true} : Cell{noValue});
        cells.push_back({{}, true});
        cells.push_back({{}, true});
        while (cells.size() < m_table.columns.size())
            cells.push_back(f.book ? Cell{{}, true} : Cell{noValue});
        return cells;
    }

    void columns() {
        const QString first = m_making.firstName();
        auto& c = m_table.columns;
        c.push_back({Words::tr("Figure"), 1.75});
        if (m_wanted.book) c.push_back({Words::tr("Textbook"), 1.05, true});
        c.push_back({first, 1.05, true});
        if (m_wanted.second) c.push_back({Words::tr("Set B"), 1.05, true});
        c.push_back({Words::tr("Measured"), 1.15, true});
        if (m_wanted.measured) c.push_back({Words::tr("u"), 1.2, true});
        c.push_back({difference(), 1.4, true});
        c.push_back({Words::tr("in %"), 0.95, true});
    }
    QString difference() const {
        // The columns are narrow: a set by its letter.
        const std::string& name = m_making.facts.firstName;
        const QString brief = name.empty() ? Words::tr("simulated") : qs(name).right(1);
        if (m_wanted.measured) return Words::tr("Measured − %1").arg(brief);
        return Words::tr("%1 − textbook").arg(name.empty() ? Words::tr("Simulated") : brief);
    }

    static Cell cell(const Figure& f, std::optional<double> value) {
        return {value && std::isfinite(*value) ? text(f.form, *value) : noValue};
    }

    std::vector<Cell> cells(const Figure& f) const {
        std::vector<Cell> cells{{f.name}};
        if (m_wanted.book) cells.push_back(cell(f, f.book));
        cells.push_back(cell(f, f.a));
        if (m_wanted.second) cells.push_back(cell(f, f.b));
        addMeasured(f, cells);
        return cells;
    }

    void addMeasured(const Figure& f, std::vector<Cell>& cells) const {
        if (!m_wanted.measured) {
            cells.push_back(f.byHand ? Cell{{}, true} : Cell{noValue});
            addDifference(f, f.a, f.book, 0, cells);
            return;
        }
        if (!f.measured) {
            cells.push_back({noValue});
            cells.push_back({noValue});
            addDifference(f, {}, {}, 0, cells);
            return;
        }
        const Measured& m = *f.measured;
        const units::Rounding r = roundingOf(f, m.value, m.uncertainty);
        cells.push_back({qs(r.text(m.value))});
        cells.push_back({m.uncertainty > 0 ? qs(r.text(m.uncertainty)) : noValue});
        addDifference(f, m.value, f.a, m.uncertainty, cells);
    }

    /// In units and in per cent; of a share in percentage points alone, since a per cent of a share misleads.
    void addDifference(const Figure& f, std::optional<double> found, std::optional<double> expected,
                       double uncertainty, std::vector<Cell>& cells) const {
        if (!found || !expected || *expected == 0) {
            cells.push_back({noValue});
            cells.push_back({noValue});
            return;
        }
        // Without an uncertainty the difference ends where the four digits of the figures do.
        units::Rounding rounding = roundingOf(f, *expected, uncertainty);
        if (f.form == Form::share) rounding.unit.clear();
        const QString units = qs(rounding.text(*found - *expected, true));
        if (f.form == Form::share) {
            cells.push_back({Words::tr("%1 points").arg(units)});
            cells.push_back({noValue});
            return;
        }
        // The sign of per cent stands in the head of the column.
        units::Rounding percent{.factor = 0.01, .unit = {}, .decimals = 2};
        if (uncertainty > 0) percent = units::percentRounding(1, uncertainty / std::abs(*expected));
        percent.unit.clear();
        cells.push_back({units});
        cells.push_back({qs(percent.text(*found / *expected - 1, true))});
    }

    const Making& m_making;
    Table& m_table;
    Wanted m_wanted;
    QString m_pendingHead;
};

template <class T, class Get>
std::optional<double> of(const std::optional<T>& thing, Get get) {
    return thing ? std::optional<double>(get(*thing)) : std::nullopt;
}

std::optional<Measured> times(const std::optional<Measured>& m, double factor) {
    if (!m) return {};
    return Measured{m->value * factor, m->uncertainty * factor};
}

/// The figures of one timer; those measured are of the first.
void addTimer(Rows& rows, const Making& making, std::size_t index) {
    const study::TimerReading& a = making.readings().timers[index];
    const study::TimerReading* b = nullptr;
    if (making.facts.b && index < making.facts.b->readings.timers.size())
        b = &making.facts.b->readings.timers[index];
    const study::MeasuredReadings none;
    const study::MeasuredReadings& m = index == 0 ? making.facts.measured : none;
    if (making.readings().timers.size() > 1) rows.head(Words::tr("Timer %1").arg(qs(a.ref)));
    std::optional<study::Phase> book, second;
    if (a.textbook) book = a.textbook->phase;
    if (b) second = b->settled;
    using P = const study::Phase&;
    const auto add = [&](const QString& name, Form form, auto get, const std::optional<Measured>& measured) {
        rows.add({name, form, of(book, get), of(a.settled, get), of(second, get), measured});
    };
    add(
        Words::tr("Cycle time T"), Form::seconds, [](P p) { return p.period_s(); }, m.period_s);
    add(
        Words::tr("Flash rate f"), Form::hertz, [](P p) { return p.rate_Hz(); }, m.rate_Hz);
    add(
        Words::tr("Flashes a minute"), Form::number, [](P p) { return 60 * p.rate_Hz(); },
        times(m.rate_Hz, 60));
    add(
        Words::tr("Pulse width (high)"), Form::seconds, [](P p) { return p.high_s; }, m.high_s);
    add(
        Words::tr("Space width (low)"), Form::seconds, [](P p) { return p.low_s; }, m.low_s);
    add(
        Words::tr("Duty cycle D"), Form::share, [](P p) { return p.duty(); }, m.duty);
    rows.add({Words::tr("First flash"), Form::seconds,
              of(a.textbook, [](const study::Textbook& t) { return t.firstHigh_s; }), a.firstHigh_s,
              b ? b->firstHigh_s : std::nullopt, m.firstHigh_s});
}

/// Of the first timer's output. One that reaches its rail is at 0 V, not at the last bit of the arithmetic.
std::optional<double> levelOf(const study::Study& study, bool high) {
    constexpr double least_V = 1e-6;
    const std::optional<double> level = study::outputLevel(study, high);
    return level && std::abs(*level) < least_V ? 0 : level;
}

void addLevels(Rows& rows, const Making& making) {
    const study::MeasuredReadings& m = making.facts.measured;
    const auto add = [&](const QString& name, auto figure, const std::optional<Measured>& measured) {
        const study::LabFacts& facts = making.facts;
        rows.add(
            {name, Form::volt, {}, figure(facts.a), facts.b ? figure(*facts.b) : std::nullopt, measured});
    };
    rows.head(Words::tr("Voltages"));
    add(Words::tr("Supply at its terminals"), study::terminalVoltage, m.supply_V);
    add(
        Words::tr("Output (pin 3) while high"), [](const study::Study& s) { return levelOf(s, true); },
        m.outputHigh_V);
    add(
        Words::tr("Output (pin 3) while low"), [](const study::Study& s) { return levelOf(s, false); },
        m.outputLow_V);
}

void addLamp(Rows& rows, const Making& making, const study::LampReading& a) {
    const study::LampReading* b = nullptr;
    if (making.facts.b)
        for (const study::LampReading& lamp : making.facts.b->readings.lamps)
            if (lamp.ref == a.ref) b = &lamp;
    std::optional<Measured> measured;
    for (const study::MeasuredLamp& lamp : making.facts.measured.lamps)
        if (lamp.part == a.id) measured = lamp.current_A;
    rows.head(Words::tr("Lamp %1").arg(qs(a.ref)));
    const auto add = [&](const QString& name, Form form, std::optional<double> study::LampReading::*figure,
                         bool byHand) {
        rows.add({name, form, {}, a.*figure, b ? b->*figure : std::nullopt, {}, byHand});
    };
    rows.add({Words::tr("Current while lit, mean"),
              Form::ampere,
              {},
              study::litCurrent(a),
              b ? study::litCurrent(*b) : std::nullopt,
              measured});
    add(Words::tr("Lit time in a cycle"), Form::seconds, &study::LampReading::litTime_s, true);
    add(Words::tr("Peak current"), Form::ampere, &study::LampReading::peak_A, false);
    add(Words::tr("Mean current"), Form::ampere, &study::LampReading::mean_A, false);
    add(Words::tr("Charge a flash"), Form::coulomb, &study::LampReading::charge_C, false);
}

void addSupply(Rows& rows, const Making& making) {
    const std::optional<study::SupplyReading>& a = making.readings().supply;
    if (!a) return;
    const study::SupplyReading* b =
        making.facts.b && making.facts.b->readings.supply ? &*making.facts.b->readings.supply : nullptr;
    rows.head(Words::tr("Supply %1").arg(qs(a->ref)));
    rows.add(
        {Words::tr("Mean current"), Form::ampere, {}, a->mean_A, b ? b->mean_A : std::nullopt, {}, false});
    rows.add({Words::tr("Battery life"),
              Form::duration,
              {},
              a->batteryLife_s,
              b ? b->batteryLife_s : std::nullopt,
              {},
              false});
}

/// How far off the cycle time is, held against what the measurement can tell.
QString verdictOf(const Making& making) {
    const auto& m = making.facts.measured.period_s;
    const study::TimerReading* timer = making.timer();
    if (!m || !(m->uncertainty > 0) || !timer || !timer->settled) return {};
    const double off = std::abs(m->value - timer->settled->period_s()) / m->uncertainty;
    return Words::tr("The measured cycle time lies %1 times its standard uncertainty from the simulated one.")
        .arg(widgets::plainNumber(off, 'f', off < 9.95 ? 1 : 0));
}

} // namespace

std::vector<Block> readingsBlocks(const Making& making) {
    std::vector<Block> all;
    if (!making.student() && !making.blinks()) {
        const std::string verdict(study::name(making.readings().verdict));
        all.emplace_back(
            paragraph(Words::tr("By simulation the circuit does not blink: %1.").arg(qs(verdict))));
        for (const std::string& reason : making.readings().reasons) all.emplace_back(bullet(qs(reason)));
    }
    Table table;
    table.name = Words::tr("Readings");
    Rows rows(making, table);
    for (std::size_t k = 0; k < making.readings().timers.size(); ++k) addTimer(rows, making, k);
    addLevels(rows, making);
    for (const study::LampReading& lamp : making.readings().lamps) addLamp(rows, making, lamp);
    addSupply(rows, making);
    all.emplace_back(std::move(table));
    if (making.student()) {
        all.emplace_back(note(
            Words::tr("Predicted: by the formulas of the theory. Uncertainty: standard uncertainty, k = 1 "
                      "(JCGM 100:2008).")));
        return all;
    }
    if (const QString verdict = verdictOf(making); !verdict.isEmpty()) all.emplace_back(paragraph(verdict));
    if (making.facts.measured.contradicting)
        all.emplace_back(
            paragraph(Words::tr("Two measurements of one figure lie further apart than their uncertainties "
                                "allow: one of them is wrong, or the board changed between them.")));
    QString sentence =
        making.facts.b ? Words::tr("The textbook's figures are those of Set A's values. ") : QString();
    if (!making.facts.measured.empty())
        sentence += Words::tr("u: standard uncertainty, k = 1 (JCGM 100:2008); measured numbers are rounded "
                              "by them. ");
    sentence += Words::tr("Simulated figures are of the settled cycle, with the timer's typical values.");
    all.emplace_back(note(sentence));
    return all;
}

std::vector<Block> measurementsBlocks(const Making& making) {
    std::vector<Block> all;
    const auto quantity = [](const Measured& m, Unit unit) {
        const units::Rounding r = units::roundingOf(m.value, m.uncertainty, unit);
        return m.uncertainty > 0 ? Words::tr("%1, standard uncertainty %2")
                                       .arg(qs(r.text(m.value)), qs(r.text(m.uncertainty)))
                                 : qs(r.text(m.value));
    };
    for (const auto& measurement : making.facts.circuit.measurements) {
        if (!measurement->used) continue;
        QString text;
        if (const auto* count = std::get_if<circuit::Count>(&measurement->what)) {
            text =
                Words::tr("%1 flashes in %2").arg(count->flashes).arg(quantity(count->time_s, Unit::second));
        } else if (const auto* meter = std::get_if<circuit::MeterReading>(&measurement->what)) {
            const circuit::Part* part = making.facts.circuit.find(meter->part);
            const bool current = meter->quantity == circuit::MeterQuantity::lampCurrent;
            Unit unit = current ? Unit::ampere : Unit::volt;
            QString what = qs(std::string(circuit::name(meter->quantity)));
            if (meter->quantity == circuit::MeterQuantity::partValue && part) {
                const circuit::KeyInfo* key = circuit::findKey(circuit::info(part->kind), meter->key);
                if (key) unit = key->unit;
                what = qs(meter->key);
            }
            text = Words::tr("%1 of %2: %3")
                       .arg(what, part ? qs(part->ref) : noValue, quantity(meter->value, unit));
        } else if (const auto* record = std::get_if<circuit::Record>(&measurement->what)) {
            text = Words::tr("Record %1: %2 switchings")
                       .arg(qs(record->source))
                       .arg(record->switchings_s.size());
        }
        if (text.isEmpty()) continue;
        all.emplace_back(
            bullet(measurement->title.empty() ? text : qs(measurement->title) + QStringLiteral(": ") + text));
    }
    return all;
}

} // namespace blinkwright::app::sheet
