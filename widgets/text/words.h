// Texts in the language of the window, for code that is in no class of the toolkit's.
//
//   Words::tr("%1 of %2").arg(quantity, ref)
//   {Topic::aim, "aim", QT_TRANSLATE_NOOP("Words", "Aim")}     // in a table, said by Words::tr(text)
//
// Write `Words::tr`, in other namespaces after `using widgets::Words;`: the collector of texts finds it by
// that.
#pragma once

#include <QCoreApplication>

namespace blinkwright::widgets {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

} // namespace blinkwright::widgets
