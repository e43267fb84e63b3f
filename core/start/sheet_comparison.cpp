#include "start/sheet_comparison.h"

#include <algorithm>
#include <cmath>

#include "emit/stylesheet.h"
#include "intake/own_project.h"
#include "markup/given.h"
#include "project/cascade.h"
#include "project/differences/setting_changes.h"
#include "project/differences/setting_names.h"
#include "project/file.h"
#include "project/titles.h"
#include "start/page_look.h"
#include "start/sheet_project.h"
#include "units/number.h"
#include "units/quantities.h"
#include "units/whole_width.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using project::Json;
using project::Project;
using project::Settings;
using project::Variant;

/// Font sizes that differ less, in CSS px, are the same: ramps are rounded where they are printed.
constexpr double sameInPrint = 0.02;
/// A viewport width above all breakpoints, CSS px.
constexpr double aboveAll = 100000;

/// A variant as a stylesheet has it: the breakpoints, and the settings of each band.
struct SheetVariant {
    std::vector<double> ends;  ///< rising; the last is `aboveAll`
    std::vector<Settings> bands;
};

/// The sheet of one variant, and the same sheet as Tenter would print it now, if it prints one.
struct VariantPair {
    std::size_t variant = 0;
    SheetVariant sheet;
    std::optional<SheetVariant> printed;
};

/// The upper ends of the bands of a variant, CSS px; that of the last is `aboveAll`.
std::vector<double> endsOf(const Variant& variant) {
    std::vector<double> ends;
    ends.reserve(variant.bands.size());
    for (const project::Band& band : variant.bands)
        ends.push_back(band.upTo.value_or(aboveAll));
    return ends;
}

SheetVariant variantOf(const Project& project, const Variant& variant) {
    SheetVariant out{endsOf(variant), {}};
    for (std::size_t band = 0; band < variant.bands.size(); ++band)
        out.bands.push_back(project::resolve(project, variant, band));
    return out;
}

std::size_t bandAt(const std::vector<double>& ends, double width) {
    const auto found = std::ranges::lower_bound(ends, width);
    return found == ends.end() ? ends.size() - 1 : static_cast<std::size_t>(found - ends.begin());
}

/// The band of `other` that corresponds to a band of `ends`: that with the same number, if there are as many.
std::size_t bandLike(const std::vector<double>& ends, std::size_t band, const std::vector<double>& other) {
    return ends.size() == other.size() ? band : bandAt(other, ends[band]);
}

std::string endsInWords(const std::vector<double>& ends) {
    std::string text;
    for (const double end : ends)
        if (end < aboveAll) text += (text.empty() ? "" : ", ") + units::px(end);
    return text.empty() ? wording::say("no breakpoint") : text;
}

bool isSameSize(const Settings& one, const Settings& other, const std::string& role, double from,
                double upTo) {
    const auto* first = one.text.find(role);
    const auto* second = other.text.find(role);
    if (first == nullptr || second == nullptr || !first->size || !second->size) return false;
    const auto apart = [&](double width) {
        return std::abs(first->size->sizeAt(width) - second->size->sizeAt(width));
    };
    return first->follow == second->follow && std::max(apart(from), apart(upTo)) <= sameInPrint &&
           apart((from + upTo) / 2) <= sameInPrint;
}

class Comparer {
public:
    Comparer(const Project& project, std::string_view css, const std::filesystem::path& file,
             text::ParagraphStore& store, project::Problems& problems)
        : project_(project), css_(css), file_(file), store_(store), problems_(problems) {}

    std::optional<SheetComparison> compare() {
        if (!readOwn() && !readGiven() && !readOther()) return std::nullopt;
        out_.ends.resize(project_.row().variants.size());
        for (const VariantPair& pair : pairs_)
            comparePair(pair);
        return std::move(out_);
    }

private:
    [[nodiscard]] double root() const {
        return project_.page.at(project_.mostWidth)
            .rootSize.resolve(units::usualReaderSize, project_.mostWidth);
    }

    [[nodiscard]] std::optional<Project> ownProjectOf(std::string_view css) const {
        project::Problems ignored;
        auto own = intake::projectOfSheet({css, file_, ".", root()}, ignored);
        return own ? std::optional(std::move(own->project)) : std::nullopt;
    }

