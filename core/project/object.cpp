#include "project/object.h"

#include <algorithm>

#include "project/json_text.h"

namespace tenter::project {

bool isExtensionKey(const std::string& key) {
    return key.starts_with("x-");
}

ObjectReader::ObjectReader(ReadContext& context, const Json& json, FileKeys& fileKeys,
                           std::vector<std::string> known)
    : context_(context), json_(json) {
    fileKeys.keys.clear();
    if (!json.is_object()) {
        context.mustBe("an object, written in { }", shown(json));
        return;
    }
    for (const auto& [key, value] : json.get_ref<const Json::object_t&>()) {
        if (isExtensionKey(key)) {
            fileKeys.keys.emplace_back(key, compactJson(value));
        } else if (std::find(known.begin(), known.end(), key) != known.end()) {
            fileKeys.keys.emplace_back(key, "");
        } else {
            const ReadContext::Step step = context.at(key);
            const std::string near = nearest(key, known);
            context.wrong(
                "The key " + inQuotes(key) + " is not known here.",
                (near.empty() ? "Use " + either(known) + "." : "Did you mean " + inQuotes(near) + "?") +
                    " A key of your own must start with x-.");
        }
    }
}

const Json* ObjectReader::find(const char* key) const {
    if (!json_.is_object()) return nullptr;
    const auto found = json_.find(key);
    return found == json_.end() ? nullptr : &*found;
}

bool ObjectReader::missing(const char* key, const char* fix) {
    return context_.wrong("The key " + inQuotes(key) + " is missing.", fix);
}

void ObjectWriter::put(const std::string& key, Json value, bool wanted) {
    members_.push_back({key, std::move(value), wanted});
}

void ObjectWriter::putUnlessEmpty(const std::string& key, Json value) {
    const bool wanted = !value.empty();
    put(key, std::move(value), wanted);
}

Json ObjectWriter::take() {
    Json result = Json::object();
    auto& object = result.get_ref<Json::object_t&>();
    for (const auto& [key, value] : remembered_.keys) {
        if (isExtensionKey(key)) {
            Json foreign = Json::parse(value, nullptr, false);
            object.emplace_back(key, foreign.is_discarded() ? Json() : std::move(foreign));
            continue;
        }
        const auto found = std::find_if(members_.begin(), members_.end(),
                                        [&name = key](const Member& member) { return member.key == name; });
        if (found == members_.end() || found->taken) continue;
        found->taken = true;
        object.emplace_back(found->key, std::move(found->value));
    }
    for (Member& member : members_) {
        if (member.wanted && !member.taken) object.emplace_back(member.key, std::move(member.value));
    }
    return result;
}

}  // namespace tenter::project
