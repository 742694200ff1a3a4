// SPDX-License-Identifier: MIT
// Files of recipes that are parsed, read and judged one by one, and let go.
#pragma once

#include "judging.hpp"
#include "scruple/check/check.hpp"

namespace scruple::check {

/// Files without a tree. What others are judged by stays: of a bath of a process and of a part of another file's
/// solution the lines are wanted once more.
class InPassing {
  public:
    /// The blocks of all other files have been read.
    InPassing(const Workspace& workspace, const Defined& defined, Model& model, unsigned workers);

    void run(Judging& judging, std::vector<diagnostics::Diagnostic>& out);

    /// Of a file that is to be judged with the rest.
    [[nodiscard]] bool stays(text::FileId file) const { return stays_[file] != 0; }

  private:
    /// What a worker has for each file in turn.
    struct Hands {
        syntax::Tree tree;
        std::vector<ContentsTable> tables;
        std::vector<LogEntry> no_log;
    };

    void keep_what_others_take();
    void keep_parts_of(text::FileId file);
    void keep(Id section);
    void pass_by(text::FileId file, Hands& hands, Judging& judging, std::vector<diagnostics::Diagnostic>& out);
    void read(text::FileId file, Hands& hands, std::vector<diagnostics::Diagnostic>& out);
    [[nodiscard]] bool is_by_itself(text::FileId file) const;
    void read_again(std::vector<Hands>& hands, std::vector<diagnostics::Diagnostic>& out);
    void let_go(text::FileId file);

    const Workspace& workspace_;
    const Defined& defined_;
    Model& model_;
    unsigned workers_;
    std::vector<text::FileId> files_;
    std::vector<std::uint8_t> stays_;  ///< by file; a byte each, since workers write beside one another
};

}  // namespace scruple::check
