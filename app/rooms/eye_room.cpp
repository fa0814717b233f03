#include "app/rooms/eye_room.h"

#include "core/study/study.h"
#include "widgets/rooms/eye_view.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace blinkwright::app {

EyeRoom::EyeRoom(const House& house)
    : Room(house, tr("What the eye sees"), QStringLiteral("eye"), QSize(720, 480)),
      m_view(new widgets::EyeView), m_cautions(new QLabel) {
    m_cautions->setObjectName(QStringLiteral("cautions"));
    m_cautions->setWordWrap(true);
    m_cautions->setTextFormat(Qt::PlainText);
    auto* body = new QWidget;
    auto* column = new QVBoxLayout(body);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_view, 1);
    column->addWidget(m_cautions);
    frame().setBody(body);
    QPushButton* copy = frame().addButton(tr("Co&py"));
    copy->setWhatsThis(tr("Puts the table and the cautions below it on the clipboard as text."));
    connect(copy, &QPushButton::clicked, this, [this] {
        QApplication::clipboard()->setText(m_view->asText() + m_cautions->text() + u'\n');
        this->house().say(tr("What the eye sees is on the clipboard."));
    });
    ready();
}

void EyeRoom::ask() {
    task().start(
        [this, circuit = circuit(), set = set()](const std::atomic<bool>& cancel) -> NewestTask::Answer {
            auto studied = study::study(circuit, set, {.cancel = &cancel});
            if (!studied)
                return [this, fault = studied.fault()] {
                    show({});
                    answer(QString::fromStdString(fault.message()), true);
                };
            return [this, eye = std::move(studied.value().eye), verdict = studied.value().readings.verdict] {
                show(eye);
                if (verdict != study::Verdict::blinks)
                    answer(tr("The circuit does not blink."), true);
                else if (eye.empty())
                    answer(tr("There is no lamp, or the circuit has no even flashes."));
                else
                    answer(tr("For light in proportion to the current, and one lamp by itself."));
            };
        });
}

void EyeRoom::show(const std::vector<study::EyeReading>& lamps) {
    m_view->setEye(lamps);
    m_cautions->setText(widgets::eyeCautions(lamps));
    m_flickers = std::any_of(lamps.begin(), lamps.end(), [](const auto& lamp) { return lamp.flickers; });
    showTheme(house().appearance.theme());
}

void EyeRoom::clear() {
    show({});
}

void EyeRoom::showTheme(const widgets::Theme& theme) {
    m_view->setTheme(theme);
    QPalette palette = m_cautions->palette();
    palette.setColor(QPalette::WindowText, m_flickers ? theme.caution : theme.quietInk);
    m_cautions->setPalette(palette);
}

} // namespace blinkwright::app
