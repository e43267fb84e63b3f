#include "document/wording.h"

#include <cmath>
#include <variant>

#include "project/titles.h"
#include "units/number.h"

namespace tenter::desktop {

namespace {

// Neither breaks.
constexpr QChar thinSpace(0x202F);
constexpr QChar beforeUnit(0x00A0);
constexpr QChar minus(0x2212);

}  // namespace

QString figure(double value, int decimals) {
    QString text = QString::fromStdString(units::number(std::abs(value), decimals));
    const auto point = text.indexOf('.');
    const auto whole = point < 0 ? text.size() : point;
    for (auto at = whole - 3; at > 0; at -= 3)
        text.insert(at, thinSpace);
    if (value < 0 && text != "0") text.prepend(minus);
    return text;
}

QString pixels(double value, int decimals) {
    return figure(value, decimals) + beforeUnit + "px";
}

QString widthsTitle(double first, double last) {
    return first == last ? pixels(first) : figure(first, 1) + " to " + pixels(last);
}

QString partTitle(const project::Project& project, std::size_t card, std::size_t part) {
    std::string kind = "part " + std::to_string(part + 1);
    if (card < project.cards.size() && part < project.cards[card].parts.size()) {
        const auto* text = std::get_if<project::TextPart>(&project.cards[card].parts[part]);
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
    return QString::fromStdString(project::inColumns(columns));
}

QString bandWidths(const project::Variant& variant, std::size_t band) {
    const auto& bands = variant.bands;
    const bool open = !bands[band].upTo.has_value();
    if (band == 0) return open ? QStringLiteral("all widths") : "to " + pixels(*bands[0].upTo);
    // A breakpoint's own width belongs to the band below it.
    const double below = bands[band - 1].upTo.value_or(0);
    if (open) return "above " + pixels(below);
    return "above " + figure(below, 1) + " to " + pixels(*bands[band].upTo);
}

QString bandTitle(const Viewing& viewing, std::size_t band) {
    const int columns = viewing.row().settings(band).row.columns.value_or(1);
    return columnsTitle(columns) + ", " + bandWidths(viewing.shown().variants[viewing.variant()], band);
}

QString scopeTitle(const Viewing& viewing, Viewing::Scope scope) {
    switch (scope) {
        case Viewing::Scope::AllVariants:
            return QStringLiteral("all variants");
        case Viewing::Scope::ThisVariant:
            return QStringLiteral("variant ") + variantTitle(viewing.shown().variants[viewing.variant()]);
        case Viewing::Scope::ThisBand:
            return bandTitle(viewing, viewing.band());
    }
    return {};
}

QString trialTitle(project::Trial::Kind kind) {
    using Kind = project::Trial::Kind;
    switch (kind) {
        case Kind::LongerCopy:
            return QStringLiteral("Longer copy");
        case Kind::LongestTitles:
            return QStringLiteral("Longest title everywhere");
        case Kind::ShortestTitles:
            return QStringLiteral("Shortest title everywhere");
        case Kind::NoPictures:
            return QStringLiteral("No pictures");
        case Kind::CardMore:
            return QStringLiteral("One card more");
        case Kind::CardLess:
            break;
    }
    return QStringLiteral("One card less");
}

QString variantTitle(const project::Variant& variant) {
    return QString::fromStdString(project::titleOf(variant));
}

}  // namespace tenter::desktop
