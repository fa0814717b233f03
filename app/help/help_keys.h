// The table of keys, as the menus have them: no key is written down twice.
//
//   QString html = keysTable(*window.menuBar());
#pragma once

#include <QString>

class QMenuBar;

namespace blinkwright::app::help {

/// A heading and a table for each menu that has keys, in HTML.
QString keysTable(const QMenuBar& bar);

} // namespace blinkwright::app::help
