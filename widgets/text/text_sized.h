// Sizes that follow the size of texts, also when it changes while the window is open.
//
//   sizedByText(*field, [field] { field->setFixedWidth(field->fontMetrics().horizontalAdvance(widest)); });
//   view->setMinimumWidth(withText(*view, 260));
#pragma once

#include <QWidget>

#include <functional>

class QDoubleSpinBox;
class QSpinBox;
class QTableView;

namespace blinkwright::widgets {

/// Calls `fit` now, and again with each other font of the widget.
void sizedByText(QWidget& widget, std::function<void()> fit);

/// A length that was chosen for texts of the usual size, for those of this widget; never less.
/// @param usual_px for a font of 9 points at 96 dots per inch
int withText(const QWidget& widget, int usual_px);

/// What a desktop's frame and bars take of the screen: common practice, no source.
inline constexpr QSize frameRoom{8, 60};
/// The first size of a window: as it was chosen for texts of the usual size, larger with them as far as the
/// screen has room.
QSize withText(const QWidget& window, QSize usual_px);

/// A field that has room for its largest value with its unit, which the toolkit leaves out of what it asks
/// for.
void wideAsItsValues(QSpinBox& field);
void wideAsItsValues(QDoubleSpinBox& field);

/// Rows as high as the size of texts asks.
void rowsByText(QTableView& table, int usual_px = 26);

} // namespace blinkwright::widgets
