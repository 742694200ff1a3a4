// SPDX-License-Identifier: MIT
// All cards of a workspace as pages of one folder, and the page that leads to them.
#include <fmt/format.h>

#include <cstdint>
#include <set>

#include "html.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/emit/words.hpp"

namespace scruple::emit {
namespace {

using html::element;
using html::Markup;

constexpr std::size_t longest_stem = 48;

/// FNV-1a, 32 bits wide (Internet-Draft draft-eastlake-fnv).
std::uint32_t digest_of(std::string_view name) {
    std::uint32_t digest = 0x811c9dc5;
    for (const char c : name) digest = (digest ^ static_cast<unsigned char>(c)) * 0x01000193;
    return digest;
}

/// `card-lantern-part-a`; what is no letter of A to Z and no digit becomes a hyphen. A name that this does not spell
/// has its digest behind, so that its file stays the same whichever other recipes come and go.
std::string stem_of(std::string_view name) {
    std::string stem = "card";
    bool apart = true, spelt = true;
    for (const char c : name) {
        const bool large = c >= 'A' && c <= 'Z';
        const bool kept = large || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        const bool room = stem.size() < longest_stem;
        if (kept && room) {
            if (apart) stem += '-';
            stem += large ? static_cast<char>(c | 0x20) : c;
        }
        spelt = spelt && (kept ? room : c == ' ' || c == ',');
        apart = !kept;
    }
    return spelt ? stem : fmt::format("{}-{:08x}", stem, digest_of(name));
}

std::string unused(const std::string& stem, std::set<std::string>& used) {
    std::string name = stem;
    for (int n = 2; !used.insert(name).second; ++n) name = fmt::format("{}-{}", stem, n);
    return name + ".html";
}

Markup takes(const plan::Card& card) {
    std::vector<std::string> names;
    for (const plan::Gathered& thing : card.gather) names.push_back(words::chemical(thing.chemical, thing.form));
    return element("p", words::listed(names));
}

Markup entry(const BinderPage& page) {
    Markup all = html::link(page.file_name, words::binder_entry(*page.card));
    if (const std::string subtitle = words::subtitle(*page.card); !subtitle.empty()) all += element("p", subtitle);
    all += takes(*page.card);
    return element("li", all);
}

Markup search() {
    Markup all = element("label", "for=\"wanted\"", "Search names, purposes and chemicals");
    all += Markup{"<input id=\"wanted\" type=\"search\" autocomplete=\"off\">\n"};
    all += element("p", "id=\"found\" role=\"status\"", Markup{});
    return element("div", "id=\"search\" hidden", all);
}

}  // namespace

std::vector<BinderPage> binder_pages(std::span<const plan::Card> cards) {
    std::vector<BinderPage> pages;
    std::set<std::string> used;
    for (const plan::Card& card : cards) pages.push_back({&card, unused(stem_of(words::binder_entry(card)), used)});
    return pages;
}

std::string binder_html(std::span<const BinderPage> pages, std::string_view pdf) {
    Markup all = element("h1", words::binder_title);
    all += element("p", html::link(pdf, "All of them on sheets to print"));
    all += search();
    Markup entries;
    for (const BinderPage& page : pages) entries += entry(page);
    all += element("ul", "class=\"binder\"", entries);
    return html::page(words::binder_title, element("main", all), html::search_script);
}

}  // namespace scruple::emit
