// Linear programmes: columns and rows with bounds, a cost that is least. GLPK does the work.
#pragma once

#include <cstddef>
#include <limits>
#include <memory>
#include <vector>

namespace tenter::solve {

inline constexpr double unbounded = std::numeric_limits<double>::infinity();

/// `times` a column.
struct Term {
    std::size_t column = 0;
    double times = 0;
    friend bool operator==(const Term&, const Term&) = default;
};
/// A sum of columns, each named once.
using Form = std::vector<Term>;
/// `form − times · taken`.
Form difference(Form form, const Form& taken, double times = 1);
Form scaled(Form form, double times);

/// A linear programme that may be altered and solved again; it then goes on from where it was. Columns and
/// rows are counted from 0. Belongs to the thread that made it, as GLPK's memory does.
class Programme {
public:
    Programme();
    ~Programme();
    Programme(const Programme&) = delete;
    Programme& operator=(const Programme&) = delete;

    /// Bounds may be infinite; `least` ≤ `most`.
    std::size_t addColumn(double least, double most, double cost = 0);
    /// A column that only `minimiseWhole` holds to whole numbers.
    std::size_t addWholeColumn(double least, double most);
    std::size_t addRow(const Form& form, double least, double most);
    /// A column that is at least |form − value| and costs `cost`, not below 0.
    struct Distance {
        std::size_t column = 0;
        std::size_t above = 0, below = 0;  ///< rows, for what is more than `value` and what is less
    };
    Distance addDistance(const Form& form, double value, double cost);
    /// Measures `distance` from another value.
    void moveDistance(const Distance& distance, double value);
    void boundColumn(std::size_t column, double least, double most);
    void boundRow(std::size_t row, double least, double most);
    void setCost(std::size_t column, double cost);

    enum class Outcome {
        Best,     ///< the least cost has been found
        None,     ///< no values keep all bounds
        NoLeast,  ///< the cost falls without end
        GivenUp,  ///< too long, or numbers too unlike each other
    };
    Outcome minimise();
    /// The same, with whole columns whole, by branch and bound: `Best` within a hundredth, or the best that
    /// was found in time.
    Outcome minimiseWhole();

    // After `Best`; after `minimiseWhole` there are no prices.
    [[nodiscard]] double value(std::size_t column) const;
    [[nodiscard]] double cost() const;
    /// How much the least cost rises for each unit by which the row's bound does; 0 where it does not bind.
    [[nodiscard]] double price(std::size_t row) const;

private:
    struct Held;
    std::unique_ptr<Held> held_;
};

}  // namespace tenter::solve
