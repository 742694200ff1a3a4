// SPDX-License-Identifier: MIT
// A square of dots that a camera reads: a QR code (ISO/IEC 18004), by libqrencode.
#pragma once

#include <string>

#include "block.hpp"

namespace scruple::paper {

/// `side` points wide with its quiet zone; in bytes of UTF-8, with a quarter of it to spare for damage (level Q) where
/// that many fit. Throws std::runtime_error for more than a code can hold.
[[nodiscard]] Block qr_code(const std::string& text, double side);

}  // namespace scruple::paper
