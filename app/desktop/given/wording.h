// How the dialog names elements, roles and problems.
#pragma once

#include <QString>

#include "given/row_reading.h"

namespace tenter::desktop::given {

/// `h3 .walk-title “Low tide”`: tag, id, classes, the text that stands in the element itself.
QString elementTitle(const markup::Tree& tree, markup::NodeId node);
/// The first words in an element, white space collapsed; a picture's alternative text, else its address.
QString firstWords(const markup::Tree& tree, markup::NodeId node, qsizetype most = 60);
/// The role an element has in the row; empty: none.
std::string roleOf(const markup::GivenRow& row, markup::NodeId node);
/// `nothing is selected; write another selector`, from a capital letter, with a full stop.
QString problemSentence(const project::Problem& problem);
/// Each on a line of its own.
QString problemSentences(const project::Problems& problems);
/// `34 kB`.
QString sizeTitle(qsizetype bytes);

}  // namespace tenter::desktop::given
