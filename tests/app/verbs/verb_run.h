// The program itself, started headless as a user starts it, and what it answered.
//
//   const Answer answer = run({"readings", sample("mole-light")});
//   answer.code; answer.json(); answer.err;
#pragma once

#include "tests/app/support.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace blinkwright::test {

struct Answer {
    int code = -1;
    QByteArray out;
    QByteArray err;
    QJsonObject json() const { return QJsonDocument::fromJson(out).object(); }
};

inline Answer run(const QStringList& arguments) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    // Nothing to show a window on, and no hint to do without one.
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) environment.remove(name);
    process.setProcessEnvironment(environment);
    process.start(QCoreApplication::applicationDirPath() + "/blinkwright", arguments);
    Answer answer;
    if (!process.waitForFinished(60000)) {
        process.kill();
        return answer;
    }
    answer.code = process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -2;
    answer.out = process.readAllStandardOutput();
    answer.err = process.readAllStandardError();
    return answer;
}

inline bool isOneSentence(const QByteArray& text) {
    return text.count('\n') == 1 && text.endsWith('\n') && text.size() > 5;
}

class Verbs : public testing::Test {
  protected:
    QString inFolder(const char* name) const { return folder.filePath(QLatin1String(name)); }
    /// The mole light with one piece of its text replaced.
    QString changed(const char* from, const char* to) {
        QByteArray text = bytesOf(sample("mole-light"));
        EXPECT_TRUE(text.contains(from)) << from;
        writeFile(inFolder("changed.blinkwright"), text.replace(from, to));
        return inFolder("changed.blinkwright");
    }
    QTemporaryDir folder;
    const QString mole = sample("mole-light");
};

} // namespace blinkwright::test
