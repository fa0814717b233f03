// The answers of the ready blinkers, remembered from one start to the next.
//
//   restoreAnswers(settings, dialog);
//   dialog.exec();
//   keepAnswers(settings, dialog);
#pragma once

#include "app/settings.h"

namespace blinkwright::widgets {
class ReadyDialog;
}

namespace blinkwright::app {

void restoreAnswers(const Settings& settings, widgets::ReadyDialog& dialog);
void keepAnswers(Settings& settings, const widgets::ReadyDialog& dialog);

} // namespace blinkwright::app
