#include "emit/tokens.h"

#include <algorithm>

#include "emit/band_tokens.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "units/number.h"
#include "units/quantities.h"
#include "wording/language.h"

namespace tenter::emit {

using project::Json;

namespace {

/// A number as part of a name, which must not contain a full stop. Format Module § 5.1.1.
std::string inName(double number) {
    std::string text = units::number(number);
    std::ranges::replace(text, '.', '-');
    return text;
}

/// `up-to-590`, `above-590-up-to-930`, `above-930`; `all-widths` for the only band.
std::string bandName(const project::Variant& variant, std::size_t band) {
    std::string name;
    if (band > 0) name = "above-" + inName(*variant.bands[band - 1].upTo);
    if (variant.bands[band].upTo)
        name += (name.empty() ? "up-to-" : "-up-to-") + inName(*variant.bands[band].upTo);
    return name.empty() ? "all-widths" : name;
}

/// The viewport widths between which a band holds.
Json viewportOf(const project::Variant& variant, std::size_t band, const TokenUnit& unit) {
    Json group = Json::object();
    if (band > 0)
        group["above"] = token("dimension", unit.dimension(*variant.bands[band - 1].upTo),
                               "The band holds for wider viewports than this.");
    if (variant.bands[band].upTo)
        group["up-to"] =
            token("dimension", unit.dimension(*variant.bands[band].upTo), "The band includes this width.");
    return group;
}

/// The tokens of one variant before they are printed.
struct VariantTokens {
    std::size_t variant = 0;
    TokenEntries shared;              ///< by all bands
    std::vector<TokenEntries> bands;  ///< without these
};

std::vector<TokenEntries> entriesOf(const project::Project& project, const project::Variant& variant,
                                    const TokenUnit& unit) {
    const std::vector<RoleUse> uses = roleUses(project);
    std::vector<TokenEntries> bands;
    bands.reserve(variant.bands.size());
    for (std::size_t band = 0; band < variant.bands.size(); ++band) {
        const project::Settings settings = project::resolve(project, variant, band);
        const double width = variant.bands[band].upTo.value_or(project.mostWidth);
        const double rem = project.page.at(width).rootSize.resolve(units::usualReaderSize, width);
        bands.push_back(bandTokens({project, settings, uses, unit, rem}));
    }
    return bands;
}

/// Removes the tokens that are without effect in every band of every variant.
void dropNeutral(std::vector<VariantTokens>& variants) {
    const auto isNeutral = [&](const TokenEntry& entry) {
        return std::ranges::all_of(variants, [&](const VariantTokens& variant) {
            return std::ranges::all_of(variant.bands, [&](const TokenEntries& band) {
                const TokenEntry* other = findEntry(band, entry.path);
                return other == nullptr || other->neutral;
            });
        });
    };
    std::vector<std::vector<std::string>> dropped;
    for (const VariantTokens& variant : variants)
        for (const TokenEntries& band : variant.bands)
            for (const TokenEntry& entry : band)
                if (entry.neutral && std::ranges::find(dropped, entry.path) == dropped.end() &&
                    isNeutral(entry))
                    dropped.push_back(entry.path);
    for (VariantTokens& variant : variants)
        for (TokenEntries& band : variant.bands)
            std::erase_if(band, [&](const TokenEntry& entry) {
                return std::ranges::find(dropped, entry.path) != dropped.end();
            });
}

/// `name`, with hyphens at its end until no variant has it as its class.
std::string freeName(const project::Project& project, std::string name) {
    while (project.row().findVariant(name))
        name += "-";
    return name;
}

Json variantGroup(const project::Project& project, const VariantTokens& tokens, const TokenUnit& unit) {
    const project::Variant& variant = project.row().variants[tokens.variant];
    Json group = Json::object();
    group["$description"] = project::titleOf(variant) + ".";
    if (!tokens.shared.empty()) {
        group["all-widths"] = Json{{"$description", "The same in every band."}};
        group["all-widths"].update(groupOf(tokens.shared));
    }
    for (std::size_t band = 0; band < tokens.bands.size(); ++band) {
        Json inner{{"$description", "Viewports: " + project::bandTitle(project, variant, band) + "."}};
        Json viewport = viewportOf(variant, band, unit);
        if (!viewport.empty()) inner["viewport"] = std::move(viewport);
        inner.update(groupOf(tokens.bands[band]));
        group[bandName(variant, band)] = std::move(inner);
    }
    return group;
}

}  // namespace

std::string tokens(const project::Project& project, const TokenOptions& options) {
    const wording::InEnglish english;
    const TokenUnit unit(options.unit == units::Unit::Rem);
    std::vector<VariantTokens> variants;
    variants.reserve(options.variants.size());
    for (const std::size_t index : options.variants)
        if (index < project.row().variants.size())
            variants.push_back({index, {}, entriesOf(project, project.row().variants[index], unit)});
    dropNeutral(variants);
    std::vector<TokenEntries> shared;
    shared.reserve(variants.size());
    for (VariantTokens& variant : variants) {
        variant.shared = takeShared(variant.bands);
        // The only band of a variant holds at every width.
        if (variant.bands.size() == 1) std::swap(variant.shared, variant.bands.front());
        shared.push_back(variant.shared);
    }
    const TokenEntries common = takeShared(shared);
    Json row = Json::object();
    if (!common.empty()) {
        const std::string name = freeName(project, "all-variants");
        row[name] = Json{{"$description", "The same in every band of every variant."}};
        row[name].update(groupOf(common));
    }
    for (std::size_t i = 0; i < variants.size(); ++i) {
        VariantTokens& variant = variants[i];
        variant.shared = shared[i];
        if (variant.bands.size() == 1) variant.bands.clear();
        row[project.row().variants[variant.variant].className] = variantGroup(project, variant, unit);
    }
    Json file{{"$description", (project.name.empty() ? "Row of cards" : project.name + ": row of cards") +
                                   ", for viewports from " + units::px(project.leastWidth) + " to " +
                                   units::px(project.mostWidth) + " wide. Made with Tenter."}};
    file[project.row().name] = std::move(row);
    return project::prettyJson(file);
}

}  // namespace tenter::emit
