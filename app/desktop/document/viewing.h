// The state of the window that is not saved: current width, variant, selection and break profile. Keeps the
// layout that every view shows.
#pragma once

#include <QObject>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "document/document.h"
#include "layout/layout.h"
#include "project/cascade.h"
#include "project/trial.h"

namespace tenter::desktop {

class Viewing : public QObject {
    Q_OBJECT

public:
    explicit Viewing(Document& document, QObject* parent = nullptr);
    ~Viewing() override;

    /// Indices of a card and of a part in that card; −1: none.
    struct Selection {
        int card = -1;
        int part = -1;
        friend bool operator==(const Selection&, const Selection&) = default;
    };
    /// A pasted font size that is shown but not applied yet.
    struct SizePreview {
        std::string role;
        units::Ramp ramp;
        project::Follow follow = project::Follow::Viewport;
        friend bool operator==(const SizePreview&, const SizePreview&) = default;
    };

    /// A place at which a wish limits a size, or cannot be satisfied.
    struct Mark {
        std::size_t variant = 0;
        std::string role;
        double width = 0;        ///< viewport, CSS px
        double size = 0;         ///< font size, CSS px
        Selection part;          ///< the part with the text that causes the limit; none if no text does
        QString says;            ///< the limit or the conflict as a sentence
        bool conflicts = false;  ///< true if the wish cannot be satisfied
        friend bool operator==(const Mark&, const Mark&) = default;
    };

    [[nodiscard]] Document& document() const { return document_; }
    /// Viewport width, CSS px, within the project's range.
    [[nodiscard]] double width() const { return width_; }
    /// Index of the current variant in `shown().variants`.
    [[nodiscard]] std::size_t variant() const;
    [[nodiscard]] std::size_t band() const { return row().bandAt(width_); }
    [[nodiscard]] Selection selection() const { return selection_; }
    /// The layer of the cascade that edits change.
    [[nodiscard]] project::CascadeLayer scope() const { return scope_; }
    /// The break profile: the rules by which lines are broken.
    [[nodiscard]] const text::BreakProfile& profile() const { return *profile_; }
    /// The prepared row and its layout at `width()`. Both are rebuilt on the first call after a change.
    [[nodiscard]] const layout::PreparedRow& row() const { return *rowUnder(*profile_); }
    [[nodiscard]] const layout::Layout& layout() const { return layoutUnder(*profile_); }
    /// The same under another break profile. A prepared row may be laid out on any thread. It stays valid
    /// while it is held, even after the project changes.
    [[nodiscard]] std::shared_ptr<const layout::PreparedRow> rowUnder(
        const text::BreakProfile& profile) const;
    [[nodiscard]] const layout::Layout& layoutUnder(const text::BreakProfile& profile) const;
    /// The role that panels show settings of: that of the selected part, or `heading`.
    [[nodiscard]] std::string role() const { return role_; }
    /// True while the saved version of the project is shown.
    [[nodiscard]] bool showsSaved() const { return showsSaved_; }
    /// The project that is shown: the document's, a proposal, or the saved version; with the text test
    /// applied.
    [[nodiscard]] const project::Project& shown() const;
    /// The same without the text test: the text and cards that edits change.
    [[nodiscard]] const project::Project& untried() const;
    /// The current text test; none while the saved version is shown. Opening another project ends it.
    [[nodiscard]] std::optional<project::Trial> trial() const { return showsSaved_ ? std::nullopt : trial_; }

    /// True for a row small enough to compute all widths within one frame.
    [[nodiscard]] bool hasFewParts() const;

    [[nodiscard]] const std::optional<SizePreview>& sizePreview() const { return sizePreview_; }

