// SPDX-License-Identifier: MIT
// The files of a folder as the editor has them, and what is wrong with them: kept up to date, edit by edit.
//
// A file that is edited is checked anew together with all that it depends on, and so are the files that depend on it;
// no others. Which those are, the names say that they define and mention. Blocks that other lines depend on without
// naming them (chemicals, conversions, benches, formats, meetings) go along with every check, and an edit to one of
// them is followed by a check of everything, piece by piece while nothing else is asked.
#pragma once

#include <deque>
#include <filesystem>
#include <memory>
#include <set>
#include <unordered_map>
#include <utility>

#include "view.hpp"

namespace scruple::server {

/// The text between two places is replaced; without a range, all of it.
struct Edit {
    std::optional<Range> range{};
    std::string text{};
};

class Workspace {
  public:
    /// The library alone, until a folder is read.
    Workspace();

    /// What keeps it from being read, in words; empty where nothing does.
    std::string read(const std::filesystem::path& folder);

    void open(const std::string& path, std::int64_t version, std::string text);
    void edit(FileNumber number, std::int64_t version, const std::vector<Edit>& edits);
    void close(FileNumber number);
    /// What is on the disk may have changed, come or gone.
    void look_again(const std::string& path);

    /// Checks what has been edited since, and its neighbours.
    void settle();
    [[nodiscard]] bool has_more_to_check() const { return !waiting_.empty(); }
    /// A piece of what an edit has left over.
    void check_some_more();
    /// Files whose diagnostics the client does not know.
    [[nodiscard]] std::set<FileNumber> untold() { return std::exchange(untold_, {}); }

    [[nodiscard]] std::optional<FileNumber> find(const std::string& path) const;
    [[nodiscard]] File& file(FileNumber number) { return *files_[number]; }
    [[nodiscard]] const File& file(FileNumber number) const { return *files_[number]; }
    [[nodiscard]] FileNumber count() const { return static_cast<FileNumber>(files_.size()); }
    [[nodiscard]] const Index& index() const { return index_; }
    /// The file and what it depends on, checked: for whoever asks what stands in it.
    [[nodiscard]] View& view_of(FileNumber file);

  private:
    FileNumber add(text::Source source);
    void parse(FileNumber number);
    void take_text(FileNumber number, std::string text);
    void queue_neighbours(FileNumber number, const Names& before);
    void queue_everything();
    void check(const std::vector<FileNumber>& those);
    void take_found(const std::set<FileNumber>& those);
    [[nodiscard]] std::set<FileNumber> needed_for(const std::vector<FileNumber>& those) const;
    [[nodiscard]] std::vector<FileNumber> suggested(const std::vector<FileNumber>& those);
    void make_view(const std::set<FileNumber>& needed);

    std::vector<std::unique_ptr<File>> files_;
    std::unordered_map<std::string, FileNumber> numbers_;  ///< by path
    std::size_t built_in_ = 0;
    Index index_;
    View view_;
    std::set<FileNumber> seen_in_view_;  ///< what the view was made for; empty: nothing
    std::set<FileNumber> edited_;        ///< and not checked since
    std::deque<FileNumber> waiting_;     ///< to be checked when there is time
    std::set<FileNumber> is_waiting_;
    std::set<FileNumber> untold_;
};

}  // namespace scruple::server
