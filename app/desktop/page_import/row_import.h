// Reads a page as a row of cards: guesses the roles of its elements, and applies the corrections of the user.
#pragma once

#include <QByteArray>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "markup/adopt.h"
#include "markup/given.h"
#include "start/page_findings.h"

namespace tenter::desktop::page_import {

/// Gives an element another role: a role of text, `row`, `card`, `picture`, or none (empty).
struct RoleAssignment {
    markup::NodeId node = markup::noNode;
    std::string role;
};

/// What a browser measured on a page.
struct Measurement {
    std::string page;  ///< the page that it opened; see markup::measuringPage
    std::string text;  ///< what the page posted
};

struct ImportRequest {
    std::shared_ptr<const project::Project> project;  ///< into which the row goes; null: a new project
    QByteArray bytes;
    std::filesystem::path file;  ///< empty for pasted or typed HTML
    std::filesystem::path projectFolder;
    std::vector<markup::RoleChoice> choices;  ///< selectors that the user has set so far
    std::optional<std::string> theme;         ///< theme CSS typed by the user, instead of that of the page
    double rootSize = 16;                     ///< of the theme in CSS px, for a stylesheet alone
    bool measures = false;                    ///< whether a browser measures the page
    Measurement measured;                     ///< of an earlier reading; used if it is of the same page
    /// The next correction: the role of an element, or the selector of a role.
    std::variant<std::monostate, RoleAssignment, markup::RoleChoice> change;
};

struct ImportResult {
    std::vector<markup::RoleChoice> choices;  ///< includes the correction if it could be applied
    std::optional<markup::Adopted> adopted;   ///< the project with the imported row; empty: no row was found
    std::optional<markup::GivenRow> row;      ///< the elements of the imported row
    project::Problems problems;               ///< why no row was found, or warnings beside a row
    project::Problems refused;                ///< why the correction could not be applied
    /// What the page or the stylesheet declares, for a new project.
    std::vector<start::FoundElement> found;
    bool isSheet = false;  ///< true if the input is a stylesheet: there is no row to review
    bool isOwn = false;    ///< true if Tenter wrote the page or the stylesheet: there is no row to review
    /// The page that a browser has to open before the row can be imported with measured values; empty: the
    /// row has them, or nothing is to be measured.
    std::string toMeasure;
};

/// True for a file *.css, and for pasted text with rules and without a tag.
bool isStylesheet(const QByteArray& bytes, const std::filesystem::path& file);

/// Reads the page, or a stylesheet for a new project. Can be called on any thread. A correction that selects
/// nothing, or after which no row is found, is not applied.
ImportResult readRow(const ImportRequest& request);

}  // namespace tenter::desktop::page_import
