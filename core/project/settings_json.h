// Settings in a project file, by their description.
#pragma once

#include "project/object.h"
#include "project/rules.h"

namespace tenter::project {

template <class T>
bool readValue(Reading& reading, const Json& json, std::optional<T>& out) {
    T value{};
    if (!readValue(reading, json, value)) return false;
    out = std::move(value);
    return true;
}

bool readValue(Reading& reading, const Json& json, RoleStyles& out);

template <Described T>
std::vector<std::string> keysOf() {
    std::vector<std::string> keys;
    T::members([&](const char* key, auto) { keys.emplace_back(key); });
    return keys;
}

template <Described T>
bool readValue(Reading& reading, const Json& json, T& out) {
    ObjectReader object(reading, json, out.remembered, keysOf<T>());
    T::members([&](const char* key, auto member) { object.read(key, out.*member); });
    return reading.isSound();
}

Json written(const RoleStyles& value);

/// Null for what is not set.
template <class T>
Json written(const std::optional<T>& value) {
    return value ? written(*value) : Json();
}

template <Described T>
Json written(const T& value) {
    ObjectWriter object(value.remembered);
    T::members([&](const char* key, auto member) {
        Json json = written(value.*member);
        const bool wanted = !json.is_null() && !(json.is_object() && json.empty());
        if (!json.is_null()) object.put(key, std::move(json), wanted);
    });
    return object.take();
}

}  // namespace tenter::project
