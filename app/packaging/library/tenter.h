// The computation of Tenter as a library: all public headers. Versions follow Semantic Versioning 2.0.0;
// before 1.0.0 a new minor version may change declarations.
#pragma once

#include "about/about.h"
#include "checks/checks.h"
#include "emit/findings.h"
#include "emit/geometry.h"
#include "emit/junit.h"
#include "emit/page.h"
#include "emit/report.h"
#include "emit/sarif.h"
#include "emit/stylesheet.h"
#include "emit/tokens.h"
#include "emit/wraps.h"
#include "intake/size_reading.h"
#include "layout/layout.h"
#include "project/file.h"
#include "remedy/remedies.h"
#include "solve/answer_table.h"
#include "solve/solve.h"
#include "start/new_row.h"
#include "sweep/sweep.h"
#include "text/paragraph_store.h"
