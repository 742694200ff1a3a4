// SPDX-License-Identifier: MIT
// The lines of a section as they go in, before its judges.
#include <array>

#include "passes.hpp"
#include "step_judge.hpp"

namespace scruple::check {

void judge_work(Reader& reader, Id section, std::vector<ContentsTable>& tables) {
    std::array<bool, 2> reported{};  // by each judge, which then rests: one variant's fault is mostly every variant's
    for_each_variant(reader.model, section, tables, [&](std::size_t variant) {
        const std::array judges{reported[0] ? nullptr : dissolving_judge(reader, section),
                                reported[1] ? nullptr : order_judge(reader, section)};
        Walk walk(reader.model, reader.model.sections[section], variant, tables[variant]);
        walk.run([&](const Step& step) {
            for (const auto& judge : judges)
                if (judge) judge->look_at(step);
        });
        for (std::size_t i = 0; i < judges.size(); ++i) reported[i] = reported[i] || judges[i]->at_the_end(walk);
        return reported[0] && reported[1];
    });
}

}  // namespace scruple::check
