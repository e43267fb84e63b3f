// The parts of a stylesheet that given markup needs: its other elements, and resets for its theme.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "emit/rule.h"
#include "markup/given.h"
#include "markup/theme_facts.h"

namespace tenter::emit {

struct BandScope;

/// A ratio or a focal point that only some pictures have.
struct OwnPicture {
    std::string selector;        ///< after the class, with its leading space
    std::string ratio;           ///< as CSS; empty: that of the settings
    std::string objectPosition;  ///< as CSS; empty: the centre
};

/// Elements of the same kind that are not parts. The selector follows the class, with its leading space.
struct ElementGroup {
    std::string selector;
    std::string tag;
};

/// A given row and its theme. The rules for it are made like those for our own markup. Then `adaptToTheme`
/// adds the resets that this markup needs and makes every rule just specific enough.
class GivenSheet {
public:
    /// The given row of a project. Empty, with problems, if there is none or its markup contains no row.
    static std::optional<GivenSheet> of(const project::Project& project, project::Problems& problems);

    /// Adds resets, and rules for the elements around and inside the parts. Decides which declarations the
    /// theme makes necessary, which must be important, and how specific each selector must be. If the theme
    /// is not known, the usual resets are printed. CSS Cascade 5 § 6.
    void adaptToTheme(const BandScope& scope, Rules& rules) const;

    [[nodiscard]] const markup::GivenRow& row() const { return *row_; }
    /// The elements between the element with the class and the row, between row and cards, and between cards
    /// and parts.
    [[nodiscard]] const std::vector<ElementGroup>& wrappers() const { return wrappers_; }
    /// The elements inside the parts of a role.
    [[nodiscard]] const std::vector<ElementGroup>& inside(const std::string& role) const;
    /// The pictures with their own ratio or focal point, grouped by these.
    [[nodiscard]] const std::vector<OwnPicture>& ownPictures() const { return ownPictures_; }
    [[nodiscard]] bool knowsTheme() const { return knowsTheme_; }
    /// True if the theme gives the row, or the element with the class, a negative margin above it at some
    /// viewport width; the same for the margin below.
    [[nodiscard]] bool isMarginAboveNegative() const { return negativeAbove_; }
    [[nodiscard]] bool isMarginBelowNegative() const { return negativeBelow_; }
    /// The theme's margins above and below the row in CSS, if they depend on its font size, which the
    /// stylesheet sets. Empty if they do not.
    [[nodiscard]] const std::optional<std::string>& marginAbove() const { return marginAbove_; }
    [[nodiscard]] const std::optional<std::string>& marginBelow() const { return marginBelow_; }

private:
    GivenSheet(markup::GivenRow row, const project::Project& project, project::Problems& problems);
    void findOwnPictures(const project::Project& project, project::Problems& problems);
    void adaptRule(const BandScope& scope, Rule& rule) const;
    void strengthenOwnPictures(const BandScope& scope, Rules& rules) const;

    std::shared_ptr<const markup::GivenRow> row_;
    markup::ThemeFacts facts_;
    std::vector<ElementGroup> wrappers_;
    std::map<std::string, std::vector<ElementGroup>> inside_;
    std::vector<OwnPicture> ownPictures_;
    bool knowsTheme_ = false;
    bool negativeAbove_ = false;
    bool negativeBelow_ = false;
    std::optional<std::string> marginAbove_, marginBelow_;
};

}  // namespace tenter::emit
