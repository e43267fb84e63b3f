// What an import found, as JSON.
#pragma once

#include <string>
#include <vector>

#include "start/page_project.h"

namespace tenter::start {

/// A JSON object of the format `tenter-intake`, version 1: `elements` with the declarations for each role,
/// `notUnderstood` with what the project does not hold and what that means for the result, and `report` with
/// all sentences. `form`: what the input is, in a word. Widths are CSS px.
std::string findingsJson(const std::string& file, const std::string& form,
                         const std::vector<FoundElement>& found, const std::vector<PageNote>& notes,
                         const std::vector<std::string>& report);

}  // namespace tenter::start
