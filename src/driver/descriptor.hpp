// SPDX-License-Identifier: MIT
// A file descriptor that closes itself.
#pragma once

#include <unistd.h>

#include <utility>

namespace scruple::driver {

class Descriptor {
  public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() { close(); }

    explicit operator bool() const { return number_ >= 0; }
    [[nodiscard]] int number() const { return number_; }

    /// False where closing brings an error of an earlier write to light.
    bool close() {
        const int number = std::exchange(number_, -1);
        return number < 0 || ::close(number) == 0;
    }

    void reset(int number) {
        close();
        number_ = number;
    }

  private:
    int number_;
};

}  // namespace scruple::driver
