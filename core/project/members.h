// The list of a struct's members with their keys in a project file. One list serves reading, writing, the
// cascade of settings and comparing.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <utility>
#include <vector>

namespace tenter::project {

using Json = nlohmann::ordered_json;

/// The keys of an object in a project file, in the order of the file, so that writing keeps them. A key that
/// starts with `x-` has its value, as JSON text; every other key has an empty one.
struct FileKeys {
    std::vector<std::pair<std::string, std::string>> keys;
    friend bool operator==(const FileKeys&, const FileKeys&) = default;
};

/// A struct with `template <class V> static void members(V&& v)`, which calls `v("key", &T::member)` for each
/// member, in the order of the schema.
template <class T>
concept HasMembers = requires {
    T::members([](const char*, auto) {});
};

}  // namespace tenter::project
