// SPDX-License-Identifier: MIT
#include <fcntl.h>
#include <fmt/format.h>

#include <cerrno>
#include <system_error>

#include "descriptor.hpp"
#include "lock.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::driver {

namespace {

Trouble cannot_hold(const std::filesystem::path& path) {
    return {fmt::format("{} cannot be held for writing: {}", path.native(), std::generic_category().message(errno))};
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
        if (!held->file || !lock(held->file.number(), Wait::as_long_as_it_takes)) return cannot_hold(path);
        if (is_still_there(held->file.number(), path)) return Hold(std::move(held));
    }
}

}  // namespace scruple::driver
