// SPDX-License-Identifier: MIT
#include "drawing.hpp"

#include <dlfcn.h>
#include <fmt/format.h>

#include <filesystem>

#include "call.hpp"

namespace scruple::cli {
namespace {

/// Beside the program, as it is built; else where it is installed.
std::filesystem::path module_path() {
    std::error_code error;
    const auto folder = std::filesystem::read_symlink("/proc/self/exe", error).parent_path();
    const auto beside = folder / paper::module_file;
    return std::filesystem::exists(beside, error) ? beside : folder / SCRUPLE_MODULE_FOLDER / paper::module_file;
}

const paper::Module* load() {
    const auto path = module_path();
    void* module = dlopen(path.c_str(), RTLD_NOW | RTLD_LOCAL);
    void* entry = module == nullptr ? nullptr : dlsym(module, paper::module_entry);
    if (entry == nullptr)
        throw Stop{Exit::trouble, fmt::format("cannot draw: {}. Take `--as html`, or install it anew", dlerror())};
    return reinterpret_cast<const paper::Module* (*)()>(entry)();
}

}  // namespace

const paper::Module& drawing() {
    static const paper::Module* const module = load();
    return *module;
}

}  // namespace scruple::cli
