#include "markup/page_measure.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <locale>
#include <span>
#include <sstream>

#include "markup/keep.h"
#include "markup/print.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::markup {

namespace {

constexpr std::string_view containerMark = "data-tenter-container";

/// CSS without text that would end the style element. HTML § 13.1.2.6.
std::string inStyleElement(std::string css) {
    for (std::size_t at = css.find("</"); at != std::string::npos; at = css.find("</", at + 2))
        css.insert(at + 1, "\\");
    return css;
}

/// Text as the value of an attribute in double quotation marks.
std::string inAttribute(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '&')
            out += "&amp;";
        else if (c == '"')
            out += "&quot;";
        else
            out += c;
    }
    return out;
}

std::string framedPage(Tree page, NodeId row, const std::vector<PageSheet>& sheets) {
    const NodeId parent = page[row].parent == noNode ? row : page[row].parent;
    page[parent].attributes.push_back({std::string(containerMark), ""});
    const NodeId head = page[0].firstChild;
    page.addElement(head, "meta", Space::Html,
                    {{"http-equiv", "Content-Security-Policy"},
                     {"content", "default-src 'none'; style-src 'unsafe-inline'; img-src data:"}});
    for (const PageSheet& sheet : sheets)
        page.addText(page.addElement(head, "style", Space::Html, {}), inStyleElement(sheet.whole()));
    return "<!doctype html>\n" + printed(page);
}

constexpr std::string_view script = R"(
addEventListener('load', () => {
  const frame = document.querySelector('iframe');
  const inner = frame.contentDocument;
  const parent = inner.querySelector('[data-tenter-container]');
  const style = frame.contentWindow.getComputedStyle(parent);
  const root = frame.contentWindow.getComputedStyle(inner.documentElement);
  const px = (text) => parseFloat(text) || 0;
  const lines = [];
  for (let width = least; width <= most; ++width) {
    frame.style.width = width + 'px';
    const box = parent.getBoundingClientRect();
    const left = box.left + px(style.borderLeftWidth) + px(style.paddingLeft);
    const right = box.right - px(style.borderRightWidth) - px(style.paddingRight);
    lines.push([width, left, right - left, px(root.fontSize)].join(' '));
  }
  fetch('result', {method: 'POST', cache: 'no-store', body: lines.join('\n')});
});
)";

/// The left edge and width of the content box of a container at a viewport width, CSS px.
struct Placed {
    double left = 0;
    double content = 0;
    double rootSize = 0;
};

double pxOf(const units::Length& length, double width) {
    units::LengthBasis basis;
    basis.percent = basis.vw = width;
    return length.resolve(basis);
}

Placed placedAt(const ThemePage& theme, double width) {
    const auto range =
        std::ranges::find_if(theme.ranges, [&](const ThemeRange& one) { return width <= one.upTo; });
    const ThemeRange& here = range == theme.ranges.end() ? theme.ranges.back() : *range;
    const project::Container& container = here.container;
    double outer = pxOf(container.width, width);
    if (!container.maxWidth.isNone()) outer = std::min(outer, pxOf(container.maxWidth, width));
    outer += container.addedWidth;
    const double left = pxOf(container.padding.left.value_or(units::Length()), width);
    const double right = pxOf(container.padding.right.value_or(units::Length()), width);
    double start = std::max(0.0, (width - outer) / 2);
    if (container.place == project::ContainerPlace::Start) start = 0;
    if (container.place == project::ContainerPlace::End) start = std::max(0.0, width - outer);
    start += container.shift.percent / 100 * width + container.shift.px;
    return {start + left, outer - left - right, here.rootSize.atZero + here.rootSize.perPx * width};
}

/// The widths at which one property differs.
struct Difference {
    double from = 0;
    double to = 0;
    double measured = 0;
    double expected = 0;
    bool any = false;

    void add(double width, double actual, double wanted) {
        constexpr double same = 0.5;
        if (std::abs(actual - wanted) <= same) return;
        if (!any) {
            from = width;
            measured = actual;
            expected = wanted;
        }
        to = width;
        any = true;
    }
    [[nodiscard]] std::string sentence(const std::string& property) const {
        return wording::say(
            "The browser's %1 differs from the theme's CSS as Tenter reads it, from %2 to %3: at %4 it is "
            "%5, "
            "not %6. Tenter imported what was measured.",
            {property, units::figure(from), units::px(to), units::px(from), units::px(measured),
             units::px(expected)});
    }
};

/// A straight line through the values at two widths; a flat one if they hardly differ.
css::Line through(double width, double value, double otherWidth, double otherValue) {
    constexpr double noise = 0.05;
    if (otherWidth <= width || std::abs(otherValue - value) < noise) return {(value + otherValue) / 2, 0};
    const double slope = (otherValue - value) / (otherWidth - width);
    return {value - slope * width, slope};
}

