// SPDX-License-Identifier: MIT
#include "workspace.hpp"

#include <algorithm>

#include "scruple/syntax/parse.hpp"
#include "uri.hpp"

namespace scruple::server {
namespace {

/// Neighbours of an edit that are checked with it; more of them wait.
constexpr std::size_t at_once = 16;
/// Files of one piece of what waits: a few milliseconds.
constexpr std::size_t a_piece = 48;

std::set<std::string> defined(const Names& names) {
    std::set<std::string> keys;
    for (const Occurrence& it : names.all)
        if (it.defines) keys.insert(it.key);
    return keys;
}

bool is_unknown(const diagnostics::Diagnostic& d) {
    using enum diagnostics::Kind;
    return d.kind == unknown_name || d.kind == unknown_process || d.kind == unknown_supplier || d.kind == which_section;
}

}  // namespace

Workspace::Workspace() {
    for (const text::Source& source : driver::library()) {
        const FileNumber number = add(source);
        files_[number]->uri.clear();
        parse(number);
    }
    built_in_ = files_.size();
}

FileNumber Workspace::add(text::Source source) {
    const auto number = static_cast<FileNumber>(files_.size());
    numbers_[source.path] = number;
    auto file = std::make_unique<File>();
    file->uri = uri_of(source.path);
    file->source = std::move(source);
    files_.push_back(std::move(file));
    return number;
}

std::string Workspace::read(const std::filesystem::path& folder) {
    auto loaded = driver::load(folder);
    if (const auto* trouble = std::get_if<driver::Trouble>(&loaded)) return trouble->message;
    auto& all = std::get<driver::Loaded>(loaded);
    std::vector<FileNumber> numbers;
    for (std::size_t i = 0; i < all.sources.size(); ++i) {
        const auto known = i < all.built_in ? std::optional(static_cast<FileNumber>(i)) : find(all.sources[i].path);
        numbers.push_back(known ? *known : add(std::move(all.sources[i])));
        if (known) continue;
        File& file = *files_[numbers.back()];
        file.tree = std::move(all.trees[i]);
        file.names = names_of(file.source, *file.tree);
        index_.add(numbers.back(), file.names);
    }
    for (diagnostics::Diagnostic& d : all.checked.diagnostics) {
        if (d.file >= numbers.size()) continue;
        d.file = numbers[d.file];
        for (diagnostics::Related& related : d.related) related.file = numbers[related.file];
        File& file = *files_[d.file];
        if (d.kind == diagnostics::Kind::not_text || d.kind == diagnostics::Kind::text_too_large) {
            file.fault = d;
            file.whole = file.source.bytes;
        }
        untold_.insert(d.file);
        file.found.push_back(std::move(d));
    }
    return {};
}

std::optional<FileNumber> Workspace::find(const std::string& path) const {
    const auto found = numbers_.find(path);
    return found == numbers_.end() ? std::nullopt : std::optional(found->second);
}

// ---- edits ----

void Workspace::parse(FileNumber number) {
    File& file = *files_[number];
    file.tree = file.fault ? syntax::Tree{} : syntax::parse(file.source);
    file.names = names_of(file.source, *file.tree);
    index_.add(number, file.names);
}

void Workspace::take_text(FileNumber number, std::string text) {
    File& file = *files_[number];
    std::string whole = text;
    driver::RecipeFile read = driver::recipe_file_of({file.source.path, std::move(text)});
    index_.remove(number, file.names);
    const Names before = std::move(file.names);
    file.source = std::move(read.source);
    file.fault = std::move(read.fault);
    // The editor goes on from its own text, whatever of it can be read.
    file.whole = file.fault ? std::move(whole) : std::string();
    parse(number);
    seen_in_view_.clear();
    edited_.insert(number);
    queue_neighbours(number, before);
}

void Workspace::open(const std::string& path, std::int64_t version, std::string text) {
    const auto known = find(path);
    const FileNumber number = known ? *known : add({path, {}});
    File& file = *files_[number];
    file.open = true;
    file.gone = false;
    file.version = version;
    untold_.insert(number);
    if (file.source.bytes != text || !known || file.fault) take_text(number, std::move(text));
}

void Workspace::edit(FileNumber number, std::int64_t version, const std::vector<Edit>& edits) {
    File& file = *files_[number];
    std::string text = file.text();
    for (const Edit& edit : edits) {
        if (!edit.range) {
            text = edit.text;
            continue;
        }
        const text::Span span = Positions(text).span(*edit.range);
        text.replace(span.begin, span.end - span.begin, edit.text);
    }
    file.version = version;
    take_text(number, std::move(text));
}

void Workspace::close(FileNumber number) {
    File& file = *files_[number];
    file.open = false;
    file.version.reset();
    look_again(file.source.path);
}

void Workspace::look_again(const std::string& path) {
    const auto known = find(path);
    if (known && files_[*known]->open) return;
    auto read = driver::read_recipe_file(path);
    const auto* file = std::get_if<driver::RecipeFile>(&read);
    if (file == nullptr) {
        if (!known) return;
        files_[*known]->gone = true;
        take_text(*known, {});
        return;
    }
    const FileNumber number = known ? *known : add({path, {}});
    files_[number]->gone = false;
    if (!known || files_[number]->source.bytes != file->source.bytes) take_text(number, file->source.bytes);
}

/// What may be judged otherwise after the edit goes into the queue.
void Workspace::queue_neighbours(FileNumber number, const Names& before) {
    const Names& after = files_[number]->names;
    if (before.global || after.global) return queue_everything();
    const auto old_keys = defined(before), new_keys = defined(after);
    const auto wait = [&](FileNumber other) {
        if (other != number && other >= built_in_ && is_waiting_.insert(other).second) waiting_.push_back(other);
    };
    // What it holds goes on from solution to solution.
    std::set<FileNumber> seen{number};
    std::vector<std::string> keys(old_keys.begin(), old_keys.end());
    keys.insert(keys.end(), new_keys.begin(), new_keys.end());
    while (!keys.empty()) {
        const std::string key = std::move(keys.back());
        keys.pop_back();
        for (const FileNumber other : index_.using_it(key)) {
            if (!seen.insert(other).second) continue;
            wait(other);
            for (const std::string& next : defined(files_[other]->names)) keys.push_back(next);
        }
    }
    if (old_keys == new_keys) return;
    std::set<std::string> moved;
    std::ranges::set_symmetric_difference(old_keys, new_keys, std::inserter(moved, moved.end()));
    for (const std::string& key : moved) {
        for (const FileNumber other : index_.defining(key)) wait(other);
        for (const std::string& meaning : meanings_of(key))
            for (const FileNumber other : index_.listing(meaning)) wait(other);
    }
    for (FileNumber other = 0; other < files_.size(); ++other)
        if (std::ranges::any_of(files_[other]->found, is_unknown)) wait(other);
}

void Workspace::queue_everything() {
    for (auto number = static_cast<FileNumber>(built_in_); number < files_.size(); ++number)
        if (is_waiting_.insert(number).second) waiting_.push_back(number);
}

// ---- checks ----

void Workspace::settle() {
    if (edited_.empty()) return;
    std::vector<FileNumber> those(edited_.begin(), edited_.end());
    edited_.clear();
    check(those);
    if (waiting_.size() <= at_once) check_some_more();
}

void Workspace::check_some_more() {
    std::vector<FileNumber> piece;
    while (!waiting_.empty() && piece.size() < a_piece) {
        piece.push_back(waiting_.front());
        is_waiting_.erase(waiting_.front());
        waiting_.pop_front();
    }
    if (!piece.empty()) check(piece);
}

std::set<FileNumber> Workspace::needed_for(const std::vector<FileNumber>& those) const {
    std::set<FileNumber> needed(those.begin(), those.end());
    std::vector<FileNumber> open(those.begin(), those.end());
    const auto take = [&](FileNumber file) {
        if (file >= built_in_ && needed.insert(file).second) open.push_back(file);
    };
    for (const FileNumber file : index_.global_files()) take(file);
    while (!open.empty()) {
        const FileNumber next = open.back();
        open.pop_back();
        for (const Occurrence& it : files_[next]->names.all)
            for (const std::string& meaning : meanings_of(it.key))
                for (const FileNumber file : index_.defining(meaning)) take(file);
    }
    return needed;
}

void Workspace::make_view(const std::set<FileNumber>& needed) {
    std::vector<FileNumber> in_order(needed.begin(), needed.end());
    std::ranges::sort(in_order, {},
                      [this](FileNumber file) { return std::filesystem::path(files_[file]->source.path); });
    view_.check(files_, in_order);
    seen_in_view_ = needed;
}

/// Files with the names that are nearest to ones that mean nothing, so that they can be proposed.
std::vector<FileNumber> Workspace::suggested(const std::vector<FileNumber>& those) {
    std::vector<FileNumber> files;
    const auto& loaded = view_.loaded();
    for (const diagnostics::Diagnostic& d : loaded.checked.diagnostics) {
        if (!is_unknown(d) || std::ranges::find(those, view_.file_of(d.file)) == those.end()) continue;
        const std::string_view written = loaded.sources[d.file].at(d.span);
        const Space space = d.kind == diagnostics::Kind::unknown_process    ? Space::process
                            : d.kind == diagnostics::Kind::unknown_supplier ? Space::supplier
                                                                            : Space::substance;
        const std::string key = key_of(space, written);
        std::vector<std::string> near;
        index_.each_defined([&](const std::string& name) {
            const std::size_t longer = std::max(name.size(), key.size()), shorter = std::min(name.size(), key.size());
            if (name.front() == key.front() && longer - shorter <= 6) near.push_back(name.substr(1));
        });
        const std::string best =
            diagnostics::nearest(key.substr(1), std::vector<std::string_view>(near.begin(), near.end()));
        if (best.empty()) continue;
        for (const FileNumber file : index_.defining(key.front() + best))
            if (!seen_in_view_.contains(file) && file >= built_in_) files.push_back(file);
    }
    return files;
}

void Workspace::check(const std::vector<FileNumber>& those) {
    std::set<FileNumber> needed = needed_for(those);
    make_view(needed);
    if (const auto more = suggested(those); !more.empty()) {
        std::vector<FileNumber> all(needed.begin(), needed.end());
        all.insert(all.end(), more.begin(), more.end());
        make_view(needed_for(all));
    }
    take_found({those.begin(), those.end()});
}

void Workspace::take_found(const std::set<FileNumber>& those) {
    for (const FileNumber number : those) {
        File& file = *files_[number];
        file.found.clear();
        untold_.insert(number);
        if (!file.fault) continue;
        file.found.push_back(*file.fault);
        file.found.back().file = number;
    }
    for (const diagnostics::Diagnostic& d : view_.loaded().checked.diagnostics) {
        const FileNumber number = view_.file_of(d.file);
        if (!those.contains(number)) continue;
        diagnostics::Diagnostic taken = d;
        taken.file = number;
        for (diagnostics::Related& related : taken.related) related.file = view_.file_of(related.file);
        files_[number]->found.push_back(std::move(taken));
    }
}

View& Workspace::view_of(FileNumber file) {
    settle();
    if (!seen_in_view_.contains(file)) make_view(needed_for({file}));
    return view_;
}

}  // namespace scruple::server
