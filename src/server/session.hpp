// SPDX-License-Identifier: MIT
// One client from its first message to its last.
#pragma once

#include <deque>

#include "wire.hpp"
#include "workspace.hpp"

namespace scruple::server {

class Session {
  public:
    Session(int in, int out, std::string_view version) : wire_(in, out), version_(version) {}

    int run();

  private:
    void wait_for_messages();
    void take(const std::string& body);
    void cancel(const Json& id);
    void handle(const Json& message);
    void answer(const Json& id, const std::string& method, const Json& params);
    void notice(const std::string& method, const Json& params);
    [[nodiscard]] Json result_of(const std::string& method, const Json& params);
    [[nodiscard]] Json initialize(const Json& params);
    void read_workspace();
    void watch_files();
    void open(const Json& params);
    void change(const Json& params);
    void close(const Json& params);
    void publish();
    void refuse(const Json& id, int code, const std::string& message);
    void tell(const std::string& method, Json params);

    Wire wire_;
    std::string version_;
    Workspace workspace_;
    std::deque<Json> messages_;
    std::string root_;
    enum class State : std::uint8_t { before, running, shut_down, over } state_ = State::before;
    bool vanished_ = false, can_watch_ = false;
};

}  // namespace scruple::server
