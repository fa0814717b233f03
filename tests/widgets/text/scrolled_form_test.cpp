// Dialogs as high as their wrapped texts.
#include "widgets/text/scrolled_form.h"

#include <QApplication>
#include <QDialog>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QTest>
#include <QVBoxLayout>

#include <gtest/gtest.h>

namespace blinkwright::widgets {
namespace {

struct FormInADialog : testing::Test {
    FormInADialog() {
        auto* form = new QWidget;
        auto* inside = new QVBoxLayout(form);
        note = new QLabel;
        note->setWordWrap(true);
        inside->addWidget(note);
        scroll = new ScrolledForm(form, QStringLiteral("Form"));
        auto* whole = new QVBoxLayout(&dialog);
        whole->addWidget(scroll, 1);
        whole->addWidget(button = new QPushButton(QStringLiteral("Done")));
        growWithTexts(dialog);
    }
    void say(int sentences) {
        QString text;
        for (int k = 0; k < sentences; ++k) text += QStringLiteral("A sentence that is wrapped somewhere. ");
        note->setText(text);
        dialog.show();
        QTest::qWait(20);
    }
    QDialog dialog;
    QLabel* note;
    ScrolledForm* scroll;
    QPushButton* button;
};

TEST_F(FormInADialog, GrowsWithAWrappedText) {
    say(1);
    const int height = dialog.height();
    say(12);
    EXPECT_GT(dialog.height(), height);
    EXPECT_GE(note->height(), note->heightForWidth(note->width()));
    EXPECT_FALSE(scroll->verticalScrollBar()->isVisible());
}

TEST_F(FormInADialog, GrowsWithTheSizeOfTexts) {
    say(12);
    QFont large = dialog.font();
    large.setPointSizeF(2 * large.pointSizeF());
    dialog.setFont(large);
    QTest::qWait(20);
    EXPECT_GE(note->height(), note->heightForWidth(note->width()));
    EXPECT_GE(note->width(), note->minimumSizeHint().width());
}

TEST_F(FormInADialog, ScrollsWhereTheScreenIsTooLow) {
    say(1200);
    EXPECT_LE(dialog.height(), dialog.screen()->availableSize().height());
    EXPECT_TRUE(scroll->verticalScrollBar()->isVisible());
    EXPECT_GE(note->height(), note->heightForWidth(note->width()));
    EXPECT_GE(button->height(), button->sizeHint().height()) << "what ends the dialog stays whole";
}

} // namespace
} // namespace blinkwright::widgets
