// A label as it stands within a sentence, `sort by marking`, and a phrase as a sentence or a label begins,
// `Sort by marking`. German keeps the capitals of its nouns.
#pragma once

#include <QLocale>
#include <QString>

namespace blinkwright::widgets {

inline QString inSentence(QString label) {
    if (QLocale().language() != QLocale::German && !label.isEmpty()) label[0] = label[0].toLower();
    return label;
}

inline QString sentenceCase(QString phrase) {
    if (!phrase.isEmpty()) phrase[0] = phrase[0].toUpper();
    return phrase;
}

} // namespace blinkwright::widgets
