#include "app/appearance.h"

#include "widgets/text/marks_by_text.h"

#include <QApplication>

#include <algorithm>

namespace blinkwright::app {

namespace {

constexpr double projectorText = 1.4; ///< over the chosen size: common practice, no source

// Qt 6.4 has no call for the desktop's colour scheme yet; a window ground darker than its text tells it.
bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

/// Judged once: later palettes are our own.
bool systemIsDark() {
    static const bool dark = isDark(QApplication::palette());
    return dark;
}

/// Likewise.
const QFont& systemFont() {
    static const QFont font = QApplication::font();
    return font;
}

} // namespace

Appearance::Appearance(QObject* parent)
    : QObject(parent), m_systemIsDark(systemIsDark()),
      m_theme(widgets::Theme::of(widgets::Theme::Mode::light)) {
    (void)systemFont();
    QApplication::setStyle(new widgets::MarksByText); // the application's
}

void Appearance::choose(Looks looks) {
    m_looks = looks;
    show();
}

void Appearance::setTextSize(int percent) {
    m_textSize = std::ranges::find(textSizes, percent) == textSizes.end() ? 100 : percent;
    show();
}

void Appearance::setProjected(bool on) {
    m_projected = on;
    show();
}

QFont Appearance::font() const {
    QFont font = systemFont();
    const double factor = m_textSize / 100.0 * (m_projected ? projectorText : 1);
    if (font.pixelSize() > 0)
        font.setPixelSize(qRound(font.pixelSize() * factor));
    else
        font.setPointSizeF(font.pointSizeF() * factor);
    return font;
}

void Appearance::show() {
    using widgets::Theme;
    const bool dark = m_looks == Looks::dark || (m_looks == Looks::system && m_systemIsDark);
    const Theme& plain = Theme::of(dark ? Theme::Mode::dark : Theme::Mode::light);
    m_theme = m_projected ? plain.forProjector() : plain;
    QApplication::setPalette(m_theme.palette());
    if (const QFont wanted = font(); wanted != QApplication::font()) QApplication::setFont(wanted);
    emit themeChanged(m_theme);
}

} // namespace blinkwright::app