    /// Shows a preview of a proposal that is not applied yet; null, or a change of the document, ends it.
    using Proposal = std::shared_ptr<const project::Project>;
    void propose(Proposal proposal);
    [[nodiscard]] const Proposal& proposal() const { return proposal_; }
    /// Sets a function that computes the proposal again when the document changes. It is called before any
    /// signal is sent, so that views never show an outdated proposal. It may return null.
    void setProposer(std::function<Proposal()> proposer) { proposer_ = std::move(proposer); }
    /// The places that explain the limits of the proposal, or why there is no proposal.
    [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
    void setMarks(std::vector<Mark> marks);
    /// Changes to the mark's variant and width, and selects its part or its role.
    void goTo(const Mark& mark);
    /// Shows variant `variant` with the width, break profile, text test and proposal of `other`.
    void lookLike(const Viewing& other, std::size_t variant);
    [[nodiscard]] bool isProposal() const { return proposal_ != nullptr && !showsSaved_; }
    /// True if the document itself is shown, not a proposal or the saved version.
    [[nodiscard]] bool showsDocument() const { return proposal_ == nullptr && !showsSaved_; }

    /// Starts a text test, or ends it. While a test adds or removes parts, no part can be selected.
    void tryOut(std::optional<project::Trial> trial);
    void previewSize(std::optional<SizePreview> preview);
    void setWidth(double width);  ///< CSS px, clamped to the project's range
    void setVariant(std::size_t variant);
    void setProfile(const text::BreakProfile& profile);
    void select(Selection selection);
    void selectRole(const std::string& role);
    void setScope(project::CascadeLayer scope);
    void showSaved(bool on);
    /// Changes one setting (`path` as in project::setSetting) in the layer of `scope()`; null removes it.
    /// `name` is the name of the undo step. Returns problems and changes nothing if the value is not allowed.
    project::Problems setSetting(const QString& name, const std::string& path, const project::Json& value,
                                 const QString& gesture = {});
    /// Document::edit for a view that has no place for messages: emits `refused` if the edit is refused. True
    /// if it is not.
    bool edit(const QString& name, const std::function<void(project::Project&)>& change,
              const QString& gesture = {});
    /// The settings of `project` in the layer of `scope()`.
    project::Settings& layer(project::Project& project) const;

Q_SIGNALS:
    void widthChanged(double width);
    void layoutChanged();     ///< the layout has changed: by width, variant, edit or another project shown
    void rowChanged();        ///< the same, but not sent if only the width has changed
    void variantChanged();    ///< another variant is current; rowChanged follows
    void profileChanged();    ///< another break profile is current; rowChanged follows
    void selectionChanged();  ///< selection, role or scope has changed
    void previewChanged();    ///< `sizePreview()` has changed
    void trialChanged();      ///< the text test has changed
    void proposed();          ///< `proposal()` has changed
    void marksChanged();      ///< `marks()` has changed
    void wentThere();         ///< `goTo` has moved to a mark
    void refused(const project::Problems& problems);  ///< an edit would have made the project invalid

private:
    /// The prepared row and the layout under one break profile.
    struct Made {
        std::shared_ptr<const layout::PreparedRow> row;
        layout::Layout layout;
        bool laidOut = false;
    };
    void forgetRows();
    void forgetLayouts();
    void invalidate();
    void startAnew();
    void keepSelectionSound();
    void fitWidth();

    Document& document_;
    int revision_ = 0;  // the document's revision when the prepared rows were last discarded
    double width_ = 1120;
    std::size_t variant_ = 0;
    Selection selection_;
    std::string role_ = "heading";
    project::CascadeLayer scope_ = project::CascadeLayer::Style;
    bool showsSaved_ = false;
    std::optional<project::Trial> trial_;
    mutable std::shared_ptr<const project::Project> tried_;  // null until `shown` is called after a change
    Proposal proposal_;
    std::function<Proposal()> proposer_;
    std::vector<Mark> marks_;
    std::optional<SizePreview> sizePreview_;
    const text::BreakProfile* profile_ = &text::defaultProfile();
    mutable std::map<const text::BreakProfile*, Made> made_;
};

}  // namespace tenter::desktop
