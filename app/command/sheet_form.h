// The options for the form of a stylesheet, which several verbs have.
#pragma once

#include "emit/late_fonts.h"
#include "emit/stylesheet.h"
#include "opened.h"

namespace tenter::command {

/// The form as given; empty: not given.
struct FormArguments {
    std::string unit;
    std::string follow;
    bool properties = false;
    bool layer = false;
    bool noComments = false;
    bool minified = false;
    bool lateFonts = false;
};

/// Adds --unit, --follow, --properties, --layer, --no-comments, --minified and --late-fonts.
void addForm(CLI::App& verb, FormArguments& arguments);

/// True if the values exist. If not, a message has been printed.
bool formIsKnown(const FormArguments& arguments);

/// Applies --follow to the opened project, for `options.variants`, and sets unit and form of `options`.
/// Prints what --follow changes.
void applyForm(const FormArguments& arguments, const std::string& file, Opened& opened,
               emit::StylesheetOptions& options);

/// Prints on standard error what the fallback fonts change.
void reportLateFonts(const emit::LateFonts& late);

}  // namespace tenter::command
