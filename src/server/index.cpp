// SPDX-License-Identifier: MIT
#include "index.hpp"

#include <algorithm>

namespace scruple::server {

const std::vector<FileNumber>& Index::in(const Files& files, const std::string& key) {
    static const std::vector<FileNumber> none;
    const auto found = files.find(key);
    return found == files.end() ? none : found->second;
}

template <class Change>
void Index::each(FileNumber file, const Names& names, const Change& change) {
    for (const Occurrence& it : names.all) {
        if (it.defines) {
            change(defining_, it.key);
            continue;
        }
        for (const std::string& meaning : meanings_of(it.key)) change(it.by_name_only ? listing_ : using_, meaning);
    }
    if (!names.global) return;
    if (std::ranges::find(global_, file) == global_.end())
        global_.push_back(file);
    else
        std::erase(global_, file);
}

void Index::add(FileNumber file, const Names& names) {
    each(file, names, [file](Files& files, const std::string& key) {
        auto& those = files[key];
        if (std::ranges::find(those, file) == those.end()) those.push_back(file);
    });
}

void Index::remove(FileNumber file, const Names& names) {
    each(file, names, [file](Files& files, const std::string& key) {
        const auto found = files.find(key);
        if (found == files.end()) return;
        std::erase(found->second, file);
        if (found->second.empty()) files.erase(found);
    });
}

}  // namespace scruple::server
