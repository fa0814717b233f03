// The Hook-up: the circuit drawn as parts and wires, with a lens beside each lamp that lights with its
// current; and where a hand builds it. It changes nothing: it says what is wished.
//
//   HookupView view;
//   view.setCircuit(circuit);          // again at every change; only wiring and places cost a new layout
//   view.setGlow({{lamp, 0.7}});       // repaints lenses only
//   connect(&view, &HookupView::wished, ...);
// Mouse: see gestures.h. Wheel zooms about the pointer, the middle button or Space and a drag pans; Tab goes
// from part to part and on to the next widget, arrows to the neighbour in their direction, with Shift it is
// chosen too; Ctrl and arrows move what is chosen; + - 0 zoom and fit; Escape lets go.
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/hookup/geometry.h"
#include "widgets/hookup/selection.h"
#include "widgets/hookup/wish.h"
#include "widgets/theme/theme.h"

#include <QAbstractScrollArea>
#include <map>
#include <memory>
#include <optional>

namespace blinkwright::widgets {

namespace hookup {
class Drawing;
}

class HookupView : public QAbstractScrollArea {
    Q_OBJECT
  public:
    /// What lies under a point of the viewport.
    struct Spot {
        QPoint at;
        std::optional<circuit::PinRef> pin;
        std::optional<circuit::PartId> part;
        std::optional<circuit::NetId> net;
    };

    explicit HookupView(QWidget* parent = nullptr);
    ~HookupView() override;

    void setCircuit(const circuit::Circuit& circuit);
    void setTheme(const Theme& theme);
    /// How symbols are drawn, from the next setCircuit() on.
    void setSymbolStyle(const hookup::SymbolStyle& style);
    hookup::SymbolStyle symbolStyle() const;
    /// Brightness of each lamp's lens, 0 (dark) to 1 (rated current and more).
    void setGlow(const std::map<circuit::PartId, double>& shares);
    double glow(circuit::PartId lamp) const; ///< as it is shown now; 0 for what is no lamp
    /// Shows each lamp's current as a bar instead of a glowing lens, for people whom flicker bothers.
    void setLampsAsBars(bool on);
    void select(std::optional<circuit::PartId> part); ///< marks a part and brings it into view
    std::optional<circuit::PartId> selected() const;
    const hookup::Selection& selection() const;
    void setSelection(const std::vector<circuit::PartId>& parts);
    void selectAll();

    circuit::Places shownPlaces() const; ///< of all parts, stated or chosen by the layout
    circuit::Places chosenPlaces() const;
    /// A free place near the pointer if it is over the view, else near the middle.
    circuit::Placement placeForNew(circuit::PartKind kind) const;
    /// The place on the grid under a point of the viewport.
    circuit::Placement placeAt(circuit::PartKind kind, QPoint inView) const;
    QPointF pinPlace(circuit::PinRef pin) const; ///< [units]
    QPoint inView(QPointF place) const;          ///< of the viewport; what is not in view has its point too
    QPointF inDrawing(QPoint point) const;       ///< [units]
    /// By how much copies must be shifted so as to lie on nothing.
    hookup::Point shiftForPasted(const circuit::Circuit& copies) const;

    /// A new part hangs on the pointer until a click (or Enter) puts it down, or Escape drops it.
    void placePart(circuit::PartKind kind);
    void turnChosen(); ///< or the part that hangs on the pointer
    void mirrorChosen();
    void deleteChosen();

    void fit();
    /// Fits for a while: lookAgain() brings the zoom and place of before back, unless other drawings came
    /// meanwhile (startAfresh()).
    void fitForNow();
    void lookAgain();
    void startAfresh();         ///< fits what is new here
    void zoomBy(double factor); ///< about the middle
    double zoom() const;        ///< pixels a drawing unit

    /// For those who describe the drawing in other ways: what is drawn, and where the viewport shows it.
    const hookup::Drawing& drawing() const;
    QRectF toViewport(const QRectF& area) const;
    QPointF toDrawing(QPointF inViewport) const;

  signals:
    /// Clicked, or chosen with the keyboard. What follows must not take the focus away: arrows choose part
    /// after part.
    void partActivated(blinkwright::circuit::PartId part);
    /// A wish to change the circuit. Wishes of one gesture have one id; 0 stands alone.
    void wished(const blinkwright::widgets::hookup::Wish& wish, int gesture);
    void said(const QString& why); ///< why something cannot be done
    void selectionChanged();
    void editWished(blinkwright::circuit::PartId part); ///< its name and values
    void menuWished(QPoint global, const blinkwright::widgets::HookupView::Spot& spot);

  protected:
    bool event(QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool focusNextPrevChild(bool next) override;
    QSize sizeHint() const override;

  private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace blinkwright::widgets
