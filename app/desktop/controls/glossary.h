// One-line explanations of the words that are Tenter's own, for tooltips: every panel uses the same sentence.
#pragma once

namespace tenter::desktop::glossary {

inline constexpr const char* band =
    "Band: a range of viewport widths between two breakpoints, with its own columns, spacing and sizes";
inline constexpr const char* ramp =
    "Ramp: a font size that changes in a straight line between two widths and is constant outside them";
inline constexpr const char* wish =
    "Wish: a condition that Solve sizes must satisfy, such as “heading in at most 2 lines”";
inline constexpr const char* variant =
    "Variant: the same cards with another column count, its own class and its own sizes";
inline constexpr const char* slack =
    "Slack: the smallest change of the text width, as a share of that width, that moves a line break; below "
    "0.25\u00A0% another browser may break the line differently";
inline constexpr const char* tightFit =
    "Tight fit: a line with less than 0.25\u00A0% slack; another browser may break it differently";
inline constexpr const char* wrapPoint =
    "Wrap point: a viewport width at which the line count of a text changes";
inline constexpr const char* leeway =
    "Leeway: the range in which a value can change while all wishes stay satisfied";
inline constexpr const char* measure = "Measure: the number of characters on a line";
inline constexpr const char* slot = "Slot: the box that a picture fills in the layout";

}  // namespace tenter::desktop::glossary
