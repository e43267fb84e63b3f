// A kind of wish, such as the one on lines: everything that the solver knows about it.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "layout/prepared.h"
#include "solve/wish.h"

namespace tenter::solve {

class BoundFinder;    // bound_finder.h
class RowAdder;       // row_adder.h
class Violations;     // violations.h
class WishList;       // wish_list.h
struct Relaxation;    // solve.h
struct VerifiedText;  // violations.h
struct WishKey;       // wish_key.h

/// How far the figure of a wish may be changed to resolve a conflict, and in which steps.
struct RelaxationRange {
    double limit = 0;
    double step = 0;
};

/// For what one place that limits a size is shown: each band, each variant (there the place with the largest
/// size), or all of them.
enum class PlaceScope { Band, Variant, AllVariants };

/// The fixed properties of a kind of wish.
struct ConstraintTraits {
    /// Unique; that of the `RoleWishes` member if there is one: `leastMeasure`.
    std::string_view name;
    const WishKey* key = nullptr;  ///< its short notation; kinds may share one
    /// Empty if it has no figure, or none that may change.
    std::optional<RelaxationRange> relaxation = std::nullopt;
    /// Order in which wishes are left out of a conflict: kinds that users think of last come first.
    int removalRank = 3;
    /// Tolerance to add if a solved row violates the wish when it is laid out: a share of a line or of the
    /// characters where text limits the size, else px.
    double toleranceStep = 0.01;
    bool isLowerBound = false;     ///< text keeps the size from being smaller, not from being larger
    bool usesReserve = false;      ///< the reserve for longer text applies to it
    bool isLimitedByWord = false;  ///< a shorter last word of the limiting line would allow more
    bool locksSizes = false;       ///< the role keeps its sizes
    bool couplesVariants = false;  ///< the role has the same size in every variant
    PlaceScope places = PlaceScope::Band;
};

/// What a sentence about a limit may use.
struct LimitContext {
    const Wish& wish;
    std::string wished;         ///< the condition, with its widths unless it holds everywhere
    std::string at;             ///< `21.4 px at 931 px viewport width`
    std::string place;          ///< `at 931 px viewport width`
    bool isLower = false;       ///< the wish keeps the size from being smaller there
    bool atBreakpoint = false;  ///< the place is just above a breakpoint
    /// Where the role is limited in any variant, by any wish.
    std::function<std::string()> allPlaces;
};

/// A kind of wish. Each is defined in a file of core/solve/constraints, by a function in the namespace
/// `constraints` that is listed in constraints.def.
class Constraint {
public:
    explicit Constraint(const ConstraintTraits& fixed) : traits(fixed) {}
    virtual ~Constraint() = default;
    Constraint(const Constraint&) = delete;
    Constraint& operator=(const Constraint&) = delete;

    const ConstraintTraits traits;

    // Reading and writing

    /// Adds the wishes of this kind that the project has for `role`.
    virtual void addWishes(WishList& list, const std::string& role) const = 0;
    /// Sets the wish in `entry`, whose role and widths are set; with `removed`, the value that cancels it.
    virtual void write(project::RoleWishes& entry, const Wish& wish, bool removed) const;
    /// Removes the wish from the project's. By default an entry is added that cancels it.
    virtual void remove(project::Project& project, const Wish& wish) const;
    /// True if `entry` makes every variant be solved, whichever was asked for.
    [[nodiscard]] virtual bool needsEveryVariant(const project::RoleWishes& entry) const;

    // Words

    /// What the wish is called after its role: `at most 2 lines`.
    [[nodiscard]] virtual std::string condition(const Wish& wish) const = 0;
    /// The condition after the name of the role: `heading in at most 2 lines`.
    [[nodiscard]] virtual std::string ofRole(const Wish& wish, const std::string& role) const;
    /// A sentence, or part of one, about a place where the wish limits a size. Empty: the usual one.
    [[nodiscard]] virtual std::optional<std::string> limitText(const LimitContext& context) const;
    /// What the user must change in the text, if the wish can be neither changed nor removed.
    [[nodiscard]] virtual std::optional<std::string> advice() const;

    // Rows of the linear program

    /// Adds the rows that are necessary and sufficient for the wish, or at least sufficient.
    virtual void addRows(RowAdder& rows) const = 0;
    /// Adds the bounds that the wish sets in the linear range at hand. Only if `boundsSize`.
    virtual void addBounds(BoundFinder& finder) const;
    /// True if the wish bounds the size of its role at each width, independent of other sizes.
    [[nodiscard]] virtual bool boundsSize() const { return false; }
    /// The browser zoom factor at which it must hold too: layouts down to the viewport width divided by it
    /// count.
    [[nodiscard]] virtual double zoomFactor(const Wish& wish) const;

    // Verification of a row that is laid out. Nothing is verified by default: sizes on the solver's grid
    // satisfy wishes that couple sizes exactly.

    /// Notes where a text of the wish's role violates it.
    virtual void verifyText(const VerifiedText& text, Violations& violations) const;
    /// Notes where the role's size violates it, by the emitted ramps.
    virtual void verifySize(const layout::LinearSizes& sizes, Violations& violations) const;
    /// Notes where the rows of two variants violate it together.
    virtual void verifyVariants(const layout::PreparedRow& one, const layout::PreparedRow& other,
                                Violations& violations) const;

    // Conflicts

    /// True if the relaxation of `wish` makes text too small to read, or smaller than a role it should lead.
    /// `defaults`: the wishes of a project that states none.
    [[nodiscard]] virtual bool isUnreadable(const Wish& wish, const Relaxation& relaxation,
                                            const std::vector<Wish>& defaults) const;
};

/// `body with at most 75 characters per line`: for `Constraint::ofRole`.
std::string withCondition(const std::string& role, const std::string& condition);

/// A kind that bounds the size of its role at each width: `addBounds` says all about it.
class BoundConstraint : public Constraint {
public:
    using Constraint::Constraint;
    void addRows(RowAdder& rows) const final;
    [[nodiscard]] bool boundsSize() const final { return true; }
};

}  // namespace tenter::solve
