// What the toolkit leaves as it was when the size of texts changes while a window is open, mended for every
// window in one place: boxes remember their least width, heads of tables their columns, and a window its
// size.
//
//   new TextsWhileOpen(window);   // for as long as the window lives
#pragma once

#include <QDeadlineTimer>
#include <QObject>

#include <map>

namespace blinkwright::widgets {

class TextsWhileOpen : public QObject {
  public:
    explicit TextsWhileOpen(QObject* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    std::map<const QObject*, QDeadlineTimer> m_growing; ///< windows, until they have settled
};

} // namespace blinkwright::widgets
