// SPDX-License-Identifier: MIT
#include <doctest/doctest.h>
#include <sys/resource.h>

#include <csignal>

#include "driver/folder.hpp"
#include "scruple/driver/driver.hpp"

namespace scruple::driver {
namespace {

namespace fs = std::filesystem;

/// While it lives, no file may grow past so many bytes: what a full disk does.
class SmallDisk {
  public:
    explicit SmallDisk(rlim_t bytes) {
        handler_ = std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &before_);
        const rlimit small{bytes, before_.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &small);
    }
    SmallDisk(const SmallDisk&) = delete;
    SmallDisk& operator=(const SmallDisk&) = delete;
    ~SmallDisk() {
        ::setrlimit(RLIMIT_FSIZE, &before_);
        std::signal(SIGXFSZ, handler_);
    }

  private:
    rlimit before_{};
    void (*handler_)(int);
};

TEST_CASE("a file is written, and written over") {
    const Folder folder;
    CHECK_FALSE(write_whole(folder / "card.txt", "one\n"));
    CHECK(folder.text("card.txt") == "one\n");
    CHECK_FALSE(write_whole(folder / "card.txt", std::string(3 << 20, 'x')));
    CHECK(folder.text("card.txt").size() == 3 << 20);
    CHECK(folder.count() == 1);
}

TEST_CASE("a file keeps its mode, and a link its file") {
    const Folder folder;
    folder.put("file", "old");
    fs::permissions(folder / "file", fs::perms(0640));
    fs::create_symlink("file", folder / "link");
    CHECK_FALSE(write_whole(folder / "link", "new"));
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(folder.text("file") == "new");
    CHECK(fs::status(folder / "file").permissions() == fs::perms(0640));
}

TEST_CASE("where the disk is full, the old file stays and nothing is left beside it") {
    const Folder folder;
    folder.put("card.txt", "old");
    {
        const SmallDisk disk(1000);
        CHECK(write_whole(folder / "card.txt", std::string(5000, 'x')));
        CHECK(write_whole(folder / "new.txt", std::string(5000, 'x')));
    }
    CHECK(folder.text("card.txt") == "old");
    CHECK(folder.count() == 1);
}

TEST_CASE("what is no place for a file is said, and left alone") {
    const Folder folder;
    fs::create_directory(folder / "folder");
    fs::create_symlink("nowhere", folder / "dangling");
    fs::create_symlink("loop", folder / "loop");
    for (const char* name : {"folder", "folder/", "dangling", "loop", "none/card.txt", "", "/dev/full"}) {
        CAPTURE(name);
        const auto trouble = write_whole(*name == '\0' ? fs::path() : folder / name, "text");
        REQUIRE(trouble);
        CHECK(trouble->message.find("cannot be written") != std::string::npos);
    }
    CHECK(fs::is_symlink(folder / "dangling"));
    CHECK(folder.count() == 3);
}

}  // namespace
}  // namespace scruple::driver
