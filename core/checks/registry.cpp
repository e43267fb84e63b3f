#include "checks/registry.h"

namespace tenter::checks {

const std::vector<Check>& registry() {
    static const std::vector<Check> all{
        {checkContrast, false},    {checkFocus, false},        {checkZoom, false},
        {checkReflow, true},       {checkTextSpacing, true},   {checkTargets, true},
        {checkLinkNames, false},   {checkWords, true},         {checkSmallType, false},
        {checkHeadingLines, true}, {checkButtonLines, true},   {checkMeasure, true},
        {checkTightFits, true},    {checkGrowth, false},       {checkPictures, true},
        {checkHoles, false},       {checkFonts, true},         {checkUnits, false},
        {checkLastWords, true},    {checkMinimumLines, true},  {checkSpareRoom, true},
        {checkLinkPurpose, false}, {checkAlternatives, false}, {checkStops, false},
        {checkOutOfLine, true},    {checkThemeGaps, false},    {checkHeadingLevels, false},
        {checkLateFonts, false},   {checkInset, false},
    };
    return all;
}

}  // namespace tenter::checks
