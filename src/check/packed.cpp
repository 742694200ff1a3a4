// SPDX-License-Identifier: MIT
#include "scruple/check/packed.hpp"

#include <charconv>
#include <cstring>
#include <map>
#include <stdexcept>

#include "fields.hpp"

namespace scruple::check {
namespace {

using Size = std::uint32_t;
/// In the place of a source's number: the text stands in the bytes themselves.
constexpr Size in_the_bytes = 0xFFFFFFFF;

template <class T>
concept Plain = std::is_arithmetic_v<T> || std::is_enum_v<T>;

class Packer {
  public:
    explicit Packer(std::span<const text::Source> sources) : sources_(sources) {}

    void operator()(const auto&... all) { (put(all), ...); }

    void nothing_in(const auto&... all) const {
        if (!(is_empty(all) && ...)) throw std::logic_error("this is no library: darkrooms have it in recipes alone");
    }

    std::string bytes;

  private:
    static bool is_empty(const auto& what) {
        if constexpr (requires { what.empty(); })
            return what.empty();
        else
            return !what.has_value();
    }

    static std::int64_t whole(const std::string& digits) {
        std::int64_t value = 0;
        const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
        if (error != std::errc()) throw std::logic_error("a word does not hold " + digits);
        return value;
    }

    void put_size(std::size_t size) { put(static_cast<Size>(size)); }

    template <Plain T>
    void put(const T& value) {
        bytes.append(reinterpret_cast<const char*>(&value), sizeof value);
    }
    void put(const Exact& value) {
        const std::string text = value.ratio_text();
        const std::size_t slash = text.find('/');
        put(whole(text.substr(0, slash)));
        put(slash == std::string::npos ? std::int64_t{1} : whole(text.substr(slash + 1)));
    }
    void put(const std::string& text) {
        put_size(text.size());
        bytes += text;
    }
    void put(std::string_view text) {
        for (std::size_t i = 0; i < sources_.size(); ++i) {
            const std::string_view source = sources_[i].bytes;
            if (text.data() < source.data() || text.data() > source.data() + source.size()) continue;
            put_size(i);
            put_size(static_cast<std::size_t>(text.data() - source.data()));
            put_size(text.size());
            return;
        }
        put(in_the_bytes);
        put(std::string(text));
    }
    template <class T>
    void put_optional(const T& value) {
        put(value.has_value());
        if (value) put(*value);
    }
    template <class T>
    void put(const std::optional<T>& value) {
        put_optional(value);
    }
    template <class T>
    void put(const Seldom<T>& value) {
        put_optional(value);
    }
    template <class... T>
    void put(const std::pair<T...>& pair) {
        (*this)(pair.first, pair.second);
    }
    void put(const Line& line) {
        put(static_cast<std::uint8_t>(line.index()));
        std::visit([this](const auto& one) { put(one); }, line);
    }
    /// In one order always, so that a build can be made again byte by byte.
    template <class Value>
    void put(const std::unordered_map<std::string, Value>& names) {
        put(std::map<std::string, Value>(names.begin(), names.end()));
    }
    template <class T>
    requires requires(const T& all) { all.begin(); }
    void put(const T& all) {
        put_size(all.size());
        for (const auto& one : all) put(one);
    }
    void put(const auto& one) { fields(*this, one); }

    std::span<const text::Source> sources_;
};

class Unpacker {
  public:
    Unpacker(std::string_view bytes, std::span<const text::Source> sources) : rest_(bytes), sources_(sources) {}

    void operator()(auto&... all) { (take(all), ...); }
    void nothing_in(const auto&...) const {}

  private:
    template <Plain T>
    void take(T& value) {
        std::memcpy(&value, rest_.data(), sizeof value);
        rest_.remove_prefix(sizeof value);
    }
    template <Plain T>
    T taken() {
        T value;
        take(value);
        return value;
    }
    void take(Exact& value) {
        const auto numerator = taken<std::int64_t>();
        value = {numerator, taken<std::int64_t>()};
    }
    std::string_view text_in_the_bytes() {
        const auto size = taken<Size>();
        const auto text = rest_.substr(0, size);
        rest_.remove_prefix(size);
        return text;
    }
    void take(std::string& text) { text = text_in_the_bytes(); }
    void take(std::string_view& text) {
        const auto source = taken<Size>();
        if (source == in_the_bytes) {
            text = text_in_the_bytes();
        } else {
            const auto begin = taken<Size>();
            text = std::string_view(sources_[source].bytes).substr(begin, taken<Size>());
        }
    }
    template <class T>
    void take_optional(auto& value) {
        if (!taken<bool>()) return;
        T inside;
        take(inside);
        value = std::move(inside);
    }
    template <class T>
    void take(std::optional<T>& value) {
        take_optional<T>(value);
    }
    template <class T>
    void take(Seldom<T>& value) {
        take_optional<T>(value);
    }
    template <class... T>
    void take(std::pair<T...>& pair) {
        (*this)(pair.first, pair.second);
    }
    template <class T>
    void take_line(Line& line) {
        take(line.emplace<T>());
    }
    void take(Line& line) {
        static constexpr decltype(&Unpacker::take_line<Addition>) kinds[] = {
            &Unpacker::take_line<Addition>, &Unpacker::take_line<Action>, &Unpacker::take_line<VesselMove>};
        static_assert(std::size(kinds) == std::variant_size_v<Line>);
        (this->*kinds[taken<std::uint8_t>()])(line);
    }
    template <class T>
    requires requires(T& all) { all.resize(1); }
    void take(T& all) {
        all.resize(taken<Size>());
        for (auto& one : all) take(one);
    }
    template <class Value>
    void take(std::unordered_map<std::string, Value>& names) {
        const auto size = taken<Size>();
        names.reserve(size);
        for (Size i = 0; i < size; ++i) {
            std::pair<std::string, Value> name;
            take(name);
            names.insert(std::move(name));
        }
    }
    void take(auto& one) { fields(*this, one); }

    std::string_view rest_;
    std::span<const text::Source> sources_;
};

}  // namespace

std::string packed(const Model& library, std::span<const text::Source> sources) {
    Packer packer(sources);
    packer(library);
    return std::move(packer.bytes);
}

Model unpacked(std::string_view bytes, std::span<const text::Source> sources) {
    Model model;
    Unpacker unpacker(bytes, sources);
    unpacker(model);
    return model;
}

}  // namespace scruple::check
