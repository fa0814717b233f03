// The dialog of exports: what it asks, what it remembers, and what the exports then hold.
#include "tests/app/window_fixture.h"

#include "app/appearance.h"
#include "app/export_dialog.h"
#include "widgets/curves/curves_view.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPushButton>

namespace blinkwright::test {
namespace {

class ExportsOfTheWindow : public WindowFixture {
  protected:
    /// Opens the dialog, does something with it, and closes it.
    void inDialog(const std::function<void(app::ExportDialog&)>& work) {
        bool came = false;
        QTimer::singleShot(0, window.get(), [&] {
            auto* dialog = qobject_cast<app::ExportDialog*>(QApplication::activeModalWidget());
            ASSERT_TRUE(dialog);
            came = true;
            work(*dialog);
            dialog->close();
        });
        action("Export curves").trigger();
        EXPECT_TRUE(came);
    }
    static QCheckBox& box(app::ExportDialog& dialog, const char* name) {
        return *dialog.findChild<QCheckBox*>(QLatin1String(name));
    }
    static QDoubleSpinBox& number(app::ExportDialog& dialog, const char* name) {
        return *dialog.findChild<QDoubleSpinBox*>(QLatin1String(name));
    }
    static void press(app::ExportDialog& dialog, const char* text) {
        for (QPushButton* button : dialog.findChildren<QPushButton*>())
            if (button->text().remove(u'&') == QLatin1String(text)) return button->click();
        FAIL() << text;
    }
};

TEST_F(ExportsOfTheWindow, HoldWhatTheDialogSaysAndItIsRemembered) {
    open();
    inDialog([&](app::ExportDialog& dialog) {
        number(dialog, "width").setValue(90);
        number(dialog, "height").setValue(60);
        box(dialog, "output").click();
        QTest::qWait(150);
        picture("export-dialog-light", dialog);
    });
    ASSERT_TRUE(window->exportTo(inFolder("a.png")));
    const QImage image(inFolder("a.png"));
    EXPECT_NEAR(image.width(), 90 / 25.4 * 300, 3);
    EXPECT_NEAR(image.height(), 60 / 25.4 * 300, 3);
    start();
    open();
    inDialog([&](app::ExportDialog& dialog) {
        EXPECT_EQ(number(dialog, "width").value(), 90);
        EXPECT_FALSE(box(dialog, "output").isChecked());
        EXPECT_TRUE(box(dialog, "lamps").isChecked());
    });
}

TEST_F(ExportsOfTheWindow, ArePreviewedWholeInTheRoomThatLargerTextsLeave) {
    open();
    inDialog([&](app::ExportDialog& dialog) {
        const QLabel& preview = *dialog.findChild<QLabel*>("preview");
        const int before = preview.width();
        dialog.setMaximumWidth(dialog.width()); // as on a small screen
        window->appearance().setTextSize(200);
        EXPECT_TRUE(waitFor([&] { return preview.width() < before; }));
        EXPECT_TRUE(waitFor([&] {
            return preview.pixmap().deviceIndependentSize().width() <= preview.contentsRect().width();
        }));
        window->appearance().setTextSize(100);
    });
}

TEST_F(ExportsOfTheWindow, KeepAtLeastOneStrip) {
    open();
    inDialog([&](app::ExportDialog& dialog) {
        for (const char* name : {"output", "capacitor", "lamps"}) box(dialog, name).click();
        EXPECT_TRUE(box(dialog, "lamps").isChecked());
        EXPECT_FALSE(box(dialog, "output").isChecked());
    });
}

TEST_F(ExportsOfTheWindow, NumbersAreThoseOfTheTimeThatIsShown) {
    open();
    window->curves().zoomBy(4);
    const widgets::Span shown = window->curves().visibleSpan();
    inDialog([&](app::ExportDialog& dialog) {
        box(dialog, "visible").setChecked(true);
        dialog.findChild<QComboBox*>("sets")->setCurrentIndex(1); // Set A alone
        press(dialog, "Copy numbers");
    });
    const QStringList lines = QApplication::clipboard()->text().split(u'\n', Qt::SkipEmptyParts);
    ASSERT_GT(lines.size(), 3);
    EXPECT_TRUE(lines.front().startsWith("time [s]\toutput [V]\tcapacitor [V]"))
        << lines.front().toStdString();
    EXPECT_NEAR(lines[1].section(u'\t', 0, 0).toDouble(), shown.begin, 1e-9);
    EXPECT_NEAR(lines.back().section(u'\t', 0, 0).toDouble(), shown.end, 1e-9);
    ASSERT_TRUE(window->exportTo(inFolder("part.csv")));
    QFile file(inFolder("part.csv"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().count('\n'), lines.size());
}

TEST_F(ExportsOfTheWindow, APictureIsCopiedAsChosen) {
    open();
    inDialog([&](app::ExportDialog& dialog) {
        number(dialog, "width").setValue(100);
        press(dialog, "Copy picture");
    });
    EXPECT_NEAR(QApplication::clipboard()->image().width(), 100 / 25.4 * 300, 3);
}

TEST(ExportChoice, TakesOnlyWhatIsInRange) {
    const app::ExportChoice usual;
    EXPECT_EQ(app::ExportChoice::from({}), usual);
    EXPECT_EQ(app::ExportChoice::from({{"width", -3}, {"dpi", "many"}, {"font", 1000}}), usual);
    app::ExportChoice other;
    other.width_mm = 80;
    other.style.greys = true;
    other.style.strips = {false, true, true};
    other.moment = other.visibleOnly = true;
    EXPECT_EQ(app::ExportChoice::from(other.kept()), other);
    EXPECT_EQ(app::ExportChoice::from({{"output", false}, {"capacitor", false}, {"lamps", false}}), usual);
}

class ExportsInTheDark : public ExportsOfTheWindow {};

TEST_F(ExportsInTheDark, Dialog) {
    settings.setLooks(app::Looks::dark);
    start();
    open("buoy-pair");
    inDialog([&](app::ExportDialog& dialog) {
        box(dialog, "greys").setChecked(true);
        box(dialog, "moment").setChecked(true);
        QTest::qWait(150);
        picture("export-dialog-dark", dialog);
    });
}

} // namespace
} // namespace blinkwright::test
