// The verbs of tenter-cli, one file each.
#pragma once

#include <CLI/App.hpp>
#include <CLI/Config.hpp>
#include <CLI/Formatter.hpp>
#include <functional>

namespace tenter::command {

/// What is to be done once the arguments have been read; returns the exit code.
using Action = std::function<int()>;

// Each adds its verb to `app`; if the arguments choose that verb, `action` is set to it.
void addGeometry(CLI::App& app, Action& action);
void addWraps(CLI::App& app, Action& action);
void addCheck(CLI::App& app, Action& action);
void addStylesheet(CLI::App& app, Action& action);
void addPage(CLI::App& app, Action& action);
void addReport(CLI::App& app, Action& action);
void addAdopt(CLI::App& app, Action& action);
void addSize(CLI::App& app, Action& action);
void addSolve(CLI::App& app, Action& action);

}  // namespace tenter::command
