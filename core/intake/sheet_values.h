// The values of a stylesheet that Tenter wrote, by class, element and viewport width.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "css/rules.h"

namespace tenter::intake {

/// The values of one element: by property, shorthands as written, variables replaced.
using Values = std::map<std::string, std::string>;

/// The elements of a row: by the words of the selector after the class of the variant. Empty: the row itself;
/// `heading`, `heading a`, `heading:hover`, `button::after`.
using RowValues = std::map<std::string, Values>;

/// A stylesheet with the selectors of Tenter's own markup: `.walks-trio .walks-heading`.
class OwnSheet {
public:
    /// Empty if no rule has such a selector.
    static std::optional<OwnSheet> read(std::string_view css);

    /// The classes of the variants, in the order of the sheet.
    [[nodiscard]] const std::vector<std::string>& classes() const { return classes_; }
    /// The start of the classes of parts: `walks`.
    [[nodiscard]] const std::string& rowName() const { return rowName_; }
    /// The roles of text, in the order of the sheet.
    [[nodiscard]] const std::vector<std::string>& roles() const { return roles_; }
    /// The breakpoints of a variant, rising, CSS px.
    [[nodiscard]] std::vector<double> breakpoints(const std::string& className) const;
    /// The values of a variant at a viewport width, CSS px.
    [[nodiscard]] RowValues at(const std::string& className, double width) const;

private:
    struct Target {
        std::string className;
        std::string element;
    };
    [[nodiscard]] std::optional<Target> targetOf(std::string_view selector) const;
    void collectNames();
    [[nodiscard]] bool isOwn() const;

    css::Sheet sheet_;
    std::vector<std::string> classes_;
    std::string rowName_;
    std::vector<std::string> roles_;
};

}  // namespace tenter::intake
