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

/// Adds a choice to a menu. @param pick hears of the one that the user takes.
template <class Value, std::size_t count, class Pick>
void addChoice(QMenu* menu, Value now, const std::array<std::pair<Value, QString>, count>& values,
               Pick pick) {
    auto* group = new QActionGroup(menu);
    for (const auto& [value, text] : values) {
        QAction* action = group->addAction(menu->addAction(text));
        action->setCheckable(true);
        action->setChecked(value == now);
        QObject::connect(action, &QAction::triggered, menu, [pick, wanted = value] { pick(wanted); });
    }
}

} // namespace

void MainWindow::addSymbolChoices(QMenu* menu) {
    const SymbolStyle kept = m_settings.symbolStyle();
    m_hookup->setSymbolStyle(kept);
    addChoice<Shapes, 2>(menu->addMenu(tr("S&ymbols")), kept.shapes,
                         {{{Shapes::iec60617, tr("&IEC 60617")}, {Shapes::ieee315, tr("I&EEE 315")}}},
                         [this](Shapes shapes) {
                             SymbolStyle style = m_settings.symbolStyle();
                             style.shapes = shapes;
                             drawSymbolsAs(style);
                         });
    addChoice<TimerLook, 2>(
        menu->addMenu(tr("&Timer drawn as")), kept.timer,
        {{{TimerLook::package, tr("&Package from above")}, {TimerLook::block, tr("&Function block")}}},
        [this](TimerLook look) {
            SymbolStyle style = m_settings.symbolStyle();
            style.timer = look;
            drawSymbolsAs(style);
        });
}

void MainWindow::addLooksChoice(QMenu* menu) {
    addChoice<Looks, 3>(
        menu->addMenu(tr("&Appearance")), m_appearance.looks(),
        {{{Looks::light, tr("&Light")}, {Looks::dark, tr("&Dark")}, {Looks::system, tr("As the &system")}}},
        [this](Looks looks) {
            m_settings.setLooks(looks);
            m_appearance.choose(looks);
        });
}

void MainWindow::addTextSizeChoice(QMenu* menu) {
    std::array<std::pair<int, QString>, Appearance::textSizes.size()> sizes;
    for (std::size_t k = 0; k < sizes.size(); ++k)
        sizes[k] = {Appearance::textSizes[k], tr("&%1 %").arg(Appearance::textSizes[k])};
    addChoice<int, sizes.size()>(menu->addMenu(tr("Te&xt size")), m_appearance.textSize(), sizes,
                                 [this](int percent) {
                                     m_settings.setTextSize(percent);
                                     m_appearance.setTextSize(percent);
                                 });
}

void MainWindow::addLanguageChoice(QMenu* menu) {
    QMenu* choice = menu->addMenu(tr("Lan&guage"));
    auto* group = new QActionGroup(choice);
    const QString now = m_settings.language();
    const auto addLanguage = [&](const QString& code, const QString& text) {
        QAction* action = group->addAction(choice->addAction(text));
        action->setCheckable(true);
        action->setChecked(code == now);
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
