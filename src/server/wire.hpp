// SPDX-License-Identifier: MIT
// Messages on a stream: each with its length in front (the base protocol of LSP 3.17).
#pragma once

#include <nlohmann/json.hpp>
#include <string>

namespace scruple::server {

using Json = nlohmann::json;

class Wire {
  public:
    Wire(int in, int out) : in_(in), out_(out) {}

    enum class Arrival {
        message,
        malformed,  ///< a head without a length, passed over
        nothing,    ///< until the time was over
        closed      ///< the other side is gone, or sends what no head can be found in
    };
    /// Waits `milliseconds` at most; -1 for ever.
    [[nodiscard]] Arrival next(std::string& body, int milliseconds);

    void send(const Json& message);
    /// Whether nobody reads any more.
    [[nodiscard]] bool broken() const { return broken_; }

  private:
    [[nodiscard]] bool cut_message(std::string& body, Arrival& arrival);
    [[nodiscard]] bool fill(int milliseconds);

    int in_, out_;
    std::string buffer_;
    std::size_t begin_ = 0;  ///< of what has not been cut off yet
    bool closed_ = false, broken_ = false;
};

}  // namespace scruple::server
