#include "app/verbs/lab_sheet.h"

#include "app/sheet/make_sheet.h"
#include "app/sheet/sheet_file.h"
#include "app/verbs/offscreen.h"
#include "app/verbs/studying.h"

#include <QFile>
#include <QStringList>

#include <charconv>

namespace blinkwright::app::verbs {

namespace {

using sheet::Topic;

std::string allKeys() {
    std::string keys;
    for (const Topic topic : sheet::allTopics)
        keys.append(keys.empty() ? "" : ", ").append(sheet::keyOf(topic));
    return keys;
}

Result<QPageSize::PageSizeId> readPage(const Arguments& arguments) {
    const std::string text = arguments.last("--page").value_or("a4");
    if (text == "a4") return QPageSize::A4;
    if (text == "letter") return QPageSize::Letter;
    return Fault{"--page", "must be a4 or letter, got '" + text + "'"};
}

Result<sheet::SheetChoice> readChoice(const Arguments& arguments) {
    sheet::SheetChoice choice;
    if (arguments.has("--student") && arguments.has("--answers"))
        return Fault{"--student", "cannot be asked for together with --answers"};
    if (arguments.has("--student")) choice.copy = sheet::Copy::student;
    if (arguments.has("--answers")) choice.copy = sheet::Copy::answers;
    if (const auto text = arguments.last("--sections")) {
        choice.topics.clear();
        for (const QString& key : QString::fromStdString(*text).split(u',')) {
            const std::optional<Topic> topic = sheet::topicNamed(key.trimmed());
            if (!topic)
                return Fault{"--sections", "there is no section '" + key.trimmed().toStdString() +
                                               "'; there are " + allKeys()};
            choice.topics.insert(*topic);
        }
    }
    return choice;
}

Result<std::optional<std::uint64_t>> readVariant(const Arguments& arguments) {
    const auto text = arguments.last("--variant");
    if (!text) return std::optional<std::uint64_t>{};
    std::uint64_t seed = 0;
    const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), seed);
    if (error != std::errc{} || end != text->data() + text->size())
        return Fault{"--variant",
                     "must be a whole number from 0 to 18446744073709551615, got '" + *text + "'"};
    return std::optional(seed);
}

sheet::SheetWords readWords(const Arguments& arguments) {
    const auto text = [&](const char* option) {
        return QString::fromStdString(arguments.last(option).value_or(""));
    };
    return {{}, text("--author"), text("--partner"), text("--group"), text("--date"), {}, {}, {}};
}

} // namespace

std::vector<Option> labSheetOptions() {
    return {{"--lab-sheet", "", "a lab sheet instead of the curves: OUT ends in .pdf, .html or .odt"},
            {"--page", "a4|letter", "paper of a lab sheet (a4)"},
            {"--sections", "A,B,...", "sections of a lab sheet: head, aim, theory, drawing, ... (all)"},
            {"--student", "", "with blanks for predictions and readings, and no result given"},
            {"--answers", "", "the answer key of that"},
            {"--variant", "SEED", "part values changed to other preferred ones, told by this number"},
            {"--author", "NAME", "who wrote it"},
            {"--partner", "NAME", "who worked along"},
            {"--group", "NAME", "class or group"},
            {"--date", "TEXT", "the date as it is to be printed"}};
}

Result<ExitCode> exportLabSheet(const Arguments& arguments, std::ostream& err) {
    const std::string& out = arguments.operands[1];
    const QString path = QFile::decodeName(QByteArray::fromStdString(out));
    if (!sheet::sheetKind(path)) return Fault{out, "the name of a lab sheet must end in .pdf, .html or .odt"};
    const Result<QPageSize::PageSizeId> page = readPage(arguments);
    if (!page) return page.fault();
    const Result<sheet::SheetChoice> choice = readChoice(arguments);
    if (!choice) return choice.fault();
    const Result<std::optional<std::uint64_t>> variant = readVariant(arguments);
    if (!variant) return variant.fault();
    const Result<Loaded> file = loaded(arguments);
    if (!file) return file.fault();
    const Result<study::StudyRequest> run = readRun(arguments, file.value().circuit.run);
    if (!run) return run.fault();

    study::LabFactsRequest request;
    request.run = run.value();
    request.variant = variant.value();
    request.why = sheet::tellsWhy(choice.value());
    request.spread = sheet::tellsSpread(choice.value());
    if (arguments.has("--set"))
        request.sets =
            file.value().set == circuit::PartSet::B ? study::SheetSets::onlyB : study::SheetSets::onlyA;
    circuit::Circuit circuit = file.value().circuit;
    circuit.run.begin = run.value().begin; // as the traces' caption says
    const Result<study::LabFacts> facts = study::labFacts(circuit, request);
    if (!facts) return Fault{arguments.operands[0], facts.fault().message()};
    const study::Readings& readings = facts.value().a.readings;
    const bool blinks = readings.verdict == study::Verdict::blinks;
    if (!blinks) sayWhyNot(err, "export", arguments, readings);
    const Offscreen toolkit;
    const sheet::LabSheet made = makeLabSheet(facts.value(), readWords(arguments), choice.value());
    if (Result<void> written = writeSheet(made, page.value(), path); !written) return written.fault();
    return blinks ? done : answerIsNo;
}

} // namespace blinkwright::app::verbs
