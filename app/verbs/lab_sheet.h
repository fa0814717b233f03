// What `export … --lab-sheet` does.
#pragma once

#include "app/verbs/verb.h"

namespace blinkwright::app::verbs {

/// `--page`, `--student`, `--answers`, `--variant`, `--sections`, and what people else type into the dialog.
std::vector<Option> labSheetOptions();
Result<ExitCode> exportLabSheet(const Arguments& arguments, std::ostream& err);

} // namespace blinkwright::app::verbs
