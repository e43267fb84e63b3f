#include "emit/late_fonts.h"

#include <hb-ot.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <string_view>
#include <tuple>

#include "emit/escape.h"
#include "emit/page_fonts.h"
#include "layout/layout.h"
#include "layout/prepared.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "sweep/differences.h"
#include "text/generic_families.h"
#include "text/unicode.h"
#include "units/number.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::emit {

using layout::PreparedRow;
using project::Project;
using Names = std::vector<std::string>;

namespace {

/// Families with the same advances, which browsers use for a generic family on most systems; from memory. The
/// first installed one is measured, all are named.
struct UsualFonts {
    std::string_view generic;
    std::array<std::string_view, 4> families;
};
constexpr std::array usualFonts{
    UsualFonts{"sans-serif", {"Arial", "Liberation Sans", "Nimbus Sans", "Arimo"}},
    UsualFonts{"serif", {"Times New Roman", "Liberation Serif", "Nimbus Roman", "Tinos"}},
    UsualFonts{"monospace", {"Courier New", "Liberation Mono", "Nimbus Mono PS", "Cousine"}}};

bool hasName(const Names& names, const std::string& name) {
    return std::ranges::find(names, name) != names.end();
}

/// Every place of a project that sets a family list.
template <class ProjectType, class Visit>
void eachFamilyList(ProjectType& project, const Visit& visit) {
    const auto inSettings = [&](auto& settings) {
        for (auto& [role, style] : settings.text.roles)
            if (style.family) visit(*style.family);
    };
    inSettings(project.row().style);
    for (auto& variant : project.row().variants) {
        inSettings(variant.set);
        for (auto& band : variant.bands)
            inSettings(band.set);
    }
}

/// The project as browsers draw it until the families `late` have loaded.
Project beforeLoading(Project project, const Names& late) {
    eachFamilyList(project, [&](Names& list) {
        std::erase_if(list, [&](const std::string& family) { return hasName(late, family); });
    });
    return project;
}

/// The installed font that stands in for a late one.
struct Installed {
    text::FacePtr face;
    std::string family;
    Names local;
};

/// The names of a face for `local()`: `Arial Bold` and its PostScript name. CSS Fonts 4 § 4.3.2.
void addNames(const std::string& family, bool bold, bool italic, Names& names) {
    std::string full = family;
    if (bold) full += " Bold";
    if (italic) full += " Italic";
    if (!hasName(names, full)) names.push_back(full);
}

Installed installedFor(const Names& rest, double weight, bool italic, text::Fonts& fonts) {
    // CSS Fonts 4 § 5.2: from 600 on, a family with two weights uses the bold one.
    const bool bold = weight >= 600;
    for (const std::string& family : rest) {
        Installed found;
        if (const auto usual = std::ranges::find(usualFonts, family, &UsualFonts::generic);
            usual != usualFonts.end()) {
            for (const std::string_view one : usual->families) {
                const std::string name(one);
                addNames(name, bold, italic, found.local);
                if (found.face) continue;
                const text::FacePtr face = fonts.find({name}, weight, italic).front();
                if (face->family() != name) continue;
                found.face = face;
                found.family = name;
            }
            // The font that this system has for the generic family, if it has none of these.
            if (!found.face) found.local.clear();
        }
        if (!found.face) {
            found.face = fonts.find({family}, weight, italic).front();
            if (found.face->family() != family) continue;
            found.family = family;
            if (!text::isGenericFamily(family)) addNames(family, bold, italic, found.local);
        }
        if (const std::string name = found.face->postScriptName();
            !name.empty() && !hasName(found.local, name))
            found.local.push_back(name);
        if (!found.local.empty()) return found;
    }
    return {};
}

/// A face by its file and weight.
using FaceKey = std::tuple<std::string, unsigned, double, bool>;
FaceKey keyOf(const text::Face& face) {
    return {face.file().string(), face.index(), face.weight(), face.italic()};
}

/// A late face in use.
struct Used {
    text::FacePtr face;
    Installed installed;
    double late = 0;                ///< width of its texts, em
    double installedWidth = 0;      ///< in the installed font
    std::set<char32_t> has, lacks;  ///< characters of its texts
};

/// The visible characters of a paragraph.
std::set<char32_t> charactersOf(const text::Paragraph& paragraph) {
    std::set<char32_t> out;
    const std::u16string& units = paragraph.text();
    for (std::size_t i = 0; i < units.size(); ++i) {
        const char32_t character = text::codePointAt(units, i);
        if (character > 0xFFFF) ++i;
        if (character > 0x20 && character != 0xAD && character != 0x200B) out.insert(character);
    }
    return out;
}

double emsOf(const text::Paragraph& paragraph) {
    return paragraph.ems(0, static_cast<std::uint32_t>(paragraph.clusters().size()));
}

/// The line gap of a face in em. OpenType, hhea and OS/2.
double lineGapOf(const text::Face& face) {
    hb_font_extents_t extents{};
    if (hb_font_get_h_extents(face.font(), &extents) == 0) return 0;
    return std::max(0.0, extents.line_gap / face.scale());
}

/// `rem` and px of a length stay; em refers to the scaled font size.
std::optional<units::Length> unscaled(const std::optional<units::Length>& length, double factor) {
    if (!length || length->unit() != units::Unit::Em) return length;
    return units::Length::em(length->value() / factor);
}

void unscale(project::Sides& sides, double factor) {
    for (std::optional<units::Length>* side : {&sides.top, &sides.right, &sides.bottom, &sides.left})
        *side = unscaled(*side, factor);
}

/// The style drawn with `family` and letters `factor` times as wide and high; boxes and line heights stay.
void scaleStyle(project::TextStyle& style, const std::string& family, double factor) {
    style.family = Names{family};
    const units::Ramp ramp = style.size.value_or(units::Ramp::flat(16));
    if (const auto scaled = units::Ramp::between({ramp.from().width, ramp.from().size * factor},
                                                 {ramp.to().width, ramp.to().size * factor}))
        style.size = scaled;
    const units::LineHeight height = style.lineHeight.value_or(units::LineHeight::times(1.4));
    style.lineHeight = height.isNumber() ? units::LineHeight::times(height.number() / factor)
                                         : units::LineHeight::of(*unscaled(height.length(), factor));
    style.letterSpacing = unscaled(style.letterSpacing, factor);
    style.wordSpacing = unscaled(style.wordSpacing, factor);
    style.border.width = unscaled(style.border.width, factor);
    unscale(style.margin, factor);
    unscale(style.padding, factor);
}

/// Adds the fallback fonts to one family list.
void addFallbacks(Names& list, const std::vector<LateFallback>& fallbacks) {
    for (std::size_t i = 0; i < list.size(); ++i) {
        const auto known = std::ranges::find_if(
            fallbacks, [&](const LateFallback& one) { return one.of == list[i] && !one.local.empty(); });
        if (known == fallbacks.end() || hasName(list, known->family)) continue;
        list.insert(list.begin() + static_cast<std::ptrdiff_t>(i) + 1, known->family);
        ++i;
    }
}

class LateFontMaker {
public:
    LateFontMaker(const Project& project, text::ParagraphStore& store)
        : project_(project),
          store_(store),
          late_(lateFamilies(project)),
          before_(beforeLoading(project, late_)) {}

