// Pictures of the samples' drawings, to be looked at; the checks are only that something was drawn.
#include "places.h"
#include "tests/case_names.h"
#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/camera.h"
#include "widgets/hookup/drawing.h"
#include "widgets/hookup/hookup_view.h"

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QPixmap>

#include <gtest/gtest.h>

namespace blinkwright::widgets {

namespace {

int coloursIn(const QImage& image) {
    std::set<QRgb> colours;
    for (int y = 0; y < image.height(); y += 2)
        for (int x = 0; x < image.width(); x += 2) colours.insert(image.pixel(x, y));
    return static_cast<int>(colours.size());
}

class SamplePictures : public testing::TestWithParam<std::string> {};

QImage picture(const circuit::Circuit& circuit, Theme::Mode mode, QSize size,
               const hookup::SymbolStyle& style = {}) {
    HookupView view;
    view.setSymbolStyle(style);
    view.resize(size);
    view.setTheme(Theme::of(mode));
    view.setCircuit(circuit);
    std::map<circuit::PartId, double> glow;
    double share = 0.8;
    for (const circuit::Part& part : circuit.parts())
        if (part.kind == circuit::PartKind::lamp) {
            glow[part.id] = share;
            share = 0;
        }
    view.setGlow(glow);
    return view.grab().toImage();
}

bool save(const QImage& image, const QString& name) {
    QDir().mkpath(QStringLiteral(BLINKWRIGHT_PICTURES));
    return image.save(QStringLiteral("%1/hookup-%2.png").arg(QStringLiteral(BLINKWRIGHT_PICTURES), name));
}

TEST_P(SamplePictures, AreDrawnInBothThemes) {
    const circuit::Circuit circuit = test::sample(GetParam());
    for (const auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        for (const auto shapes : {hookup::Shapes::iec60617, hookup::Shapes::ieee315})
            for (const auto timer : {hookup::TimerLook::package, hookup::TimerLook::block}) {
                const QString look = QStringLiteral("%1-%2-%3-%4")
                                         .arg(QString::fromStdString(GetParam()),
                                              shapes == hookup::Shapes::iec60617 ? "iec" : "ieee",
                                              timer == hookup::TimerLook::package ? "package" : "block",
                                              mode == Theme::Mode::light ? "light" : "dark");
                EXPECT_TRUE(save(picture(circuit, mode, {900, 640}, {shapes, timer}), look));
            }
        const QImage image = picture(circuit, mode, {900, 640});
        EXPECT_GT(coloursIn(image), 8);
        for (const QPoint corner : {QPoint(3, 3), QPoint(3, 636), QPoint(896, 3), QPoint(896, 636)})
            EXPECT_EQ(image.pixelColor(corner), Theme::of(mode).paper);
    }
}

TEST_P(SamplePictures, AreDrawnWithoutPlacesToo) {
    const QImage image =
        picture(test::withoutDrawing(test::sample(GetParam())), Theme::Mode::light, {900, 640});
    EXPECT_TRUE(save(picture(test::withoutDrawing(test::sample(GetParam())), Theme::Mode::light, {900, 640},
                             {hookup::Shapes::iec60617, hookup::TimerLook::block}),
                     QStringLiteral("%1-block-unplaced").arg(QString::fromStdString(GetParam()))));
    EXPECT_TRUE(save(image, QStringLiteral("%1-unplaced").arg(QString::fromStdString(GetParam()))));
    EXPECT_GT(coloursIn(image), 8);
}

/// Every kind in a row of its own, in all turns and mirrored; timers below.
circuit::Circuit everySymbol() {
    circuit::Circuit circuit;
    int n = 0;
    for (const circuit::PartKind kind : circuit::allKinds)
        for (int turn = 0; turn < 4; ++turn)
            for (const bool mirror : {false, true}) {
                const bool timer = kind == circuit::PartKind::timer;
                circuit::Values values = test::leastValues(kind);
                if (kind == circuit::PartKind::capacitor && mirror) values["polarised"] = true;
                const auto id = circuit.addPart(kind, "X" + std::to_string(++n), std::move(values));
                EXPECT_TRUE(id.ok());
                const int column = 2 * turn + (mirror ? 1 : 0), row = static_cast<int>(kind);
                circuit.place(id.value(), {timer ? column % 4 * 290.0 : column * 130.0,
                                           timer ? 950.0 + column / 4 * 290 : row * 100.0,
                                           turn * 90,
                                           mirror,
                                           {}});
            }
    return circuit;
}

/// The drawing alone at a zoom and a pixel ratio.
QImage drawn(const circuit::Circuit& circuit, const hookup::SymbolStyle& style, const Theme& theme,
             double zoom, double ratio) {
    hookup::Drawing drawing;
    drawing.setStyle(style);
    drawing.show(circuit);
    hookup::Camera camera;
    const QSize size = (drawing.bounds().size() * zoom + QSizeF(60, 60)).toSize();
    camera.lookAt(drawing.bounds());
    camera.resize(size, ratio);
    camera.zoomAbout(QPointF(), zoom / camera.zoom());
    QImage image((QSizeF(size) * ratio).toSize(), QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    image.fill(theme.paper);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.setTransform(camera.transform(), true);
    drawing.paint(painter, theme);
    for (const hookup::PartView& part : drawing.parts()) paintLens(painter, part, theme, 0.7);
    return image;
}

TEST(Pictures, ShowEverySymbolInEveryTurnAndStyle) {
    using namespace hookup;
    const circuit::Circuit circuit = everySymbol();
    for (const auto& [mode, theme] :
         {std::pair(Theme::Mode::light, "light"), std::pair(Theme::Mode::dark, "dark")})
        for (const auto& [style, name] :
             {std::pair(SymbolStyle{}, "iec-package"),
              std::pair(SymbolStyle{Shapes::ieee315, TimerLook::block}, "ieee-block")})
            EXPECT_TRUE(save(drawn(circuit, style, Theme::of(mode), 1, 1),
                             QStringLiteral("symbols-%1-%2").arg(name, theme)));
}

TEST(Pictures, AreSharpAtEveryZoomAndPixelRatio) {
    const circuit::Circuit circuit = test::sample("mole-light");
    for (const double zoom : {0.5, 1.0, 2.0})
        for (const double ratio : {1.0, 1.25, 1.5, 2.0}) {
            const Theme& theme = Theme::of(Theme::Mode::light);
            const QImage image = drawn(circuit, {}, theme, zoom, ratio);
            EXPECT_TRUE(
                save(image, QStringLiteral("mole-light-zoom-%1-ratio-%2").arg(zoom * 100).arg(ratio * 100)));
            // The longest dark row is the rail: its ink fills whole pixels and none beside it is grey.
            int best = 0, row = 0;
            const auto inkIn = [&](int y, int most) {
                int count = 0;
                for (int x = 0; x < image.width(); ++x)
                    if (qGray(image.pixel(x, y)) < most) ++count;
                return count;
            };
            for (int y = 1; y + 1 < image.height(); ++y)
                if (const int ink = inkIn(y, 60); ink > best) {
                    best = ink;
                    row = y;
                }
            EXPECT_GT(best, image.width() / 2);
            int above = row;
            while (inkIn(above, 60) > image.width() / 2) --above;
            EXPECT_LT(inkIn(above, 230), image.width() / 6) << "zoom " << zoom << ", ratio " << ratio;
        }
}

TEST(Pictures, ShowSixtyParts) {
    EXPECT_TRUE(
        save(picture(test::manyParts(60), Theme::Mode::light, {2400, 400}), QStringLiteral("sixty-parts")));
}

INSTANTIATE_TEST_SUITE_P(Hookup, SamplePictures, testing::Values("mole-light", "buoy-pair", "winch-warning"),
                         [](const auto& row) { return tests::caseName(row.param); });

} // namespace

} // namespace blinkwright::widgets
