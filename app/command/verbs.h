// The verbs of tenter-cli, one file each.
#pragma once

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <functional>

namespace tenter::command {

/// The verb to run after the arguments have been read. Returns the exit code.
using Action = std::function<int()>;

// Each adds its verb to `app`. If the arguments name the verb, `action` becomes its action.
void addGeometry(CLI::App& app, Action& action);
void addWraps(CLI::App& app, Action& action);
void addCheck(CLI::App& app, Action& action);
void addRemedy(CLI::App& app, Action& action);
void addStylesheet(CLI::App& app, Action& action);
void addMarkup(CLI::App& app, Action& action);
void addPage(CLI::App& app, Action& action);
void addFolder(CLI::App& app, Action& action);
void addTokens(CLI::App& app, Action& action);
void addDiff(CLI::App& app, Action& action);
void addPictures(CLI::App& app, Action& action);
void addReport(CLI::App& app, Action& action);
void addPicture(CLI::App& app, Action& action);
void addSheet(CLI::App& app, Action& action);
void addNew(CLI::App& app, Action& action);
void addAdopt(CLI::App& app, Action& action);
void addIntake(CLI::App& app, Action& action);
void addSize(CLI::App& app, Action& action);
void addSolve(CLI::App& app, Action& action);
void addServe(CLI::App& app, Action& action);

}  // namespace tenter::command
