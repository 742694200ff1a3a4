// SPDX-License-Identifier: MIT
#include <unistd.h>

#include "jobs.hpp"
#include "scruple/server/server.hpp"

namespace scruple::cli {

Outcome language_server_job(const Call& call) {
    if (!call.words.empty())
        throw Stop{Exit::wrong_call, "`scruple language-server` takes no words; the editor says the rest"};
    const int status = server::serve(STDIN_FILENO, STDOUT_FILENO, SCRUPLE_VERSION);
    return {status == 0 ? Exit::fine : Exit::faults, {}, {}};
}

}  // namespace scruple::cli
