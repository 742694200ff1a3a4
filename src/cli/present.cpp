// SPDX-License-Identifier: MIT
#include "present.hpp"

#include "scruple/emit/emit.hpp"

namespace scruple::cli {

std::string presented(As as, std::string_view kind, std::string_view name, std::string_view text) {
    switch (as) {
        case As::text:
            return std::string(text);
        case As::html:
            return emit::plain_html(name, text);
        case As::json:
            return emit::plain_json(kind, name, text);
    }
    return {};
}

}  // namespace scruple::cli
