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
    section(QObject::tr("Bands"));
    explain(QObject::tr(glossary::band));
    bands_ = new BandsTable(context());
    addWidget(bands_);
    addFindable(QObject::tr("Breakpoints"), bands_->addButton());

    section(QObject::tr("Row"));
    setting(QObject::tr("Columns"), new NumberEditor(numberKind(1, 12, 1, 0)), "row", "columns");
    setting(QObject::tr("Width"), new NumberEditor(lengthKind({"%", "rem", "px", "vw"})), "row", "width");
    setting(QObject::tr("Maximum width"), new NumberEditor(lengthKind({"px", "rem", "%", "vw"}, {"none"})),
            "row", "maxWidth");
    setting(QObject::tr("Column gap"), new NumberEditor(lengthKind(lengths)), "row", "columnGap");
    setting(QObject::tr("Row gap"), new NumberEditor(lengthKind(gapLengths)), "row", "rowGap");
    setting(QObject::tr("Last line of cards"),
            new SegmentEditor({{"start", QObject::tr("At start")}, {"center", QObject::tr("Centred")}}),
            "row", "lastLine");
    setting(QObject::tr("Align parts"),
            new SegmentEditor({{"none", QObject::tr("Off")}, {"subgrid", QObject::tr("On")}}), "row",
            "level");

    section(QObject::tr("Leeway"));
    explain(QObject::tr(glossary::leeway));
    leeway_ = new LeewayBox(context());
    addWidget(leeway_);
    addFindable(QObject::tr("Leeway of a breakpoint, gap, padding or width"), leeway_);

    section(QObject::tr("Row padding"));
    padding_ = new DimensionDrawing(context(), "row");
    addWidget(padding_);
    addFindable(QObject::tr("Padding"), padding_->paddingField());
}

void RowPanel::buildVariant() {
    section(QObject::tr("Variant"));
    explain(QObject::tr(glossary::variant));
    const auto shownVariant = [this](const Project& p) -> const project::Variant& {
        return p.row().variants[std::min(session().view.variant(), p.row().variants.size() - 1)];
    };
    variantName_ = new TextEditor;
    property(
        QObject::tr("Name"), QObject::tr("Variant name"), variantName_,
        [=](const Project& p) { return Json(shownVariant(p).name); },
        [this](Project& p, const Json& v) { p.row().variants[session().view.variant()].name = textOf(v); });
    auto* className = new TextEditor([this](const QString& text) {
        if (QString wrong = wrongWithClass(text); !wrong.isEmpty()) return wrong;
        const auto other = document().project().row().findVariant(text.toStdString());
        if (other && *other != session().view.variant())
            return QObject::tr("enter another class; a variant of this row has it already");
        return QString();
    });
    property(
        QObject::tr("Class"), QObject::tr("Variant class"), className,
        [=](const Project& p) { return Json(shownVariant(p).className); },
        [this](Project& p, const Json& v) {
            p.row().variants[session().view.variant()].className = textOf(v);
        });
    classes_ = new ClassesLine;
    addWidget(classes_);
    addFindable(QObject::tr("Class names of the elements"), classes_->button(), {},
                QObject::tr("CMS classes, CSS class, copy classes"));
    connect(classes_, &ClassesLine::copied, this, &RowPanel::copied);
    variants_ = new VariantButtons(context());
    addWidget(variants_);
    addFindable(QObject::tr("Add a variant"), variants_->addButton());
}

void RowPanel::buildCard() {
    section(QObject::tr("Card"));
    setting(
        QObject::tr("Picture"),
        new SegmentEditor({{"stacked", QObject::tr("Above text")}, {"beside", QObject::tr("Beside text")}}),
        "card", "direction");
    setting(QObject::tr("Picture width"), new NumberEditor(lengthKind({"%"}, {}, 0, 100)), "card",
            "pictureShare");
    setting(QObject::tr("Full-bleed picture"), new CheckEditor(QObject::tr("Full-bleed picture")), "card",
            "bleed");
    setting(QObject::tr("Whole card is a link"), new CheckEditor(QObject::tr("Whole card is a link")), "card",
            "linked");
}

