#include "project/file.h"
#include "project/settings_json.h"

namespace tenter::project {

namespace {

// What is to be done at the end of a path.
struct Errand {
    Reading& reading;
    const Json* value = nullptr;  ///< null: read into `result`, a JSON null: unset
    Json result;
    bool done = false;
};

std::string takeFirst(std::string& path) {
    const std::size_t slash = std::min(path.find('/'), path.size());
    std::string first = path.substr(0, slash);
    path.erase(0, slash + 1);
    return first;
}

bool isUnset(const Json& json) {
    return json.is_null() || (json.is_object() && json.empty());
}

template <class T>
void doHere(Errand& errand, T& member) {
    if (errand.value == nullptr) {
        errand.result = written(member);
        if (errand.result.is_object() && errand.result.empty()) errand.result = nullptr;
        errand.done = true;
    } else if (errand.value->is_null()) {
        member = T{};
        errand.done = true;
    } else {
        T fresh{};
        errand.done = readValue(errand.reading, *errand.value, fresh);
        if (errand.done) member = std::move(fresh);
    }
}

bool noSuchSetting(Errand& errand, const std::string& key, const std::vector<std::string>& known) {
    const Reading::Step step = errand.reading.at(key);
    return errand.reading.wrong("there is no such setting", "known are " + either(known));
}

template <class T>
void follow(Errand& errand, std::optional<T>& member, const std::string& path) {
    if (path.empty()) return doHere(errand, member);
    noSuchSetting(errand, path, {"the path without its last step"});
}

void follow(Errand& errand, RoleStyles& styles, std::string path);

template <Described T>
void follow(Errand& errand, T& group, std::string path) {
    if (path.empty()) return doHere(errand, group);
    const std::string key = takeFirst(path);
    bool found = false;
    T::members([&](const char* name, auto member) {
        if (key != name) return;
        found = true;
        const Reading::Step step = errand.reading.at(key);
        follow(errand, group.*member, path);
    });
    if (!found) noSuchSetting(errand, key, keysOf<T>());
}

void follow(Errand& errand, RoleStyles& styles, std::string path) {
    if (path.empty()) return doHere(errand, styles);
    const std::string role = takeFirst(path);
    const Reading::Step step = errand.reading.at(role);
    if (!isRoleName(role)) {
        errand.reading.wrong(inQuotes(role) + " is no name for a role",
                             "use small letters, digits and hyphens");
        return;
    }
    const TextStyle* before = styles.find(role);
    TextStyle style = before == nullptr ? TextStyle{} : *before;
    follow(errand, style, path);
    if (!errand.done || errand.value == nullptr) return;
    if (isUnset(written(style))) {
        std::erase_if(styles.roles, [&](const auto& entry) { return entry.first == role; });
    } else {
        styles.of(role) = std::move(style);
    }
}

}  // namespace

Json settingAt(const Settings& settings, const std::string& path) {
    Problems ignored;
    Reading reading({}, {}, ignored);
    Errand errand{reading, nullptr, nullptr};
    Settings copy = settings;
    follow(errand, copy, path);
    return errand.done ? errand.result : Json();
}

bool setSetting(Settings& settings, const std::string& path, const Json& value, Problems& problems) {
    Reading reading({}, {}, problems);
    Errand errand{reading, &value, nullptr};
    follow(errand, settings, path);
    return errand.done;
}

}  // namespace tenter::project