    static const Variant* variantNamed(const Project& project, const std::string& className) {
        const auto& variants = project.row().variants;
        const auto found = std::ranges::find(variants, className, &Variant::className);
        return found == variants.end() ? nullptr : &*found;
    }

    /// A sheet for Tenter's own markup.
    bool readOwn() {
        const std::optional<Project> sheet = ownProjectOf(css_);
        if (!sheet) return false;
        const std::optional<Project> printed = ownProjectOf(
            emit::stylesheet(project_, {project::everyVariant(project_), project_.unit, {}, {}}));
        const std::vector<Variant>& variants = project_.row().variants;
        const std::vector<Variant>& others = sheet->row().variants;
        // One sheet for a project with one variant is that variant's, even with another class.
        const bool isOnly = variants.size() == 1 && others.size() == 1;
        for (std::size_t v = 0; v < variants.size(); ++v) {
            const Variant* own = isOnly ? &others.front() : variantNamed(*sheet, variants[v].className);
            if (own == nullptr) continue;
            VariantPair pair{v, variantOf(*sheet, *own), std::nullopt};
            if (printed)
                if (const Variant* now = variantNamed(*printed, variants[v].className))
                    pair.printed = variantOf(*printed, *now);
            pairs_.push_back(std::move(pair));
        }
        for (const Variant& other : others)
            if (!isOnly && variantNamed(project_, other.className) == nullptr)
                out_.report.push_back(
                    wording::say("The project has no variant with the class %1. Its rules are not compared.",
                                 {other.className}));
        return !pairs_.empty();
    }

    /// The look of the given row with a stylesheet after those of its theme.
    std::optional<SheetVariant> givenVariant(const markup::GivenRow& row, const std::string& css) {
        PageLook look = pageLook(row, project_.row().given->theme.str() + "\n" + css, project_.page,
                                 project_.leastWidth, project_.mostWidth, store_.fonts());
        if (look.bands.empty()) return std::nullopt;
        Project made = project_;
        made.row().style = std::move(look.style);
        Variant& variant = made.row().variants[row.variant];
        variant.set = {};
        variant.bands = std::move(look.bands);
        return variantOf(made, variant);
    }

    /// A sheet for the given row: one in which a rule selects something in it.
    bool readGiven() {
        if (!project_.row().given) return false;
        project::Problems ignored;
        const auto row = markup::givenRow(project_, ignored);
        if (!row) return false;
        const auto without = givenVariant(*row, "");
        auto sheet = givenVariant(*row, std::string(css_));
        if (!without || !sheet || (without->bands == sheet->bands && without->ends == sheet->ends))
            return false;
        VariantPair pair{row->variant, std::move(*sheet), std::nullopt};
        if (const auto printed =
                emit::givenStylesheet(project_, {{row->variant}, project_.unit, {}, {}}, ignored))
            pair.printed = givenVariant(*row, *printed);
        pairs_.push_back(std::move(pair));
        return true;
    }

    bool readOther() {
        const std::optional<Imported> imported = importSheet(css_, file_, root(), store_, problems_);
        if (!imported) return false;
        out_.report = imported->report;
        pairs_.push_back(
            {0, variantOf(imported->project, imported->project.row().variants.front()), std::nullopt});
        return true;
    }

    void comparePair(const VariantPair& pair) {
        const Variant& variant = project_.row().variants[pair.variant];
        const SheetVariant own = variantOf(project_, variant);
        const SheetVariant& sheet = pair.sheet;
        out_.ends[pair.variant] = sheet.ends;
        const std::vector<double>& printedEnds = pair.printed ? pair.printed->ends : own.ends;
        if (sheet.ends != printedEnds && sheet.ends != own.ends) addEnds(pair.variant, own.ends, sheet.ends);
        double from = project_.leastWidth;
        for (std::size_t band = 0; band < sheet.bands.size(); ++band) {
            const double upTo = std::min(sheet.ends[band], project_.mostWidth);
            if (upTo > from) compareBand(pair, own, band, from, upTo);
            from = std::max(from, upTo);
        }
    }

