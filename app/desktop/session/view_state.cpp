#include "session/view_state.h"

#include <algorithm>
#include <utility>

namespace tenter::desktop {

ViewState::ViewState(Document& document, const ShownProject& shown, QObject* parent)
    : QObject(parent), document_(document), shown_(shown), opening_(document.opening()), announced_(state()) {
    connect(&shown_, &ShownProject::changed, this, &ViewState::announce);
}

double ViewState::width() const {
    return std::clamp(width_, shown_.project().leastWidth, shown_.project().mostWidth);
}

std::size_t ViewState::variant() const {
    if (std::exchange(opening_, document_.opening()) != document_.opening()) variant_ = 0;
    return std::min(variant_, shown_.project().row().variants.size() - 1);
}

void ViewState::setWidth(double width) {
    width_ = width;
    announce();
}

void ViewState::setVariant(std::size_t variant) {
    variant = std::min(variant, shown_.project().row().variants.size() - 1);
    if (variant == this->variant()) return;
    document_.endGesture();
    variant_ = variant;
    announce();
}

void ViewState::setProfile(const text::BreakProfile& profile) {
    profile_ = &profile;
    announce();
}

ViewState::State ViewState::state() const {
    return {width(), variant(), profile_, opening_};
}

void ViewState::announce() {
    const State now = state();
    const State before = std::exchange(announced_, now);
    // A width or variant that the project had to exclude does not come back with it.
    width_ = now.width;
    variant_ = now.variant;
    Changes changes;
    changes.setFlag(Change::Width, now.width != before.width);
    changes.setFlag(Change::Variant, now.variant != before.variant || now.opening != before.opening);
    changes.setFlag(Change::BreakProfile, now.profile != before.profile);
    if (changes) Q_EMIT changed(changes);
}

}  // namespace tenter::desktop