    LateFonts make(const std::vector<std::size_t>& variants) {
        LateFonts out{project_, {}, {}};
        if (late_.empty()) return out;
        for (const std::size_t variant : variants)
            collect(variant);
        for (auto& [key, used] : used_)
            if (used.installed.face && lacksLetters(used)) used.installed = {};
        for (const auto& [key, used] : used_)
            out.fallbacks.push_back(fallbackOf(used));
        addFallbackNames(out.project, out.fallbacks);
        for (const std::size_t variant : variants)
            out.shifts.push_back(shiftOf(variant));
        return out;
    }

private:
    /// Adds up the widths of the texts that the late faces of a variant draw.
    void collect(std::size_t variant) {
        const text::BreakProfile& profile = text::defaultProfile();
        const PreparedRow loaded(project_, variant, store_, profile);
        const PreparedRow before(before_, variant, store_, profile);
        for (std::size_t band = 0; band < loaded.bandCount(); ++band)
            for (std::size_t card = 0; card < loaded.band(band).cards.size(); ++card)
                for (std::size_t part = 0; part < loaded.band(band).cards[card].parts.size(); ++part)
                    add({variant, band, {card, part}}, loaded, before);
    }

    /// A part of a variant in one of its bands.
    struct PartInBand {
        std::size_t variant = 0;
        std::size_t band = 0;
        project::PartRef place;
    };

    void add(const PartInBand& part, const PreparedRow& loaded, const PreparedRow& before) {
        const auto& [variant, band, place] = part;
        const text::ParagraphPtr& paragraph = loaded.band(band).part(place).paragraph;
        if (!paragraph || !paragraph->strut() || !hasName(late_, paragraph->strut()->family())) return;
        const text::FacePtr& face = paragraph->strut();
        const std::string& role = loaded.roles()[loaded.band(band).part(place).role];
        Used& used = used_[keyOf(*face)];
        if (!used.face) {
            used.face = face;
            const project::TextStyle* style = before.settings(band).text.find(role);
            used.installed =
                installedFor(style->family.value_or(Names{}), face->weight(), face->italic(), store_.fonts());
        }
        roleFaces_[{variant, band, role}] = keyOf(*face);
        if (!used.installed.face) return;
        for (const char32_t character : charactersOf(*paragraph))
            (face->has(character) ? used.has : used.lacks).insert(character);
        used.late += emsOf(*paragraph);
        used.installedWidth += emsOf(*paragraphIn(used.installed, loaded, part));
    }

