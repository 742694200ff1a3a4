// SPDX-License-Identifier: MIT
#include "run_program.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

#include "descriptor.hpp"

namespace scruple::driver {
namespace {

struct Pipe {
    Descriptor read{-1}, write{-1};
};

/// False where the system has none left.
bool open(Pipe& pipe) {
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0) return false;
    pipe.read.reset(ends[0]);
    pipe.write.reset(ends[1]);
    return true;
}

struct Actions {
    posix_spawn_file_actions_t all{};
    Actions() { posix_spawn_file_actions_init(&all); }
    Actions(const Actions&) = delete;
    Actions& operator=(const Actions&) = delete;
    ~Actions() { posix_spawn_file_actions_destroy(&all); }
    void become(const Descriptor& from, int number) { posix_spawn_file_actions_adddup2(&all, from.number(), number); }
};

/// Reads what there is; false at the end.
bool take(const Descriptor& from, std::string& text) {
    std::array<char, 65536> piece{};
    const ssize_t count = ::read(from.number(), piece.data(), piece.size());
    if (count < 0 && (errno == EINTR || errno == EAGAIN)) return true;
    if (count <= 0) return false;
    text.append(piece.data(), static_cast<std::size_t>(count));
    return true;
}

/// Writes what it takes; false when there is no more to write, or nobody who reads it.
bool give(const Descriptor& to, std::string_view& rest) {
    const ssize_t count = rest.empty() ? 0 : ::write(to.number(), rest.data(), rest.size());
    if (count < 0) return errno == EINTR || errno == EAGAIN;
    rest.remove_prefix(static_cast<std::size_t>(count));
    return !rest.empty();
}

// Both ways at once: each side would wait for the other once a pipe is full.
void talk(Descriptor& in, Descriptor& out, Descriptor& aside, std::string_view rest, Finished& finished) {
    ::fcntl(in.number(), F_SETFL, O_NONBLOCK);
    while (out || aside) {
        std::array<pollfd, 3> waits{
            {{in.number(), POLLOUT, 0}, {out.number(), POLLIN, 0}, {aside.number(), POLLIN, 0}}};
        if (::poll(waits.data(), waits.size(), -1) < 0 && errno != EINTR) return;
        if (waits[0].revents != 0 && !give(in, rest)) in.close();
        if (waits[1].revents != 0 && !take(out, finished.out)) out.close();
        if (waits[2].revents != 0 && !take(aside, finished.aside)) aside.close();
    }
}

int status_of(pid_t process) {
    int status = 0;
    while (::waitpid(process, &status, 0) < 0 && errno == EINTR) {
    }
    return WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
}

Trouble cannot_run(const std::string& program, int error) {
    return {fmt::format("`{}` cannot be run: {}", program, std::generic_category().message(error))};
}

}  // namespace

std::variant<Finished, Trouble> run_program(const std::vector<std::string>& words, std::string_view in) {
    Pipe to, from, aside;
    if (!open(to) || !open(from) || !open(aside)) return cannot_run(words.front(), errno);
    Actions actions;
    actions.become(to.read, STDIN_FILENO);
    actions.become(from.write, STDOUT_FILENO);
    actions.become(aside.write, STDERR_FILENO);
    std::vector<char*> arguments;
    arguments.reserve(words.size() + 1);
    for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
    arguments.push_back(nullptr);
    pid_t process = 0;
    const int error = ::posix_spawnp(&process, arguments.front(), &actions.all, nullptr, arguments.data(), environ);
    if (error != 0) return cannot_run(words.front(), error);
    to.read.close();
    from.write.close();
    aside.write.close();
    Finished finished;
    talk(to.write, from.read, aside.read, in, finished);
    to.write.close();
    finished.status = status_of(process);
    return finished;
}

}  // namespace scruple::driver
