#include "session/selection_model.h"

#include <utility>
#include <variant>

namespace tenter::desktop {

SelectionModel::SelectionModel(Document& document, const ShownProject& shown, QObject* parent)
    : QObject(parent),
      document_(document),
      shown_(shown),
      opening_(document.opening()),
      announced_{place(), role(), opening_} {
    connect(&shown_, &ShownProject::changed, this, [this] { announce(false); });
}

void SelectionModel::follow() const {
    if (std::exchange(revision_, shown_.revision()) == shown_.revision()) return;
    if (std::exchange(opening_, document_.opening()) != document_.opening()) {
        place_.reset();
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
        return;
    }
    const auto& parts = cards[place_->card].parts;
    if (place_->part && *place_->part >= parts.size()) place_->part.reset();
    if (!place_->part || roleChosen_) return;
    if (const auto* text = std::get_if<project::TextPart>(&parts[*place_->part])) role_ = text->role;
}

const std::optional<Place>& SelectionModel::place() const {
    follow();
    return place_;
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
    follow();
    place_ = place;
    roleChosen_ = false;
    adjust();
    if (place_ != announced_.place || role_ != announced_.role) document_.endGesture();
    announce(reveal);
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
    const State now{place(), role(), opening_};
    const State before = std::exchange(announced_, now);
    Changes changes;
    changes.setFlag(Change::Place, now.place != before.place || now.opening != before.opening);
    changes.setFlag(Change::Role, now.role != before.role || now.opening != before.opening);
    changes.setFlag(Change::Reveal, reveal);
    if (changes) Q_EMIT changed(changes);
}

}  // namespace tenter::desktop
