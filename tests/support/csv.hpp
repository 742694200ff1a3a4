// SPDX-License-Identifier: MIT
// Reads the tables of tests/reference: the first line names the columns, a quoted field may hold commas.
#pragma once

#include <doctest/doctest.h>

#include <fstream>
#include <map>
#include <string>
#include <vector>

namespace scruple::test {

using Row = std::map<std::string, std::string>;

inline std::vector<std::string> csv_fields(const std::string& line) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const bool doubled = quoted && line[i] == '"' && i + 1 < line.size() && line[i + 1] == '"';
        if (doubled)
            fields.back() += line[i++];
        else if (line[i] == '"')
            quoted = !quoted;
        else if (line[i] == ',' && !quoted)
            fields.emplace_back();
        else if (line[i] != '\r')
            fields.back() += line[i];
    }
    return fields;
}

/// The rows of tests/reference/`name`, by column; fails the test where it cannot be read.
inline std::vector<Row> reference_rows(const std::string& name) {
    std::ifstream file(std::string(SCRUPLE_SOURCE_DIR) + "/tests/reference/" + name);
    REQUIRE_MESSAGE(file, "cannot read tests/reference/", name);
    std::string line;
    std::getline(file, line);
    const std::vector<std::string> columns = csv_fields(line);
    std::vector<Row> rows;
    while (std::getline(file, line)) {
        const std::vector<std::string> fields = csv_fields(line);
        REQUIRE_MESSAGE(fields.size() == columns.size(), name, ": ", line);
        for (std::size_t i = 0; i < columns.size(); ++i) {
            if (i == 0) rows.emplace_back();
            rows.back()[columns[i]] = fields[i];
        }
    }
    return rows;
}

}  // namespace scruple::test
