// What variants are called.
#pragma once

#include <string>

namespace tenter::project {

struct Project;  // project.h
struct Variant;

/// What people call a variant: its name, `3 columns` for a bare `3`; its class if it has none.
std::string titleOf(const Variant& variant);
/// The same in a sentence, in quotes, with its class where another variant is called the same.
std::string quotedTitle(const Project& project, std::size_t variant);
/// `1 column`, `3 columns`.
std::string inColumns(int columns);

}  // namespace tenter::project
