// SPDX-License-Identifier: MIT
#include "view.hpp"

#include <algorithm>

#include "scruple/driver/library.hpp"

namespace scruple::server {

namespace {

driver::Loaded library_alone() {
    auto loaded = driver::load(std::vector<driver::RecipeFile>{});
    driver::parse_library(loaded);
    return loaded;
}

}  // namespace

View::View() : loaded_(library_alone()), rechecker_({loaded_.sources, loaded_.trees, loaded_.built_in}) {
    for (FileNumber file = 0; file < loaded_.built_in; ++file) numbers_.push_back(file);
}

void View::check(const std::vector<std::unique_ptr<File>>& files, const std::vector<FileNumber>& those) {
    const std::size_t count = loaded_.built_in + those.size();
    loaded_.sources.resize(count);
    loaded_.trees.resize(count);
    numbers_.resize(count);
    for (std::size_t i = 0; i < those.size(); ++i) {
        const std::size_t at = loaded_.built_in + i;
        loaded_.sources[at] = files[those[i]]->source;
        loaded_.trees[at] = files[those[i]]->tree;
        numbers_[at] = those[i];
    }
    loaded_.asked = count;
    const unsigned workers = those.size() > 64 ? 0 : 1;
    if (lent_ != nullptr) std::swap(*lent_, loaded_.checked);
    lent_ = &rechecker_.check({loaded_.sources, loaded_.trees, loaded_.built_in}, workers);
    std::swap(*lent_, loaded_.checked);
}

text::FileId View::source_of(FileNumber file) const {
    const auto found = std::ranges::find(numbers_, file);
    return found == numbers_.end() ? check::none : static_cast<text::FileId>(found - numbers_.begin());
}

}  // namespace scruple::server
