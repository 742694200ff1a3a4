// SPDX-License-Identifier: MIT
// An optional and a vector that cost one word where they are empty: for what few lines say.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

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

/// Behaves as std::vector<T>, and stands for one where one is wanted. Copies deep; a moved-from one is empty.
template <class T>
class SeldomMany {
  public:
    using value_type = T;

    SeldomMany() = default;
    SeldomMany(const SeldomMany& other) : all_(other.all_ ? std::make_unique<std::vector<T>>(*other.all_) : nullptr) {}
    SeldomMany(SeldomMany&&) noexcept = default;
    SeldomMany& operator=(SeldomMany other) noexcept {
        all_.swap(other.all_);
        return *this;
    }
    ~SeldomMany() = default;

    operator const std::vector<T>&() const {  // NOLINT(google-explicit-constructor)
        static const std::vector<T> nothing;
        return all_ ? *all_ : nothing;
    }
    [[nodiscard]] bool empty() const { return size() == 0; }
    [[nodiscard]] std::size_t size() const { return all_ ? all_->size() : 0; }
    [[nodiscard]] const T* begin() const { return all_ ? all_->data() : nullptr; }
    [[nodiscard]] const T* end() const { return begin() + size(); }
    [[nodiscard]] T* begin() { return all_ ? all_->data() : nullptr; }
    [[nodiscard]] T* end() { return begin() + size(); }
    const T& operator[](std::size_t i) const { return (*all_)[i]; }
    [[nodiscard]] const T& front() const { return all_->front(); }

    void push_back(T value) { made().push_back(std::move(value)); }
    void resize(std::size_t count) {
        if (count != size()) made().resize(count);
    }

  private:
    std::vector<T>& made() {
        if (!all_) all_ = std::make_unique<std::vector<T>>();
        return *all_;
    }

    std::unique_ptr<std::vector<T>> all_;
};

}  // namespace scruple::check
