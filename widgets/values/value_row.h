// One row of Values: what it is, a slider, a field, and, when what was typed is refused, the reason below it.
//
//   ValueRow row({part, PartKind::resistor, "resistance", "R1"}, *scaleKind(...));
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

class TieMark;

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
    /// In the second column a row stands beside another that names the value.
    enum class Column { first, second };
    ValueRow(const ValueRowSubject& subject, const ScaleKind& kind, Column column = Column::first,
             QWidget* parent = nullptr);

    const ValueRowSubject& subject() const { return m_subject; }
    /// The value that holds in the circuit. Left alone while a gesture is going on, and while something
    /// else is being typed. A text that was refused gives way to a value that has changed.
    void showValue(double value);
    void setColours(const Theme& theme, const QColor& handle);
    /// @param strip with a strip in the accent at the left
    void setMarked(bool on, bool strip = true);
    /// Widths of reference and description, which all rows are given alike.
    QSize labelWidths() const;
    void setLabelWidths(QSize widths);
    void setDescriptionShown(bool on);
    /// What moves along with this value: `R4`; nothing for none. @param room is kept for the mark though this
    /// row has none, so that all sliders begin alike.
    void setTies(const QStringList& others, bool room);
    /// @param set that it shows (`Set B`), for those who listen; empty where that needs no saying
    void setSetName(const QString& set);
    void setReadOnly(bool on);
    bool hasValue() const { return m_known; }
    void showNoValue();

    ScaleSlider* slider() const { return m_slider; }
    QLineEdit* field() const { return m_field; }
    QString refusal() const { return m_reason->text(); }

  signals:
    void began();
    void wished(double value);
    void ended();
    void focused();
    void menuWished(QPoint global);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent*) override;
    void contextMenuEvent(QContextMenuEvent*) override;

  private:
    QString textOf(double value) const;
    units::Unit unit() const;
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
    bool m_strip = true;
    bool m_readOnly = false;
    QString m_name; ///< for those who listen
    QString m_hint; ///< how a value may be typed
    Theme m_theme;
    QLabel *m_ref, *m_what, *m_reason;
    TieMark* m_tie;
    ScaleSlider* m_slider;
    QLineEdit* m_field;
    QTimer m_quiet;
};

} // namespace blinkwright::widgets
