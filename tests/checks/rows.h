// Rows with a finding of each check.
#pragma once

#include <map>
#include <string>

#include "checking.h"
#include "project/role_wishes.h"

namespace tenter::test::rows {

inline const std::string twoColumns =
    R"([{"upTo": 600, "set": {"row": {"columns": 1}}}, {"set": {"row": {"columns": 2}}}])";

inline project::Project withStyle(project::Project project, const std::string& path,
                                  const std::string& json) {
    set(project, path, json);
    return project;
}

inline project::Project buttons(const std::string& one, const std::string& other) {
    return quiet(R"([{"parts": [{"role": "button", )" + one + R"(}]}, {"parts": [{"role": "button", )" +
                 other + "}]}]");
}

inline project::Project pictured(int width, int height, const std::string& alt) {
    return quiet(R"([{"parts": [{"picture": "quay.png", "size": [)" + std::to_string(width) + ", " +
                     std::to_string(height) + R"(], "alt": ")" + alt + R"("}]}])",
                 "[{}]", R"({"columns": 1, "width": "100%", "maxWidth": "600px"})");
}

inline project::Project neighbours(const std::string& one, const std::string& other) {
    project::Project project = quiet("[" + one + "," + other + "]", twoColumns, R"({"columnGap": "0"})");
    set(project, "text/heading/size", "20");
    return project;
}

inline project::Project steppedAt800(double before, double after) {
    project::Project project = quiet("", R"([{"upTo": 800}, {}])");
    setInBand(project, 0, "text/body/size", std::to_string(before));
    setInBand(project, 1, "text/body/size", std::to_string(after));
    return project;
}

inline project::Project tightHeading() {
    // Size and column grow alike, so a line that just fits does so at every width.
    project::Project project = headed("Out and back over the flats");
    set(project, "row/width", R"("50vw")");
    set(project, "text/heading/size", "[[320, 10], [1920, 60]]");
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    const double line = layout::layOut(row, 1600).lines.front().line.width;
    set(project, "row/width", R"(")" + std::to_string(line / 16 * 1.001) + R"(vw")");
    return project;
}

inline project::Project lastWordAlone(const std::string& heading) {
    project::Project project = headed(heading);
    const layout::PreparedRow row(project, 0, checkStore(), text::blink());
    const double whole = layout::layOut(row, 1900).lines.front().line.width;
    set(project, "row/width", R"(")" + std::to_string(whole - 5) + R"(px")");
    return project;
}

inline project::Project withMarkup(const std::string& second) {
    project::Project project =
        quiet("[" + card("Low tide", "Out.") + ", " + card("High water", "Home.") + "]");
    project::Given& given = project.row().given.emplace();
    given.markup =
        "<div class=row><div class=walk><h2>Low tide</h2><p>Out.</p><a href=#b>Book</a></div>"
        "<div class=walk>" +
        second + "<p>Home.</p><a href=#b>Book</a></div></div>";
    given.theme =
        "@media (max-width: 980px) { .a { color: red } } @media (min-width: 981px) { .a { color: blue } }";
    given.selectors = {{"row", ""},
                       {"card", ".walk"},
                       {"heading", ".walk > :first-child"},
                       {"body", ".walk p"},
                       {"button", ".walk a"}};
    return project;
}

inline project::Project lateFont() {
    project::Project project = headed("Up the creek at dusk with lanterns, for whoever likes to walk slowly");
    set(project, "text/heading/family", R"(["Vollkorn", "DejaVu Sans"])");
    project.fonts.emplace_back().family = "Vollkorn";
    return project;
}

inline project::Project smallInset() {
    project::Project project = quiet();
    set(project, "card/padding", R"({"top": "6px", "right": "6px", "bottom": "6px", "left": "6px"})");
    set(project, "card/background", R"("#dfe6ea")");
    return project;
}

inline project::Project inPx() {
    project::Project project = quiet();
    project.unit = units::Unit::Px;
    return project;
}

inline project::Project wishing(project::Project project, const std::string& role, int lines) {
    project::ownWishesOrNew(project, role, {}).lines = lines;
    return project;
}

inline project::Project closeLinks() {
    project::Project project = quiet(
        R"([{"parts": [{"role": "button", "copy": "Tides", "link": "#a"}, {"role": "button", "copy": "Winds", "link": "#b"}]}])");
    set(project, "text/button/lineHeight", R"("20px")");
    set(project, "text/button/padding", R"({"top": "0", "bottom": "0"})");
    set(project, "text/button/border/width", R"("0")");
    set(project, "text/button/margin", R"({"top": "0", "bottom": "0"})");
    return project;
}

inline project::Project cards(const std::string& count, int columns) {
    std::string all;
    for (const char name : count)
        all += (all.empty() ? "" : ",") + card(std::string(1, name), "Out.");
    return quiet("[" + all + "]", R"([{"set": {"row": {"columns": )" + std::to_string(columns) + "}}}]");
}

/// Rows that between them have a finding of every check, most with several statements of it.
inline std::multimap<std::string, project::Project> rowsByCheck() {
    const std::string wide = "Saltmarshwatchersassociation";
    const std::string linked = R"("copy": "Book a walk", "link": "#a")";
    const auto pictureCard = [](int height, const std::string& name) {
        return R"({"parts": [{"picture": ")" + name + R"(.png", "size": [300, )" + std::to_string(height) +
               R"(], "alt": "A quay"}, {"role": "heading", "copy": ")" + name +
               R"("}, {"role": "body", "copy": "Out."}]})";
    };
    return {
        {"alternative", pictured(6000, 4000, "")},
        {"button-lines", withStyle(buttons(linked, linked), "text/button/size", "90")},
        {"contrast", withStyle(quiet(), "text/body/colour", R"("#777777")")},
        {"contrast", withStyle(quiet(), "text/button/hover/background", R"("#e0e0e0")")},
        {"contrast", withStyle(quiet(), "text/button", R"({"colour": "#bbbbbb", "background": "#ffffff"})")},
        {"engines", headed("Tern Holm/Causeway/Sluice/Quay/Old Creek/Saltmarsh")},
        {"engines", withStyle(headed("Either/or mornings for under-12s and whoever brings them"),
                              "text/heading/size", "[[320, 24], [1920, 40]]")},
        {"focus", withStyle(quiet(), "text/button/focus/colour", R"("#959595")")},
        {"focus", withStyle(quiet(), "text/button/focus/width", R"("0")")},
        {"font", withStyle(quiet(), "text/body/family", R"(["Nowhere Grotesk"])")},
        {"font", withStyle(quiet(), "text/heading/weight", "250")},
        {"growth", withStyle(quiet(), "text/body/size", "[[400, 20], [1200, 15]]")},
        {"growth", steppedAt800(16, 17)},
        {"growth", steppedAt800(17, 16)},
        {"heading-levels", withMarkup("<h4>High water</h4>")},
        {"theme-gap", withMarkup("<h3>High water</h3>")},
        {"theme-obstacle", withMarkup("<h3 style='margin: 9px !important'>High water</h3>")},
        {"heading-lines", withStyle(headed(longText), "text/heading/size", "40")},
        {"holes", cards("ABCD", 3)},
        {"holes", cards("ABCDE", 4)},
        {"inset", smallInset()},
        {"label-in-name", buttons(linked + R"(, "name": "Reserve")", linked)},
        {"last-word", lastWordAlone("The long way round the saltmarsh at dusk")},
        {"last-word", lastWordAlone("Over the flats and home by the seaside\u00ADbus")},
        {"late-font", lateFont()},
        {"link-name", buttons(R"("copy": " ", "link": "#a")", linked)},
        {"link-purpose", buttons(linked, R"("copy": "Book a walk", "link": "#b")")},
        {"measure", quiet("[" + card("Low tide", longText) + "]")},
        {"measure",
         quiet("[" + card("Low tide", longText) + "]", "[{}]", R"({"columns": 1, "width": "190px"})")},
        {"out-of-line", neighbours(card("Low tide and the long way round by the sea wall", "Out and back."),
                                   card("Dunes", "Out and back."))},
        {"out-of-line", withStyle(neighbours(pictureCard(200, "Low"), pictureCard(300, "High")),
                                  "picture/ratio", R"("own")")},
        {"out-of-line", neighbours(pictureCard(200, "Low"), card("High", "Out."))},
        {"picture", pictured(750, 500, "The quay")},
        {"picture", pictured(1100, 734, "The quay")},
        {"picture", withStyle(pictured(6000, 6000, "The quay"), "picture/ratio", R"("1/3")")},
        {"reflow", withStyle(quiet(), "row/width", R"("321px")")},
        {"reflow", withStyle(headed(wide), "text/heading", R"({"size": 40, "overflowWrap": "normal"})")},
        {"small-type", withStyle(quiet(), "text/body/size", "[[320, 11], [1120, 13]]")},
        {"spare-room", quiet("[" + card("A", "One.") + "," + card("B", longText) + "]", "[{}]",
                             R"({"columns": 2, "width": "600px"})")},
        {"spare-room", withStyle(quiet("[" + card("A", "One.") + "," + card("B", "Two.") + "]", "[{}]",
                                       R"({"columns": 2, "width": "600px"})"),
                                 "text/heading/keepLines", "2")},
        {"stops",
         withStyle(withStyle(quiet("[" + card("Low tide", longText) + "]"), "row/maxWidth", R"("1200px")"),
                   "text/body/size", "[[400, 15], [1500, 18]]")},
        {"stops",
         withStyle(withStyle(quiet("[" + card("Low tide", longText) + "]"), "row/maxWidth", R"("1200px")"),
                   "text/body/size", "[[400, 15], [1000, 18]]")},
        {"target", closeLinks()},
        {"target", withStyle(quiet(), "text/button/padding", R"({"top": "9px", "bottom": "9px"})")},
        {"text-spacing",
         withStyle(headed("Saltmarshwatchers"), "text/heading", R"({"size": 32, "overflowWrap": "normal"})")},
        {"tight-fit", tightHeading()},
        {"tight-fit", wishing(tightHeading(), "heading", 1)},
        {"unit", inPx()},
        {"word", withStyle(headed(wide), "text/heading/size", "40")},
        {"word", withStyle(headed(wide), "text/heading", R"({"size": 40, "overflowWrap": "normal"})")},
        {"zoom", withStyle(quiet(), "text/heading/size", "[[100, 4], [1900, 76]]")},
        {"zoom", withStyle(quiet(), "text/heading/size", "[[533.3, 16], [1600, 24.2]]")},
    };
}

}  // namespace tenter::test::rows
