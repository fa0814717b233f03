// Pictures of the samples' drawings, to be looked at; the checks are only that something was drawn.
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
        for (int x = 0; x < image.width(); x += 2)
            colours.insert(image.pixel(x, y));
    return static_cast<int>(colours.size());
}

class SamplePictures : public testing::TestWithParam<const char*> {};

TEST_P(SamplePictures, AreDrawnInBothThemes) {
    const circuit::Circuit circuit = test::sample(GetParam());
    QDir().mkpath(QStringLiteral(BLINKWRIGHT_PICTURES));
    for (const auto mode : {Theme::Mode::light, Theme::Mode::dark}) {
        HookupView view;
        view.resize(900, 640);
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
        const QImage image = view.grab().toImage();
        const QString file =
            QStringLiteral("%1/hookup-%2-%3.png")
                .arg(QStringLiteral(BLINKWRIGHT_PICTURES), QString::fromLatin1(GetParam()),
                     mode == Theme::Mode::light ? QStringLiteral("light") : QStringLiteral("dark"));
        EXPECT_TRUE(image.save(file));
        EXPECT_GT(coloursIn(image), 8);
        EXPECT_EQ(image.pixelColor(3, 3), Theme::of(mode).paper);
    }
}

INSTANTIATE_TEST_SUITE_P(Hookup, SamplePictures, testing::Values("mole-light", "buoy-pair", "winch-warning"));

} // namespace

} // namespace blinkwright::widgets
