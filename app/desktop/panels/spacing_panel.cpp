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
    addFindable(QObject::tr("Margin"), drawing_->marginField());
    addFindable(QObject::tr("Padding"), drawing_->paddingField());
    note_->setWordWrap(true);
    note_->setForegroundRole(QPalette::PlaceholderText);
    addWidget(note_);
    box_ = section(QObject::tr("Box"));
    setting(QObject::tr("Alignment"),
            new controls::ListEditor({{"stretch", QObject::tr("Full width")},
                                      {"start", QObject::tr("Start")},
                                      {"center", QObject::tr("Centre")},
                                      {"end", QObject::tr("End")}}),
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
        note_->setText(size ? QObject::tr("At this width 1\u00A0"
                                          "em is %1. Padding is hatched, margin is not. "
                                          "Small numbers are px.")
                                  .arg(pixels(*size, 2))
                            : QObject::tr("No part uses this role."));
    } else {
        note_->setText(QObject::tr("Here 1\u00A0"
                                   "em is the root font size, %1. Padding is hatched. Small numbers are px.")
                           .arg(pixels(session().layouts.current().rem(), 2)));
    }
}

}  // namespace tenter::desktop::panels
