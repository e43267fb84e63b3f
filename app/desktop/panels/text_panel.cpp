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
      solve_(new SolveBox(context)) {
    section("Type");
    setting("Family", family_, {}, "family")->setTall();
    auto weight = numberKind(1, 1000, 100, 0);
    weight.usual = 100;
    setting("Weight", new NumberEditor(weight), {}, "weight");
    setting("Slant", new SegmentEditor({{"normal", "Upright"}, {"italic", "Italic"}}), {}, "slant");
    setting(
        "Case",
        new ListEditor({{"none", "As written"}, {"uppercase", "Capitals"}, {"capitalize", "Capital first"}}),
        {}, "case");

    section("Size");
    setting("Font size", size_, {}, "size")->setTall();
    addWidget(paste_);
    connect(size_, &RampEditor::pasteWanted, this, [this] {
        pasteFor_ = viewing().role();
        size_->pasteButton()->hide();
        paste_->open();
    });
    connect(paste_, &SizePaste::left, this, [this] {
        size_->pasteButton()->show();
        size_->pasteButton()->setFocus();
    });
    clamp_->setWordWrap(true);
    clamp_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    clamp_->setContentsMargins(12, 0, 0, 4);
    clamp_->setForegroundRole(QPalette::PlaceholderText);
    clamp_->setAccessibleName("The size as the stylesheet says it");
    addWidget(clamp_);
    setting("Follows", new SegmentEditor({{"viewport", "Page"}, {"card", "Card"}}), {}, "follow");

    addWishes();

    section("Lines");
    setting("Line height", new NumberEditor(controls::lineHeightKind()), {}, "lineHeight");
    setting("Letter spacing", new NumberEditor(lengthKind({"em", "rem", "px"}, {}, -10, 100)), {},
            "letterSpacing");
    setting("Word spacing", new NumberEditor(lengthKind({"em", "rem", "px"}, {}, -10, 100)), {},
            "wordSpacing");
    setting("Align", new SegmentEditor({{"start", "Start"}, {"center", "Centre"}, {"end", "End"}}), {},
            "align");
    setting("Wrap", new SegmentEditor({{"wrap", "Greedy"}, {"balance", "Balanced"}}), {}, "wrap");
    setting("Long words",
            new ListEditor({{"normal", "Stick out"}, {"break-word", "Cut"}, {"anywhere", "Cut anywhere"}}),
            {}, "overflowWrap");
    setting("Hyphens", new SegmentEditor({{"none", "None"}, {"manual", "Soft ones"}}), {}, "hyphens");
    setting("Keep lines", new NumberEditor(numberKind(0, 50, 1, 0)), {}, "keepLines");
    close();
}

void TextPanel::addWishes() {
    using project::RoleWishes;
    section("Wishes, at every width");
    const auto orNone = [](controls::AmountKind kind) {
        kind.keywords = {"none"};
        return new NumberEditor(std::move(kind));
    };
    const auto characters = [&] { return orNone(numberKind(1, 1000, 1, 1)); };
    const auto size = [&] { return orNone(numberKind(1, 400, 0.5, 2, "px")); };
    wish("Lines up to", "lines at most", &RoleWishes::lines, orNone(numberKind(1, 50, 1, 0)));
    wish("Measure from", "least measure", &RoleWishes::leastMeasure, characters());
    wish("Measure to", "most measure", &RoleWishes::mostMeasure, characters());
    wish("Size from", "least size", &RoleWishes::leastSize, size());
    wish("Size to", "most size", &RoleWishes::mostSize, size());
    wish("Ramps", "ramps stay", &RoleWishes::locked,
         new SegmentEditor({{"free", "May change"}, {"stay", "Stay"}}));
    addWidget(solve_);
    addFindable("Solve sizes", solve_->button());
}

template <class T>
void TextPanel::wish(const QString& title, const QString& words,
                     std::optional<T> project::RoleWishes::*member, controls::Editor* editor) {
    const auto get = [this, member](const project::Project& project) -> project::Json {
        const std::optional<T> value = project::wishedEverywhere(project, viewing().role()).*member;
        if constexpr (std::is_same_v<T, bool>) return value.value_or(false) ? "stay" : "free";
        return value ? project::Json(*value) : project::Json("none");
    };
    const auto set = [this, member](project::Project& project, const project::Json& value) {
        project::RoleWishes& entry = project::wishEverywhere(project, viewing().role());
        const project::RoleWishes before = entry;
        std::optional<T>& wished = entry.*member;
        wished.reset();
        if constexpr (std::is_same_v<T, bool>) {
            if (value == "stay") wished.emplace(true);
        } else if (value.is_number()) {
            wished.emplace(value.get<T>());
        }
        const project::RoleWishes all = project::wishedEverywhere(project, viewing().role());
        const auto crossed = [](const auto& least, const auto& most) {
            return least && most && *least > *most;
        };
        if (!crossed(all.leastMeasure, all.mostMeasure) && !crossed(all.leastSize, all.mostSize)) return;
        entry = before;
        context().say("The least is to be no more than the most: change the other one first.");
    };
    property(title, "Wish: " + words, editor, get, set);
}

void TextPanel::refresh() {
    Panel::refresh();
    const project::Project& project = viewing().shown();
    if (project.fonts != fonts_) family_->forgetFamilies();
    fonts_ = project.fonts;
    const std::string role = viewing().role();
    const Held follow = held(viewing(), "text/" + role + "/follow");
    const bool card = follow.value == "card";
    size_->setWidthsOf(card ? "the card’s text" : "the page");
    const ScopeWidths ends = scopeWidths(viewing(), card ? project::Follow::Card : project::Follow::Viewport);
    size_->setEnds(ends.from, ends.to);
    if (role != pasteFor_ && !paste_->isHidden()) paste_->leave();
    paste_->refresh();
    solve_->refresh();
    showSize();
}

void TextPanel::refreshPixels() {
    Panel::refreshPixels();
    showSize();
}

void TextPanel::showSize() {
    const std::string role = viewing().role();
    const auto size = row::fontSizeHere(viewing(), role);
    const QString css =
        QString::fromStdString(fontSizeOf(viewing().shown(), viewing().variant(), viewing().band(), role));
    clamp_->setText(size ? css + "\n" + pixels(*size, 2) + " here" : css);
}

}  // namespace tenter::desktop::panels
