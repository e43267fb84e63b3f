#include "document/viewing.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace tenter::desktop {

Viewing::Viewing(Document& document, QObject* parent) : QObject(parent), document_(document) {
    connect(&document_, &Document::opened, this, &Viewing::startAnew);
    connect(&document_, &Document::changed, this, [this] {
        if (revision_ == document_.revision()) return;
        proposal_ = proposer_ ? proposer_() : nullptr;
        invalidate();
    });
}

Viewing::~Viewing() = default;

std::size_t Viewing::variant() const {
    return std::min(variant_, shown().row().variants.size() - 1);
}

const project::Project& Viewing::shown() const {
    if (!trial()) return untried();
    if (!tried_) tried_ = std::make_shared<const project::Project>(project::tried(untried(), *trial_));
    return *tried_;
}

const project::Project& Viewing::untried() const {
    if (showsSaved_) return document_.savedProject();
    return proposal_ ? *proposal_ : document_.project();
}

bool Viewing::hasFewParts() const {
    constexpr std::size_t few = 64;
    std::size_t parts = 0;
    for (const project::Card& card : shown().row().cards)
        parts += card.parts.size();
    return parts <= few;
}

std::shared_ptr<const layout::PreparedRow> Viewing::rowUnder(const text::BreakProfile& profile) const {
    Made& made = made_[&profile];
    if (!made.row)
        made.row =
            std::make_shared<const layout::PreparedRow>(shown(), variant(), document_.store(), profile);
    return made.row;
}

const layout::Layout& Viewing::layoutUnder(const text::BreakProfile& profile) const {
    const auto row = rowUnder(profile);
    Made& made = made_[&profile];
    if (!made.laidOut) layout::layOut(*row, width_, made.layout);
    made.laidOut = true;
    return made.layout;
}

void Viewing::forgetLayouts() {
    for (auto& [profile, made] : made_)
        made.laidOut = false;
}

void Viewing::forgetRows() {
    tried_.reset();
    for (auto& [profile, made] : made_)
        made.row.reset();
    forgetLayouts();
}

void Viewing::propose(Proposal proposal) {
    if (proposal == proposal_) return;
    proposal_ = std::move(proposal);
    invalidate();
    Q_EMIT proposed();
}

void Viewing::setMarks(std::vector<Mark> marks) {
    if (marks == marks_) return;
    marks_ = std::move(marks);
    Q_EMIT marksChanged();
}

void Viewing::goTo(const Mark& mark) {
    const Mark there = mark;  // a copy, because changing the variant can clear the marks
    setVariant(there.variant);
    if (there.part.card >= 0)
        select(there.part);
    else
        selectRole(there.role);
    setWidth(there.width);
    Q_EMIT wentThere();
}

void Viewing::lookLike(const Viewing& other, std::size_t variant) {
    setProfile(*other.profile_);
    showSaved(other.showsSaved_);
    tryOut(other.trial_);
    // The document's `changed` signal may not have reached this object yet.
    if (revision_ != document_.revision()) {
        proposal_ = other.proposal_;
        invalidate();
    }
    propose(other.proposal_);
    setVariant(variant);
    setWidth(other.width_);
}

void Viewing::tryOut(std::optional<project::Trial> trial) {
    if (trial == trial_) return;
    trial_ = trial;
    invalidate();
    Q_EMIT trialChanged();
}

void Viewing::previewSize(std::optional<SizePreview> preview) {
    if (preview == sizePreview_) return;
    sizePreview_ = std::move(preview);
    Q_EMIT previewChanged();
}

void Viewing::setWidth(double width) {
    const double within = std::clamp(width, shown().leastWidth, shown().mostWidth);
    if (within == width_) return;
    width_ = within;
    forgetLayouts();
    Q_EMIT widthChanged(width_);
    Q_EMIT layoutChanged();
}

