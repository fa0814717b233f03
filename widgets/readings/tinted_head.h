// The head of a table some of whose sections have a colour of their own, given by the model as the
// foreground of the section.
//
//   table->setHorizontalHeader(new TintedHead(Qt::Horizontal, table));
//   table->horizontalHeader()->setSectionsClickable(true); // as the head that a table brings is
#pragma once

#include <QHeaderView>
#include <map>

namespace blinkwright::widgets {

class TintedHead : public QHeaderView {
    Q_OBJECT
  public:
    using QHeaderView::QHeaderView;

  protected:
    void initStyleOptionForIndex(QStyleOptionHeader* option, int section) const override;

  private:
    mutable std::map<int, QPalette> m_palettes; ///< by section, as last painted
};

} // namespace blinkwright::widgets
