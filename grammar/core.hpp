// SPDX-License-Identifier: MIT
// What the rules are made of: texts, characters, scanned runs, and a choice that looks at one byte.
#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <tao/pegtl.hpp>
#include <tao/pegtl/contrib/analyze_traits.hpp>
#include <utility>

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
    static constexpr std::size_t size = N - 1;
    char bytes[N] = {};
    constexpr Fixed(const char (&text)[N]) { std::copy_n(text, N, bytes); }  // NOLINT(google-explicit-constructor)

    /// Where the word that begins at a byte ends. Not by string_view::find, which the
    /// undefined-behaviour sanitizer does not let the compiler evaluate.
    [[nodiscard]] constexpr std::size_t end_of_word(std::size_t begin) const {
        while (begin < size && bytes[begin] != ' ') ++begin;
        return begin;
    }
};

/// A place in the text: where it is, and where the text ends.
using Scan = const char* (*)(const char* from, const char* end);

/// A run of characters found by a function that returns where it ends, or null. `First` gives the bytes
/// it may begin with where that helps to choose, and `Nullable` says that it may be empty.
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
        constexpr auto stop = Text.end_of_word(Begin);
        constexpr auto length = stop - Begin;
        if (static_cast<std::size_t>(end - from) < length) return nullptr;
        if (!equal<Begin>(from, std::make_index_sequence<length>())) return nullptr;
        if constexpr (stop == Text.size) {
            return from + length;
        } else {
            const char* next = skip_gap(from + length, end);
            return next == from + length ? nullptr : read<stop + 1>(next, end);
        }
    }

    template <std::size_t Begin, std::size_t... Places>
    static bool equal(const char* from, std::index_sequence<Places...>) {
        return ((from[Places] == Text.bytes[Begin + Places]) && ...);
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
        const auto rest = static_cast<std::size_t>(in.end() - in.current());
        const auto length = length_at<0>(in.current(), rest);
        in.bump(length);
        return length != 0;
    }

  private:
    /// The bytes of the character that stands here, if it is the one at byte `Begin` of ours or a later one; else 0.
    template <std::size_t Begin>
    static std::size_t length_at(const char* from, std::size_t rest) {
        if constexpr (Begin < Characters.size) {
            constexpr auto length = length_of_character(Characters.bytes[Begin]);
            if (rest >= length && std::equal(from, from + length, Characters.bytes + Begin)) return length;
            return length_at<Begin + length>(from, rest);
        } else {
            return 0;
        }
    }
};

/// A set of bytes.
struct Bytes {
    std::array<std::uint64_t, 4> bits{};

    [[nodiscard]] constexpr bool holds(unsigned byte) const { return (bits[byte / 64] >> (byte % 64) & 1) != 0; }
    constexpr void insert(char byte) {
        const auto place = static_cast<unsigned char>(byte);
        bits[place / 64] |= std::uint64_t{1} << (place % 64);
    }
    constexpr Bytes& operator|=(const Bytes& other) {
        for (std::size_t i = 0; i < bits.size(); ++i) bits[i] |= other.bits[i];
        return *this;
    }
    [[nodiscard]] static constexpr Bytes all() {
        Bytes bytes;
        bytes.bits.fill(~std::uint64_t{0});
        return bytes;
    }
};

/// What a rule may begin with: sets of bytes that what it takes lies in, for the first few places. A rule
/// that may match nothing, or less than that, sets no bounds there.
struct Lead {
    static constexpr std::size_t places = 3;
    std::array<Bytes, places> at{};
    bool nullable = false;

    constexpr Lead& operator|=(const Lead& other) {
        for (std::size_t i = 0; i < places; ++i) at[i] |= other.at[i];
        nullable = nullable || other.nullable;
        return *this;
    }
    /// Begins with a byte of this set; what comes after is not known.
    [[nodiscard]] static constexpr Lead with(const Bytes& first) {
        auto lead = anything(false);
        lead.at[0] = first;
        return lead;
    }
    [[nodiscard]] static constexpr Lead anything(bool nullable) {
        Lead lead;
        lead.at.fill(Bytes::all());
        lead.nullable = nullable;
        return lead;
    }
};

template <class Rule>
struct lead_of;

