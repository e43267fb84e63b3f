#include "document/wording.h"

#include <cmath>
#include <variant>

#include "project/rules.h"
#include "project/titles.h"
#include "session/layout_cache.h"
#include "units/quantities.h"

namespace tenter::desktop {

namespace {

constexpr QChar noBreakSpace(0x00A0);

}  // namespace

QString figure(double value, int decimals) {
    return QString::fromStdString(units::figure(value, decimals));
}

QString pixels(double value, int decimals) {
    return QString::fromStdString(units::px(value, decimals));
}

QString percent(double share, int decimals) {
    return figure(share * 100, decimals) + noBreakSpace + '%';
}

QString widthsTitle(double first, double last) {
    return QString::fromStdString(units::pxRange(first, last));
}

QString widthsInSentence(double first, double last) {
    return QString::fromStdString(units::fromPxToPx(first, last));
}

QString partTitle(const project::Project& project, std::size_t card, std::size_t part) {
    std::string kind = "part " + std::to_string(part + 1);
    if (card < project.row().cards.size() && part < project.row().cards[card].parts.size()) {
        const auto* text = std::get_if<project::TextPart>(&project.row().cards[card].parts[part]);
        kind = text != nullptr ? text->role : "picture";
    }
    return QString::fromStdString(kind) + ", card " + QString::number(card + 1);
}

QString roleTitle(const std::string& role) {
    QString title = QString::fromStdString(role);
    title.replace('-', ' ');
    if (!title.isEmpty()) title[0] = title[0].toUpper();
    return title;
}

QString columnsTitle(int columns) {
    return QString::fromStdString(project::columnsLabel(columns));
}

QString linesTitle(std::size_t lines) {
    return lines == 1 ? QStringLiteral("1 line") : figure(static_cast<double>(lines), 0) + " lines";
}

QString bandWidths(const project::Variant& variant, std::size_t band) {
    const auto& bands = variant.bands;
    const std::optional<double>& last = bands[band].upTo;
    if (band == 0) return last ? "up to " + pixels(*last) : QStringLiteral("all widths");
    // The breakpoint itself belongs to the band below it, so this band starts at the next whole width.
    const double first = std::floor(bands[band - 1].upTo.value_or(0)) + 1;
    return last ? widthsTitle(first, *last) : "from " + pixels(first);
}

QString bandTitle(const LayoutCache& layouts, std::size_t band) {
    const int columns = layouts.row().settings(band).row.columns.value_or(1);
    return bandWidths(layouts.project().row().variants[layouts.variant()], band) + " (" +
           columnsTitle(columns) + ')';
}

QString scopeTitle(const LayoutCache& layouts, project::CascadeLayer scope) {
    switch (scope) {
        case project::CascadeLayer::Style:
            return QStringLiteral("all variants");
        case project::CascadeLayer::Variant:
            return QStringLiteral("the variant “%1”")
                .arg(variantTitle(layouts.project().row().variants[layouts.variant()]));
        case project::CascadeLayer::Band:
            return "the band " + bandTitle(layouts, layouts.band());
    }
    return {};
}

QString trialTitle(project::Trial::Kind kind) {
    using Kind = project::Trial::Kind;
    switch (kind) {
        case Kind::LongerCopy:
            return QStringLiteral("Longer text");
        case Kind::LongestTitles:
            return QStringLiteral("Longest heading in every card");
        case Kind::ShortestTitles:
            return QStringLiteral("Shortest heading in every card");
        case Kind::NoPictures:
            return QStringLiteral("No pictures");
        case Kind::CardMore:
            return QStringLiteral("One more card");
        case Kind::CardLess:
            break;
    }
    return QStringLiteral("One card fewer");
}

// The window uses the name `row` for the row itself.
QString wrongWithRole(const std::string& role) {
    if (project::isRoleName(role) && role != "row") return {};
    return QStringLiteral(
        "A role name has lower-case letters, digits and hyphens, and starts with a letter. It cannot be "
        "card, "
        "picture or row, or start with x-.");
}

QString variantTitle(const project::Variant& variant) {
    return QString::fromStdString(project::titleOf(variant));
}

QString variantFacts(const project::Project& project, const project::Variant& variant) {
    return QString::fromStdString("class " + variant.className + ", " + project::columnsOf(project, variant));
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
