// A small reader of stylesheets for the tests, written from CSS Syntax 3 § 5 and apart from what emits them.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace tenter::tests {

struct CssRule {
    std::vector<std::string> media;      ///< conditions around it, outermost first
    std::vector<std::string> selectors;  ///< of its list
    std::vector<std::pair<std::string, std::string>> declarations;
};

struct CssSheet {
    std::vector<CssRule> rules;
    std::vector<std::string> queries;   ///< the prelude of each @media, in order
    std::vector<std::string> comments;  ///< without their marks
    bool sound = true;                  ///< brackets and strings were closed
};

CssSheet readCss(const std::string& text);

/// What holds for `selector` (as written) at a page width, with no pointer and motion unwelcome: later rules
/// win, since all selectors that are compared are alike.
std::map<std::string, std::string> computed(const CssSheet& sheet, const std::string& selector, double width);

}  // namespace tenter::tests
