// The stylesheet's other half for markup that a page prints already: what its theme says has to be undone.
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

/// What some pictures have instead of what the band's settings say.
struct OwnPicture {
    std::string selector;        ///< within the class, with its leading space
    std::string ratio;           ///< as CSS; empty: the settings'
    std::string objectPosition;  ///< as CSS; empty: the middle
};

/// Elements alike, by one selector within the class, with its leading space.
struct Surround {
    std::string selector;
    std::string tag;
};

/// A project's given row, and what its theme says of it. Rules for it are made like those for our own markup;
/// `settle` then adds the resets that this markup needs and makes every rule just strong enough.
class GivenSheet {
public:
    /// Empty, with problems, if the project's given markup is no row, or none is given.
    static std::optional<GivenSheet> of(const project::Project& project, project::Problems& problems);

    /// Adds resets and rules for what stands around and within the parts; decides which declarations are
    /// needed against the theme, which must be important, and how strong each rule's selector must be.
    /// Without a known theme the usual resets are said. CSS Cascade 5 § 6.
    void settle(const BandScope& scope, Rules& rules) const;

    [[nodiscard]] const markup::GivenRow& row() const { return *row_; }
    /// What stands between the class and the row, the row and its cards, and the cards and their parts.
    [[nodiscard]] const std::vector<Surround>& wrappers() const { return wrappers_; }
    /// What stands within the parts of a role.
    [[nodiscard]] const std::vector<Surround>& within(const std::string& role) const;
    /// Pictures with a ratio or a focal point of their own, those alike together.
    [[nodiscard]] const std::vector<OwnPicture>& ownPictures() const { return ownPictures_; }
    [[nodiscard]] bool knowsTheme() const { return knowsTheme_; }

private:
    GivenSheet(markup::GivenRow row, const project::Project& project, project::Problems& problems);
    void findOwnPictures(const project::Project& project, project::Problems& problems);
    void settleRule(const BandScope& scope, Rule& rule) const;
    void strengthenOwnPictures(const BandScope& scope, Rules& rules) const;

    std::shared_ptr<const markup::GivenRow> row_;
    markup::ThemeFacts facts_;
    std::vector<Surround> wrappers_;
    std::map<std::string, std::vector<Surround>> within_;
    std::vector<OwnPicture> ownPictures_;
    bool knowsTheme_ = false;
};

}  // namespace tenter::emit