void RowPanel::buildPage() {
    section(QObject::tr("Page"));
    const auto none = units::Length::ofNone();
    property(
        QObject::tr("Container width"), QObject::tr("Container width"),
        new NumberEditor(lengthKind({"%", "px", "rem", "vw"})),
        [](const Project& p) { return Json(p.page.container.width.css()); },
        [](Project& p, const Json& v) { p.page.container.width = lengthOf(v, units::Length::percent(100)); });
    property(
        QObject::tr("Maximum width"), QObject::tr("Container maximum width"),
        new NumberEditor(lengthKind({"px", "rem", "%", "vw"}, {"none"})),
        [](const Project& p) { return Json(p.page.container.maxWidth.css()); },
        [=](Project& p, const Json& v) { p.page.container.maxWidth = lengthOf(v, none); });
    property(
        QObject::tr("Side padding"), QObject::tr("Container side padding"),
        new NumberEditor(lengthKind({"px", "rem", "%", "vw"})),
        [](const Project& p) { return Json(p.page.container.padding.left.value_or(units::Length()).css()); },
        [](Project& p, const Json& v) {
            p.page.container.padding.left = p.page.container.padding.right = lengthOf(v, {});
        });
    property(
        QObject::tr("Background"), QObject::tr("Container background"), new controls::ColourEditor,
        [](const Project& p) { return Json(p.page.container.background.css()); },
        [](Project& p, const Json& v) {
            p.page.container.background =
                units::Colour::parse(textOf(v)).value_or(units::Colour{255, 255, 255, 255});
        });
    property(
        QObject::tr("Scrollbar"), QObject::tr("Scrollbar width"), px(0, 40, 1),
        [](const Project& p) { return Json(p.page.scrollbar.width); },
        [](Project& p, const Json& v) { p.page.scrollbar.width = v.get<double>(); });
    property(
        "", QObject::tr("Scrollbar always visible"), new CheckEditor(QObject::tr("Always visible")),
        [](const Project& p) { return Json(p.page.scrollbar.always); },
        [](Project& p, const Json& v) { p.page.scrollbar.always = v.get<bool>(); });
    property(
        QObject::tr("Theme root size"), QObject::tr("Theme root size"), px(1, 100, 0.5),
        [](const Project& p) { return Json(p.page.rootSize.resolve(units::usualReaderSize, p.mostWidth)); },
        [](Project& p, const Json& v) { p.page.rootSize = v.get<double>(); });
    property(
        QObject::tr("Reader text size"), QObject::tr("Reader text size"), px(8, 64, 1),
        [](const Project& p) { return Json(p.page.readerSize); },
        [](Project& p, const Json& v) { p.page.readerSize = v.get<double>(); });
    property(
        QObject::tr("Smallest viewport"), QObject::tr("Smallest viewport width"), px(200, 5000, 10),
        [](const Project& p) { return Json(p.leastWidth); },
        [](Project& p, const Json& v) { p.leastWidth = std::min(v.get<double>(), p.mostWidth - 1); });
    property(
        QObject::tr("Largest viewport"), QObject::tr("Largest viewport width"), px(200, 5000, 10),
        [](const Project& p) { return Json(p.mostWidth); },
        [](Project& p, const Json& v) { p.mostWidth = std::max(v.get<double>(), p.leastWidth + 1); });
}

void RowPanel::buildProject() {
    section(QObject::tr("Project"));
    property(
        QObject::tr("Name"), QObject::tr("Project name"), new TextEditor,
        [](const Project& p) { return Json(p.name); }, [](Project& p, const Json& v) { p.name = textOf(v); });
    property(
        QObject::tr("Class prefix"), QObject::tr("Class prefix"), new TextEditor(wrongWithClass),
        [](const Project& p) { return Json(p.row().name); },
        [](Project& p, const Json& v) { p.row().name = textOf(v); });
    auto* language = new TextEditor([](const QString& text) {
        static const QRegularExpression shape("^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$");
        return shape.match(text).hasMatch()
                   ? QString()
                   : QObject::tr("enter a language tag, such as en, pt-BR or zh-Hant");
    });
    property(
        QObject::tr("Language"), QObject::tr("Language"), language,
        [](const Project& p) { return Json(p.language); },
        [](Project& p, const Json& v) { p.language = textOf(v); });
    property(
        QObject::tr("Writing direction"), QObject::tr("Writing direction"),
        new SegmentEditor({{"ltr", QObject::tr("Left to right")}, {"rtl", QObject::tr("Right to left")}}),
        [](const Project& p) { return Json(p.rightToLeft ? "rtl" : "ltr"); },
        [](Project& p, const Json& v) { p.rightToLeft = textOf(v) == "rtl"; })
        ->setTall();
    auto* level = new NumberEditor(numberKind(1, 6, 1, 0));
    level->field().setAlwaysFilled(true);
    property(
        QObject::tr("Heading level"), QObject::tr("Heading level"), level,
        [](const Project& p) { return Json(p.row().headingLevel); },
        [](Project& p, const Json& v) { p.row().headingLevel = v.get<int>(); });
    property(
        QObject::tr("Size unit"), QObject::tr("Size unit"), new SegmentEditor({{"rem", "rem"}, {"px", "px"}}),
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
