// Fallback fonts that take up nearly the room of a web font, for the time until it has loaded.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "project/project.h"
#include "sweep/differences.h"
#include "text/paragraph_store.h"

namespace tenter::emit {

/// An installed font with the metrics of a web font. CSS Fonts 5 § 4: the overrides are shares of the size
/// that `size-adjust` gives.
struct LateFallback {
    std::string family;  ///< its name in the stylesheet: `Vollkorn fallback`
    std::string of;      ///< the family of the web font
    text::FacePtr face;  ///< the web font
    std::vector<std::string>
        local;                ///< full and PostScript names of the installed font, the first to use first
    std::string localFamily;  ///< the installed family
    double sizeAdjust = 1;    ///< width of the texts in the web font over that in the installed font
    double ascent = 0, descent = 0, lineGap = 0;  ///< overrides, shares
    /// The characters that the rule is for, because the web font lacks others of the texts; empty: all.
    std::set<char32_t> characters;
    /// The `@font-face` rule.
    [[nodiscard]] std::string css(bool minified) const;
};

/// How much lines move when web fonts load, in one variant.
struct LateShift {
    std::size_t variant = 0;
    /// The whole viewport widths at which some line count changes: as the project is, and with the fallback
    /// fonts.
    std::vector<sweep::WidthRange> plainWidths, adjustedWidths;
    double plain = 0, adjusted = 0;              ///< the shares of all widths, 0 to 1
    double plainHeight = 0, adjustedHeight = 0;  ///< mean change of the height of the row, CSS px
};

/// A project whose family lists name the fallback fonts, and these.
struct LateFonts {
    project::Project project;
    std::vector<LateFallback> fallbacks;
    std::vector<LateShift> shifts;  ///< one for each variant asked for
};

/// The families that load late: those with a file in the project. If the project has no files, every family
/// that is named.
std::vector<std::string> lateFamilies(const project::Project& project);

/// The fallback fonts for the variants with the indices `variants`. Widths are those of the texts of the
/// project. A generic family stands for the fonts that browsers most often have for it. Empty if no family
/// loads late.
LateFonts lateFonts(const project::Project& project, const std::vector<std::size_t>& variants,
                    text::ParagraphStore& store);

/// Names the fallback fonts in every family list that has their web fonts, after these.
void addFallbackNames(project::Project& project, const std::vector<LateFallback>& fallbacks);

/// The rules of all fallback fonts, with a comment each if `comments`.
std::string lateFontRules(const LateFonts& late, bool comments, bool minified);

/// What the fallback fonts change, as sentences: one for each variant.
std::vector<std::string> lateFontSentences(const LateFonts& late);

}  // namespace tenter::emit
