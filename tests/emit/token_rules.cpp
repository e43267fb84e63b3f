#include "emit/token_rules.h"

#include <map>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

namespace tenter::tests {

using Json = nlohmann::json;

namespace {

class Rules {
public:
    std::vector<std::string> faults;

    /// A group: members that start with $ are properties, all others are groups or tokens. Format § 6.
    void group(const Json& group, const std::string& at, const std::string& inherited) {
        if (!group.is_object()) return fault(at, "is not an object");
        std::string type = inherited;
        if (group.contains("$type")) type = typeOf(group["$type"], at);
        for (const auto& [name, member] : group.items()) {
            const std::string place = at + "/" + name;
            if (name.starts_with("$")) {
                property(name, member, place,
                         {"$type", "$description", "$extensions", "$extends", "$deprecated", "$root"});
                continue;
            }
            // Format § 5.1.1.
            if (name.empty() || name.find_first_of("{}.") != std::string::npos)
                fault(place, "is not a name of a group or a token");
            if (member.is_object() && member.contains("$value"))
                token(member, place, type);
            else
                this->group(member, place, type);
        }
    }

private:
    void fault(const std::string& at, const std::string& what) { faults.push_back(at + ": " + what); }

    std::string typeOf(const Json& type, const std::string& at) {
        static const std::set<std::string> known{
            "color",       "dimension", "fontFamily", "fontWeight", "duration", "cubicBezier", "number",
            "strokeStyle", "border",    "transition", "shadow",     "gradient", "typography"};
        if (type.is_string() && known.contains(type.get<std::string>())) return type.get<std::string>();
        fault(at, "has no known $type");
        return {};
    }

    void property(const std::string& name, const Json& value, const std::string& at,
                  const std::set<std::string>& allowed) {
        if (!allowed.contains(name)) fault(at, "is not a property of the format");
        if (name == "$description" && !value.is_string()) fault(at, "must be a string");
        if (name == "$extensions" && !value.is_object()) fault(at, "must be an object");
        if (name == "$deprecated" && !value.is_boolean() && !value.is_string())
            fault(at, "must be true, false or a string");
    }

    /// Format § 5. A token has no children.
    void token(const Json& token, const std::string& at, const std::string& inherited) {
        for (const auto& [name, member] : token.items())
            property(name, member, at + "/" + name,
                     {"$value", "$type", "$description", "$extensions", "$deprecated"});
        const std::string type = token.contains("$type") ? typeOf(token["$type"], at) : inherited;
        if (type.empty()) return fault(at, "has no type");
        value(type, token["$value"], at + "/$value");
    }

    void value(const std::string& type, const Json& value, const std::string& at) {
        if (type == "color") return colour(value, at);
        if (type == "dimension") return dimension(value, at);
        if (type == "fontFamily") return family(value, at);
        if (type == "fontWeight") return weight(value, at);
        if (type == "number") return number(value, at);
        if (type == "strokeStyle") return stroke(value, at);
        if (type == "border")
            return composite(value, at,
                             {{"color", "color"}, {"width", "dimension"}, {"style", "strokeStyle"}});
        if (type == "shadow") {
            if (value.is_array()) {
                if (value.empty()) fault(at, "is an empty list");
                for (std::size_t i = 0; i < value.size(); ++i)
                    this->value(type, value[i], at + "/" + std::to_string(i));
                return;
            }
            return composite(value, at,
                             {{"color", "color"},
                              {"offsetX", "dimension"},
                              {"offsetY", "dimension"},
                              {"blur", "dimension"},
                              {"spread", "dimension"}});
        }
        if (type == "typography")
            return composite(value, at,
                             {{"fontFamily", "fontFamily"},
                              {"fontSize", "dimension"},
                              {"fontWeight", "fontWeight"},
                              {"letterSpacing", "dimension"},
                              {"lineHeight", "number"}});
        fault(at, "has a type that these rules do not cover");
    }

