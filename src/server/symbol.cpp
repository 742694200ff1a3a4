// SPDX-License-Identifier: MIT
#include "symbol.hpp"

#include <algorithm>

#include "scruple/syntax/normal.hpp"

namespace scruple::server {
namespace {

bool is_of_section(syntax::Block block) {
    using enum syntax::Block;
    return block == part || block == bath || block == working || block == replenisher;
}

const Occurrence* definition_in(const Names& names, const std::string& key) {
    for (const Occurrence& it : names.all)
        if (it.defines && it.key == key) return &it;
    return nullptr;
}

const Occurrence* definition_of(const Workspace& workspace, const std::string& key) {
    for (const FileNumber file : workspace.index().defining(key))
        if (const Occurrence* it = definition_in(workspace.file(file).names, key)) return it;
    return nullptr;
}

/// How much of what is written is the name `normal`; 0 where it does not begin so.
std::uint32_t length_of(std::string_view written, std::string_view normal) {
    for (std::size_t end = written.find(' ');; end = written.find(' ', end + 1)) {
        const std::string_view some = written.substr(0, end);
        if (syntax::normal_name(some) == normal) return static_cast<std::uint32_t>(some.size());
        if (end == std::string_view::npos) return 0;
    }
}

/// The label at the end of `Heron part A` or `part A`.
text::Span label_of(std::string_view written, text::Span span) {
    const std::size_t blank = written.rfind(' ');
    if (blank == std::string_view::npos) return span;
    return {span.begin + static_cast<std::uint32_t>(blank + 1), span.end};
}

class Places {
  public:
    Places(const Workspace& workspace, const Symbol& symbol, bool spelled_so) : workspace_(workspace), symbol_(symbol) {
        keys_.insert(symbol.key);
        if (!spelled_so) add_other_names();
    }

    std::vector<PlaceOfName> all() {
        std::set<FileNumber> files;
        for (const std::string& key : keys_)
            for (const auto* those : {&workspace_.index().defining(key), &workspace_.index().using_it(key),
                                      &workspace_.index().listing(key)})
                files.insert(those->begin(), those->end());
        for (const FileNumber file : files)
            if (!workspace_.file(file).uri.empty()) look_in(file);
        return std::move(all_);
    }

  private:
    void add_other_names() {
        if (const Occurrence* it = definition_of(workspace_, symbol_.key); it != nullptr && it->other_name)
            keys_.insert(it->of);
        std::set<std::string> more;
        for (const std::string& key : keys_)
            for (const FileNumber file : workspace_.index().defining(key))
                for (const Occurrence& it : workspace_.file(file).names.all)
                    if (it.other_name && keys_.contains(it.of)) more.insert(it.key);
        keys_.merge(more);
    }

    void look_in(FileNumber file) {
        const text::Source& source = workspace_.file(file).source;
        for (const Occurrence& it : workspace_.file(file).names.all) {
            const std::string_view written = source.at(it.span);
            if (keys_.contains(it.key))
                all_.push_back(
                    {file, symbol_.of_section && !it.defines ? label_of(written, it.span) : it.span, it.defines});
            else if (!it.defines && begins_with_it(it.key))
                add_beginning(file, it.span, written);
        }
    }

    /// `Heron part A` is a place of `Heron`, too.
    [[nodiscard]] bool begins_with_it(const std::string& key) const {
        const auto meanings = meanings_of(key);
        return std::ranges::find(meanings, symbol_.key) != meanings.end();
    }

    void add_beginning(FileNumber file, text::Span span, std::string_view written) {
        const std::uint32_t length = length_of(written, std::string_view(symbol_.key).substr(1));
        if (length > 0) all_.push_back({file, {span.begin, span.begin + length}, false});
    }

    const Workspace& workspace_;
    const Symbol& symbol_;
    std::set<std::string> keys_;
    std::vector<PlaceOfName> all_;
};

}  // namespace

std::optional<Symbol> symbol_at(const Workspace& workspace, const Asked& about) {
    const Occurrence* it = occurrence_at(*about.file, about.offset);
    if (it == nullptr) return std::nullopt;
    const std::string_view written = about.file->source.at(it->span);
    for (const std::string& meaning : meanings_of(it->key)) {
        const Occurrence* definition = definition_of(workspace, meaning);
        if (definition == nullptr) continue;
        Symbol symbol{meaning, false, is_of_section(definition->block), it->span};
        symbol.library = std::ranges::all_of(workspace.index().defining(meaning),
                                             [&](FileNumber file) { return workspace.file(file).uri.empty(); });
        const std::uint32_t begins = length_of(written, std::string_view(meaning).substr(1));
        const bool shorter = meaning != it->key && begins > 0;
        if (shorter) symbol.asked = {it->span.begin, it->span.begin + begins};
        // The recipe's name in front of a part is the recipe's.
        if (meaning == it->key && !it->defines && symbol.of_section) {
            const text::Span label = label_of(written, it->span);
            const auto meanings = meanings_of(it->key);
            const std::uint32_t front = length_of(written, std::string_view(meanings.back()).substr(1));
            if (meanings.size() > 1 && front > 0 && about.offset <= it->span.begin + front) continue;
            symbol.asked = label;
        }
        return symbol;
    }
    return std::nullopt;
}

std::vector<PlaceOfName> places_of(const Workspace& workspace, const Symbol& symbol, bool spelled_so) {
    return Places(workspace, symbol, spelled_so).all();
}

}  // namespace scruple::server
