// One-line explanations of the words that are Tenter's own, for tooltips: every panel uses the same sentence.
#pragma once

#include <QtGlobal>

namespace tenter::desktop::glossary {

inline constexpr const char* band = QT_TRANSLATE_NOOP(
    "QObject",
    "Band: a range of viewport widths between two breakpoints, with its own columns, spacing and sizes");
inline constexpr const char* ramp = QT_TRANSLATE_NOOP(
    "QObject",
    "Ramp: a font size that changes in a straight line between two widths and is constant outside them");
inline constexpr const char* wish = QT_TRANSLATE_NOOP(
    "QObject", "Wish: a condition that Solve sizes must satisfy, such as “heading in at most 2 lines”");
inline constexpr const char* variant = QT_TRANSLATE_NOOP(
    "QObject", "Variant: the same cards with another column count, its own class and its own sizes");
inline constexpr const char* slack = QT_TRANSLATE_NOOP(
    "QObject",
    "Slack: the smallest change of the text width, as a share of that width, that moves a line break; below "
    "0.25\u00A0% another browser may break the line differently");
inline constexpr const char* tightFit = QT_TRANSLATE_NOOP(
    "QObject",
    "Tight fit: a line with less than 0.25\u00A0% slack; another browser may break it differently");
inline constexpr const char* wrapPoint =
    QT_TRANSLATE_NOOP("QObject", "Wrap point: a viewport width at which the line count of a text changes");
inline constexpr const char* leeway = QT_TRANSLATE_NOOP(
    "QObject", "Leeway: the range in which a value can change while all wishes stay satisfied");
inline constexpr const char* measure =
    QT_TRANSLATE_NOOP("QObject", "Measure: the number of characters on a line");
inline constexpr const char* slot =
    QT_TRANSLATE_NOOP("QObject", "Slot: the box that a picture fills in the layout");

}  // namespace tenter::desktop::glossary
