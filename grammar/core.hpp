// SPDX-License-Identifier: MIT
// What the rules are made of: texts, characters, scanned runs, and a choice that looks at one byte.
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <cstring>
#include <string_view>
#include <tao/pegtl.hpp>
#include <tao/pegtl/contrib/analyze_traits.hpp>

namespace scruple::grammar {

using tao::pegtl::at;
using tao::pegtl::eof;
using tao::pegtl::not_at;
using tao::pegtl::opt;
using tao::pegtl::plus;
using tao::pegtl::seq;
using tao::pegtl::sor;
using tao::pegtl::star;
using tao::pegtl::until;

/// A text that can be a template argument.
template <std::size_t N>
struct Fixed {
    char bytes[N] = {};
    constexpr Fixed(const char (&text)[N]) { std::copy_n(text, N, bytes); }  // NOLINT(google-explicit-constructor)
    [[nodiscard]] constexpr std::string_view view() const { return {bytes, N - 1}; }
};

/// A place in the text: where it is, and where the text ends.
using Scan = const char* (*)(const char* from, const char* end);

/// A run of characters found by a function that returns where it ends, or null. `first` gives the bytes
/// it may begin with where that helps to choose, and `nullable` says that it may be empty.
template <Scan Run, Fixed First = "", bool Nullable = false>
struct scanned {
    using rule_t = scanned;
    using subs_t = tao::pegtl::empty_list;

    template <class Input>
    [[nodiscard]] static bool match(Input& in) {
        const char* end = Run(in.current(), in.end());
        if (end == nullptr) return false;
        in.bump(static_cast<std::size_t>(end - in.current()));
        return true;
    }
};

[[nodiscard]] constexpr const char* skip_gap(const char* from, const char* end) {
    while (from != end) {
        if (*from == ' ' || *from == '\t') {
            ++from;
        } else if (*from == '\xC2' && end - from > 1 && from[1] == '\xA0') {
            from += 2;
        } else {
            break;
        }
    }
    return from;
}

/// Exactly this text; a blank in it stands for a gap.
template <Fixed Text>
struct lit {
    using rule_t = lit;
    using subs_t = tao::pegtl::empty_list;

    template <class Input>
    [[nodiscard]] static bool match(Input& in) {
        const char* end = read<0>(in.current(), in.end());
        if (end == nullptr) return false;
        in.bump(static_cast<std::size_t>(end - in.current()));
        return true;
    }

  private:
    /// Reads the words of the text from the one that begins at byte `Begin`.
    template <std::size_t Begin>
    static const char* read(const char* from, const char* end) {
        constexpr auto text = Text.view();
        constexpr auto stop = std::min(text.find(' ', Begin), text.size());
        constexpr auto length = stop - Begin;
        if (static_cast<std::size_t>(end - from) < length || std::memcmp(from, Text.bytes + Begin, length) != 0) {
            return nullptr;
        }
        if constexpr (stop == text.size()) {
            return from + length;
        } else {
            const char* next = skip_gap(from + length, end);
            return next == from + length ? nullptr : read<stop + 1>(next, end);
        }
    }
};

[[nodiscard]] constexpr std::size_t length_of_character(char first) {
    const auto byte = static_cast<unsigned char>(first);
    return byte < 0x80 ? 1 : byte < 0xE0 ? 2 : byte < 0xF0 ? 3 : 4;
}

/// One of these characters, as UTF-8.
template <Fixed Characters>
struct one_of {
    using rule_t = one_of;
    using subs_t = tao::pegtl::empty_list;

    template <class Input>
    [[nodiscard]] static bool match(Input& in) {
        if (in.empty()) return false;
        const auto rest = static_cast<std::size_t>(in.end() - in.current());
        const auto length = std::min(length_of_character(*in.current()), rest);
        const std::string_view here(in.current(), length);
        for (auto all = Characters.view(); !all.empty(); all.remove_prefix(length_of_character(all[0]))) {
            if (all.substr(0, length_of_character(all[0])) != here) continue;
            in.bump(length);
            return true;
        }
        return false;
    }
};

/// The bytes that a rule may begin with; a rule that may match nothing can stand before any.
struct First {
    std::array<std::uint64_t, 4> bytes{};  ///< a bit for each
    bool nullable = false;

    [[nodiscard]] constexpr bool holds(unsigned byte) const { return (bytes[byte / 64] >> (byte % 64) & 1) != 0; }
    constexpr void insert(unsigned byte) { bytes[byte / 64] |= std::uint64_t{1} << (byte % 64); }
    constexpr First& operator|=(const First& other) {
        for (std::size_t i = 0; i < bytes.size(); ++i) bytes[i] |= other.bytes[i];
        nullable = nullable || other.nullable;
        return *this;
    }
};

template <class... Rules>
struct choice;

template <class Rule>
struct first_of;

template <class Rule>
inline constexpr First first = first_of<typename Rule::rule_t>::value();

template <class... Rules>
constexpr First first_of_any() {
    First all;
    ((all |= first<Rules>), ...);
    return all;
}

template <class Rule, class... Rest>
constexpr First first_of_sequence() {
    First all = first<Rule>;
    if constexpr (sizeof...(Rest) > 0) {
        if constexpr (first<Rule>.nullable) {
            all.nullable = false;
            all |= first_of_sequence<Rest...>();
        }
    }
    return all;
}

/// One choice of several, in order, passing over those that cannot begin with the byte that stands here.
template <class... Rules>
struct choice {
    using rule_t = choice;
    using subs_t = tao::pegtl::type_list<Rules...>;

