// Spread, findings, causes and references of a lab sheet.
#include "app/sheet/sheet_sections.h"
#include "core/units/rounding.h"
#include "widgets/rooms/spread_figures.h"
#include "widgets/rooms/why_words.h"
#include "widgets/text/figure_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::app::sheet {

namespace {

using widgets::noValue;
/// Parts with less of the variance than this are not named.
constexpr double leastShare = 0.005;

QString withSign(double value) {
    return widgets::signedText(value, widgets::secondsText);
}

/// A change of a share, in percentage points.
QString pointsOf(double share) {
    units::Rounding points{.factor = 0.01, .unit = {}, .decimals = 3};
    return Words::tr("%1 points").arg(qs(points.text(share, true)));
}

/// How far off, without the sign, which stands in the head of the column.
QString perCent(double found, double expected) {
    const units::Rounding percent{.factor = 0.01, .unit = {}, .decimals = 2};
    return qs(percent.text(found / expected - 1, true));
}

QString measuredInBand(const Making& making, const study::SpreadFigure& period) {
    const auto& m = making.facts.measured.period_s;
    if (!m) return {};
    if (m->value >= period.p5 && m->value <= period.p95)
        return Words::tr("The measured cycle time lies within the middle 90 % of the boards.");
    if (m->value >= period.worstLow && m->value <= period.worstHigh)
        return Words::tr(
            "The measured cycle time lies outside the middle 90 % of the boards, but within the worst "
            "case: the "
            "tolerances alone can explain it.");
    return Words::tr(
        "The measured cycle time lies outside the worst case: the tolerances alone do not explain it.");
}

QString sharesText(const study::SpreadOutcome& spread) {
    std::vector<study::SpreadShare> shares = spread.shares;
    std::ranges::stable_sort(shares, std::ranges::greater{}, &study::SpreadShare::share);
    QStringList named;
    for (const study::SpreadShare& share : shares)
        if (share.share >= leastShare)
            named << Words::tr("%1 %2\u00A0%")
                         .arg(qs(share.ref), widgets::plainNumber(100 * share.share, 'f', 1));
    return named.isEmpty() ? QString()
                           : Words::tr("Shares of the variance of the flash rate: %1.")
                                 .arg(named.join(QStringLiteral(", ")));
}

QString wordOf(study::Severity severity) {
    switch (severity) {
    case study::Severity::fault:
        return Words::tr("Fault");
    case study::Severity::overstress:
        return Words::tr("Overstress");
    case study::Severity::doubt:
        return Words::tr("Doubtful");
    case study::Severity::caution:
        return Words::tr("Caution");
    case study::Severity::note:
        return Words::tr("Note");
    }
    return {};
}

QString sentenceOf(const study::Finding& f) {
    QString text = wordOf(f.severity) + QStringLiteral(": ") + qs(f.text);
    if (!f.remedy.empty()) text += u' ' + qs(f.remedy);
    return text;
}

bool hasCmos(const Making& making) {
    return std::ranges::any_of(making.facts.a.board.timers, [](const devices::Timer& t) { return t.cmos; });
}
bool hasBipolar(const Making& making) {
    return std::ranges::any_of(making.facts.a.board.timers, [](const devices::Timer& t) { return !t.cmos; });
}

} // namespace

std::vector<Block> spreadBlocks(const Making& making) {
    const auto& spread = making.facts.spread;
    if (!spread || spread->cancelled) return {};
    if (!spread->reason.empty()) return {paragraph(qs(spread->reason))};
    std::vector<Block> all;
    all.emplace_back(paragraph(
        Words::tr("%L1 boards with every part somewhere within its tolerance (drawn alike over all of "
                  "it, seed %2); %3 of them "
                  "blink.")
            .arg(spread->boards)
            .arg(spread->seed)
            .arg(qs(units::formatQuantity(100 * spread->blinkingShare, units::Unit::none, 4)) +
                 QStringLiteral("\u00A0%"))));
    Table table;
    table.name = Words::tr("Spread");
    table.columns = {{Words::tr("Figure"), 1.7},          {Words::tr("Nominal"), 1, true},
                     {Words::tr("Mean"), 1, true},        {Words::tr("Standard deviation"), 1.1, true},
                     {Words::tr("90 % lie in"), 2, true}, {Words::tr("Worst case"), 2, true}};
    for (const widgets::SpreadFigureView& f : widgets::spreadFigures(*spread)) {
        const study::SpreadFigure& s = f.statistics;
        const auto range = [&](double low, double high) {
            return Words::tr("%1 to %2").arg(f.text(low), f.text(high));
        };
        table.rows.push_back({{{f.name},
                               {f.text(s.nominal)},
                               {f.text(s.mean)},
                               {f.text(s.sd)},
                               {range(s.p5, s.p95)},
                               {range(s.worstLow, s.worstHigh)}},
                              false});
    }
    all.emplace_back(std::move(table));
    if (const QString shares = sharesText(*spread); !shares.isEmpty()) all.emplace_back(paragraph(shares));
    if (spread->period_s)
        if (const QString band = measuredInBand(making, *spread->period_s); !band.isEmpty())
            all.emplace_back(paragraph(band));
    return all;
}

