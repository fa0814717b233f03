// What is left when a program that edits and saves is killed at random moments.
//
//   kills    -> kept_after_kill 100 %    files that open and are the old or the new circuit, of all kills
//               lost_by_kill 412 ms      the oldest edit that neither the file nor recovery has, before the
//               end
#include "app/document.h"
#include "app/recovery.h"
#include "tests/app/killed_program.h"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>
#include <cstdio>
#include <random>
#include <string>

namespace {

using namespace blinkwright;

constexpr int kills = 40;

} // namespace

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const QString sample = QStringLiteral(BLINKWRIGHT_SAMPLES "/mole-light.blinkwright");
    app::Document untouched;
    if (!untouched.open(sample)) return 1;
    const std::string first = untouched.circuit().title;

    std::mt19937 random(20261128);
    int whole = 0;
    long long lost_ms = 0;
    for (int k = 0; k < kills; ++k) {
        const QTemporaryDir folder;
        const QString file = folder.filePath("mole.blinkwright"), state = folder.filePath("state");
        if (!QFile::copy(sample, file)) return 1;
        QFile(file).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
        const int life_ms = std::uniform_int_distribution(5, 3500)(random);
        const auto killed = test::runAndKill(file, state, static_cast<unsigned>(k), life_ms);
        if (!killed) return 1;

        app::Document document;
        const bool opens = static_cast<bool>(document.open(file));
        const std::string& title = document.circuit().title;
        const int onDisk = QString::fromStdString(title).toInt();
        if (opens && (title == first ? killed->story.saved == 0
                                     : onDisk == killed->story.saved || onDisk == killed->story.saving))
            ++whole;
        int kept = onDisk;
        for (const auto& left : app::Recovery(document, state).leftBehind())
            kept = std::max(kept, left.title.toInt());
        lost_ms = std::max(lost_ms, test::lost_ms(*killed, kept));
    }
    std::printf("kept_after_kill %.1f %%\nlost_by_kill %lld ms\n", 100.0 * whole / kills, lost_ms);
    return 0;
}
