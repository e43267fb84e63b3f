// Positions in a stylesheet, and problems at them.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace tenter::css {

/// A position. Line and column start at 1; columns count characters, an ill-formed byte counts as one.
struct Place {
    std::size_t line = 1;
    std::size_t column = 1;
    friend bool operator==(const Place&, const Place&) = default;
};

/// The start of each line of a source.
class Lines {
public:
    /// `source` must outlive the object.
    explicit Lines(std::string_view source);
    /// The line of byte `offset`, from 1. Takes logarithmic time.
    [[nodiscard]] std::size_t lineOf(std::size_t offset) const;
    /// The line and column of byte `offset`. Takes time in proportion to the length of the line.
    [[nodiscard]] Place placeOf(std::size_t offset) const;

private:
    std::string_view source_;
    std::vector<std::size_t> starts_;
};

/// What is wrong with a source, at which byte, and how to fix it. Both texts are full sentences.
struct Problem {
    std::size_t offset = 0;
    std::string what;
    std::string fix;
};
using Problems = std::vector<Problem>;

}  // namespace tenter::css
