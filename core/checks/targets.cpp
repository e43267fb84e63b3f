// Links and buttons that are too small to press. WCAG 2.2 SC 2.5.8 with its exceptions for spacing and for
// links within sentences; SC 2.5.5.
#include <algorithm>
#include <cmath>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "layout/prepared.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// WCAG 2.2 SC 2.5.8. CSS px.
constexpr double targetSide = 24;
/// What rounding in browsers can cut off a distance made of padding, line and margin, 1/60 px each. CSS px.
constexpr double roundingLoss = 0.05;

using layout::Box;
using sweep::Interval;

/// The target of a part that is a link as a whole: the box of a button, or the line boxes of another text, as
/// high as the letters of the face.
Box targetBox(const layout::LaidPart& part, const layout::Layout& laid, bool button) {
    if (button || part.lineCount == 0) return part.box;
    Box box{laid.lines[part.firstLine].x, part.box.y + part.border + part.padding.top, 0, 0};
    for (std::size_t l = part.firstLine; l < part.firstLine + part.lineCount; ++l) {
        const layout::LaidLine& line = laid.lines[l];
        const double right = std::max(box.right(), line.x + line.line.width);
        box.x = std::min(box.x, line.x);
        box.width = right - box.x;
        box.height += line.extent.above + line.extent.below;
    }
    const text::FacePtr& face = part.paragraph->strut();
    const double letters = face ? (face->ascent() + face->descent()) * part.fontSize : part.fontSize;
    box.y += (part.lineHeight - letters) / 2;
    box.height += letters - part.lineHeight;
    return box;
}

double smaller(const Box& box) {
    return std::min(box.width, box.height);
}

double distanceTo(const Box& box, double x, double y) {
    const double dx = std::max({box.x - x, 0.0, x - box.right()});
    const double dy = std::max({box.y - y, 0.0, y - box.bottom()});
    return std::hypot(dx, dy);
}

/// Measures every target of a row.
class TargetSearch {
public:
    explicit TargetSearch(const Subject& subject) : subject_(subject), least_(targetSide) {}

    void run(Findings& out) {
        for (const CheckedPart& part : subject_.parts)
            if (part.text != nullptr && isLink(*part.text)) measure(part);
        report(out, small_,
               {Severity::Error,
                "WCAG 2.2 SC 2.5.8",
                {wording::say("%1, %2 is less than %3 high or wide, at worst %4, and another link is close",
                              {widthsOf(small_), targetOf(small_), units::px(least_), sizeOf(small_)}),
                 wording::say("Readers can press the wrong link by mistake"),
                 wording::say("Increase the padding (Spacing › Padding) to reach %1, or leave as much room "
                              "around it",
                              {units::px(least_)})},
                "small"});
        const double comfort = subject_.limits().comfortTarget;
        report(out, modest_,
               {Severity::Note,
                "WCAG 2.2 SC 2.5.5 (AAA)",
                {wording::say("%1, %2 is less than %3 high or wide, at worst %4",
                              {widthsOf(modest_), targetOf(modest_), units::px(comfort), sizeOf(modest_)}),
                 wording::say("Targets of at least %1 are easier to press", {units::px(comfort)}),
                 wording::say("Increase the padding (Spacing › Padding)")},
                "modest"});
    }

private:
    [[nodiscard]] std::string widthsOf(const Cause& cause) const {
        return cause.any() ? atWidths(subject_, cause.runOfWorst()) : std::string();
    }
    [[nodiscard]] std::string targetOf(const Cause& cause) const {
        return cause.any() ? worstAndOthers(subject_, cause) : std::string();
    }
    static std::string sizeOf(const Cause& cause) {
        return units::px(-cause.worst, 1, units::Rounding::Down);
    }

    [[nodiscard]] bool cardIsTarget(const CheckedPart& part, std::size_t band) const {
        return part.is("button") && subject_.row.settings(band).card.linked.value_or(false);
    }

    void measure(const CheckedPart& part) {
        for (const sweep::Piece& piece : part.pieces.pieces) {
            if (cardIsTarget(part, piece.band)) continue;
            // Just past the piece's start, which may be the last width of the band before.
            const double start = piece.from + std::min(1e-6, (piece.to - piece.from) / 2);
            const double first = sizeAt(part, start);
            // Just before its end: rounding may put the end itself in the next piece.
            const double last = sizeAt(part, piece.to - (start - piece.from));
            const units::Linear size(first, (last - first) / (piece.to - piece.from));
            const auto under = [&](double limit) {
                return whereAbove(limit - roundingLoss - size, piece.from, piece.to);
            };
            // Of equally small targets the one with the longest run is the worst.
            const double longer = (piece.to - piece.from) * 1e-10;
            const auto small = under(least_);
            const auto modest = under(subject_.limits().comfortTarget);
            if (small && crowded(part, *small)) {
                small_.add(part.place, *small, -std::min(first, last) + longer,
                           first < last ? small->from : small->to);
                continue;
            }
            if (modest)
                modest_.add(part.place, *modest, -std::min(first, last) + longer,
                            first < last ? modest->from : modest->to);
        }
    }