void Viewing::setVariant(std::size_t variant) {
    variant = std::min(variant, shown().row().variants.size() - 1);
    if (variant == variant_) return;
    document_.endGesture();
    variant_ = variant;
    forgetRows();
    Q_EMIT variantChanged();
    Q_EMIT rowChanged();
    Q_EMIT layoutChanged();
}

void Viewing::setProfile(const text::BreakProfile& profile) {
    if (&profile == profile_) return;
    profile_ = &profile;
    Q_EMIT profileChanged();
    Q_EMIT rowChanged();
    Q_EMIT layoutChanged();
}

void Viewing::select(Selection selection) {
    const Selection before = selection_;
    const std::string roleBefore = role_;
    selection_ = selection;
    keepSelectionSound();
    if (selection_ == before && role_ == roleBefore) return;
    document_.endGesture();
    Q_EMIT selectionChanged();
}

void Viewing::selectRole(const std::string& role) {
    if (role == role_) return;
    document_.endGesture();
    role_ = role;
    Q_EMIT selectionChanged();
}

void Viewing::setScope(project::CascadeLayer scope) {
    if (scope == scope_) return;
    document_.endGesture();
    scope_ = scope;
    Q_EMIT selectionChanged();
}

void Viewing::showSaved(bool on) {
    if (on == showsSaved_) return;
    showsSaved_ = on;
    invalidate();
}

project::Problems Viewing::setSetting(const QString& name, const std::string& path,
                                      const project::Json& value, const QString& gesture) {
    project::Problems problems;
    project::Problems refusal = document_.edit(
        name, [&](project::Project& project) { project::setSetting(layer(project), path, value, problems); },
        gesture);
    return problems.empty() ? refusal : problems;
}

bool Viewing::edit(const QString& name, const std::function<void(project::Project&)>& change,
                   const QString& gesture) {
    const project::Problems problems = document_.edit(name, change, gesture);
    if (!problems.empty()) Q_EMIT refused(problems);
    return problems.empty();
}

project::Settings& Viewing::layer(project::Project& project) const {
    const std::size_t variant = std::min(variant_, project.row().variants.size() - 1);
    return project::settingsOf(project, scope_, variant,
                               project::bandAt(project.row().variants[variant], width_));
}

void Viewing::startAnew() {
    variant_ = 0;
    selection_ = {};
    role_ = "heading";
    scope_ = project::CascadeLayer::Style;
    showsSaved_ = false;
    proposal_.reset();
    const bool wasTried = std::exchange(trial_, std::nullopt).has_value();
    forgetRows();
    if (wasTried) Q_EMIT trialChanged();
    Q_EMIT variantChanged();
    Q_EMIT selectionChanged();
}

void Viewing::invalidate() {
    revision_ = document_.revision();
    forgetRows();
    variant_ = variant();
    const Selection before = selection_;
    keepSelectionSound();
    fitWidth();
    Q_EMIT rowChanged();
    Q_EMIT layoutChanged();
    if (selection_ != before) Q_EMIT selectionChanged();
}

void Viewing::keepSelectionSound() {
    const auto& cards = document_.project().row().cards;
    if (trial() && project::changesParts(*trial_)) {
        selection_ = {};
        return;
    }
    if (selection_.card < 0 || selection_.card >= static_cast<int>(cards.size())) {
        selection_ = {};
        return;
    }
    const auto& parts = cards[static_cast<std::size_t>(selection_.card)].parts;
    if (selection_.part < 0 || selection_.part >= static_cast<int>(parts.size())) {
        selection_.part = -1;
        return;
    }
    if (const auto* text = std::get_if<project::TextPart>(&parts[static_cast<std::size_t>(selection_.part)]))
        role_ = text->role;
}

void Viewing::fitWidth() {
    const double within = std::clamp(width_, shown().leastWidth, shown().mostWidth);
    if (within == width_) return;
    width_ = within;
    Q_EMIT widthChanged(width_);
}

}  // namespace tenter::desktop
