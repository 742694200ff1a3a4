// SPDX-License-Identifier: MIT
// `printed` blocks: what is typed there is kept; what it means is for others to find.
#include "blocks.hpp"
#include "passes.hpp"

namespace scruple::check {
namespace {

using diagnostics::Kind;
using Of = syntax::Words::Of;

class PageReader {
  public:
    PageReader(BlockContext context, PrintedPage& page) : reader_(context.reader), block_(context.block), page_(page) {}

    void run() {
        each_statement(reader_, block_, [this](const auto& node) { return take(node); });
        if (page_.lines.empty() && block_.begin != block_.end) {
            const auto& heading = reader_.tree.statements[block_.heading];
            reader_.report(Kind::page_without_lines, heading.span);
        }
    }

  private:
    bool take(const syntax::Words& words) {
        const auto text = reader_.text(words.text);
        switch (words.of) {
            case Of::is_a:
                once(page_.purpose, text, "is a");
                return true;
            case Of::book:
                once(page_.book, text, "book");
                return true;
            case Of::printed_line:
                if (!text.empty()) page_.lines.push_back({text, reader_.place(words.text.span)});
                return true;
            case Of::note:
                page_.notes.push_back(text);
                return true;
            default:
                return false;
        }
    }
    bool take(const syntax::Reading& line) {
        const auto reason = reader_.text(line.reason);
        if (reason.find_first_not_of(' ') == std::string_view::npos)
            reader_.report(Kind::reading_without_reason, reader_.statement_span(), {reader_.text(line.said)});
        page_.readings.push_back({reader_.text(line.said), reason, reader_.place(reader_.statement_span())});
        return true;
    }
    template <class Other>
    bool take(const Other&) {
        return false;
    }

    void once(std::string_view& into, std::string_view text, std::string_view word) {
        if (!into.empty()) reader_.report(Kind::said_twice, reader_.statement_span(), {word});
        into = text;
    }

    Reader& reader_;
    const Block& block_;
    PrintedPage& page_;
};

}  // namespace

void read_printed(BlockContext context, PrintedPage& page) {
    PageReader(context, page).run();
}

}  // namespace scruple::check
