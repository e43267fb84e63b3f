// Rows for tests: projects from JSON text, prepared for layout.
#pragma once

#include <gtest/gtest.h>

#include <string>

#include "layout/layout.h"
#include "project/file.h"

namespace tenter::test {

/// A project with `cards` and `style` and one variant with `bands`; each argument is JSON text.
inline project::Project projectOf(const std::string& style, const std::string& bands,
                                  const std::string& cards, const std::string& more = "") {
    project::Problems problems;
    const std::string text = R"({"format": "tenter-project", "version": 1, "name": "Test", )" + more +
                             R"("style": )" + style + R"(, "cards": )" + cards +
                             R"(, "variants": [{"class": "row", "bands": )" + bands + "}]}";
    auto project = project::parse(text, "test", {}, problems);
    for (const project::Problem& problem : problems)
        ADD_FAILURE() << problem.line();
    return project.value_or(project::Project());
}

inline layout::PreparedRow prepareRow(const project::Project& project) {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    return {project, 0, store, text::blink()};
}

/// A card of a heading, a paragraph and a button.
inline std::string card(const std::string& heading, const std::string& body) {
    return R"({"parts": [{"role": "heading", "copy": ")" + heading + R"("}, {"role": "body", "copy": ")" +
           body + R"("}, {"role": "button", "copy": "Book", "link": "#book"}]})";
}

/// Text settings without margins, so that a test sees only the spacing it sets.
inline const std::string bare =
    R"("picture": {"margin": {"top": "0", "right": "0", "bottom": "0", "left": "0"}},
       "text": {"heading": {"family": ["Vollkorn"], "size": 20, "lineHeight": 1.25, "margin": {"top": "0", "bottom": "0"}},
                "body": {"family": ["Karla"], "size": 16, "lineHeight": 1.5, "margin": {"top": "0", "bottom": "0"}},
                "button": {"family": ["Karla"], "size": 16, "lineHeight": 1.25, "padding": {"top": "10px", "right": "20px", "bottom": "10px", "left": "20px"},
                           "border": {"width": "2px"}, "place": "start", "margin": {"top": "auto", "bottom": "0"}}})";

inline std::string styleOf(const std::string& row, const std::string& cardSettings) {
    return R"({"row": )" + row + R"(, "card": )" + cardSettings + ", " + bare + "}";
}

inline const std::string plainCard =
    R"({"padding": {"top": "0", "right": "0", "bottom": "0", "left": "0"}, "border": {"width": "0"}})";

}  // namespace tenter::test
