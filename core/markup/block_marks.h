// Phrases that a stylesheet lays out as blocks.
#pragma once

#include "css/rules.h"
#include "markup/tree.h"

namespace tenter::markup {

/// Marks each phrase in `row` (`Node::isBlock`), such as a span, that the sheet makes a block and that is a
/// part of a card: not one inside a heading, a paragraph or a button, nor one beside text. `width`: the
/// viewport width in CSS px at which the sheet is read.
void markBlocks(Tree& page, NodeId row, const css::Sheet& sheet, double width);

}  // namespace tenter::markup
