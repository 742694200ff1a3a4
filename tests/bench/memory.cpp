// SPDX-License-Identifier: MIT
// Peak memory per byte of recipe text: every allocation is counted, with what the allocator itself adds.
#include <malloc.h>

#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <new>

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
    const std::size_t before = held;
    most = before;
    std::vector<syntax::Tree> trees;
    for (const auto& source : sources) trees.push_back(syntax::parse(source));
    const auto bytes = static_cast<double>(workspace.bytes);
    std::printf("recipe text                  %8.0f kB\n", bytes / 1000);
    std::printf("trees, a byte of text        %8.2f bytes\n", static_cast<double>(held - before) / bytes);
    const auto checked = check::check({sources, trees, built_in, [&](text::FileId file) { trees[file] = {}; }});
    std::printf("the model alone, a byte      %8.2f bytes\n", static_cast<double>(held - before) / bytes);
    std::printf("peak beyond the text, a byte %8.2f bytes\n", static_cast<double>(most - before) / bytes);
    return diagnostics::any_error(checked.diagnostics) ? 1 : 0;
}
