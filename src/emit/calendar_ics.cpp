// SPDX-License-Identifier: MIT
// A mixing calendar as events for a calendar program: RFC 5545. Each day of mixing, each last day of use, and the day
// after it, on which what is left goes. All are whole days and keep nobody from being free.
#include <fmt/format.h>

#include <algorithm>

#include "scruple/emit/calendar_words.hpp"
#include "scruple/emit/emit.hpp"
#include "scruple/plan/calendar.hpp"

namespace scruple::emit {
namespace {

/// Lines of at most 75 bytes, going on behind a blank, no character parted (3.1).
std::string folded(std::string_view line) {
    constexpr std::size_t most = 75;
    std::string all;
    std::size_t room = most;
    while (line.size() > room) {
        std::size_t cut = room;
        while (cut > 0 && (static_cast<unsigned char>(line[cut]) & 0xC0U) == 0x80U) --cut;
        all += std::string(line.substr(0, cut)) + "\r\n ";
        line.remove_prefix(cut);
        room = most - 1;
    }
    return all + std::string(line) + "\r\n";
}

/// Text as a value (3.3.11); control characters have no place in one.
std::string escaped(std::string_view text) {
    std::string all;
    for (const char c : text) {
        if (c == '\n')
            all += "\\n";
        else if (c == '\\' || c == ';' || c == ',')
            all += {'\\', c};
        else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7F)
            all += c;
    }
    return all;
}

std::string date(check::Day day) {
    std::string text = plan::day_text(day);
    std::erase(text, '-');
    return text;
}

/// The same event keeps its name when the calendar is written anew.
std::string identity(std::string_view what, check::Day day, std::string_view of) {
    std::string all = fmt::format("{}-{}-", what, date(day));
    for (const char c : of) {
        const bool plain = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        all += plain ? std::string(1, c) : fmt::format("{:02x}", static_cast<unsigned char>(c));
    }
    return all + "@scruple";
}

class Events {
  public:
    explicit Events(const plan::MixingCalendar& calendar) : calendar_(calendar) {}

    std::string run() {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//Scruple//mixing calendar//EN");
        for (const auto& day : calendar_.days) {
            mixing(day);
            for (const auto& one : day.mixings)
                if (one.use_by) last_use(one, day.day);
        }
        line("END:VCALENDAR");
        return std::move(text_);
    }

  private:
    void line(const std::string& text) { text_ += folded(text); }

    void event(std::string_view what, check::Day day, std::string_view of, const std::string& summary,
               const std::string& description) {
        line("BEGIN:VEVENT");
        line("UID:" + identity(what, day, fmt::format("{}/{}", calendar_.plan, of)));
        line(fmt::format("DTSTAMP:{}T000000Z", date(calendar_.days.front().day)));
        line("DTSTART;VALUE=DATE:" + date(day));
        // Without an end it is that one day, too (3.6.1).
        if (day < plan::last_of_days) line("DTEND;VALUE=DATE:" + date(day + 1));
        line("SUMMARY:" + escaped(summary));
        line("DESCRIPTION:" + escaped(description));
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }

    void mixing(const plan::MixingDay& day) {
        std::string names, what;
        for (const auto& one : day.mixings) {
            names += (names.empty() ? "" : ", ") + one.name;
            const std::string bottles = words::into_bottles(one);
            what += fmt::format("{} {}{}{}\n", one.volume.with_unit(), one.name, bottles.empty() ? "" : ", ", bottles);
        }
        event("mix", day.day, "", "Mix " + names, what);
    }

    void last_use(const plan::Mixing& one, check::Day mixed) {
        const std::string of = fmt::format("{}/{}", one.name, date(mixed));
        const std::string from = fmt::format("{} mixed on {}", one.name, plan::day_text(mixed));
        event("use-by", *one.use_by, of, "Last day of " + one.name, fmt::format("{}: {}", from, one.keeps));
        if (*one.use_by == plan::last_of_days) return;
        event("discard", *one.use_by + 1, of, "Discard " + one.name,
              from + ": what is left has had its time; local rules say where it goes");
    }

    const plan::MixingCalendar& calendar_;
    std::string text_;
};

}  // namespace

std::string calendar_ics(const plan::MixingCalendar& calendar) {
    return Events(calendar).run();
}

}  // namespace scruple::emit
