// What the entries of the menu are for that the toolkit opens on texts and number boxes by itself.
#pragma once

class QMenu;

namespace blinkwright::app {

/// Gives its answer to each such entry that has none; leaves all others alone.
void addEditMeanings(const QMenu& menu);

} // namespace blinkwright::app
