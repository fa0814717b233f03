// Rows as high as what stands in them, also after the texts have changed their size or wrap at other widths.
//
//   rowsByContents(*table);
#pragma once

class QTableView;

namespace blinkwright::widgets {

/// Now, whenever a column or the font changes, and after the table is filled anew.
void rowsByContents(QTableView& table);

} // namespace blinkwright::widgets
