// Icons of the program.
#include "app/icons.h"
#include "places.h"

#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

#include <gtest/gtest.h>

namespace blinkwright::test {
namespace {

TEST(ProgramIcon, IsTheDrawingThatIsInstalled) {
    QSvgRenderer drawing(QStringLiteral(BLINKWRIGHT_TRANSLATIONS "/../icons/blinkwright.svg"));
    ASSERT_TRUE(drawing.isValid());
    const QIcon icon = app::programIcon();
    for (const int side : {16, 32, 64, 256}) {
        QImage wanted(side, side, QImage::Format_ARGB32_Premultiplied);
        wanted.fill(Qt::transparent);
        QPainter painter(&wanted);
        drawing.render(&painter);
        painter.end();
        const QImage shown = icon.pixmap(QSize(side, side), 1.0).toImage();
        EXPECT_EQ(shown.convertToFormat(wanted.format()), wanted) << side;
        EXPECT_GT(wanted.pixelColor(side / 2, side * 15 / 16).alpha(), 0) << "nothing is drawn";
    }
}

} // namespace
} // namespace blinkwright::test