    /// Format § 9: a composite value has exactly its members.
    void composite(const Json& value, const std::string& at,
                   const std::map<std::string, std::string>& types) {
        if (!value.is_object()) return fault(at, "is not an object");
        for (const auto& [name, type] : types)
            if (!value.contains(name))
                fault(at, "has no " + name);
            else
                this->value(type, value[name], at + "/" + name);
        for (const auto& [name, member] : value.items())
            if (!types.contains(name)) fault(at + "/" + name, "is not a member of this type");
    }

    void number(const Json& value, const std::string& at) {
        if (!value.is_number()) fault(at, "is not a number");
    }

    void dimension(const Json& value, const std::string& at) {
        if (!value.is_object()) return fault(at, "is not an object");
        if (!value.contains("value") || !value["value"].is_number()) fault(at, "has no number as its value");
        if (!value.contains("unit") || (value["unit"] != "px" && value["unit"] != "rem"))
            fault(at, "has neither px nor rem as its unit");
        if (value.size() != 2) fault(at, "has other members than value and unit");
    }

    void family(const Json& value, const std::string& at) {
        if (value.is_string()) return;
        if (!value.is_array() || value.empty()) return fault(at, "is neither a name nor a list of names");
        for (const Json& one : value)
            if (!one.is_string()) fault(at, "has a name that is not a string");
    }

    void weight(const Json& value, const std::string& at) {
        static const std::set<std::string> words{
            "thin",       "hairline",   "extra-light", "ultra-light", "light",       "normal",
            "regular",    "book",       "medium",      "semi-bold",   "demi-bold",   "bold",
            "extra-bold", "ultra-bold", "black",       "heavy",       "extra-black", "ultra-black"};
        const bool word = value.is_string() && words.contains(value.get<std::string>());
        const bool number = value.is_number() && value >= 1 && value <= 1000;
        if (!word && !number) fault(at, "is neither a weight from 1 to 1000 nor a word for one");
    }

    void stroke(const Json& value, const std::string& at) {
        static const std::set<std::string> words{"solid",  "dashed", "dotted", "double",
                                                 "groove", "ridge",  "outset", "inset"};
        if (!value.is_string() || !words.contains(value.get<std::string>()))
            fault(at, "is no stroke style that these rules cover");
    }

    /// Color Module § 4. Of the colour spaces, these rules cover sRGB.
    void colour(const Json& value, const std::string& at) {
        if (!value.is_object()) return fault(at, "is not an object");
        for (const auto& [name, member] : value.items())
            if (name != "colorSpace" && name != "components" && name != "alpha" && name != "hex")
                fault(at + "/" + name, "is not a member of a colour");
        if (!value.contains("colorSpace") || value["colorSpace"] != "srgb")
            fault(at, "has no colour space that these rules cover");
        const bool three =
            value.contains("components") && value["components"].is_array() && value["components"].size() == 3;
        if (!three) return fault(at, "does not have three components");
        for (const Json& component : value["components"])
            if (component != "none" && (!component.is_number() || component < 0 || component > 1))
                fault(at, "has a component outside of 0 to 1");
        if (value.contains("alpha") &&
            (!value["alpha"].is_number() || value["alpha"] < 0 || value["alpha"] > 1))
            fault(at, "has an alpha outside of 0 to 1");
        static const std::regex hex("#[0-9a-fA-F]{6}");
        if (value.contains("hex") &&
            (!value["hex"].is_string() || !std::regex_match(value["hex"].get<std::string>(), hex)))
            fault(at, "has a hex that does not consist of # and six digits");
    }
};

}  // namespace

std::vector<std::string> tokenFaults(const std::string& text) {
    const Json file = Json::parse(text, nullptr, false);
    if (file.is_discarded()) return {": is not JSON"};
    Rules rules;
    rules.group(file, "", "");
    return rules.faults;
}

}  // namespace tenter::tests
