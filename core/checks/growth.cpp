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
    /// ` (heading text also jumps)`; empty if there is no other role.
    [[nodiscard]] std::string othersJump() const {
        std::vector<std::string> all = others(true);
        for (std::string& text : others(false))
            all.push_back(std::move(text));
        return all.empty() ? "" : " (" + withVerb(all, "also jump") + ")";
    }
    /// ` (heading text also grows; button text shrinks)`; empty if there is no other role.
    [[nodiscard]] std::string othersSlope() const {
        const std::vector<std::string> same = others(growsText());
        const std::vector<std::string> opposite = others(!growsText());
        if (same.empty() && opposite.empty()) return {};
        std::string text;
        if (!same.empty()) text = withVerb(same, growsText() ? "also grow" : "also shrink");
        if (!opposite.empty())
            text += (text.empty() ? "" : "; ") + withVerb(opposite, growsText() ? "shrink" : "grow");
        return " (" + text + ")";
    }
    static std::string withVerb(const std::vector<std::string>& texts, const char* verb) {
        return project::listed(texts) + " " + verb + (texts.size() == 1 ? "s" : "");
    }
    /// `from 14.5 to 16.5 px`.
    [[nodiscard]] std::string sizes() const {
        return "from " + units::figure(size[0], 1) + " to " + units::px(size[1], 1);
    }
    /// `its column grows from 400 to 1200 px`.
    [[nodiscard]] std::string columnChange() const {
        if (sameColumnWidth()) return "its column stays " + units::px(column[1], 0) + " wide";
        return std::string("its column ") + (column[1] > column[0] ? "grows" : "shrinks") + " from " +
               units::figure(column[0], 0) + " to " + units::px(column[1], 0);
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

Statement slopeStatement(const Subject& subject, const Against& slope) {
    return {atWidths(subject, slope.cause.there) + ", " + slope.worst +
                (slope.growsText() ? " grows " : " shrinks ") + slope.sizes() + " while " +
                slope.columnChange() + slope.othersSlope(),
            "Text should grow and shrink with its column",
            "Change the ramp in the same direction as the column (Text › Font size)"};
}

Statement jumpStatement(double breakpoint, const Against& jump) {
    const std::string larger = jump.growsText() ? "Larger" : "Smaller";
    const bool same = jump.sameColumnWidth();
    return {"just above " + units::px(breakpoint) + ", " + jump.worst + " jumps " + jump.sizes() +
                " although " + jump.columnChange() + jump.othersJump(),
            same ? "A jump without a change of the column looks like a mistake"
                 : larger + " text in a " + (jump.growsText() ? "narrower" : "wider") +
                       " column looks like a mistake",
            same ? "Give both ramps the same size at the breakpoint (Text › Font size)"
                 : "At the breakpoint, do not make the size on the wide side " +
                       std::string(jump.growsText() ? "larger" : "smaller") +
                       " than on the narrow side (Text › Font size)"};
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
               {Severity::Warning, "common practice, no source", slopeStatement(subject, slopes), "slope"});
    for (const auto& [at, jump] : jumps)
        report(out, jump.cause,
               {Severity::Warning, "common practice, no source", jumpStatement(at, jump),
                "jump " + units::Length::px(at).css()});
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
        out.set("Give " + roleTexts(roles) + " the same size on both sides of the breakpoint at " +
                    units::px(breakpoint),
                Candidates::Scope::Layout, {changes.begin(), changes.end()});
    }
}

void remedyGrowth(Candidates& out) {
    if (!out.isFor("slope")) return remedyJump(out);
    const std::vector<std::string> roles = out.roles();
    out.set("Let " + roleTexts(roles) + " grow with the column", Candidates::Scope::Layout,
            [&](project::Settings& settings, std::size_t band) {
                for (const std::string& name : roles) {
                    const units::Ramp& now = *out.settings(band).text.find(name)->size;
                    if (now.isFlat()) continue;
                    settings.text.of(name).size = units::Ramp::between({now.from().width, now.to().size},
                                                                       {now.to().width, now.from().size})
                                                      .value_or(now);
                }
            });
    out.set("Keep one size of " + roleTexts(roles), Candidates::Scope::Layout,
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
