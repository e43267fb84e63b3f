#include "emit/sheet_writer.h"

#include <algorithm>

#include "emit/escape.h"
#include "emit/rules.h"
#include "emit/sentences.h"
#include "project/titles.h"
#include "units/number.h"
#include "wording/language.h"

namespace tenter::emit {

namespace {

bool isShared(const Block& block, std::size_t rule, const Declaration& declaration) {
    if (block.variants.size() < 2) return false;
    return std::ranges::all_of(block.variants, [&](const VariantRules& variant) {
        return std::ranges::any_of(variant.rules[rule].declarations,
                                   [&](const Declaration& other) { return other.same(declaration); });
    });
}

bool has(const Block& block, When when) {
    for (const VariantRules& variant : block.variants)
        for (const Rule& rule : variant.rules)
            if (rule.when == when && !rule.declarations.empty()) return true;
    return false;
}

std::vector<std::size_t> indices(const Block& block) {
    std::vector<std::size_t> out;
    for (const VariantRules& variant : block.variants)
        out.push_back(variant.variant);
    return out;
}

}  // namespace

void SheetWriter::line(const std::string& content) {
    if (form_.minified) {
        text_ += content;
        return;
    }
    text_.append(static_cast<std::size_t>(depth_) * 2, ' ');
    text_ += content;
    text_ += '\n';
    fresh_ = false;
}

void SheetWriter::gap() {
    if (!fresh_ && !form_.minified) text_ += '\n';
    fresh_ = true;
}

void SheetWriter::comment(const std::string& sentence) {
    if (!sentence.empty() && form_.comments && !form_.minified) line("/* " + cssComment(sentence) + " */");
}

void SheetWriter::open(const std::string& content) {
    line(content + (form_.minified ? "{" : " {"));
    ++depth_;
    fresh_ = true;
}

void SheetWriter::close() {
    --depth_;
    line("}");
}

std::string SheetWriter::selector(std::size_t variant, const Rule& rule) const {
    const std::string own = "." + cssIdentifier(project_.row().variants[variant].className);
    std::string all = own;
    for (int i = 0; i < rule.strength.ids; ++i)
        all += ":not(#_)";
    for (int i = 0; i < rule.strength.classes; ++i)
        all += own;
    return all + underClass(own, rule.selector).substr(own.size());
}

void SheetWriter::writeRule(const std::vector<std::size_t>& variants, const Rule& rule,
                            const std::vector<Declaration>& declarations) {
    if (declarations.empty()) return;
    gap();
    for (const Declaration& declaration : declarations)
        if (!declaration.note.empty()) comment(declaration.note);
    for (std::size_t i = 0; i + 1 < variants.size(); ++i)
        line(selector(variants[i], rule) + ",");
    open(selector(variants.back(), rule));
    for (std::size_t i = 0; i < declarations.size(); ++i)
        writeDeclaration(declarations[i], i + 1 == declarations.size());
    close();
}

void SheetWriter::writeDeclaration(const Declaration& declaration, bool isLast) {
    const std::string value = declaration.value + (declaration.important ? " !important" : "");
    if (form_.minified) return line(declaration.property + ":" + value + (isLast ? "" : ";"));
    const bool remarked = form_.comments && !declaration.remark.empty();
    line(declaration.property + ": " + value + ";" +
         (remarked ? " /* " + cssComment(declaration.remark) + " */" : ""));
}

void SheetWriter::add(const std::string& rules) {
    if (rules.empty()) return;
    gap();
    text_ += rules;
    fresh_ = rules.ends_with("\n\n");
}

void SheetWriter::openLayer(const std::string& name) {
    gap();
    open("@layer " + cssIdentifier(name));
}

void SheetWriter::writeShared(const Block& block, When when) {
    const std::vector<Rule>& rules = block.variants.front().rules;
    for (std::size_t r = 0; r < rules.size(); ++r) {
        if (rules[r].when != when) continue;
        std::vector<Declaration> shared;
        for (const Declaration& declaration : rules[r].declarations)
            if (isShared(block, r, declaration)) shared.push_back(declaration);
        writeRule(indices(block), rules[r], shared);
    }
}

void SheetWriter::writeOwn(const Block& block, const VariantRules& variant, When when) {
    for (std::size_t r = 0; r < variant.rules.size(); ++r) {
        const Rule& rule = variant.rules[r];
        if (rule.when != when) continue;
        std::vector<Declaration> own;
        for (const Declaration& declaration : rule.declarations)
            if (!isShared(block, r, declaration)) own.push_back(declaration);
        writeRule({variant.variant}, rule, own);
    }
}

void SheetWriter::writeWhen(const Block& block, When when) {
    if (!has(block, when)) return;
    if (when != When::Always) {
        gap();
        open(when == When::Hover ? "@media (hover: hover)"
                                 : "@media (prefers-reduced-motion: no-preference)");
    }
    writeShared(block, when);
    for (const VariantRules& variant : block.variants)
        writeOwn(block, variant, when);
    if (when != When::Always) close();
}

namespace {

/// The start of the comment on the base: `Viewports wider than 1150 px: ` if all variants begin there.
std::string widestHead(const Block& block) {
    const std::optional<double> start = block.variants.front().above;
    const bool same = std::ranges::all_of(
        block.variants, [&](const VariantRules& variant) { return variant.above == start; });
    if (!same) return "Widest viewports: ";
    return start ? "Viewports wider than " + units::number(*start) + " px: " : "All viewports: ";
}

}  // namespace

void SheetWriter::write(const Block& block) {
    const wording::InEnglish english;
    if (block.variants.empty()) return;
    if (!block.upTo) several_ = block.variants.size() > 1;
    gap();
    std::string sentence =
        block.upTo ? "Viewports up to " + units::number(*block.upTo) + " px wide: " : widestHead(block);
    for (std::size_t i = 0; i < block.variants.size(); ++i) {
        const VariantRules& variant = block.variants[i];
        if (i > 0) sentence += ", ";
        sentence += project::columnsLabel(variant.columns);
        if (several_) sentence += " (." + project_.row().variants[variant.variant].className + ")";
    }
    comment(sentence + ".");
    // Media queries in px: em and rem in them depend on the reader's text size, not on the theme's root size.
    // Media Queries 4 § 1.3.
    if (block.upTo) open("@media (max-width: " + units::number(*block.upTo) + "px)");
    fresh_ = true;
    for (const When when : {When::Always, When::Hover, When::MotionAllowed})
        writeWhen(block, when);
    if (block.upTo) close();
}

}  // namespace tenter::emit
