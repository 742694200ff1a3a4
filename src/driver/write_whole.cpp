// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <system_error>

#include "descriptor.hpp"
#include "draft.hpp"
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

/// While it lives, whoever asks the program to end waits until the file is there, and then it ends. No draft is left
/// behind so; only a kill that cannot wait leaves one.
class Undisturbed {
  public:
    Undisturbed() {
        sigset_t endings;
        sigemptyset(&endings);
        for (const int signal : {SIGINT, SIGTERM, SIGHUP}) sigaddset(&endings, signal);
        ::pthread_sigmask(SIG_BLOCK, &endings, &before_);
    }
    Undisturbed(const Undisturbed&) = delete;
    Undisturbed& operator=(const Undisturbed&) = delete;
    ~Undisturbed() { ::pthread_sigmask(SIG_SETMASK, &before_, nullptr); }

  private:
    sigset_t before_{};
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

/// Where the bytes go, by the name that was asked for and by that of the file itself, and the mode that they get there.
struct Target {
    fs::path asked, path;
    mode_t mode = 0;
};

std::optional<Trouble> replace(const Target& target, std::string_view text) {
    const Undisturbed undisturbed;
    Draft draft(target.path);
    if (!draft || !draft.write(text) || !draft.settle(target.mode) || !draft.take_place())
        return cannot_write(target.asked, errno);
    sync_folder(target.path);
    return std::nullopt;
}

std::variant<Target, Trouble> target_of(const fs::path& path) {
    if (path.filename().empty()) return cannot_write(path, "it names no file");
    struct stat about {};
    std::error_code why;
    if (::stat(path.c_str(), &about) == 0) {
        if (S_ISDIR(about.st_mode)) return cannot_write(path, "it is a folder");
        if (!S_ISREG(about.st_mode)) return cannot_write(path, "it is not a plain file");
        Target there{path, fs::canonical(path, why), about.st_mode & 07777};
        return why ? std::variant<Target, Trouble>(cannot_write(path, why.message())) : there;
    }
    if (errno != ENOENT) return cannot_write(path, errno);
    if (fs::is_symlink(path, why)) return cannot_write(path, "it is a link that leads nowhere");
    return Target{path, path, mode_of_new_files()};
}

}  // namespace

std::optional<Trouble> write_whole(const fs::path& path, std::string_view text) {
    auto target = target_of(path);
    if (auto* trouble = std::get_if<Trouble>(&target)) return std::move(*trouble);
    drop_drafts_left_behind(std::get<Target>(target).path.parent_path());
    return replace(std::get<Target>(target), text);
}

std::optional<Trouble> fill_folder(const fs::path& folder, const std::vector<NamedText>& files) {
    std::error_code why;
    fs::create_directories(folder, why);
    if (why) return Trouble{fmt::format("{} cannot be made: {}", folder.native(), why.message())};
    drop_drafts_left_behind(folder);
    for (const auto& [name, text] : files) {
        auto target = target_of(folder / name);
        if (auto* trouble = std::get_if<Trouble>(&target)) return std::move(*trouble);
        if (auto trouble = replace(std::get<Target>(target), text)) return trouble;
    }
    return std::nullopt;
}

}  // namespace scruple::driver
