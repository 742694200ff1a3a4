// SPDX-License-Identifier: MIT
// Prints, for each formula on a line of the standard input, its molar mass in g/mol with six places,
// or `?` where it cannot be read. For tests/chemistry/molar_masses.py.
#include <iostream>
#include <string>

#include "scruple/chemistry/formula.hpp"

int main() {
    using namespace scruple;
    for (std::string line; std::getline(std::cin, line);) {
        const auto read = chemistry::read_formula(line);
        const auto* formula = std::get_if<chemistry::Formula>(&read);
        std::cout << (formula ? quantity::decimal_text(chemistry::molar_mass(*formula), 6) : "?") << '\n';
    }
}
