#include "remedy/moves.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tenter::remedy {

namespace {

constexpr double step = 4;  // CSS px
/// Just past a breakpoint, CSS px.
constexpr double beyond = 0.01;

std::set<double> widthsOf(const project::Project& project, std::size_t variant) {
    std::set<double> widths;
    const int steps = static_cast<int>(std::ceil((project.mostWidth - project.leastWidth) / step));
    for (int i = 0; i < steps; ++i)
        widths.insert(project.leastWidth + i * step);
    widths.insert(project.mostWidth);
    for (const project::Band& band : project.row().variants[variant].bands)
        if (band.upTo && *band.upTo >= project.leastWidth && *band.upTo < project.mostWidth)
            widths.insert({*band.upTo, *band.upTo + beyond});
    return widths;
}

double distance(const layout::Box& one, const layout::Box& other) {
    return std::max({std::abs(one.x - other.x), std::abs(one.y - other.y),
                     std::abs(one.right() - other.right()), std::abs(one.bottom() - other.bottom())});
}

}  // namespace

Places placesOf(const project::Project& project, std::size_t variant, text::ParagraphStore& store,
                const text::BreakProfile* profile, const Places* as) {
    std::set<double> widths;
    if (as == nullptr)
        widths = widthsOf(project, variant);
    else
        for (const PlacesAt& at : *as)
            widths.insert(at.width);
    const layout::PreparedRow row(project, variant, store,
                                  profile != nullptr ? *profile : text::defaultProfile());
    layout::Layout laid;
    Places places;
    places.reserve(widths.size());
    for (const double width : widths) {
        layout::layOut(row, width, laid);
        PlacesAt& at = places.emplace_back();
        at.width = width;
        at.boxes.reserve(laid.cards.size() + laid.parts.size());
        for (const layout::LaidCard& card : laid.cards)
            at.boxes.push_back(card.box);
        for (const layout::LaidPart& part : laid.parts)
            at.boxes.push_back(part.box);
    }
    return places;
}

Move farthestMove(const Places& before, const Places& after) {
    // What no screen shows, CSS px.
    constexpr double invisible = 0.05;
    Move move;
    auto other = after.begin();
    for (const PlacesAt& at : before) {
        while (other != after.end() && other->width < at.width)
            ++other;
        if (other == after.end() || other->width != at.width || other->boxes.size() != at.boxes.size())
            continue;
        for (std::size_t i = 0; i < at.boxes.size(); ++i)
            if (const double far = distance(at.boxes[i], other->boxes[i]); far > move.distance + 1e-9)
                move = {far, at.width};
    }
    return move.distance < invisible ? Move() : move;
}

}  // namespace tenter::remedy
