// The parts of a project as JSON.
#pragma once

#include "project/project.h"
#include "project/settings_json.h"

namespace tenter::project {

bool readValue(Reading& reading, const Json& json, Copy& out);
bool readValue(Reading& reading, const Json& json, Part& out);
bool readValue(Reading& reading, const Json& json, Card& out);
bool readValue(Reading& reading, const Json& json, Band& out);
bool readValue(Reading& reading, const Json& json, Variant& out);
bool readValue(Reading& reading, const Json& json, Scrollbar& out);
bool readValue(Reading& reading, const Json& json, Container& out);
bool readValue(Reading& reading, const Json& json, Page& out);
bool readValue(Reading& reading, const Json& json, FontEntry& out);
bool readValue(Reading& reading, const Json& json, Given& out);
bool readValue(Reading& reading, const Json& json, RoleWishes& out);
bool readValue(Reading& reading, const Json& json, Wishes& out);
bool readValue(Reading& reading, const Json& json, Limits& out);
bool readValue(Reading& reading, const Json& json, Silence& out);
bool readValue(Reading& reading, const Json& json, Checking& out);
bool readValue(Reading& reading, const Json& json, Project& out);

Json written(const Copy& value);
Json written(const Part& value);
Json written(const Card& value);
Json written(const Band& value);
Json written(const Variant& value);
Json written(const Scrollbar& value);
Json written(const Container& value);
Json written(const Page& value);
Json written(const FontEntry& value);
Json written(const Given& value);
Json written(const RoleWishes& value);
Json written(const Wishes& value);
Json written(const Limits& value);
Json written(const Silence& value);
Json written(const Checking& value);
Json written(const Project& value);

/// The name of a file that comes with the project: relative, and there if it must be and the project has a
/// folder.
bool readFileName(Reading& reading, const Json& json, const char* kind, bool mustBeThere, std::string& out);

template <class T>
bool readList(Reading& reading, const Json& json, std::size_t most, std::vector<T>& out) {
    if (!json.is_array())
        return reading.wrong(kindOf(json) + " where a list is wanted", "write a list in [ ]");
    if (json.size() > most) {
        return reading.wrong(
            std::to_string(json.size()) + " entries in a list of at most " + std::to_string(most),
            "split the project");
    }
    out.clear();
    for (std::size_t i = 0; i < json.size(); ++i) {
        const Reading::Step step = reading.at(i);
        readValue(reading, json[i], out.emplace_back());
    }
    return reading.isSound();
}

template <class T>
Json writtenList(const std::vector<T>& values) {
    Json list = Json::array();
    for (const T& value : values)
        list.push_back(written(value));
    return list;
}

}  // namespace tenter::project
