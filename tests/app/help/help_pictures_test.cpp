// Makes the pictures of the help anew: build/pictures/help/NAME.png (see DEVELOPERS.md). The harbour's
// circuits, light.
#include "app/measure/record_import_dialog.h"
#include "app/pane.h"
#include "app/ready_actions.h"
#include "app/rooms/drawer_desk.h"
#include "app/rooms/room_actions.h"
#include "tests/app/window_fixture.h"
#include "widgets/bench/bench_dialog.h"
#include "widgets/choose/drawer_dialog.h"
#include "widgets/choose/drawer_model.h"
#include "widgets/curves/curves_view.h"

#include <QApplication>
#include <QSignalSpy>

namespace blinkwright::test {
namespace {

/// With the 256 most frequent colours of a coarse scale: no eye sees it, and the file has half the size.
QImage inFewColours(QImage image) {
    image = image.convertToFormat(QImage::Format_RGB32);
    const auto coarse = [](int share) { return qRound(share / 15.0) * 15; };
    QHash<QRgb, int> counts;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QRgb dot = image.pixel(x, y);
            const QRgb near = qRgb(coarse(qRed(dot)), coarse(qGreen(dot)), coarse(qBlue(dot)));
            image.setPixel(x, y, near);
            ++counts[near];
        }
    QList<QRgb> colours = counts.keys();
    std::ranges::sort(colours, [&](QRgb a, QRgb b) {
        return std::pair(counts[b], b) < std::pair(counts[a], a); // the same in every run
    });
    colours.resize(std::min<qsizetype>(colours.size(), 256));
    return image.convertToFormat(QImage::Format_Indexed8, colours, Qt::ThresholdDither | Qt::AvoidDither);
}

class HelpPictures : public WindowFixture {
  protected:
    static constexpr int mostWide = 640;

    /// Made smaller where it is too wide for a page.
    static void keep(const QString& name, QWidget& of) {
        QTest::qWait(60);
        QImage image = of.grab().toImage();
        if (image.width() > mostWide) image = image.scaledToWidth(mostWide, Qt::SmoothTransformation);
        ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES "/help"));
        const QString path = QStringLiteral(BLINKWRIGHT_PICTURES "/help/%1.png").arg(name);
        ASSERT_TRUE(inFewColours(image).save(path, "PNG", 0)); // 0: smallest
        EXPECT_LE(QFileInfo(path).size(), 60 * 1024) << name.toStdString();
    }
    app::Pane& pane(const char* page) const {
        for (auto* found : window->findChildren<app::Pane*>())
            if (found->property("helpPage").toString() == page) return *found;
        throw std::runtime_error(page);
    }
    void keepRoom(const char* name) {
        app::Room& room = window->rooms().open(name);
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
        keep(name, room.frame());
        room.frame().close();
    }
    /// Of the dialog that an action waits for.
    void keepDialog(const char* name, QAction& action) {
        QTimer::singleShot(0, window.get(), [name] {
            QWidget* dialog = QApplication::activeModalWidget();
            ASSERT_TRUE(dialog);
            QTest::qWait(300); // its preview
            keep(name, *dialog);
            dialog->close();
        });
        action.trigger();
    }
};

TEST_F(HelpPictures, OfTheWindowAndItsPanels) {
    open();
    keep("window", *window);
    keep("sets", pane("values"));
    action("Compare with Set B").trigger();
    ASSERT_TRUE(waitForRun());
    window->curves().setMoment(1.3);
    keep("values", pane("values"));
    keep("readings", pane("readings"));
    keep("curves", pane("curves"));
    keep("hookup", pane("hookup"));
    action("Pins of the Hook-up").trigger();
    keep("pins", pane("hookup"));
    action("Drawing of the Hook-up").trigger();
    activate();
    QTest::keyClick(window.get(), Qt::Key_F9);
    QTest::qWait(400);
    keep("play", pane("curves"));
    QTest::keyClick(window.get(), Qt::Key_F9);
    openPath(sample("mole-light"));
    row("R3").field()->selectAll();
    QTest::keyClicks(row("R3").field(), "47\r"); // too small: something to be found
    ASSERT_TRUE(waitFor([&] { return ohms("R3") == 47; }));
    ASSERT_TRUE(waitForRun());
    EXPECT_FALSE(window->live().shown()->findings.empty());
    keep("findings", pane("findings"));
}

TEST_F(HelpPictures, OfTheRooms) {
    open("mole-light-measured");
    for (const char* name :
         {"choose", "trend", "spread", "why", "eye", "measure", "account", "symptoms", "labSheet"})
        keepRoom(name);
}

TEST_F(HelpPictures, OfTheDialogs) {
    open();
    action("Compare with Set B").trigger();
    keepDialog("ready", action("New from a ready blinker"));
    keepDialog("export", action("Export curves"));
    window->readyActions().showWiringList();
    keep("bench", *window->readyActions().wiringList());
    app::DrawerDesk& drawer = window->rooms().drawer();
    writeFile(inFolder("own.csv"),
              "kind,value,tolerance,rating,quantity\nresistor,1k,1 %,0.25,10\n"
              "resistor,47k,1 %,0.25,4\nresistor,68k,5 %,0.25,6\ncapacitor,10u,20 %,25,3\n"
              "capacitor,100n,10 %,50,12\n");
    ASSERT_TRUE(drawer.importFrom(inFolder("own.csv")));
    drawer.open();
    keep("drawer", drawer.dialog());
    app::RecordImportDialog import(QStringLiteral(BLINKWRIGHT_SAMPLES "/mole-light.csv"),
                                   window->appearance().theme());
    QSignalSpy settled(&import, &app::RecordImportDialog::settled);
    import.show();
    ASSERT_TRUE(waitFor([&] { return settled.count() > 0 && !import.isBusy(); }));
    keep("import", import);
}

} // namespace
} // namespace blinkwright::test
