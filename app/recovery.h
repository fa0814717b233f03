// Keeps what is not saved yet in a file of its own, so that a crash loses at most the last second.
//
//   Recovery recovery(document, settings.stateFolder());
//   for (const Recovery::Left& left : recovery.leftBehind()) …      // of programs that ended without closing
//   recovery.takeUp(left);                                          // opens it; its file goes with the next
//   save
// The recovery file never stands in the place of the circuit's own file. Two programs that run at the same
// time do not touch each other's.
#pragma once

#include "app/document.h"

#include <QDateTime>
#include <QLockFile>
#include <QTimer>
#include <memory>

namespace blinkwright::app {

class Recovery : public QObject {
    Q_OBJECT
  public:
    /// Between a change and its being on the disk.
    static constexpr int delay_ms = 400;

    /// @param folder of recovery files, made when first needed
    Recovery(Document& document, const QString& folder, QObject* parent = nullptr);
    /// A program that ends in order leaves nothing behind.
    ~Recovery() override;

    /// One circuit that an earlier program did not save.
    struct Left {
        QString file;   ///< the recovery file
        QString path;   ///< where the circuit was opened from; empty for a new one
        QString title;  ///< of the circuit
        QDateTime when; ///< of the last change that is kept
    };
    /// Newest first. One that cannot be read is not among them, and stays where it is.
    std::vector<Left> leftBehind() const;
    /// Opens it as the document, with its changes unsaved, and takes the recovery file over.
    Result<void> takeUp(const Left& left);
    /// Removes it for good.
    void discard(const Left& left);

    /// Writes what waits at once.
    void flush();
    QString file() const { return m_file; } ///< of this program; there while something is unsaved

  signals:
    void failed(const blinkwright::Fault& fault); ///< once, until a write succeeds again

  private:
    void follow();
    void write();
    void remove();

    Document& m_document;
    const QString m_folder;
    QString m_file;
    std::unique_ptr<QLockFile> m_lock; ///< held while this program lives
    QTimer m_soon;
    quint64 m_written = 0; ///< revision of the document that the file holds; 0: none
    bool m_saidFailed = false;
};

} // namespace blinkwright::app