    double sizeAt(const CheckedPart& part, double width) {
        const layout::LaidPart& laid = layout::layOutSingleText(subject_.row, width, part.place, laid_);
        return smaller(targetBox(laid, laid_, part.is("button")));
    }

    /// True if a circle around the target touches another target, or the circle of another one that is too
    /// small, at an end or in the middle of the span.
    bool crowded(const CheckedPart& part, const Interval& span) {
        const double start = span.from + std::min(1e-6, (span.to - span.from) / 2);
        for (const double width : {start, (span.from + span.to) / 2, span.to})
            if (crowdedAt(part, width)) return true;
        return false;
    }

    bool crowdedAt(const CheckedPart& part, double width) {
        layout::layOut(subject_.row, width, laid_);
        const auto boxOf = [&](const CheckedPart& p) {
            return targetBox(laid_.parts[laid_.cards[p.place.card].firstPart + p.place.part], laid_,
                             p.is("button"));
        };
        const Box own = boxOf(part);
        const double x = own.x + own.width / 2;
        const double y = own.y + own.height / 2;
        return std::ranges::any_of(subject_.parts, [&](const CheckedPart& other) {
            if (other.text == nullptr || !isLink(*other.text)) return false;
            if (other.place == part.place) return false;
            const Box box = boxOf(other);
            if (distanceTo(box, x, y) < least_ / 2 - roundingLoss) return true;
            const double between = std::hypot(box.x + box.width / 2 - x, box.y + box.height / 2 - y);
            return smaller(box) < least_ - roundingLoss && between < least_ - roundingLoss;
        });
    }

    const Subject& subject_;
    double least_;
    Cause small_, modest_;
    layout::Layout laid_;
};

void checkTargets(const Subject& subject, Findings& out) {
    TargetSearch(subject).run(out);
}

/// Paddings of the roles of the finding that make their boxes `missing` CSS px larger.
void proposePadding(Candidates& out, double missing) {
    const Subject& subject = out.subject();
    const double rem = subject.row.rem(out.finding().at);
    for (const bool sides : {false, true})
        for (const std::string& role : out.roles()) {
            const auto known = std::ranges::find(subject.roles, role, &CheckedRole::name);
            const double em = subject.row.fontSize(known->index, out.finding().at);
            std::string value;
            std::vector<BandChange> changes;
            for (const std::size_t band : out.bands()) {
                const project::Sides& now = out.settings(band).text.find(role)->padding;
                const auto more = [&](const std::optional<units::Length>& length) {
                    return longer(length.value_or(units::Length()), missing / 2, em, rem);
                };
                project::Settings settings;
                project::Sides& padding = settings.text.of(role).padding;
                padding.top = more(now.top);
                padding.bottom = more(now.bottom);
                if (sides) {
                    padding.left = more(now.left);
                    padding.right = more(now.right);
                }
                value = padding.top->css();
                changes.emplace_back(band, std::move(settings));
            }
            out.set(sides
                        ? wording::say("Increase the padding of %1 to %2 at top and bottom, and at the sides",
                                       {roleText(role), value})
                        : wording::say("Increase the padding of %1 to %2 at top and bottom",
                                       {roleText(role), value}),
                    Candidates::Scope::Layout, std::move(changes), "padding-of-" + role);
        }
}

void remedyTargets(Candidates& out) {
    const Subject& subject = out.subject();
    const bool small = out.isFor("small");
    const double limit = small ? targetSide : subject.limits().comfortTarget;
    layout::Layout laid = layout::layOut(subject.row, out.finding().at);
    double least = limit;
    for (const project::PartRef& place : out.finding().places) {
        const layout::LaidPart& part = laid.parts[laid.cards[place.card].firstPart + place.part];
        const auto* text = std::get_if<project::TextPart>(&subject.project.part(place));
        if (text != nullptr) least = std::min(least, smaller(targetBox(part, laid, text->role == "button")));
    }
    proposePadding(out, limit - least);
    if (small)
        for (const std::string& role : out.roles())
            out.set(wording::say("Leave 24\u00A0px between links of %1", {roleText(role)}),
                    Candidates::Scope::Layout, [&](project::Settings& settings, std::size_t) {
                        settings.text.of(role).margin.bottom = units::Length::px(targetSide);
                    });
    out.set(wording::say("Make the whole card a link"), Candidates::Scope::Layout,
            [](project::Settings& settings, std::size_t) { settings.card.linked = true; });
}

}  // namespace

extern const Check targetCheck{
    .name = "target", .run = checkTargets, .dependsOnBreaks = true, .remedies = remedyTargets};

}  // namespace tenter::checks