PagePiece pieceThrough(const MeasuredPage& one, const MeasuredPage& other) {
    PagePiece piece;
    piece.box.left = through(one.width, one.left, other.width, other.left);
    piece.box.width = through(one.width, one.content, other.width, other.content);
    piece.root = through(one.width, one.rootSize, other.width, other.rootSize);
    return piece;
}

bool fits(const PagePiece& piece, const MeasuredPage& page) {
    // Browsers round lengths to 1/64 px or 1/60 px.
    constexpr double rounding = 0.06;
    const auto isOn = [&](const css::Line& line, double value) {
        return std::abs(line.atZero + line.perPx * page.width - value) <= rounding;
    };
    return isOn(piece.box.left, page.left) && isOn(piece.box.width, page.content) &&
           isOn(piece.root, page.rootSize);
}

/// The longest pieces on whose lines the measured values are. A piece ends at a breakpoint of the theme if
/// there is one before the next width, else just below that width.
std::vector<PagePiece> piecesOf(const std::vector<MeasuredPage>& measured,
                                const std::vector<double>& breakpoints) {
    constexpr double below = 0.02;
    std::vector<PagePiece> pieces;
    for (std::size_t first = 0; first < measured.size();) {
        std::size_t last = first;
        PagePiece piece = pieceThrough(measured[first], measured[first]);
        while (last + 1 < measured.size()) {
            const PagePiece longer = pieceThrough(measured[first], measured[last + 1]);
            const auto inside = std::span(measured).subspan(first, last + 2 - first);
            if (!std::ranges::all_of(inside, [&](const MeasuredPage& one) { return fits(longer, one); }))
                break;
            piece = longer;
            ++last;
        }
        piece.from = measured[first].width;
        piece.upTo = measured[last].width;
        if (last + 1 < measured.size()) {
            const double next = measured[last + 1].width;
            piece.upTo = next - below;
            for (const double breakpoint : breakpoints)
                if (breakpoint >= measured[last].width && breakpoint < next) piece.upTo = breakpoint;
        }
        pieces.push_back(piece);
        first = last + 1;
    }
    return pieces;
}

}  // namespace

std::string measuringPage(const Tree& page, NodeId row, const std::vector<PageSheet>& sheets, int narrowest,
                          int widest) {
    return "<!doctype html>\n<html lang=\"en\"><meta charset=\"utf-8\"><title>Measuring</title>"
           "<link rel=\"icon\" href=\"data:,\">\n"
           "<style>body { margin: 0 } iframe { border: 0; display: block; height: 900px; width: 320px "
           "}</style>\n"
           "<script>\n'use strict';\nconst least = " +
           std::to_string(narrowest) + ", most = " + std::to_string(widest) + ";" + std::string(script) +
           "</script>\n<iframe title=\"Page\" scrolling=\"no\" sandbox=\"allow-same-origin\" srcdoc=\"" +
           inAttribute(framedPage(page, row, sheets)) + "\"></iframe>\n</html>\n";
}

std::optional<std::vector<MeasuredPage>> readMeasured(std::string_view text) {
    std::istringstream stream{std::string(text)};
    stream.imbue(std::locale::classic());
    std::vector<MeasuredPage> measured;
    MeasuredPage one;
    while (stream >> one.width >> one.left >> one.content >> one.rootSize) {
        if (!measured.empty() && one.width <= measured.back().width) return std::nullopt;
        measured.push_back(one);
    }
    return measured.empty() || !stream.eof() ? std::nullopt : std::optional(std::move(measured));
}

bool correct(ThemePage& theme, const std::vector<MeasuredPage>& measured) {
    Difference content;
    Difference left;
    Difference root;
    for (const MeasuredPage& one : measured) {
        const Placed expected = placedAt(theme, one.width);
        content.add(one.width, one.content, expected.content);
        left.add(one.width, one.left, expected.left);
        root.add(one.width, one.rootSize, expected.rootSize);
    }
    if (!content.any && !left.any && !root.any) return false;
    std::vector<PagePiece> pieces = piecesOf(measured, theme.breakpoints);
    bool exact = true;
    for (PagePiece& piece : pieces) {
        const auto range =
            std::ranges::find_if(theme.ranges, [&](const ThemeRange& one) { return piece.upTo <= one.upTo; });
        piece.background = (range == theme.ranges.end() ? theme.ranges.back() : *range).container.background;
    }
    theme.ranges = rangesOf(pieces, exact);
    theme.ranges.back().upTo = std::numeric_limits<double>::infinity();
    theme.cautions.clear();
    theme.notes.clear();
    theme.unread.clear();
    if (content.any) theme.cautions.push_back(content.sentence(wording::say("width of the container")));
    if (left.any) theme.cautions.push_back(left.sentence(wording::say("position of the container")));
    if (root.any) theme.cautions.push_back(root.sentence(wording::say("root font size")));
    if (!exact) theme.unread.push_back(inexactPlace());
    theme.cautions.insert(theme.cautions.end(), theme.unread.begin(), theme.unread.end());
    return true;
}

}  // namespace tenter::markup
