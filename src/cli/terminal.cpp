// SPDX-License-Identifier: MIT
#include "terminal.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/ioctl.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdlib>

namespace scruple::cli {
namespace {

constexpr std::size_t widest = 80;
constexpr std::size_t narrowest = 40;

}  // namespace

void secure_streams() {
    std::signal(SIGPIPE, SIG_IGN);
    std::signal(SIGXFSZ, SIG_IGN);
    for (int number = 0; number <= 2; ++number) {
        // A read-only stand-in: what is written to a closed stream still fails.
        if (::fcntl(number, F_GETFD) < 0 && ::open("/dev/null", O_RDONLY) < 0) std::_Exit(3);
    }
}

bool has_stack() {
    rlimit limit{};
    return ::getrlimit(RLIMIT_STACK, &limit) != 0 || limit.rlim_cur >= least_stack * 1024;
}

bool wants_colour(Stream stream) {
    const char* no_colour = std::getenv("NO_COLOR");
    if (no_colour != nullptr && *no_colour != '\0') return false;
    return is_terminal(stream);
}

bool is_terminal(Stream stream) {
    return ::isatty(static_cast<int>(stream)) == 1;
}

std::size_t width_of(Stream stream) {
    winsize size{};
    if (::ioctl(static_cast<int>(stream), TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return widest;
    return std::clamp<std::size_t>(size.ws_col, narrowest, widest);
}

namespace {

/// Whoever handed the stream over may have set it so that it does not wait by itself.
bool can_wait_for(Stream stream) {
    if (errno != EAGAIN) return false;
    pollfd room{static_cast<int>(stream), POLLOUT, 0};
    return ::poll(&room, 1, -1) == 1 || errno == EINTR;
}

}  // namespace

bool write_all(Stream stream, std::string_view text) {
    while (!text.empty()) {
        const ssize_t count = ::write(static_cast<int>(stream), text.data(), text.size());
        if (count < 0 && (errno == EINTR || can_wait_for(stream))) continue;
        if (count < 0) return errno == EPIPE;
        text.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

}  // namespace scruple::cli
