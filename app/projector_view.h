// The view for a class: Hook-up and Curves alone on the whole screen, large, with the keys of every day.
//
//   ProjectorView projector({window, appearance, settings, hookup, {readings, values}, {rows, top}, top});
//   projector.alsoAway(*toolBar);
//   menu->addAction(projector.action());
//   projector.restore();                // at the start: as it was left
// What the window is without it is kept meanwhile, and comes back to the pixel: sizes, places,
// and what of the drawing was in view.
#pragma once

#include "app/appearance.h"

#include <QByteArray>
#include <QSize>
#include <QTimer>
#include <map>
#include <vector>

class QAction;
class QMainWindow;
class QSplitter;

namespace blinkwright::widgets {
class HookupView;
}

namespace blinkwright::app {

class ProjectorView : public QObject {
    Q_OBJECT
  public:
    struct Parts {
        QMainWindow& window;
        Appearance& appearance;
        Settings& settings;
        widgets::HookupView& hookup;       ///< fitted; has the focus where that of before is away
        std::vector<QWidget*> away;        ///< what a class need not see
        std::vector<QSplitter*> splitters; ///< whose places are kept
        QSplitter* sides;                  ///< Hook-up beside Curves
    };
    explicit ProjectorView(const Parts& parts);

    void alsoAway(QWidget& part) { m_parts.away.push_back(&part); }
    QAction* action() const { return m_action; }
    bool isOn() const { return m_on; }
    void set(bool on); ///< and remembers it
    void restore();

    /// What is to be kept for the next start: the window as it is without this view.
    QByteArray geometry() const;
    QByteArray stateOf(const QSplitter* splitter) const;

  signals:
    void said(const QString& sentence);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void enter();
    void leave();
    void comeBack();

    Parts m_parts;
    QAction* m_action;
    bool m_on = false;
    // Of the window before:
    QByteArray m_geometry;
    QSize m_size;
    Qt::WindowStates m_state;
    bool m_toSize = false; ///< back to the size of before, not only to its state
    QTimer m_comingBack;   ///< runs while sizes may still be on their way
    std::map<const QSplitter*, QByteArray> m_states;
    std::vector<QWidget*> m_hidden; ///< those that were there before
};

} // namespace blinkwright::app
