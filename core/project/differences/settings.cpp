// Differences of settings and wishes: member by member.
#include "project/differences/comparison.h"
#include "project/differences/setting_changes.h"
#include "project/differences/setting_names.h"
#include "project/project_json.h"

namespace tenter::project {

namespace {

using Leaves = std::vector<SettingChange>;

void walk(const std::string& path, const RoleStyles& before, const RoleStyles& after, Leaves& out);

template <class T>
void walk(const std::string& path, const std::optional<T>& before, const std::optional<T>& after,
          Leaves& out) {
    if (before != after) out.push_back({path, written(before), written(after)});
}

void walk(const std::string& path, const std::string& before, const std::string& after, Leaves& out) {
    if (before != after) out.push_back({path, before, after});
}

template <HasMembers T>
void walk(const std::string& path, const T& before, const T& after, Leaves& out) {
    T::members([&](const char* key, auto member) {
        walk(path.empty() ? std::string(key) : path + "/" + key, before.*member, after.*member, out);
    });
}

void walk(const std::string& path, const RoleStyles& before, const RoleStyles& after, Leaves& out) {
    static const TextStyle none;
    const std::string stem = path + "/";
    for (const auto& [role, style] : before.roles) {
        const TextStyle* other = after.find(role);
        walk(stem + role, style, other == nullptr ? none : *other, out);
    }
    for (const auto& [role, style] : after.roles)
        if (before.find(role) == nullptr) walk(stem + role, none, style, out);
}

std::string roleWords(const RoleWishes& wishes) {
    std::string widths;
    if (wishes.from) widths += " above " + valueWords(*wishes.from) + "\u00A0px";
    if (wishes.upTo) widths += " up to " + valueWords(*wishes.upTo) + "\u00A0px";
    return roleTitle(wishes.role) + widths;
}

/// The labels of the section Wishes in the window.
std::string wishName(const std::string& key) {
    static const std::vector<std::pair<std::string, std::string>> names{
        {"lines", "Lines at most"},
        {"leastMeasure", "Measure at least"},
        {"mostMeasure", "Measure at most"},
        {"leastSize", "Size at least"},
        {"mostSize", "Size at most"},
        {"locked", "Sizes"},
        {"ratioTo", "Ratio to role"},
        {"ratio", "Ratio"},
        {"leastRatio", "Ratio"},
        {"growth", "Growth at most"},
        {"withColumn", "Narrower column"},
        {"zoom", "Double at zoom"},
        {"breakpoints", "Breakpoints"},
        {"sameInVariants", "Variants"},
        {"aim", "Aim"},
        {"grid", "Size grid"},
        {"reserve", "Reserve"},
        {"slack", "Slack"},
        {"narrowSlack", "Slack < 500\u00A0px"}};
    for (const auto& [known, name] : names)
        if (known == key) return name;
    return key;
}

}  // namespace

std::vector<SettingChange> settingChanges(const Settings& before, const Settings& after) {
    Leaves leaves;
    walk("", before, after, leaves);
    return leaves;
}

void Comparison::settings(const std::string& oldPlace, const std::string& newPlace, const Settings& before,
                          const Settings& after, const std::string& scope) {
    Leaves leaves = settingChanges(before, after);
    const bool style = oldPlace == "/style";
    for (SettingChange& leaf : leaves) {
        const std::string name = settingName(leaf.path);
        const std::string was = leaf.before.is_null() ? "" : settingWords(leaf.path, leaf.before);
        const std::string is = leaf.after.is_null() ? "" : settingWords(leaf.path, leaf.after);
        Difference difference;
        std::string& says = difference.says;
        says = name;
        if (was.empty()) {
            difference.kind = Difference::Kind::Added;
            says.append(" is now set to ").append(is).append(" ").append(scope);
            says.append(style ? "; before, it was the default." : "; before, it was inherited.");
        } else if (is.empty()) {
            difference.kind = Difference::Kind::Removed;
            says.append(" is no longer set ").append(scope).append("; it was ").append(was).append(".");
        } else {
            says.append(" changes from ").append(was).append(" to ").append(is);
            says.append(" ").append(scope).append(".");
        }
        if (!was.empty()) difference.oldPlace = oldPlace + "/" + leaf.path;
        if (!is.empty()) difference.newPlace = newPlace + "/" + leaf.path;
        difference.before = std::move(leaf.before);
        difference.after = std::move(leaf.after);
        add(std::move(difference));
    }
}

void Comparison::compareWishes() {
    const Wishes before = before_.row().wishes.value_or(Wishes{});
    const Wishes after = after_.row().wishes.value_or(Wishes{});
    const auto general = [&](const char* key, const auto& old, const auto& fresh) {
        if (old != fresh)
            value(std::string("/wishes/") + key, "Solver settings › " + wishName(key), written(old),
                  written(fresh));
    };
    general("aim", before.aim, after.aim);
    general("grid", before.grid, after.grid);
    general("reserve", before.reserve, after.reserve);
    general("slack", before.slack, after.slack);
    general("narrowSlack", before.narrowSlack, after.narrowSlack);
    if (before.without != after.without)
        value("/wishes/without", "The list of cards that wishes ignore", writtenList(before.without),
              writtenList(after.without));
    const auto same = [](const RoleWishes& a, const RoleWishes& b) {
        return a.role == b.role && a.from == b.from && a.upTo == b.upTo;
    };
    const auto find = [&](const Wishes& wishes, const RoleWishes& entry) {
        std::size_t at = 0;
        while (at < wishes.roles.size() && !same(wishes.roles[at], entry))
            ++at;
        return at;
    };
    const std::string list = "/wishes/roles";
    for (std::size_t i = 0; i < before.roles.size(); ++i)
        if (find(after, before.roles[i]) == after.roles.size())
            add({Difference::Kind::Removed, placeOf(list, i), "", written(before.roles[i]), nullptr,
                 "The wishes for " + roleWords(before.roles[i]) + " are removed."});
    for (std::size_t i = 0; i < after.roles.size(); ++i) {
        const std::size_t old = find(before, after.roles[i]);
        if (old == before.roles.size()) {
            add({Difference::Kind::Added, "", placeOf(list, i), nullptr, written(after.roles[i]),
                 "There are new wishes for " + roleWords(after.roles[i]) + "."});
            continue;
        }
        Leaves leaves;
        walk("", before.roles[old], after.roles[i], leaves);
        for (const SettingChange& leaf : leaves)
            value(placeOf(list, old) + "/" + leaf.path, placeOf(list, i) + "/" + leaf.path,
                  "Wishes for " + roleWords(after.roles[i]) + " › " + wishName(leaf.path), leaf.before,
                  leaf.after);
    }
}

}  // namespace tenter::project
