// The View menu's choices: looks, size of texts, how the Hook-up draws its symbols, and the language.
#include "app/language.h"
#include "app/main_window.h"
#include "widgets/hookup/hookup_view.h"

#include <QActionGroup>
#include <QMenu>
#include <QStatusBar>

#include <array>
#include <utility>

namespace blinkwright::app {

namespace {

using widgets::hookup::Shapes;
using widgets::hookup::SymbolStyle;
using widgets::hookup::TimerLook;

template <class Value>
struct Choice {
    Value value;
    QString text, meaning;
};

QMenu* addMenu(QMenu* into, const QString& text, const QString& meaning) {
    QMenu* menu = into->addMenu(text);
    menu->menuAction()->setWhatsThis(meaning);
    return menu;
}

/// Adds a choice to a menu. @param pick hears of the one that the user takes.
template <class Value, std::size_t count, class Pick>
void addChoice(QMenu* menu, Value now, const std::array<Choice<Value>, count>& values, Pick pick) {
    auto* group = new QActionGroup(menu);
    for (const auto& [value, text, meaning] : values) {
        QAction* action = group->addAction(menu->addAction(text));
        action->setWhatsThis(meaning);
        action->setCheckable(true);
        action->setChecked(value == now);
        QObject::connect(action, &QAction::triggered, menu, [pick, wanted = value] { pick(wanted); });
    }
}

/// &100, 1&25, 1&50, 2&00: a digit of its own is the letter to press.
QString withLetter(int percent) {
    QString text = QString::number(percent);
    return text.insert(percent == 100 ? 0 : 1, u'&');
}

} // namespace

void MainWindow::addSymbolChoices(QMenu* menu) {
    const SymbolStyle kept = m_settings.symbolStyle();
    m_hookup->setSymbolStyle(kept);
    addChoice<Shapes, 2>(
        addMenu(menu, tr("S&ymbols"),
                tr("By which standard the Hook-up draws its parts. The circuit stays the same.")),
        kept.shapes,
        {{{Shapes::iec60617, tr("&IEC 60617"),
           tr("Draws resistors as boxes, as the international standard has them.")},
          {Shapes::ieee315, tr("I&EEE 315"),
           tr("Draws resistors as zigzag lines, as the American standard has them.")}}},
        [this](Shapes shapes) {
            SymbolStyle style = m_settings.symbolStyle();
            style.shapes = shapes;
            drawSymbolsAs(style);
        });
    addChoice<TimerLook, 2>(
        addMenu(menu, tr("&Timer drawn as"),
                tr("How the Hook-up draws the timer. Its pins and nets stay the same.")),
        kept.timer,
        {{{TimerLook::package, tr("&Package from above"),
           tr("Pins stand as on the package that is seen from above: easy to wire from.")},
          {TimerLook::block, tr("&Function block"),
           tr("Pins stand by what they do: easy to read as a circuit.")}}},
        [this](TimerLook look) {
            SymbolStyle style = m_settings.symbolStyle();
            style.timer = look;
            drawSymbolsAs(style);
        });
}

void MainWindow::addLooksChoice(QMenu* menu) {
    addChoice<Looks, 3>(
        addMenu(menu, tr("&Appearance"), tr("Colours of all windows. Exports are on white in any case.")),
        m_appearance.looks(),
        {{{Looks::light, tr("&Light"), tr("Dark texts and curves on a light ground.")},
          {Looks::dark, tr("&Dark"), tr("Light texts and curves on a dark ground, for a dim room.")},
          {Looks::system, tr("As the &system"), tr("Light or dark, as the colours of the desktop are.")}}},
        [this](Looks looks) {
            m_settings.setLooks(looks);
            m_appearance.choose(looks);
        });
}

void MainWindow::addTextSizeChoice(QMenu* menu) {
    std::array<Choice<int>, Appearance::textSizes.size()> sizes;
    for (std::size_t k = 0; k < sizes.size(); ++k) {
        const int percent = Appearance::textSizes[k];
        sizes[k] = {percent, tr("%1 %").arg(withLetter(percent)),
                    tr("All texts at %1 % of the size that the desktop asks for.").arg(percent)};
    }
    QMenu* choice = addMenu(menu, tr("Te&xt size"),
                            tr("Size of the texts in all windows and plots, at once and from then on."));
    addChoice<int, sizes.size()>(choice, m_appearance.textSize(), sizes, [this](int percent) {
        m_settings.setTextSize(percent);
        m_appearance.setTextSize(percent);
    });
}

void MainWindow::addLanguageChoice(QMenu* menu) {
    QMenu* choice =
        addMenu(menu, tr("Lan&guage"), tr("Language of all texts, from the next start of the program on."));
    choice->addSection(tr("From the next start on"));
    auto* group = new QActionGroup(choice);
    const QString now = m_settings.language();
    const auto addLanguage = [&](const QString& code, const QString& text) {
        QAction* action = group->addAction(choice->addAction(text));
        action->setCheckable(true);
        action->setChecked(code == now);
        action->setWhatsThis(
            code.isEmpty()
                ? tr("Takes the language of the desktop, or English where there is no translation.")
                : tr("All texts are in this language from the next start on."));
        connect(action, &QAction::triggered, this, [this, code] {
            m_settings.setLanguage(code);
            statusBar()->showMessage(tr("The language changes when the program is started the next time."));
        });
    };
    addLanguage({}, tr("As the &system"));
    for (const QString& code : languages()) addLanguage(code, nameOf(code));
}

void MainWindow::drawSymbolsAs(const SymbolStyle& style) {
    m_settings.setSymbolStyle(style);
    m_hookup->setSymbolStyle(style);
    m_hookup->setCircuit(m_document.circuit());
}

} // namespace blinkwright::app
