// A slider over a ValueScale: press anywhere to bring the handle there, drag, hold Shift to go ten times
// finer.
//
//   ScaleSlider slider;
//   slider.setScale(ValueScale::around(kind, 68e3));
//   slider.setValue(68e3, "68 kΩ");
//   connect(&slider, &ScaleSlider::dragged, ...);   // values rounded to three digits
// It shows what it is given and only wishes for changes. The wheel acts on it only while it has the focus.
#pragma once

#include "widgets/theme/theme.h"
#include "widgets/values/value_scale.h"

#include <QWidget>

namespace blinkwright::widgets {

class ScaleSlider : public QWidget {
    Q_OBJECT
  public:
    explicit ScaleSlider(QWidget* parent = nullptr);

    void setScale(const ValueScale& scale);
    const ValueScale& scale() const { return m_scale; }
    /// @param text the value for people who listen: `68 kΩ`
    void setValue(double value, const QString& text);
    double value() const { return m_value; }
    const QString& valueText() const { return m_text; }
    void setColours(const Theme& theme, const QColor& handle);
    bool dragging() const { return m_dragging; }
    double handleX() const; ///< middle of the handle [px]

    QSize sizeHint() const override { return {180, 26}; }
    QSize minimumSizeHint() const override { return {60, 26}; }

  signals:
    void pressed();
    void dragged(double value);
    void released();
    void stepWished(int steps, bool coarse); ///< by arrow, page key or wheel
    void endWished(bool high);               ///< by Home or End

  protected:
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent*) override;
    void mouseMoveEvent(QMouseEvent*) override;
    void mouseReleaseEvent(QMouseEvent*) override;
    void keyPressEvent(QKeyEvent*) override;
    void wheelEvent(QWheelEvent*) override;
    void focusInEvent(QFocusEvent*) override;
    void focusOutEvent(QFocusEvent*) override;
    void enterEvent(QEnterEvent*) override;
    void leaveEvent(QEvent*) override;

  private:
    QRectF groove() const;
    void dragTo(double place);

    ValueScale m_scale;
    double m_value = 0;
    QString m_text;
    Theme m_theme;
    QColor m_handle;
    bool m_dragging = false;
    bool m_hovered = false;
    double m_place = 0; ///< where the hand holds the handle, may lie beyond the ends
    double m_lastX = 0;
    double m_before = 0; ///< value before the drag, for Escape
    int m_wheelRest = 0;
};

} // namespace blinkwright::widgets
