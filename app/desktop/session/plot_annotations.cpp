#include "session/plot_annotations.h"

#include <utility>

namespace tenter::desktop {

void PlotAnnotations::setMarks(std::vector<PlotMark> marks) {
    if (marks == marks_) return;
    marks_ = std::move(marks);
    Q_EMIT changed(Change::Marks);
}

void PlotAnnotations::previewSize(std::optional<desktop::SizePreview> preview) {
    if (preview == sizePreview_) return;
    sizePreview_ = std::move(preview);
    Q_EMIT changed(Change::SizePreview);
}

void goTo(const PlotMark& mark, ViewState& view, SelectionModel& selection) {
    const PlotMark there = mark;  // a copy, because changing the variant can clear the marks
    view.setVariant(there.variant);
    view.setWidth(there.width);
    if (there.part)
        selection.select(Place::of(*there.part), true);
    else
        selection.selectRole(there.role, true);
}

}  // namespace tenter::desktop
