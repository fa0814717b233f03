#include "widgets/text/text_sized.h"

#include <QEvent>
#include <QFontInfo>
#include <QHeaderView>
#include <QScreen>
#include <QSpinBox>
#include <QStyleOptionSpinBox>
#include <QTableView>

#include <algorithm>
#include <cmath>

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

/// Both kinds have prefix and suffix, but not from one class.
template <class Field>
void makeRoom(Field& field, QString (*widest)(const Field&)) {
    sizedByText(field, [&field, widest] {
        const QFontMetrics metrics = field.fontMetrics();
        const QString text = field.prefix() + widest(field) + field.suffix();
        constexpr int besides = 6; // the line's own margins, and the cursor
        QStyleOptionSpinBox option;
        option.initFrom(&field);
        option.subControls = QStyle::SC_All;
        option.buttonSymbols = field.buttonSymbols();
        option.frame = field.hasFrame();
        const QSize room(metrics.horizontalAdvance(text) + besides, metrics.height());
        field.setMinimumWidth(
            field.style()->sizeFromContents(QStyle::CT_SpinBox, &option, room, &field).width());
    });
}

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

void wideAsItsValues(QSpinBox& field) {
    makeRoom<QSpinBox>(field, [](const QSpinBox& of) { return of.locale().toString(of.maximum()); });
}

void wideAsItsValues(QDoubleSpinBox& field) {
    makeRoom<QDoubleSpinBox>(field, [](const QDoubleSpinBox& of) { return of.textFromValue(of.maximum()); });
}

QSize withText(const QWidget& window, QSize usual_px) {
    const QSize wished(withText(window, usual_px.width()), withText(window, usual_px.height()));
    return usual_px.expandedTo(wished.boundedTo(window.screen()->availableSize() - frameRoom));
}

int withText(const QWidget& widget, int usual_px) {
    const double text_px = QFontInfo(widget.font()).pixelSize();
    return static_cast<int>(std::lround(usual_px * std::max(1.0, text_px / usualText_px)));
}

} // namespace blinkwright::widgets
