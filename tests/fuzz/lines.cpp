// SPDX-License-Identifier: MIT
// Recipe text is lines, and so half of the changes are made by lines: left out, said twice, moved, indented, brought
// along from another input. libFuzzer calls these two functions where a target is linked with them.
#include <algorithm>
#include <cstdint>
#include <cstring>
#include <random>
#include <string>
#include <string_view>
#include <vector>

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t max_size);
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t max_size,
                                               unsigned seed);
extern "C" std::size_t LLVMFuzzerCustomCrossOver(const std::uint8_t* one, std::size_t one_size,
                                                 const std::uint8_t* other, std::size_t other_size, std::uint8_t* out,
                                                 std::size_t max_size, unsigned seed);

namespace {

using Lines = std::vector<std::string>;
using Random = std::minstd_rand;

Lines lines_of(const std::uint8_t* data, std::size_t size) {
    Lines lines(1);
    for (std::size_t i = 0; i < size; ++i) {
        lines.back() += static_cast<char>(data[i]);
        if (data[i] == '\n') lines.emplace_back();
    }
    return lines;
}

std::size_t written(const Lines& lines, std::uint8_t* out, std::size_t max_size) {
    std::size_t size = 0;
    for (const std::string& line : lines) {
        const std::size_t fits = std::min(line.size(), max_size - size);
        std::memcpy(out + size, line.data(), fits);
        size += fits;
    }
    return size;
}

Lines::iterator any_of(Lines& lines, Random& random) {
    return lines.begin() + static_cast<std::ptrdiff_t>(random() % lines.size());
}

/// Words of two lines change places.
void swap_words(std::string& one, std::string& other, Random& random) {
    const auto cut = [&random](const std::string& line) {
        const std::size_t blank = line.find(' ', line.empty() ? 0 : random() % line.size());
        return blank == std::string::npos ? line.size() : blank;
    };
    const std::size_t from = cut(one), to = cut(other);
    const std::string rest = one.substr(from);
    one.replace(from, std::string::npos, other.substr(to));
    other.replace(to, std::string::npos, rest);
}

void change(Lines& lines, Random& random) {
    const auto here = any_of(lines, random), there = any_of(lines, random);
    switch (random() % 6) {
        case 0:
            lines.erase(here);
            break;
        case 1:
            lines.insert(there, std::string(*here));
            break;
        case 2:
            std::iter_swap(here, there);
            break;
        case 3:
            std::rotate(std::min(here, there), std::max(here, there), lines.end());
            break;
        case 4:
            here->insert(0, "    ");
            break;
        default:
            if (here != there) swap_words(*here, *there, random);
    }
}

}  // namespace

std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t max_size, unsigned seed) {
    Random random(seed);
    if (size == 0 || random() % 2 == 0) return LLVMFuzzerMutate(data, size, max_size);
    Lines lines = lines_of(data, size);
    change(lines, random);
    return written(lines, data, max_size);
}

std::size_t LLVMFuzzerCustomCrossOver(const std::uint8_t* one, std::size_t one_size, const std::uint8_t* other,
                                      std::size_t other_size, std::uint8_t* out, std::size_t max_size, unsigned seed) {
    Random random(seed);
    Lines lines = lines_of(one, one_size), others = lines_of(other, other_size);
    const auto a = any_of(others, random), b = any_of(others, random);
    const Lines taken(std::min(a, b), std::max(a, b) + 1);
    lines.insert(any_of(lines, random), taken.begin(), taken.end());
    return written(lines, out, max_size);
}
