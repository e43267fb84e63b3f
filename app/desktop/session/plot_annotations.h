// What panels show on the plot of font sizes: where wishes limit sizes, and a pasted size.
#pragma once

#include <QObject>
#include <optional>
#include <string>
#include <vector>

#include "session/selection_model.h"
#include "session/view_state.h"
#include "units/ramp.h"

namespace tenter::desktop {

/// A place on the plot: where a wish limits a size or cannot be satisfied, or an end of a ramp.
struct PlotMark {
    std::size_t variant = 0;
    std::string role;
    double width = 0;                      ///< viewport, CSS px
    double size = 0;                       ///< font size, CSS px
    std::optional<project::PartRef> part;  ///< the part with the text that causes the limit, if a text does
    QString says;                          ///< the limit or the conflict as a sentence
    bool conflicts = false;                ///< true if the wish cannot be satisfied
    friend bool operator==(const PlotMark&, const PlotMark&) = default;
};

/// A pasted font size that is shown but not applied yet.
struct SizePreview {
    std::string role;
    units::Ramp ramp;
    project::Follow follow = project::Follow::Viewport;
    friend bool operator==(const SizePreview&, const SizePreview&) = default;
};

class PlotAnnotations : public QObject {
    Q_OBJECT

public:
    enum class Change {
        Marks = 1,       ///< `marks()`
        SizePreview = 2  ///< `sizePreview()`
    };
    Q_DECLARE_FLAGS(Changes, Change)
    friend constexpr Changes operator|(Change one, Change other) { return Changes(one) | other; }

    using QObject::QObject;

    /// The places that explain the limits of the proposal, or why there is no proposal.
    [[nodiscard]] const std::vector<PlotMark>& marks() const { return marks_; }
    void setMarks(std::vector<PlotMark> marks);
    [[nodiscard]] const std::optional<SizePreview>& sizePreview() const { return sizePreview_; }
    void previewSize(std::optional<SizePreview> preview);

Q_SIGNALS:
    void changed(tenter::desktop::PlotAnnotations::Changes changes);

private:
    std::vector<PlotMark> marks_;
    std::optional<SizePreview> sizePreview_;
};

/// Changes to the mark's variant and width, and selects its part or its role; views scroll to it.
void goTo(const PlotMark& mark, ViewState& view, SelectionModel& selection);

}  // namespace tenter::desktop
