#include "app/rooms/why_room.h"

#include "app/whole_file.h"
#include "core/devices/board.h"
#include "widgets/rooms/why_view.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QPushButton>

namespace blinkwright::app {

namespace {

QString sentence(const study::Why& why) {
    if (!why.reason.empty()) return QString::fromStdString(why.reason);
    return WhyRoom::tr("Each cause is simulated by itself on the textbook circuit; “Together” is what the "
                       "causes do to each other.");
}

} // namespace

WhyRoom::WhyRoom(const House& house)
    : Room(house, tr("Why it differs"), QStringLiteral("why"), QSize(780, 440)),
      m_view(new widgets::WhyView) {
    auto* quantity = new QComboBox;
    quantity->addItems({tr("Cycle time"), tr("Duty cycle")});
    quantity->setObjectName(QStringLiteral("quantity"));
    quantity->setWhatsThis(
        tr("Which figure is explained: the time of a cycle, or the duty cycle, the share of it with "
           "the output high."));
    connect(quantity, &QComboBox::currentIndexChanged, m_view, [this](int index) {
        m_view->setQuantity(index == 1 ? widgets::WhyView::Quantity::duty
                                       : widgets::WhyView::Quantity::period);
    });
    frame().addControl(tr("Bars &show:"), quantity);
    frame().setBody(m_view);
    QPushButton* copy = frame().addButton(tr("Co&py"));
    copy->setWhatsThis(
        tr("Puts the table of causes on the clipboard as text, for a report or a spreadsheet."));
    connect(copy, &QPushButton::clicked, this, [this] {
        QApplication::clipboard()->setText(m_view->asText());
        this->house().say(tr("The table of causes is on the clipboard."));
    });
    ready();
}

void WhyRoom::ask() {
    task().start(
        [this, circuit = circuit(), set = set()](const std::atomic<bool>& cancel) -> NewestTask::Answer {
            const Result<devices::Board> board = devices::makeBoard(circuit, set);
            if (!board)
                return [this, fault = board.fault()] {
                    clear();
                    answer(QString::fromStdString(fault.message()), true);
                };
            auto why = std::make_shared<const study::Why>(study::why(board.value(), {.cancel = &cancel}));
            const study::WhyMeasured measured = study::whyMeasured(*why, study::measuredReadings(circuit));
            return [this, why, measured] {
                m_view->setWhy(why, measured);
                answer(sentence(*why), !why->simulated);
            };
        });
}

void WhyRoom::clear() {
    m_view->setWhy(nullptr);
}

void WhyRoom::showTheme(const widgets::Theme& theme) {
    m_view->setTheme(theme);
}

} // namespace blinkwright::app
