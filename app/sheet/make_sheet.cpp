#include "app/sheet/make_sheet.h"

#include "app/sheet/sheet_sections.h"
#include "core/base/wording.h"
#include "core/study/wiring_list.h"

#include <algorithm>
#include <array>

namespace blinkwright::app::sheet {

namespace {

constexpr int conclusionLines = 8;

struct TopicText {
    Topic topic;
    const char* key;
    const char* title;
};
constexpr std::array<TopicText, std::size(allTopics)> texts{{
    {Topic::head, "head", QT_TRANSLATE_NOOP("Words", "Title, author and date")},
    {Topic::aim, "aim", QT_TRANSLATE_NOOP("Words", "Aim")},
    {Topic::theory, "theory", QT_TRANSLATE_NOOP("Words", "Theory")},
    {Topic::drawing, "drawing", QT_TRANSLATE_NOOP("Words", "Circuit")},
    {Topic::parts, "parts", QT_TRANSLATE_NOOP("Words", "Parts")},
    {Topic::wiring, "wiring", QT_TRANSLATE_NOOP("Words", "Wiring")},
    {Topic::cautions, "cautions", QT_TRANSLATE_NOOP("Words", "Cautions")},
    {Topic::method, "method", QT_TRANSLATE_NOOP("Words", "Method")},
    {Topic::readings, "readings", QT_TRANSLATE_NOOP("Words", "Readings")},
    {Topic::traces, "traces", QT_TRANSLATE_NOOP("Words", "Traces")},
    {Topic::spread, "spread", QT_TRANSLATE_NOOP("Words", "Spread by tolerances")},
    {Topic::findings, "findings", QT_TRANSLATE_NOOP("Words", "Findings")},
    {Topic::why, "why", QT_TRANSLATE_NOOP("Words", "What explains the difference")},
    {Topic::conclusions, "conclusions", QT_TRANSLATE_NOOP("Words", "Conclusions")},
    {Topic::references, "references", QT_TRANSLATE_NOOP("Words", "References")},
}};

/// A student's copy holds no results.
bool isResult(Topic topic) {
    return topic == Topic::spread || topic == Topic::findings;
}

QString titleFor(const Making& making) {
    if (!making.words.title.isEmpty()) return making.words.title;
    const std::string& title = making.facts.circuit.title;
    return title.empty() ? Words::tr("Lamp blinker") : qs(title);
}

QString markFor(const Making& making) {
    QStringList marks;
    if (making.choice.copy == Copy::student) marks << Words::tr("Student copy");
    if (making.choice.copy == Copy::answers) marks << Words::tr("Answer key");
    if (making.facts.variant) marks << Words::tr("Variant %1").arg(*making.facts.variant);
    if (making.facts.firstName == "Set B") marks << Words::tr("Set B");
    return marks.join(QStringLiteral(", "));
}

std::vector<Block> headBlocks(const Making& making) {
    // A student's copy is for the student to sign.
    const SheetWords w = making.student() ? SheetWords{.group = making.words.group} : making.words;
    return {Fields{{{Words::tr("Author"), w.author},
                    {Words::tr("Date"), w.date},
                    {Words::tr("Partner"), w.partner},
                    {Words::tr("Group"), w.group}}}};
}

std::vector<Block> aimBlocks(const Making& making) {
    std::vector<Block> all;
    all.emplace_back(
        paragraph(making.words.aim.isEmpty()
                      ? Words::tr("To predict the flash rate and the duty cycle of this circuit from "
                                  "the values of its parts, to measure "
                                  "both on the board, and to account for the difference.")
                      : making.words.aim));
    // The circuit's own notes tell what it does, which a class is to find out, and speak of its own numbers.
    if (making.choice.copy == Copy::full && !making.facts.variant && !making.facts.circuit.notes.empty())
        all.emplace_back(paragraph(qs(making.facts.circuit.notes)));
    return all;
}

std::vector<Block> partsBlocks(const Making& making) {
    const auto rowsOf = [&](circuit::PartSet set) { return study::partsList(making.facts.circuit, set); };
    const auto list = [&](const std::vector<study::PartsRow>& parts) {
        Table table;
        table.name = Words::tr("Parts");
        table.columns = {{Words::tr("Number"), 1.0, true},
                         {Words::tr("Part"), 2.6},
                         {Words::tr("Marking"), 2.2},
                         {Words::tr("Designators"), 1.6}};
        for (const study::PartsRow& row : parts) {
            QStringList refs;
            for (const std::string& ref : row.refs) refs << qs(ref);
            table.rows.push_back({{{QString::number(row.refs.size())},
                                   {qs(row.description)},
                                   {qs(row.marking)},
                                   {refs.join(QStringLiteral(", "))}},
                                  false});
        }
        return table;
    };
    const std::vector<study::PartsRow> own = rowsOf(circuit::PartSet::A);
    if (!making.facts.b) return {list(own)};
    std::vector<study::PartsRow> others = rowsOf(circuit::PartSet::B);
    std::erase_if(others, [&](const study::PartsRow& row) {
        return std::ranges::any_of(own, [&](const study::PartsRow& known) {
            return known.refs == row.refs && known.description == row.description;
        });
    });
    return {Subheading{Words::tr("Set A")}, list(own), Subheading{Words::tr("Set B, where it differs")},
            list(others)};
}

std::vector<Block> wiringBlocks(const Making& making) {
    std::vector<Block> all;
    int number = 0;
    for (const study::BuildStep& step : study::wiringList(making.facts.circuit, circuit::PartSet::A))
        all.emplace_back(Paragraph{qs(step.text), Paragraph::Style::numbered, ++number});
    if (making.facts.b) all.emplace_back(note(Words::tr("Values are those of Set A.")));
    return all;
}

std::vector<Block> cautionsBlocks(const Making& making) {
    std::vector<Block> all;
    for (const std::string& caution : study::buildCautions(making.facts.circuit, circuit::PartSet::A))
        all.emplace_back(bullet(qs(caution)));
    all.emplace_back(
        bullet(Words::tr("The rules of your school, laboratory and country come before this sheet.")));
    return all;
}

std::vector<Block> methodBlocks(const Making& making) {
    std::vector<Block> all;
    all.emplace_back(Fields{{{Words::tr("Stopwatch"), {}},
                             {Words::tr("Meter"), {}},
                             {Words::tr("Oscilloscope or logger"), {}},
                             {Words::tr("Temperature"), {}}}});
    if (!making.words.method.isEmpty()) {
        for (const QString& part : making.words.method.split(u'\n', Qt::SkipEmptyParts))
            all.emplace_back(paragraph(part));
    } else {
        int number = 0;
        for (const QString& step :
             {Words::tr("Build the circuit by the wiring list. Let somebody else check it "
                        "before the supply is joined."),
              Words::tr("Measure the supply at its terminals while the circuit runs."),
              Words::tr("Count 20 flashes by stopwatch, from the start of a flash to the "
                        "start of the twentieth after it; repeat "
                        "three times."),
              Words::tr("Record pin 3 and pin 6 against pin 1 over several cycles, and read "
                        "pulse width and space width."),
              Words::tr("Measure the output (pin 3) while high and while low, and the "
                        "current of each lamp while it is lit."),
              Words::tr("State an uncertainty beside every reading.")})
            all.emplace_back(Paragraph{step, Paragraph::Style::numbered, ++number});
    }
    std::vector<Block> measured = making.student() ? std::vector<Block>{} : measurementsBlocks(making);
    if (!measured.empty()) {
        all.emplace_back(Subheading{Words::tr("What was measured")});
        for (Block& block : measured) all.push_back(std::move(block));
    }
    return all;
}

std::vector<Block> conclusionsBlocks(const Making& making) {
    if (making.words.conclusions.isEmpty() || making.student()) return {WritingLines{conclusionLines}};
    std::vector<Block> all;
    for (const QString& part : making.words.conclusions.split(u'\n', Qt::SkipEmptyParts))
        all.emplace_back(paragraph(part));
    return all;
}

std::vector<Block> blocksOf(const Making& making, Topic topic) {
    switch (topic) {
    case Topic::head:
        return headBlocks(making);
    case Topic::aim:
        return aimBlocks(making);
    case Topic::theory:
        return theoryBlocks(making);
    case Topic::drawing:
        return drawingBlocks(making);
    case Topic::parts:
        return partsBlocks(making);
    case Topic::wiring:
        return wiringBlocks(making);
    case Topic::cautions:
        return cautionsBlocks(making);
    case Topic::method:
        return methodBlocks(making);
    case Topic::readings:
        return readingsBlocks(making);
    case Topic::traces:
        return tracesBlocks(making);
    case Topic::spread:
        return spreadBlocks(making);
    case Topic::findings:
        return findingsBlocks(making);
    case Topic::why:
        return whyBlocks(making);
    case Topic::conclusions:
        return conclusionsBlocks(making);
    case Topic::references:
        return referencesBlocks(making);
    }
    return {};
}

} // namespace

const char* keyOf(Topic topic) {
    for (const TopicText& text : texts)
        if (text.topic == topic) return text.key;
    return "";
}

std::optional<Topic> topicNamed(const QString& key) {
    for (const TopicText& text : texts)
        if (key == QLatin1String(text.key)) return text.topic;
    return {};
}

QString titleOf(Topic topic) {
    for (const TopicText& text : texts)
        if (text.topic == topic) return Words::tr(text.title);
    return {};
}

const study::TimerReading* Making::timer() const {
    return readings().timers.empty() ? nullptr : &readings().timers.front();
}

QString Making::firstName() const {
    return facts.firstName.empty() ? Words::tr("Simulated") : qs(wording::inWords(facts.firstName));
}

bool tellsWhy(const SheetChoice& choice) {
    return choice.topics.contains(Topic::why) && choice.copy != Copy::student;
}

bool tellsSpread(const SheetChoice& choice) {
    return choice.topics.contains(Topic::spread) && choice.copy != Copy::student;
}

LabSheet makeLabSheet(const study::LabFacts& facts, const SheetWords& words, const SheetChoice& choice) {
    const Making making{facts, words, choice};
    LabSheet sheet;
    sheet.title = titleFor(making);
    sheet.mark = markFor(making);
    sheet.author = words.author;
    for (const Topic topic : allTopics) {
        if (!choice.topics.contains(topic) || (making.student() && isResult(topic))) continue;
        Section section{topic, topic == Topic::head ? QString() : titleOf(topic), blocksOf(making, topic)};
        if (!section.blocks.empty()) sheet.sections.push_back(std::move(section));
    }
    return sheet;
}

} // namespace blinkwright::app::sheet
