// What is looked at: a width, a variant, a selected part. Holds the layout that every view shows.
#pragma once

#include <QObject>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "document/document.h"
#include "layout/layout.h"
#include "project/trial.h"

namespace tenter::desktop {

class Viewing : public QObject {
    Q_OBJECT

public:
    explicit Viewing(Document& document, QObject* parent = nullptr);
    ~Viewing() override;

    /// Indices of a card and a part within it; −1: none.
    struct Selection {
        int card = -1;
        int part = -1;
        friend bool operator==(const Selection&, const Selection&) = default;
    };
    /// Which layer of the cascade an edit goes to.
    enum class Scope { AllVariants, ThisVariant, ThisBand };

    /// A size that is being pasted and is not taken yet.
    struct SizePreview {
        std::string role;
        units::Ramp ramp;
        project::Follow follow = project::Follow::Viewport;
        friend bool operator==(const SizePreview&, const SizePreview&) = default;
    };

    /// Where a wish decides a size, or cannot be kept.
    struct Mark {
        std::size_t variant = 0;
        std::string role;
        double width = 0;  ///< viewport, CSS px
        double size = 0;   ///< of type, CSS px
        Selection part;    ///< whose copy decides, if any does
        QString says;
        bool conflicts = false;
        friend bool operator==(const Mark&, const Mark&) = default;
    };

    [[nodiscard]] Document& document() const { return document_; }
    /// Viewport width, CSS px, within the project's range.
    [[nodiscard]] double width() const { return width_; }
    /// Index of the variant that is shown, within `shown().variants`.
    [[nodiscard]] std::size_t variant() const;
    [[nodiscard]] std::size_t band() const { return row().bandAt(width_); }
    [[nodiscard]] Selection selection() const { return selection_; }
    [[nodiscard]] Scope scope() const { return scope_; }
    /// The profile that lines break by.
    [[nodiscard]] const text::BreakProfile& profile() const { return *profile_; }
    /// The row made ready, and its layout at `width()`; rebuilt when first asked for after a change.
    [[nodiscard]] const layout::PreparedRow& row() const { return *rowUnder(*profile_); }
    [[nodiscard]] const layout::Layout& layout() const { return layoutUnder(*profile_); }
    /// The same under another profile. A row may be laid out on any thread, and outlives its change here.
    [[nodiscard]] std::shared_ptr<const layout::PreparedRow> rowUnder(
        const text::BreakProfile& profile) const;
    [[nodiscard]] const layout::Layout& layoutUnder(const text::BreakProfile& profile) const;
    /// The role whose settings panels show: the selected part's, else heading.
    [[nodiscard]] std::string role() const { return role_; }
    /// True while the project is shown as it was saved.
    [[nodiscard]] bool showsSaved() const { return showsSaved_; }
    /// The project that is shown: the document's, one that is proposed, or as it was saved; with what is
    /// tried.
    [[nodiscard]] const project::Project& shown() const;
    /// The same without what is tried: its copy and cards are those that are edited.
    [[nodiscard]] const project::Project& untried() const;
    /// What the row is tried with, until another project is opened; none while it is shown as it was saved.
    [[nodiscard]] std::optional<project::Trial> trial() const { return showsSaved_ ? std::nullopt : trial_; }

    /// True for a row so small that all of its widths can be looked at within a frame.
    [[nodiscard]] bool hasFewParts() const;

    [[nodiscard]] const std::optional<SizePreview>& sizePreview() const { return sizePreview_; }

    /// Shows a project that is proposed and not taken yet, until null is given or the document changes.
    using Proposal = std::shared_ptr<const project::Project>;
    void propose(Proposal proposal);
    [[nodiscard]] const Proposal& proposal() const { return proposal_; }
    /// Who proposes anew, or null, when the document changes: in the same frame, and before anyone is told.
    void setProposer(std::function<Proposal()> proposer) { proposer_ = std::move(proposer); }
    /// The places that explain the proposal, or why there is none.
    [[nodiscard]] const std::vector<Mark>& marks() const { return marks_; }
    void setMarks(std::vector<Mark> marks);
    /// Goes to a mark's variant and width, and selects its part.
    void goTo(const Mark& mark);
    /// Shows variant `variant` of the project, at the width and under the profile, that `other` shows.
    void lookLike(const Viewing& other, std::size_t variant);
    [[nodiscard]] bool isProposal() const { return proposal_ != nullptr && !showsSaved_; }
    /// True if what is shown is what is edited.
    [[nodiscard]] bool showsDocument() const { return proposal_ == nullptr && !showsSaved_; }

    /// Shows the row under a trial, or without. Where cards or parts are others then, none can be selected.
    void tryOut(std::optional<project::Trial> trial);
    void previewSize(std::optional<SizePreview> preview);
    void setWidth(double width);  ///< clamped to the range
    void setVariant(std::size_t variant);
    void setProfile(const text::BreakProfile& profile);
    void select(Selection selection);
    void selectRole(const std::string& role);
    void setScope(Scope scope);
    void showSaved(bool on);
    /// Edits one setting by path (see project::setSetting) in the layer `scope()` names; null unsets it. What
    /// is wrong with the value, if anything; then nothing was changed.
    project::Problems setSetting(const QString& name, const std::string& path, const project::Json& value,
                                 const QString& gesture = {});
    /// The layer of `project` that `scope()` names.
    project::Settings& layer(project::Project& project) const;

signals:
    void widthChanged(double width);
    void layoutChanged();     ///< width, variant, content or what is shown
    void rowChanged();        ///< as layoutChanged, but for the width
    void variantChanged();    ///< another variant is looked at; rowChanged follows
    void profileChanged();    ///< lines break by another profile; rowChanged follows
    void selectionChanged();  ///< selection, role or scope
    void previewChanged();    ///< the size that is being pasted
    void trialChanged();      ///< what the row is tried with
    void proposed();          ///< another proposal, or none
    void marksChanged();
    void wentThere();  ///< to a mark

private:
    /// Of one profile.
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
    int revision_ = 0;  // of the document, when rows were last forgotten
    double width_ = 1120;
    std::size_t variant_ = 0;
    Selection selection_;
    std::string role_ = "heading";
    Scope scope_ = Scope::AllVariants;
    bool showsSaved_ = false;
    std::optional<project::Trial> trial_;
    mutable std::shared_ptr<const project::Project> tried_;  // null: to be made when asked for
    Proposal proposal_;
    std::function<Proposal()> proposer_;
    std::vector<Mark> marks_;
    std::optional<SizePreview> sizePreview_;
    const text::BreakProfile* profile_ = &text::blink();
    mutable std::map<const text::BreakProfile*, Made> made_;
};

}  // namespace tenter::desktop
