// The Hook-up: the circuit drawn as parts and wires, with a lens beside each lamp that lights with its
// current.
//
//   HookupView view;
//   view.setCircuit(circuit);          // again at every change; only wiring and places cost a new layout
//   view.setGlow({{lamp, 0.7}});       // repaints lenses only
//   connect(&view, &HookupView::partActivated, ...);
// Wheel zooms about the pointer, the middle button or Space and a drag pans; Tab goes from part to part and
// on to the next widget, arrows to the neighbour in their direction; + - 0 zoom and fit.
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/hookup/geometry.h"
#include "widgets/theme/theme.h"

#include <QAbstractScrollArea>
#include <map>
#include <memory>
#include <optional>

namespace blinkwright::widgets {

class HookupView : public QAbstractScrollArea {
    Q_OBJECT
  public:
    explicit HookupView(QWidget* parent = nullptr);
    ~HookupView() override;

    void setCircuit(const circuit::Circuit& circuit);
    void setTheme(const Theme& theme);
    /// How symbols are drawn, from the next setCircuit() on.
    void setSymbolStyle(const hookup::SymbolStyle& style);
    hookup::SymbolStyle symbolStyle() const;
    /// Brightness of each lamp's lens, 0 (dark) to 1 (rated current and more).
    void setGlow(const std::map<circuit::PartId, double>& shares);
    void select(std::optional<circuit::PartId> part); ///< marks a part and brings it into view
    std::optional<circuit::PartId> selected() const;
    void fit();
    void zoomBy(double factor); ///< about the middle
    double zoom() const;        ///< pixels a drawing unit

  signals:
    /// Clicked, or chosen with the keyboard. What follows must not take the focus away: arrows choose part
    /// after part.
    void partActivated(blinkwright::circuit::PartId part);

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
