// Values in a project file that are not objects. Readers note a problem and return false, or set `out`.
#pragma once

#include <string>
#include <vector>

#include "project/reading.h"
#include "project/settings.h"
#include "project/wording.h"
#include "project/words.h"

namespace tenter::project {

bool readValue(Reading& reading, const Json& json, double& out);
bool readValue(Reading& reading, const Json& json, int& out);
bool readValue(Reading& reading, const Json& json, bool& out);
bool readValue(Reading& reading, const Json& json, std::string& out);
bool readValue(Reading& reading, const Json& json, std::vector<std::string>& out);  ///< a family list
bool readValue(Reading& reading, const Json& json, Length& out);
bool readValue(Reading& reading, const Json& json, LineHeight& out);
bool readValue(Reading& reading, const Json& json, Colour& out);
bool readValue(Reading& reading, const Json& json, Ramp& out);
bool readValue(Reading& reading, const Json& json, Ratio& out);
/// A list of two numbers.
bool readPair(Reading& reading, const Json& json, double& first, double& second, const char* mend);

/// Text that must be one of `words`; its index.
bool readWord(Reading& reading, const Json& json, const std::vector<std::string>& words, std::size_t& out);

template <class E>
requires std::is_enum_v<E>
bool readValue(Reading& reading, const Json& json, E& out) {
    std::vector<std::string> words;
    for (const auto& entry : Words<E>::table)
        words.emplace_back(entry.first);
    std::size_t index = 0;
    if (!readWord(reading, json, words, index)) return false;
    out = Words<E>::table[index].second;
    return true;
}

/// Numbers without a fraction are written without a point.
Json written(double value);
Json written(int value);
Json written(bool value);
Json written(const std::string& value);
Json written(const std::vector<std::string>& value);
Json written(const Length& value);
Json written(const LineHeight& value);
Json written(const Colour& value);
Json written(const Ramp& value);
Json written(const Ratio& value);

template <class E>
requires std::is_enum_v<E> Json written(E value) {
    for (const auto& [word, each] : Words<E>::table) {
        if (each == value) return std::string(word);
    }
    return nullptr;
}

}  // namespace tenter::project
