// A page that was pasted or opened, read as a row: by guessing, and by what the person says.
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

namespace tenter::desktop::given {

/// A role for an element of the row that stands: one of text, row, card, picture, or none (empty).
struct Pick {
    markup::NodeId node = markup::noNode;
    std::string role;
};

struct RowRequest {
    std::shared_ptr<const project::Project> project;
    QByteArray bytes;
    std::filesystem::path file;  ///< empty for what was pasted
    std::filesystem::path projectFolder;
    std::vector<markup::RoleChoice> choices;  ///< those that stand
    std::optional<std::string> theme;         ///< CSS said instead of what the page's own sheets say
    /// What is to be changed of them: an element's role, or a role's selector.
    std::variant<std::monostate, Pick, markup::RoleChoice> change;
};

struct RowReading {
    std::vector<markup::RoleChoice> choices;  ///< with the change, if it could be made
    std::optional<markup::Adopted> adopted;
    std::optional<markup::GivenRow> row;  ///< of the adopted project's given markup
    project::Problems problems;           ///< why nothing was adopted, or what is amiss beside it
    project::Problems refused;            ///< why the change was not made
};

/// Can be called on any thread. A change that leads to no row, or selects nothing, is not made.
RowReading readRow(const RowRequest& request);

}  // namespace tenter::desktop::given
