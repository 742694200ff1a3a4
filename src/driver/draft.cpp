// SPDX-License-Identifier: MIT
#include "draft.hpp"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/stat.h>

#include <cerrno>
#include <cstdio>
#include <system_error>
#include <vector>

#include "lock.hpp"

namespace scruple::driver {
namespace {

namespace fs = std::filesystem;

// Hidden, so that no folder of recipes takes it for one of its files; of one length, however long the target's name is.
constexpr std::string_view name_begins = ".scruple-draft-";
constexpr std::string_view name_ends = "XXXXXX";

bool is_draft(const fs::path& name) {
    return name.native().starts_with(name_begins) && name.native().size() == name_begins.size() + name_ends.size();
}

/// Where the file system knows no locks nothing is ever taken for left behind, and so nothing need be held.
bool may_be_used(int file, const fs::path& path) {
    return !lock(file, Wait::as_long_as_it_takes) || is_still_there(file, path);
}

std::vector<fs::path> drafts_in(const fs::path& folder) {
    std::vector<fs::path> found;
    std::error_code why;
    fs::directory_iterator entry(folder.empty() ? "." : folder, why);
    for (; !why && entry != fs::directory_iterator(); entry.increment(why))
        if (const fs::path name = entry->path().filename(); is_draft(name)) found.push_back(folder / name);
    return found;
}

}  // namespace

Draft::Draft(const fs::path& target) : target_(target) {
    // Made and not yet locked, it may be taken for left behind; then once more.
    while (!there_ && made()) there_ = may_be_used(file_.number(), name_);
}

Draft::~Draft() {
    if (there_) ::unlink(name_.c_str());
}

bool Draft::made() {
    name_ = (target_.parent_path() / name_begins).native();
    name_ += name_ends;
    file_.reset(::mkostemp(name_.data(), O_CLOEXEC));
    return static_cast<bool>(file_);
}

bool Draft::write(std::string_view text) {
    while (!text.empty()) {
        const ssize_t count = ::write(file_.number(), text.data(), text.size());
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return false;
        text.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

bool Draft::settle(mode_t mode) {
    return ::fchmod(file_.number(), mode) == 0 && ::fsync(file_.number()) == 0;
}

bool Draft::take_place() {
    if (::rename(name_.c_str(), target_.c_str()) != 0) return false;
    there_ = false;
    return true;
}

void drop_drafts_left_behind(const fs::path& folder) {
    for (const fs::path& path : drafts_in(folder)) {
        const Descriptor file(::open(path.c_str(), O_RDWR | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC));
        if (file && lock(file.number(), Wait::not_at_all) && is_still_there(file.number(), path))
            ::unlink(path.c_str());
    }
}

}  // namespace scruple::driver
