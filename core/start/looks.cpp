#include "start/looks.h"

#include <algorithm>

#include "project/file.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

/// The text of a look: the style of a project file.
struct LookText {
    const char* name;
    const char* title;
    std::string_view description;
    double mostCardWidth;
    const char* style;
};

// White cards that stand out by a soft shadow; the picture reaches the edges.
const char* const quayStyle = R"({
  "row": {"columnGap": "1.5rem", "rowGap": "1.75rem", "padding": {"top": "2rem", "bottom": "2.25rem"}},
  "card": {
    "padding": {"top": "1.375rem", "right": "1.375rem", "bottom": "1.5rem", "left": "1.375rem"},
    "background": "#fff", "border": {"width": "1px", "colour": "#dfe3e0"}, "radius": "10px",
    "shadow": {"y": "2px", "blur": "10px", "colour": "#1c2b2a1f"}, "bleed": true
  },
  "picture": {"ratio": "3/2", "margin": {"bottom": "1.25rem"}},
  "text": {
    "heading": {"family": ["Vollkorn", "serif"], "weight": 600, "size": [[340, 21], [760, 29]], "lineHeight": 1.2,
      "colour": "#1b2f33", "margin": {"top": "0", "bottom": "0.4em"},
      "focus": {"colour": "#a8480f", "width": "3px", "offset": "2px"}},
    "body": {"family": ["Karla", "sans-serif"], "size": [[340, 16], [760, 18.5]], "lineHeight": 1.5,
      "colour": "#3d4a4b", "margin": {"top": "0", "bottom": "1.25em"},
      "focus": {"colour": "#a8480f", "width": "3px", "offset": "2px"}},
    "button": {"family": ["Karla", "sans-serif"], "weight": 700, "size": [[340, 15.5], [760, 17]], "lineHeight": 1.25,
      "colour": "#fff", "background": "#1d5a63", "radius": "0.4em",
      "padding": {"top": "0.7em", "right": "1.3em", "bottom": "0.7em", "left": "1.3em"},
      "hover": {"background": "#123d44"}, "focus": {"colour": "#a8480f", "width": "3px", "offset": "2px"}}
  }
})";

// No boxes: tall pictures, book type, and a button in outline.
const char* const folioStyle = R"({
  "row": {"columnGap": "2.25rem", "rowGap": "2.75rem", "padding": {"top": "2rem", "bottom": "2.25rem"}},
  "card": {
    "padding": {"top": "0", "right": "0", "bottom": "0.25rem", "left": "0"},
    "background": "transparent", "border": {"width": "0"}, "radius": "0"
  },
  "picture": {"ratio": "5/6", "radius": "2px", "margin": {"bottom": "1.25rem"}},
  "text": {
    "heading": {"family": ["EB Garamond", "serif"], "weight": 400, "size": [[340, 25], [760, 35]], "lineHeight": 1.14,
      "colour": "#26211c", "margin": {"top": "0", "bottom": "0.35em"},
      "focus": {"colour": "#1f5fa8", "width": "3px", "offset": "3px"}},
    "body": {"family": ["EB Garamond", "serif"], "size": [[340, 17.5], [760, 20.5]], "lineHeight": 1.45,
      "colour": "#4a433b", "margin": {"top": "0", "bottom": "1.1em"},
      "focus": {"colour": "#1f5fa8", "width": "3px", "offset": "3px"}},
    "button": {"family": ["EB Garamond", "serif"], "weight": 700, "size": [[340, 17], [760, 19]], "lineHeight": 1.3,
      "colour": "#7a2e1d", "background": "transparent", "border": {"width": "1px", "colour": "#7a2e1d"},
      "radius": "0", "padding": {"top": "0.7em", "right": "1.1em", "bottom": "0.7em", "left": "1.1em"},
      "hover": {"colour": "#fff", "background": "#7a2e1d", "borderColour": "#7a2e1d"},
      "focus": {"colour": "#1f5fa8", "width": "3px", "offset": "3px"}}
  }
})";

