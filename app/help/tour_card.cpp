#include "app/help/tour_card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace blinkwright::app::help {

namespace {

constexpr int cardWidth = 52, cardMargin = 14; ///< in mean letters; in pixels
constexpr int lineWidth = 3, corner = 5;

} // namespace

TourCard::TourCard(QWidget* parent)
    : QWidget(parent), m_title(new QLabel), m_text(new QLabel), m_number(new QLabel),
      m_leave(new QPushButton(tr("Leave"))), m_back(new QPushButton(tr("&Back"))), m_next(new QPushButton) {
    setObjectName(QStringLiteral("tourCard"));
    QFont strong = m_title->font();
    strong.setBold(true);
    m_title->setFont(strong);
    m_text->setWordWrap(true);
    m_leave->setToolTip(tr("Leave the tour (Esc)"));
    m_leave->setWhatsThis(tr("Ends the tour. The Help menu begins it again."));
    m_back->setWhatsThis(tr("Goes back to the panel before this one."));
    m_next->setWhatsThis(tr("Goes on to the next panel, and ends the tour after the last."));
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_number, 1);
    for (QPushButton* button : {m_leave, m_back, m_next}) {
        button->setAutoDefault(true); // Enter presses the one that has the focus
        foot->addWidget(button);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(cardMargin, cardMargin, cardMargin, cardMargin);
    column->setSpacing(8);
    column->addWidget(m_title);
    column->addWidget(m_text);
    column->addLayout(foot);
    hide();
}

void TourCard::showStep(const QString& title, const QString& text, int step, int count) {
    m_title->setText(title);
    m_text->setText(text);
    m_number->setText(tr("%1 of %2").arg(step + 1).arg(count));
    m_back->setEnabled(step > 0);
    m_next->setText(step + 1 < count ? tr("&Next") : tr("&Done"));
    setAccessibleName(tr("Tour, %1 of %2: %3").arg(step + 1).arg(count).arg(title));
    m_next->setAccessibleDescription(title + QStringLiteral(". ") + text); // read out with the focus
    const int width = cardWidth * fontMetrics().averageCharWidth();        // of now: texts may have grown
    const int height = layout()->heightForWidth(width);
    setFixedSize(width, height > 0 ? height : sizeHint().height());
    show();
    raise();
}

void TourCard::setTheme(const widgets::Theme& theme) {
    m_frame = theme.accent;
    m_ground = theme.paper;
    QPalette quiet = m_number->palette();
    quiet.setColor(QPalette::WindowText, theme.quietInk);
    m_number->setPalette(quiet);
    update();
}

void TourCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), m_ground);
    painter.setPen(QPen(m_frame, 2));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

TourOutline::TourOutline(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("tourOutline"));
    setAttribute(Qt::WA_TransparentForMouseEvents);
    hide();
}

void TourOutline::setAround(const QRect& place) {
    m_around = place;
    if (place.isEmpty()) return hide();
    setGeometry(place);
    // What it does not cover needs not be painted through it: curves stay as fast as they are.
    setMask(QRegion(rect()) -
            QRegion(rect().adjusted(lineWidth + 1, lineWidth + 1, -lineWidth - 1, -lineWidth - 1)));
    show();
    raise();
}

void TourOutline::setTheme(const widgets::Theme& theme) {
    m_colour = theme.accent;
    update();
}

void TourOutline::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_colour, lineWidth));
    const double half = lineWidth / 2.0;
    painter.drawRoundedRect(QRectF(rect()).adjusted(half, half, -half, -half), corner, corner);
}

} // namespace blinkwright::app::help
