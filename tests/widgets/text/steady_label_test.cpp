#include "widgets/text/steady_label.h"

#include <QApplication>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>

using namespace blinkwright::widgets;

namespace {

/// A column that counts how often it is asked to lay itself out.
class Column : public QWidget {
  public:
    Column() : column(new QVBoxLayout(this)) {}
    QVBoxLayout* column;
    int asked = 0;

  protected:
    bool event(QEvent* event) override {
        if (event->type() == QEvent::LayoutRequest) ++asked;
        return QWidget::event(event);
    }
};

class SteadyLabelTest : public testing::Test {
  protected:
    void show(bool wrapped) {
        label->label()->setWordWrap(wrapped);
        if (wrapped) label->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
        outer.column->addWidget(label);
        outer.column->addStretch(1);
        label->setText(QStringLiteral("12.3 mA"));
        outer.resize(300, 300);
        outer.show();
        QApplication::processEvents();
        outer.asked = 0;
    }
    void say(const QString& text) {
        label->setText(text);
        QApplication::processEvents();
    }
    Column outer;
    SteadyLabel* label = new SteadyLabel;
    QString sentence = QStringLiteral("The lamp takes 12.3 mA ").repeated(8).trimmed();
};

TEST_F(SteadyLabelTest, AnotherTextOfTheSameHeightAsksForNoLayout) {
    show(true);
    say(QStringLiteral("12.4 mA"));
    say(QStringLiteral("9.87654 mA or so"));
    EXPECT_EQ(outer.asked, 0);
    EXPECT_EQ(label->label()->text(), QStringLiteral("9.87654 mA or so"));
}

TEST_F(SteadyLabelTest, AHigherTextGetsItsRoomAndGivesItBack) {
    show(true);
    const int low = label->height();
    say(sentence);
    EXPECT_GT(outer.asked, 0);
    EXPECT_GT(label->height(), 2 * low);
    EXPECT_EQ(label->height(), label->label()->heightForWidth(label->width()));
    EXPECT_EQ(label->label()->size(), label->size());
    say(QStringLiteral("12.4 mA"));
    EXPECT_EQ(label->height(), low);
}

TEST_F(SteadyLabelTest, NothingIsCutInAWidthThatAnEarlierTextKnew) {
    show(true);
    outer.resize(120, 300);
    QApplication::processEvents();
    outer.resize(900, 300);
    QApplication::processEvents();
    say(QStringLiteral("The lamp takes 12.3 mA, and that is much")); // one line here, more in 120 pixels
    outer.resize(120, 300);
    QApplication::processEvents();
    EXPECT_GE(label->height(), label->label()->heightForWidth(label->width()));
}

TEST_F(SteadyLabelTest, ALineKeepsTheRoomOfALongerOneUntilMuchOfItIsUnused) {
    show(false);
    say(sentence);
    const int wide = label->minimumSizeHint().width();
    EXPECT_GE(wide, label->label()->sizeHint().width());
    outer.asked = 0;
    say(sentence.chopped(4));
    EXPECT_EQ(outer.asked, 0);
    say(QStringLiteral("short"));
    EXPECT_GT(outer.asked, 0);
    EXPECT_LT(label->minimumSizeHint().width(), wide / 2);
}

TEST_F(SteadyLabelTest, ALargerFontGetsItsRoom) {
    show(true);
    const int low = label->height();
    QFont font = label->label()->font();
    font.setPixelSize(40);
    label->label()->setFont(font);
    QApplication::processEvents();
    QApplication::processEvents(); // its own request, then that of the column
    EXPECT_GT(label->height(), low);
}

} // namespace
