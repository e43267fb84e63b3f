// The files that are made from the description of a program.
#pragma once

#include <string>
#include <vector>

#include "described_program.h"

namespace tenter::describe {

/// A manual page of section 1. `date`: as mdoc(7) writes it, such as `November 25, 2026`. `seeAlso`: names of
/// other pages of this section.
std::string manualPage(const Program& program, const std::string& date,
                       const std::vector<std::string>& seeAlso);

/// Completions of the program's verbs, options, values and files, each for one shell.
std::string bashCompletion(const Program& program);
std::string zshCompletion(const Program& program);
std::string fishCompletion(const Program& program);

/// What a value is, for the completion of files.
enum class ValueKind { Word, File, Project, Folder };
/// The kind of what an option takes, or of an argument without a name.
ValueKind kindOf(const Argument& argument);

/// The first sentence of a description, without its full stop.
std::string firstSentence(const std::string& description);

}  // namespace tenter::describe
