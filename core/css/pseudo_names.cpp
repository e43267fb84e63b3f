#include "css/pseudo_names.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <span>

namespace tenter::css {

namespace {

using Names = std::span<const std::string_view>;

bool isOneOf(std::string_view name, Names names) {
    return std::ranges::find(names, name) != names.end();
}
bool isOneOf(std::string_view name, std::initializer_list<std::string_view> names) {
    return isOneOf(name, Names(names.begin(), names.size()));
}

// Pseudo-classes that depend only on the document. Selectors 4 § 7.1, § 7.5, § 13, § 14; HTML for :defined;
// CSS Scoping for :host.
constexpr auto plainNames = std::to_array<std::string_view>(
    {"root", "scope", "empty", "first-child", "last-child", "only-child", "first-of-type", "last-of-type",
     "only-of-type", "link", "any-link", "defined", "-webkit-any-link", "host"});

// Dynamic pseudo-classes: they depend on pointer, focus, history, input and display. Selectors 4 § 7 to § 12;
// HTML, pseudo-classes.
constexpr auto dynamicNames = std::to_array<std::string_view>({"hover",
                                                               "active",
                                                               "focus",
                                                               "focus-visible",
                                                               "focus-within",
                                                               "visited",
                                                               "local-link",
                                                               "target",
                                                               "target-within",
                                                               "target-current",
                                                               "checked",
                                                               "indeterminate",
                                                               "default",
                                                               "enabled",
                                                               "disabled",
                                                               "read-only",
                                                               "read-write",
                                                               "placeholder-shown",
                                                               "autofill",
                                                               "valid",
                                                               "invalid",
                                                               "in-range",
                                                               "out-of-range",
                                                               "required",
                                                               "optional",
                                                               "user-valid",
                                                               "user-invalid",
                                                               "open",
                                                               "popover-open",
                                                               "modal",
                                                               "fullscreen",
                                                               "playing",
                                                               "paused",
                                                               "seeking",
                                                               "buffering",
                                                               "stalled",
                                                               "muted",
                                                               "volume-locked",
                                                               "picture-in-picture",
                                                               "current",
                                                               "past",
                                                               "future",
                                                               "-webkit-autofill",
                                                               "-webkit-full-screen"});

constexpr auto pseudoElementNames = std::to_array<std::string_view>({"before",
                                                                     "after",
                                                                     "first-line",
                                                                     "first-letter",
                                                                     "marker",
                                                                     "placeholder",
                                                                     "selection",
                                                                     "backdrop",
                                                                     "cue",
                                                                     "file-selector-button",
                                                                     "target-text",
                                                                     "spelling-error",
                                                                     "grammar-error",
                                                                     "details-content",
                                                                     "view-transition",
                                                                     "checkmark",
                                                                     "picker-icon",
                                                                     "scroll-marker",
                                                                     "scroll-marker-group",
                                                                     "search-text",
                                                                     "column"});

constexpr auto functionalPseudoElementNames = std::to_array<std::string_view>(
    {"part", "slotted", "highlight", "cue", "view-transition-group", "view-transition-image-pair",
     "view-transition-old", "view-transition-new", "picker", "scroll-button"});

std::optional<PseudoForm> functionForm(std::string_view name) {
    if (isOneOf(name, {"is", "where", "-webkit-any"})) return PseudoForm::Forgiving;
    if (isOneOf(name, {"not", "host", "host-context"})) return PseudoForm::Selectors;
    if (name == "has") return PseudoForm::Relative;
    if (isOneOf(name, {"nth-child", "nth-last-child"})) return PseudoForm::Nth;
    if (isOneOf(name, {"nth-of-type", "nth-last-of-type"})) return PseudoForm::NthOfType;
    if (isOneOf(name, {"lang", "dir"})) return PseudoForm::Words;
    if (name == "state") return PseudoForm::DynamicWords;
    return std::nullopt;
}

}  // namespace

std::optional<PseudoForm> pseudoClassForm(std::string_view name, bool function) {
    if (function) return functionForm(name);
    if (isOneOf(name, plainNames)) return PseudoForm::Plain;
    if (isOneOf(name, dynamicNames)) return PseudoForm::Dynamic;
    return std::nullopt;
}

bool isPseudoElement(std::string_view name, bool function) {
    if (function) return isOneOf(name, functionalPseudoElementNames);
    // Every name with this prefix is known, for old pages. Selectors 4 § 3.6.4.
    return isOneOf(name, pseudoElementNames) || name.starts_with("-webkit-");
}

bool isOldPseudoElement(std::string_view name) {
    return isOneOf(name, {"before", "after", "first-line", "first-letter"});
}

}  // namespace tenter::css
