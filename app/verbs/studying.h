// What the verbs have in common: which file, which set, which values on top, and the study of it.
//
//   Result<Studied> s = studied(arguments);   // FILE is the first operand
//   s.value().study.readings.verdict
#pragma once

#include "app/verbs/arguments.h"
#include "core/study/study.h"

#include <iosfwd>

namespace blinkwright::app::verbs {

/// `--set` and `--value`, which every verb takes.
std::vector<Option> commonOptions();
/// The same and `--flashes`, `--begin`, `--accuracy`.
std::vector<Option> runOptions();

struct Loaded {
    circuit::Circuit circuit; ///< with the values of `--value` in it
    circuit::PartSet set = circuit::PartSet::A;
};

/// Reads the file and puts the values on top. Faults name the file or the option.
Result<Loaded> loaded(const Arguments& arguments);
/// The board of it; a fault names the file.
Result<devices::Board> boardOf(const Arguments& arguments, const Loaded& loaded);

struct Studied {
    circuit::Circuit circuit; ///< with the values of `--value` in it
    circuit::PartSet set = circuit::PartSet::A;
    study::Study study;
};

/// Flashes, begin and accuracy: what the options say, else what the file says.
Result<study::StudyRequest> readRun(const Arguments& arguments, const circuit::RunSettings& run);

/// Of a circuit that does not blink: `blinkwright VERB: FILE: settles high. WHY`, a line.
void sayWhyNot(std::ostream& err, std::string_view verb, const Arguments& arguments,
               const study::Readings& readings);

/// Reads the file, puts the values on top and studies it. Faults name the file or the option.
Result<Studied> studied(const Arguments& arguments);

} // namespace blinkwright::app::verbs
