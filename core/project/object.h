// Objects in a project file: their known keys, their `x-` keys, the order of both.
#pragma once

#include <string>
#include <vector>

#include "project/reading.h"
#include "project/values.h"

namespace tenter::project {

/// True for a key that is somebody else's and kept as it is.
bool isForeign(const std::string& key);

/// Reads an object's members one by one. Keys it does not know are problems.
class ObjectReader {
public:
    ObjectReader(Reading& reading, const Json& json, Remembered& remembered, std::vector<std::string> known);

    [[nodiscard]] bool isObject() const { return json_.is_object(); }
    /// Null if the object does not have it.
    [[nodiscard]] const Json* find(const char* key) const;
    /// Sets `out` if the object has the key and its value is sound; true if so.
    template <class T>
    bool read(const char* key, T& out) {
        const Json* value = find(key);
        if (value == nullptr) return false;
        const Reading::Step step = reading_.at(key);
        return readValue(reading_, *value, out);
    }
    /// As read; a problem if the object does not have the key.
    template <class T>
    bool require(const char* key, T& out, const char* mend) {
        if (isObject() && find(key) == nullptr) return missing(key, mend);
        return read(key, out);
    }
    bool missing(const char* key, const char* mend);

private:
    Reading& reading_;
    const Json& json_;
};

/// Puts members together, in the order the file had them, then as they are put.
class ObjectWriter {
public:
    explicit ObjectWriter(const Remembered& remembered) : remembered_(remembered) {}
    /// `wanted`: written even if the file did not have it.
    void put(const std::string& key, Json value, bool wanted);
    /// An object or a list, wanted if there is something in it.
    void putUnlessEmpty(const std::string& key, Json value);
    [[nodiscard]] Json take();

private:
    struct Member {
        std::string key;
        Json value;
        bool wanted;
        bool taken = false;
    };
    const Remembered& remembered_;
    std::vector<Member> members_;
};

}  // namespace tenter::project
