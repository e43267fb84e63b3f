// The classes that the elements of a row need for the stylesheet to reach them.
#pragma once

#include <string>
#include <vector>

#include "project/project.h"

namespace tenter::emit {

/// An element of the row and its class.
struct ClassName {
    std::string element;  ///< `row`, `card`, `picture`, or a role of text
    std::string name;     ///< without a leading dot
    friend bool operator==(const ClassName&, const ClassName&) = default;
};

/// The class of the row for variant `variant`, of its cards, and of each kind of part that cards use, in that
/// order. Where pictures differ by their position in the card, each position has a class of its own besides.
std::vector<ClassName> classNames(const project::Project& project, std::size_t variant);

/// The class of a card or of a part: `season-card`, `season-heading`.
std::string partClass(const project::Project& project, const std::string& part);

/// `classNames` on one line: `row .season-trio, card .season-card, heading .season-heading`.
std::string classLine(const project::Project& project, std::size_t variant);

}  // namespace tenter::emit
