#include "widgets/text/colour_text.h"

#include "widgets/text/words.h"

namespace blinkwright::widgets {

namespace {

constexpr std::pair<const char*, const char*> names[] = {
    {"red", QT_TRANSLATE_NOOP("Words", "red")},
    {"amber", QT_TRANSLATE_NOOP("Words", "amber")},
    {"yellow", QT_TRANSLATE_NOOP("Words", "yellow")},
    {"green", QT_TRANSLATE_NOOP("Words", "green")},
    {"pure-green", QT_TRANSLATE_NOOP("Words", "pure green")},
    {"blue", QT_TRANSLATE_NOOP("Words", "blue")},
    {"white", QT_TRANSLATE_NOOP("Words", "white")}};

} // namespace

QString colourText(const std::string& colour) {
    for (const auto& [known, words] : names)
        if (colour == known) return Words::tr(words);
    return QString::fromStdString(colour);
}

} // namespace blinkwright::widgets
