// Labels of the parts: designator and value, upright, beside the symbol where neither a symbol nor another
// label is, and no wire if that can be had.
//
//   std::vector<Label> labels = placeLabels(parts, routes);
//   labels[0].rect, labels[0].ref, labels[0].value
#pragma once

#include "widgets/hookup/part_view.h"
#include "widgets/hookup/router.h"

#include <QFont>
#include <QRectF>

#include <vector>

namespace blinkwright::widgets::hookup {

inline constexpr int labelSize = 12; ///< usual height of label text [units]
/// From one line to the next [units]. @param size of the text [units]
constexpr double labelLine(double size = labelSize) {
    return 1.25 * size;
}

struct Label {
    QString ref;
    QString value;
    QRectF rect; ///< drawing units; empty for a timer, whose texts stand in its outline
    enum class Side { left, right, above, below } side = Side::right;
    double size = labelSize; ///< height of its text [units]
    bool operator==(const Label&) const = default;
};

/// The font of labels, sized in drawing units and without hinting, so that text keeps its width at every
/// zoom.
QFont labelFont(double size, bool strong);

/// @param size of texts that is wished for; a label that finds no free place so is made smaller, down to the
/// usual size
std::vector<Label> placeLabels(const std::vector<PartView>& parts, const Routes& routes,
                               double size = labelSize);
/// A label whose texts changed, kept on its side.
Label withTexts(const Label& label, const PartView& part);

} // namespace blinkwright::widgets::hookup