    /// The same text in the installed font.
    text::ParagraphPtr paragraphIn(const Installed& installed, const PreparedRow& loaded,
                                   const PartInBand& part) {
        const auto key = std::tuple{installed.family, part.variant, part.band};
        std::unique_ptr<PreparedRow>& row = inInstalled_[key];
        if (!row) {
            Project other = project_;
            project::Settings& set = other.row().variants[part.variant].bands[part.band].set;
            for (const auto& [role, style] : loaded.settings(part.band).text.roles)
                set.text.of(role).family = Names{installed.family};
            row = std::make_unique<PreparedRow>(other, part.variant, store_, text::defaultProfile());
        }
        return row->band(part.band).part(part.place).paragraph;
    }

    /// True if the installed font lacks a character that the late one draws: it has other scripts.
    static bool lacksLetters(const Used& used) {
        return std::ranges::any_of(used.has,
                                   [&](char32_t character) { return !used.installed.face->has(character); });
    }

    static LateFallback fallbackOf(const Used& used) {
        LateFallback out;
        out.of = used.face->family();
        out.family = out.of + " fallback";
        out.face = used.face;
        out.local = used.installed.local;
        out.localFamily = used.installed.family;
        if (used.installedWidth > 0) out.sizeAdjust = used.late / used.installedWidth;
        if (!used.lacks.empty()) {
            out.characters = used.has;
            out.characters.insert(U' ');
        }
        // As printed, so that the report is about the rule.
        out.sizeAdjust = units::rounded(out.sizeAdjust, 4);
        out.ascent = used.face->ascent() / out.sizeAdjust;
        out.descent = used.face->descent() / out.sizeAdjust;
        out.lineGap = lineGapOf(*used.face) / out.sizeAdjust;
        return out;
    }

    /// The variant drawn with the fallback fonts.
    Project adjusted(std::size_t variant) {
        Project out = before_;
        project::Variant& changed = out.row().variants[variant];
        for (std::size_t band = 0; band < changed.bands.size(); ++band) {
            const project::Settings settings =
                project::resolve(project_, project_.row().variants[variant], band);
            for (const auto& [role, style] : settings.text.roles) {
                const auto face = roleFaces_.find({variant, band, role});
                if (face == roleFaces_.end()) continue;
                const Used& used = used_.at(face->second);
                if (!used.installed.face) continue;
                project::TextStyle scaled = style;
                scaleStyle(scaled, used.installed.family, fallbackOf(used).sizeAdjust);
                changed.bands[band].set.text.of(role) = std::move(scaled);
            }
        }
        return out;
    }

    LateShift shiftOf(std::size_t variant) {
        const Project other = adjusted(variant);
        const text::BreakProfile& profile = text::defaultProfile();
        const PreparedRow loaded(project_, variant, store_, profile);
        const PreparedRow plain(before_, variant, store_, profile);
        const PreparedRow fallback(other, variant, store_, profile);
        LateShift out;
        out.variant = variant;
        out.plainWidths = movedWidths(loaded, plain);
        out.adjustedWidths = movedWidths(loaded, fallback);
        out.plain = shareOf(out.plainWidths);
        out.adjusted = shareOf(out.adjustedWidths);
        out.plainHeight = meanHeightChange(loaded, plain);
        out.adjustedHeight = meanHeightChange(loaded, fallback);
        return out;
    }

    [[nodiscard]] std::vector<sweep::WidthRange> movedWidths(const PreparedRow& loaded,
                                                             const PreparedRow& other) const {
        return sweep::widthRangesOf(
            sweep::lineDifferences({&loaded, &other}, project_.leastWidth, project_.mostWidth));
    }
    [[nodiscard]] double shareOf(const std::vector<sweep::WidthRange>& ranges) const {
        double moved = 0;
        for (const sweep::WidthRange& range : ranges)
            moved += range.last - range.first + 1;
        return std::min(1.0, moved / (project_.mostWidth - project_.leastWidth + 1));
    }

    [[nodiscard]] double meanHeightChange(const PreparedRow& loaded, const PreparedRow& other) const {
        double sum = 0;
        const std::vector<double> widths = sweep::wholeWidths(project_.leastWidth, project_.mostWidth);
        for (const double width : widths)
            sum +=
                std::abs(layout::layOut(loaded, width).row.height - layout::layOut(other, width).row.height);
        return widths.empty() ? 0 : sum / static_cast<double>(widths.size());
    }

