// What a remedy does, in words.
#pragma once

#include <string>
#include <vector>

#include "remedy/remedies.h"

namespace tenter::remedy {

/// `Align parts of neighbouring cards, in the band 591–930 px (2 columns)`.
std::string titleOf(const Remedy& remedy);

/// What it does besides removing the finding, in short sentences: `Removes 1 other finding. Adds 1 note.
/// Boxes move by up to 24 px, at 931 px.` For a remedy in part, first: `From 31 % to 4 % of widths.` Shares
/// are of `shareOf`, `widths` or `visits`.
std::string effectOf(const Remedy& remedy, const std::string& shareOf);

/// How many findings come and go: `Removes 1 warning and 2 notes. Adds 1 note in the variant “Home
/// page”.`, or `No finding comes or goes.` Variants are named only if the project has several.
std::string summaryOf(const project::Project& project, const Effects& effects);

/// Each finding that is removed, added or widened as a sentence: `Removes: the button “Book” has 2 lines; …`.
std::vector<std::string> changesOf(const project::Project& project, const Effects& effects);

/// A finding as a sentence, with the variant that has it if there are several.
std::string sentenceOf(const project::Project& project, const Change& change);

}  // namespace tenter::remedy
