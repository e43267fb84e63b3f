#include "session/shown_project.h"

#include <utility>

namespace tenter::desktop {

ShownProject::ShownProject(const Document& document, QObject* parent)
    : QObject(parent),
      document_(document),
      documentRevision_(document.revision()),
      opening_(document.opening()),
      announced_(state()) {
    connect(&document_, &Document::changed, this, &ShownProject::announce);
}

// A proposal, and in another project also the text test, belong to the document as it was.
void ShownProject::follow() const {
    if (documentRevision_ == document_.revision()) return;
    documentRevision_ = document_.revision();
    proposal_ = nullptr;
    if (std::exchange(opening_, document_.opening()) != document_.opening()) {
        showsSaved_ = false;
        trial_.reset();
    }
    invalidate();
    if (!proposer_) return;
    proposal_ = proposer_();
    invalidate();
}

void ShownProject::invalidate() const {
    ++revision_;
    tried_.reset();
}

const project::Project& ShownProject::project() const {
    const project::Project& whole = untried();
    if (!trial_ || showsSaved_) return whole;
    if (!tried_) tried_ = std::make_shared<const project::Project>(project::tried(whole, *trial_));
    return *tried_;
}

const project::Project& ShownProject::untried() const {
    follow();
    if (showsSaved_) return document_.savedProject();
    return proposal_ && !hidesProposal_ ? *proposal_ : document_.project();
}

int ShownProject::revision() const {
    follow();
    return revision_;
}

bool ShownProject::hasFewParts() const {
    constexpr std::size_t few = 64;
    std::size_t parts = 0;
    for (const project::Card& card : project().row().cards)
        parts += card.parts.size();
    return parts <= few;
}

std::optional<project::Trial> ShownProject::trial() const {
    follow();
    return showsSaved_ ? std::nullopt : trial_;
}

const ShownProject::Proposal& ShownProject::proposal() const {
    follow();
    return proposal_;
}

bool ShownProject::showsSaved() const {
    follow();
    return showsSaved_;
}

void ShownProject::tryOut(std::optional<project::Trial> trial) {
    follow();
    if (trial == trial_) return;
    trial_ = trial;
    invalidate();
    announce();
}

void ShownProject::propose(Proposal proposal) {
    follow();
    if (proposal == proposal_) return;
    proposal_ = std::move(proposal);
    if (proposal_ == nullptr) hidesProposal_ = false;
    invalidate();
    announce();
}

void ShownProject::hideProposal(bool on) {
    follow();
    if (on == hidesProposal_) return;
    hidesProposal_ = on;
    invalidate();
    announce();
}

void ShownProject::showSaved(bool on) {
    follow();
    if (on == showsSaved_) return;
    showsSaved_ = on;
    invalidate();
    announce();
}

ShownProject::State ShownProject::state() const {
    return {revision(), opening_, trial(), proposal_, showsSaved_, hidesProposal()};
}

void ShownProject::announce() {
    const State now = state();
    const State before = std::exchange(announced_, now);
    Changes changes;
    changes.setFlag(Change::Content, now.revision != before.revision);
    changes.setFlag(Change::Opened, now.opening != before.opening);
    changes.setFlag(Change::TextTest, now.trial != before.trial);
    changes.setFlag(Change::Proposal,
                    now.proposal != before.proposal || now.hidesProposal != before.hidesProposal);
    changes.setFlag(Change::SavedVersion, now.showsSaved != before.showsSaved);
    if (changes) Q_EMIT changed(changes);
}

}  // namespace tenter::desktop
