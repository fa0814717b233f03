#include "app/sheet/sheet_preview.h"

#include "app/sheet/pdf_sheet.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

namespace blinkwright::app::sheet {

namespace {

constexpr int edge = 6;
constexpr QSize least(300, 420);

} // namespace

SheetPreview::SheetPreview(QWidget* parent)
    : QWidget(parent), m_number(new QLabel), m_back(new QToolButton), m_on(new QToolButton) {
    setObjectName(QStringLiteral("preview"));
    setAccessibleName(tr("Preview of the page"));
    setWhatsThis(tr("One page of the sheet as it will be printed. Page Up and Page Down turn the pages."));
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(least);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_back->setArrowType(Qt::LeftArrow);
    m_back->setAccessibleName(tr("Page before"));
    m_back->setWhatsThis(tr("Turns the preview one page back; Page Up in the preview does the same."));
    m_back->setToolTip(tr("Page before (Page Up)"));
    m_on->setArrowType(Qt::RightArrow);
    m_on->setAccessibleName(tr("Next page"));
    m_on->setWhatsThis(tr("Turns the preview one page on; Page Down in the preview does the same."));
    m_on->setToolTip(tr("Next page (Page Down)"));
    connect(m_back, &QToolButton::clicked, this, [this] { turnTo(m_page - 1); });
    connect(m_on, &QToolButton::clicked, this, [this] { turnTo(m_page + 1); });
    auto* foot = new QHBoxLayout;
    foot->addStretch(1);
    foot->addWidget(m_back);
    foot->addWidget(m_number);
    foot->addWidget(m_on);
    foot->addStretch(1);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addStretch(1);
    whole->addLayout(foot);
    showPage();
}

void SheetPreview::setPages(std::shared_ptr<const PageLayout> pages) {
    m_pages = std::move(pages);
    turnTo(m_page);
}

void SheetPreview::turnTo(int page) {
    m_page = std::clamp(page, 0, std::max(0, pageCount() - 1));
    showPage();
}

void SheetPreview::showPage() {
    m_picture = {};
    const int count = pageCount();
    m_number->setText(count > 0 ? tr("Page %1 of %2").arg(m_page + 1).arg(count) : QString());
    m_back->setEnabled(m_page > 0);
    m_on->setEnabled(m_page + 1 < count);
    update();
}

QRect SheetPreview::room() const {
    return rect().adjusted(edge, edge, -edge, -edge - m_back->sizeHint().height() - edge);
}

void SheetPreview::paintEvent(QPaintEvent*) {
    if (!m_pages || m_pages->count() == 0) return;
    const QRect room = this->room();
    const double scale =
        std::min(room.width() / m_pages->size().width(), room.height() / m_pages->size().height());
    if (m_picture.isNull()) {
        m_picture = QPixmap::fromImage(pageImage(*m_pages, m_page, scale * devicePixelRatioF()));
        m_picture.setDevicePixelRatio(devicePixelRatioF());
    }
    const QSizeF size = m_pages->size() * scale;
    const QRectF at(room.left() + (room.width() - size.width()) / 2, room.top(), size.width(), size.height());
    QPainter painter(this);
    painter.drawPixmap(at.topLeft(), m_picture);
    painter.setPen(palette().color(QPalette::Mid));
    painter.drawRect(at);
}

void SheetPreview::resizeEvent(QResizeEvent* event) {
    m_picture = {};
    QWidget::resizeEvent(event);
}

void SheetPreview::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_PageDown)
        turnTo(m_page + 1);
    else if (event->key() == Qt::Key_PageUp)
        turnTo(m_page - 1);
    else
        QWidget::keyPressEvent(event);
}

} // namespace blinkwright::app::sheet
