// SPDX-License-Identifier: MIT
// In front of every file of a mutated copy: each changed place asks here whether it is the one that is changed in this
// run.
#pragma once

#include <cstdio>
#include <cstdlib>
#include <type_traits>

namespace mutant {

/// SCRUPLE_MUTANT is the number of the only place that is changed. SCRUPLE_MUTANTS_REACHED is a file that takes down, a
/// byte a place, which were come by.
struct Run {
    static constexpr int most = 1 << 18;
    int changed = -1;
    const char* reached_file = nullptr;
    unsigned char reached[most] = {};

    Run() {
        if (const char* number = std::getenv("SCRUPLE_MUTANT")) changed = std::atoi(number);
        reached_file = std::getenv("SCRUPLE_MUTANTS_REACHED");
    }
    ~Run() {
        if (reached_file == nullptr) return;
        if (std::FILE* file = std::fopen(reached_file, "wb")) {
            std::fwrite(reached, 1, most, file);
            std::fclose(file);
        }
    }
};

inline bool on(int id) {
    static Run run;
    if (run.reached_file != nullptr) run.reached[id] = 1;
    return id == run.changed;
}

template <class A, class B>
bool lt(int id, const A& a, const B& b) {
    return on(id) ? bool(a <= b) : bool(a < b);
}
template <class A, class B>
bool le(int id, const A& a, const B& b) {
    return on(id) ? bool(a < b) : bool(a <= b);
}
template <class A, class B>
bool gt(int id, const A& a, const B& b) {
    return on(id) ? bool(a >= b) : bool(a > b);
}
template <class A, class B>
bool ge(int id, const A& a, const B& b) {
    return on(id) ? bool(a > b) : bool(a >= b);
}
template <class A, class B>
bool eq(int id, const A& a, const B& b) {
    return on(id) ? !bool(a == b) : bool(a == b);
}
template <class A, class B>
bool ne(int id, const A& a, const B& b) {
    return on(id) ? bool(a == b) : !bool(a == b);
}

template <class A, class B>
auto add(int id, const A& a, const B& b) {
    return on(id) ? a - b : a + b;
}
template <class A, class B>
auto sub(int id, const A& a, const B& b) {
    return on(id) ? a + b : a - b;
}
template <class A, class B>
auto mul(int id, const A& a, const B& b) {
    return on(id) ? a / b : a * b;
}
template <class A, class B>
auto quo(int id, const A& a, const B& b) {
    return on(id) ? a * b : a / b;
}

template <class A>
bool yes(int id, const A& a) {
    return on(id) || bool(a);
}
template <class A>
bool no(int id, const A& a) {
    return !on(id) && bool(a);
}
template <class A>
bool negated(int id, const A& a) {
    return on(id) != bool(a);
}

template <class A>
A next(int id, A a) {
    if (!on(id)) return a;
    if constexpr (std::is_floating_point_v<A>)
        return a == 0 ? A(1) : a * A(1.01);
    else
        return A(a + 1);
}

}  // namespace mutant
