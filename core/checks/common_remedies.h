// Candidates that several checks propose: sizes, columns, breakpoints, spacing. Each adds to `out` changes in
// the bands in which the finding holds.
#pragma once

#include <string>
#include <vector>

#include "checks/candidates.h"

namespace tenter::checks {

/// Whether the text needs more room or has too much.
enum class Need { Room, Filling };

/// Smaller sizes of `role` for `Need::Room`, larger ones for `Need::Filling`, in steps; the smallest change
/// that works is offered.
void proposeSizes(Candidates& out, const std::string& role, Need need);
/// Sizes of `role` that differ by 2 % at most, in both directions.
void proposeSlightSizes(Candidates& out, const std::string& role);
/// Sizes of `roles` kept between `least` and `most`, CSS px. `most` can be infinite.
void proposeSizesWithin(Candidates& out, const std::vector<std::string>& roles, double least, double most,
                        const std::string& label);
/// A letter spacing of `role` that is a little narrower.
void proposeLetterSpacing(Candidates& out, const std::string& role);
/// One column fewer for `Need::Room`, one more for `Need::Filling`.
void proposeColumns(Candidates& out, Need need);
/// Breakpoints moved to where the finding starts or ends within a band.
void proposeBreakpoints(Candidates& out);
/// Less padding at the sides of cards and less column gap.
void proposeTighterCards(Candidates& out);
/// A maximum width of the row that is `share` (below 1) of its width now.
void proposeRowWidth(Candidates& out, double share);
/// Long words that break, for the roles of the finding.
void proposeWordBreaks(Candidates& out);
/// One aspect ratio for all pictures.
void proposeOneRatio(Candidates& out);
/// `Use the aspect ratio 3:2`.
std::string useRatio(double width, double height);
/// Parts of neighbouring cards aligned.
void proposeAlignedParts(Candidates& out);

/// `length` times `factor`; keywords stay.
units::Length scaled(const units::Length& length, double factor);
/// The length that is `px` CSS px longer, in the unit of `length` if that is px, rem or em, else in px.
units::Length longer(const units::Length& length, double px, double em, double rem);
/// `the heading text`, `heading text and body text`.
std::string roleTexts(const std::vector<std::string>& roles);

}  // namespace tenter::checks
