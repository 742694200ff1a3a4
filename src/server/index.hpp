// SPDX-License-Identifier: MIT
// Which files define a name, and which mention it.
#pragma once

#include <string>
#include <unordered_map>
#include <vector>

#include "names.hpp"

namespace scruple::server {

using FileNumber = std::uint32_t;

class Index {
  public:
    void add(FileNumber file, const Names& names);
    void remove(FileNumber file, const Names& names);

    /// Each file once, in no order that means anything.
    [[nodiscard]] const std::vector<FileNumber>& defining(const std::string& key) const { return in(defining_, key); }
    /// Files that mention it, or a solution of it, in lines that what it holds matters to.
    [[nodiscard]] const std::vector<FileNumber>& using_it(const std::string& key) const { return in(using_, key); }
    /// Files that mention it in a log, a plan or a price list.
    [[nodiscard]] const std::vector<FileNumber>& listing(const std::string& key) const { return in(listing_, key); }
    [[nodiscard]] const std::vector<FileNumber>& global_files() const { return global_; }

    /// Calls `see(key)` for every name that is defined.
    template <class See>
    void each_defined(const See& see) const {
        for (const auto& [key, files] : defining_) see(key);
    }

  private:
    using Files = std::unordered_map<std::string, std::vector<FileNumber>>;
    [[nodiscard]] static const std::vector<FileNumber>& in(const Files& files, const std::string& key);
    template <class Change>
    void each(FileNumber file, const Names& names, const Change& change);

    Files defining_, using_, listing_;
    std::vector<FileNumber> global_;
};

}  // namespace scruple::server
