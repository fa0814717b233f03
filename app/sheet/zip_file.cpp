#include "app/sheet/zip_file.h"

#include <array>

namespace blinkwright::app::sheet {

namespace {

constexpr std::uint32_t localSign = 0x04034b50, directorySign = 0x02014b50, endSign = 0x06054b50;
constexpr std::uint16_t version = 20, utf8Names = 0x0800, deflate = 8;
// 1 January 1980, the first day that the format knows: the same sheet gives the same bytes.
constexpr std::uint16_t noTime = 0, firstDay = (1 << 5) | 1;
// What qCompress puts around the deflated bytes: length and zlib's head (RFC 1950) before, its sum after.
constexpr qsizetype before = 4 + 2, after = 4;

void put16(QByteArray& to, std::uint32_t value) {
    to.append(static_cast<char>(value & 0xff)).append(static_cast<char>(value >> 8 & 0xff));
}
void put32(QByteArray& to, std::uint32_t value) {
    put16(to, value & 0xffff);
    put16(to, value >> 16);
}

} // namespace

std::uint32_t crc32Of(const QByteArray& bytes) {
    static const std::array<std::uint32_t, 256> table = [] {
        std::array<std::uint32_t, 256> made{};
        for (std::uint32_t n = 0; n < made.size(); ++n) {
            std::uint32_t c = n;
            for (int bit = 0; bit < 8; ++bit) c = c & 1 ? 0xedb88320U ^ (c >> 1) : c >> 1;
            made[n] = c;
        }
        return made;
    }();
    std::uint32_t crc = 0xffffffffU;
    for (const char byte : bytes) crc = table[(crc ^ static_cast<unsigned char>(byte)) & 0xff] ^ (crc >> 8);
    return crc ^ 0xffffffffU;
}

void ZipFile::add(const QByteArray& name, const QByteArray& bytes, Form form) {
    QByteArray kept = bytes;
    if (form == Form::deflated) {
        const QByteArray packed = qCompress(bytes, 9);
        kept = packed.mid(before, packed.size() - before - after);
    }
    QByteArray common;
    put16(common, version);
    put16(common, utf8Names);
    put16(common, form == Form::deflated ? deflate : 0);
    put16(common, noTime);
    put16(common, firstDay);
    put32(common, crc32Of(bytes));
    put32(common, static_cast<std::uint32_t>(kept.size()));
    put32(common, static_cast<std::uint32_t>(bytes.size()));
    put16(common, static_cast<std::uint32_t>(name.size()));
    put16(common, 0); // no extra field: a reader finds the type of the package at a fixed place

    put32(m_directory, directorySign);
    put16(m_directory, version);
    m_directory += common;
    put16(m_directory, 0); // no comment
    put16(m_directory, 0); // first disk
    put16(m_directory, 0); // inner attributes
    put32(m_directory, 0); // outer attributes
    put32(m_directory, static_cast<std::uint32_t>(m_bytes.size()));
    m_directory += name;

    put32(m_bytes, localSign);
    m_bytes += common + name + kept;
    ++m_entries;
}

QByteArray ZipFile::finished() {
    const auto begin = static_cast<std::uint32_t>(m_bytes.size());
    QByteArray all = m_bytes + m_directory;
    put32(all, endSign);
    put16(all, 0); // this disk
    put16(all, 0); // the directory's disk
    put16(all, static_cast<std::uint32_t>(m_entries));
    put16(all, static_cast<std::uint32_t>(m_entries));
    put32(all, static_cast<std::uint32_t>(m_directory.size()));
    put32(all, begin);
    put16(all, 0); // no comment
    return all;
}

} // namespace blinkwright::app::sheet
