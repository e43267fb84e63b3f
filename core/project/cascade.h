// The cascade of settings: default, style, variant, band.
#pragma once

#include "project/project.h"

namespace tenter::project {

/// A layer of the cascade that a project sets: the style, which holds in all variants; a variant; a band of
/// it. A later one wins.
enum class CascadeLayer { Style, Variant, Band };

/// The settings that `layer` holds for band `band` of variant `variant`; both are indices, of which a layer
/// ignores what it does not need.
const Settings& settingsOf(const Project& project, CascadeLayer layer, std::size_t variant, std::size_t band);
Settings& settingsOf(Project& project, CascadeLayer layer, std::size_t variant, std::size_t band);

/// The default style of a role. Every member is set.
TextStyle defaultText(const std::string& role);
/// The defaults of row, card, picture and the roles heading, body and button. Every member is set.
Settings defaultSettings();

/// `under` with every member that `over` sets replaced by that of `over`.
Settings merged(const Settings& under, const Settings& over);

/// The settings that hold in band `band` of `variant`. Every member is set, for every role of
/// `roles(project)`.
Settings resolve(const Project& project, const Variant& variant, std::size_t band);

/// One member of `resolve`, without the others: that of the innermost layer that sets it. `member` returns
/// the member of a `Settings` as an `std::optional`. It is set, unless it is that of a role without defaults.
template <class Member>
auto memberHeld(const Project& project, const Variant& variant, std::size_t band, const Member& member) {
    static const Settings defaults = defaultSettings();
    if (band < variant.bands.size())
        if (auto held = member(variant.bands[band].set)) return held;
    if (auto held = member(variant.set)) return held;
    if (auto held = member(project.row().style)) return held;
    return member(defaults);
}

/// The members of `over` that differ from `under`; the others are unset. Both are resolved.
Settings difference(const Settings& under, const Settings& over);

}  // namespace tenter::project
