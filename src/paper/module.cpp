// SPDX-License-Identifier: MIT
#include "scruple/paper/module.hpp"

extern "C" __attribute__((visibility("default"))) const scruple::paper::Module* scruple_drawing() {
    static constexpr scruple::paper::Module module{
        &scruple::paper::cards, &scruple::paper::labels,  &scruple::paper::shopping, &scruple::paper::calendar,
        &scruple::paper::shelf, &scruple::paper::evening, &scruple::paper::binder};
    return &module;
}
