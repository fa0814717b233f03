#include "widgets/measure/tap_timer.h"

#include "widgets/text/figure_text.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/text_sized.h"

#include <QElapsedTimer>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace blinkwright::widgets {

namespace {

constexpr int buttonHeight = 72;

std::function<double()> systemClock() {
    QElapsedTimer timer;
    timer.start();
    return [timer] { return static_cast<double>(timer.nsecsElapsed()) * 1e-9; };
}

} // namespace

TapTimer::TapTimer(QWidget* parent)
    : QWidget(parent), m_clock(systemClock()), m_button(new QPushButton),
      m_again(new QPushButton(tr("Start &again"))), m_said(new QLabel) {
    m_button->setObjectName(QStringLiteral("tap"));
    m_button->setWhatsThis(
        tr("Press it, or the space bar, at each flash. The taps give the rate, and their scatter its "
           "uncertainty."));
    m_button->setMinimumHeight(buttonHeight);
    m_button->setAutoDefault(false);
    m_button->setAccessibleDescription(tr("Press at each flash, with the mouse or the space bar"));
    m_again->setObjectName(QStringLiteral("again"));
    m_again->setWhatsThis(tr("Forgets the taps, so that counting begins anew."));
    m_again->setAutoDefault(false);
    m_said->setObjectName(QStringLiteral("taps"));
    m_said->setWordWrap(true);
    m_said->setTextFormat(Qt::PlainText);
    sizedByText(*m_said, [this] { m_said->setMinimumHeight(3 * m_said->fontMetrics().lineSpacing()); });
    m_said->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    sizedByText(*this, [this] {
        QFont large = font();
        large.setPointSizeF(large.pointSizeF() * 1.4);
        m_button->setFont(large);
    });
    auto* row = new QHBoxLayout;
    row->addWidget(m_said, 1);
    row->addWidget(m_again, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_button);
    column->addLayout(row);
    setFocusProxy(m_button);
    // Going down, not coming up: that is the moment.
    connect(m_button, &QPushButton::pressed, this, &TapTimer::tap);
    connect(m_again, &QPushButton::clicked, this, &TapTimer::startAgain);
    show();
}

void TapTimer::tap() {
    const double now = m_clock();
    if (!m_taps_s.empty() && !(now > m_taps_s.back())) return;
    m_taps_s.push_back(now);
    show();
    emit tapped();
}

void TapTimer::startAgain() {
    m_taps_s.clear();
    show();
    m_button->setFocus();
    emit tapped();
}

QString TapTimer::message() const {
    return m_said->text();
}

void TapTimer::show() {
    const auto n = static_cast<int>(m_taps_s.size());
    m_button->setText(n == 0 ? tr("&Tap at each flash") : n == 1 ? tr("1 tap") : tr("%1 taps").arg(n));
    m_again->setEnabled(n > 0);
    const auto counted = count();
    if (n == 0)
        return m_said->setText(tr("Press here or the space bar at each flash. The taps make the count."));
    if (!counted) return m_said->setText(tr("Go on tapping: the first tap is the start."));
    const circuit::Measured minute{60 * counted->rate_Hz, 60 * counted->rate_Hz *
                                                              counted->count.time_s.uncertainty /
                                                              counted->count.time_s.value};
    QString text = tr("%1 flashes a minute.").arg(measuredText(minute, numberText));
    if (counted->scatter_s)
        text += u' ' + tr("Scatter of a tap: %1.").arg(uncertaintyText(*counted->scatter_s, secondsText));
    if (n < study::fewestTaps) text += u' ' + tr("With %1 taps the scatter counts.").arg(study::fewestTaps);
    if (counted->gapAfter)
        text +=
            u' ' + tr("After tap %1 a flash seems to have gone by: start again.").arg(*counted->gapAfter + 1);
    m_said->setText(text);
}

} // namespace blinkwright::widgets
