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
    section(QObject::tr("Font"));
    setting(QObject::tr("Family"), family_, {}, "family")->setTall();
    auto weight = numberKind(1, 1000, 100, 0);
    weight.usual = 100;
    setting(QObject::tr("Weight"), new NumberEditor(weight), {}, "weight");
    setting(QObject::tr("Slant"),
            new SegmentEditor({{"normal", QObject::tr("Upright")}, {"italic", QObject::tr("Italic")}}), {},
            "slant");
    setting(QObject::tr("Letter case"),
            new ListEditor({{"none", QObject::tr("As typed")},
                            {"uppercase", QObject::tr("Uppercase")},
                            {"capitalize", QObject::tr("Capitalise words")}}),
            {}, "case");

    section(QObject::tr("Size"));
    setting(QObject::tr("Font size"), size_, {}, "size")->setTall();
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
    clamp_->setAccessibleName(QObject::tr("Font size in the stylesheet"));
    addWidget(clamp_);
    auto* follow = setting(
        QObject::tr("Grows with"),
        new SegmentEditor({{"viewport", QObject::tr("Viewport width")}, {"card", QObject::tr("Card width")}}),
        {}, "follow");
    follow->setTall();
    addWidget(scale_);
    addFindable(QObject::tr("Use card width for all sizes"), scale_->button());

    addPart(new WishesPanel(context));

    section(QObject::tr("Lines"));
    setting(QObject::tr("Line height"), new NumberEditor(controls::lineHeightKind()), {}, "lineHeight");
    setting(QObject::tr("Letter spacing"), new NumberEditor(lengthKind({"em", "rem", "px"}, {}, -10, 100)),
            {}, "letterSpacing");
    setting(QObject::tr("Word spacing"), new NumberEditor(lengthKind({"em", "rem", "px"}, {}, -10, 100)), {},
            "wordSpacing");
    setting(QObject::tr("Text align"),
            new SegmentEditor({{"start", QObject::tr("Start")},
                               {"center", QObject::tr("Centre")},
                               {"end", QObject::tr("End")}}),
            {}, "align");
    setting(QObject::tr("Text wrap"),
            new SegmentEditor({{"wrap", QObject::tr("Normal")}, {"balance", QObject::tr("Balanced")}}), {},
            "wrap");
    setting(QObject::tr("Long words"),
            new ListEditor({{"normal", QObject::tr("Overflow")},
                            {"break-word", QObject::tr("Break")},
                            {"anywhere", QObject::tr("Break anywhere")}}),
            {}, "overflowWrap");
    setting(QObject::tr("Hyphens"),
            new SegmentEditor({{"none", QObject::tr("None")}, {"manual", QObject::tr("Soft hyphens")}}), {},
            "hyphens");
    setting(QObject::tr("Minimum lines"), new NumberEditor(numberKind(0, 50, 1, 0)), {}, "keepLines");
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
    size_->setWidthTitle(card ? QObject::tr("Width of the card’s content") : QObject::tr("Viewport width"));
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
    clamp_->setText(size ? css + "\n" + QObject::tr("%1 at this width").arg(pixels(*size, 2)) : css);
}

}  // namespace tenter::desktop::panels