template <class Rule>
inline constexpr Lead lead = lead_of<typename Rule::rule_t>::value();

template <class... Rules>
constexpr Lead lead_of_any() {
    Lead all;
    ((all |= lead<Rules>), ...);
    return all;
}

template <class Rule, class... Rest>
constexpr Lead lead_of_sequence() {
    Lead all = lead<Rule>;
    if constexpr (sizeof...(Rest) > 0 && lead<Rule>.nullable) {
        all.nullable = false;
        all |= lead_of_sequence<Rest...>();
    }
    return all;
}

/// For each place and byte there, and for the end of the text, a bit for each rule that may match.
template <class... Rules>
class Candidates {
  public:
    [[nodiscard]] static std::uint64_t at(const char* from, const char* end) {
        const auto first = table[0][from == end ? end_of_text : static_cast<unsigned char>(*from)];
        return first & at_place<1>(from, end) & at_place<2>(from, end);
    }

  private:
    static_assert(sizeof...(Rules) <= 64 && Lead::places == 3);
    static constexpr unsigned end_of_text = 256;
    static constexpr std::uint64_t every = ~std::uint64_t{0} >> (64 - sizeof...(Rules));
    using Table = std::array<std::array<std::uint64_t, 257>, Lead::places>;

    static constexpr void enter(Table& table, std::uint64_t bit, const Lead& lead) {
        for (std::size_t place = 0; place < Lead::places; ++place) {
            for (unsigned byte = 0; byte < end_of_text; ++byte) {
                if (lead.nullable || lead.at[place].holds(byte)) table[place][byte] |= bit;
            }
        }
        if (lead.nullable) table[0][end_of_text] |= bit;
    }

    static constexpr Table table = [] {
        Table all{};
        std::uint64_t bit = 1;
        ((enter(all, bit, lead<Rules>), bit <<= 1), ...);
        return all;
    }();

    /// Whether the byte at a place rules anything out.
    static constexpr bool tells(std::size_t place) {
        return std::any_of(table[place].begin(), table[place].begin() + end_of_text,
                           [](std::uint64_t rules) { return rules != every; });
    }

    template <std::size_t Place>
    static std::uint64_t at_place(const char* from, const char* end) {
        if constexpr (tells(Place)) {
            return end - from > std::ptrdiff_t{Place} ? table[Place][static_cast<unsigned char>(from[Place])] : every;
        } else {
            return every;
        }
    }
};

template <class... Rules>
struct choice;

/// The choice that a rule begins with, if it begins with one; a rule can only match where its head can.
template <class Rule>
struct head_of {
    static bool may_match(const char*, const char*) { return true; }
};
template <class... Rules>
struct head_of<choice<Rules...>> {
    static bool may_match(const char* from, const char* end) { return Candidates<Rules...>::at(from, end) != 0; }
};
template <class Rule, class... Rest>
struct head_of<tao::pegtl::internal::seq<Rule, Rest...>>
    : std::conditional_t<lead<Rule>.nullable, head_of<void>, head_of<typename Rule::rule_t>> {};

/// One choice of several, in order, passing over those that cannot begin with the bytes that stand here.
template <class... Rules>
struct choice {
    using rule_t = choice;
    using subs_t = tao::pegtl::type_list<Rules...>;

    template <tao::pegtl::apply_mode A, tao::pegtl::rewind_mode, template <class...> class Action,
              template <class...> class Control, class Input, class... States>
    [[nodiscard]] static bool match(Input& in, States&&... states) {
        const auto left = Candidates<Rules...>::at(in.current(), in.end());
        if (left == 0) return false;
        if constexpr (sizeof...(Rules) <= few) {
            return try_few<A, Action, Control>(left, std::index_sequence_for<Rules...>(), in, states...);
        } else {
            return try_many<A, Action, Control>(left, in, states...);
        }
    }

  private:
    static constexpr std::size_t few = 8;

    template <class Rule, tao::pegtl::apply_mode A, template <class...> class Action, template <class...> class Control,
              class Input, class... States>
    static bool try_one(Input& in, States&... states) {
        if (!head_of<typename Rule::rule_t>::may_match(in.current(), in.end())) return false;
        return Control<Rule>::template match<A, tao::pegtl::rewind_mode::required, Action, Control>(in, states...);
    }

