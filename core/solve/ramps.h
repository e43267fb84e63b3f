// The variables of the linear program: the two end sizes of each ramp.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "project/cascade.h"
#include "project/project.h"
#include "solve/linear_program.h"
#include "units/ramp.h"

namespace tenter::solve {

/// The layer of the cascade that a size is set in: style, a variant, or a band of a variant.
struct RampPlace {
    project::CascadeLayer layer = project::CascadeLayer::Style;
    std::size_t variant = 0;
    std::size_t band = 0;
    friend bool operator==(const RampPlace&, const RampPlace&) = default;
};

/// A role's current ramp and the two variables that its new end sizes are. The end widths do not change.
struct RampVariables {
    std::string role;
    RampPlace place;
    units::RampPoint from, to;     ///< current ends
    std::size_t fromVariable = 0;  ///< size at `from`, CSS px
    std::size_t toVariable = 0;    ///< size at `to`; the same variable for a flat ramp of one width
    bool ownBand = false;          ///< created by `RampSet::split`, for one band
};

/// Every ramp that the variants to be solved use. If other variants use a ramp too, the new sizes are set in
/// the solved variant, and the shared ramp stays.
class RampSet {
public:
    RampSet(const project::Project& project, const std::vector<std::size_t>& variants,
            const std::vector<std::string>& roles);

    [[nodiscard]] const std::vector<RampVariables>& all() const { return all_; }
    [[nodiscard]] std::size_t variableCount() const { return variableCount_; }
    /// Current size, CSS px, of the ramp end that `variable` is.
    [[nodiscard]] double currentSize(std::size_t variable) const;

    [[nodiscard]] const RampVariables& in(std::size_t variant, std::size_t band,
                                          const std::string& role) const;
    /// Size in the project as given, CSS px, at `width` (CSS px of the width that the ramp follows).
    [[nodiscard]] double currentSizeAt(std::size_t variant, std::size_t band, const std::string& role,
                                       double width) const;
    /// New size at `width` (CSS px of the width that the ramp follows) in terms of the ramp's variables.
    static LinearExpression sizeExpression(const RampVariables& ramp, double width);
    /// Current size there, CSS px.
    static double currentSize(const RampVariables& ramp, double width);

    /// Per band, the two end widths of a ramp, CSS px of the width that it follows; empty for bands outside
    /// the project's range.
    using Ends = std::vector<std::optional<std::pair<double, double>>>;
    /// Gives the role a separate ramp in each band of `variant`.
    void split(std::size_t variant, const std::string& role, const Ends& ends);
    /// True if some ramp of the role is still shared by bands.
    [[nodiscard]] bool canSplit(const std::string& role) const;

    /// The project with new end sizes, CSS px, indexed by variable; each size is set in its ramp's place.
    [[nodiscard]] project::Project applied(const project::Project& project,
                                           const std::vector<double>& sizes) const;

private:
    struct Use {
        std::size_t variant = 0;
        std::size_t band = 0;
        std::string role;
        std::size_t ramp = 0;  // index into all_
        units::Ramp current;
    };
    [[nodiscard]] const Use& use(std::size_t variant, std::size_t band, const std::string& role) const;
    std::size_t add(RampVariables ramp);

    std::vector<RampVariables> all_;
    std::vector<Use> uses_;
    std::size_t variableCount_ = 0;
};

}  // namespace tenter::solve
