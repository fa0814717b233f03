// The answer to "What is this?" for every control of every window. Shift+F1 answers for the control that has
// the focus; the entry of the Help menu waits for a click on one.
//
//   auto* answers = new WhatIsThis(window);   // hears the events of all windows while it lives
//   answers->addTo(helpMenu);
//   purposeOf(*spinBox)                       // "Which random boards are drawn: ..."
//   answerFor(*spinBox)                       // with its name, its range and its key, as rich text
// What a control is for is said where the control is made, by setWhatsThis(). A spin box says its range by
// itself; one whose true limits are narrower has them as its property `range`.
#pragma once

#include <QObject>
#include <QPoint>

#include <optional>

class QAction;
class QMenu;
class QWidget;

namespace blinkwright::app {

/// What the control itself is for, without its name: empty where nobody has said it.
/// @param at where it is asked, in the control; without it, what the keyboard has chosen
QString purposeOf(const QWidget& control, std::optional<QPoint> at = {});
/// The whole answer as rich text, of the control or of the nearest around it that has one; empty where none
/// has.
QString answerFor(const QWidget& control, std::optional<QPoint> at = {});

class WhatIsThis : public QObject {
    Q_OBJECT
  public:
    explicit WhatIsThis(QObject* parent);
    void addTo(QMenu* menu) const;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    static bool show(const QWidget& control, std::optional<QPoint> at, QPoint global);
};

} // namespace blinkwright::app
