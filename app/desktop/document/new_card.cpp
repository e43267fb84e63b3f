#include "document/new_card.h"

#include <algorithm>

namespace tenter::desktop {

project::TextPart newTextPart(const std::string& role) {
    std::string kind = role == "body" ? "paragraph" : role;
    std::replace(kind.begin(), kind.end(), '-', ' ');
    project::TextPart part;
    part.role = role;
    part.copy = {{project::Run::Kind::Plain, "New " + kind, {}}};
    if (role == "button") part.link = "#";
    return part;
}

project::Card newCard() {
    project::Card card;
    for (const char* role : {"heading", "body", "button"})
        card.parts.emplace_back(newTextPart(role));
    return card;
}

}  // namespace tenter::desktop
