// SPDX-License-Identifier: MIT
// An optional that costs one word where it is empty: for what few lines say.
#pragma once

#include <memory>
#include <optional>
#include <utility>

namespace scruple::check {

/// Behaves as std::optional<T>, but holds its value on the heap. Copies deep; a moved-from one is empty.
template <class T>
class Seldom {
  public:
    Seldom() = default;
    Seldom(std::nullopt_t) {}                                           // NOLINT(google-explicit-constructor)
    Seldom(T value) : value_(std::make_unique<T>(std::move(value))) {}  // NOLINT(google-explicit-constructor)
    Seldom(std::optional<T> value) {                                    // NOLINT(google-explicit-constructor)
        if (value) value_ = std::make_unique<T>(*std::move(value));
    }
    Seldom(const Seldom& other) : value_(other ? std::make_unique<T>(*other) : nullptr) {}
    Seldom(Seldom&&) noexcept = default;
    Seldom& operator=(Seldom other) noexcept {
        value_.swap(other.value_);
        return *this;
    }
    ~Seldom() = default;

    operator std::optional<T>() const {  // NOLINT(google-explicit-constructor)
        return value_ ? std::optional<T>(*value_) : std::nullopt;
    }
    [[nodiscard]] bool has_value() const { return value_ != nullptr; }
    explicit operator bool() const { return has_value(); }
    const T& operator*() const { return *value_; }
    T& operator*() { return *value_; }
    const T* operator->() const { return value_.get(); }
    T* operator->() { return value_.get(); }
    [[nodiscard]] T value_or(T other) const { return value_ ? *value_ : std::move(other); }
    void reset() { value_.reset(); }
    friend bool operator==(const Seldom& a, const Seldom& b) { return a && b ? *a == *b : !a && !b; }

  private:
    std::unique_ptr<T> value_;
};

}  // namespace scruple::check
