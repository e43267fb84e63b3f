// Names of elements, roles and problems in the import dialog.
#pragma once

#include <QString>

#include "page_import/row_import.h"

namespace tenter::desktop::page_import {

/// `h3 .walk-title “Low tide”`: tag, id, classes and the element's own text without that of its children.
QString elementTitle(const markup::Tree& tree, markup::NodeId node);
/// The first words of an element, at most `most` characters, white space collapsed. For a picture: its
/// alternative text, or its file name if it has none.
QString firstWords(const markup::Tree& tree, markup::NodeId node, qsizetype most = 60);
/// The role of an element in the row; empty: none.
std::string roleOf(const markup::GivenRow& row, markup::NodeId node);
/// A problem as a sentence: `Nothing is selected; write another selector.`
QString problemSentence(const project::Problem& problem);
/// All problems, one on each line.
QString problemSentences(const project::Problems& problems);
/// `34 kB`.
QString sizeTitle(qsizetype bytes);

}  // namespace tenter::desktop::page_import
