// What the toolkit leaves as it was when the size of texts changes while a window is open, mended for every
// window in one place: boxes remember their least width, and a window its size.
//
//   new TextsWhileOpen(window);   // for as long as the window lives
#pragma once

#include <QDeadlineTimer>
#include <QObject>
#include <QSize>

#include <map>

class QWidget;

namespace blinkwright::widgets {

class TextsWhileOpen : public QObject {
  public:
    explicit TextsWhileOpen(QObject* parent);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    /// How large a window was, and for texts of which size.
    struct Sized {
        double text_px = 0;
        QSizeF usual; ///< as it would be with texts of one pixel
        QSize wanted; ///< for the texts of now, if they leave it
        QSize given;  ///< by us; another one is the user's
    };
    void resizeWithTexts(QWidget& window);
    void settle(QWidget& window); ///< gives it the room that its texts ask for

    std::map<const QObject*, QDeadlineTimer> m_growing; ///< windows, until they have settled
    std::map<const QObject*, Sized> m_sized;            ///< those that were shown
};

} // namespace blinkwright::widgets
