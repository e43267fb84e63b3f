#include "document/wording.h"

#include <QKeySequence>
#include <algorithm>
#include <iterator>
#include <string_view>
#include <variant>

#include "language/language.h"

#include "project/rules.h"
#include "project/titles.h"
#include "session/layout_cache.h"
#include "units/quantities.h"
#include "units/whole_width.h"

namespace tenter::desktop {

namespace {

constexpr QChar noBreakSpace(0x00A0);

struct RoleTitle {
    std::string_view role;
    const char* title;
};
// The roles of new rows, and what is not a role of text.
constexpr RoleTitle roleTitles[] = {
    {"heading", QT_TRANSLATE_NOOP("QObject", "Heading")}, {"body", QT_TRANSLATE_NOOP("QObject", "Body")},
    {"button", QT_TRANSLATE_NOOP("QObject", "Button")},   {"kicker", QT_TRANSLATE_NOOP("QObject", "Kicker")},
    {"price", QT_TRANSLATE_NOOP("QObject", "Price")},     {"card", QT_TRANSLATE_NOOP("QObject", "Card")},
    {"picture", QT_TRANSLATE_NOOP("QObject", "Picture")}, {"row", QT_TRANSLATE_NOOP("QObject", "Row")}};

bool isKnownRole(const std::string& role) {
    return std::ranges::find(roleTitles, role, &RoleTitle::role) != std::end(roleTitles);
}

}  // namespace

QString figure(double value, int decimals) {
    return QString::fromStdString(units::figure(value, decimals)).replace('.', language::decimalPoint());
}

QString pixels(double value, int decimals) {
    return figure(value, decimals) + noBreakSpace + "px";
}

QString percent(double share, int decimals) {
    return QObject::tr("%1\u00A0%", "percentage").arg(figure(share * 100, decimals));
}

QString widthsTitle(double first, double last) {
    const QString end = pixels(last);
    return pixels(first) == end ? end : QObject::tr("%1–%2", "range").arg(figure(first), end);
}

QString widthsInSentence(double first, double last) {
    const QString end = pixels(last);
    return pixels(first) == end ? QObject::tr("at %1", "width").arg(end)
                                : QObject::tr("from %1 to %2", "widths").arg(figure(first), end);
}

QString partTitle(const project::Project& project, std::size_t card, std::size_t part) {
    QString kind = QObject::tr("part %1").arg(part + 1);
    if (card < project.row().cards.size() && part < project.row().cards[card].parts.size()) {
        const auto* text = std::get_if<project::TextPart>(&project.row().cards[card].parts[part]);
        kind = roleName(text != nullptr ? text->role : "picture");
    }
    return QObject::tr("%1, card %2", "part").arg(kind).arg(card + 1);
}

QString roleTitle(const std::string& role) {
    if (const auto known = std::ranges::find(roleTitles, role, &RoleTitle::role);
        known != std::end(roleTitles))
        return QObject::tr(known->title);
    QString title = QString::fromStdString(role);
    title.replace('-', ' ');
    if (!title.isEmpty()) title[0] = title[0].toUpper();
    return title;
}

QString roleName(const std::string& role) {
    return isKnownRole(role) ? roleInSentence(role) : QString::fromStdString(role);
}

QString roleInSentence(const std::string& role) {
    return isKnownRole(role) ? inSentence(roleTitle(role)) : roleTitle(role).toLower();
}

QString inSentence(const QString& title) {
    return title.isEmpty() || !language::lowersTitles() ? title : title[0].toLower() + title.mid(1);
}

QString keysTitle(const QString& keys) {
    return QKeySequence(keys).toString(QKeySequence::NativeText);
}

QString columnsTitle(int columns) {
    return QObject::tr("%n column(s)", nullptr, columns);
}

QString linesTitle(std::size_t lines) {
    return QObject::tr("%n line(s)", nullptr, static_cast<int>(lines));
}

QString bandWidths(const project::Variant& variant, std::size_t band) {
    const auto& bands = variant.bands;
    const std::optional<double>& last = bands[band].upTo;
    if (band == 0) return last ? QObject::tr("up to %1").arg(pixels(*last)) : QObject::tr("all widths");
    // The breakpoint itself belongs to the band below it, so this band starts at the next whole width.
    const double first = units::firstWholeWidthAbove(bands[band - 1].upTo.value_or(0));
    return last ? widthsTitle(first, *last) : QObject::tr("from %1").arg(pixels(first));
}

QString bandTitle(const LayoutCache& layouts, std::size_t band) {
    const int columns = layouts.row().settings(band).row.columns.value_or(1);
    return QObject::tr("%1 (%2)", "widths, columns")
        .arg(bandWidths(layouts.project().row().variants[layouts.variant()], band), columnsTitle(columns));
}

QString scopeTitle(const LayoutCache& layouts, project::CascadeLayer scope) {
    switch (scope) {
        case project::CascadeLayer::Style:
            return QObject::tr("all variants");
        case project::CascadeLayer::Variant:
            return QObject::tr("the variant “%1”")
                .arg(variantTitle(layouts.project().row().variants[layouts.variant()]));
        case project::CascadeLayer::Band:
            return QObject::tr("the band %1").arg(bandTitle(layouts, layouts.band()));
    }
    return {};
}

QString trialTitle(project::Trial::Kind kind) {
    using Kind = project::Trial::Kind;
    switch (kind) {
        case Kind::LongerCopy:
            return QObject::tr("Longer text");
        case Kind::LongestTitles:
            return QObject::tr("Longest heading in every card");
        case Kind::ShortestTitles:
            return QObject::tr("Shortest heading in every card");
        case Kind::NoPictures:
            return QObject::tr("No pictures");
        case Kind::CardMore:
            return QObject::tr("One more card");
        case Kind::CardLess:
            break;
    }
    return QObject::tr("One card fewer");
}

// The window uses the name `row` for the row itself.
QString wrongWithRole(const std::string& role) {
    if (project::isRoleName(role) && role != "row") return {};
    return QObject::tr(
        "A role name has lower-case letters, digits and hyphens, and starts with a letter. It cannot be "
        "card, "
        "picture or row, or start with x-.");
}

QString variantTitle(const project::Variant& variant) {
    return QString::fromStdString(project::titleOf(variant));
}

QString variantFacts(const project::Project& project, const project::Variant& variant) {
    return QObject::tr("class %1, %2", "class of a variant, its columns")
        .arg(QString::fromStdString(variant.className),
             QString::fromStdString(project::columnsOf(project, variant)));
}

QString engineTitle(const text::BreakProfile& profile) {
    const std::string_view title = profile.title();
    return QString::fromUtf8(title.data(), static_cast<qsizetype>(title.size()));
}

QString toolTipText(const QString& text) {
    if (text.isEmpty()) return {};
    return "<div style='white-space: pre-wrap'>" + text.toHtmlEscaped() + "</div>";
}

}  // namespace tenter::desktop
