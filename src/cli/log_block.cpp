// SPDX-License-Identifier: MIT
#include "log_block.hpp"

#include <algorithm>
#include <filesystem>

#include "call.hpp"

namespace scruple::cli {
namespace {

using driver::Loaded;
using syntax::Tree;

bool is_that_file(const Loaded& loaded, text::FileId id, const std::string& file) {
    std::error_code error;
    return std::filesystem::equivalent(loaded.sources[id].path, file, error);
}

bool is_log(const Tree& tree, std::uint32_t heading) {
    const auto* it = std::get_if<syntax::Heading>(&tree.statements[heading].node);
    return it != nullptr && it->block == syntax::Block::log;
}

/// The last that says something: comments behind it belong to what comes next.
std::uint32_t last_statement(const Tree& tree, std::uint32_t heading) {
    std::uint32_t last = heading;
    for (auto i = heading + 1; i < tree.statements.size(); ++i) {
        const auto& node = tree.statements[i].node;
        if (std::holds_alternative<syntax::Heading>(node)) break;
        if (!std::holds_alternative<syntax::CommentOnly>(node)) last = i;
    }
    return last;
}

std::vector<LogBlock> log_blocks(const Loaded& loaded, const std::optional<std::string>& file) {
    std::vector<LogBlock> blocks;
    for (auto id = static_cast<text::FileId>(loaded.built_in); id < loaded.asked; ++id) {
        if (file && !is_that_file(loaded, id, *file)) continue;
        for (const auto heading : loaded.trees[id]->headings)
            if (is_log(*loaded.trees[id], heading))
                blocks.push_back({id, heading, last_statement(*loaded.trees[id], heading), nullptr});
    }
    return blocks;
}

/// By day, so that the last line of a block comes last.
void find_latest_lines(const Loaded& loaded, std::vector<LogBlock>& blocks) {
    const auto before = [](const LogBlock& block, const check::Place& place) {
        return std::pair(block.file, block.first) < std::pair(place.file, place.statement);
    };
    for (const auto& entry : loaded.checked.model.log) {
        const auto next = std::partition_point(blocks.begin(), blocks.end(),
                                               [&](const LogBlock& block) { return before(block, entry.place); });
        if (next == blocks.begin()) continue;
        LogBlock& block = *(next - 1);
        if (block.file == entry.place.file && entry.place.statement <= block.last) block.latest = &entry;
    }
}

/// Where line and line end stand.
struct LineAt {
    std::size_t begin = 0, end = 0;
};

LineAt line_at(const Loaded& loaded, const LogBlock& block, std::uint32_t statement) {
    const std::string& bytes = loaded.sources[block.file].bytes;
    const auto offset = loaded.trees[block.file]->statements[statement].span.begin;
    const auto before = bytes.find_last_of("\r\n", offset);
    return {before == std::string::npos ? 0 : before + 1, std::min(bytes.find_first_of("\r\n", offset), bytes.size())};
}

std::string line_end_of(const std::string& bytes) {
    const auto at = bytes.find_first_of("\r\n");
    if (at == std::string::npos) return "\n";
    return bytes.compare(at, 2, "\r\n") == 0 ? "\r\n" : bytes.substr(at, 1);
}

std::size_t after_blanks(std::string_view line, std::size_t at) {
    return std::min(line.find_first_not_of(" \t", at), line.size());
}

std::string padded(std::string text, std::size_t width) {
    text.append(text.size() < width ? width - text.size() : 1, ' ');
    return text;
}

}  // namespace

LogBlock find_log_block(const Loaded& loaded, const std::optional<std::string>& file) {
    auto blocks = log_blocks(loaded, file);
    find_latest_lines(loaded, blocks);
    const auto day = [](const LogBlock& block) {
        return block.latest == nullptr ? std::optional<check::Day>() : std::optional(block.latest->day);
    };
    const auto latest = std::ranges::max_element(blocks, {}, day);
    if (latest != blocks.end()) return *latest;
    throw Stop{Exit::wrong_call,
               file ? "`--log " + *file + "` is no file of the workspace with a `log` in it"
                    : "no file has a `log` to write into; put the word `log` on a line of its own into one of them"};
}

std::string laid_out(const Loaded& loaded, const LogBlock& block, const NewLine& line) {
    std::string indent = "    ";
    std::size_t verb_at = 0, rest_at = 0;
    if (std::holds_alternative<syntax::LogEntry>(loaded.trees[block.file]->statements[block.last].node)) {
        const LineAt at = line_at(loaded, block, block.last);
        const auto model = std::string_view(loaded.sources[block.file].bytes).substr(at.begin, at.end - at.begin);
        const std::size_t date_at = after_blanks(model, 0);
        indent = model.substr(0, date_at);
        verb_at = after_blanks(model, date_at + line.date.size());
        const bool two_words = model.substr(verb_at).starts_with("on ");
        const std::size_t verb_end = model.find_first_of(" \t", verb_at + (two_words ? 3 : 0));
        if (verb_end != std::string_view::npos) rest_at = after_blanks(model, verb_end);
        verb_at -= date_at;
        rest_at -= std::min(rest_at, date_at);
    }
    const std::string laid = padded(padded(line.date, verb_at) + line.verb, rest_at) + line.rest;
    return indent + laid + (line.comment.empty() ? "" : "   # " + line.comment);
}

WithLine with_line(const Loaded& loaded, const LogBlock& block, const std::string& line) {
    const std::string& bytes = loaded.sources[block.file].bytes;
    const std::string line_end = line_end_of(bytes);
    const std::size_t at = line_at(loaded, block, block.last).end;
    WithLine result{bytes, 0};
    result.text.insert(at, line_end + line);
    if (at == bytes.size()) result.text += line_end;
    const text::Source written{loaded.sources[block.file].path, result.text};
    const auto offset = static_cast<std::uint32_t>(at + line_end.size());
    result.line_number = text::position_of(written, offset).line;
    return result;
}

}  // namespace scruple::cli
