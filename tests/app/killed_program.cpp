#include "tests/app/killed_program.h"

#include <QByteArray>
#include <QCoreApplication>
#include <QProcess>

#include <chrono>
#include <thread>

#include <csignal>

namespace blinkwright::test {
namespace {

constexpr int longestStart_ms = 20'000;

Story storyOf(const QByteArray& lines) {
    Story story;
    for (const QByteArray& line : lines.split('\n')) {
        const QList<QByteArray> words = line.split(' ');
        if (words.size() != 3) continue; // the last one may be cut
        const int number = words[1].toInt();
        if (words[0] == "edit") story.edits[number] = words[2].toLongLong();
        if (words[0] == "saving") story.saving = number;
        if (words[0] == "saved") story.saved = number;
    }
    return story;
}

} // namespace

std::optional<Killed> runAndKill(const QString& file, const QString& state, unsigned seed, int life_ms) {
    using namespace std::chrono;
    QProcess child;
    child.start(QCoreApplication::applicationDirPath() + "/crash_child",
                {file, state, QString::number(seed)});
    if (!child.waitForReadyRead(longestStart_ms)) return std::nullopt;
    std::this_thread::sleep_for(milliseconds(life_ms));
    const auto died = steady_clock::now().time_since_epoch();
    ::kill(static_cast<pid_t>(child.processId()), SIGKILL);
    child.waitForFinished();
    if (child.exitStatus() != QProcess::CrashExit) return std::nullopt;
    return Killed{storyOf(child.readAllStandardOutput()), duration_cast<milliseconds>(died).count()};
}

long long lost_ms(const Killed& killed, int kept) {
    const auto first = killed.story.edits.upper_bound(kept);
    return first == killed.story.edits.end() ? 0 : killed.died_ms - first->second;
}

} // namespace blinkwright::test
