// How the window names roles, parts, bands and widths.
#pragma once

#include <QString>
#include <string>

#include "document/viewing.h"
#include "project/trial.h"

namespace tenter::desktop {

/// A number as the window shows it: at most `decimals` places, a true minus, thin spaces between thousands.
QString figure(double value, int decimals = 2);
/// `1 240 px`.
QString pixels(double value, int decimals = 1);
/// `784 px`, `784 to 792 px`.
QString widthsTitle(double first, double last);
/// `heading, card 2`: a card's part, by their places in the project.
QString partTitle(const project::Project& project, std::size_t card, std::size_t part);
/// `Heading`, `Body`; for `card`, `picture` and `row` `Card` and so on.
QString roleTitle(const std::string& role);
/// `1 column`, `3 columns`.
QString columnsTitle(int columns);
/// `to 560 px`, `561 to 940 px`, `above 940 px`, `all widths`.
QString bandWidths(const project::Variant& variant, std::size_t band);
/// `1 column, to 560 px`.
QString bandTitle(const Viewing& viewing, std::size_t band);
/// The layer an edit goes to: `all variants`, `variant 3 columns`, `1 column, to 560 px`.
QString scopeTitle(const Viewing& viewing, Viewing::Scope scope);
/// What a row is tried with: `Longer copy`, `Longest title everywhere`.
QString trialTitle(project::Trial::Kind kind);
/// The variant's name, `3 columns` for a bare `3`; its class if it has none.
QString variantTitle(const project::Variant& variant);

}  // namespace tenter::desktop
