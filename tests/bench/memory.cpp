// SPDX-License-Identifier: MIT
// Peak memory per byte of recipe text: every allocation is counted, with what the allocator itself adds.
#include <malloc.h>

#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <new>
#include <optional>
#include <vector>

#include "scruple/check/check.hpp"
#include "scruple/syntax/parse.hpp"
#include "workspace.hpp"

namespace {
std::atomic<std::size_t> held{0};
std::atomic<std::size_t> most{0};
}  // namespace

void* operator new(std::size_t size) {
    void* memory = std::malloc(size);
    if (memory == nullptr) throw std::bad_alloc();
    const auto now = held += malloc_usable_size(memory);
    if (now > most) most = now;
    return memory;
}
void operator delete(void* memory) noexcept {
    held -= malloc_usable_size(memory);
    std::free(memory);
}
void operator delete(void* memory, std::size_t) noexcept {
    operator delete(memory);
}

int main() {
    using namespace scruple;
    auto sources = bench::library();
    const auto built_in = sources.size();
    const auto workspace = bench::generate(10000);
    sources.insert(sources.end(), workspace.recipes.begin(), workspace.recipes.end());
    std::vector<syntax::SharedTree> trees;
    for (std::size_t i = 0; i < built_in; ++i) trees.push_back(syntax::parse(sources[i]));
    const auto bytes = static_cast<double>(workspace.bytes);
    const auto print = [&](const char* what, std::size_t count) {
        std::printf("%-36s %8.2f bytes\n", what, static_cast<double>(count) / bytes);
    };
    std::printf("recipe text                          %8.0f kB\n", bytes / 1000);

    const std::size_t before = held;
    most = before;
    {
        trees.resize(sources.size());
        std::vector<std::optional<syntax::Outline>> outlines(sources.size());
        for (auto i = built_in; i < sources.size(); ++i) outlines[i] = syntax::outline(sources[i]);
        print("outlines, a byte of text", held - before);
        const auto passed = check::check({sources, trees, built_in, outlines});
        print("what stays of the model, a byte", held - before);
        print("peak in passing, a byte", most - before);
        if (diagnostics::any_error(passed.diagnostics)) return 1;
    }
    for (auto i = built_in; i < sources.size(); ++i) trees[i] = syntax::parse(sources[i]);
    print("trees, a byte of text", held - before);
    const auto checked = check::check({sources, trees, built_in});
    print("trees and the model, a byte", held - before);
    return diagnostics::any_error(checked.diagnostics) ? 1 : 0;
}
