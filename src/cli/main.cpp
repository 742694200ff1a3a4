// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <exception>
#include <new>
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

std::string output_fails() {
    return "the output cannot be written: " + std::generic_category().message(errno);
}

Exit stopped(const Stop& stop) {
    // Words of the caller and names of files are in it, and may hold anything; a page has been made printable.
    const bool is_page = stop.status == Exit::faults;
    say_aside((is_page ? stop.message : "scruple: " + text::printable_lines(stop.message)) + "\n");
    return stop.status;
}

Exit say(std::string_view text) {
    if (write_all(Stream::out, text)) return Exit::fine;
    return stopped({Exit::trouble, output_fails()});
}

/// What cannot be handed over, after what has been done already: else it would be done once more.
Exit not_handed_over(const Outcome& outcome, const std::string& why) {
    return stopped({Exit::trouble, outcome.done.empty() ? why : outcome.done + "; " + why});
}

Exit tell(const Outcome& outcome) {
    if (write_all(Stream::out, outcome.text)) return outcome.status;
    return not_handed_over(outcome, output_fails());
}

Exit hand_over(const Call& call, const Outcome& outcome) {
    say_aside(outcome.aside);
    const auto place = call.value("--out");
    if (!place) return tell(outcome);
    const bool is_folder = !outcome.files.empty();
    const auto trouble =
        is_folder ? driver::fill_folder(*place, outcome.files) : driver::write_whole(*place, outcome.text);
    if (trouble) return not_handed_over(outcome, trouble->message);
    return is_folder ? tell(outcome) : outcome.status;
}

Exit run(const std::vector<std::string>& arguments) {
    if (!has_stack())
        return stopped(
            {Exit::trouble,
             fmt::format("the stack is limited to less than {0} KiB; `ulimit -s {0}` is enough", least_stack)});
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
    } catch (const std::bad_alloc&) {
        return stopped({Exit::trouble, "there is not enough memory for this"});
    } catch (const std::exception& error) {
        return stopped({Exit::trouble, fmt::format("this cannot be done here: {}", error.what())});
    }
}

}  // namespace
}  // namespace scruple::cli

int main(int count, char** words) {
    scruple::cli::secure_streams();
    // A program may be started without even its own name.
    return static_cast<int>(scruple::cli::guarded({words + std::min(count, 1), words + count}));
}
