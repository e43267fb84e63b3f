// The option that names an audience.
#pragma once

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <string>

#include "checks/audience.h"

namespace tenter::command {

/// Adds --audience; `file` becomes the name of its file.
void addAudience(CLI::App& verb, std::string& file);

/// Reads the audience in `file` into `audience`, or nothing if `file` is empty. False if it cannot be used;
/// the reason has been printed.
bool readVisits(const std::string& file, checks::Audience& audience);

}  // namespace tenter::command
