// SPDX-License-Identifier: MIT
// A plan with more or less in it than is written, and what that changes on its shopping list.
#pragma once

#include <vector>

#include "asked.hpp"
#include "call.hpp"
#include "scruple/plan/shopping.hpp"

namespace scruple::cli {

/// What `--with` says, as a plan of its own beside the workspace.
[[nodiscard]] Asked asked_work(const Call& call);

/// Takes that plan out of the workspace again.
[[nodiscard]] std::vector<check::PlanEntry> take_asked_work(driver::Loaded& loaded);

/// Leaves out what `--without` names, a day or a process, and adds the work that was asked; what has no day goes to
/// the plan's last one. Throws Stop where the plan has nothing of what is left out.
void change_plan(const Call& call, check::Model& model, check::Id plan, std::vector<check::PlanEntry> work);

/// What is otherwise than on the other list, as a section of the list.
void say_what_differs(plan::ShoppingList& list, const plan::ShoppingList& other, const std::string& other_name);

}  // namespace scruple::cli
