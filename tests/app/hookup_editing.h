// The mole light on the Hook-up of the real window, and a hand on it.
#pragma once

#include "tests/app/hand.h"
#include "tests/app/window_fixture.h"

#include <QStatusBar>

namespace blinkwright::test {

class HookupEditing : public WindowFixture {
  protected:
    HookupEditing() : WindowFixture(app::Looks::light, {1500, 950}), hand(*window) {
        EXPECT_TRUE(window->openFile(sample("mole-light")));
        QCoreApplication::processEvents();
        before = text();
    }
    circuit::Placement placeOf(const char* ref) const { return *circuit().placement(hand.part(ref)); }
    QString said() const { return window->statusBar()->currentMessage(); }
    std::vector<circuit::PartId> chosen() const { return window->hookup().selection().parts(); }
    /// One step to undo, under a text, and the file is as it was.
    void isOneStep(const char* name) {
        ASSERT_EQ(undo().count(), 1) << undo().undoText().toStdString();
        EXPECT_EQ(undo().undoText(), QLatin1String(name));
        undo().undo();
        EXPECT_EQ(text(), before);
    }

    Hand hand;
    QByteArray before;
};

} // namespace blinkwright::test
