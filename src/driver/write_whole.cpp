// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>

#include "descriptor.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::driver {
namespace {

namespace fs = std::filesystem;

Trouble cannot_write(const fs::path& path, std::string_view why) {
    return {fmt::format("{} cannot be written: {}", path.native(), why)};
}

Trouble cannot_write(const fs::path& path, int error) {
    return cannot_write(path, std::generic_category().message(error));
}

/// A file beside the one that is meant, gone again unless it takes its place.
class Draft {
  public:
    explicit Draft(const fs::path& target)
        : target_(target),
          name_((target.parent_path() / fmt::format(".{}.XXXXXX", target.filename().native())).native()),
          file_(::mkostemp(name_.data(), O_CLOEXEC)),
          there_(static_cast<bool>(file_)) {}
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;
    ~Draft() {
        if (there_) ::unlink(name_.c_str());
    }

    explicit operator bool() const { return there_; }

    /// Each gives false and leaves errno where it fails.
    bool write(std::string_view text) {
        while (!text.empty()) {
            const ssize_t count = ::write(file_.number(), text.data(), text.size());
            if (count < 0 && errno == EINTR) continue;
            if (count < 0) return false;
            text.remove_prefix(static_cast<std::size_t>(count));
        }
        return true;
    }
    bool settle(mode_t mode) {
        return ::fchmod(file_.number(), mode) == 0 && ::fsync(file_.number()) == 0 && file_.close();
    }
    bool take_place() {
        if (::rename(name_.c_str(), target_.c_str()) != 0) return false;
        there_ = false;
        return true;
    }

  private:
    fs::path target_;
    std::string name_;
    Descriptor file_;
    bool there_;
};

mode_t mode_of_new_files() {
    // There is no way to read the mask without setting it.
    const mode_t mask = ::umask(0);
    ::umask(mask);
    return 0666 & ~mask;
}

// So that the new name survives a loss of power; the file is whole either way, so no failure counts.
void sync_folder(const fs::path& path) {
    const fs::path folder = path.parent_path();
    const Descriptor opened(::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened) ::fsync(opened.number());
}

std::optional<Trouble> replace(const fs::path& target, mode_t mode, std::string_view text) {
    Draft draft(target);
    if (!draft || !draft.write(text) || !draft.settle(mode) || !draft.take_place()) return cannot_write(target, errno);
    sync_folder(target);
    return std::nullopt;
}

}  // namespace

std::optional<Trouble> write_whole(const fs::path& path, std::string_view text) {
    if (path.filename().empty()) return cannot_write(path, "it names no file");
    struct stat about {};
    if (::stat(path.c_str(), &about) == 0) {
        if (S_ISDIR(about.st_mode)) return cannot_write(path, "it is a folder");
        if (!S_ISREG(about.st_mode)) return cannot_write(path, "it is not a plain file");
        std::error_code why;
        const fs::path target = fs::canonical(path, why);
        return why ? cannot_write(path, why.message()) : replace(target, about.st_mode & 07777, text);
    }
    if (errno != ENOENT) return cannot_write(path, errno);
    std::error_code why;
    if (fs::is_symlink(path, why)) return cannot_write(path, "it is a link that leads nowhere");
    return replace(path, mode_of_new_files(), text);
}

}  // namespace scruple::driver
