// The rules that a project must satisfy, beyond the types of its values.
#pragma once

#include "project/problem.h"
#include "project/project.h"
#include "project/read_context.h"

namespace tenter::project {

/// One problem for each rule that `project` breaks: ranges, names, counts, order, and settings that conflict
/// (conflicts.h). Its place is a JSON pointer, its `file` is empty. A project without problems can be written
/// and read again, provided that its file names are relative and its files exist. `valid`: a project without
/// problems; what is equal there is not checked again. Null: everything is checked.
Problems validate(const Project& project, const Project* valid = nullptr);

/// The same, with the problems added to `context`. False if there are any.
bool validate(ReadContext& context, const Project& project, const Project* valid = nullptr);
/// The rules for one entry of wishes, whose place `context` has.
bool validate(ReadContext& context, const RoleWishes& wishes);

}  // namespace tenter::project