std::vector<Block> findingsBlocks(const Making& making) {
    std::vector<Block> all;
    for (const study::Finding& f : making.facts.a.findings) all.emplace_back(bullet(sentenceOf(f)));
    if (making.facts.b) {
        const auto& own = making.facts.a.findings;
        for (const study::Finding& f : making.facts.b->findings) {
            const bool known = std::ranges::any_of(
                own, [&](const study::Finding& o) { return o.kind == f.kind && o.places == f.places; });
            if (!known) all.emplace_back(bullet(Words::tr("Set B: %1").arg(sentenceOf(f))));
        }
    }
    if (all.empty())
        all.emplace_back(paragraph(Words::tr("There are no findings: no fault, nothing overstressed.")));
    return all;
}

std::vector<Block> whyBlocks(const Making& making) {
    const auto& why = making.facts.why;
    if (making.student())
        return {
            paragraph(Words::tr(
                "By how much do prediction and measurement differ? Which causes make the difference, and in "
                "which direction does each act?")),
            WritingLines{6}};
    if (!why) return {};
    if (!why->textbook || !why->simulated)
        return {paragraph(why->reason.empty() ? Words::tr("There is no difference to explain.")
                                              : qs(why->reason))};
    std::vector<Block> all;
    all.emplace_back(paragraph(
        Words::tr("From the textbook to the simulated board, cause by cause. Each is simulated by itself "
                  "on the textbook circuit; “Together” is what the causes do to each other.")));
    Table table;
    table.name = Words::tr("What explains the difference");
    table.columns = {{Words::tr("Cause"), 1.5},
                     {Words::tr("Cycle time"), 1, true},
                     {Words::tr("in %"), 0.75, true},
                     {Words::tr("Duty cycle"), 1.2, true},
                     {Words::tr("What it does"), 3.2}};
    const double book = why->textbook->period_s();
    table.rows.push_back({{{Words::tr("Textbook")},
                           {widgets::secondsText(book)},
                           {},
                           {widgets::shareText(why->textbook->duty())},
                           {}},
                          false});
    const auto add = [&](const QString& name, const std::optional<study::WhyChange>& change,
                         const QString& meaning) {
        if (!change) {
            table.rows.push_back(
                {{{name}, {noValue}, {noValue}, {noValue}, {Words::tr("Does not blink with this alone.")}},
                 false});
            return;
        }
        table.rows.push_back({{{name},
                               {withSign(change->period_s)},
                               {perCent(book + change->period_s, book)},
                               {pointsOf(change->duty)},
                               {meaning}},
                              false});
    };
    for (const study::WhyStep& step : why->steps)
        add(widgets::causeName(step.imperfection), step.change, widgets::causeMeaning(step.imperfection));
    if (why->interaction) add(Words::tr("Together"), why->interaction, {});
    table.rows.push_back({{{Words::tr("Simulated")},
                           {widgets::secondsText(why->simulated->period_s())},
                           {perCent(why->simulated->period_s(), book)},
                           {widgets::shareText(why->simulated->duty())},
                           {}},
                          false});
    const auto& m = making.facts.measured.period_s;
    if (m) {
        const double rest = m->value - why->simulated->period_s();
        table.rows.push_back(
            {{{Words::tr("Measured less simulated")},
              {withSign(rest)},
              {perCent(m->value, why->simulated->period_s())},
              {noValue},
              {Words::tr(
                  "What the model does not know: tolerance of the parts, the timer at hand, temperature, "
                  "the measurement.")}},
             false});
    }
    all.emplace_back(std::move(table));
    return all;
}

std::vector<Block> referencesBlocks(const Making& making) {
    std::vector<Block> all;
    const study::TimerReading* timer = making.timer();
    const bool plain = timer && timer->textbook && timer->textbook->form == study::AstableForm::plain;
    if (plain)
        all.emplace_back(bullet(
            Words::tr("Formulas of the astable: TI NE555/SA555/SE555, SLFS022, astable operation, there "
                      "rounded to 0.693 for ln 2.")));
    else if (timer && timer->textbook)
        all.emplace_back(bullet(
            Words::tr("Levels of one third and two thirds of the supply: TI NE555/SA555/SE555, SLFS022. The "
                      "formulas follow from them and from the law of a capacitor's charging.")));
    if (hasBipolar(making))
        all.emplace_back(bullet(
            Words::tr("Typical values of the bipolar timer: TI NE555/SA555/SE555, SLFS022A (rev. Sept 2000); "
                      "ST Doc ID 2182 Rev 6.")));
    if (hasCmos(making))
        all.emplace_back(
            bullet(Words::tr("Typical values of the CMOS timer: TI TLC555, SLFS043C (rev. Sept 1997).")));
    all.emplace_back(bullet(
        Words::tr("Uncertainty: JCGM 100:2008, Evaluation of measurement data. Guide to the expression of "
                  "uncertainty in measurement.")));
    all.emplace_back(bullet(
        Words::tr("Flashes: Web Content Accessibility Guidelines (WCAG) 2.2, success criterion 2.3.1.")));
    return all;
}

} // namespace blinkwright::app::sheet
