// The project that is shown: the document's, a proposal or the saved version, with the text test applied.
#pragma once

#include <QObject>
#include <functional>
#include <memory>
#include <optional>

#include "document/document.h"
#include "project/trial.h"

namespace tenter::desktop {

/// Follows the document when it is read, so that it is up to date in every slot of every signal.
class ShownProject : public QObject {
    Q_OBJECT

public:
    enum class Change {
        Content = 1,       ///< `project()`
        Opened = 2,        ///< another project is open; `Content` is set too
        TextTest = 4,      ///< `trial()`
        Proposal = 8,      ///< `proposal()` or `hidesProposal()`
        SavedVersion = 16  ///< `showsSaved()`
    };
    Q_DECLARE_FLAGS(Changes, Change)
    friend constexpr Changes operator|(Change one, Change other) { return Changes(one) | other; }

    explicit ShownProject(const Document& document, QObject* parent = nullptr);

    /// The project that is shown.
    [[nodiscard]] const project::Project& project() const;
    /// The same without the text test: the text and cards that edits change.
    [[nodiscard]] const project::Project& untried() const;
    /// The state of `project()`: another number after every change.
    [[nodiscard]] int revision() const;
    /// True for a row small enough to compute all widths within one frame.
    [[nodiscard]] bool hasFewParts() const;

    /// The current text test; empty while the saved version is shown. Opening another project ends it.
    [[nodiscard]] std::optional<project::Trial> trial() const;
    /// Starts a text test, or ends it.
    void tryOut(std::optional<project::Trial> trial);

    using Proposal = std::shared_ptr<const project::Project>;
    [[nodiscard]] const Proposal& proposal() const;
    /// Shows a preview of a proposal that is not applied yet; null, or a change of the document, ends it.
    void propose(Proposal proposal);
    /// Sets a function that computes the proposal again after the document has changed; it may return null.
    /// It may read the document, but must not change any state that emits a signal.
    void setProposer(std::function<Proposal()> proposer) { proposer_ = std::move(proposer); }
    /// Shows the document instead of the proposal, which stays, or the proposal again. Ends with the
    /// proposal.
    void hideProposal(bool on);
    [[nodiscard]] bool hidesProposal() const { return proposal() != nullptr && hidesProposal_; }
    /// True while a proposal is shown.
    [[nodiscard]] bool isProposal() const {
        return proposal() != nullptr && !hidesProposal_ && !showsSaved();
    }

    [[nodiscard]] bool showsSaved() const;
    void showSaved(bool on);
    /// True if the document itself is shown, not a proposal or the saved version.
    [[nodiscard]] bool showsDocument() const {
        return (proposal() == nullptr || hidesProposal_) && !showsSaved();
    }

Q_SIGNALS:
    void changed(tenter::desktop::ShownProject::Changes changes);

private:
    /// What listeners know.
    struct State {
        int revision = 0, opening = 0;
        std::optional<project::Trial> trial;
        Proposal proposal;
        bool showsSaved = false;
        bool hidesProposal = false;
    };
    [[nodiscard]] State state() const;
    void follow() const;
    void invalidate() const;
    void announce();

    const Document& document_;
    std::function<Proposal()> proposer_;
    // Updated when they are read: see `follow`.
    mutable int documentRevision_, opening_;
    mutable int revision_ = 0;
    mutable std::optional<project::Trial> trial_;
    mutable Proposal proposal_;
    mutable bool showsSaved_ = false;
    bool hidesProposal_ = false;
    mutable std::shared_ptr<const project::Project> tried_;  // null until `project` is called after a change
    State announced_;
};

}  // namespace tenter::desktop
