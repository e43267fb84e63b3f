#include "panels/row_panel.h"

#include <QRegularExpression>
#include <algorithm>

#include "controls/choice_editors.h"
#include "controls/colour_editor.h"
#include "controls/glossary.h"
#include "controls/number_editors.h"
#include "controls/text_editor.h"

namespace tenter::desktop::panels {

using controls::CheckEditor;
using controls::lengthKind;
using controls::ListEditor;
using controls::NumberEditor;
using controls::numberKind;
using controls::SegmentEditor;
using controls::TextEditor;
using project::Json;
using project::Project;

namespace {

const QStringList lengths{"rem", "px", "em", "%", "vw"};
const QStringList gapLengths{"rem", "px", "em", "vw"};  // no %: the height of the row is automatic

units::Length lengthOf(const Json& value, units::Length otherwise) {
    if (!value.is_string()) return otherwise;
    return units::Length::parse(value.get<std::string>()).value_or(otherwise);
}

std::string textOf(const Json& value) {
    return value.is_string() ? value.get<std::string>() : std::string();
}

NumberEditor* px(double least, double most, double step) {
    auto* editor = new NumberEditor(numberKind(least, most, step, 2, "px"));
    editor->field().setAlwaysFilled(true);
    return editor;
}

}  // namespace

RowPanel::RowPanel(Context& context, QWidget* parent) : Panel(context, parent) {
    buildRow();
    buildVariant();
    buildCard();
    buildPage();
    buildProject();
    close();
}

void RowPanel::buildRow() {
    section("Bands");
    explain(glossary::band);
    bands_ = new BandsTable(context());
    addWidget(bands_);
    addFindable("Breakpoints", bands_->addButton());

    section("Row");
    setting("Columns", new NumberEditor(numberKind(1, 12, 1, 0)), "row", "columns");
    setting("Width", new NumberEditor(lengthKind({"%", "rem", "px", "vw"})), "row", "width");
    setting("Maximum width", new NumberEditor(lengthKind({"px", "rem", "%", "vw"}, {"none"})), "row",
            "maxWidth");
    setting("Column gap", new NumberEditor(lengthKind(lengths)), "row", "columnGap");
    setting("Row gap", new NumberEditor(lengthKind(gapLengths)), "row", "rowGap");
    setting("Last line of cards", new SegmentEditor({{"start", "At start"}, {"center", "Centred"}}), "row",
            "lastLine");
    setting("Align parts", new SegmentEditor({{"none", "Off"}, {"subgrid", "On"}}), "row", "level");

    section("Leeway");
    explain(glossary::leeway);
    leeway_ = new LeewayBox(context());
    addWidget(leeway_);
    addFindable("Leeway of a breakpoint, gap, padding or width", leeway_);

    section("Row padding");
    padding_ = new DimensionDrawing(context(), "row");
    addWidget(padding_);
    addFindable("Padding", padding_->paddingField());
}

void RowPanel::buildVariant() {
    section("Variant");
    explain(glossary::variant);
    const auto shownVariant = [this](const Project& p) -> const project::Variant& {
        return p.row().variants[std::min(session().view.variant(), p.row().variants.size() - 1)];
    };
    variantName_ = new TextEditor;
    property(
        "Name", "Variant name", variantName_, [=](const Project& p) { return Json(shownVariant(p).name); },
        [this](Project& p, const Json& v) { p.row().variants[session().view.variant()].name = textOf(v); });
    auto* className = new TextEditor([this](const QString& text) {
        if (QString wrong = wrongWithClass(text); !wrong.isEmpty()) return wrong;
        const auto other = document().project().row().findVariant(text.toStdString());
        if (other && *other != session().view.variant())
            return QString("enter another class; a variant of this row has it already");
        return QString();
    });
    property(
        "Class", "Variant class", className,
        [=](const Project& p) { return Json(shownVariant(p).className); },
        [this](Project& p, const Json& v) {
            p.row().variants[session().view.variant()].className = textOf(v);
        });
    classes_ = new ClassesLine;
    addWidget(classes_);
    addFindable("Class names of the elements", classes_->button(), {},
                "CMS classes, CSS class, copy classes");
    connect(classes_, &ClassesLine::copied, this, &RowPanel::copied);
    variants_ = new VariantButtons(context());
    addWidget(variants_);
    addFindable("Add a variant", variants_->addButton());
}

void RowPanel::buildCard() {
    section("Card");
    setting("Picture", new SegmentEditor({{"stacked", "Above text"}, {"beside", "Beside text"}}), "card",
            "direction");
    setting("Picture width", new NumberEditor(lengthKind({"%"}, {}, 0, 100)), "card", "pictureShare");
    setting("Full-bleed picture", new CheckEditor("Full-bleed picture"), "card", "bleed");
    setting("Whole card is a link", new CheckEditor("Whole card is a link"), "card", "linked");
}

void RowPanel::buildPage() {
    section("Page");
    const auto none = units::Length::ofNone();
    property(
        "Container width", "Container width", new NumberEditor(lengthKind({"%", "px", "rem", "vw"})),
        [](const Project& p) { return Json(p.page.container.width.css()); },
        [](Project& p, const Json& v) { p.page.container.width = lengthOf(v, units::Length::percent(100)); });
    property(
        "Maximum width", "Container maximum width",
        new NumberEditor(lengthKind({"px", "rem", "%", "vw"}, {"none"})),
        [](const Project& p) { return Json(p.page.container.maxWidth.css()); },
        [=](Project& p, const Json& v) { p.page.container.maxWidth = lengthOf(v, none); });
    property(
        "Side padding", "Container side padding", new NumberEditor(lengthKind({"px", "rem", "%", "vw"})),
        [](const Project& p) { return Json(p.page.container.padding.left.value_or(units::Length()).css()); },
        [](Project& p, const Json& v) {
            p.page.container.padding.left = p.page.container.padding.right = lengthOf(v, {});
        });
    property(
        "Background", "Container background", new controls::ColourEditor,
        [](const Project& p) { return Json(p.page.container.background.css()); },
        [](Project& p, const Json& v) {
            p.page.container.background =
                units::Colour::parse(textOf(v)).value_or(units::Colour{255, 255, 255, 255});
        });
    property(
        "Scrollbar", "Scrollbar width", px(0, 40, 1),
        [](const Project& p) { return Json(p.page.scrollbar.width); },
        [](Project& p, const Json& v) { p.page.scrollbar.width = v.get<double>(); });
    property(
        "", "Scrollbar always visible", new CheckEditor("Always visible"),
        [](const Project& p) { return Json(p.page.scrollbar.always); },
        [](Project& p, const Json& v) { p.page.scrollbar.always = v.get<bool>(); });
    property(
        "Theme root size", "Theme root size", px(1, 100, 0.5),
        [](const Project& p) { return Json(p.page.rootSize.resolve(units::usualReaderSize, p.mostWidth)); },
        [](Project& p, const Json& v) { p.page.rootSize = v.get<double>(); });
    property(
        "Reader text size", "Reader text size", px(8, 64, 1),
        [](const Project& p) { return Json(p.page.readerSize); },
        [](Project& p, const Json& v) { p.page.readerSize = v.get<double>(); });
    property(
        "Smallest viewport", "Smallest viewport width", px(200, 5000, 10),
        [](const Project& p) { return Json(p.leastWidth); },
        [](Project& p, const Json& v) { p.leastWidth = std::min(v.get<double>(), p.mostWidth - 1); });
    property(
        "Largest viewport", "Largest viewport width", px(200, 5000, 10),
        [](const Project& p) { return Json(p.mostWidth); },
        [](Project& p, const Json& v) { p.mostWidth = std::max(v.get<double>(), p.leastWidth + 1); });
}

void RowPanel::buildProject() {
    section("Project");
    property(
        "Name", "Project name", new TextEditor, [](const Project& p) { return Json(p.name); },
        [](Project& p, const Json& v) { p.name = textOf(v); });
    property(
        "Class prefix", "Class prefix", new TextEditor(wrongWithClass),
        [](const Project& p) { return Json(p.row().name); },
        [](Project& p, const Json& v) { p.row().name = textOf(v); });
    auto* language = new TextEditor([](const QString& text) {
        static const QRegularExpression shape("^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$");
        return shape.match(text).hasMatch() ? QString()
                                            : QString("enter a language tag, such as en, pt-BR or zh-Hant");
    });
    property(
        "Language", "Language", language, [](const Project& p) { return Json(p.language); },
        [](Project& p, const Json& v) { p.language = textOf(v); });
    property(
        "Writing direction", "Writing direction",
        new SegmentEditor({{"ltr", "Left to right"}, {"rtl", "Right to left"}}),
        [](const Project& p) { return Json(p.rightToLeft ? "rtl" : "ltr"); },
        [](Project& p, const Json& v) { p.rightToLeft = textOf(v) == "rtl"; })
        ->setTall();
    auto* level = new NumberEditor(numberKind(1, 6, 1, 0));
    level->field().setAlwaysFilled(true);
    property(
        "Heading level", "Heading level", level, [](const Project& p) { return Json(p.row().headingLevel); },
        [](Project& p, const Json& v) { p.row().headingLevel = v.get<int>(); });
    property(
        "Size unit", "Size unit", new SegmentEditor({{"rem", "rem"}, {"px", "px"}}),
        [](const Project& p) { return Json(p.unit == units::Unit::Px ? "px" : "rem"); },
        [](Project& p, const Json& v) { p.unit = textOf(v) == "px" ? units::Unit::Px : units::Unit::Rem; });
}

void RowPanel::refresh() {
    Panel::refresh();
    bands_->refresh();
    padding_->refresh();
    variants_->refresh();
    classes_->showClasses(session().shown.project(), session().view.variant());
    const auto& variants = session().shown.project().row().variants;
    variantName_->setPlaceholder(
        QString::fromStdString(variants[std::min(session().view.variant(), variants.size() - 1)].className));
    leeway_->refresh();
}

void RowPanel::refreshPixels() {
    Panel::refreshPixels();
    bands_->refreshWidth();
    padding_->refreshPixels();
}

}  // namespace tenter::desktop::panels
