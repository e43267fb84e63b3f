// Settings as JSON, by their lists of members.
#pragma once

#include "project/object.h"
#include "project/rules.h"

namespace tenter::project {

template <class T>
bool readValue(ReadContext& context, const Json& json, std::optional<T>& out) {
    T value{};
    if (!readValue(context, json, value)) return false;
    out = std::move(value);
    return true;
}

bool readValue(ReadContext& context, const Json& json, RoleStyles& out);

/// The keys of all members of `T`.
template <HasMembers T>
std::vector<std::string> keysOf() {
    std::vector<std::string> keys;
    T::members([&](const char* key, auto) { keys.emplace_back(key); });
    return keys;
}

template <HasMembers T>
bool readValue(ReadContext& context, const Json& json, T& out) {
    ObjectReader object(context, json, out.fileKeys, keysOf<T>());
    T::members([&](const char* key, auto member) { object.read(key, out.*member); });
    return context.isSound();
}

Json written(const RoleStyles& value);

/// Null for a value that is not set.
template <class T>
Json written(const std::optional<T>& value) {
    return value ? written(*value) : Json();
}

template <HasMembers T>
Json written(const T& value) {
    ObjectWriter object(value.fileKeys);
    T::members([&](const char* key, auto member) {
        Json json = written(value.*member);
        const bool wanted = !json.is_null() && !(json.is_object() && json.empty());
        if (!json.is_null()) object.put(key, std::move(json), wanted);
    });
    return object.take();
}

}  // namespace tenter::project
