// How everything looks, from one place: light, dark, or as the desktop has it (one Fusion palette for the
// controls, one Theme for all that we paint); the size of all texts; and the view for a class, with larger
// texts and wider pens.
//
//   Appearance appearance;              // before anything sets a palette
//   appearance.choose(Looks::dark);     // the application is dark now
//   appearance.setTextSize(150);        // and its texts half as large again, at once
//   view->setTheme(appearance.theme());
#pragma once

#include "app/settings.h"
#include "widgets/theme/theme.h"

#include <QFont>
#include <QObject>

#include <array>

namespace blinkwright::app {

class Appearance : public QObject {
    Q_OBJECT
  public:
    static constexpr std::array textSizes{100, 125, 150, 200}; ///< over the desktop's [%]

    /// Judges the desktop by the palette and the font that the application has now.
    explicit Appearance(QObject* parent = nullptr);

    void choose(Looks looks);
    Looks looks() const { return m_looks; }
    /// @param percent over the desktop's size; one that is none of textSizes is taken for 100
    void setTextSize(int percent);
    int textSize() const { return m_textSize; }
    /// Larger texts and wider pens, for people at the back of a class.
    void setProjected(bool on);
    bool isProjected() const { return m_projected; }

    const widgets::Theme& theme() const { return m_theme; }
    QFont font() const; ///< of the application

  signals:
    void themeChanged(const blinkwright::widgets::Theme& theme);

  private:
    void show();

    bool m_systemIsDark;
    Looks m_looks = Looks::system;
    int m_textSize = 100;
    bool m_projected = false;
    widgets::Theme m_theme;
};

} // namespace blinkwright::app
