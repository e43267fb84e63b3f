// Values in a project file that are not objects. A reader sets `out`, or adds a problem and returns false.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "project/read_context.h"
#include "project/settings.h"
#include "project/shared_text.h"
#include "project/wording.h"
#include "project/words.h"
#include "units/root_size.h"

namespace tenter::project {

bool readValue(ReadContext& context, const Json& json, double& out);
bool readValue(ReadContext& context, const Json& json, int& out);
bool readValue(ReadContext& context, const Json& json, bool& out);
bool readValue(ReadContext& context, const Json& json, std::string& out);
bool readValue(ReadContext& context, const Json& json, SharedText& out);
bool readValue(ReadContext& context, const Json& json, std::vector<std::string>& out);  ///< font families
bool readValue(ReadContext& context, const Json& json, Length& out);
bool readValue(ReadContext& context, const Json& json, LineHeight& out);
bool readValue(ReadContext& context, const Json& json, Colour& out);
bool readValue(ReadContext& context, const Json& json, Ramp& out);
bool readValue(ReadContext& context, const Json& json, Ratio& out);
bool readValue(ReadContext& context, const Json& json, units::RootSize& out);

// The rules for values, which `validate` (validate.h) applies too. Each adds a problem and returns false if
// the value is not allowed at its place. `inFile`: the value as the file has it, for the message; null: the
// message shows it as it would be written.

/// Not a number (NaN): a value of another kind.
bool checkNumber(ReadContext& context, double value, const Json* inFile = nullptr);
/// Empty: a value that is no length; it needs `inFile`.
bool checkLength(ReadContext& context, const std::optional<Length>& value, const Json* inFile = nullptr);
bool checkLineHeight(ReadContext& context, const LineHeight& value);
bool checkRamp(ReadContext& context, const Ramp& value);
bool checkRatio(ReadContext& context, const Ratio& value, const Json* inFile = nullptr);
bool checkRootSize(ReadContext& context, const units::RootSize& value, const Json* inFile = nullptr);
bool checkFamilies(ReadContext& context, const std::vector<std::string>& value);
/// `kind` names the file in messages: `picture` or `font`.
bool checkFileName(ReadContext& context, const std::string& value, const char* kind);
/// The number of entries of a list.
bool checkCount(ReadContext& context, std::size_t count, std::size_t most);
/// The length of a text in bytes.
bool checkBytes(ReadContext& context, std::string_view text, std::size_t most);
/// The number of roles that an object, or the project, has.
bool checkRoleCount(ReadContext& context, std::size_t count, std::size_t most);

/// A list of two numbers. `rule` says what they must be: `[width, height] in pixels`.
bool readPair(ReadContext& context, const Json& json, double& first, double& second, const char* rule);

/// A text that must be one of `words`; `out` is its index.
bool readWord(ReadContext& context, const Json& json, const std::vector<std::string>& words,
              std::size_t& out);

template <class E>
requires std::is_enum_v<E>
bool readValue(ReadContext& context, const Json& json, E& out) {
    std::vector<std::string> words;
    for (const auto& entry : Words<E>::table)
        words.emplace_back(entry.first);
    std::size_t index = 0;
    if (!readWord(context, json, words, index)) return false;
    out = Words<E>::table[index].second;
    return true;
}

/// The value as JSON. A number without a fraction has no decimal point.
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
Json written(const units::RootSize& value);

template <class E>
requires std::is_enum_v<E> Json written(E value) {
    for (const auto& [word, each] : Words<E>::table) {
        if (each == value) return std::string(word);
    }
    return nullptr;
}

}  // namespace tenter::project
