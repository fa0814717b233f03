#include "widgets/text/colour_text.h"

#include <QCoreApplication>

namespace blinkwright::widgets {

namespace {

constexpr std::pair<const char*, const char*> names[] = {
    {"red", QT_TRANSLATE_NOOP("Colours", "red")},
    {"amber", QT_TRANSLATE_NOOP("Colours", "amber")},
    {"yellow", QT_TRANSLATE_NOOP("Colours", "yellow")},
    {"green", QT_TRANSLATE_NOOP("Colours", "green")},
    {"pure-green", QT_TRANSLATE_NOOP("Colours", "pure green")},
    {"blue", QT_TRANSLATE_NOOP("Colours", "blue")},
    {"white", QT_TRANSLATE_NOOP("Colours", "white")}};

} // namespace

QString colourText(const std::string& colour) {
    for (const auto& [known, words] : names)
        if (colour == known) return QCoreApplication::translate("Colours", words);
    return QString::fromStdString(colour);
}

} // namespace blinkwright::widgets
