#include "session/selection_model.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace tenter::desktop {

SelectionModel::SelectionModel(Document& document, const ShownProject& shown, QObject* parent)
    : QObject(parent),
      document_(document),
      shown_(shown),
      opening_(document.opening()),
      announced_{place(), others(), role(), opening_} {
    connect(&shown_, &ShownProject::changed, this, [this] { announce(false); });
}

void SelectionModel::follow() const {
    if (std::exchange(revision_, shown_.revision()) == shown_.revision()) return;
    if (std::exchange(opening_, document_.opening()) != document_.opening()) {
        place_.reset();
        others_.clear();
        role_ = "heading";
        roleChosen_ = false;
    }
    adjust();
}

void SelectionModel::adjust() const {
    if (!place_) return;
    const auto& cards = document_.project().row().cards;
    const auto& trial = shown_.trial();
    if ((trial && project::changesParts(*trial)) || place_->card >= cards.size()) {
        place_.reset();
        others_.clear();
        return;
    }
    std::erase_if(others_, [this](const Place& other) { return !isThere(other); });
    const auto& parts = cards[place_->card].parts;
    if (place_->part && *place_->part >= parts.size()) place_->part.reset();
    if (!place_->part || roleChosen_) return;
    if (const auto* text = std::get_if<project::TextPart>(&parts[*place_->part])) role_ = text->role;
}

const std::optional<Place>& SelectionModel::place() const {
    follow();
    return place_;
}

bool SelectionModel::isThere(const Place& place) const {
    const auto& cards = document_.project().row().cards;
    return place.card < cards.size() && (!place.part || *place.part < cards[place.card].parts.size());
}

const project::TextPart* SelectionModel::textAt(const Place& place) const {
    if (!place.part || !isThere(place)) return nullptr;
    return std::get_if<project::TextPart>(&document_.project().part(*place.partRef()));
}

const std::vector<Place>& SelectionModel::others() const {
    follow();
    return others_;
}

std::vector<Place> SelectionModel::all() const {
    std::vector<Place> all = others();
    if (place_) all.push_back(*place_);
    std::ranges::sort(all, [](const Place& a, const Place& b) { return a < b; });
    return all;
}

std::vector<std::string> SelectionModel::roles() const {
    std::vector<std::string> roles{role()};
    for (const Place& place : all())
        if (const auto* text = textAt(place); text && std::ranges::find(roles, text->role) == roles.end())
            roles.push_back(text->role);
    return roles;
}

std::optional<std::size_t> SelectionModel::card() const {
    return place() ? std::optional(place()->card) : std::nullopt;
}

std::optional<project::PartRef> SelectionModel::part() const {
    return place() ? place()->partRef() : std::nullopt;
}

const std::string& SelectionModel::role() const {
    follow();
    return role_;
}

void SelectionModel::select(const std::optional<Place>& place, bool reveal) {
    selectSeveral(place ? std::vector{*place} : std::vector<Place>{}, reveal);
}

void SelectionModel::selectSeveral(const std::vector<Place>& places, bool reveal) {
    follow();
    place_.reset();
    others_ = places;
    if (!others_.empty()) {
        place_ = others_.back();
        others_.pop_back();
    }
    roleChosen_ = false;
    adjust();
    if (place_ != announced_.place || others_ != announced_.others || role_ != announced_.role)
        document_.endGesture();
    announce(reveal);
}

void SelectionModel::toggle(const Place& place) {
    std::vector<Place> places = others();
    if (place_) places.push_back(*place_);
    if (std::erase(places, place) == 0) places.push_back(place);
    selectSeveral(places);
}

void SelectionModel::extend(const Place& place) {
    // What was selected first.
    const std::optional<project::PartRef> from = others().empty() ? part() : others_.front().partRef();
    if (!from || !place.part) {
        select(place);
        return;
    }
    const auto& cards = document_.project().row().cards;
    const auto kindOf = [](const project::Part& part) {
        const auto* text = std::get_if<project::TextPart>(&part);
        return text ? text->role : std::string();
    };
    const bool back = place < Place::of(*from);
    const std::size_t first = std::min(from->card, place.card);
    const std::size_t last = std::max(from->card, place.card);
    std::vector<Place> places;
    for (std::size_t card = first; card <= last && last < cards.size(); ++card)
        for (std::size_t i = 0; i < cards[card].parts.size(); ++i) {
            const bool between =
                first == last
                    ? i >= std::min(from->part, *place.part) && i <= std::max(from->part, *place.part)
                    : kindOf(cards[card].parts[i]) == kindOf(cards[place.card].parts[*place.part]);
            if (between) places.push_back({card, i});
        }
    // What was selected first stays, and what was clicked is the last.
    std::erase(places, Place::of(*from));
    std::erase(places, place);
    if (back) std::ranges::reverse(places);
    places.insert(places.begin(), Place::of(*from));
    if (place != Place::of(*from)) places.push_back(place);
    selectSeveral(places);
}

void SelectionModel::selectRole(const std::string& role, bool reveal) {
    if (role != this->role()) {
        document_.endGesture();
        role_ = role;
        roleChosen_ = true;
    }
    announce(reveal);
}

void SelectionModel::announce(bool reveal) {
    const State now{place(), others(), role(), opening_};
    const State before = std::exchange(announced_, now);
    Changes changes;
    changes.setFlag(Change::Place, now.place != before.place || now.others != before.others ||
                                       now.opening != before.opening);
    changes.setFlag(Change::Role, now.role != before.role || now.opening != before.opening);
    changes.setFlag(Change::Reveal, reveal);
    if (changes) Q_EMIT changed(changes);
}

}  // namespace tenter::desktop
