#include "project/file.h"
#include "project/settings_json.h"

namespace tenter::project {

namespace {

// What to do with the setting at the end of a path: read it, set it or unset it.
struct SettingAccess {
    ReadContext& context;
    const Json* value = nullptr;  ///< null pointer: read into `result`; JSON null: unset
    Json result;
    bool done = false;
};

std::string takeFirstStep(std::string& path) {
    const std::size_t slash = std::min(path.find('/'), path.size());
    std::string first = path.substr(0, slash);
    path.erase(0, slash + 1);
    return first;
}

bool isUnset(const Json& json) {
    return json.is_null() || (json.is_object() && json.empty());
}

template <class T>
void accessHere(SettingAccess& access, T& member) {
    if (access.value == nullptr) {
        access.result = written(member);
        if (access.result.is_object() && access.result.empty()) access.result = nullptr;
        access.done = true;
    } else if (access.value->is_null()) {
        member = T{};
        access.done = true;
    } else {
        T fresh{};
        access.done = readValue(access.context, *access.value, fresh);
        if (access.done) member = std::move(fresh);
    }
}

bool noSuchSetting(SettingAccess& access, const std::string& key, const std::vector<std::string>& known) {
    const ReadContext::Step step = access.context.at(key);
    return access.context.wrong("There is no such setting.", "Use " + either(known) + ".");
}

template <class T>
void follow(SettingAccess& access, std::optional<T>& member, const std::string& path) {
    if (path.empty()) return accessHere(access, member);
    noSuchSetting(access, path, {"the path without its last step"});
}

void follow(SettingAccess& access, RoleStyles& styles, std::string path);

template <HasMembers T>
void follow(SettingAccess& access, T& group, std::string path) {
    if (path.empty()) return accessHere(access, group);
    const std::string key = takeFirstStep(path);
    bool found = false;
    T::members([&](const char* name, auto member) {
        if (key != name) return;
        found = true;
        const ReadContext::Step step = access.context.at(key);
        follow(access, group.*member, path);
    });
    if (!found) noSuchSetting(access, key, keysOf<T>());
}

void follow(SettingAccess& access, RoleStyles& styles, std::string path) {
    if (path.empty()) return accessHere(access, styles);
    const std::string role = takeFirstStep(path);
    const ReadContext::Step step = access.context.at(role);
    if (!isRoleName(role)) {
        access.context.mustBe(roleNameRule, inQuotes(role));
        return;
    }
    const TextStyle* before = styles.find(role);
    TextStyle style = before == nullptr ? TextStyle{} : *before;
    follow(access, style, path);
    if (!access.done || access.value == nullptr) return;
    if (isUnset(written(style))) {
        std::erase_if(styles.roles, [&](const auto& entry) { return entry.first == role; });
    } else {
        styles.of(role) = std::move(style);
    }
}

}  // namespace

Json settingAt(const Settings& settings, const std::string& path) {
    Problems ignored;
    ReadContext context({}, {}, ignored);
    SettingAccess access{context, nullptr, nullptr};
    Settings copy = settings;
    follow(access, copy, path);
    return access.done ? access.result : Json();
}

bool setSetting(Settings& settings, const std::string& path, const Json& value, Problems& problems) {
    ReadContext context({}, {}, problems);
    SettingAccess access{context, &value, nullptr};
    follow(access, settings, path);
    return access.done;
}

}  // namespace tenter::project
