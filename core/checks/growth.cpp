// Text whose size changes against its column: it grows where the column narrows, or jumps at a breakpoint at
// which the column does not. Common practice, no source.
#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <vector>

#include "checks/check.h"
#include "checks/common_remedies.h"
#include "checks/phrases.h"
#include "project/wording.h"
#include "units/number.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::checks {

namespace {

/// A column that changes by less than this share at a breakpoint counts as unchanged.
constexpr double sameColumn = 0.01;
/// Smaller changes within a band are invisible: CSS px of font size, and a share of the column.
constexpr double invisible = 0.5;
constexpr double invisibleColumn = 0.05;

/// Roles whose size changes against the column, and the worst of them.
struct Against {
    Cause cause;
    std::map<std::string, bool> grows;      ///< by text of a role: the direction of its largest change
    std::map<std::string, double> changes;  ///< by text of a role: its largest change, CSS px
    std::string worst;                      ///< the text of the worst role
    double size[2] = {0, 0};                ///< before and after, of the worst role, CSS px
    double column[2] = {0, 0};
    void add(const CheckedRole& role, sweep::Interval span, const RolePiece& before, double at,
             const RolePiece& after, double then) {
        const double sizes[2] = {before.size.at(at - before.from), after.size.at(then - after.from)};
        const std::string text = roleText(role.name);
        const double change = std::abs(sizes[1] - sizes[0]);
        if (change >= changes[text]) {
            changes[text] = change;
            grows[text] = sizes[1] > sizes[0];
        }
        if (!cause.add(role.place, span, change)) return;
        worst = text;
        size[0] = sizes[0];
        size[1] = sizes[1];
        column[0] = before.column.at(at - before.from);
        column[1] = after.column.at(then - after.from);
    }
    [[nodiscard]] bool sameColumnWidth() const {
        return std::abs(column[1] - column[0]) <= sameColumn * column[0];
    }
    [[nodiscard]] bool growsText() const { return size[1] > size[0]; }
    /// The roles besides the worst whose size changes in the direction `growing`.
    [[nodiscard]] std::vector<std::string> others(bool growing) const {
        std::vector<std::string> found;
        for (const auto& [text, isGrowing] : grows)
            if (text != worst && isGrowing == growing) found.push_back(text);
        return found;
    }
    /// `heading text also jumps`; empty if there is no other role.
    [[nodiscard]] std::string othersJump() const {
        std::vector<std::string> all = others(true);
        for (std::string& text : others(false))
            all.push_back(std::move(text));
        if (all.empty()) return {};
        return wording::sayCount("%1 also jumps", "%1 also jump", all.size(), {project::listed(all)});
    }
    /// `heading text also grows; button text shrinks`; empty if there is no other role.
    [[nodiscard]] std::string othersSlope() const {
        const std::vector<std::string> same = others(growsText());
        const std::vector<std::string> opposite = others(!growsText());
        std::string also = same.empty() ? std::string() : alsoChange(same);
        if (opposite.empty()) return also;
        const std::string texts = project::listed(opposite);
        const std::string against =
            growsText() ? wording::sayCount("%1 shrinks", "%1 shrink", opposite.size(), {texts})
                        : wording::sayCount("%1 grows", "%1 grow", opposite.size(), {texts});
        return also.empty() ? against : wording::say("%1; %2", {also, against});
    }
    [[nodiscard]] std::string alsoChange(const std::vector<std::string>& same) const {
        const std::string texts = project::listed(same);
        return growsText() ? wording::sayCount("%1 also grows", "%1 also grow", same.size(), {texts})
                           : wording::sayCount("%1 also shrinks", "%1 also shrink", same.size(), {texts});
    }
    /// The sizes before and after, of the worst role.
    [[nodiscard]] std::string sizeBefore() const { return units::figure(size[0], 1); }
    [[nodiscard]] std::string sizeAfter() const { return units::px(size[1], 1); }
    /// `its column grows from 400 to 1200 px`.
    [[nodiscard]] std::string columnChange() const {
        const std::string before = units::figure(column[0], 0);
        const std::string after = units::px(column[1], 0);
        //: Part of a sentence: body text shrinks from 16 to 14 px while its column …
        if (sameColumnWidth()) return wording::say("its column stays %1 wide", {after});
        if (column[1] > column[0]) return wording::say("its column grows from %1 to %2", {before, after});
        return wording::say("its column shrinks from %1 to %2", {before, after});
    }
};

/// True if the size jumps at the breakpoint between two pieces by more than `least` (CSS px) while the column
/// stays the same or changes in the other direction.
bool jumpsAgainst(const RolePiece& before, const RolePiece& after, double least) {
    const double jump = after.size.value - before.size.at(before.to - before.from);
    const double column = before.column.at(before.to - before.from);
    const double change = after.column.value - column;
    if (std::abs(jump) <= least) return false;
    return std::abs(change) <= sameColumn * column || (jump > 0) != (change > 0);
}

/// `what (others)`, or `what` if there are no others.
std::string withOthers(const std::string& what, const std::string& others) {
    return others.empty() ? what : wording::say("%1 (%2)", {what, others});
}

Statement slopeStatement(const Subject& subject, const Against& slope) {
    const std::string widths = atWidths(subject, slope.cause.there);
    const std::string what =
        slope.growsText()
            ? wording::say("%1, %2 grows from %3 to %4 while %5",
                           {widths, slope.worst, slope.sizeBefore(), slope.sizeAfter(), slope.columnChange()})
            : wording::say(
                  "%1, %2 shrinks from %3 to %4 while %5",
                  {widths, slope.worst, slope.sizeBefore(), slope.sizeAfter(), slope.columnChange()});
    return {withOthers(what, slope.othersSlope()),
            wording::say("Text should grow and shrink with its column"),
            wording::say("Change the ramp in the same direction as the column (Text › Font size)")};
}

Statement jumpStatement(double breakpoint, const Against& jump) {
    const std::string what = wording::say(
        "just above %1, %2 jumps from %3 to %4 although %5",
        {units::px(breakpoint), jump.worst, jump.sizeBefore(), jump.sizeAfter(), jump.columnChange()});
    const bool same = jump.sameColumnWidth();
    return {withOthers(what, jump.othersJump()),
            same               ? wording::say("A jump without a change of the column looks like a mistake")
            : jump.growsText() ? wording::say("Larger text in a narrower column looks like a mistake")
                               : wording::say("Smaller text in a wider column looks like a mistake"),
            same ? wording::say("Give both ramps the same size at the breakpoint (Text › Font size)")
            : jump.growsText()
                ? wording::say("At the breakpoint, do not make the size on the wide side larger than on the "
                               "narrow side (Text › Font size)")
                : wording::say("At the breakpoint, do not make the size on the wide side smaller than on the "
                               "narrow side (Text › Font size)")};
}

void checkGrowth(const Subject& subject, Findings& out) {
    std::map<double, Against> jumps;  // by breakpoint
    Against slopes;
    for (const CheckedRole& role : subject.roles) {
        for (std::size_t i = 0; i < role.pieces.size(); ++i) {
            const RolePiece& piece = role.pieces[i];
            const auto cut = within(piece, subject.whole());
            if (!cut) continue;
            const double length = cut->to - cut->from;
            const bool opposed = piece.size.slope * piece.column.slope < 0;
            const double columnChange = std::abs(piece.column.slope) * length / piece.column.value;
            if (opposed && std::abs(piece.size.slope) * length > invisible && columnChange > invisibleColumn)
                slopes.add(role, *cut, piece, cut->from, piece, cut->to);
            if (i == 0 || cut->from != piece.from) continue;
            const RolePiece& before = role.pieces[i - 1];
            if (before.band != piece.band && jumpsAgainst(before, piece, subject.limits().jump))
                jumps[piece.from].add(role, {piece.from, piece.from}, before, before.to, piece, piece.from);
        }
    }
    if (slopes.cause.any())
        report(out, slopes.cause,
               {Severity::Warning, commonPractice(), slopeStatement(subject, slopes), "slope"});
    for (const auto& [at, jump] : jumps)
        report(out, jump.cause,
               {Severity::Warning, commonPractice(), jumpStatement(at, jump),
                "jump-" + units::Length::px(at).css()});
}

/// The pieces on both sides of a breakpoint.
struct Sides {
    const RolePiece* before = nullptr;
    const RolePiece* after = nullptr;
};

Sides sidesOf(const CheckedRole& role, double breakpoint) {
    for (std::size_t i = 1; i < role.pieces.size(); ++i)
        if (role.pieces[i].from == breakpoint && role.pieces[i].band != role.pieces[i - 1].band)
            return {&role.pieces[i - 1], &role.pieces[i]};
    return {};
}

/// `ramp` with `size` at `width`, and its size at the end that is farther away.
units::Ramp through(const units::Ramp& ramp, double width, double size) {
    if (ramp.isFlat()) return units::Ramp::flat(size);
    const bool fromStart = std::abs(ramp.to().width - width) >= std::abs(ramp.from().width - width);
    return units::Ramp::between({width, size}, fromStart ? ramp.to() : ramp.from())
        .value_or(units::Ramp::flat(size));
}

/// The size of one side of the breakpoint, set on the other side.
void remedyJump(Candidates& out) {
    const double breakpoint = out.finding().widths.front().from;
    const std::vector<std::string> roles = out.roles();
    for (const bool above : {true, false}) {
        std::map<std::size_t, project::Settings> changes;
        for (const std::string& name : roles) {
            const auto role = std::ranges::find(out.subject().roles, name, &CheckedRole::name);
            const Sides sides = sidesOf(*role, breakpoint);
            if (sides.before == nullptr) continue;
            const double size = above ? sides.before->size.at(sides.before->to - sides.before->from)
                                      : sides.after->size.value;
            const std::size_t band = above ? sides.after->band : sides.before->band;
            const project::TextStyle& now = *out.settings(band).text.find(name);
            if (now.follow == project::Follow::Card || !now.size) continue;
            changes[band].text.of(name).size = through(*now.size, breakpoint, units::rounded(size, 2));
        }
        out.set(wording::say("Give %1 the same size on both sides of the breakpoint at %2",
                             {roleTexts(roles), units::px(breakpoint)}),
                Candidates::Scope::Layout, {changes.begin(), changes.end()});
    }
}

void remedyGrowth(Candidates& out) {
    if (!out.isFor("slope")) return remedyJump(out);
    const std::vector<std::string> roles = out.roles();
    out.set(wording::say("Let %1 grow with the column", {roleTexts(roles)}), Candidates::Scope::Layout,
            [&](project::Settings& settings, std::size_t band) {
                for (const std::string& name : roles) {
                    const units::Ramp& now = *out.settings(band).text.find(name)->size;
                    if (now.isFlat()) continue;
                    settings.text.of(name).size = units::Ramp::between({now.from().width, now.to().size},
                                                                       {now.to().width, now.from().size})
                                                      .value_or(now);
                }
            });
    out.set(wording::say("Keep one size of %1", {roleTexts(roles)}), Candidates::Scope::Layout,
            [&](project::Settings& settings, std::size_t band) {
                for (const std::string& name : roles) {
                    const units::Ramp& now = *out.settings(band).text.find(name)->size;
                    settings.text.of(name).size =
                        units::Ramp::flat(units::rounded((now.from().size + now.to().size) / 2, 1));
                }
            });
    out.solveSizes();
}

}  // namespace

extern const Check growthCheck{
    .name = "growth", .run = checkGrowth, .dependsOnBreaks = false, .remedies = remedyGrowth};

}  // namespace tenter::checks
