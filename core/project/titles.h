// The names of variants in sentences.
#pragma once

#include <cstddef>
#include <string>

namespace tenter::project {

struct Project;  // project.h
struct Variant;

/// The name of a variant. Its class if it has no name, or one that is only a column count such as `3` or
/// `3 columns`: the bands of a variant differ in their columns, so a count does not name it.
std::string titleOf(const Variant& variant);
/// The same in quotes for a sentence, with its class if another variant has the same name.
std::string quotedTitle(const Project& project, std::size_t variant);
/// The whole viewport widths of a band inside the project's range, and its columns: `591–930 px (2 columns)`.
std::string bandTitle(const Project& project, const Variant& variant, std::size_t band);
/// A role of text, or `picture`, `card` or `row`, in a sentence: `heading`.
std::string roleName(const std::string& role);
/// `1 column`, `3 columns`.
std::string columnsLabel(int columns);
/// The columns of a variant over its bands: `2 columns`, `1 to 3 columns`.
std::string columnsOf(const Project& project, const Variant& variant);

}  // namespace tenter::project
