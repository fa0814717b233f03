// The colours that the program paints with, light and dark, and the palette that the toolkit's controls get.
//
//   const Theme& theme = Theme::of(Theme::Mode::dark);
//   QApplication::setPalette(theme.palette());
//   painter.setPen(theme.ink);
#pragma once

#include <QColor>
#include <QPalette>
#include <QString>

namespace blinkwright::widgets {

struct Theme {
    enum class Mode { light, dark };

    Mode mode;
    QColor window;                                  ///< ground of the window and of panels
    QColor paper;                                   ///< ground of drawings and plots
    QColor ink;                                     ///< text, symbols, wires
    QColor quietInk;                                ///< secondary text, at least 4.5 to 1 on paper
    QColor grid;                                    ///< plot grid
    QColor frame;                                   ///< hairlines between areas
    QColor accent;                                  ///< selection and focus
    QColor setA;                                    ///< #3B2F8F or its lighter kin
    QColor setB;                                    ///< #A65E00 or its lighter kin
    QColor measured;                                ///< black or white
    QColor moment;                                  ///< moment line
    QColor level;                                   ///< switching levels
    QColor fault, overstress, doubt, caution, note; ///< severities; never the only sign of one

    /// How wide curves, wires and the lines of symbols are, over their usual widths.
    double stroke = 1;

    static const Theme& of(Mode mode);
    /// The same for people at the back of a class: everything drawn with wider pens.
    Theme forProjector() const;
    QPalette palette() const;
    /// The colour a lamp glows in, by its `colour` value; the ink for one that is unknown.
    QColor lamp(const QString& colour) const;
    /// A pale form of a curve's colour, opaque, for echoes.
    QColor echo(const QColor& curve) const;
};

} // namespace blinkwright::widgets
