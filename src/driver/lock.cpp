// SPDX-License-Identifier: MIT
#include "lock.hpp"

#include <sys/file.h>
#include <sys/stat.h>

#include <cerrno>

namespace scruple::driver {

bool lock(int file, Wait wait) {
    const int how = wait == Wait::not_at_all ? LOCK_EX | LOCK_NB : LOCK_EX;
    while (::flock(file, how) != 0)
        if (errno != EINTR) return false;
    return true;
}

bool is_still_there(int file, const std::filesystem::path& path) {
    struct stat held {
    }, there{};
    return ::fstat(file, &held) == 0 && ::stat(path.c_str(), &there) == 0 && held.st_ino == there.st_ino &&
           held.st_dev == there.st_dev;
}

}  // namespace scruple::driver
