// SPDX-License-Identifier: MIT
// A conversation with the language server: each line is one message, sent with its length in front; a line that begins
// with `!` is sent as it stands. The first message, sent before all of them, opens no folder.
#include "scruple/server/server.hpp"

#include <fcntl.h>
#include <sys/mman.h>
#include <unistd.h>

#include <cstdint>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "demand.hpp"

namespace {

void send(std::string& stream, const std::string& body) {
    stream += "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + body;
}

std::string conversation(const std::string& input) {
    std::string stream;
    send(stream, R"({"id":"first","method":"initialize","params":{}})");
    std::istringstream lines(input);
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with('!'))
            stream += line.substr(1);
        else
            send(stream, line);
    }
    return stream;
}

/// A file in memory that is read from its beginning.
class Stream {
  public:
    explicit Stream(const std::string& bytes = {}) : file_(::memfd_create("stream", 0)) {
        fuzz::demand(::write(file_, bytes.data(), bytes.size()) == static_cast<ssize_t>(bytes.size()), "there is room");
        ::lseek(file_, 0, SEEK_SET);
    }
    Stream(const Stream&) = delete;
    Stream& operator=(const Stream&) = delete;
    ~Stream() { ::close(file_); }

    [[nodiscard]] int file() const { return file_; }
    [[nodiscard]] std::string bytes() const {
        std::string all(static_cast<std::size_t>(::lseek(file_, 0, SEEK_END)), '\0');
        const ssize_t count = ::pread(file_, all.data(), all.size(), 0);
        fuzz::demand(count == static_cast<ssize_t>(all.size()), "what was written is there");
        return all;
    }

  private:
    int file_;
};

/// What was said is messages, and each of them is JSON.
std::size_t messages_in(std::string_view said) {
    constexpr std::string_view before = "Content-Length: ", after = "\r\n\r\n";
    std::size_t count = 0;
    for (; !said.empty(); ++count) {
        const std::size_t head = said.find(after);
        fuzz::demand(said.starts_with(before) && head != std::string_view::npos, "a message has its length in front");
        const std::size_t length = std::stoul(std::string(said.substr(before.size(), head - before.size())));
        said.remove_prefix(head + after.size());
        fuzz::demand(length <= said.size(), "a message is whole");
        fuzz::demand_json("a message is JSON", said.substr(0, length));
        said.remove_prefix(length);
    }
    return count;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const Stream in(conversation({data, data + size})), out;
    const int status = scruple::server::serve(in.file(), out.file(), "1");
    fuzz::demand(status == 0 || status == 1, "it ends in one of two ways");
    fuzz::demand(messages_in(out.bytes()) > 0, "the first message is answered");
    return 0;
}
