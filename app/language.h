// The language of the window: English as the sources have it, or one of the translations built in.
//
//   QApplication application(argc, argv);
//   speak(settings.language());           // once, before any window or worker is there
#pragma once

#include <QList>
#include <QString>

namespace blinkwright::app {

/// @return the codes (ISO 639-1) that can be spoken, English first.
QList<QString> languages();

/// What a language calls itself, by its code.
QString nameOf(const QString& language);

/// The language that the desktop asks for, among those there are; English else.
QString systemLanguage();

/// Puts texts, the toolkit's own ones too, numbers and dates into a language. What was made before keeps its
/// words. @param language a code of languages(), or empty for the desktop's.
void speak(const QString& language);

} // namespace blinkwright::app
