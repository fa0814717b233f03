#include "app/verbs/verb.h"

#include "app/verbs/all.h"

#include <algorithm>
#include <array>
#include <ostream>

#ifndef BLINKWRIGHT_VERSION
#error "the build states the version"
#endif

namespace blinkwright::app::verbs {

namespace {

std::string column(std::string_view text, std::size_t width) {
    std::string padded(2, ' ');
    padded += text;
    padded.resize(std::max(padded.size() + 2, width + 4), ' ');
    return padded;
}

std::string usageLine(const Verb& verb) {
    std::string line = "blinkwright ";
    line += verb.name;
    for (const std::string_view operand : verb.operands) (line += ' ') += operand;
    return line;
}

std::string optionText(const Option& option) {
    std::string text(option.name);
    if (!option.value.empty()) (text += ' ') += option.value;
    return text;
}

} // namespace

std::span<const Verb* const> allVerbs() {
    static const std::array verbs{&readingsVerb(), &checkVerb(), &spreadVerb(), &chooseVerb(),
                                  &whyVerb(),      &trendVerb(), &fitVerb(),    &exportVerb()};
    return verbs;
}

const Verb* verbNamed(std::string_view name) {
    const auto found = std::ranges::find(allVerbs(), name, [](const Verb* verb) { return verb->name; });
    return found == allVerbs().end() ? nullptr : *found;
}

std::string_view programVersion() {
    return BLINKWRIGHT_VERSION;
}

std::string helpText(const Verb& verb) {
    std::string text = usageLine(verb) + " [options]\n\n" + std::string(verb.summary) + "\n";
    if (!verb.details.empty()) text += std::string(verb.details) + "\n";
    text += "\nOptions:\n";
    std::size_t width = 0;
    for (const Option& option : verb.options)
        if (!option.help.empty()) width = std::max(width, optionText(option).size());
    for (const Option& option : verb.options)
        if (!option.help.empty()) text += column(optionText(option), width) + std::string(option.help) + "\n";
    text += column("--help", width) + "this text\n";
    text += "\nExit codes: 0 done; 1 the answer is no; 2 bad usage or a bad file.\n";
    return text;
}

std::string programHelp() {
    std::string text = "A workshop for lamp blinkers built on the 555 timer.\n\n"
                       "  blinkwright [FILE]    opens the window\n";
    std::size_t width = 0;
    for (const Verb* verb : allVerbs()) width = std::max(width, usageLine(*verb).size());
    text += "\nWithout a window, printing to standard output:\n";
    for (const Verb* verb : allVerbs())
        text += column(usageLine(*verb), width) + std::string(verb->summary) + "\n";
    text += "\n  blinkwright VERB --help    options of one of them\n"
            "  blinkwright --version\n";
    return text;
}

int runVerb(const Verb& verb, std::span<const std::string> arguments, std::ostream& out, std::ostream& err) {
    const auto refuse = [&](const Fault& fault) {
        err << "blinkwright " << verb.name << ": " << fault.message() << "\n";
        return badUsage;
    };
    const Result<Arguments> read = readArguments(verb.operands, verb.options, arguments);
    if (!read)
        return refuse({read.fault().place,
                       read.fault().text + " (see 'blinkwright " + std::string(verb.name) + " --help')"});
    Result<ExitCode> answer = done;
    if (read.value().help)
        out << helpText(verb);
    else
        answer = verb.run(read.value(), out, err);
    if (!answer) return refuse(answer.fault());
    if (!out.flush()) return refuse({{}, "cannot write to standard output"});
    return answer.value();
}

} // namespace blinkwright::app::verbs
