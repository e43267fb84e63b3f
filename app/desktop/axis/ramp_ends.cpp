#include "axis/ramp_ends.h"

#include <algorithm>
#include <cmath>

namespace tenter::desktop::axis {

using project::CascadeLayer;

namespace {

bool setsSize(const project::Settings& settings, const std::string& role) {
    const project::TextStyle* const text = settings.text.find(role);
    return text != nullptr && text->size.has_value();
}

CascadeLayer layerOf(const project::Variant& variant, std::size_t band, const std::string& role) {
    if (setsSize(variant.bands[band].set, role)) return CascadeLayer::Band;
    if (setsSize(variant.set, role)) return CascadeLayer::Variant;
    return CascadeLayer::Style;
}

// The viewport width in `band` at which a card's content is `content` CSS px wide; empty if there is none.
std::optional<double> widthOfCard(const layout::PreparedRow& row, const Bands& bands, std::size_t band,
                                  double content) {
    double low = bands.first(band);
    double high = bands.last(band);
    if (low >= high || row.cardWidth(low) > content || row.cardWidth(high) < content) return std::nullopt;
    for (int step = 0; step < 40; ++step) {
        const double middle = (low + high) / 2;
        (row.cardWidth(middle) < content ? low : high) = middle;
    }
    return high;
}

struct Stretch {
    CascadeLayer layer;
    std::size_t first, last;
};

// Consecutive bands that take the size from the same layer. The layers `Style` and `Variant` have one ramp
// each, so each forms one stretch even if bands with their own ramp lie in between.
std::vector<Stretch> stretches(const project::Variant& variant, const std::string& role) {
    std::vector<Stretch> found;
    for (std::size_t band = 0; band < variant.bands.size(); ++band) {
        const CascadeLayer layer = layerOf(variant, band, role);
        const auto same = std::find_if(found.begin(), found.end(), [layer](const Stretch& one) {
            return layer != CascadeLayer::Band && one.layer == layer;
        });
        if (same == found.end())
            found.push_back({layer, band, band});
        else
            same->last = band;
    }
    return found;
}

}  // namespace

std::string RampEnd::name() const {
    const char* const layers[] = {"all variants", "variant", "band"};
    return role + (upper ? " upper " : " lower ") + layers[static_cast<int>(layer)] +
           (layer == CascadeLayer::Band || followsCard ? ' ' + std::to_string(band) : std::string());
}

std::vector<RampEnd> rampEnds(const project::Project& project, std::size_t variant,
                              const layout::PreparedRow& row, double width) {
    std::vector<RampEnd> ends;
    const project::Variant& shown = project.row().variants[variant];
    const Bands bands = Bands::of(project, variant);
    const std::size_t current = row.bandAt(width);
    const double scale = project.unit == units::Unit::Rem ? project.page.readerSize / 16 : 1;
    for (const std::string& role : row.roles()) {
        for (const Stretch& stretch : stretches(shown, role)) {
            const bool holdsHere = layerOf(shown, current, role) == stretch.layer &&
                                   current >= stretch.first && current <= stretch.last;
            const project::TextStyle* text = row.settings(stretch.first).text.find(role);
            if (text == nullptr || !text->size) continue;
            const units::Ramp ramp = *text->size;
            const bool card = text->follow == project::Follow::Card;
            RampEnd end{role,
                        false,
                        stretch.layer,
                        card ? current : stretch.first,
                        stretch.first,
                        stretch.last,
                        card,
                        0,
                        0,
                        {},
                        scale};
            // A constant size has no widths, so its ends are placed at the ends of its bands.
            const bool placeless = ramp.from().width == ramp.to().width;
            units::RampPoint from = ramp.from();
            units::RampPoint to = ramp.to();
            if (card) {
                if (!holdsHere) continue;
                if (placeless) {
                    from.width = row.cardWidth(bands.first(current));
                    to.width = row.cardWidth(bands.last(current));
                }
            } else if (placeless) {
                from.width = std::ceil(bands.first(stretch.first));
                to.width = bands.last(stretch.last);
            }
            const auto add = [&](bool upper, const units::RampPoint& point, const units::RampPoint& other) {
                end.upper = upper;
                end.size = point.size * scale;
                end.other = other;
                end.width = point.width;
                if (card) {
                    const auto at = widthOfCard(row, bands, current, point.width);
                    if (!at) return;
                    end.width = *at;
                }
                ends.push_back(end);
            };
            if (from.width < to.width) {
                add(false, from, to);
                add(true, to, from);
            }
        }
    }
    return ends;
}

void moveEnd(project::Project& project, std::size_t variant, const RampEnd& end, double cardWidth,
             double width, double size) {
    const double along = end.followsCard ? cardWidth : width;
    // An end cannot move past the other end.
    const double held =
        end.upper ? std::max(along, end.other.width + 1) : std::min(along, end.other.width - 1);
    const auto ramp = units::Ramp::between({std::max(0.0, held), size / end.scale}, end.other);
    if (!ramp) return;
    project::settingsOf(project, end.layer, variant, end.band).text.of(end.role).size = *ramp;
}

}  // namespace tenter::desktop::axis
