// Projects for the tests: an invented station's walks, and projects drawn at random.
#pragma once

#include <random>
#include <string>

#include "project/project.h"

namespace tenter::tests {

/// Two cards of picture, heading, body and button; variants walks-pair (2 columns, 1 up to 640 px) and
/// walks-trio (3 columns, 2 up to 980.5 px, 1 up to 640 px).
project::Project walks();

/// The sample project with that name, such as `shore-walks`.
project::Project shipped(const std::string& name);

/// A card that says `copy` in a body.
project::Card saying(const std::string& copy);

/// How often `what` stands in `text`.
std::size_t count(const std::string& text, const std::string& what);

/// A sound project with settings drawn from `random`, names and copy full of characters that are special to
/// CSS and HTML.
project::Project randomProject(std::mt19937& random);

}  // namespace tenter::tests
