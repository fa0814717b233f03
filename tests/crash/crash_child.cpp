// A program that edits and saves a circuit over and over until it is killed, for the test of what a crash
// leaves.
//
//   crash_child FILE STATE-FOLDER SEED
// Each edit gives the circuit a new title: its number. It prints a line before and after all that it does:
// `edit N`, `saving N`, `saved N`, each with the milliseconds of a clock that all programs share.
#include "app/document.h"
#include "app/recovery.h"

#include <QCoreApplication>
#include <QTimer>
#include <chrono>
#include <cstdio>
#include <random>

using namespace blinkwright;

namespace {

void say(const char* what, int number) {
    const auto now = std::chrono::steady_clock::now().time_since_epoch();
    std::printf("%s %d %lld\n", what, number,
                static_cast<long long>(std::chrono::duration_cast<std::chrono::milliseconds>(now).count()));
    std::fflush(stdout);
}

} // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    if (words.size() != 4) return 2;
    app::Document document;
    app::Recovery recovery(document, words[2]);
    if (!document.open(words[1])) return 3;
    std::mt19937 random(words[3].toUInt());
    const auto upTo = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most)); };

    int number = 0;
    QTimer edit, save;
    QObject::connect(&edit, &QTimer::timeout, [&] {
        const std::string title = std::to_string(++number);
        if (document.apply({circuit::edits::SetTitle{title}})) say("edit", number);
        edit.start(1 + upTo(20));
    });
    QObject::connect(&save, &QTimer::timeout, [&] {
        say("saving", number);
        if (document.save()) say("saved", number);
        save.start(20 + upTo(5000));
    });
    edit.start(1);
    save.start(50);
    say("begin", 0);
    return QCoreApplication::exec();
}
