// SPDX-License-Identifier: MIT
#include "scruple/driver/library.hpp"

#include "packed_library.hpp"
#include "scruple/check/packed.hpp"
#include "scruple/syntax/parse.hpp"

namespace scruple::driver {

check::Model library_model(std::span<const text::Source> sources) {
    return check::unpacked(packed_library(), sources);
}

void parse_library(Loaded& loaded) {
    for (std::size_t i = 0; i < loaded.built_in; ++i) loaded.trees[i] = syntax::parse(loaded.sources[i]);
}

}  // namespace scruple::driver
