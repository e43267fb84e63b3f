#include "markup/browser_sheet.h"

namespace tenter::markup {

namespace {

constexpr std::string_view browserSource = R"(
address, blockquote, center, dialog, div, figure, figcaption, footer, form, header, hr, legend, listing, main, p,
search, article, aside, h1, h2, h3, h4, h5, h6, hgroup, nav, section, dir, dd, dl, dt, menu, ol, ul, body, html
  { display: block }
li { display: list-item }
a, abbr, b, bdi, bdo, cite, code, em, i, img, kbd, mark, picture, q, s, samp, small, span, strong, sub, sup, time, u,
var, label { display: inline }
button { display: inline-block; padding: 1px 6px; border: 2px outset; text-align: center }
body { margin: 8px }
blockquote, figure { margin: 1em 40px }
p, dl, dir, menu, ol, ul, h1, h2, h3, h4, h5, h6 { margin: 1em 0 }
dd { margin-left: 40px }
dir, menu, ol, ul { padding-left: 40px }
a { color: blue; text-decoration: underline }
b, strong, h1, h2, h3, h4, h5, h6 { font-weight: bolder }
cite, em, i, var, address { font-style: italic }
code, kbd, samp { font-family: monospace; font-size: smaller }
big { font-size: larger } small, sub, sup { font-size: smaller }
h1 { font-size: 2em } h2 { font-size: 1.5em } h3 { font-size: 1.17em } h5 { font-size: .83em } h6 { font-size: .67em }
ins, u { text-decoration: underline } del, s { text-decoration: line-through }
sub { vertical-align: sub } sup { vertical-align: super }
)";

}  // namespace

const css::Sheet& browserSheet() {
    static const css::Sheet sheet = css::readSheet(browserSource);
    return sheet;
}

}  // namespace tenter::markup
