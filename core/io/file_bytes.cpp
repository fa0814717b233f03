#include "core/io/circuit_file.h"
#include "core/io/open_file.h"

#include "core/base/wording.h"

#include <cerrno>
#include <cstring>
#include <filesystem>

namespace blinkwright::io {

Result<std::ifstream> openFile(const std::string& path) {
    namespace fs = std::filesystem;
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (!fs::exists(status)) return Fault{path, wording::inWords("there is no such file")};
    if (fs::is_directory(status)) return Fault{path, wording::inWords("this is a folder, not a file")};
    std::ifstream file(path, std::ios::binary);
    if (!file) return Fault{path, wording::inWords("cannot be opened for reading")};
    return file;
}

Result<std::string> readBytes(const std::string& path, std::size_t limit) {
    auto opened = openFile(path);
    if (!opened) return opened.fault();
    std::ifstream& file = opened.value();
    // The size is found by reading: a pipe has none, and a file may grow meanwhile.
    std::string bytes;
    char buffer[1 << 16];
    while (file.read(buffer, sizeof buffer) || file.gcount() > 0) {
        bytes.append(buffer, static_cast<std::size_t>(file.gcount()));
        if (bytes.size() > limit)
            return Fault{path, wording::inWords("larger than %1 MiB, which is not supported", limit >> 20)};
    }
    if (file.bad()) return Fault{path, wording::inWords("cannot be read to its end")};
    return bytes;
}

} // namespace blinkwright::io
