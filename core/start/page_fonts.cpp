#include "start/page_fonts.h"

#include <hb.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "css/ascii.h"
#include "css/token_cursor.h"
#include "text/fonts.h"

namespace tenter::start {

namespace {

using css::Line;
using markup::NodeId;

/// Metrics of a face in em.
struct Metrics {
    double ascent = 0.9;
    double descent = 0.22;
    double gap = 0;
};

Metrics metricsOf(const PieceContext& context, NodeId node) {
    const std::string weight = context.styles.value(node, "font-weight");
    const double number = std::strtod(weight.c_str(), nullptr);
    const double used = weight == "bold" || weight == "bolder" ? 700 : number >= 1 ? number : 400;
    const bool isItalic = context.styles.value(node, "font-style").starts_with("italic");
    const auto faces = context.fonts.find(familiesIn(context, node), used, isItalic);
    if (faces.empty() || faces.front() == nullptr) return {};
    const text::Face& face = *faces.front();
    hb_font_extents_t extents{};
    const bool hasExtents = hb_font_get_h_extents(face.font(), &extents) != 0;
    return {face.ascent(), face.descent(), hasExtents ? extents.line_gap / face.scale() : 0};
}

}  // namespace

std::vector<std::string> familiesIn(const PieceContext& context, NodeId node) {
    std::vector<std::string> families;
    std::string family;
    const std::string list = context.styles.value(node, "font-family");
    for (css::TokenCursor cursor(list);; cursor.step()) {
        const css::Token& token = cursor.token();
        const bool isEnd = token.is(css::TokenKind::End);
        if (token.is(css::TokenKind::Comma) || isEnd) {
            if (!family.empty()) families.push_back(context.notes.spelled(family));
            family.clear();
            if (isEnd) break;
        } else if (!token.is(css::TokenKind::Whitespace)) {
            family.append(family.empty() ? "" : " ").append(token.text);
        }
    }
    if (families.empty()) families.emplace_back("serif");
    return families;
}

double normalLineHeight(const PieceContext& context, NodeId node) {
    const double size = std::max(1.0, context.at(context.styles.fontSize(node)));
    const Metrics metrics = metricsOf(context, node);
    return (std::round(metrics.ascent * size) + std::round(metrics.descent * size) + metrics.gap * size) /
           size;
}

Line roomBelowBaseline(const PieceContext& context, NodeId parent) {
    const Line size = context.styles.fontSize(parent);
    const Metrics metrics = metricsOf(context, parent);
    const double px = context.at(size);
    const double ascent = std::round(metrics.ascent * px);
    const double descent = std::round(metrics.descent * px);
    const auto height = context.styles.lineHeight(parent);
    const double line = height ? context.at(*height) : ascent + descent + metrics.gap * px;
    return {std::max(0.0, line - ascent - std::floor((line - ascent - descent) / 2)), 0};
}

}  // namespace tenter::start
