// The one program: `blinkwright [FILE]` opens the window, `blinkwright VERB …` needs no display.
//
// For measuring how long a start takes: with BLINKWRIGHT_EXIT_AFTER_FIRST_CURVE=1 in the environment the
// program prints nothing and quits as soon as the first curve has been painted.
#include "app/icons.h"
#include "app/language.h"
#include "app/main_window.h"
#include "app/settings.h"
#include "app/verbs/verb.h"

#include <QApplication>
#include <QFile>
#include <QFileInfo>
#include <QTimer>

#include <iostream>

using namespace blinkwright::app;

namespace {

bool quitsAfterFirstCurve() {
    return qEnvironmentVariableIntValue("BLINKWRIGHT_EXIT_AFTER_FIRST_CURVE") == 1;
}

int runWindow(int argc, char** argv, const std::string& file) {
    // The toolkit may not read our operands as its own options.
    int ownCount = argc > 0 ? 1 : 0;
    QApplication application(ownCount, argv);
    QApplication::setApplicationName(QStringLiteral("blinkwright"));
    QApplication::setApplicationDisplayName(QString());
    QApplication::setDesktopFileName(QStringLiteral("blinkwright"));
    QApplication::setWindowIcon(programIcon());
    Settings settings;
    speak(settings.language());
    MainWindow window(settings);
    if (quitsAfterFirstCurve())
        QObject::connect(&window, &MainWindow::firstCurvePainted, &application, &QApplication::quit,
                         Qt::QueuedConnection);
    window.show();
    QTimer::singleShot(0, &window, [&] {
        if (!file.empty()) window.openFile(QFile::decodeName(QByteArray::fromStdString(file)));
        if (quitsAfterFirstCurve()) return;
        window.offerLeftBehind();
        window.offerTour();
    });
    return QApplication::exec();
}

int refuse(const std::string& sentence) {
    std::cerr << "blinkwright: " << sentence << "\n";
    return verbs::badUsage;
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + std::min(argc, 1), argv + argc);
    if (words.empty()) return runWindow(argc, argv, {});
    const std::string& first = words.front();
    if (first == "--help" || first == "-h") {
        std::cout << verbs::programHelp();
        return verbs::done;
    }
    if (first == "--version") {
        std::cout << "blinkwright " << verbs::programVersion() << "\n";
        return verbs::done;
    }
    if (const verbs::Verb* verb = verbs::verbNamed(first))
        return verbs::runVerb(*verb, std::span(words).subspan(1), std::cout, std::cerr);
    if (first.starts_with("-"))
        return refuse("there is no option '" + first + "' (see 'blinkwright --help')");
    if (!QFileInfo::exists(QFile::decodeName(QByteArray::fromStdString(first)))) {
        const int code = refuse("'" + first + "' is neither a file nor a verb");
        std::cerr << "\n" << verbs::programHelp();
        return code;
    }
    if (words.size() > 1) return refuse("'" + words[1] + "' is one name too many; the window opens one file");
    return runWindow(argc, argv, first);
}
