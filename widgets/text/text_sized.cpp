#include "widgets/text/text_sized.h"

#include <QEvent>
#include <QFontInfo>
#include <QHeaderView>
#include <QTableView>

#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr double usualText_px = 12;

class Follower : public QObject {
  public:
    Follower(QWidget* widget, std::function<void()> fit) : QObject(widget), m_fit(std::move(fit)) {
        widget->installEventFilter(this);
    }

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) m_fit();
        return false;
    }

  private:
    std::function<void()> m_fit;
};

} // namespace

void sizedByText(QWidget& widget, std::function<void()> fit) {
    fit();
    new Follower(&widget, std::move(fit)); // the widget's
}

void rowsByText(QTableView& table, int usual_px) {
    sizedByText(table, [&table, usual_px] {
        table.verticalHeader()->setDefaultSectionSize(withText(table, usual_px));
    });
}

int withText(const QWidget& widget, int usual_px) {
    const double text_px = QFontInfo(widget.font()).pixelSize();
    return static_cast<int>(usual_px * std::max(1.0, text_px / usualText_px) + 0.5);
}

} // namespace blinkwright::widgets
