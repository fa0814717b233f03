#include "app/appearance.h"

#include <QApplication>
#include <QStyleFactory>

namespace blinkwright::app {

namespace {

// Qt 6.4 has no call for the desktop's colour scheme yet; a window ground darker than its text tells it.
bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

/// Judged once: later palettes are our own.
bool systemIsDark() {
    static const bool dark = isDark(QApplication::palette());
    return dark;
}

} // namespace

Appearance::Appearance(QObject* parent) : QObject(parent), m_systemIsDark(systemIsDark()) {
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
}

void Appearance::choose(Looks looks) {
    m_looks = looks;
    QApplication::setPalette(theme().palette());
    emit themeChanged(theme());
}

const widgets::Theme& Appearance::theme() const {
    const bool dark = m_looks == Looks::dark || (m_looks == Looks::system && m_systemIsDark);
    return widgets::Theme::of(dark ? widgets::Theme::Mode::dark : widgets::Theme::Mode::light);
}

} // namespace blinkwright::app
