// SPDX-License-Identifier: MIT
#include "syntax_alone.hpp"

#include <string>

#include "grammar/file.hpp"

namespace scruple::bench {

bool follows_grammar(std::string_view text) {
    tao::pegtl::memory_input<tao::pegtl::tracking_mode::lazy> in(text, std::string());
    return tao::pegtl::parse<grammar::file>(in);
}

}  // namespace scruple::bench
