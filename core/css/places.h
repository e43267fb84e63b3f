// Where in a style sheet something stands, and what is wrong there.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace tenter::css {

/// Both from 1; columns in characters, an ill-formed byte being one.
struct Place {
    std::size_t line = 1;
    std::size_t column = 1;
    friend bool operator==(const Place&, const Place&) = default;
};

/// The lines of a source, found once.
class Lines {
public:
    /// `source` must outlive it.
    explicit Lines(std::string_view source);
    /// The line that byte `offset` stands in, from 1. Logarithmic.
    [[nodiscard]] std::size_t lineOf(std::size_t offset) const;
    /// Takes as long as that line is.
    [[nodiscard]] Place placeOf(std::size_t offset) const;

private:
    std::string_view source_;
    std::vector<std::size_t> starts_;
};

/// What is wrong with a source, at which byte, and how to mend it.
struct Problem {
    std::size_t offset = 0;
    std::string what;
    std::string mend;
};
using Problems = std::vector<Problem>;

}  // namespace tenter::css
