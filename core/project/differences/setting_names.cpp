#include "project/differences/setting_names.h"

#include <array>
#include <cstdlib>
#include <string_view>

#include "project/wording.h"
#include "units/length.h"
#include "units/quantities.h"

namespace tenter::project {

namespace {

struct Name {
    std::string_view path;          ///< after the subject: row, card, picture, or a role of text
    std::string_view panel;         ///< of the window
    std::string_view label;         ///< in it
    std::string_view section = {};  ///< of the panel, if the label is the same in another section
};

// The labels of the panels (app/desktop/panels).
constexpr std::array rowNames{
    Name{"columns", "Row", "Columns"},        Name{"width", "Row", "Width"},
    Name{"maxWidth", "Row", "Maximum width"}, Name{"columnGap", "Row", "Column gap"},
    Name{"rowGap", "Row", "Row gap"},         Name{"lastLine", "Row", "Last line of cards"},
    Name{"level", "Row", "Align parts"},      Name{"background", "Colour", "Background"}};
constexpr std::array cardNames{Name{"direction", "Row", "Picture"},
                               Name{"pictureShare", "Row", "Picture width"},
                               Name{"bleed", "Row", "Full-bleed picture"},
                               Name{"linked", "Row", "Whole card is a link"},
                               Name{"background", "Colour", "Background"},
                               Name{"border/colour", "Colour", "Colour", "Border"},
                               Name{"border/width", "Colour", "Width", "Border"},
                               Name{"radius", "Colour", "Corner radius"},
                               Name{"shadow/colour", "Colour", "Colour", "Shadow"},
                               Name{"shadow/x", "Colour", "Offset x", "Shadow"},
                               Name{"shadow/y", "Colour", "Offset y", "Shadow"},
                               Name{"shadow/blur", "Colour", "Blur", "Shadow"},
                               Name{"shadow/spread", "Colour", "Spread", "Shadow"}};
constexpr std::array pictureNames{Name{"ratio", "Pictures", "Aspect ratio"},
                                  Name{"radius", "Pictures", "Corner radius"}};
constexpr std::array textNames{Name{"family", "Text", "Family"},
                               Name{"weight", "Text", "Weight"},
                               Name{"slant", "Text", "Slant"},
                               Name{"case", "Text", "Letter case"},
                               Name{"size", "Text", "Font size"},
                               Name{"follow", "Text", "Grows with"},
                               Name{"lineHeight", "Text", "Line height"},
                               Name{"letterSpacing", "Text", "Letter spacing"},
                               Name{"wordSpacing", "Text", "Word spacing"},
                               Name{"align", "Text", "Text align"},
                               Name{"wrap", "Text", "Text wrap"},
                               Name{"overflowWrap", "Text", "Long words"},
                               Name{"hyphens", "Text", "Hyphens"},
                               Name{"keepLines", "Text", "Minimum lines"},
                               Name{"place", "Spacing", "Alignment"},
                               Name{"colour", "Colour", "Text"},
                               Name{"background", "Colour", "Background"},
                               Name{"border/colour", "Colour", "Colour", "Border"},
                               Name{"border/width", "Colour", "Width", "Border"},
                               Name{"radius", "Colour", "Corner radius"},
                               Name{"hover/colour", "Colour", "Text", "Hover"},
                               Name{"hover/background", "Colour", "Background", "Hover"},
                               Name{"hover/borderColour", "Colour", "Border", "Hover"},
                               Name{"focus/colour", "Colour", "Colour", "Focus ring"},
                               Name{"focus/width", "Colour", "Width", "Focus ring"},
                               Name{"focus/offset", "Colour", "Offset", "Focus ring"}};

constexpr std::array boxNames{
    Name{"padding/top", "Spacing", "Padding top"},       Name{"padding/right", "Spacing", "Padding right"},
    Name{"padding/bottom", "Spacing", "Padding bottom"}, Name{"padding/left", "Spacing", "Padding left"},
    Name{"margin/top", "Spacing", "Margin top"},         Name{"margin/right", "Spacing", "Margin right"},
    Name{"margin/bottom", "Spacing", "Margin bottom"},   Name{"margin/left", "Spacing", "Margin left"}};

struct Choice {
    std::string_view setting;  ///< the last step of its path
    std::string_view value;
    std::string_view words;
};
constexpr std::array choices{Choice{"lastLine", "start", "At start"},
                             Choice{"lastLine", "center", "Centred"},
                             Choice{"level", "none", "Off"},
                             Choice{"level", "subgrid", "On"},
                             Choice{"direction", "stacked", "Above text"},
                             Choice{"direction", "beside", "Beside text"},
                             Choice{"slant", "normal", "Upright"},
                             Choice{"slant", "italic", "Italic"},
                             Choice{"case", "none", "As typed"},
                             Choice{"case", "uppercase", "Uppercase"},
                             Choice{"case", "capitalize", "Capitalise words"},
                             Choice{"follow", "viewport", "Viewport width"},
                             Choice{"follow", "card", "Card width"},
                             Choice{"align", "start", "Start"},
                             Choice{"align", "center", "Centre"},
                             Choice{"align", "end", "End"},
                             Choice{"wrap", "wrap", "Normal"},
                             Choice{"wrap", "balance", "Balanced"},
                             Choice{"overflowWrap", "normal", "Overflow"},
                             Choice{"overflowWrap", "break-word", "Break"},
                             Choice{"overflowWrap", "anywhere", "Break anywhere"},
                             Choice{"hyphens", "none", "None"},
                             Choice{"hyphens", "manual", "Soft hyphens"},
                             Choice{"place", "stretch", "Full width"},
                             Choice{"place", "start", "Start"},
                             Choice{"place", "center", "Centre"},
                             Choice{"place", "end", "End"}};

std::string_view lastStep(std::string_view path) {
    return path.substr(path.rfind('/') + 1);
}

template <std::size_t N>
const Name* find(const std::array<Name, N>& names, std::string_view path) {
    for (const Name& name : names)
        if (name.path == path) return &name;
    return nullptr;
}

const Name* nameOf(std::string_view subject, std::string_view path) {
    if (const Name* name = find(boxNames, path)) return name;
    if (subject == "row") return find(rowNames, path);
    if (subject == "card") return find(cardNames, path);
    if (subject == "picture") return find(pictureNames, path);
    return find(textNames, path);
}

std::string pointWords(const Json& point) {
    return units::px(point[1].get<double>()) + " at " + units::px(point[0].get<double>());
}

/// With its first letter in lower case.
std::string lowered(std::string_view label) {
    std::string out(label);
    if (out[0] >= 'A' && out[0] <= 'Z') out[0] = static_cast<char>(out[0] - 'A' + 'a');
    return out;
}

/// A ramp as a file has it: a number, or two pairs of width and size.
std::string rampWords(const Json& ramp) {
    if (ramp.is_number()) return units::px(ramp.get<double>());
    return pointWords(ramp[0]) + ", " + pointWords(ramp[1]);
}

/// `12 px` of `12px`, `35 %` of `35%`; other CSS as it is.
std::string lengthWords(const std::string& text) {
    const std::optional<units::Length> length = units::Length::parse(text);
    if (!length || length->isKeyword()) return text;
    if (length->unit() == units::Unit::Px) return units::px(length->value(), 4);
    if (length->unit() == units::Unit::Percent) return units::figure(length->value(), 4) + "\u00A0%";
    return text;
}

}  // namespace

std::string roleTitle(const std::string& role) {
    std::string out = role;
    if (!out.empty() && out[0] >= 'a' && out[0] <= 'z') out[0] = static_cast<char>(out[0] - 'a' + 'A');
    return out;
}

std::optional<SettingLabel> settingLabel(std::string_view path) {
    const bool text = path.starts_with("text/");
    if (text) path.remove_prefix(5);
    const std::size_t slash = path.find('/');
    if (slash == std::string_view::npos) return std::nullopt;
    const std::string_view subject = path.substr(0, slash);
    const Name* name = nameOf(text ? std::string_view() : subject, path.substr(slash + 1));
    if (name == nullptr) return std::nullopt;
    // The panel of the row has the padding of the row.
    const std::string_view panel = subject == "row" && name->panel == "Spacing" ? "Row" : name->panel;
    return SettingLabel{subject, panel, name->section, name->label};
}

bool SettingLabel::isSubjectObvious() const {
    return panel == "Pictures" || (panel == "Row" && subject == "row");
}

std::string settingName(const std::string& path) {
    const std::optional<SettingLabel> setting = settingLabel(path);
    if (!setting) return path;
    std::string out(setting->panel);
    out.append(" › ").append(setting->section);
    if (setting->section.empty())
        out += setting->label;
    else
        out.append(" ").append(lowered(setting->label));
    if (!setting->isSubjectObvious()) out.append(" of ").append(roleTitle(std::string(setting->subject)));
    return out;
}

std::string quoted(const std::string& text) {
    const std::string cut = inQuotes(text);
    return "“" + cut.substr(1, cut.size() - 2) + "”";
}

std::string valueWords(const Json& value) {
    if (value.is_boolean()) return value.get<bool>() ? "On" : "Off";
    if (value.is_number()) return units::figure(value.get<double>(), 4);
    if (value.is_null()) return "nothing";
    if (value.is_string()) {
        const auto& text = value.get_ref<const std::string&>();
        const bool css = text.starts_with("#") || text == "transparent" || units::Length::parse(text);
        return css ? lengthWords(text) : quoted(text);
    }
    return compactJson(value);
}

std::string settingWords(const std::string& path, const Json& value) {
    const std::string_view step = lastStep(path);
    if (step == "size" && path.starts_with("text/")) return rampWords(value);
    if (step == "family" && value.is_array()) {
        std::string list;
        for (const Json& family : value)
            list += (list.empty() ? "" : ", ") + family.get<std::string>();
        return list.empty() ? "no family" : list;
    }
    if (value.is_string()) {
        const auto& text = value.get_ref<const std::string&>();
        for (const Choice& choice : choices)
            if (choice.setting == step && choice.value == text) return std::string(choice.words);
        return step == "ratio" ? (text == "own" ? "that of the file" : text) : lengthWords(text);
    }
    return valueWords(value);
}

}  // namespace tenter::project
