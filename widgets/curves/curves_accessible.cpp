#include "widgets/curves/curves_accessible.h"

#include "widgets/curves/strip_plot.h"

#include <QAccessibleWidget>

namespace blinkwright::widgets {

namespace {

class Chart : public QAccessibleWidget {
  public:
    explicit Chart(QWidget* plot) : QAccessibleWidget(plot, QAccessible::Chart) {}
    QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Value ? widget()->accessibleDescription() : QAccessibleWidget::text(kind);
    }
};

QAccessibleInterface* make(const QString& className, QObject* object) {
    if (className != QLatin1String(StripPlot::staticMetaObject.className())) return nullptr;
    return new Chart(static_cast<QWidget*>(object));
}

} // namespace

void makeChartsAccessible() {
    static const bool installed = [] {
        QAccessible::installFactory(make);
        return true;
    }();
    Q_UNUSED(installed);
}

} // namespace blinkwright::widgets
