#include "emit/stylesheet.h"

#include "emit/band_changes.h"
#include "emit/custom_properties.h"
#include "emit/needed_fonts.h"
#include "emit/sentences.h"
#include "emit/sheet_writer.h"
#include "project/cascade.h"

namespace tenter::emit {

namespace {

std::string printed(const project::Project& project, const StylesheetOptions& options,
                    const GivenSheet* given) {
    std::vector<std::size_t> variants;
    for (const std::size_t variant : options.variants)
        if (variant < project.row().variants.size()) variants.push_back(variant);
    if (variants.empty()) return {};
    std::vector<Block> all = blocks(project, variants, options.unit, given);
    if (options.form.properties) moveToCustomProperties(project, given, all);
    SheetWriter writer(project, options.form);
    writer.comment(headSentence(project, variants));
    writer.comment(fontSentence(project, variants));
    writer.add(options.fontRules);
    const bool layered = options.form.layer && given == nullptr;
    if (layered) writer.openLayer(project.row().name);
    for (const Block& block : all)
        writer.write(block);
    if (layered) writer.closeLayer();
    return writer.text();
}

}  // namespace

std::string stylesheet(const project::Project& project, const StylesheetOptions& options) {
    return printed(project, options, nullptr);
}

std::optional<std::string> givenStylesheet(const project::Project& project, const StylesheetOptions& options,
                                           project::Problems& problems) {
    const std::optional<GivenSheet> given = GivenSheet::of(project, problems);
    if (!given) return std::nullopt;
    return printed(project, options, &*given);
}

std::string fontSize(const project::Project& project, std::size_t variant, double width,
                     const std::string& role) {
    if (variant >= project.row().variants.size()) return {};
    const project::Variant& chosen = project.row().variants[variant];
    const project::Settings settings = project::resolve(project, chosen, project::bandAt(chosen, width));
    const project::TextStyle* style = settings.text.find(role);
    if (style == nullptr || !style->size) return {};
    const bool card = style->follow == project::Follow::Card;
    return units::FluidSize::from(*style->size, project.page.at(width).rootSize, project.unit,
                                  card ? units::Unit::Cqi : units::Unit::Vw)
        .css();
}

}  // namespace tenter::emit
