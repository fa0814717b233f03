// The toolkit's style with the marks of boxes and circles to tick as large as the text beside them.
//
//   QApplication::setStyle(new MarksByText);
#pragma once

#include <QProxyStyle>

namespace blinkwright::widgets {

class MarksByText : public QProxyStyle {
    Q_OBJECT
  public:
    MarksByText() : QProxyStyle(QStringLiteral("Fusion")) {}

    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
};

} // namespace blinkwright::widgets
