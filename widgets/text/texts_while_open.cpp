#include "widgets/text/texts_while_open.h"

#include "widgets/text/text_sized.h"

#include <QApplication>
#include <QComboBox>
#include <QEvent>
#include <QFontInfo>
#include <QLabel>
#include <QLayout>
#include <QMainWindow>
#include <QPointer>
#include <QScreen>
#include <QTimer>

#include <algorithm>
#include <map>

namespace blinkwright::widgets {

namespace {

constexpr int settlesWithin_ms = 500; ///< texts that wrap ask for other room with each new width
constexpr int lastLook_ms = 2000;     ///< on a machine that is busy
constexpr int measured_ms = 50;       ///< by then all that stands in a window asks for the room of now

/// It forgets its least width with another style alone, not with another font.
void measureAnew(QComboBox& box) {
    QEvent restyled(QEvent::StyleChange);
    QCoreApplication::sendEvent(&box, &restyled);
    box.updateGeometry();
}

/// What wrapped texts miss where a splitter or a tab between them and the window asks for no height.
int missingHeight(const QWidget& window) {
    std::map<const QWidget*, int> missing; ///< by what they stand in, one below the other
    for (const QLabel* label : window.findChildren<QLabel*>())
        if (label->isVisible() && label->wordWrap() && label->window() == &window)
            missing[label->parentWidget()] +=
                std::max(0, label->heightForWidth(label->width()) - label->height());
    int most = 0;
    for (const auto& [around, height] : missing) most = std::max(most, height);
    return most;
}

/// As high as its texts need and as wide, but at least of that width, as far as the screen has room.
void giveRoom(QWidget& window, int width) {
    const QLayout* layout = window.layout();
    if (!layout || window.isMaximized() || window.isFullScreen()) return;
    const QSize least = layout->totalMinimumSize();
    width = std::max(width, least.width());
    const int height =
        std::max(layout->hasHeightForWidth() ? layout->totalMinimumHeightForWidth(width) : least.height(),
                 window.height() + missingHeight(window));
    const QSize most = window.screen()->availableSize() - frameRoom;
    window.resize(std::min(width, std::max(window.width(), most.width())),
                  std::max(window.height(), std::min(height, most.height())));
}

} // namespace

TextsWhileOpen::TextsWhileOpen(QObject* parent) : QObject(parent) {
    QApplication::instance()->installEventFilter(this);
}

/// What had room for its texts has it again, and goes back with them. The main window is the user's.
void TextsWhileOpen::resizeWithTexts(QWidget& window) {
    const auto known = m_sized.find(&window);
    if (known == m_sized.end() || qobject_cast<QMainWindow*>(&window) || window.isMaximized() ||
        window.isFullScreen())
        return;
    Sized& sized = known->second;
    if (window.size() != sized.given) sized.usual = QSizeF(window.size()) / sized.text_px;
    sized.text_px = QFontInfo(window.font()).pixelSize();
    sized.wanted = (sized.usual * sized.text_px)
                       .toSize()
                       .boundedTo((window.screen()->availableSize() - frameRoom).expandedTo(window.size()));
    window.resize(sized.wanted);
    sized.given = window.size();
    // Lower than what stood in it had asked for: once more, when it asks for less.
    QTimer::singleShot(measured_ms, this, [this, wanted = sized.wanted, window = QPointer<QWidget>(&window)] {
        if (!window) return;
        window->resize(wanted);
        settle(*window);
    });
}

void TextsWhileOpen::settle(QWidget& window) {
    const auto known = m_sized.find(&window);
    if (known == m_sized.end()) return; // it is gone
    Sized& sized = known->second;
    giveRoom(window, sized.wanted.isValid() ? sized.wanted.width() : window.width());
    sized.given = window.size();
}

bool TextsWhileOpen::eventFilter(QObject* watched, QEvent* event) {
    if (!watched->isWidgetType()) return false;
    auto* widget = static_cast<QWidget*>(watched);
    if (event->type() == QEvent::LayoutRequest && widget->isWindow()) {
        const auto growing = m_growing.find(widget);
        if (growing != m_growing.end() && !growing->second.hasExpired())
            QTimer::singleShot(0, this, [this, window = QPointer<QWidget>(widget)] {
                if (window) settle(*window);
            });
        return false;
    }
    const bool followed = widget->windowType() == Qt::Dialog || widget->windowType() == Qt::Window;
    if (event->type() == QEvent::Show && followed)
        m_sized[widget] = {double(QFontInfo(widget->font()).pixelSize()), {}, {}, {}};
    if (event->type() == QEvent::Hide && followed) { // nothing of a window that is gone is kept
        m_sized.erase(widget);
        m_growing.erase(widget);
    }
    if (event->type() != QEvent::FontChange) return false;
    if (!widget->isVisible()) return false; // it is measured when it is shown
    // Once everything within has its font, and what measures texts has done so.
    if (auto* box = qobject_cast<QComboBox*>(widget))
        QTimer::singleShot(0, box, [box] { measureAnew(*box); });
    if (followed) {
        m_growing[widget] = QDeadlineTimer(settlesWithin_ms);
        resizeWithTexts(*widget);
        for (const int after_ms : {0, settlesWithin_ms / 2, settlesWithin_ms})
            QTimer::singleShot(after_ms, this, [this, window = QPointer<QWidget>(widget)] {
                if (window) settle(*window);
            });
        QTimer::singleShot(lastLook_ms, this, [this, window = QPointer<QWidget>(widget)] {
            const auto known = m_sized.find(window);
            if (window && known != m_sized.end() && window->size() == known->second.given) settle(*window);
        });
    }
    return false;
}

} // namespace blinkwright::widgets
