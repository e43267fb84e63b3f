// A new project for the row of a page.
#pragma once

#include "markup/adopt.h"
#include "project/project.h"
#include "text/paragraph_store.h"

namespace tenter::start {

/// The project into which the row of a page is imported if there is no other: its name is the title of the
/// page, its class that of the row, its columns and colours those of the theme. `markup::adopt` puts the row
/// into it. If no row is found, a project with one column and usual settings.
project::Project projectForPage(const markup::PageToAdopt& page, text::ParagraphStore& store);

}  // namespace tenter::start
