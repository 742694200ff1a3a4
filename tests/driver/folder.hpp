// SPDX-License-Identifier: MIT
// A folder for one test, gone when the test ends.
#pragma once

#include <stdlib.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>

namespace scruple::driver {

class Folder {
  public:
    Folder() {
        std::string name = (std::filesystem::temp_directory_path() / "scruple-test.XXXXXX").native();
        path_ = ::mkdtemp(name.data());
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }

    [[nodiscard]] std::filesystem::path operator/(std::string_view name) const { return path_ / name; }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

    void put(std::string_view name, std::string_view text) const {
        std::filesystem::create_directories((path_ / name).parent_path());
        std::ofstream(path_ / name, std::ios::binary) << text;
    }
    [[nodiscard]] std::string text(std::string_view name) const {
        std::ifstream file(path_ / name, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }
    [[nodiscard]] std::size_t count() const {
        return static_cast<std::size_t>(
            std::distance(std::filesystem::directory_iterator(path_), std::filesystem::directory_iterator()));
    }

  private:
    std::filesystem::path path_;
};

}  // namespace scruple::driver
