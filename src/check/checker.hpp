// SPDX-License-Identifier: MIT
// The passes over a workspace, in order.
#pragma once

#include "judging.hpp"
#include "scruple/check/check.hpp"

namespace scruple::check {

class Checker {
  public:
    Checker(const Workspace& workspace, unsigned workers);
    /// Goes on from a model in which the library is checked already; no chemical may be declared after it.
    Checker(const Workspace& workspace, unsigned workers, Checked library);

    Checked run();

  private:
    Model& model() { return checked_.model; }
    std::vector<diagnostics::Diagnostic>& out() { return checked_.diagnostics; }
    Reader reader(text::FileId file, std::vector<diagnostics::Diagnostic>& out);
    [[nodiscard]] bool has_tree(text::FileId file) const { return workspace_.outline(file) == nullptr; }

    void look_for_the_hidden();
    void define_all();
    void read_chemicals();
    template <class Read>
    void pass(Read read);
    void gather_logs();
    void judge();

    const Workspace& workspace_;
    unsigned workers_;
    Checked checked_;
    text::FileId first_file_ = 0;  ///< of those to check
    Defined defined_;
    std::vector<std::uint32_t> blocks_;        ///< of files with a tree
    std::vector<std::vector<LogEntry>> logs_;  ///< one for each of these, so that blocks can be read side by side
};

}  // namespace scruple::check
