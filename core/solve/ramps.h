// The unknowns: the two end sizes of each ramp, where the project says it.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"
#include "solve/programme.h"
#include "units/ramp.h"

namespace tenter::solve {

/// Where a size is said: in the style, in a variant, or in a band of it.
struct Place {
    enum class Layer { Style, Variant, Band };
    Layer layer = Layer::Style;
    std::size_t variant = 0;
    std::size_t band = 0;
    friend bool operator==(const Place&, const Place&) = default;
};

/// A role's ramp as it is, and the columns of its two end sizes. Its end widths stay.
struct RampSought {
    std::string role;
    Place place;
    units::RampPoint from, to;
    std::size_t first = 0;  ///< column of the size at `from`
    std::size_t last = 0;   ///< of that at `to`; the same if the widths are, since then the size is one
    bool ownBand = false;   ///< made for one band and as wide as it
};

/// Every ramp that the variants to be solved use. A ramp that further variants use too stays theirs: the new
/// one is said for the variant.
class RampsSought {
public:
    RampsSought(const project::Project& project, const std::vector<std::size_t>& variants,
                const std::vector<std::string>& roles);

    [[nodiscard]] const std::vector<RampSought>& all() const { return all_; }
    [[nodiscard]] std::size_t columns() const { return columns_; }
    /// Size now, CSS px, of the end that column `column` is.
    [[nodiscard]] double now(std::size_t column) const;

    [[nodiscard]] const RampSought& in(std::size_t variant, std::size_t band, const std::string& role) const;
    /// The size there now, CSS px, at `width` (CSS px of what the ramp follows), however ramps were split.
    [[nodiscard]] double nowIn(std::size_t variant, std::size_t band, const std::string& role,
                               double width) const;
    /// The size at `width` (CSS px of what the ramp follows) as a sum of columns.
    static Form sizeAt(const RampSought& ramp, double width);
    /// The size there now.
    static double sizeNow(const RampSought& ramp, double width);

    /// Gives each band of `variant` a ramp of the role's own between two widths of what it follows; `ends`
    /// has a pair for each band, or nothing for those no width of the range falls in.
    using Ends = std::vector<std::optional<std::pair<double, double>>>;
    void split(std::size_t variant, const std::string& role, const Ends& ends);
    /// True if splitting would give `role` more freedom.
    [[nodiscard]] bool canSplit(const std::string& role) const;

    /// The project with sizes `sizes` by column, CSS px, each said where it belongs.
    [[nodiscard]] project::Project applied(const project::Project& project,
                                           const std::vector<double>& sizes) const;

private:
    struct Use {
        std::size_t variant = 0;
        std::size_t band = 0;
        std::string role;
        std::size_t ramp = 0;
        units::Ramp now;
    };
    [[nodiscard]] const Use& use(std::size_t variant, std::size_t band, const std::string& role) const;
    std::size_t add(RampSought ramp);

    std::vector<RampSought> all_;
    std::vector<Use> uses_;
    std::size_t columns_ = 0;
};

}  // namespace tenter::solve
