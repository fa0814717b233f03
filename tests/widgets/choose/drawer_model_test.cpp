// The drawer as a table: typing, wrong cells, taking back.
#include "tests/widgets/pictures.h"
#include "widgets/choose/drawer_dialog.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using study::Stock;
using widgets::DrawerModel;

Stock stock(Stock::Kind kind, double value, std::optional<double> tolerance, std::optional<double> rating,
            long quantity) {
    return {.kind = kind, .value = value, .tolerance = tolerance, .rating = rating, .quantity = quantity};
}

class DrawerModelTest : public testing::Test {
  protected:
    DrawerModelTest() {
        model.setStock({stock(Stock::Kind::resistor, 4700, 0.05, 0.25, 12),
                        stock(Stock::Kind::capacitor, 1e-5, {}, 16, 3)});
    }
    QString text(int row, int column) const {
        return model.index(row, column).data().toString().replace(QChar(0xA0), u' ');
    }
    bool type(int row, int column, const char* text) {
        return model.setData(model.index(row, column), QString::fromUtf8(text), Qt::EditRole);
    }
    DrawerModel model;
};

TEST_F(DrawerModelTest, CellsReadAsPeopleWriteThem) {
    EXPECT_EQ(text(0, 0), "Resistor");
    EXPECT_EQ(text(0, 1), QString::fromUtf8("4.7 kΩ"));
    EXPECT_EQ(text(0, 2), "5 %");
    EXPECT_EQ(text(0, 3), "250 mW");
    EXPECT_EQ(text(0, 4), "12");
    EXPECT_EQ(text(1, 1), QString::fromUtf8("10 µF"));
    EXPECT_EQ(text(1, 2), "");
    EXPECT_EQ(text(1, 3), "16 V");
}

TEST_F(DrawerModelTest, WhatIsTypedIsEngineeringText) {
    QSignalSpy edited(&model, &DrawerModel::edited);
    EXPECT_TRUE(type(0, 1, "4,7 k"));
    EXPECT_TRUE(type(1, 1, "220n"));
    EXPECT_TRUE(type(1, 2, "10 %"));
    EXPECT_TRUE(type(1, 4, "7"));
    EXPECT_EQ(edited.count(), 4);
    EXPECT_EQ(model.stock()[1].value, 220e-9);
    EXPECT_NEAR(*model.stock()[1].tolerance, 0.1, 1e-12);
    EXPECT_EQ(model.stock()[1].quantity, 7);
    EXPECT_TRUE(type(1, 2, ""));
    EXPECT_FALSE(model.stock()[1].tolerance);
}

TEST_F(DrawerModelTest, AWrongCellIsNamedAndThePartKeepsItsValue) {
    type(1, 4, "many");
    EXPECT_EQ(model.fault(), "Row 2, quantity: must be a whole number of 0 or more, got \"many\".");
    EXPECT_EQ(text(1, 4), "many");
    EXPECT_EQ(model.stock()[1].quantity, 3);
    type(0, 1, "-5");
    EXPECT_TRUE(model.fault().startsWith("Row 1, value: ")) << model.fault().toStdString();
    EXPECT_EQ(model.stock()[0].value, 4700);
    type(0, 1, "5k6");
    type(1, 4, "4");
    EXPECT_EQ(model.fault(), "");
    EXPECT_EQ(model.stock()[0].value, 5600);
}

TEST_F(DrawerModelTest, AnotherKindReadsAWrongValueAnew) {
    type(0, 1, "22 µF");
    EXPECT_FALSE(model.fault().isEmpty());
    model.setData(model.index(0, 0), static_cast<int>(Stock::Kind::capacitor), Qt::EditRole);
    EXPECT_EQ(model.fault(), "");
    EXPECT_EQ(model.stock()[0].value, 22e-6);
}

TEST_F(DrawerModelTest, EditsAreTakenBackAndDoneAgain) {
    const auto before = model.stock();
    type(0, 1, "1k");
    model.addRow();
    model.removeRows({0, 1});
    EXPECT_EQ(model.rowCount(), 1);
    model.undo();
    EXPECT_EQ(model.rowCount(), 3);
    model.undo();
    EXPECT_EQ(model.rowCount(), 2);
    model.undo();
    EXPECT_EQ(model.stock()[0].value, before[0].value);
    EXPECT_FALSE(model.canUndo());
    model.redo();
    EXPECT_EQ(model.stock()[0].value, 1000);
    type(0, 1, "2k");
    EXPECT_FALSE(model.canRedo());
}

TEST_F(DrawerModelTest, ARowWithoutAValueIsNotInTheDrawerYet) {
    const int row = model.addRow(Stock::Kind::variable);
    EXPECT_EQ(model.stock().size(), 2u);
    type(row, 1, "100k");
    ASSERT_EQ(model.stock().size(), 3u);
    EXPECT_EQ(model.stock()[2].kind, Stock::Kind::variable);
    EXPECT_EQ(model.stock()[2].quantity, 1);
}

TEST(DrawerDialog, IsUsedByTheKeyboardAndSaysWhatIsWrong) {
    widgets::DrawerDialog dialog(widgets::Theme::of(widgets::Theme::Mode::light));
    dialog.show();
    dialog.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    EXPECT_TRUE(dialog.message().contains("empty"));
    dialog.findChild<QPushButton*>("addRow")->click();
    auto* table = dialog.findChild<QTableView*>("stock");
    auto* editor = table->findChild<QLineEdit*>(); // open at the value of the new part
    ASSERT_TRUE(editor);
    QTest::keyClicks(editor, "4q7");
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents(); // a delegate commits by a queued call
    EXPECT_TRUE(dialog.message().startsWith("Row 1, value: ")) << dialog.message().toStdString();
    table->setFocus();
    QTest::keyClick(table, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(dialog.message().startsWith("Row 1"));
    QTest::keyClick(table, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(dialog.model().rowCount(), 0);
}

TEST(DrawerDialog, IsPainted) {
    widgets::DrawerDialog dialog(widgets::Theme::of(widgets::Theme::Mode::light));
    using enum Stock::Kind;
    dialog.model().setStock({stock(resistor, 1e3, 0.05, 0.25, 20), stock(resistor, 4.7e3, 0.05, 0.25, 12),
                             stock(resistor, 33e3, 0.01, 0.25, 0), stock(resistor, 560, 0.05, 0.5, 30),
                             stock(Stock::Kind::variable, 100e3, 0.2, 0.1, 2),
                             stock(capacitor, 10e-9, 0.1, 63, 40), stock(capacitor, 10e-6, 0.2, 16, 5),
                             stock(capacitor, 1e-3, 0.2, 16, 2)});
    test::savePictures(dialog, "drawer", {620, 480});
    dialog.model().setData(dialog.model().index(2, 1), "33q", Qt::EditRole);
    test::savePictures(dialog, "drawer-fault", {620, 480});
}

} // namespace