    const Project& project_;
    text::ParagraphStore& store_;
    Names late_;
    Project before_;
    std::map<FaceKey, Used> used_;
    std::map<std::tuple<std::size_t, std::size_t, std::string>, FaceKey>
        roleFaces_;  ///< by variant, band and role
    std::map<std::tuple<std::string, std::size_t, std::size_t>, std::unique_ptr<PreparedRow>> inInstalled_;
};

/// `35 % of widths (331–410 px, 600 px and 3 more ranges)`.
std::string widthWords(double share, const std::vector<sweep::WidthRange>& ranges) {
    constexpr std::size_t most = 4;
    std::string shareText = wording::say("%1 of widths", {units::percent(share)});
    if (ranges.empty()) return shareText;
    std::string shown;
    for (std::size_t i = 0; i < std::min(most, ranges.size()); ++i) {
        const std::string range = units::pxRange(ranges[i].first, ranges[i].last, 0);
        shown = i == 0 ? range : wording::say("%1, %2", {shown, range});
    }
    if (ranges.size() > most)
        shown =
            wording::sayCount("%1 and %n more range", "%1 and %n more ranges", ranges.size() - most, {shown});
    return wording::say("%1 (%2)", {shareText, shown});
}

std::string percentOf(double share) {
    return units::number(share * 100, 2) + "%";
}

}  // namespace

std::string LateFallback::css(bool minified) const {
    std::string source;
    for (const std::string& name : local)
        source.append(source.empty() ? "" : ", ").append("local(").append(cssString(name)).append(")");
    std::vector<std::pair<std::string, std::string>> descriptors{
        {"font-family", cssString(family)},
        {"src", source},
        {"font-weight", units::number(face->weight())},
        {"font-style", face->italic() ? "italic" : "normal"},
        {"size-adjust", percentOf(sizeAdjust)},
        {"ascent-override", percentOf(ascent)},
        {"descent-override", percentOf(descent)},
        {"line-gap-override", percentOf(lineGap)}};
    if (!characters.empty()) descriptors.emplace_back("unicode-range", unicodeRange(characters));
    std::string out = minified ? "@font-face{" : "@font-face {\n";
    for (const auto& [name, value] : descriptors) {
        const bool isLast = name == descriptors.back().first;
        out.append(minified ? "" : "  ").append(name).append(minified ? ":" : ": ").append(value);
        out += !minified ? ";\n" : isLast ? "" : ";";
    }
    return out + (minified ? "}" : "}\n");
}

std::string lateFontRules(const LateFonts& late, bool comments, bool minified) {
    std::string out;
    for (const LateFallback& one : late.fallbacks) {
        if (one.local.empty()) continue;
        if (comments && !minified)
            out +=
                "/* " +
                cssComment("Until " + one.of + " has loaded: " + one.local.front() + " with its metrics.") +
                " */\n";
        out += one.css(minified) + (minified ? "" : "\n");
    }
    return out;
}

std::vector<std::string> lateFontSentences(const LateFonts& late) {
    std::vector<std::string> out;
    for (const LateShift& shift : late.shifts) {
        out.push_back(wording::say(
            "The variant %1: until the fonts have loaded, line counts differ at %2; with the fallback fonts, "
            "at "
            "%3. On average, the row changes its height by %4; with the fallback fonts, by %5.",
            {project::quotedTitle(late.project, shift.variant), widthWords(shift.plain, shift.plainWidths),
             widthWords(shift.adjusted, shift.adjustedWidths), units::px(shift.plainHeight, 1),
             units::px(shift.adjustedHeight, 1)}));
    }
    for (const LateFallback& one : late.fallbacks)
        if (one.local.empty())
            out.push_back(
                wording::say("No fallback font was found for %1: no installed family after it has the "
                             "characters of its texts.",
                             {one.of}));
    return out;
}

Names lateFamilies(const Project& project) {
    Names out;
    for (const project::FontEntry& font : project.fonts)
        if (!hasName(out, font.family)) out.push_back(font.family);
    if (!out.empty()) return out;
    eachFamilyList(project, [&](const Names& list) {
        for (const std::string& family : list)
            if (!text::isGenericFamily(family) && !hasName(out, family)) out.push_back(family);
    });
    return out;
}

void addFallbackNames(Project& project, const std::vector<LateFallback>& fallbacks) {
    eachFamilyList(project, [&](Names& list) { addFallbacks(list, fallbacks); });
}

LateFonts lateFonts(const Project& project, const std::vector<std::size_t>& variants,
                    text::ParagraphStore& store) {
    return LateFontMaker(project, store).make(variants);
}

}  // namespace tenter::emit
