#include "emit/usage.h"

#include <algorithm>

#include "project/cascade.h"
#include "text/unicode.h"

namespace tenter::emit {

using project::Run;

std::string PicturePosition::word() const {
    if (!leading) return last ? "further-last" : "further";
    if (first) return last ? "only" : "first";
    return last ? "last" : "inside";
}

PicturePosition picturePosition(const project::Card& card, std::size_t part) {
    PicturePosition stand{part == 0, part + 1 == card.parts.size(), true};
    for (std::size_t i = 0; i < part; ++i)
        if (std::holds_alternative<project::PicturePart>(card.parts[i])) stand.leading = false;
    return stand;
}

std::vector<PicturePosition> picturePositions(const project::Project& project) {
    std::vector<PicturePosition> stands;
    for (const project::Card& card : project.row().cards) {
        for (std::size_t i = 0; i < card.parts.size(); ++i) {
            if (!std::holds_alternative<project::PicturePart>(card.parts[i])) continue;
            const PicturePosition stand = picturePosition(card, i);
            if (std::ranges::find(stands, stand) == stands.end()) stands.push_back(stand);
        }
    }
    return stands;
}

bool positionsNeedClasses(const project::Project& project) {
    if (picturePositions(project).size() < 2) return false;
    for (const project::Variant& variant : project.row().variants) {
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            const project::CardSettings card = project::resolve(project, variant, band).card;
            if (card.bleed.value_or(false) || card.direction == project::Direction::Beside) return true;
        }
    }
    return false;
}

bool isWholeLink(const project::TextPart& part) {
    return part.role == "button" || !part.link.empty();
}

std::vector<RoleUse> roleUses(const project::Project& project) {
    std::vector<RoleUse> uses;
    for (const project::Card& card : project.row().cards) {
        for (const project::Part& part : card.parts) {
            const auto* text = std::get_if<project::TextPart>(&part);
            if (text == nullptr) continue;
            auto use = std::ranges::find(uses, text->role, &RoleUse::role);
            if (use == uses.end()) use = uses.insert(uses.end(), RoleUse{text->role, false, false});
            if (isWholeLink(*text)) {
                use->wholeLink = true;
            } else if (std::ranges::find(text->copy, Run::Kind::Link, &Run::kind) != text->copy.end()) {
                use->linkRuns = true;
            }
        }
    }
    if (uses.empty())
        for (const std::string& role : project::roles(project))
            uses.push_back({role, role == "button", false});
    return uses;
}

bool usesRun(const project::Project& project, Run::Kind kind) {
    for (const project::Card& card : project.row().cards)
        for (const project::Part& part : card.parts)
            if (const auto* text = std::get_if<project::TextPart>(&part))
                if (std::ranges::find(text->copy, kind, &Run::kind) != text->copy.end()) return true;
    return false;
}

bool usesIdeographs(const project::Project& project) {
    for (const project::Card& card : project.row().cards)
        for (const project::Part& part : card.parts)
            if (const auto* text = std::get_if<project::TextPart>(&part))
                for (const Run& run : text->copy) {
                    const std::u16string units = text::toUtf16(run.text);
                    for (std::size_t i = 0; i < units.size(); ++i)
                        if (text::isHanOrKana(text::codePointAt(units, i))) return true;
                }
    return false;
}

}  // namespace tenter::emit
