// The rules of the Design Tokens Format Module 2025.10 and its Color Module for the types that Tenter emits,
// after the modules and their published JSON schemas.
#pragma once

#include <string>
#include <vector>

namespace tenter::tests {

/// What breaks the rules in a design tokens file, each as `POINTER: what`.
std::vector<std::string> tokenFaults(const std::string& json);

}  // namespace tenter::tests
