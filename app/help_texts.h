// The Help menu's dialogs.
#pragma once

class QWidget;

namespace blinkwright::app {

void showCautions(QWidget* parent);
void showAbout(QWidget* parent);

} // namespace blinkwright::app
