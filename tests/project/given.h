// What the tests of project files share.
#pragma once

#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "project/file.h"

namespace tenter::project {

inline std::string contentOf(const std::filesystem::path& file) {
    std::ifstream stream(file, std::ios::binary);
    std::stringstream content;
    content << stream.rdbuf();
    return content.str();
}

inline std::filesystem::path testFile(const std::string& name) {
    return std::filesystem::path(TENTER_SOURCE_DIR) / "tests/project" / name;
}

/// True if the problem says what to do, or which values are allowed.
inline bool saysHowToFix(const Problem& problem) {
    return !problem.fix.empty() || problem.what.find(" must be ") != std::string::npos;
}

/// Every problem on a line of its own.
inline std::string linesOf(const Problems& problems) {
    std::string text;
    for (const Problem& problem : problems)
        text += problem.line() + "\n";
    return text;
}

/// A sound project from text; a failure of the test if it is none.
inline Project sound(const std::string& text) {
    Problems problems;
    const std::optional<Project> project = parse(text, "walks", {}, problems);
    EXPECT_TRUE(project && problems.empty()) << linesOf(problems);
    return project.value_or(Project{});
}

/// The problems of text that is no sound project; a failure of the test if it is one.
inline Problems problemsOf(const std::string& text, const std::filesystem::path& folder = {}) {
    Problems problems;
    const std::optional<Project> project = parse(text, "walks", folder, problems);
    EXPECT_FALSE(project);
    EXPECT_FALSE(problems.empty());
    return problems;
}

/// A small project as JSON, to be spoilt.
inline Json smallProject() {
    return Json::parse(R"({"format": "tenter-project", "version": 1, "name": "Walks",
        "cards": [{"parts": [{"role": "heading", "copy": "Low tide walk"},
                             {"picture": "shore.png", "size": [1200, 800]}]}],
        "variants": [{"class": "walks-pair", "bands": [{"upTo": 560}, {}]}]})");
}

/// The small project with `value` at JSON pointer `place`.
inline std::string smallProjectWith(const std::string& place, const Json& value) {
    Json json = smallProject();
    json[Json::json_pointer(place)] = value;
    return json.dump();
}

inline std::string smallProjectWithout(const std::string& key) {
    Json json = smallProject();
    json.erase(key);
    return json.dump();
}

}  // namespace tenter::project
