// The list of all checks.
#pragma once

#include "checks/cause.h"

namespace tenter::checks {

// Each is in a file of its own, named after the function.
void checkContrast(const Subject& subject, Findings& out);
void checkFocus(const Subject& subject, Findings& out);
void checkZoom(const Subject& subject, Findings& out);
void checkReflow(const Subject& subject, Findings& out);
void checkTextSpacing(const Subject& subject, Findings& out);
void checkTargets(const Subject& subject, Findings& out);
void checkLinkNames(const Subject& subject, Findings& out);
void checkWords(const Subject& subject, Findings& out);
void checkSmallType(const Subject& subject, Findings& out);
void checkHeadingLines(const Subject& subject, Findings& out);
void checkHeadingLevels(const Subject& subject, Findings& out);
void checkButtonLines(const Subject& subject, Findings& out);
void checkMeasure(const Subject& subject, Findings& out);
void checkTightFits(const Subject& subject, Findings& out);
void checkGrowth(const Subject& subject, Findings& out);
void checkPictures(const Subject& subject, Findings& out);
void checkHoles(const Subject& subject, Findings& out);
void checkFonts(const Subject& subject, Findings& out);
void checkLateFonts(const Subject& subject, Findings& out);
void checkInset(const Subject& subject, Findings& out);
void checkUnits(const Subject& subject, Findings& out);
void checkLastWords(const Subject& subject, Findings& out);
void checkSpareRoom(const Subject& subject, Findings& out);
void checkMinimumLines(const Subject& subject, Findings& out);
void checkLinkPurpose(const Subject& subject, Findings& out);
void checkAlternatives(const Subject& subject, Findings& out);
void checkStops(const Subject& subject, Findings& out);
void checkOutOfLine(const Subject& subject, Findings& out);
void checkThemeGaps(const Subject& subject, Findings& out);

/// Compares the line counts of two break profiles.
void checkEngines(const Subject& one, const Subject& other, Findings& out);

struct Check {
    void (*run)(const Subject&, Findings&);
    bool breaks;  ///< true if its findings depend on where lines break
};

/// Every check except `checkEngines`.
const std::vector<Check>& registry();

}  // namespace tenter::checks
