// A ZIP archive written in memory (PKWARE APPNOTE.TXT 6.3.3): as much of it as document packages need.
//
//   ZipFile zip;
//   zip.add("mimetype", type, ZipFile::Form::stored);
//   zip.add("content.xml", xml);
//   QByteArray bytes = zip.finished();
#pragma once

#include <QByteArray>
#include <cstdint>

namespace blinkwright::app::sheet {

class ZipFile {
  public:
    enum class Form { stored, deflated };
    /// @param name with `/` between folders, below 64 KiB. @param bytes below 4 GiB.
    void add(const QByteArray& name, const QByteArray& bytes, Form form = Form::deflated);
    QByteArray finished();

  private:
    QByteArray m_bytes, m_directory;
    int m_entries = 0;
};

/// CRC-32 of ISO 3309, as ZIP and PNG have it.
std::uint32_t crc32Of(const QByteArray& bytes);

} // namespace blinkwright::app::sheet
