#include "app/edit_menu_meanings.h"

#include "app/what_is_this.h"

#include <QAction>
#include <QCoreApplication>
#include <QMenu>

#include <array>

namespace blinkwright::app {

namespace {

struct Meaning {
    const char *entry, *meaning;
};

// By the texts that the toolkit gives them: it gives them no names.
constexpr std::array<Meaning, 11> meanings{{
    {"&Undo",
     QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis", "Takes back what was typed last in this field.")},
    {"&Redo", QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis",
                                "Types again what was taken back last in this field.")},
    {"Cu&t", QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis",
                               "Puts the marked text on the clipboard and takes it away here.")},
    {"&Copy", QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis", "Puts the marked text on the clipboard.")},
    {"Copy &Link Location",
     QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis", "Puts the address of the link on the clipboard.")},
    {"&Paste", QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis",
                                 "Writes the text of the clipboard here, in place of what is marked.")},
    {"Delete", QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis", "Takes the marked text away.")},
    {"Select All",
     QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis", "Marks all of the text, to copy or to replace it.")},
    {"&Select All",
     QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis", "Marks all of the text, to copy or to replace it.")},
    {"&Step up", QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis",
                                   "Makes the number larger by one step, as the Up key does.")},
    {"Step &down", QT_TRANSLATE_NOOP("blinkwright::app::WhatIsThis",
                                     "Makes the number smaller by one step, as the Down key does.")},
}};

} // namespace

void addEditMeanings(const QMenu& menu) {
    for (QAction* action : menu.actions()) {
        if (action->isSeparator() || !action->whatsThis().isEmpty()) continue;
        const QString text = action->text().section(u'\t', 0, 0);
        for (const Meaning& one : meanings)
            for (const char* maker : {"QLineEdit", "QWidgetTextControl", "QAbstractSpinBox"})
                if (text == QCoreApplication::translate(maker, one.entry))
                    action->setWhatsThis(WhatIsThis::tr(one.meaning));
    }
}

} // namespace blinkwright::app
