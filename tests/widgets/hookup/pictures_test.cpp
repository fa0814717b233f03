// Pictures of the samples' drawings, to be looked at; the checks are only that something was drawn.
#include "places.h"
#include "tests/case_names.h"
#include "tests/widgets/hookup/samples.h"
#include "widgets/hookup/hookup_view.h"

#include <QDir>
#include <QImage>
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

QImage picture(const circuit::Circuit& circuit, Theme::Mode mode, QSize size) {
    HookupView view;
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
        const QImage image = picture(circuit, mode, {900, 640});
        const char* theme = mode == Theme::Mode::light ? "light" : "dark";
        EXPECT_TRUE(save(image, QStringLiteral("%1-%2").arg(QString::fromStdString(GetParam()), theme)));
        EXPECT_GT(coloursIn(image), 8);
        for (const QPoint corner : {QPoint(3, 3), QPoint(3, 636), QPoint(896, 3), QPoint(896, 636)})
            EXPECT_EQ(image.pixelColor(corner), Theme::of(mode).paper);
    }
}

TEST_P(SamplePictures, AreDrawnWithoutPlacesToo) {
    const QImage image =
        picture(test::withoutDrawing(test::sample(GetParam())), Theme::Mode::light, {900, 640});
    EXPECT_TRUE(save(image, QStringLiteral("%1-unplaced").arg(QString::fromStdString(GetParam()))));
    EXPECT_GT(coloursIn(image), 8);
}

TEST(Pictures, ShowEverySymbolInEveryTurn) {
    circuit::Circuit circuit;
    int n = 0;
    for (const circuit::PartKind kind : circuit::allKinds)
        for (int turn = 0; turn < 4; ++turn)
            for (const bool mirror : {false, true}) {
                if (kind == circuit::PartKind::timer && (mirror || turn > 1)) continue;
                const auto id = circuit.addPart(kind, "X" + std::to_string(++n), test::leastValues(kind));
                ASSERT_TRUE(id.ok());
                const int row = static_cast<int>(kind);
                const int column = kind == circuit::PartKind::timer ? 2 * turn : 2 * turn + (mirror ? 1 : 0);
                circuit.place(id.value(), {column * 130.0 + (kind == circuit::PartKind::timer ? 1150 : 0),
                                           kind == circuit::PartKind::timer ? 200.0 : row * 100.0,
                                           turn * 90,
                                           mirror,
                                           {}});
            }
    EXPECT_TRUE(save(picture(circuit, Theme::Mode::light, {1500, 800}), QStringLiteral("symbols")));
}

TEST(Pictures, ShowSixtyParts) {
    EXPECT_TRUE(
        save(picture(test::manyParts(60), Theme::Mode::light, {2400, 400}), QStringLiteral("sixty-parts")));
}

INSTANTIATE_TEST_SUITE_P(Hookup, SamplePictures, testing::Values("mole-light", "buoy-pair", "winch-warning"),
                         [](const auto& row) { return tests::caseName(row.param); });

} // namespace

} // namespace blinkwright::widgets
