#include "project/card_scale.h"

#include <algorithm>

namespace tenter::project {

namespace {

bool isCardScale(const std::optional<Length>& length) {
    return length && length->unit() == units::Unit::Cqi;
}
bool isCardScale(const std::optional<LineHeight>& height) {
    return height && !height->isNumber() && height->length().unit() == units::Unit::Cqi;
}
bool isCardScale(const std::optional<Follow>& follow) {
    return follow == Follow::Card;
}
template <class T>
bool isCardScale(const std::optional<T>& /*other*/) {
    return false;
}

template <class T>
void look(const std::optional<T>& member, const std::string& path, std::optional<std::string>& found) {
    if (!found && isCardScale(member)) found = path;
}
template <HasMembers T>
void look(const T& group, const std::string& path, std::optional<std::string>& found) {
    T::members(
        [&](const char* key, auto member) { look(group.*member, path + "/" + std::string(key), found); });
}

}  // namespace

std::vector<std::string> usedRoles(const Project& project) {
    std::vector<std::string> used;
    for (const Card& card : project.row().cards) {
        for (const Part& part : card.parts) {
            const auto* text = std::get_if<TextPart>(&part);
            if (text == nullptr || std::find(used.begin(), used.end(), text->role) != used.end()) continue;
            used.push_back(text->role);
        }
    }
    return used.empty() ? roles(project) : used;
}

std::optional<std::string> cardScaleAt(const Settings& settings, const std::vector<std::string>& roles) {
    std::optional<std::string> found;
    look(settings.picture, "picture", found);
    for (const std::string& role : roles)
        if (const TextStyle* style = settings.text.find(role)) look(*style, "text/" + role, found);
    return found;
}

}  // namespace tenter::project