    void addEnds(std::size_t variant, const std::vector<double>& before, const std::vector<double>& after) {
        SheetDifference difference;
        difference.variant = variant;
        difference.name = wording::say("Breakpoints");
        difference.where = variantWords(variant);
        difference.before = endsInWords(before);
        difference.after = endsInWords(after);
        difference.value = Json::array();
        for (const double end : after)
            if (end < aboveAll) difference.value.push_back(end);
        out_.differences.push_back(std::move(difference));
    }

    [[nodiscard]] std::string variantWords(std::size_t variant) const {
        const auto& variants = project_.row().variants;
        return variants.size() > 1 ? project::titleOf(variants[variant]) : std::string();
    }

    void compareBand(const VariantPair& pair, const SheetVariant& own, std::size_t band, double from,
                     double upTo) {
        const Settings& mine = own.bands[bandLike(pair.sheet.ends, band, own.ends)];
        const Settings& theirs = pair.sheet.bands[band];
        const Settings* printed = nullptr;
        if (pair.printed) printed = &pair.printed->bands[bandLike(pair.sheet.ends, band, pair.printed->ends)];
        for (project::SettingChange& change :
             project::settingChanges(printed != nullptr ? *printed : mine, theirs)) {
            // A role that only one of the two has is no setting of both.
            if (change.before.is_null() || change.after.is_null()) continue;
            const Json now = project::settingAt(mine, change.path);
            if (now.is_null() || now == change.after) continue;
            if (change.path.starts_with("text/") && change.path.ends_with("/size")) {
                const std::string role = change.path.substr(5, change.path.size() - 10);
                if ((printed != nullptr && isSameSize(*printed, theirs, role, from, upTo)) ||
                    isSameSize(mine, theirs, role, from, upTo))
                    continue;
            }
            addSetting(pair, band, std::move(change), now, from, upTo);
        }
    }

    /// Adds a setting, to a difference of another band if the values are the same there.
    void addSetting(const VariantPair& pair, std::size_t band, project::SettingChange change, const Json& now,
                    double from, double upTo) {
        SheetDifference difference;
        difference.variant = pair.variant;
        difference.bands = {band};
        difference.from = from;
        difference.path = change.path;
        difference.name = project::settingName(change.path);
        difference.before = project::settingWords(change.path, now);
        difference.after = project::settingWords(change.path, change.after);
        if (difference.before == difference.after) return;
        difference.now = now;
        difference.value = std::move(change.after);
        const auto same = std::ranges::find_if(out_.differences, [&](const SheetDifference& other) {
            return other.variant == difference.variant && other.path == difference.path &&
                   other.before == difference.before && other.value == difference.value &&
                   other.bands.back() + 1 == band;
        });
        const bool isNew = same == out_.differences.end();
        SheetDifference& entry = isNew ? out_.differences.emplace_back(std::move(difference)) : *same;
        if (!isNew) entry.bands.push_back(band);
        entry.everyBand = entry.bands.size() == pair.sheet.bands.size();
        entry.upTo = upTo;
        entry.where = whereOf(entry);
    }

    /// Where a difference is: the variant, and the widths of its bands if they are not all.
    [[nodiscard]] std::string whereOf(const SheetDifference& difference) const {
        std::string where = variantWords(difference.variant);
        if (difference.everyBand) return where;
        // Whole widths: a breakpoint belongs to the band below it.
        const double first = difference.from <= project_.leastWidth
                                 ? difference.from
                                 : units::firstWholeWidthAbove(difference.from);
        return where + (where.empty() ? "" : ", ") + units::pxRange(first, difference.upTo);
    }

    const Project& project_;
    std::string_view css_;
    const std::filesystem::path& file_;
    text::ParagraphStore& store_;
    project::Problems& problems_;
    std::vector<VariantPair> pairs_;
    SheetComparison out_;
};

