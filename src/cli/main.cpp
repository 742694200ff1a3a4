// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <exception>
#include <filesystem>
#include <system_error>

#include "commands.hpp"
#include "jobs.hpp"
#include "screens.hpp"
#include "scruple/driver/driver.hpp"
#include "scruple/text/printable.hpp"
#include "terminal.hpp"

namespace scruple::cli {
namespace {

struct Job {
    std::string_view command;
    Outcome (*run)(const Call&);
};
constexpr Job jobs[] = {
    {"check", check_job},
    {"card", card_job},
    {"binder", binder_job},
    {"labels", labels_job},
    {"scaled", scaled_job},
    {"shopping", shopping_job},
    {"calendar", calendar_job},
    {"evening", evening_job},
    {"shelf", shelf_job},
    {"mixed", log_line_job},
    {"enter", log_line_job},
    {"tidy", tidy_job},
    {"chemical", chemical_job},
    {"weigh", weigh_job},
    {"react", react_job},
    {"settle", settle_job},
    {"contents", contents_job},
    {"compare", compare_job},
    {"language-server", language_server_job},
    {"why", why_job},
    {"help", help_job},
};

// Where the error stream cannot be written either, the exit status is all that is left to say.
void say_aside(std::string_view text) {
    static_cast<void>(write_all(Stream::aside, text));
}

Exit say(std::string_view text) {
    if (write_all(Stream::out, text)) return Exit::fine;
    say_aside(fmt::format("scruple: the output cannot be written: {}\n", std::generic_category().message(errno)));
    return Exit::trouble;
}

// Words of the caller and names of files are in it, and may hold anything.
std::string made_printable(std::string_view message) {
    std::string result;
    while (!message.empty()) {
        const std::string_view line = message.substr(0, message.find('\n'));
        result += text::printable(line) + "\n";
        message.remove_prefix(std::min(message.size(), line.size() + 1));
    }
    return result;
}

Exit stopped(const Stop& stop) {
    const bool is_page = stop.status == Exit::faults;
    say_aside(is_page ? stop.message + "\n" : "scruple: " + made_printable(stop.message));
    return stop.status;
}

/// Each whole or not at all; a folder that is not there is made.
Exit fill_folder(const std::filesystem::path& folder, const Outcome& outcome) {
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) return stopped({Exit::trouble, fmt::format("{}: cannot be made: {}", folder.string(), error.message())});
    for (const auto& [name, content] : outcome.files)
        if (const auto trouble = driver::write_whole(folder / name, content))
            return stopped({Exit::trouble, trouble->message});
    const Exit said = say(outcome.text);
    return said == Exit::fine ? outcome.status : said;
}

Exit hand_over(const Call& call, const Outcome& outcome) {
    say_aside(outcome.aside);
    if (!outcome.files.empty()) return fill_folder(*call.value("--out"), outcome);
    const auto file = call.value("--out");
    if (!file) {
        const Exit said = say(outcome.text);
        return said == Exit::fine ? outcome.status : said;
    }
    const auto trouble = driver::write_whole(*file, outcome.text);
    if (!trouble) return outcome.status;
    return stopped({Exit::trouble, trouble->message});
}

Exit run(const std::vector<std::string>& arguments) {
    if (arguments.empty()) {
        say_aside(overview_screen(width_of(Stream::aside)));
        return Exit::wrong_call;
    }
    if (arguments.front() == "--version") return say("scruple " SCRUPLE_VERSION "\n");
    if (arguments.front() == "--help" || arguments.front() == "-h") return say(overview_screen(width_of(Stream::out)));
    const Call call = read_call(arguments);
    for (const Job& job : jobs)
        if (job.command == call.command) return hand_over(call, job.run(call));
    return Exit::wrong_call;
}

Exit guarded(const std::vector<std::string>& arguments) {
    try {
        return run(arguments);
    } catch (const Stop& stop) {
        return stopped(stop);
    } catch (const std::exception& error) {
        say_aside(fmt::format("scruple: this cannot be done here: {}\n", error.what()));
        return Exit::trouble;
    }
}

}  // namespace
}  // namespace scruple::cli

int main(int count, char** words) {
    scruple::cli::secure_streams();
    // A program may be started without even its own name.
    return static_cast<int>(scruple::cli::guarded({words + std::min(count, 1), words + count}));
}
