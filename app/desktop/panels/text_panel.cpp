#include "panels/text_panel.h"

#include "controls/choice_editors.h"
#include "controls/number_editors.h"
#include "document/handover.h"
#include "document/wording.h"
#include "panels/computed.h"
#include "row/lookup.h"

namespace tenter::desktop::panels {

using controls::lengthKind;
using controls::ListEditor;
using controls::NumberEditor;
using controls::numberKind;
using controls::SegmentEditor;

TextPanel::TextPanel(Context& context, QWidget* parent)
    : Panel(context, parent),
      family_(new controls::FamilyEditor([this] { return document().store().fonts().families(); })),
      size_(new RampEditor),
      paste_(new SizePaste(context)),
      clamp_(new QLabel),
      scale_(new ScaleBox(context)) {
    section("Font");
    setting("Family", family_, {}, "family")->setTall();
    auto weight = numberKind(1, 1000, 100, 0);
    weight.usual = 100;
    setting("Weight", new NumberEditor(weight), {}, "weight");
    setting("Slant", new SegmentEditor({{"normal", "Upright"}, {"italic", "Italic"}}), {}, "slant");
    setting("Letter case",
            new ListEditor(
                {{"none", "As typed"}, {"uppercase", "Uppercase"}, {"capitalize", "Capitalise words"}}),
            {}, "case");

    section("Size");
    setting("Font size", size_, {}, "size")->setTall();
    addWidget(paste_);
    connect(size_, &RampEditor::pasteRequested, this, [this] {
        pasteFor_ = session().selection.role();
        size_->pasteButton()->hide();
        paste_->open();
    });
    connect(paste_, &SizePaste::closed, this, [this] {
        size_->pasteButton()->show();
        size_->pasteButton()->setFocus();
    });
    clamp_->setWordWrap(true);
    clamp_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    clamp_->setContentsMargins(12, 0, 0, 4);
    clamp_->setForegroundRole(QPalette::PlaceholderText);
    clamp_->setAccessibleName("Font size in the stylesheet");
    addWidget(clamp_);
    auto* follow =
        setting("Grows with", new SegmentEditor({{"viewport", "Viewport width"}, {"card", "Card width"}}), {},
                "follow");
    follow->setTall();
    addWidget(scale_);
    addFindable("Use card width for all sizes", scale_->button());

    addPart(new WishesPanel(context));

    section("Lines");
    setting("Line height", new NumberEditor(controls::lineHeightKind()), {}, "lineHeight");
    setting("Letter spacing", new NumberEditor(lengthKind({"em", "rem", "px"}, {}, -10, 100)), {},
            "letterSpacing");
    setting("Word spacing", new NumberEditor(lengthKind({"em", "rem", "px"}, {}, -10, 100)), {},
            "wordSpacing");
    setting("Text align", new SegmentEditor({{"start", "Start"}, {"center", "Centre"}, {"end", "End"}}), {},
            "align");
    setting("Text wrap", new SegmentEditor({{"wrap", "Normal"}, {"balance", "Balanced"}}), {}, "wrap");
    setting("Long words",
            new ListEditor({{"normal", "Overflow"}, {"break-word", "Break"}, {"anywhere", "Break anywhere"}}),
            {}, "overflowWrap");
    setting("Hyphens", new SegmentEditor({{"none", "None"}, {"manual", "Soft hyphens"}}), {}, "hyphens");
    setting("Minimum lines", new NumberEditor(numberKind(0, 50, 1, 0)), {}, "keepLines");
    close();
}

void TextPanel::refresh() {
    Panel::refresh();
    const project::Project& project = session().shown.project();
    if (project.fonts != fonts_) family_->forgetFamilies();
    fonts_ = project.fonts;
    const std::string role = session().selection.role();
    const SettingValue follow = settingValue(session(), "text/" + role + "/follow");
    const bool card = follow.value == "card";
    size_->setWidthTitle(card ? "Width of the card’s content" : "Viewport width");
    const ScopeWidths ends =
        scopeWidths(session(), role, card ? project::Follow::Card : project::Follow::Viewport);
    size_->setEnds(ends.from, ends.to);
    if (role != pasteFor_ && !paste_->isHidden()) paste_->cancel();
    paste_->refresh();
    scale_->refresh();
    showSize();
}

void TextPanel::refreshPixels() {
    Panel::refreshPixels();
    showSize();
}

void TextPanel::showSize() {
    const std::string role = session().selection.role();
    const auto size = row::fontSizeHere(session().layouts.current(), role);
    const QString css = QString::fromStdString(
        fontSizeOf(session().shown.project(), session().view.variant(), session().view.width(), role));
    clamp_->setText(size ? css + "\n" + pixels(*size, 2) + " at this width" : css);
}

}  // namespace tenter::desktop::panels
