// SPDX-License-Identifier: MIT
// Stands between the program and the C library (LD_PRELOAD), and lets one of its calls to the system go wrong.
//   FAULTY_CALLS=FILE   each call is written there, one a line: its name and what it is about
//   FAULTY_AT=N         the call, counted from 1, at which …
//   FAULTY_SINCE=…      where it is set, calls are noted and counted only since the first one that makes a file or
//   folder FAULTY_HOW=WHAT     … `kill` or `term` comes as a signal before it, `short` takes half of a write, or an
//   error (a
//                       number of errno) is what it gives
// Calls on the standard streams count, those of other programs that are started do not.
#include <dirent.h>
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>

namespace {

template <class Function>
Function* real(const char* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

bool is_meant() {
    static const bool meant = std::strcmp(program_invocation_short_name, "scruple") == 0;
    return meant;
}

void note(const char* call, const char* about) {
    static const char* file = std::getenv("FAULTY_CALLS");
    if (file == nullptr) return;
    static const int out =
        real<int(const char*, int, ...)>("open")(file, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    char line[512];
    const int length = std::snprintf(line, sizeof line, "%s %s\n", call, about);
    if (real<ssize_t(int, const void*, size_t)>("write")(out, line, static_cast<size_t>(length)) < 0) std::abort();
}

enum class Fault { none, error, half };

bool counts(const char* call) {
    static std::atomic<bool> begun{std::getenv("FAULTY_SINCE") == nullptr};
    if (std::strcmp(call, "mkostemp") == 0 || std::strcmp(call, "mkdir") == 0) begun = true;
    return begun;
}

/// What this call is to do.
Fault fault(const char* call, const char* about) {
    if (!is_meant() || !counts(call)) return Fault::none;
    note(call, about);
    static std::atomic<long> count{0};
    static const char* at = std::getenv("FAULTY_AT");
    static const char* how = std::getenv("FAULTY_HOW");
    if (at == nullptr || how == nullptr || ++count != std::atol(at)) return Fault::none;
    if (std::strcmp(how, "kill") == 0) ::raise(SIGKILL);
    if (std::strcmp(how, "term") == 0) ::raise(SIGTERM);
    if (std::strcmp(how, "short") == 0) return Fault::half;
    errno = std::atoi(how);
    return errno == 0 ? Fault::none : Fault::error;
}

const char* name_of(int file) {
    static thread_local char text[16];
    std::snprintf(text, sizeof text, "%d", file);
    return text;
}

}  // namespace

// NOLINTBEGIN: these are the names and forms of the C library.
extern "C" {

int open(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const mode_t mode = (flags & (O_CREAT | O_TMPFILE)) != 0 ? va_arg(more, mode_t) : 0;
    va_end(more);
    if (fault("open", path) == Fault::error) return -1;
    return real<int(const char*, int, ...)>("open")(path, flags, mode);
}

int mkostemp(char* name, int flags) {
    if (fault("mkostemp", name) == Fault::error) return -1;
    return real<int(char*, int)>("mkostemp")(name, flags);
}

ssize_t write(int file, const void* bytes, size_t count) {
    const Fault how = fault("write", name_of(file));
    if (how == Fault::error) return -1;
    return real<ssize_t(int, const void*, size_t)>("write")(file, bytes, how == Fault::half ? (count + 1) / 2 : count);
}

ssize_t read(int file, void* bytes, size_t count) {
    if (fault("read", name_of(file)) == Fault::error) return -1;
    return real<ssize_t(int, void*, size_t)>("read")(file, bytes, count);
}

int fstat(int file, struct stat* about) {
    if (fault("fstat", name_of(file)) == Fault::error) return -1;
    return real<int(int, struct stat*)>("fstat")(file, about);
}

int stat(const char* path, struct stat* about) {
    if (fault("stat", path) == Fault::error) return -1;
    return real<int(const char*, struct stat*)>("stat")(path, about);
}

int fchmod(int file, mode_t mode) {
    if (fault("fchmod", name_of(file)) == Fault::error) return -1;
    return real<int(int, mode_t)>("fchmod")(file, mode);
}

int fsync(int file) {
    if (fault("fsync", name_of(file)) == Fault::error) return -1;
    return real<int(int)>("fsync")(file);
}

int flock(int file, int how) {
    if (fault("flock", name_of(file)) == Fault::error) return -1;
    return real<int(int, int)>("flock")(file, how);
}

int rename(const char* from, const char* to) {
    if (fault("rename", to) == Fault::error) return -1;
    return real<int(const char*, const char*)>("rename")(from, to);
}

int unlink(const char* path) {
    if (fault("unlink", path) == Fault::error) return -1;
    return real<int(const char*)>("unlink")(path);
}

int mkdir(const char* path, mode_t mode) {
    if (fault("mkdir", path) == Fault::error) return -1;
    return real<int(const char*, mode_t)>("mkdir")(path, mode);
}

int close(int file) {
    if (fault("close", name_of(file)) == Fault::error) return -1;
    return real<int(int)>("close")(file);
}

struct dirent* readdir(DIR* folder) {
    if (fault("readdir", "") == Fault::error) return nullptr;
    return real<struct dirent*(DIR*)>("readdir")(folder);
}

}  // extern "C"
// NOLINTEND
