#include "panels/colour_panel.h"

#include "controls/colour_editor.h"
#include "controls/number_editors.h"
#include "document/handover.h"
#include "document/wording.h"
#include "panels/computed.h"
#include "project/cascade.h"
#include "row/lookup.h"
#include "units/contrast.h"

namespace tenter::desktop::panels {

using controls::ColourEditor;
using controls::lengthKind;
using controls::NumberEditor;

namespace {

const QStringList strokes{"px", "rem", "em"};
const QStringList corners{"px", "rem", "em"};

}  // namespace

ColourPanel::ColourPanel(Context& context, QWidget* parent) : Panel(context, parent) {
    buildText();
    buildCard();
    begin(QObject::tr("Row"), "row");
    add(QObject::tr("Background"), new ColourEditor, "background");
    begin(QObject::tr("Picture"), "picture");
    add(QObject::tr("Corner radius"), new NumberEditor(lengthKind(corners)), "radius");
    close();
}

void ColourPanel::begin(const QString& title, const std::string& subject, For roles) {
    parts_.push_back({section(title), title, subject, roles, {}});
}

void ColourPanel::add(const QString& title, controls::Editor* editor, const std::string& setting, For roles) {
    Part& part = parts_.back();
    // Rows for text roles follow the target; the others have a subject of their own.
    // Several sections have a colour and a width: their names say which.
    const bool isShared = part.title == QObject::tr("Border") || part.title == QObject::tr("Hover") ||
                          part.title == QObject::tr("Focus ring") || part.title == QObject::tr("Shadow");
    const QString name =
        isShared && setting != "radius"
            ? QObject::tr("%1 %2", "section and setting: Border width").arg(part.title, inSentence(title))
            : title;
    auto* row = new SettingRow(context(), title, editor, part.subject, setting, this, name);
    addWidget(row);
    part.rows.push_back({row, roles});
    // Every setting of links is one of buttons too.
    const bool links = part.roles != For::All || roles != For::All;
    addFindable(title, editor, links ? std::string("button") : part.subject);
}

bool ColourPanel::isFor(For roles) const {
    const std::string& role = context().target.subject();
    return roles == For::All || role == "button" ||
           (roles == For::Links && containsLinks(session().shown.project(), role));
}

void ColourPanel::buildText() {
    begin(QObject::tr("Colours"), {});
    add(QObject::tr("Text"), new ColourEditor, "colour");
    add(QObject::tr("Background"), new ColourEditor, "background");
    plain_ = new ContrastLine(QObject::tr("text on background"));
    addWidget(plain_);
    begin(QObject::tr("Border"), {});
    add(QObject::tr("Colour"), new ColourEditor, "border/colour");
    add(QObject::tr("Width"), new NumberEditor(lengthKind(strokes)), "border/width");
    add(QObject::tr("Corner radius"), new NumberEditor(lengthKind(corners)), "radius");
    begin(QObject::tr("Hover"), {}, For::Links);
    add(QObject::tr("Text"), new ColourEditor, "hover/colour");
    add(QObject::tr("Background"), new ColourEditor, "hover/background", For::Buttons);
    add(QObject::tr("Border"), new ColourEditor, "hover/borderColour", For::Buttons);
    hover_ = new ContrastLine(QObject::tr("on hover"));
    addWidget(hover_);
    begin(QObject::tr("Focus ring"), {}, For::Links);
    add(QObject::tr("Colour"), new ColourEditor, "focus/colour");
    add(QObject::tr("Width"), new NumberEditor(lengthKind(strokes)), "focus/width");
    add(QObject::tr("Offset"), new NumberEditor(lengthKind(strokes, {}, -100, 100)), "focus/offset");
}

void ColourPanel::buildCard() {
    begin(QObject::tr("Card"), "card");
    add(QObject::tr("Background"), new ColourEditor, "background");
    begin(QObject::tr("Border"), "card");
    add(QObject::tr("Colour"), new ColourEditor, "border/colour");
    add(QObject::tr("Width"), new NumberEditor(lengthKind(strokes)), "border/width");
    add(QObject::tr("Corner radius"), new NumberEditor(lengthKind(corners)), "radius");
    begin(QObject::tr("Shadow"), "card");
    add(QObject::tr("Colour"), new ColourEditor, "shadow/colour");
    add(QObject::tr("Offset x"), new NumberEditor(lengthKind({"px"}, {}, -1000, 1000)), "shadow/x");
    add(QObject::tr("Offset y"), new NumberEditor(lengthKind({"px"}, {}, -1000, 1000)), "shadow/y");
    add(QObject::tr("Blur"), new NumberEditor(lengthKind({"px"})), "shadow/blur");
    add(QObject::tr("Spread"), new NumberEditor(lengthKind({"px"}, {}, -1000, 1000)), "shadow/spread");
}

void ColourPanel::refresh() {
    const std::string& subject = context().target.subject();
    const bool text = context().target.isText();
    for (const Part& part : parts_) {
        const bool shows = part.subject.empty() ? text && isFor(part.roles) : part.subject == subject;
        part.widget->setVisible(shows);
        if (!shows) continue;
        for (const Row& row : part.rows) {
            row.widget->setVisible(isFor(row.roles));
            row.widget->refresh();
        }
    }
    showContrast();
}

void ColourPanel::refreshPixels() {
    for (const Part& part : parts_)
        for (const Row& row : part.rows)
            if (row.widget->isVisibleTo(this)) row.widget->refreshPixels();
    showContrast();
}

void ColourPanel::showContrast() {
    if (!context().target.isText()) return;
    const std::string& role = context().target.subject();
    const project::Settings& settings = session().layouts.row().settings(session().layouts.band());
    const project::TextStyle* found = settings.text.find(role);
    const project::TextStyle style = found ? *found : project::defaultText(role);
    constexpr units::Colour none{0, 0, 0, 0};
    // The colours under the text, from the page up.
    const project::Page& page = session().shown.project().page;
    units::Colour ground =
        units::compositeOver(page.at(session().view.width()).container.background, {255, 255, 255, 255});
    ground = units::compositeOver(settings.row.background.value_or(none), ground);
    ground = units::compositeOver(settings.card.background.value_or(none), ground);
    const units::Colour own = style.background.value_or(none);
    const units::Colour ink = style.colour.value_or(units::Colour{});
    const double size = row::fontSizeHere(session().layouts.current(), role).value_or(16);
    const double weight = style.weight.value_or(400);
    plain_->judge(ink, units::compositeOver(own, ground), size, weight);
    const bool hovers = isFor(For::Links) && (style.hover.colour || style.hover.background);
    hover_->setVisible(hovers);
    if (hovers)
        hover_->judge(style.hover.colour.value_or(ink),
                      units::compositeOver(style.hover.background.value_or(own), ground), size, weight);
}

}  // namespace tenter::desktop::panels
