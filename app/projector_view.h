// The view for a class: Hook-up and Curves alone, large, with the keys of every day.
//
//   ProjectorView projector({window, appearance, settings, hookup, {readings, values}, {rows, top}, top});
//   projector.alsoAway(*toolBar);
//   menu->addAction(projector.action());
//   projector.restore();                // at the start: as it was left
// What the window is without it is kept meanwhile, and comes back exactly.
#pragma once

#include "app/appearance.h"

#include <QByteArray>
#include <map>
#include <vector>

class QAction;
class QMainWindow;
class QSplitter;

namespace blinkwright::app {

class ProjectorView : public QObject {
    Q_OBJECT
  public:
    struct Parts {
        QMainWindow& window;
        Appearance& appearance;
        Settings& settings;
        QWidget& hookup;                   ///< has the focus where that of before is away
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

  private:
    void enter();
    void leave();

    Parts m_parts;
    QAction* m_action;
    bool m_on = false;
    QByteArray m_geometry;
    QSize m_size, m_grown; ///< before, and what larger texts made of it
    std::map<const QSplitter*, QByteArray> m_states;
    std::vector<QWidget*> m_hidden; ///< those that were there before
};

} // namespace blinkwright::app
