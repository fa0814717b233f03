// A keyboard: keys go where the real ones would go, to the open menu or list, else to the widget with the
// focus.
//
//   type("timing");   press(Qt::Key_Return);   press(Qt::Key_4, Qt::ControlModifier);
#pragma once

#include <QApplication>
#include <QTest>
#include <QWidget>

namespace blinkwright::test {

inline QWidget* keyTarget() {
    if (QWidget* popup = QApplication::activePopupWidget()) return popup;
    if (QWidget* focus = QApplication::focusWidget()) return focus;
    return QApplication::activeWindow();
}

inline void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    // Sent to the window, as a windowing system does, so that shortcuts are looked for first.
    if (QApplication::activePopupWidget() || !QApplication::activeWindow())
        QTest::keyClick(keyTarget(), key, modifiers);
    else
        QTest::keyClick(QApplication::activeWindow()->windowHandle(), key, modifiers);
    QCoreApplication::processEvents();
}

inline void type(const QString& text) {
    for (const QChar letter : text) {
        QTest::keyClick(keyTarget(), letter.toLatin1());
        QCoreApplication::processEvents(); // a cell or a menu may open at the first letter
    }
}

} // namespace blinkwright::test
