// The headless verbs: one table of them, one way to read their arguments, the same exit codes for all.
//
//   if (const Verb* verb = verbNamed(argv[1]))
//       return runVerb(*verb, arguments, std::cout, std::cerr);
// A new verb is one file with a `const Verb` and one line in verb.cpp. Verbs write no windows and, all but
// `export`, need no toolkit at all.
#pragma once

#include "app/verbs/arguments.h"

#include <iosfwd>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::app::verbs {

/// What a verb answers to the shell.
enum ExitCode : int {
    done = 0,
    answerIsNo = 1, ///< this will not blink, or something is at fault or overstressed
    badUsage = 2,   ///< bad usage or a bad file
};

struct Verb {
    std::string_view name;
    std::string_view summary; ///< one line
    std::string_view details; ///< further lines of its help
    std::vector<std::string_view> operands;
    std::vector<Option> options;
    /// Prints to `out`; a fault is bad usage or a bad file.
    Result<ExitCode> (*run)(const Arguments& arguments, std::ostream& out, std::ostream& err);
};

std::span<const Verb* const> allVerbs();
const Verb* verbNamed(std::string_view name);

/// Help of one verb.
std::string helpText(const Verb& verb);
/// Help of the whole program.
std::string programHelp();
std::string_view programVersion();

/// Reads the arguments after the verb, runs it, says every fault in one sentence on `err`.
int runVerb(const Verb& verb, std::span<const std::string> arguments, std::ostream& out, std::ostream& err);

} // namespace blinkwright::app::verbs
