// SPDX-License-Identifier: MIT
#include "workspace.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string_view>
#include <utility>

namespace scruple::bench {
namespace {

struct Salt {
    std::string_view name;
    std::string_view form;  ///< empty where there is but one
    int least, most;        ///< tenths of a gram a litre
};

constexpr Salt salts[] = {
    {"metol", "", 5, 80},
    {"sodium sulfite", "anhydrous", 200, 1000},
    {"hydroquinone", "", 10, 120},
    {"sodium carbonate", "monohydrate", 50, 600},
    {"borax", "decahydrate", 10, 200},
    {"potassium bromide", "", 2, 60},
    {"citric acid", "monohydrate", 5, 150},
};

std::string tenths(int value) {
    auto text = std::to_string(value / 10);
    if (value % 10 != 0) text += "." + std::to_string(value % 10);
    return text;
}

/// One part: water, salts in order, a step after each, made up.
class Writer {
  public:
    explicit Writer(unsigned seed) : random_(seed) {}

    void recipe(std::size_t number) {
        const auto name = "Reed " + std::to_string(number);
        text += "recipe " + name +
                "\n    is a       film developer\n    source     invented for measuring\n"
                "    capacity   one-shot, 250 ml working per film 135\n\n";
        toml += "[[recipe]]\nname = \"" + name +
                "\"\nis_a = \"film developer\"\nsource = \"invented for measuring\"\n"
                "capacity = [\"one-shot\", \"250 ml working per film 135\"]\n\n";
        yaml += "- name: " + name +
                "\n  is_a: film developer\n  source: invented for measuring\n"
                "  capacity: [one-shot, 250 ml working per film 135]\n  parts:\n";
        part("A", 0, 3);
        part("B", 3, std::size(salts));
        working();
    }

    std::string text, toml, yaml;

  private:
    void open(std::string_view label, std::string_view keeps) {
        text += "part " + std::string(label) + "\n    keeps      " + std::string(keeps) + "\n";
        toml += "[[recipe.part]]\nlabel = \"" + std::string(label) + "\"\nkeeps = \"" + std::string(keeps) +
                "\"\nline = [\n";
        yaml += "  - label: " + std::string(label) + "\n    keeps: " + std::string(keeps) + "\n    line:\n";
    }

    void line(std::string_view name, std::string_view form, const std::string& amount, std::string_view at) {
        std::string shown(name);
        if (!form.empty()) shown += " (" + std::string(form) + ")";
        text += "    " + shown + std::string(shown.size() < 36 ? 36 - shown.size() : 1, ' ') + amount;
        toml += "  { what = \"" + std::string(name) + "\", form = \"" + std::string(form) + "\", amount = \"" + amount +
                "\"";
        yaml += "    - what: " + std::string(name) + "\n      form: \"" + std::string(form) +
                "\"\n      amount: " + amount + "\n";
        if (!at.empty()) {
            text += " at " + std::string(at);
            toml += ", at = \"" + std::string(at) + "\"";
            yaml += "      at: " + std::string(at) + "\n";
        }
        text += "\n";
        toml += " },\n";
    }

    void step(std::string_view words) {
        text += "    " + std::string(words) + "\n";
        toml += "  { step = \"" + std::string(words) + "\" },\n";
        yaml += "    - step: " + std::string(words) + "\n";
    }

    void part(std::string_view label, std::size_t first, std::size_t last) {
        open(label, "6 months full, 2 months half full");
        line("water", "", "700 ml", "45 to 50 C");
        for (auto i = first; i < last; ++i) {
            line(salts[i].name, salts[i].form,
                 tenths(std::uniform_int_distribution(salts[i].least, salts[i].most)(random_)) + " g", "");
            step("stir until clear");
        }
        step("cool to 20 C");
        line("water to make", "", "1 l", "");
        close();
    }

    void working() {
        text += "working\n    use within 2 h\n";
        toml += "[[recipe.part]]\nlabel = \"working\"\nuse_within = \"2 h\"\nline = [\n";
        yaml += "  - label: working\n    use_within: 2 h\n    line:\n";
        line("water", "", "600 ml", "20 C");
        line("part A", "", "100 ml", "");
        line("part B", "", std::to_string(std::uniform_int_distribution(30, 90)(random_)) + " ml", "");
        line("water to make", "", "1 l", "");
        close();
    }

    void close() {
        text += "\n";
        toml += "]\n\n";
    }

    std::mt19937 random_;
};

}  // namespace

Workspace generate(std::size_t count) {
    Workspace workspace;
    for (std::size_t i = 0; i < count; ++i) {
        Writer writer(static_cast<unsigned>(i));
        writer.recipe(i);
        workspace.bytes += writer.text.size();
        workspace.recipes.push_back({"reed" + std::to_string(i) + ".scruple", std::move(writer.text)});
        workspace.toml += writer.toml;
        workspace.yaml += writer.yaml;
    }
    return workspace;
}

std::vector<text::Source> library() {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(SCRUPLE_SOURCE_DIR "/src/library")) {
        if (entry.path().extension() == ".scruple") paths.push_back(entry.path());
    }
    std::ranges::sort(paths);
    std::vector<text::Source> sources;
    for (const auto& path : paths) {
        std::ifstream file(path, std::ios::binary);
        sources.push_back({path.filename().string(), {std::istreambuf_iterator<char>(file), {}}});
    }
    return sources;
}

}  // namespace scruple::bench
