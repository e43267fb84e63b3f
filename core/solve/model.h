// The wishes on a row as rows of a linear programme over the end sizes of its ramps.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "solve/limits.h"
#include "solve/ramps.h"
#include "text/paragraph_store.h"

namespace tenter::solve {

/// Where a row of the programme comes from.
struct Spot {
    std::size_t variant = 0;
    std::size_t band = 0;
    double width = 0;  ///< viewport, CSS px
    std::string role;
    const text::BreakProfile* profile = nullptr;
    Witness by;
    Form size;         ///< of the role there
    double bound = 0;  ///< the size that may not be passed, where `by.copy`
};

struct WishRow {
    Form form;
    double least = -unbounded;
    double most = unbounded;
    std::size_t demand = 0;
    Spot spot;
};

/// A size that counts for what is best: a role's at one end of a band.
struct Point {
    std::size_t variant = 0;
    std::size_t band = 0;
    std::string role;
    Form size;
    double now = 0;      ///< CSS px
    bool first = false;  ///< at the band's narrow end
};

/// A project's variants made ready: geometry does not depend on what is sought.
class Setting {
public:
    /// `profile`: null for all.
    Setting(const project::Project& project, const std::vector<std::size_t>& variants,
            text::ParagraphStore& store, const text::BreakProfile* profile);
    struct Row {
        std::size_t variant = 0;
        std::unique_ptr<layout::PreparedRow> row;
    };
    const project::Project& project;
    std::vector<std::size_t> variants;
    std::vector<Row> rows;
};

class Model {
public:
    Model(const Setting& setting, const RampsSought& ramps, const project::Wishes& wishes,
          const std::vector<Demand>& demands);

    /// `other` with demand `index` changed to `demand`, of the same kind and widths.
    Model(const Model& other, std::size_t index, const Demand& demand);

    [[nodiscard]] const std::vector<WishRow>& rows() const { return rows_; }
    [[nodiscard]] const std::vector<Point>& points() const { return points_; }
    /// Columns: the ramps' ends, then one for the least and one for the greatest size of each zoomed role.
    [[nodiscard]] std::size_t columns() const { return columns_; }
    [[nodiscard]] const std::vector<Sight>& sights() const { return sights_; }
    /// The grid's step, CSS px.
    [[nodiscard]] double step() const { return step_; }
    [[nodiscard]] const Margins& margins() const { return margins_; }
    [[nodiscard]] const std::vector<bool>& without() const { return without_; }
    /// The role with the most copy.
    [[nodiscard]] const std::string& leading() const { return leading_; }

    /// Ends for `RampsSought::split`.
    [[nodiscard]] RampsSought::Ends endsOf(std::size_t variant, const std::string& role) const;

private:
    void look(const Setting& setting, const std::vector<Demand>& demands);
    void addDemand(std::size_t index, const Demand& demand);
    void addLimits(std::size_t index, const Demand& demand);
    void addLocked(std::size_t index, const Demand& demand);
    void addRatio(std::size_t index, const Demand& demand);
    void addGrowth(std::size_t index, const Demand& demand);
    void addWithColumn(std::size_t index, const Demand& demand);
    void addAtBreakpoints(std::size_t index, const Demand& demand);
    void addSameInVariants(std::size_t index, const Demand& demand);
    void addZoom(std::size_t index, const Demand& demand);
    void addPoints(const std::vector<std::string>& roles);

    const std::vector<Stretch>* stretchesOf(const Sight& sight, const std::string& role) const;
    [[nodiscard]] Form sizeAt(const Sight& sight, const Stretch& stretch, const std::string& role,
                              double width) const;
    /// The first sight of each variant: what does not depend on line breaks is the same in all of them.
    [[nodiscard]] std::vector<const Sight*> variantsSeen() const;
    void put(WishRow row);

    const RampsSought& ramps_;
    std::vector<Sight> sights_;
    std::vector<WishRow> rows_;
    std::vector<Point> points_;
    Margins margins_;
    std::vector<bool> without_;
    std::string leading_;
    double least_ = 0, most_ = 0;
    double step_ = 0.01;
    double jump_ = 0;  ///< step of type at a breakpoint that is none, CSS px
    std::size_t columns_ = 0;
    std::map<std::string, std::size_t> known_;  // rows by what they bound
};

}  // namespace tenter::solve
