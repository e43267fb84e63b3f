// The fonts of a page's texts: their families and what follows from their metrics.
#pragma once

#include <string>
#include <vector>

#include "start/page_piece.h"

namespace tenter::start {

/// The families of an element as the page spells them; `serif` if it has none.
std::vector<std::string> familiesIn(const PieceContext& context, markup::NodeId node);

/// `line-height: normal` as a multiple of the font size in the middle of the interval, from the metrics of
/// the first installed family, rounded as browsers do it. CSS Inline 3 § 5.2.
double normalLineHeight(const PieceContext& context, markup::NodeId node);

/// The room in CSS px below a picture that stands in a line of `parent`: half the leading and the descent.
/// CSS 2 § 10.8.1.
css::Line roomBelowBaseline(const PieceContext& context, markup::NodeId parent);

}  // namespace tenter::start