/// The variant with the breakpoints of a stylesheet; each band keeps the settings of that which it replaces.
void setEnds(Variant& variant, const std::vector<double>& ends) {
    const std::vector<double> own = endsOf(variant);
    std::vector<project::Band> bands;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        project::Band band = variant.bands[bandLike(ends, i, own)];
        band.upTo = ends[i] < aboveAll ? std::optional(ends[i]) : std::nullopt;
        bands.push_back(std::move(band));
    }
    variant.bands = std::move(bands);
}

/// The bands of the project that a band of the stylesheet covers; at least one.
std::vector<std::size_t> coveredBands(const Variant& variant, const std::vector<double>& ends,
                                      std::size_t band) {
    const std::vector<double> own = endsOf(variant);
    if (own.size() == ends.size()) return {band};
    const double from = band == 0 ? 0 : ends[band - 1];
    std::vector<std::size_t> covered;
    for (std::size_t i = 0; i < own.size(); ++i)
        if (own[i] > from && own[i] <= ends[band]) covered.push_back(i);
    if (covered.empty()) covered.push_back(bandAt(own, ends[band]));
    return covered;
}

/// The sentence of a difference.
std::string sentenceOf(const SheetDifference& difference) {
    return difference.where.empty()
               ? wording::say("%1 is %2 in the project and %3 in the stylesheet.",
                              {difference.name, difference.before, difference.after})
               : wording::say("%1 (%2) is %3 in the project and %4 in the stylesheet.",
                              {difference.name, difference.where, difference.before, difference.after});
}

}  // namespace

std::optional<SheetComparison> compareWithSheet(const Project& project, std::string_view css,
                                                const std::filesystem::path& file,
                                                text::ParagraphStore& store, project::Problems& problems) {
    return Comparer(project, css, file, store, problems).compare();
}

void takeDifferences(Project& project, const SheetComparison& comparison, const std::vector<bool>& chosen) {
    const auto isChosen = [&](std::size_t i) { return i < chosen.size() && chosen[i]; };
    std::vector<Variant>& variants = project.row().variants;
    for (std::size_t i = 0; i < comparison.differences.size(); ++i) {
        const SheetDifference& difference = comparison.differences[i];
        if (isChosen(i) && difference.path.empty())
            setEnds(variants[difference.variant], comparison.ends[difference.variant]);
    }
    project::Problems ignored;
    for (std::size_t i = 0; i < comparison.differences.size(); ++i) {
        const SheetDifference& difference = comparison.differences[i];
        if (!isChosen(i) || difference.path.empty()) continue;
        Variant& variant = variants[difference.variant];
        if (difference.everyBand) {
            const bool isOnly = variants.size() == 1;
            if (isOnly) project::setSetting(variant.set, difference.path, nullptr, ignored);
            for (project::Band& band : variant.bands)
                project::setSetting(band.set, difference.path, nullptr, ignored);
            project::setSetting(isOnly ? project.row().style : variant.set, difference.path, difference.value,
                                ignored);
            continue;
        }
        for (const std::size_t band : difference.bands)
            for (const std::size_t own : coveredBands(variant, comparison.ends[difference.variant], band))
                project::setSetting(variant.bands[own].set, difference.path, difference.value, ignored);
    }
}

std::string differencesList(const SheetComparison& comparison) {
    std::string out;
    for (const SheetDifference& difference : comparison.differences)
        out.append(sentenceOf(difference)).append("\n");
    const std::size_t count = comparison.differences.size();
    return count == 0 ? wording::say("The stylesheet has the values of the project.") + "\n"
                      : out + wording::sayCount("%n difference.", "%n differences.", count) + "\n";
}

std::string differencesJson(const SheetComparison& comparison) {
    Json out = Json::array();
    for (std::size_t i = 0; i < comparison.differences.size(); ++i) {
        const SheetDifference& difference = comparison.differences[i];
        Json entry = {{"number", i + 1}, {"variant", difference.variant}};
        if (!difference.path.empty()) {
            entry["setting"] = difference.path;
            entry["bands"] = difference.bands;
        }
        entry["before"] = difference.before;
        entry["after"] = difference.after;
        entry["value"] = difference.value;
        entry["says"] = sentenceOf(difference);
        out.push_back(std::move(entry));
    }
    return project::prettyJson(out);
}

}  // namespace tenter::start