// Dark cards with light type and a bright button over the whole width.
const char* const lanternStyle = R"({
  "row": {"columnGap": "1.25rem", "rowGap": "1.25rem", "padding": {"top": "2rem", "bottom": "2.25rem"}},
  "card": {
    "padding": {"top": "1.5rem", "right": "1.5rem", "bottom": "1.5rem", "left": "1.5rem"},
    "background": "#1e2233", "border": {"width": "0"}, "radius": "4px"
  },
  "picture": {"ratio": "4/3", "radius": "2px", "margin": {"bottom": "1.375rem"}},
  "text": {
    "heading": {"family": ["Manrope", "sans-serif"], "weight": 800, "size": [[340, 20], [760, 27]], "lineHeight": 1.22,
      "letterSpacing": "-0.01em", "colour": "#fff", "margin": {"top": "0", "bottom": "0.5em"},
      "focus": {"colour": "#9fc8ff", "width": "3px", "offset": "2px"}},
    "body": {"family": ["Manrope", "sans-serif"], "weight": 400, "size": [[340, 15.5], [760, 17.5]],
      "lineHeight": 1.55, "colour": "#d3d6e4", "margin": {"top": "0", "bottom": "1.4em"},
      "focus": {"colour": "#9fc8ff", "width": "3px", "offset": "2px"}},
    "button": {"family": ["Manrope", "sans-serif"], "weight": 700, "size": [[340, 15], [760, 16.5]],
      "lineHeight": 1.3, "colour": "#1e2233", "background": "#f2c45a", "radius": "3px", "place": "stretch",
      "padding": {"top": "0.75em", "right": "1em", "bottom": "0.75em", "left": "1em"},
      "hover": {"background": "#ffdd8a"}, "focus": {"colour": "#9fc8ff", "width": "3px", "offset": "2px"}}
  }
})";

// Tinted cards with round corners, everything centred.
const char* const meadowStyle = R"({
  "row": {"columnGap": "1.75rem", "rowGap": "2rem", "padding": {"top": "2rem", "bottom": "2.25rem"}},
  "card": {
    "padding": {"top": "1.125rem", "right": "1.125rem", "bottom": "1.625rem", "left": "1.125rem"},
    "background": "#edf2e4", "border": {"width": "0"}, "radius": "22px"
  },
  "picture": {"ratio": "1/1", "radius": "12px", "margin": {"bottom": "1.25rem"}},
  "text": {
    "heading": {"family": ["Cabin", "sans-serif"], "weight": 700, "size": [[340, 21], [760, 28]], "lineHeight": 1.2,
      "align": "center", "colour": "#253319", "margin": {"top": "0", "bottom": "0.4em"},
      "focus": {"colour": "#8c2f6b", "width": "3px", "offset": "2px"}},
    "body": {"family": ["Cabin", "sans-serif"], "size": [[340, 16], [760, 18.5]], "lineHeight": 1.5,
      "align": "center", "colour": "#41503a", "margin": {"top": "0", "bottom": "1.2em"},
      "focus": {"colour": "#8c2f6b", "width": "3px", "offset": "2px"}},
    "button": {"family": ["Cabin", "sans-serif"], "weight": 600, "size": [[340, 16], [760, 17.5]], "lineHeight": 1.25,
      "colour": "#fff", "background": "#3f6212", "radius": "2em", "place": "center",
      "padding": {"top": "0.65em", "right": "1.5em", "bottom": "0.65em", "left": "1.5em"},
      "hover": {"background": "#2b450b"}, "focus": {"colour": "#8c2f6b", "width": "3px", "offset": "2px"}}
  }
})";

const LookText lookTexts[] = {
    {"quay", "Quay", wording::noted("White cards with a soft shadow and a filled button"), 400, quayStyle},
    {"folio", "Folio", wording::noted("No boxes, tall pictures, book type"), 380, folioStyle},
    {"lantern", "Lantern", wording::noted("Dark cards with light type and a bright button"), 420,
     lanternStyle},
    {"meadow", "Meadow", wording::noted("Tinted, round and centred"), 380, meadowStyle}};

Look lookOf(const LookText& text) {
    Look look{text.name, text.title, wording::say(text.description), {}, text.mostCardWidth};
    project::Problems problems;
    // A look is read as every project file is, so that its values obey the same rules.
    const std::string file =
        R"({"format": "tenter-project", "version": 1, "name": "Look", "style": )" + std::string(text.style) +
        R"(, "cards": [], "variants": [{"class": "look", "name": "Look", "bands": [{"set": {}}]}]})";
    if (auto read = project::parse(file, text.name, {}, problems)) look.style = std::move(read->row().style);
    return look;
}

}  // namespace

const std::vector<Look>& looks() {
    static const std::vector<Look> all = [] {
        std::vector<Look> made;
        for (const LookText& text : lookTexts)
            made.push_back(lookOf(text));
        return made;
    }();
    return all;
}

const Look* lookNamed(std::string_view name) {
    const auto at = std::ranges::find(looks(), name, &Look::name);
    return at == looks().end() ? nullptr : &*at;
}

}  // namespace tenter::start
