// One row of Values: what it is, a slider, a field, and, when what was typed is refused, the reason below it.
//
//   ValueRow row({part, PartKind::resistor, "resistance", "R1"});
//   row.showValue(68e3);
//   connect(&row, &ValueRow::wished, ...);   // between began() and ended()
#pragma once

#include "core/circuit/circuit.h"
#include "widgets/theme/theme.h"
#include "widgets/values/scale_slider.h"

#include <QLabel>
#include <QLineEdit>
#include <QTimer>

namespace blinkwright::widgets {

struct ValueRowSubject {
    circuit::PartId part;
    circuit::PartKind kind = circuit::PartKind::resistor;
    std::string key;
    std::string ref;
    bool operator==(const ValueRowSubject&) const = default;
};

class ValueRow : public QWidget {
    Q_OBJECT
  public:
    ValueRow(const ValueRowSubject& subject, const ScaleKind& kind, QWidget* parent = nullptr);

    const ValueRowSubject& subject() const { return m_subject; }
    /// The value that holds in the circuit. Left alone while a gesture is going on, and while something
    /// else is being typed. A text that was refused gives way to a value that has changed.
    void showValue(double value);
    void setColours(const Theme& theme, const QColor& handle);
    void setMarked(bool on);
    /// Widths of reference and description, which all rows are given alike.
    QSize labelWidths() const;
    void setLabelWidths(QSize widths);

    ScaleSlider* slider() const { return m_slider; }
    QLineEdit* field() const { return m_field; }
    QString refusal() const { return m_reason->text(); }

  signals:
    void began();
    void wished(double value);
    void ended();
    void focused();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent*) override;

  private:
    QString textOf(double value) const;
    Result<double> valueOf(const QString& text) const;
    void wish(double value);
    void burst(double value); ///< one of a run of key presses or wheel notches
    void endBurst();
    void endGesture();
    void rescale();
    void enterTyped();
    void restoreText();
    void refuse(const QString& reason);

    ValueRowSubject m_subject;
    ScaleKind m_kind;
    double m_value = 0;   ///< as shown, or as last wished in a gesture
    double m_held = 0;    ///< as the circuit has it
    bool m_known = false; ///< a value was shown
    bool m_gesture = false;
    bool m_refused = false;
    bool m_marked = false;
    QString m_hint; ///< how a value may be typed
    Theme m_theme;
    QLabel *m_ref, *m_what, *m_reason;
    ScaleSlider* m_slider;
    QLineEdit* m_field;
    QTimer m_quiet;
};

} // namespace blinkwright::widgets