    template <tao::pegtl::apply_mode A, tao::pegtl::rewind_mode, template <class...> class Action,
              template <class...> class Control, class Input, class... States>
    [[nodiscard]] static bool match(Input& in, States&&... states) {
        constexpr auto required = tao::pegtl::rewind_mode::required;
        using Try = bool (*)(Input&, States & ...);
        static constexpr std::array<Try, sizeof...(Rules)> tries = {[](Input& i, States&... s) {
            return Control<Rules>::template match<A, required, Action, Control>(i, s...);
        }...};
        const auto here = in.empty() ? end_of_text : static_cast<unsigned char>(*in.current());
        for (auto left = worth_trying[here]; left != 0; left &= left - 1) {
            if (tries[static_cast<std::size_t>(std::countr_zero(left))](in, states...)) return true;
        }
        return false;
    }

  private:
    static_assert(sizeof...(Rules) <= 64);
    static constexpr unsigned end_of_text = 256;

    /// For each byte, and for the end of the text, a bit for each rule that may begin there.
    static constexpr std::array<std::uint64_t, 257> worth_trying = [] {
        std::array<std::uint64_t, 257> all{};
        std::uint64_t rule = 1;
        const auto add = [&](const First& first) {
            for (unsigned byte = 0; byte < end_of_text; ++byte) {
                if (first.nullable || first.holds(byte)) all[byte] |= rule;
            }
            if (first.nullable) all[end_of_text] |= rule;
            rule <<= 1;
        };
        (add(first<Rules>), ...);
        return all;
    }();
};

/// One of these texts.
template <Fixed... Texts>
struct any_of : choice<lit<Texts>...> {};

// ---- the first bytes of each kind of rule ----------------------------------------------------

constexpr First first_bytes(std::string_view bytes) {
    First all;
    for (const char byte : bytes) all.insert(static_cast<unsigned char>(byte));
    return all;
}

template <Fixed Text>
struct first_of<lit<Text>> {
    static constexpr First value() { return first_bytes(Text.view().substr(0, 1)); }
};

template <Fixed Characters>
struct first_of<one_of<Characters>> {
    static constexpr First value() {
        First all;
        for (auto rest = Characters.view(); !rest.empty(); rest.remove_prefix(length_of_character(rest[0]))) {
            all |= first_bytes(rest.substr(0, 1));
        }
        return all;
    }
};

template <Scan Run, Fixed Bytes, bool Nullable>
struct first_of<scanned<Run, Bytes, Nullable>> {
    static constexpr First value() {
        First all = first_bytes(Bytes.view());
        if (Bytes.view().empty()) all.bytes.fill(~std::uint64_t{0});
        all.nullable = Nullable;
        return all;
    }
};

template <class... Rules>
struct first_of<choice<Rules...>> {
    static constexpr First value() { return first_of_any<Rules...>(); }
};

template <class... Rules>
struct first_of<tao::pegtl::internal::sor<Rules...>> {
    static constexpr First value() { return first_of_any<Rules...>(); }
};

template <class... Rules>
struct first_of<tao::pegtl::internal::seq<Rules...>> {
    static constexpr First value() { return first_of_sequence<Rules...>(); }
};

template <class Rule>
struct first_of<tao::pegtl::internal::plus<Rule>> {
    static constexpr First value() { return first<Rule>; }
};

template <unsigned Times, class... Rules>
struct first_of<tao::pegtl::internal::rep<Times, Rules...>> {
    static constexpr First value() { return first_of_sequence<Rules...>(); }
};

template <class Rule>
struct first_of<tao::pegtl::internal::opt<Rule>> {
    static constexpr First value() {
        auto all = first<Rule>;
        all.nullable = true;
        return all;
    }
};

template <class Rule>
struct first_of<tao::pegtl::internal::star<Rule>> : first_of<tao::pegtl::internal::opt<Rule>> {};

template <class Stop, class Rule>
struct first_of<tao::pegtl::internal::until<Stop, Rule>> {
    static constexpr First value() { return first_of_any<Stop, Rule>(); }
};

template <class Rule>
struct first_of<tao::pegtl::internal::at<Rule>> {
    static constexpr First value() { return {.bytes = {}, .nullable = true}; }
};

template <class Rule>
struct first_of<tao::pegtl::internal::not_at<Rule>> : first_of<tao::pegtl::internal::at<Rule>> {};

template <>
struct first_of<tao::pegtl::internal::eof> {
    static constexpr First value() { return {.bytes = {}, .nullable = true}; }
};

}  // namespace scruple::grammar

// ---- what `analyze` needs to know ------------------------------------------------------------

namespace tao::pegtl {

template <class Name, scruple::grammar::Scan Run, scruple::grammar::Fixed First, bool Nullable>
struct analyze_traits<Name, scruple::grammar::scanned<Run, First, Nullable>>
    : std::conditional_t<Nullable, analyze_opt_traits<>, analyze_any_traits<>> {};

template <class Name, scruple::grammar::Fixed Text>
struct analyze_traits<Name, scruple::grammar::lit<Text>> : analyze_any_traits<> {};

template <class Name, scruple::grammar::Fixed Characters>
struct analyze_traits<Name, scruple::grammar::one_of<Characters>> : analyze_any_traits<> {};

template <class Name, class... Rules>
struct analyze_traits<Name, scruple::grammar::choice<Rules...>> : analyze_sor_traits<Rules...> {};

}  // namespace tao::pegtl
