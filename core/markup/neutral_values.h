// The neutral values of the properties that a theme can set for a row and that change its layout or look.
#pragma once

#include <string_view>

namespace tenter::markup {

/// A neutral declaration that overrides one of a theme.
struct Neutral {
    std::string_view property;
    std::string_view value;
    std::string_view why;  ///< the comment in the stylesheet
    /// True for a property that themes often set. It is printed if the theme is not known. Common practice,
    /// no source.
    bool usual = false;
};

/// Why a neutral value is printed.
namespace neutral {
inline constexpr std::string_view columns = "overrides the theme's columns";
inline constexpr std::string_view heights = "as high as its content";
inline constexpr std::string_view place = "overrides the theme's position";
inline constexpr std::string_view measures = "overrides the theme's width";
inline constexpr std::string_view looks = "overrides the theme's look";
inline constexpr std::string_view lettering = "overrides the theme's type";
}  // namespace neutral

/// Without grid-column: the place of the row in a grid around it is that of the page.
inline constexpr Neutral rowResets[] = {
    {"float", "none", neutral::columns, true},
    {"position", "static", neutral::place},
    {"flex-direction", "row", neutral::columns},
    {"align-items", "normal", neutral::columns},
    {"align-content", "normal", neutral::columns},
    {"justify-items", "normal", neutral::columns},
    {"grid-auto-flow", "row", neutral::columns},
    {"grid-auto-columns", "auto", neutral::columns},
    {"grid-auto-rows", "auto", neutral::columns},
    {"grid-template-rows", "none", neutral::columns},
    {"grid-template-areas", "none", neutral::columns},
    {"height", "auto", neutral::heights},
    {"min-width", "0", neutral::columns},
    {"min-height", "0", neutral::heights},
    {"max-height", "none", neutral::heights},
    {"overflow", "visible", neutral::heights},
    {"border", "0", neutral::looks},
    {"transform", "none", neutral::place},
    {"aspect-ratio", "auto", neutral::heights},
    {"inset", "auto", neutral::place},
    {"flex", "0 1 auto", neutral::place},
    {"order", "0", neutral::place},
    {"align-self", "auto", neutral::place},
    {"justify-self", "auto", neutral::place},
    {"columns", "auto", neutral::columns},
    {"writing-mode", "horizontal-tb", neutral::lettering},
    {"contain", "none", neutral::heights},
    {"content-visibility", "visible", neutral::heights},
    {"zoom", "1", neutral::measures},
    {"translate", "none", neutral::place},
    {"scale", "none", neutral::place},
    {"rotate", "none", neutral::place},
};
inline constexpr Neutral cardResets[] = {
    {"float", "none", neutral::columns, true},
    {"clear", "none", neutral::columns},
    {"max-width", "none", neutral::columns, true},
    {"grid-column", "auto", neutral::columns, true},
    {"order", "0", neutral::columns},
    {"align-self", "auto", neutral::columns},
    {"justify-self", "auto", neutral::columns},
    {"inset", "auto", neutral::place},
    {"flex-wrap", "nowrap", neutral::columns},
    {"align-items", "normal", neutral::columns},
    {"align-content", "normal", neutral::columns},
    {"justify-content", "normal", neutral::columns},
    {"column-gap", "normal", neutral::columns},
    {"height", "auto", neutral::heights},
    {"min-height", "0", neutral::heights, true},
    {"max-height", "none", neutral::heights},
    {"overflow", "visible", neutral::heights},
    {"transform", "none", neutral::place},
    {"aspect-ratio", "auto", neutral::heights},
    {"columns", "auto", neutral::columns},
    {"writing-mode", "horizontal-tb", neutral::lettering},
    {"contain", "none", neutral::heights},
    {"content-visibility", "visible", neutral::heights},
    {"zoom", "1", neutral::measures},
    {"translate", "none", neutral::place},
    {"scale", "none", neutral::place},
    {"rotate", "none", neutral::place},
};
inline constexpr Neutral pictureResets[] = {
    {"float", "none", neutral::place, true}, {"min-width", "0", neutral::measures},
    {"min-height", "0", neutral::measures},  {"max-height", "none", neutral::measures, true},
    {"flex", "0 1 auto", neutral::place},    {"order", "0", neutral::place},
    {"grid-column", "auto", neutral::place}, {"object-position", "50% 50%", neutral::looks},
    {"box-shadow", "none", neutral::looks},  {"opacity", "1", neutral::looks},
    {"transform", "none", neutral::place},   {"contain", "none", neutral::heights},
    {"zoom", "1", neutral::measures},        {"content-visibility", "visible", neutral::heights},
    {"translate", "none", neutral::place},   {"scale", "none", neutral::place},
    {"rotate", "none", neutral::place},
};
inline constexpr Neutral textResets[] = {
    {"float", "none", neutral::place, true},
    {"clear", "none", neutral::place},
    {"position", "static", neutral::place, true},
    {"flex", "0 1 auto", neutral::place},
    {"order", "0", neutral::place},
    {"grid-column", "auto", neutral::place},
    {"width", "auto", neutral::measures, true},
    {"min-width", "0", neutral::measures, true},
    {"max-width", "none", neutral::measures, true},
    {"height", "auto", neutral::heights},
    {"max-height", "none", neutral::heights},
    {"overflow", "visible", neutral::heights},
    {"columns", "auto", neutral::measures},
    {"transform", "none", neutral::place},
    {"text-decoration", "none", neutral::looks},
    {"box-shadow", "none", neutral::looks},
    {"opacity", "1", neutral::looks},
    {"inset", "auto", neutral::place},
    {"aspect-ratio", "auto", neutral::heights},
    {"writing-mode", "horizontal-tb", neutral::lettering},
    {"contain", "none", neutral::heights},
    {"content-visibility", "visible", neutral::heights},
    {"zoom", "1", neutral::measures},
    {"translate", "none", neutral::place},
    {"scale", "none", neutral::place},
    {"rotate", "none", neutral::place},
    {"text-box", "normal", neutral::heights},
};
/// A transition of lengths would lag behind the width of the page, and an animation can change boxes.
inline constexpr Neutral motionResets[] = {
    {"transition", "none", "overrides the theme's transition of all properties"},
    {"animation", "none", "overrides the theme's animation"},
};
/// For the first letter or line of a text, which themes enlarge.
inline constexpr Neutral firstResets[] = {
    {"float", "none", neutral::lettering},
    {"margin", "0", neutral::lettering},
    {"padding", "0", neutral::lettering},
    {"border", "0", neutral::lettering},
    {"font-family", "inherit", neutral::lettering},
    {"font-size", "inherit", neutral::lettering},
    {"font-weight", "inherit", neutral::lettering},
    {"font-style", "inherit", neutral::lettering},
    {"line-height", "inherit", neutral::lettering},
    {"letter-spacing", "inherit", neutral::lettering},
    {"text-transform", "inherit", neutral::lettering},
    {"initial-letter", "normal", neutral::lettering},
};
/// Inherited properties, which ancestors can set.
inline constexpr Neutral letterResets[] = {
    {"text-indent", "0", neutral::lettering},
    {"white-space", "normal", neutral::lettering},
    {"word-break", "normal", neutral::lettering},
    {"line-break", "auto", neutral::lettering},
    {"text-align-last", "auto", neutral::lettering},
    {"hanging-punctuation", "none", neutral::lettering},
    {"font-variant-caps", "normal", neutral::lettering},
    {"font-variant-numeric", "normal", neutral::lettering},
    {"font-stretch", "normal", neutral::lettering},
    {"font-kerning", "auto", neutral::lettering},
    {"font-feature-settings", "normal", neutral::lettering},
    {"font-size-adjust", "none", neutral::lettering},
    {"font-variant-east-asian", "normal", neutral::lettering},
    {"font-variant-position", "normal", neutral::lettering},
    {"font-variant-alternates", "normal", neutral::lettering},
    {"font-variation-settings", "normal", neutral::lettering},
    {"text-rendering", "auto", neutral::lettering},
    {"text-justify", "auto", neutral::lettering},
    {"text-shadow", "none", neutral::looks},
};
/// For elements around the row, which take no room.
inline constexpr Neutral outerResets[] = {
    {"display", "block", neutral::columns},    {"width", "auto", neutral::columns},
    {"min-width", "0", neutral::columns},      {"max-width", "none", neutral::columns},
    {"height", "auto", neutral::heights},      {"min-height", "0", neutral::heights},
    {"max-height", "none", neutral::heights},  {"margin", "0", neutral::columns},
    {"padding", "0", neutral::columns},        {"border", "0", neutral::columns},
    {"float", "none", neutral::columns, true}, {"position", "static", neutral::place},
    {"overflow", "visible", neutral::heights}, {"columns", "auto", neutral::columns},
    {"transform", "none", neutral::place},
};
/// For a link around parts, which stays a box for its focus outline.
inline constexpr Neutral linkResets[] = {
    {"float", "none", neutral::place},         {"position", "static", neutral::place},
    {"flex", "0 1 auto", neutral::place},      {"order", "0", neutral::place},
    {"align-self", "auto", neutral::place},    {"justify-content", "normal", neutral::place},
    {"align-items", "normal", neutral::place}, {"row-gap", "normal", neutral::place},
    {"width", "auto", neutral::measures},      {"min-width", "0", neutral::measures},
    {"max-width", "none", neutral::measures},  {"height", "auto", neutral::heights},
    {"min-height", "0", neutral::heights},     {"max-height", "none", neutral::heights},
    {"overflow", "visible", neutral::heights}, {"margin", "0", neutral::place},
    {"padding", "0", neutral::place},          {"border", "0", neutral::looks},
    {"transform", "none", neutral::place},
};
/// For elements inside a part, whose type is that of the part.
inline constexpr Neutral innerResets[] = {
    {"display", "inline", neutral::lettering},
    {"float", "none", neutral::lettering},
    {"position", "static", neutral::lettering},
    {"margin", "0", neutral::lettering},
    {"padding", "0", neutral::lettering},
    {"border", "0", neutral::lettering},
    {"font-family", "inherit", neutral::lettering},
    {"font-size", "inherit", neutral::lettering},
    {"line-height", "inherit", neutral::lettering},
    {"letter-spacing", "inherit", neutral::lettering},
    {"word-spacing", "inherit", neutral::lettering},
    {"text-transform", "inherit", neutral::lettering},
    {"white-space", "inherit", neutral::lettering},
    {"vertical-align", "baseline", neutral::lettering},
    {"word-break", "inherit", neutral::lettering},
    {"overflow-wrap", "inherit", neutral::lettering},
    {"hyphens", "inherit", neutral::lettering},
    {"font-stretch", "inherit", neutral::lettering},
    {"font-kerning", "inherit", neutral::lettering},
    {"font-feature-settings", "inherit", neutral::lettering},
    {"font-variant-caps", "inherit", neutral::lettering},
    {"font-variant-numeric", "inherit", neutral::lettering},
    {"font-variant-ligatures", "inherit", neutral::lettering},
    {"font-size-adjust", "inherit", neutral::lettering},
    {"text-rendering", "inherit", neutral::lettering},
    {"zoom", "1", neutral::lettering},
};
/// For elements inside a part that are not emphasis.
inline constexpr Neutral plainResets[] = {
    {"font-weight", "inherit", neutral::lettering},
    {"font-style", "inherit", neutral::lettering},
};
/// For elements inside a part that are not links; links have rules of their own.
inline constexpr Neutral lookResets[] = {
    {"color", "inherit", neutral::looks},
    {"background", "none", neutral::looks},
    {"text-decoration", "none", neutral::looks},
};

/// Properties whose values the stylesheet always sets, and that change the layout.
inline constexpr std::string_view rowProperties[] = {
    "box-sizing", "display",     "grid-template-columns", "column-gap", "row-gap",  "width",
    "max-width",  "margin-left", "margin-right",          "padding",    "font-size"};
inline constexpr std::string_view cardProperties[] = {"box-sizing", "display",   "flex-direction",
                                                      "width",      "min-width", "margin",
                                                      "padding",    "border",    "font-size"};
inline constexpr std::string_view pictureProperties[] = {"box-sizing", "display",      "width",  "max-width",
                                                         "height",     "aspect-ratio", "margin", "padding",
                                                         "border",     "align-self"};
inline constexpr std::string_view textProperties[] = {
    "box-sizing",     "display",      "margin",     "padding",        "border",
    "font-family",    "font-weight",  "font-style", "font-size",      "line-height",
    "letter-spacing", "word-spacing", "text-align", "text-transform", "text-wrap",
    "overflow-wrap",  "hyphens",      "min-height", "align-self"};

}  // namespace tenter::markup
