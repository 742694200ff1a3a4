// SPDX-License-Identifier: MIT
// What must hold of every input; where it does not, the run ends with the input written to a file.
#pragma once

#include <string>
#include <string_view>

namespace fuzz {

/// Ends the run with `what`, and with what was found, where `holds` is false.
void demand(bool holds, std::string_view what, std::string_view found = {});

/// What is shown on a terminal: valid UTF-8 that ends with a line end, and no control character but that.
void demand_text(std::string_view what, std::string_view text);
/// A web page: valid UTF-8 from `<!DOCTYPE html>` to `</html>`.
void demand_page(std::string_view what, std::string_view page);
/// One value of JSON (RFC 8259).
void demand_json(std::string_view what, std::string_view text);

}  // namespace fuzz
