#include "sheet/tables.h"

#include <algorithm>
#include <functional>

#include "checks/phrases.h"
#include "emit/key_figures.h"
#include "emit/sentences.h"
#include "emit/usage.h"
#include "emit/values.h"
#include "pictures/slots.h"
#include "project/cascade.h"
#include "project/titles.h"
#include "units/quantities.h"
#include "units/whole_width.h"
#include "wording/say.h"

namespace tenter::sheet {

namespace {

constexpr std::size_t mostBands = 4;  // columns of values that fit on a page of A4

/// A role at the start of a line: `Heading`.
std::string labelOf(const std::string& role) {
    return checks::capitalised(project::roleName(role));
}

std::vector<std::string> rolesOf(const project::Project& project) {
    std::vector<std::string> roles;
    for (const emit::RoleUse& use : emit::roleUses(project))
        roles.push_back(use.role);
    return roles;
}

/// The viewport widths of a band inside the project's range: those between two breakpoints, both included.
struct Widths {
    double from = 0;
    double to = 0;
    [[nodiscard]] std::string label() const { return units::pxRange(from, to); }
};

/// Empty if the band is outside the range.
std::optional<Widths> widthsOf(const VariantFacts& facts, std::size_t band) {
    const std::vector<project::Band>& bands = facts.of().bands;
    const double after = band == 0 ? 0 : bands[band - 1].upTo.value_or(0);
    const double from =
        after < facts.project.leastWidth ? facts.project.leastWidth : units::firstWholeWidthAbove(after);
    const double to = std::min(bands[band].upTo.value_or(facts.project.mostWidth), facts.project.mostWidth);
    if (from > to) return std::nullopt;
    return Widths{from, to};
}

/// Bands in the range with their widths.
std::vector<std::pair<std::size_t, Widths>> bandsOf(const VariantFacts& facts) {
    std::vector<std::pair<std::size_t, Widths>> out;
    for (std::size_t band = 0; band < facts.of().bands.size(); ++band)
        if (const auto widths = widthsOf(facts, band)) out.emplace_back(band, *widths);
    return out;
}

std::string lengthOr(const std::optional<units::Length>& length, const char* otherwise) {
    return length ? length->css() : otherwise;
}

/// `281 to 356 px`, or `281 px` if both look the same.
std::string between(double one, double other, int decimals = 1) {
    return units::pxRange(std::min(one, other), std::max(one, other), decimals);
}

/// Smallest and largest value of a curve inside a range of widths.
struct Extent {
    double least = 0;
    double most = 0;
};
Extent extentOf(const sweep::Curve& curve, const Widths& widths) {
    const double first = sweep::valueAt(curve, widths.from);
    Extent out{first, first};
    const auto add = [&](double value) {
        out.least = std::min(out.least, value);
        out.most = std::max(out.most, value);
    };
    add(sweep::valueAt(curve, widths.to));
    for (const sweep::Vertex& vertex : curve)
        if (vertex.width > widths.from && vertex.width < widths.to) add(vertex.value);
    return out;
}

std::string sizeOf(const project::TextStyle& style) {
    if (!style.size) return "";
    const units::Ramp& ramp = *style.size;
    if (ramp.isFlat()) return units::px(ramp.from().size);
    const std::string narrow = units::px(ramp.from().size);
    const std::string narrowWidth = units::px(ramp.from().width);
    const std::string wide = units::px(ramp.to().size);
    const std::string wideWidth = units::px(ramp.to().width);
    return style.follow == project::Follow::Card
               ? wording::say("%1 at %2 of card to %3 at %4 of card", {narrow, narrowWidth, wide, wideWidth})
               : wording::say("%1 at %2 to %3 at %4", {narrow, narrowWidth, wide, wideWidth});
}

/// `text` with no-break spaces.
std::string inOnePiece(const std::string& text) {
    std::string out;
    for (const char c : text)
        out += c == ' ' ? std::string("\u00A0") : std::string(1, c);
    return out;
}

std::string fontOf(const project::TextStyle& style) {
    std::string out = style.family && !style.family->empty() ? style.family->front() : "";
    if (style.weight) out += " " + units::figure(*style.weight, 0);
    return style.slant == project::Slant::Italic ? wording::say("%1 italic", {out}) : out;
}

const sweep::PartCurves* firstOf(const VariantFacts& facts, const std::string& role) {
    for (const sweep::PartCurves& part : facts.curves.parts) {
        if (part.picture) continue;
        const auto* text = std::get_if<project::TextPart>(&facts.project.part(part.place));
        if (text != nullptr && text->role == role) return &part;
    }
    return nullptr;
}

}  // namespace

Table keyFigures(const VariantFacts& facts) {
    const std::vector<std::string> roles = rolesOf(facts.project);
    Table table;
    table.title = wording::say("Key widths");
    table.columns = {{wording::say("Viewport"), true},
                     {wording::say("Columns"), true},
                     {wording::say("Card content"), true},
                     {wording::say("Widest picture"), true}};
    for (const std::string& role : roles)
        table.columns.push_back({labelOf(role), true});
    table.columns.push_back({wording::say("Slack"), true});
    table.columns.push_back({wording::say("Why this width"), false});
    for (const checks::KeyWidth& key : facts.keys) {
        const layout::Layout laid = layout::layOut(facts.row, key.width);
        const project::RowSettings& settings = facts.row.settings(laid.band).row;
        std::vector<std::string> cells{
            units::figure(laid.width), std::to_string(settings.columns.value_or(1)),
            units::figure(facts.row.cardWidth(laid.width), 1), inOnePiece(emit::widestPicture(laid))};
        double slack = 1;
        for (const std::string& role : roles) {
            const emit::RoleFigures figures = emit::figuresOf(facts.row, laid, role);
            cells.push_back(figures.there ? units::figure(figures.size) + "\u00A0·\u00A0" +
                                                std::to_string(figures.lines)
                                          : "–");
            slack = std::min(slack, figures.slack);
        }
        cells.push_back(units::percent(slack, 2));
        cells.push_back(key.why);
        table.rows.push_back(std::move(cells));
    }
    table.note = wording::say(
        "Widths and font sizes in CSS px. Under each role: font size · the highest line count of any card. "
        "Slack: the smallest change of the text width, as a share of that width, that moves a line break; "
        "below 0.25\u00A0% another browser may break the line differently.");
    return table;
}

Table columnsTable(const VariantFacts& facts) {
    Table table;
    table.title = wording::say("Columns");
    table.columns = {{wording::say("Viewport"), true},    {wording::say("Columns"), true},
                     {wording::say("Row width"), true},   {wording::say("Maximum"), true},
                     {wording::say("Column gap"), true},  {wording::say("Row gap"), true},
                     {wording::say("Card content"), true}};
    for (const auto& [band, widths] : bandsOf(facts)) {
        const project::RowSettings& row = facts.row.settings(band).row;
        table.rows.push_back({widths.label(), std::to_string(row.columns.value_or(1)),
                              lengthOr(row.width, "100%"), lengthOr(row.maxWidth, "none"),
                              lengthOr(row.columnGap, "0"), lengthOr(row.rowGap, "0"),
                              between(facts.row.cardWidth(widths.from), facts.row.cardWidth(widths.to))});
    }
    return table;
}

Table rampsTable(const VariantFacts& facts) {
    Table table;
    table.title = wording::say("Type");
    table.columns = {{wording::say("Role"), false},       {wording::say("Viewport"), true},
                     {wording::say("Font size"), false},  {wording::say("Font"), false},
                     {wording::say("Line height"), true}, {wording::say("Letter spacing"), true}};
    const auto bands = bandsOf(facts);
    for (const std::string& role : rolesOf(facts.project)) {
        std::size_t first = table.rows.size();
        Widths run;
        for (const auto& [band, widths] : bands) {
            const project::TextStyle* style = facts.row.settings(band).text.find(role);
            if (style == nullptr) continue;
            std::vector<std::string> cells{labelOf(role),
                                           "",
                                           sizeOf(*style),
                                           fontOf(*style),
                                           style->lineHeight ? style->lineHeight->css() : "",
                                           lengthOr(style->letterSpacing, "0")};
            const bool continues = table.rows.size() > first &&
                                   std::equal(cells.begin() + 2, cells.end(), table.rows.back().begin() + 2);
            run = {continues ? run.from : widths.from, widths.to};
            cells[1] = run.label();
            if (continues)
                table.rows.back() = std::move(cells);
            else
                table.rows.push_back(std::move(cells));
        }
    }
    table.note = wording::say(
        "A font size with two values is a ramp: it changes in a straight line between the two widths and is "
        "constant outside them.");
    return table;
}

std::vector<Table> spacingTables(const VariantFacts& facts) {
    using Settings = project::Settings;
    using Read = std::function<std::string(const Settings&)>;
    std::vector<std::pair<std::string, Read>> lines{
        {wording::say("Row padding"), [](const Settings& all) { return emit::sides(all.row.padding); }},
        {wording::say("Column gap"), [](const Settings& all) { return lengthOr(all.row.columnGap, "0"); }},
        {wording::say("Row gap"), [](const Settings& all) { return lengthOr(all.row.rowGap, "0"); }},
        {wording::say("Card padding"), [](const Settings& all) { return emit::sides(all.card.padding); }},
        {wording::say("Card border"), [](const Settings& all) { return emit::border(all.card.border); }},
        {wording::say("Card corner radius"),
         [](const Settings& all) { return lengthOr(all.card.radius, "0"); }},
        {wording::say("Picture margin"),
         [](const Settings& all) { return emit::sides(all.picture.margin); }}};
    for (const std::string& role : rolesOf(facts.project)) {
        const auto add = [&](std::string title, auto project::TextStyle::*member) {
            lines.emplace_back(std::move(title), [role, member](const Settings& all) {
                const project::TextStyle* style = all.text.find(role);
                return style == nullptr ? std::string("0") : emit::sides(style->*member);
            });
        };
        add(wording::say("%1 margin", {labelOf(role)}), &project::TextStyle::margin);
        add(wording::say("%1 padding", {labelOf(role)}), &project::TextStyle::padding);
    }
    const auto bands = bandsOf(facts);
    std::vector<Table> tables;
    for (std::size_t from = 0; from < bands.size(); from += mostBands) {
        const std::size_t end = std::min(bands.size(), from + mostBands);
        Table table;
        table.title = wording::say("Spacing");
        table.columns = {{wording::say("Space"), false}};
        for (std::size_t i = from; i < end; ++i)
            table.columns.push_back({bands[i].second.label(), false});
        for (const auto& [title, read] : lines) {
            std::vector<std::string> cells{title};
            bool isZero = true;
            for (std::size_t i = from; i < end; ++i) {
                cells.push_back(read(facts.row.settings(bands[i].first)));
                isZero = isZero && cells.back() == "0";
            }
            if (!isZero) table.rows.push_back(std::move(cells));
        }
        table.note = wording::say(
            "As in the stylesheet. An em is the font size of the text itself, so its space follows the type. "
            "Spaces that are 0 at every width are left out.");
        tables.push_back(std::move(table));
    }
    return tables;
}

std::optional<Table> measureTable(const VariantFacts& facts) {
    const auto bands = bandsOf(facts);
    Table table;
    table.title = wording::say("Measure");
    table.columns = {{wording::say("Role"), false},
                     {wording::say("Viewport"), true},
                     {wording::say("Fewest characters"), true},
                     {wording::say("Most characters"), true}};
    for (const std::string& role : rolesOf(facts.project)) {
        for (const auto& [band, widths] : bands) {
            Extent all{1e9, 0};
            for (const sweep::PartCurves& part : facts.curves.parts) {
                const auto* text = std::get_if<project::TextPart>(&facts.project.part(part.place));
                if (text == nullptr || text->role != role || emit::isWholeLink(*text)) continue;
                const Extent one = extentOf(part.measure, widths);
                all = {std::min(all.least, one.least), std::max(all.most, one.most)};
            }
            if (all.least <= all.most)
                table.rows.push_back(
                    {labelOf(role), widths.label(), units::figure(all.least, 0), units::figure(all.most, 0)});
        }
    }
    if (table.rows.empty()) return std::nullopt;
    table.note = wording::say(
        "Measure: the number of characters that fit on a line. WCAG 2.2 SC 1.4.8 (AAA): at most 80 "
        "characters.");
    return table;
}

std::optional<Table> slotsTable(const VariantFacts& facts) {
    const std::vector<pictures::Slot> slots = pictures::slotsOf(facts.project, facts.row, facts.curves);
    if (slots.empty()) return std::nullopt;
    Table table;
    table.title = wording::say("Picture slots");
    table.columns = {{wording::say("Picture"), false},
                     {wording::say("Slot width"), true},
                     {wording::say("Largest at viewport"), true},
                     {wording::say("Present file"), true}};
    for (const double ratio : pictures::shownRatios)
        table.columns.push_back({wording::say("File at %1×", {units::figure(ratio, 0)}), true});
    const auto pixels = [](const pictures::PixelSize& size) {
        return size.width == 0 ? std::string("–")
                               : inOnePiece(std::to_string(size.width) + " × " + std::to_string(size.height));
    };
    for (const pictures::Slot& slot : slots) {
        const auto* picture = std::get_if<project::PicturePart>(&facts.project.part(slot.place));
        const std::string file =
            picture == nullptr || picture->file.empty() ? wording::say("No picture") : picture->file;
        const Extent extent = extentOf(slot.width, {facts.project.leastWidth, facts.project.mostWidth});
        std::vector<std::string> cells{file.substr(file.rfind('/') + 1),
                                       between(extent.least, extent.most, 0), units::px(slot.largest.width),
                                       pixels(slot.file)};
        for (const pictures::Need& need : pictures::needsOf(slot))
            cells.push_back(pixels(need.cut));
        table.rows.push_back(std::move(cells));
    }
    table.note = wording::say(
        "File: pixels of a file that is cut to the slot and fills it at every viewport width, for screens "
        "with 1, 2 and 3 pixels per CSS px.");
    return table;
}

Table fontsTable(const std::vector<std::shared_ptr<const layout::PreparedRow>>& rows) {
    Table table;
    table.title = wording::say("Fonts");
    table.columns = {{wording::say("Family"), false},
                     {wording::say("Font"), false},
                     {wording::say("Weight"), true},
                     {wording::say("File"), false}};
    for (const auto& row : rows) {
        for (std::size_t band = 0; band < row->bandCount(); ++band) {
            for (const layout::CardPlan& card : row->band(band).cards) {
                for (const layout::PartPlan& part : card.parts) {
                    if (!part.paragraph) continue;
                    for (const text::ShapedRun& run : part.paragraph->runs()) {
                        if (!run.face) continue;
                        const text::Face& face = *run.face;
                        std::vector<std::string> cells{face.family(), face.postScriptName(),
                                                       units::figure(face.weight(), 0),
                                                       face.file().filename().string()};
                        if (std::ranges::find(table.rows, cells) == table.rows.end())
                            table.rows.push_back(std::move(cells));
                    }
                }
            }
        }
    }
    std::ranges::sort(table.rows);
    table.note = wording::say(
        "Check the licence of each font before it goes on a site: a licence for a desktop program does not "
        "always include web use.");
    return table;
}

Plots plotsOf(const VariantFacts& facts) {
    const double least = facts.project.leastWidth;
    const double most = facts.project.mostWidth;
    Plot size{wording::say("Font size"), "px", "", least, most, {}, {}, {}};
    Plot measure{wording::say("Measure"),
                 wording::say("characters"),
                 "",
                 least,
                 most,
                 {},
                 {},
                 {{80, "80 (WCAG 2.2 SC 1.4.8, AAA)"}}};
    for (std::size_t band = 0; band + 1 < facts.of().bands.size(); ++band) {
        const double at = *facts.of().bands[band].upTo;
        if (at > least && at < most) {
            size.breakpoints.push_back(at);
            measure.breakpoints.push_back(at);
        }
    }
    const Widths all{least, most};
    std::string sizes;
    std::string measures;
    for (const std::string& role : rolesOf(facts.project)) {
        const sweep::PartCurves* part = firstOf(facts, role);
        if (part == nullptr) continue;
        const std::string name = labelOf(role);
        size.series.push_back({name, part->fontSize});
        const Extent extent = extentOf(part->fontSize, all);
        sizes += " " + wording::say("%1: %2.", {name, between(extent.least, extent.most)});
        const auto* text = std::get_if<project::TextPart>(&facts.project.part(part->place));
        if (text == nullptr || emit::isWholeLink(*text)) continue;
        measure.series.push_back({name, part->measure});
        const Extent characters = extentOf(part->measure, all);
        measures += " " + wording::say("%1: %2 to %3 characters.", {name, units::figure(characters.least, 0),
                                                                    units::figure(characters.most, 0)});
    }
    const std::string range = units::fromPxToPx(least, most);
    size.alt = wording::say("Plot of font size over viewport widths %1.", {range}) + sizes;
    measure.alt =
        wording::say("Plot of the measure of the first card over viewport widths %1.", {range}) + measures;
    Plots plots;
    if (!size.series.empty()) plots.list.push_back(std::move(size));
    if (!measure.series.empty()) plots.list.push_back(std::move(measure));
    return plots;
}

}  // namespace tenter::sheet
