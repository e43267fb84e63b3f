#include "panels/spacing_panel.h"

#include "controls/choice_editors.h"
#include "document/wording.h"
#include "panels/computed.h"
#include "row/lookup.h"

namespace tenter::desktop::panels {

SpacingPanel::SpacingPanel(Context& context, QWidget* parent)
    : Panel(context, parent), drawing_(new DimensionDrawing(context, {})), note_(new QLabel) {
    section({});
    addWidget(drawing_);
    addFindable("Margin", drawing_->marginField());
    addFindable("Padding", drawing_->paddingField());
    note_->setWordWrap(true);
    note_->setForegroundRole(QPalette::PlaceholderText);
    addWidget(note_);
    box_ = section("Box");
    setting("Alignment",
            new controls::ListEditor(
                {{"stretch", "Full width"}, {"start", "Start"}, {"center", "Centre"}, {"end", "End"}}),
            {}, "place");
    close();
}

void SpacingPanel::refresh() {
    box_->setVisible(context().target.isText());
    drawing_->refresh();
    if (context().target.isText()) Panel::refresh();
    refreshPixels();
}

void SpacingPanel::refreshPixels() {
    drawing_->refreshPixels();
    const std::string& subject = context().target.subject();
    if (context().target.isText()) {
        const auto size = row::fontSizeHere(session().layouts.current(), subject);
        note_->setText(size ? "At this width 1\u00A0em is " + pixels(*size, 2) +
                                  ". Padding is hatched, margin is not. Small numbers are px."
                            : "No part uses this role.");
    } else {
        note_->setText("Here 1\u00A0em is the root font size, " +
                       pixels(session().layouts.current().rem(), 2) +
                       ". Padding is hatched. Small numbers are px.");
    }
}

}  // namespace tenter::desktop::panels
