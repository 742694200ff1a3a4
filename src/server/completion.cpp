// SPDX-License-Identifier: MIT
// What could stand at a place: by what stands before it on the line, and in which block the line is.
#include <algorithm>

#include "keywords.hpp"
#include "requests.hpp"
#include "scruple/syntax/normal.hpp"

namespace scruple::server {
namespace {

constexpr std::size_t most_items = 200;
constexpr std::string_view blanks = " \t";
constexpr std::string_view digits = "0123456789.½¼¾⅓⅔⅛⅜⅝⅞";

// The protocol's numbers of kinds.
constexpr int of_class = 7, of_unit = 11, of_keyword = 14, of_constant = 21, of_property = 10;

using quantity::Dimension;

class Items {
  public:
    Items(const Asked& about, std::uint32_t begin, std::string_view typed)
        : range_(to_json(about.positions.range({begin, about.offset}))), typed_(syntax::normal_name(typed)) {}

    void add(std::string_view label, int kind, std::string_view detail = {}) {
        if (!typed_.empty() && syntax::normal_name(label).find(typed_) == std::string::npos) return;
        if (items_.size() == most_items) {
            more_ = true;
            return;
        }
        Json item{{"label", label}, {"kind", kind}, {"textEdit", {{"range", range_}, {"newText", label}}}};
        if (!detail.empty()) item["detail"] = detail;
        items_.push_back(std::move(item));
    }

    [[nodiscard]] Json list() const { return {{"isIncomplete", more_ || !typed_.empty()}, {"items", items_}}; }

  private:
    Json range_;
    std::string typed_;
    Json items_ = Json::array();
    bool more_ = false;
};

std::string_view without_blanks_before(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    return first == std::string_view::npos ? std::string_view() : text.substr(first);
}

std::string_view without_blanks_behind(std::string_view text) {
    return text.substr(0, text.find_last_not_of(blanks) + 1);
}

class Completer {
  public:
    Completer(Workspace& workspace, const Asked& about) : workspace_(workspace), about_(about) {
        line_ = about.positions.line(about.positions.position(about.offset).line).begin;
        before_ = std::string_view(about.file->text()).substr(line_, about.offset - line_);
    }

    Json result() {
        if (before_.find('#') != std::string_view::npos || std::ranges::count(before_, '"') % 2 == 1)
            return Json::array();
        if (before_.find_first_of(blanks) != 0) return blocks();
        if (const std::size_t open = before_.rfind('(');
            open != std::string_view::npos && before_.find(')', open) == before_.npos)
            return forms(open);
        if (const auto unit = unit_begin()) return units(*unit);
        if (const auto json = after_word(" through ", Space::process)) return *json;
        if (const auto json = after_word(" from ", Space::supplier)) return *json;
        if (const auto json = after_word("accept ", Space::meeting)) return *json;
        return beginnings();
    }

  private:
    [[nodiscard]] std::uint32_t at(std::size_t column) const { return line_ + static_cast<std::uint32_t>(column); }

    Items items_from(std::size_t column) const { return {about_, at(column), before_.substr(column)}; }

    Json blocks() const {
        Items items = items_from(0);
        for (const std::string_view word : block_words()) items.add(word, of_keyword);
        return items.list();
    }

    Json forms(std::size_t open) {
        const std::string_view name = without_blanks_behind(without_blanks_before(before_.substr(0, open)));
        const check::Model& model = workspace_.view_of(about_.number).model();
        std::size_t begin = before_.find_first_not_of(blanks, std::max(open + 1, before_.rfind(',') + 1));
        begin = std::min(begin, before_.size());
        Items items = items_from(begin);
        const auto found = model.chemical_names.find(chemical_in(name, model));
        if (found == model.chemical_names.end()) return items.list();
        const check::Chemical& chemical = model.chemicals[found->second.first];
        for (const check::Form& form : chemical.forms) items.add(form.name, of_property, form.formula_text);
        for (const std::string_view grade : chemical.grades) items.add(grade, of_property);
        return items.list();
    }

    /// Words may stand before it: `expect sodium sulfite`, `2026-11-02 received borax`.
    static std::string chemical_in(std::string_view words, const check::Model& model) {
        for (;;) {
            std::string name = syntax::normal_name(words);
            const std::size_t blank = words.find_first_of(blanks);
            if (model.chemical_names.contains(name) || blank == std::string_view::npos) return name;
            words = without_blanks_before(words.substr(blank));
        }
    }

