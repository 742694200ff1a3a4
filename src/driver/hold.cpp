// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>

#include <cerrno>
#include <system_error>

#include "descriptor.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::driver {

namespace {

Trouble cannot_hold(const std::filesystem::path& path) {
    return {fmt::format("{} cannot be held for writing: {}", path.native(), std::generic_category().message(errno))};
}

bool locked(int file) {
    while (::flock(file, LOCK_EX) != 0)
        if (errno != EINTR) return false;
    return true;
}

/// Whoever held it before has put another file in its place; the lock is then on one that nobody sees any more.
bool is_still_there(int file, const std::filesystem::path& path) {
    struct stat held {
    }, there{};
    return ::fstat(file, &held) == 0 && ::stat(path.c_str(), &there) == 0 && held.st_ino == there.st_ino &&
           held.st_dev == there.st_dev;
}

}  // namespace

struct Hold::Locked {
    explicit Locked(int number) : file(number) {}
    Descriptor file;
};

Hold::Hold(std::unique_ptr<Locked> locked) : locked_(std::move(locked)) {}
Hold::Hold(Hold&&) noexcept = default;
Hold& Hold::operator=(Hold&&) noexcept = default;
Hold::~Hold() = default;

std::variant<Hold, Trouble> hold(const std::filesystem::path& path) {
    while (true) {
        auto held = std::make_unique<Hold::Locked>(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC));
        if (!held->file || !locked(held->file.number())) return cannot_hold(path);
        if (is_still_there(held->file.number(), path)) return Hold(std::move(held));
    }
}

}  // namespace scruple::driver
