#include "sheet/build.h"

#include <algorithm>

#include "checks/checks.h"
#include "checks/phrases.h"
#include "checks/titles.h"
#include "draw/row_drawing.h"
#include "emit/findings.h"
#include "emit/key_figures.h"
#include "emit/sentences.h"
#include "emit/table.h"
#include "project/titles.h"
#include "sheet/tables.h"
#include "sweep/sweep.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::sheet {

namespace {

Thumbnail thumbnailAt(const project::Project& project,
                      const std::shared_ptr<const layout::PreparedRow>& prepared,
                      const checks::KeyWidth& key) {
    Thumbnail made;
    made.row = prepared;
    made.layout = layout::layOutDrawn(*prepared, key.width);
    made.drawing = draw::drawRow({project, *prepared, made.layout});
    const int columns = prepared->settings(made.layout.band).row.columns.value_or(1);
    made.title = units::px(key.width) + ", " + project::columnsLabel(columns);
    made.why = checks::capitalised(key.why);
    const std::size_t cards = made.layout.cards.size();
    made.alt = wording::sayCount(
        "The row at a viewport width of %1: %n card in %2, %3 tall.",
        "The row at a viewport width of %1: %n cards in %2, %3 tall.", cards,
        {units::px(key.width), project::columnsLabel(columns), units::px(made.layout.pageHeight, 0)});
    return made;
}

FindingItem itemOf(const project::Project& project, const checks::Finding& finding) {
    constexpr std::size_t mostRanges = 4;
    FindingItem item;
    item.severity = finding.severity;
    item.title = checks::titleOfCheck(finding.check);
    const bool single = finding.widths.size() == 1 && finding.widths[0].from == finding.widths[0].to;
    if (!single || finding.share > 0)
        item.title = wording::say("%1, %2 of widths", {item.title, units::percent(finding.share)});
    item.says = emit::oneLine(finding.says);
    item.widths = checks::widthsBeyondText(project, finding, mostRanges);
    item.source = finding.source;
    return item;
}

class Builder {
public:
    Builder(const project::Project& project, text::ParagraphStore& store, const SheetOptions& options)
        : project_(project), store_(store), options_(options) {}

    Sheet build() {
        std::vector<std::size_t> variants = options_.variants;
        if (variants.empty()) variants = project::everyVariant(project_);
        for (const std::size_t variant : variants) {
            if (isStopped()) return {};
            addVariant(variant);
        }
        if (isStopped()) return {};
        addEnd();
        addHead(variants);
        return std::move(sheet_);
    }

private:
    [[nodiscard]] bool isStopped() const { return options_.isStopped && options_.isStopped(); }

    void addHead(const std::vector<std::size_t>& variants) {
        sheet_.title = emit::oneLine(project_.name.empty() ? wording::say("A row of cards") : project_.name);
        sheet_.language = project_.language;
        sheet_.rightToLeft = project_.rightToLeft;
        sheet_.date = options_.date;
        std::vector<std::string> classes;
        classes.reserve(variants.size());
        for (const std::size_t variant : variants)
            classes.push_back("." + project_.row().variants[variant].className);
        sheet_.facts = {
            {wording::say("Cards"), {std::to_string(project_.row().cards.size())}},
            {wording::say("Viewport widths"), {units::pxRange(project_.leastWidth, project_.mostWidth)}},
            {variants.size() == 1 ? wording::say("Class") : wording::say("Classes"), classes},
            {wording::say("Line breaks as in"), {std::string(options_.profile->title())}},
            {wording::say("Findings"), {emit::findingCounts(all_)}}};
    }

    void addVariant(std::size_t index) {
        const project::Variant& variant = project_.row().variants[index];
        const auto prepared =
            std::make_shared<const layout::PreparedRow>(project_, index, store_, *options_.profile);
        rows_.push_back(prepared);
        const std::vector<checks::Finding> findings = checks::check(project_, index, store_);
        if (isStopped()) return;
        all_.insert(all_.end(), findings.begin(), findings.end());
        const std::vector<checks::KeyWidth> keys = checks::keyWidths(project_, index, findings);
        const sweep::Sweep swept = sweep::sweep(*prepared, project_.leastWidth, project_.mostWidth);
        const VariantFacts facts{project_, index, *prepared, swept.curves, keys};

        const std::string title = project::titleOf(variant);
        const std::string columns = project::columnsOf(project_, variant);
        const bool named = title != variant.className;
        add(Heading{2, emit::oneLine(title),
                    named ? "." + emit::oneLine(variant.className) + ", " + columns : columns});
        add(Heading{3, wording::say("The row at its key widths"), ""});
        Thumbnails thumbnails;
        for (const checks::KeyWidth& key : keys)
            thumbnails.list.push_back(thumbnailAt(project_, prepared, key));
        add(std::move(thumbnails));
        if (Plots plots = plotsOf(facts); !plots.list.empty()) {
            add(Heading{3, wording::say("Font size and measure"), ""});
            add(std::move(plots));
        }
        add(keyFigures(facts));
        add(Paragraph{Paragraph::Kind::Plain, emit::engineDifferences(project_, index, store_)});
        add(columnsTable(facts));
        add(rampsTable(facts));
        for (Table& table : spacingTables(facts))
            add(std::move(table));
        if (auto table = measureTable(facts)) add(std::move(*table));
        if (auto table = slotsTable(facts)) add(std::move(*table));
        add(Heading{3, wording::say("Findings"), emit::findingCounts(findings)});
        Findings list;
        for (const checks::Finding& finding : findings)
            list.list.push_back(itemOf(project_, finding));
        if (!list.list.empty()) add(std::move(list));
    }

    void addEnd() {
        add(Heading{2, wording::say("Notes"), ""});
        add(Paragraph{Paragraph::Kind::Caution, wording::say(checks::caution)});
        const std::string theme = emit::themeBreakpoints(project_);
        if (!theme.empty()) add(Paragraph{Paragraph::Kind::Plain, theme});
        add(fontsTable(rows_));
        std::vector<text::FontNote> notes;
        for (const auto& row : rows_)
            for (const text::FontNote& note : row->notes())
                if (std::ranges::find(notes, note) == notes.end()) notes.push_back(note);
        for (const text::FontNote& note : notes)
            add(Paragraph{Paragraph::Kind::Note, emit::oneLine(note.says) + "."});
    }

    template <class What>
    void add(What what) {
        sheet_.blocks.emplace_back(std::move(what));
    }

    const project::Project& project_;
    text::ParagraphStore& store_;
    const SheetOptions& options_;
    Sheet sheet_;
    std::vector<std::shared_ptr<const layout::PreparedRow>> rows_;
    std::vector<checks::Finding> all_;
};

}  // namespace

Sheet buildSheet(const project::Project& project, text::ParagraphStore& store, const SheetOptions& options) {
    return Builder(project, store, options).build();
}

}  // namespace tenter::sheet
