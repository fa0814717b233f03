#include "app/verbs/offscreen.h"

#include "app/language.h"

#include <iostream>

namespace blinkwright::app::verbs {

Offscreen::Offscreen() {
    // What the toolkit misses of a desktop is no user's concern.
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& text) {
        if (type == QtCriticalMsg || type == QtFatalMsg) std::cerr << text.toStdString() << "\n";
    });
    qputenv("QT_QPA_PLATFORM", "offscreen");
    m_application = std::make_unique<QApplication>(m_argc, m_argv);
    speak(QStringLiteral("en"));
}

} // namespace blinkwright::app::verbs
