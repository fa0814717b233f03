// The short strip under the curves that plays: back, play or pause, on, the ratio, going round, and a note.
//
//   auto* strip = new PlayStrip({back, play, next, loop}, ratios);   // actions of the menu, so both agree
//   strip->setNote(tr("Shown steady ..."));
#pragma once

#include <QWidget>
#include <vector>

class QAction;
class QActionGroup;
class QBoxLayout;
class QComboBox;

namespace blinkwright::app {

class PlayStrip : public QWidget {
    Q_OBJECT
  public:
    explicit PlayStrip(QWidget* parent = nullptr);

    /// Shows actions as buttons, and one choice of a group as a list.
    void setActions(const std::vector<QAction*>& buttons, QActionGroup* ratios);
    void setNote(const QString& text);
    QString note() const { return m_note; }

  private:
    class Note;
    QBoxLayout* m_row;
    QComboBox* m_ratios;
    Note* m_noteLabel;
    QString m_note;
};

} // namespace blinkwright::app
