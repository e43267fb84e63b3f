#include "layout/prepared.h"

#include <algorithm>

#include "layout/inline_sizes.h"
#include "project/cascade.h"
#include "project/intervals.h"

namespace tenter::layout {
namespace {

using project::Settings;
using project::TextStyle;
using units::Length;

Lengths lengths(const project::Sides& sides) {
    return {sides.top.value_or(Length()), sides.right.value_or(Length()), sides.bottom.value_or(Length()),
            sides.left.value_or(Length())};
}

RolePlan rolePlan(const TextStyle& style, const units::RootSize& rootSize, units::Unit unit,
                  const text::BreakProfile& profile) {
    const bool card = style.follow == project::Follow::Card;
    RolePlan plan;
    plan.size =
        units::FluidSize::from(*style.size, rootSize, unit, card ? units::Unit::Cqi : units::Unit::Vw);
    plan.lineHeight = *style.lineHeight;
    plan.letterSpacing = *style.letterSpacing;
    plan.wordSpacing = *style.wordSpacing;
    plan.border = *style.border.width;
    plan.margin = lengths(style.margin);
    plan.padding = lengths(style.padding);
    plan.align = *style.align;
    plan.place = *style.place;
    plan.overflowWrap = *style.overflowWrap;
    plan.balance = style.wrap == project::Wrap::Balance;
    plan.keepLines = *style.keepLines;
    plan.fluidRoot = rootSize.isFluid();
    plan.profile = &profile;
    return plan;
}

text::ShapingStyle shapingStyle(const TextStyle& style, const project::Project& project) {
    text::ShapingStyle shaping;
    shaping.family = *style.family;
    shaping.weight = *style.weight;
    shaping.italic = style.slant == project::Slant::Italic;
    shaping.letterCase = *style.letterCase;
    shaping.ligatures = style.letterSpacing->isZero();
    shaping.alignsEnds = style.align != project::Align::Start;
    shaping.decorated =
        !style.border.width->isZero() || (style.background && !style.background->isTransparent());
    shaping.softHyphens = style.hyphens == project::Hyphens::Manual;
    shaping.language = project.language;
    shaping.rightToLeft = project.rightToLeft;
    return shaping;
}

double ratioOf(const project::PicturePart& picture, const project::Ratio& said) {
    const project::Ratio ratio = picture.ratio.value_or(said);
    if (!ratio.isOwn() && ratio.height > 0) return ratio.width / ratio.height;
    return picture.width > 0 && picture.height > 0 ? picture.width / picture.height : 1.5;
}

CardPlan cardPlan(const project::Card& card, const BandPlan& band, const project::Project& project,
                  const std::vector<std::string>& roles, text::ParagraphStore& store) {
    CardPlan plan;
    plan.beside = project::partBeside(card, band.settings);
    const auto levels = band.levels.in(card, band.settings);
    for (const project::Part& part : card.parts) {
        PartPlan made;
        made.level = levels[plan.parts.size()].value_or(0);
        if (const auto* picture = std::get_if<project::PicturePart>(&part)) {
            made.picture = true;
            made.ratio = ratioOf(*picture, *band.settings.picture.ratio);
        } else {
            const auto& text = std::get<project::TextPart>(part);
            made.role =
                static_cast<std::uint32_t>(std::find(roles.begin(), roles.end(), text.role) - roles.begin());
            const TextStyle* style = band.settings.text.find(text.role);
            made.paragraph = store.get(text.copy, shapingStyle(*style, project), *band.profile);
        }
        plan.parts.push_back(std::move(made));
    }
    return plan;
}

std::unique_ptr<BandPlan> bandPlan(const project::Project& project, const project::Variant& variant,
                                   std::size_t band, const std::vector<std::string>& roles,
                                   text::ParagraphStore& store, const text::BreakProfile& profile) {
    auto plan = std::make_unique<BandPlan>();
    plan->upTo = variant.bands[band].upTo;
    plan->settings = project::resolve(project, variant, band);
    plan->profile = &profile;
    plan->rightToLeft = project.rightToLeft;
    const Settings& s = plan->settings;
    plan->columns = *s.row.columns;
    plan->rowWidth = *s.row.width;
    plan->rowMaxWidth = *s.row.maxWidth;
    plan->columnGap = *s.row.columnGap;
    plan->rowGap = *s.row.rowGap;
    plan->rowPadding = lengths(s.row.padding);
    plan->cardPadding = lengths(s.card.padding);
    plan->cardBorder = *s.card.border.width;
    plan->pictureShare = *s.card.pictureShare;
    plan->pictureMargin = lengths(s.picture.margin);
    plan->centred = s.row.lastLine == project::LastLine::Center;
    plan->levelled = s.row.level == project::Level::Subgrid;
    plan->beside = s.card.direction == project::Direction::Beside;
    plan->bleed = *s.card.bleed;
    plan->levels = project::Levels::of(project, s);
    for (const project::Card& card : project.row().cards)
        plan->cards.push_back(cardPlan(card, *plan, project, roles, store));
    return plan;
}

PagePlan pagePlan(const project::Page& page, std::size_t range) {
    const project::PageSettings settings = page.settings(range);
    PagePlan plan;
    plan.scrollbar = page.scrollbar;
    plan.rootSize = settings.rootSize;
    plan.readerSize = page.readerSize;
    plan.containerWidth = settings.container.width;
    plan.containerMaxWidth = settings.container.maxWidth;
    plan.containerPadding = lengths(settings.container.padding);
    plan.containerPlace = settings.container.place;
    plan.containerAddedWidth = settings.container.addedWidth;
    plan.containerShift = settings.container.shift;
    plan.background = settings.container.background;
    return plan;
}

std::unique_ptr<IntervalPlan> intervalPlan(const project::Project& project, const project::Interval& interval,
                                           const BandPlan& band, const std::vector<std::string>& roles) {
    auto plan = std::make_unique<IntervalPlan>();
    plan->upTo = interval.upTo;
    plan->bandIndex = interval.band;
    plan->band = &band;
    plan->page = pagePlan(project.page, interval.range);
    const double leastSize = band.profile->leastSize(project.language);
    for (const std::string& role : roles) {
        plan->roles.push_back(
            rolePlan(*band.settings.text.find(role), plan->page.rootSize, project.unit, *band.profile));
        plan->roles.back().leastSize = leastSize;
    }
    return plan;
}

}  // namespace

PreparedRow::PreparedRow(const project::Project& project, project::VariantRef variant,
                         text::ParagraphStore& store, const text::BreakProfile& profile)
    : roles_(project::roles(project)), rowIndex_(variant.row), profile_(&profile) {
    const project::Variant& chosen = project.row(variant.row).variants.at(variant.variant);
    for (std::size_t band = 0; band < chosen.bands.size(); ++band)
        bands_.push_back(bandPlan(project, chosen, band, roles_, store, profile));
    for (const project::Interval& interval : project::intervals(project.page, chosen))
        intervals_.push_back(intervalPlan(project, interval, *bands_.at(interval.band), roles_));
}

PreparedRow::~PreparedRow() = default;
PreparedRow::PreparedRow(PreparedRow&&) noexcept = default;
PreparedRow& PreparedRow::operator=(PreparedRow&&) noexcept = default;

std::size_t PreparedRow::bandAt(double width) const {
    for (std::size_t band = 0; band + 1 < bands_.size(); ++band)
        if (bands_[band]->upTo && width <= *bands_[band]->upTo) return band;
    return bands_.size() - 1;
}

std::size_t PreparedRow::intervalAt(double width) const {
    for (std::size_t i = 0; i + 1 < intervals_.size(); ++i)
        if (width <= *intervals_[i]->upTo) return i;
    return intervals_.size() - 1;
}

const IntervalPlan& PreparedRow::intervalIn(std::size_t band, double width) const {
    const IntervalPlan* nearest = nullptr;
    for (const auto& interval : intervals_) {
        if (interval->bandIndex != band) continue;
        nearest = interval.get();
        if (!nearest->upTo || width <= *nearest->upTo) break;
    }
    return nearest != nullptr ? *nearest : at(width);
}

const Settings& PreparedRow::settings(std::size_t band) const {
    return bands_.at(band)->settings;
}

std::vector<text::FontNote> PreparedRow::notes() const {
    std::vector<text::FontNote> all;
    for (const auto& band : bands_)
        for (const CardPlan& card : band->cards)
            for (const PartPlan& part : card.parts) {
                if (!part.paragraph) continue;
                for (const text::FontNote& note : part.paragraph->notes())
                    if (std::find(all.begin(), all.end(), note) == all.end()) all.push_back(note);
            }
    return all;
}

double PreparedRow::fontSize(std::uint32_t role, double width) const {
    const IntervalPlan& interval = at(width);
    return sizeOf(interval.roles.at(role), frameAt(interval, width));
}

double PreparedRow::cardWidth(double width) const {
    return frameAt(at(width), width).cardContent;
}

double PreparedRow::rem(double width) const {
    return inlineSizesAt(at(width), width).basis.rem;
}

}  // namespace tenter::layout
