// Changes that a check proposes against one of its findings. They are not tried here; core/remedy tries them.
#pragma once

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "checks/finding.h"
#include "checks/subject.h"

namespace tenter::checks {

/// A change of the project that may remove a finding.
struct Candidate {
    std::string label;  ///< what it does, in the words of the window: `Use #3b5d42 for body text`
    std::string where;  ///< what it changes: `in the band 591–930 px (2 columns)`; may be empty
    /// Of candidates in one group the first that works is offered. Empty: in no group.
    std::string group;
    std::function<void(project::Project&)> change;
    bool solves = false;       ///< sizes are solved after `change`; wishes that it sets hold only for that
    bool changesText = false;  ///< changes texts or pictures of cards, so it does not fit a text test
};

/// The settings that a candidate changes in one band of the variant; the others are unset.
using BandChange = std::pair<std::size_t, project::Settings>;

/// Collects the candidates against one finding, and knows what checks need to propose them.
class Candidates {
public:
    /// Both must outlive the object.
    Candidates(const Subjects& subjects, const Finding& finding);

    [[nodiscard]] const Subjects& subjects() const { return subjects_; }
    /// The first subject under whose profile the finding holds.
    [[nodiscard]] const Subject& subject() const { return subject_; }
    [[nodiscard]] const Finding& finding() const { return finding_; }
    /// True if the check gave the finding's cause the key `key` (`Description::key`).
    [[nodiscard]] bool isFor(const std::string& key) const;
    /// The indices of the bands in which the finding holds, rising.
    [[nodiscard]] const std::vector<std::size_t>& bands() const { return bands_; }
    /// The roles of the texts that show the finding, each once.
    [[nodiscard]] std::vector<std::string> roles() const;
    /// The settings that hold in a band.
    [[nodiscard]] const project::Settings& settings(std::size_t band) const {
        return subject_.row.settings(band);
    }

    /// What a changed setting belongs to, which decides on its layer if every band has the finding.
    enum class Scope {
        Layout,  ///< the variant: its columns and sizes
        Look     ///< the layer that sets the value now: colours, and what all variants have in common
    };

    /// Sets what `change` sets in each of `bands()`; nothing for a band that it leaves empty. If all bands of
    /// the variant get the same values, they are set in one layer, else in each band.
    void set(const std::string& label, Scope scope,
             const std::function<void(project::Settings&, std::size_t band)>& change,
             const std::string& group = {});
    /// The same for the bands of `changes`.
    void set(const std::string& label, Scope scope, std::vector<BandChange> changes,
             const std::string& group = {});
    /// Changes the texts that show the finding. `change` gets each of them.
    void editTexts(const std::string& label,
                   std::function<void(project::TextPart&, project::PartRef)> change);
    /// Any other change; `where` says what it changes.
    void add(const std::string& label, const std::string& where,
             std::function<void(project::Project&)> change, const std::string& group = {});
    /// Moves breakpoint `band` of the variant (the end of that band) to a whole width in CSS px.
    void moveBreakpoint(std::size_t band, double width, const std::string& group = {});
    /// Solves the sizes of the variant. `wish` may add wishes for it, which are not kept.
    void solveSizes(std::function<void(project::Project&)> wish = {});

    [[nodiscard]] std::vector<Candidate> take() { return std::move(all_); }

private:
    void addChange(const std::string& label, const std::string& where, const std::string& group,
                   std::function<void(project::Project&)> change);

    const Subjects& subjects_;
    const Finding& finding_;
    const Subject& subject_;
    std::vector<std::size_t> bands_;
    std::vector<Candidate> all_;
};

}  // namespace tenter::checks
