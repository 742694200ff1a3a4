// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "descriptor.hpp"
#include "scruple/driver/driver.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::driver {
namespace {

using diagnostics::Kind;

Trouble cannot_read(const std::filesystem::path& path, int error) {
    return {fmt::format("{} cannot be read: {}", path.native(), std::generic_category().message(error))};
}

// Zero or the error. One byte more is asked for, which is there where the file has grown.
int read_all_of(std::size_t size, const Descriptor& file, std::string& bytes) {
    bytes.resize(size + 1);
    std::size_t have = 0;
    // A byte was asked for behind those that came: where all came and that one did not, the file ends.
    while (have == 0 || have < size) {
        const ssize_t count = ::read(file.number(), bytes.data() + have, size + 1 - have);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return errno;
        if (count == 0) break;
        have += static_cast<std::size_t>(count);
    }
    bytes.resize(have);
    return 0;
}

RecipeFile too_large(text::Source source, std::size_t size) {
    source.bytes.clear();
    const std::string found = std::to_string(size);
    const std::string most = std::to_string(syntax::longest_text);
    return {std::move(source), diagnostics::make(Kind::text_too_large, 0, {}, {found, most})};
}

}  // namespace

RecipeFile recipe_file_of(text::Source source) {
    const std::size_t size = source.bytes.size();
    if (size > syntax::longest_text) return too_large(std::move(source), size);
    const std::size_t invalid = text::first_invalid_byte(source.bytes);
    if (invalid == std::string_view::npos) return {std::move(source), std::nullopt};
    const auto byte = static_cast<unsigned char>(source.bytes[invalid]);
    const std::string what =
        byte == 0 ? "there is a NUL byte here" : fmt::format("the byte {:02X} is part of no character", byte);
    const auto place = static_cast<std::uint32_t>(invalid);
    source.bytes.resize(invalid);
    return {std::move(source), diagnostics::make(Kind::not_text, 0, {place, place}, {what})};
}

std::variant<RecipeFile, Trouble> read_recipe_file(const std::filesystem::path& path) {
    // Without O_NONBLOCK, opening a pipe with such a name would wait for somebody to write.
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    struct stat about {};
    if (!file || ::fstat(file.number(), &about) != 0) return cannot_read(path, errno);
    if (S_ISDIR(about.st_mode)) return cannot_read(path, EISDIR);
    if (!S_ISREG(about.st_mode)) return Trouble{path.native() + " cannot be read: it is not a plain file"};

    text::Source source{path.native(), {}};
    const auto size = static_cast<std::size_t>(about.st_size);
    if (size > syntax::longest_text) return too_large(std::move(source), size);
    if (const int error = read_all_of(size, file, source.bytes)) return cannot_read(path, error);
    if (source.bytes.size() > size) return Trouble{path.native() + " cannot be read: it grew meanwhile"};
    return recipe_file_of(std::move(source));
}

}  // namespace scruple::driver
