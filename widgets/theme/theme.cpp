#include "widgets/theme/theme.h"

#include <array>
#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr double projectorStroke = 2; // common practice, no source: 3 pixels for a curve

/// `share` of b laid over a, both opaque; mixed in the display's own encoding, as an opacity would do it.
QColor mix(const QColor& a, const QColor& b, double share) {
    const auto part = [share](int x, int y) { return static_cast<int>(std::lround(x + (y - x) * share)); };
    return QColor(part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue()));
}

Theme lightTheme() {
    Theme t;
    t.mode = Theme::Mode::light;
    t.window = QColor(0xF4, 0xF5, 0xF6);
    t.paper = QColor(0xFD, 0xFD, 0xFB);
    t.ink = QColor(0x1D, 0x23, 0x29);
    t.quietInk = QColor(0x53, 0x5D, 0x67);
    t.grid = QColor(0xDD, 0xE1, 0xE5);
    t.frame = QColor(0xB4, 0xBC, 0xC4);
    t.accent = QColor(0x00, 0x6B, 0x84);
    t.setA = QColor(0x3B, 0x2F, 0x8F);
    t.setB = QColor(0xA6, 0x5E, 0x00);
    t.measured = QColor(0x00, 0x00, 0x00);
    t.moment = QColor(0xB0, 0x15, 0x5A);
    t.level = QColor(0x6A, 0x74, 0x7E);
    t.fault = QColor(0xAE, 0x1F, 0x1A);
    t.overstress = QColor(0x98, 0x40, 0x06);
    t.doubt = QColor(0x75, 0x58, 0x00);
    t.caution = QColor(0x6E, 0x36, 0xA2);
    t.note = QColor(0x22, 0x5F, 0x8C);
    return t;
}

Theme darkTheme() {
    Theme t;
    t.mode = Theme::Mode::dark;
    t.window = QColor(0x23, 0x28, 0x2D);
    t.paper = QColor(0x17, 0x1B, 0x1F);
    t.ink = QColor(0xE7, 0xE9, 0xEB);
    t.quietInk = QColor(0xA6, 0xAF, 0xB8);
    t.grid = QColor(0x2E, 0x34, 0x3A);
    t.frame = QColor(0x4A, 0x53, 0x5C);
    t.accent = QColor(0x5F, 0xC7, 0xDE);
    t.setA = QColor(0xA9, 0x9E, 0xFA);
    t.setB = QColor(0xE9, 0xA2, 0x4C);
    t.measured = QColor(0xFF, 0xFF, 0xFF);
    t.moment = QColor(0xFF, 0x7F, 0xB2);
    t.level = QColor(0x8C, 0x96, 0xA0);
    t.fault = QColor(0xFF, 0x8F, 0x86);
    t.overstress = QColor(0xFF, 0xAD, 0x70);
    t.doubt = QColor(0xE4, 0xC4, 0x5A);
    t.caution = QColor(0xCB, 0xAB, 0xFF);
    t.note = QColor(0x90, 0xC6, 0xF0);
    return t;
}

struct LampColour {
    const char* name;
    QRgb light, dark;
};
// By the `colour` value of a lamp. On light paper white light has to be a cool grey to be seen at all.
constexpr std::array<LampColour, 8> lampColours{{{"red", 0xFFE0261F, 0xFFFF5145},
                                                 {"amber", 0xFFE67E00, 0xFFFFA42E},
                                                 {"yellow", 0xFFC9A400, 0xFFFFE04A},
                                                 {"green", 0xFF5B9B1C, 0xFFA4E04E},
                                                 {"pure-green", 0xFF00995A, 0xFF34EBA0},
                                                 {"blue", 0xFF1F66E0, 0xFF66A8FF},
                                                 {"white", 0xFF8496B4, 0xFFFFFFFF},
                                                 {"infrared", 0xFF8A4F73, 0xFFC088AC}}};

} // namespace

const Theme& Theme::of(Mode wanted) {
    static const Theme light = lightTheme();
    static const Theme dark = darkTheme();
    return wanted == Mode::dark ? dark : light;
}

Theme Theme::forProjector() const {
    Theme wide = *this;
    wide.stroke = projectorStroke;
    wide.quietInk = ink; // what is quiet on a desk is gone on a wall
    return wide;
}

QPalette Theme::palette() const {
    const bool isDark = mode == Mode::dark;
    const QColor white(Qt::white), black(Qt::black);
    const QColor button = isDark ? mix(window, white, 0.08) : mix(window, white, 0.45);
    const QColor disabled = mix(ink, window, 0.55);

    QPalette p;
    p.setColor(QPalette::Window, window);
    p.setColor(QPalette::WindowText, ink);
    p.setColor(QPalette::Base, paper);
    p.setColor(QPalette::AlternateBase, mix(paper, window, isDark ? 0.45 : 0.6));
    p.setColor(QPalette::Text, ink);
    p.setColor(QPalette::PlaceholderText, quietInk);
    p.setColor(QPalette::Button, button);
    p.setColor(QPalette::ButtonText, ink);
    p.setColor(QPalette::BrightText, fault);
    p.setColor(QPalette::ToolTipBase, isDark ? mix(window, white, 0.12) : paper);
    p.setColor(QPalette::ToolTipText, ink);
    p.setColor(QPalette::Highlight, accent);
    p.setColor(QPalette::HighlightedText, isDark ? paper : white);
    p.setColor(QPalette::Link, isDark ? note : accent);
    p.setColor(QPalette::LinkVisited, caution);
    // The bevel colours, lightest to darkest: Fusion draws its outlines and grooves from them.
    p.setColor(QPalette::Light, isDark ? mix(button, white, 0.18) : white);
    p.setColor(QPalette::Midlight, isDark ? mix(button, white, 0.08) : mix(button, white, 0.5));
    p.setColor(QPalette::Mid, isDark ? mix(button, black, 0.25) : mix(button, black, 0.18));
    p.setColor(QPalette::Dark, isDark ? mix(window, black, 0.35) : mix(button, black, 0.34));
    p.setColor(QPalette::Shadow, isDark ? mix(window, black, 0.7) : mix(button, black, 0.6));

    p.setColor(QPalette::Inactive, QPalette::Highlight, mix(accent, window, 0.35));
    p.setColor(QPalette::Inactive, QPalette::HighlightedText, isDark ? paper : black);
    for (const auto role :
         {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::PlaceholderText,
          QPalette::Link, QPalette::LinkVisited, QPalette::ToolTipText})
        p.setColor(QPalette::Disabled, role, disabled);
    p.setColor(QPalette::Disabled, QPalette::Base, window);
    p.setColor(QPalette::Disabled, QPalette::Highlight, mix(window, ink, 0.25));
    p.setColor(QPalette::Disabled, QPalette::HighlightedText, ink);
    return p;
}

QColor Theme::lamp(const QString& colour) const {
    for (const LampColour& known : lampColours)
        if (colour == QLatin1String(known.name)) return QColor(mode == Mode::dark ? known.dark : known.light);
    return ink;
}

QColor Theme::echo(const QColor& curve) const {
    return mix(paper, curve, mode == Mode::dark ? 0.42 : 0.34);
}

} // namespace blinkwright::widgets
