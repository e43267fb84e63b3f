// Objects in a project file: known keys, `x-` keys, and the order of both.
#pragma once

#include <string>
#include <vector>

#include "project/read_context.h"
#include "project/values.h"

namespace tenter::project {

/// True for a key that starts with `x-`: it belongs to other software and is kept unchanged.
bool isExtensionKey(const std::string& key);

/// Reads the members of an object one by one. A key that is not in `known` is a problem.
class ObjectReader {
public:
    ObjectReader(ReadContext& context, const Json& json, FileKeys& fileKeys, std::vector<std::string> known);

    [[nodiscard]] bool isObject() const { return json_.is_object(); }
    /// The value of a key; null if the object does not have it.
    [[nodiscard]] const Json* find(const char* key) const;
    /// Sets `out` and returns true if the object has the key with a valid value.
    template <class T>
    bool read(const char* key, T& out) {
        const Json* value = find(key);
        if (value == nullptr) return false;
        const ReadContext::Step step = context_.at(key);
        return readValue(context_, *value, out);
    }
    /// Like `read`, but a missing key is a problem with `fix`.
    template <class T>
    bool require(const char* key, T& out, const char* fix) {
        if (isObject() && find(key) == nullptr) return missing(key, fix);
        return read(key, out);
    }
    bool missing(const char* key, const char* fix);

private:
    ReadContext& context_;
    const Json& json_;
};

/// Makes an object: first the members that the file had, in its order, then the others in the order of `put`.
class ObjectWriter {
public:
    explicit ObjectWriter(const FileKeys& fileKeys) : remembered_(fileKeys) {}
    /// `wanted`: the member is written even if the file did not have it.
    void put(const std::string& key, Json value, bool wanted);
    /// An object or a list, wanted if it is not empty.
    void putUnlessEmpty(const std::string& key, Json value);
    [[nodiscard]] Json take();

private:
    struct Member {
        std::string key;
        Json value;
        bool wanted;
        bool taken = false;
    };
    const FileKeys& remembered_;
    std::vector<Member> members_;
};

}  // namespace tenter::project
