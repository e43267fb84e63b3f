// How a struct says what its members are called in a project file. One description serves reading,
// writing, the settings cascade and comparing.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <utility>
#include <vector>

namespace tenter::project {

using Json = nlohmann::ordered_json;

/// What an object of a project file had besides what its struct holds: the order of its keys, and the
/// values of keys that start with `x-` as JSON text. Known keys stand here with none.
struct Remembered {
    std::vector<std::pair<std::string, std::string>> keys;
    friend bool operator==(const Remembered&, const Remembered&) = default;
};

/// A struct with `template <class V> static void members(V&& v)`, which calls
/// `v("key", &T::member)` for each member in the order the schema lists them.
template <class T>
concept Described = requires {
    T::members([](const char*, auto) {});
};

}  // namespace tenter::project
