// The address that markup gives to a folder of cut pictures.
#pragma once

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <string>

#include "opened.h"

namespace tenter::command {

/// Adds --address.
void addPictureAddress(CLI::App& verb, std::string& address);

/// The given address, ending in `/`; if none is given, the relative one of `folder` from the file of --out,
/// or without it from the project file.
std::string pictureAddress(const Arguments& arguments, const std::string& folder, const std::string& given);

}  // namespace tenter::command
