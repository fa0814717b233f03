// The blocks of a lab sheet as pieces for pages of one width.
//
//   std::vector<Piece> pieces = piecesOf(sheet, room.size());
#pragma once

#include "app/sheet/page_layout.h"

#include <QFont>

namespace blinkwright::app::sheet {

/// Sizes of text [px]: what stands in a paragraph, in a table, below the pages.
inline constexpr int bodySize = 13, tableSize = 12, smallSize = 11;

/// By its name, without hinting, so that words are as wide on paper as they were laid out.
QFont sheetFont(int size_px, bool strong = false);

/// @param room of a page: no picture is larger.
std::vector<Piece> piecesOf(const LabSheet& sheet, QSizeF room);

} // namespace blinkwright::app::sheet
