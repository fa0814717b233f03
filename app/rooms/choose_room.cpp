#include "app/rooms/choose_room.h"

#include "app/rooms/drawer_desk.h"
#include "app/save_question.h"
#include "core/io/choices_csv.h"
#include "core/study/choose.h"
#include "core/study/take_values.h"
#include "widgets/choose/choice_model.h"
#include "widgets/choose/choose_view.h"
#include "widgets/choose/wish_form.h"

#include <QApplication>
#include <QClipboard>
#include <QPushButton>

namespace blinkwright::app {

using circuit::PartSet;

namespace {

/// With narrow spaces between the thousands, as ISO 80000-1 has it.
QString grouped(std::size_t count) {
    QString text = QString::number(count);
    for (qsizetype at = text.size() - 3; at > 0; at -= 3) text.insert(at, QChar(0x202F));
    return text;
}

} // namespace

ChooseRoom::ChooseRoom(const House& house, DrawerDesk& desk)
    : Room(house, tr("Choose values"), QStringLiteral("choose"), QSize(1080, 720)), m_desk(desk),
      m_view(new widgets::ChooseView) {
    m_view->form().setTexts(widgets::restored(remembered()));
    frame().setBody(m_view);
    const auto button = [this](const char* object, const QString& text, const QString& meaning,
                               void (ChooseRoom::*done)()) {
        QPushButton* made = frame().addButton(text);
        made->setWhatsThis(meaning);
        made->setObjectName(QLatin1String(object));
        connect(made, &QPushButton::clicked, this, done);
        return made;
    };
    m_copy = button("copy", tr("Co&py"), tr("Puts the table of proposals on the clipboard as text."),
                    &ChooseRoom::copyTable);
    m_export = button("export", tr("E&xport…"), tr("Writes the table of proposals to a file (.csv)."),
                      &ChooseRoom::exportTable);
    m_take = button("take", tr("Take as Set &B"),
                    tr("Gives Set B of the open circuit the chosen values, where it has these parts."),
                    &ChooseRoom::takeAsSetB);
    m_make = button("make", tr("&Make it"),
                    tr("Opens the chosen proposal as a new circuit in place of what is open."),
                    &ChooseRoom::makeIt);
    connect(&m_view->form(), &widgets::WishForm::changed, this, [this] {
        keepTexts();
        askSoon();
    });
    connect(&m_view->form(), &widgets::WishForm::drawerWished, &m_desk, &DrawerDesk::open);
    connect(&m_desk, &DrawerDesk::changed, this, [this] {
        if (m_view->form().texts().fromDrawer) askSoon();
    });
    connect(m_view, &widgets::ChooseView::choiceChanged, this, &ChooseRoom::showButtons);
    connect(m_view, &widgets::ChooseView::nearestWished, this, &ChooseRoom::takeNearest);
    connect(m_view, &widgets::ChooseView::activated, this, &ChooseRoom::makeIt);
    connect(&this->house().document, &Document::changed, this, &ChooseRoom::showButtons);
    showButtons();
    ready();
}

ChooseRoom::~ChooseRoom() {
    task().cancel();
}

void ChooseRoom::keepTexts() {
    remember(widgets::kept(m_view->form().texts()));
}

void ChooseRoom::ask() {
    if (!m_view->form().isFine()) {
        task().cancel();
        show({}, nullptr);
        return answer(tr("Mend the field that is marked: the answer follows."), true);
    }
    study::Wish wish = m_view->form().wish();
    if (m_view->form().texts().fromDrawer) wish.drawer = m_desk.stock();
    m_done = std::make_shared<std::atomic<std::size_t>>(0);
    task().start([this, wish, done = m_done](const std::atomic<bool>& cancel) -> NewestTask::Answer {
        auto choices = std::make_shared<const study::Choices>(
            study::choose(wish, {.cancel = &cancel, .done = done.get()}));
        return [this, wish, choices] {
            if (choices->cancelled) return;
            show(wish, choices);
            answer(sentence(wish, *choices), choices->unmet.has_value());
        };
    });
}

double ChooseRoom::progress() const {
    constexpr study::ChooseRequest usual;
    if (!m_done) return -1;
    const double share =
        static_cast<double>(m_done->load()) / static_cast<double>(usual.simulate + usual.keep);
    return std::min(share, 1.0);
}

void ChooseRoom::show(const study::Wish& wish, std::shared_ptr<const study::Choices> choices) {
    m_choices = choices;
    // The nearest that can be made is worth looking at.
    if (choices && choices->unmet && choices->unmet->choice) {
        study::Choices nearest;
        nearest.best = {*choices->unmet->choice};
        choices = std::make_shared<const study::Choices>(std::move(nearest));
    }
    m_shown = choices;
    const study::Unmet* unmet = m_choices && m_choices->unmet ? &*m_choices->unmet : nullptr;
    // There is a nearest wish only where some number of it is another.
    const widgets::WishTexts& texts = m_view->form().texts();
    m_view->setReason(unmet ? QString::fromStdString(unmet->reason) : QString(),
                      unmet && !(widgets::withNearest(texts, *unmet) == texts));
    m_view->setChoices(wish, std::move(choices));
    showButtons();
}

QString ChooseRoom::sentence(const study::Wish& wish, const study::Choices& choices) const {
    if (choices.unmet)
        return choices.unmet->choice ? tr("The wish cannot be met: the nearest is shown.")
                                     : tr("The wish cannot be met.");
    QString words = tr("Of %1 combinations %2 simulated, the best %3 shown.")
                        .arg(grouped(choices.screened))
                        .arg(choices.simulated)
                        .arg(choices.best.size());
    if (wish.lamps != 2 || !wish.equalBrightness) return words;
    if (!wish.intensity_cd.empty() && !choices.best.front().scheme.coupledPair)
        return words + u' ' + tr("The lamps' mean intensities are equal.");
    return words + u' ' +
           (wish.intensity_cd.empty()
                ? tr("No intensities are stated: the lamps' mean currents are equal.")
                : tr("The intensities are as good as equal: so are the mean currents."));
}

void ChooseRoom::showButtons() {
    const bool one = m_view->chosen() != nullptr;
    m_make->setEnabled(one);
    m_copy->setEnabled(one);
    m_export->setEnabled(one);
    const auto take = one ? study::takeValues(circuit(), m_view->chosenCircuit(), PartSet::B)
                          : Result<circuit::Edit>(Fault{});
    m_take->setEnabled(take.ok());
    m_take->setToolTip(take ? tr("Puts these values into Set B of the open circuit")
                            : QString::fromStdString(take.fault().text));
}

void ChooseRoom::makeIt() {
    if (!m_view->chosen()) return;
    const circuit::Circuit made = m_view->chosenCircuit(); // the question below may change the choice
    if (!house().mayLeave()) return;
    house().document.startWith(made);
    house().say(tr("Made %1").arg(QString::fromStdString(made.title)));
}

void ChooseRoom::takeAsSetB() {
    const auto take = study::takeValues(circuit(), m_view->chosenCircuit(), PartSet::B);
    if (!take) return answer(QString::fromStdString(take.fault().text), true);
    const bool alike = study::wiredAlike(circuit(), m_view->chosenCircuit());
    if (const Result<void> done = house().document.apply(take.value()); !done)
        return answer(QString::fromStdString(done.fault().message()), true);
    answer(alike ? tr("Set B of the open circuit has these values.")
                 : tr("Set B of the open circuit has these values. It is wired otherwise than the proposal: "
                      "look at what it does."));
}

void ChooseRoom::takeNearest() {
    if (!m_choices || !m_choices->unmet) return;
    m_view->form().setTexts(widgets::withNearest(m_view->form().texts(), *m_choices->unmet));
    keepTexts();
    askSoon();
}

void ChooseRoom::copyTable() {
    QApplication::clipboard()->setText(m_view->model().asText());
    house().say(tr("The table of values is on the clipboard."));
}

void ChooseRoom::exportTable() {
    if (!m_shown) return;
    askFile(tr("Export the table of values"), tr("values"), {{tr("Table"), QStringLiteral("csv")}},
            [this, choices = m_shown](const QString& path) {
                return writeTable(path, io::choicesCsv(*choices), house().settings);
            });
}

void ChooseRoom::showTheme(const widgets::Theme& theme) {
    m_view->setTheme(theme);
}

} // namespace blinkwright::app
