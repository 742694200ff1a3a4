// SPDX-License-Identifier: MIT
#include "traced.hpp"

#include <map>
#include <tao/pegtl/contrib/analyze.hpp>
#include <type_traits>

#include "../../grammar/file.hpp"

namespace scruple::syntax {
namespace {

constexpr std::string_view prefix = "scruple::grammar::";

/// The name in the PEG text; empty for what has none: combinations, texts, sets.
template <class Rule>
constexpr std::string_view name_of() {
    const auto full = tao::pegtl::demangle<Rule>();
    if (!full.starts_with(prefix) || full.find('<') != std::string_view::npos) return {};
    return full.substr(prefix.size());
}

template <class Rule>
struct is_look : std::false_type {};
template <class... Rules>
struct is_look<tao::pegtl::internal::at<Rules...>> : std::true_type {};
template <class... Rules>
struct is_look<tao::pegtl::internal::not_at<Rules...>> : std::true_type {};

template <class Rule>
struct is_scanned : std::false_type {};
template <grammar::Scan Run, grammar::Fixed First, bool Nullable>
struct is_scanned<grammar::scanned<Run, First, Nullable>> : std::true_type {};

struct Trace {
    const char* base;
    std::vector<Taken> taken;
};

template <class Rule>
struct no_action : tao::pegtl::nothing<Rule> {};

template <class Rule>
struct tracing : tao::pegtl::normal<Rule> {
    template <tao::pegtl::apply_mode A, tao::pegtl::rewind_mode M, template <class...> class Action,
              template <class...> class Control, class Input>
    [[nodiscard]] static bool match(Input& in, Trace& trace) {
        const auto mark = trace.taken.size();
        const auto begin = static_cast<std::size_t>(in.current() - trace.base);
        const bool matched = tao::pegtl::normal<Rule>::template match<A, M, Action, Control>(in, trace);
        if (!matched || is_look<typename Rule::rule_t>::value) trace.taken.resize(mark);
        if constexpr (!name_of<Rule>().empty()) {
            const auto end = static_cast<std::size_t>(in.current() - trace.base);
            if (matched) trace.taken.push_back({name_of<Rule>(), begin, end});
        }
        return matched;
    }
};

template <class Rule>
void collect(std::map<std::string_view, RuleName>& found);

template <class... Rules>
void collect_all(std::map<std::string_view, RuleName>& found, tao::pegtl::type_list<Rules...>) {
    (collect<Rules>(found), ...);
}

/// Not `tao::pegtl::visit`, whose list of types takes the compiler the better part of a minute.
template <class Rule>
void collect(std::map<std::string_view, RuleName>& found) {
    const RuleName rule{name_of<Rule>(), is_scanned<typename Rule::rule_t>::value};
    if (found.emplace(tao::pegtl::demangle<Rule>(), rule).second) collect_all(found, typename Rule::subs_t());
}

}  // namespace

std::vector<Taken> trace(std::string_view text) {
    Trace trace{text.data(), {}};
    tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy> in(text.data(), text.size(), "");
    (void)tao::pegtl::parse<grammar::file, no_action, tracing>(in, trace);
    return std::move(trace.taken);
}

std::vector<RuleName> rule_names() {
    std::map<std::string_view, RuleName> found;
    collect<grammar::file>(found);
    std::vector<RuleName> names;
    for (const auto& [full, rule] : found) {
        if (!rule.name.empty()) names.push_back(rule);
    }
    return names;
}

std::size_t analysis_problems() {
    return tao::pegtl::analyze<grammar::file>(-1);
}

}  // namespace scruple::syntax