    template <tao::pegtl::apply_mode A, template <class...> class Action, template <class...> class Control,
              std::size_t... Places, class Input, class... States>
    static bool try_few(std::uint64_t left, std::index_sequence<Places...>, Input& in, States&... states) {
        return (((left >> Places & 1) != 0 && try_one<Rules, A, Action, Control>(in, states...)) || ...);
    }

    template <tao::pegtl::apply_mode A, template <class...> class Action, template <class...> class Control,
              class Input, class... States>
    static bool try_many(std::uint64_t left, Input& in, States&... states) {
        using Try = bool (*)(Input&, States & ...);
        static constexpr std::array<Try, sizeof...(Rules)> tries = {
            [](Input& i, States&... s) { return try_one<Rules, A, Action, Control>(i, s...); }...};
        for (; left != 0; left &= left - 1) {
            if (tries[static_cast<std::size_t>(std::countr_zero(left))](in, states...)) return true;
        }
        return false;
    }
};

/// One of these texts.
template <Fixed... Texts>
struct any_of : choice<lit<Texts>...> {};

// ---- what each kind of rule may begin with ---------------------------------------------------

template <Fixed Text>
struct lead_of<lit<Text>> {
    static constexpr Lead value() {
        auto lead = Lead::anything(false);
        const auto known = std::min(Text.end_of_word(0), Lead::places);
        for (std::size_t i = 0; i < known; ++i) {
            lead.at[i] = {};
            lead.at[i].insert(Text.bytes[i]);
        }
        return lead;
    }
};

template <Fixed Characters>
struct lead_of<one_of<Characters>> {
    static constexpr Lead value() {
        Bytes first;
        for (std::size_t i = 0; i < Characters.size; i += length_of_character(Characters.bytes[i])) {
            first.insert(Characters.bytes[i]);
        }
        return Lead::with(first);
    }
};

template <Scan Run, Fixed First, bool Nullable>
struct lead_of<scanned<Run, First, Nullable>> {
    static constexpr Lead value() {
        Bytes first;
        for (std::size_t i = 0; i < First.size; ++i) first.insert(First.bytes[i]);
        auto lead = Lead::with(First.size == 0 ? Bytes::all() : first);
        lead.nullable = Nullable;
        return lead;
    }
};

template <class... Rules>
struct lead_of<choice<Rules...>> {
    static constexpr Lead value() { return lead_of_any<Rules...>(); }
};

template <class... Rules>
struct lead_of<tao::pegtl::internal::sor<Rules...>> {
    static constexpr Lead value() { return lead_of_any<Rules...>(); }
};

template <class... Rules>
struct lead_of<tao::pegtl::internal::seq<Rules...>> {
    static constexpr Lead value() { return lead_of_sequence<Rules...>(); }
};

template <class Rule>
struct lead_of<tao::pegtl::internal::plus<Rule>> {
    static constexpr Lead value() { return lead<Rule>; }
};

template <unsigned Times, class... Rules>
struct lead_of<tao::pegtl::internal::rep<Times, Rules...>> {
    static constexpr Lead value() { return lead_of_sequence<Rules...>(); }
};

template <class Stop, class Rule>
struct lead_of<tao::pegtl::internal::until<Stop, Rule>> {
    static constexpr Lead value() { return lead_of_any<Stop, Rule>(); }
};

template <class Rule>
struct lead_of<tao::pegtl::internal::opt<Rule>> {
    static constexpr Lead value() {
        auto all = lead<Rule>;
        all.nullable = true;
        return all;
    }
};
template <class Rule>
struct lead_of<tao::pegtl::internal::star<Rule>> : lead_of<tao::pegtl::internal::opt<Rule>> {};

/// A look ahead takes nothing, and sets no bounds on what follows it.
struct lead_of_look {
    static constexpr Lead value() {
        Lead none;
        none.nullable = true;
        return none;
    }
};
template <class Rule>
struct lead_of<tao::pegtl::internal::at<Rule>> : lead_of_look {};
template <class Rule>
struct lead_of<tao::pegtl::internal::not_at<Rule>> : lead_of_look {};
template <>
struct lead_of<tao::pegtl::internal::eof> : lead_of_look {};

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
