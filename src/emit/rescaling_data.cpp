// SPDX-License-Identifier: MIT
#include "rescaling_data.hpp"

#include <array>

#include "json.hpp"
#include "scruple/emit/words.hpp"
#include "scruple/text/printable.hpp"

namespace scruple::emit {
namespace {

using json::Value;
using plan::GrowingLine;
using plan::GrowingText;
using quantity::Exact;

std::string clean(std::string_view text) {
    return text::printable(text);
}

std::string number(const Exact& value) {
    return value.ratio_text();
}

Value number_or_null(const std::optional<Exact>& value) {
    return value ? Value(number(*value)) : Value(nullptr);
}

template <class Names, class State>
std::string_view name_of(const Names& names, State state) {
    return names[static_cast<std::size_t>(state)];
}

constexpr std::array<std::string_view, 4> instruments{"balance", "graduate", "syringe", "jug"};
constexpr std::array<std::string_view, 4> shown{"none", "three figures", "grams", "whole ml"};
constexpr std::array<std::string_view, 4> readings{"weighed", "measured", "dropped", "made up"};
constexpr std::array<std::string_view, 5> lines{"put", "make up", "open", "pour", "nothing"};
constexpr std::array<std::string_view, 4> pieces{"whole", "first", "pinch", "rest"};

Value bench_json(const std::optional<check::Bench>& bench) {
    if (!bench) return nullptr;
    Value all;
    all["instruments"] = json::each(bench->instruments, [](const check::Instrument& it) {
        return Value{{"what", name_of(instruments, it.what)},
                     {"division", number(it.division)},
                     {"capacity", number(it.capacity)}};
    });
    all["dropper"] = bench->drops_per_ml.has_value();
    all["most_fills"] = check::most_fills;
    return all;
}

Value detail_json(const GrowingText& text) {
    Value all;
    all["before"] = clean(text.before);
    if (text.shown != GrowingText::Shown::none) {
        all["shown"] = name_of(shown, text.shown);
        all["amount"] = number(text.amount);
        all["unit"] = text.unit;
        all["after"] = clean(text.after);
    }
    if (text.only_as_written) all["only_as_written"] = true;
    return all;
}

Value thing_json(const plan::GrowingThing& thing) {
    return {{"name", clean(words::chemical(thing.name, thing.form))},
            {"grade", clean(thing.grade)},
            {"optional", thing.optional}};
}

void add_amounts(const GrowingLine& line, Value& all) {
    const bool marked = line.what == GrowingLine::What::make_up;
    if (line.what != GrowingLine::What::put && !marked) return;
    all["thing"] = line.thing;
    all["read"] = name_of(readings, line.whole.read);
    all["amount"] = number(line.whole.amount);
    if (marked) return;
    all["piece"] = name_of(pieces, line.piece);
    all["piece_amount"] = number(line.piece_amount);
    all["room"] = number(line.room_ml);
    all["room_estimated"] = line.room_estimated;
    all["counts"] = line.counts;
    all["advised"] = line.advised;
}

void add_pour(const GrowingLine& line, Value& all) {
    if (line.what != GrowingLine::What::pour) return;
    all["into"] = clean(line.into);
    all["name"] = clean(line.name);
    all["share"] = number_or_null(line.share);
    all["ml"] = number_or_null(line.ml);
}

/// What stands with a line whatever the volume.
void add_words(const plan::Work& work, Value& all) {
    all["before"] = words::before_amount(work);
    all["at"] = clean(work.at);
    all["elsewhere"] = clean(words::elsewhere(work));
    all["what"] = clean(work.what);
}

Value line_json(const GrowingLine& line, const plan::Work& work) {
    Value all;
    all["do"] = name_of(lines, line.what);
    if (line.what == GrowingLine::What::nothing) return all;
    all["vessel"] = clean(line.vessel);
    add_words(work, all);
    add_amounts(line, all);
    add_pour(line, all);
    all["details"] = json::each(line.details, detail_json);
    return all;
}

Value rescaling_json(const plan::Card& card) {
    const plan::Rescaling& from = *card.rescaling;
    Value all;
    all["written_ml"] = number(from.written_ml);
    all["card_ml"] = number(from.card_ml);
    all["bench"] = bench_json(from.bench);
    all["things"] = json::each(from.things, thing_json);
    all["lines"] = Value::array();
    for (std::size_t i = 0; i < from.lines.size(); ++i) all["lines"].push_back(line_json(from.lines[i], card.work[i]));
    return all;
}

/// The same data; `<`, `>` and `&` stand in strings alone, where JSON has another spelling of them.
std::string inert(std::string_view data) {
    std::string result;
    for (const char c : data) {
        if (c == '<')
            result += "\\u003c";
        else if (c == '>')
            result += "\\u003e";
        else if (c == '&')
            result += "\\u0026";
        else
            result += c;
    }
    return result;
}

}  // namespace

html::Markup rescaling_html(const plan::Card& card) {
    const std::string data = inert(rescaling_json(card).dump());
    return html::element("script", R"(type="application/json" class="plan")", html::Markup{data});
}

}  // namespace scruple::emit
