#include "widgets/readings/tinted_head.h"

#include <QStyleOptionHeader>

namespace blinkwright::widgets {

void TintedHead::initStyleOptionForIndex(QStyleOptionHeader* option, int section) const {
    const qint64 plain = option->palette.cacheKey();
    QHeaderView::initStyleOptionForIndex(option, section);
    if (option->palette.cacheKey() == plain) return;
    // The toolkit makes a palette anew for every painting of a section with a colour. The style keeps a
    // picture of the section by the identity of its palette: each painting would add one that nobody finds
    // again, until they fill the store of pictures and drive out what is of use. So an equal palette stays
    // the same one.
    QPalette& kept = m_palettes[section];
    if (kept != option->palette) kept = option->palette;
    const QPalette::ColorGroup group = option->palette.currentColorGroup();
    option->palette = kept;
    option->palette.setCurrentColorGroup(group);
}

} // namespace blinkwright::widgets