    /// Where a number stands before the word that is being typed: the column of that word.
    [[nodiscard]] std::optional<std::size_t> unit_begin() const {
        const std::size_t blank = before_.find_last_of(blanks);
        const std::size_t begin = blank + 1;
        const std::string_view number = without_blanks_behind(before_.substr(0, begin));
        const std::size_t first = number.find_last_of(" \t,(") + 1;
        const std::string_view word = number.substr(std::min(first, number.size()));
        const bool is_number = !word.empty() && word.find_first_not_of(digits) == std::string_view::npos;
        return is_number ? std::optional(begin) : std::nullopt;
    }

    [[nodiscard]] std::vector<Dimension> dimensions() const {
        const std::string_view line = without_blanks_before(before_);
        const std::string_view word = word_at_the_beginning(line);
        const auto says = [&](std::string_view what) { return line.find(what) != std::string_view::npos; };
        if (says(" at ") || word == "cool" || word == "warm" || word == "not above" || says("not above") ||
            word == "warmer than")
            return {Dimension::temperature};
        if (word == "stir" || word == "wait" || word == "stand" || word == "keeps" || word == "use within" ||
            word == "pace" || says("stirring every"))
            return {Dimension::time};
        if (word == "expect" && says("pH")) return {};
        if (word == "expect") return {Dimension::strength};
        if (word == "area") return {Dimension::area};
        if (word == "density") return {Dimension::density};
        if (word == "capacity" || word == "replenish" || word == "bottle" || word == "graduate" || word == "syringe" ||
            word == "jug")
            return {Dimension::volume};
        if (word == "balance") return {Dimension::mass};
        return {Dimension::mass, Dimension::volume, Dimension::amount, Dimension::count};
    }

    Json units(std::size_t begin) const {
        Items items = items_from(begin);
        const auto wanted = dimensions();
        for (const quantity::UnitInfo& unit : quantity::all_units())
            if (unit.unit != quantity::Unit::none && std::ranges::find(wanted, unit.dimension) != wanted.end())
                items.add(unit.shown, of_unit);
        return items.list();
    }

    /// Names of one space behind a word.
    std::optional<Json> after_word(std::string_view word, Space space) const {
        const std::size_t found = before_.rfind(word);
        if (found == std::string_view::npos) return std::nullopt;
        Items items = items_from(found + word.size());
        const std::size_t none = items.list().at("items").size();
        add_names(space, items);
        if (items.list().at("items").size() == none) return std::nullopt;
        return items.list();
    }

    void add_names(Space space, Items& items) const {
        std::vector<std::string> names;
        workspace_.index().each_defined([&](const std::string& key) {
            if (key.front() == static_cast<char>('0' + static_cast<int>(space))) names.push_back(key);
        });
        std::ranges::sort(names);
        for (const std::string& key : names) add_name(key, items);
    }

    /// As its author spells it. What the library has comes with its forms.
    void add_name(const std::string& key, Items& items) const {
        const File& file = workspace_.file(workspace_.index().defining(key).front());
        if (file.uri.empty()) return;
        for (const Occurrence& it : file.names.all)
            if (it.defines && it.key == key) return items.add(it.shown, of_class);
    }

    void add_chemicals(Items& items) {
        const check::Model& model = workspace_.view_of(about_.number).model();
        for (const check::Chemical& chemical : model.chemicals) {
            if (chemical.forms.empty()) items.add(chemical.name, of_constant);
            for (check::Id form = 0; form < chemical.forms.size(); ++form)
                items.add(check::shown_name(chemical, form), of_constant, chemical.forms[form].formula_text);
        }
    }

    Json beginnings() {
        const std::size_t first = std::min(before_.find_first_not_of(blanks), before_.size());
        const std::string_view line = before_.substr(first);
        const std::string_view word = word_at_the_beginning(line);
        std::size_t begin = first;
        if (!word.empty() && line.size() > word.size())
            begin = std::min(before_.find_first_not_of(blanks, first + word.size()), before_.size());
        Items items = items_from(begin);
        if (begin == first) {
            for (const std::string_view one : fact_words()) items.add(one, of_keyword);
            for (const std::string_view one : step_words()) items.add(one, of_keyword);
        }
        add_chemicals(items);
        add_names(Space::substance, items);
        return items.list();
    }

    Workspace& workspace_;
    const Asked& about_;
    std::uint32_t line_ = 0;
    std::string_view before_;  ///< the line, up to the place
};

}  // namespace

Json completion(Workspace& workspace, const Json& params) {
    workspace.settle();
    const Asked about = asked(workspace, params);
    return Completer(workspace, about).result();
}

}  // namespace scruple::server
