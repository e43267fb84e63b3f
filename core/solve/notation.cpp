#include "solve/notation.h"

#include <algorithm>
#include <cmath>

#include "project/project_json.h"
#include "project/validate.h"
#include "project/wording.h"
#include "units/scan.h"

namespace tenter::solve {

namespace {

using project::Json;

const char* const roleExamples = "write for example heading.lines=2, body.measure=35-75 or button.size=15-";
const char* const widthExamples = "write for example @981-, @-980 or @600-980";

class Notation {
public:
    Notation(const std::string& text, const project::Project& project, project::Problems& problems)
        : text_(text), project_(project), problems_(problems) {}

    bool addTo(project::Wishes& wishes) {
        const std::size_t equals = text_.find('=');
        if (equals == std::string::npos)
            return wrong("this is not a wish", std::string(roleExamples) + ", or reserve=20%");
        const std::string name = text_.substr(0, equals);
        const std::string value = text_.substr(equals + 1);
        const std::size_t dot = name.find('.');
        return dot == std::string::npos ? addGeneral(name, value, wishes)
                                        : addOfRole(name.substr(0, dot), name.substr(dot + 1), value, wishes);
    }

private:
    bool wrong(const std::string& what, const std::string& fix) {
        problems_.push_back({text_, "", what, fix});
        return false;
    }

    std::optional<double> number(const std::string& text) const {
        const auto scanned = units::scanNumber(text);
        if (!scanned || !scanned->rest.empty()) return std::nullopt;
        return scanned->value;
    }
    bool putNumber(Json& json, const char* key, const std::string& text, const char* fix) {
        const auto value = number(text);
        if (!value) return wrong(project::inQuotes(text) + " is not a number", fix);
        json[key] = *value;
        return true;
    }
    /// `20%` or `0.2` as 0.2.
    bool putShare(Json& json, const char* key, const std::string& text) {
        const bool percent = text.ends_with('%');
        const auto value = number(percent ? text.substr(0, text.size() - 1) : text);
        if (!value) return wrong(project::inQuotes(text) + " is not a share", "write for example 20%");
        json[key] = percent ? *value / 100 : *value;
        return true;
    }
    /// `15-20`, `15-`, `-20`.
    bool putRange(Json& json, const char* least, const char* most, const std::string& text, const char* fix) {
        const std::size_t dash = text.find('-');
        if (dash == std::string::npos || text == "-")
            return wrong(project::inQuotes(text) + " is not a range", fix);
        const std::string low = text.substr(0, dash);
        const std::string high = text.substr(dash + 1);
        return (low.empty() || putNumber(json, least, low, fix)) &&
               (high.empty() || putNumber(json, most, high, fix));
    }
    bool putWord(Json& json, const char* key, const std::string& text,
                 const std::vector<std::pair<std::string, Json>>& words) {
        std::vector<std::string> known;
        for (const auto& [word, value] : words) {
            if (word == text) {
                json[key] = value;
                return true;
            }
            known.push_back(word);
        }
        return wrong(project::inQuotes(text) + " is not a value of this wish",
                     "write " + project::either(known));
    }

    bool putOfRole(Json& json, const std::string& key, const std::string& value) {
        if (key == "lines") return putNumber(json, "lines", value, "write a number of lines, for example 2");
        if (key == "measure")
            return putRange(json, "leastMeasure", "mostMeasure", value,
                            "write for example 35-75, 35- or -75");
        if (key == "size" && value == "locked") return putWord(json, "locked", value, {{"locked", true}});
        if (key == "size")
            return putRange(json, "leastSize", "mostSize", value,
                            "write for example 15-20, 15-, -20 or locked");
        if (key == "ratio") return putRatio(json, value);
        if (key == "growth")
            return putNumber(json, "growth", value, "write px per 100 px of width, for example 0.8");
        if (key == "column") return putWord(json, "withColumn", value, {{"with", true}, {"free", false}});
        if (key == "zoom") return putShare(json, "zoom", value);
        if (key == "breakpoints")
            return putWord(json, "breakpoints", value,
                           {{"same", "same"}, {"proportional", "proportional"}, {"free", "free"}});
        if (key == "variants")
            return putWord(json, "sameInVariants", value, {{"same", true}, {"free", false}});
        const std::vector<std::string> known{"lines",  "measure", "size",        "ratio",   "growth",
                                             "column", "zoom",    "breakpoints", "variants"};
        return wrong("there is no wish named " + project::inQuotes(key), "write " + project::either(known));
    }

    bool putRatio(Json& json, const std::string& value) {
        const std::size_t star = value.find('*');
        const char* const fix = "write for example body*1.25, or body*1.25- for at least that";
        if (star == std::string::npos) return wrong(project::inQuotes(value) + " is not a ratio", fix);
        if (!isRole(value.substr(0, star))) return false;
        json["ratioTo"] = value.substr(0, star);
        std::string times = value.substr(star + 1);
        const bool least = times.ends_with('-');
        if (least) times.pop_back();
        return putNumber(json, least ? "leastRatio" : "ratio", times, fix);
    }

    bool isRole(const std::string& name) {
        const std::vector<std::string> known = project::roles(project_);
        if (std::ranges::find(known, name) != known.end()) return true;
        const std::string similar = project::nearest(name, known);
        return wrong("the project has no role " + project::inQuotes(name),
                     similar.empty() ? "write " + project::either(known)
                                     : "did you mean " + project::inQuotes(similar) + "?");
    }

    bool addOfRole(const std::string& role, const std::string& key, std::string value,
                   project::Wishes& wishes) {
        if (!isRole(role)) return false;
        Json json = {{"role", role}};
        const std::size_t at = value.find('@');
        if (at != std::string::npos) {
            if (!putRange(json, "from", "upTo", value.substr(at + 1), widthExamples)) return false;
            value.resize(at);
        }
        project::RoleWishes wished;
        if (!putOfRole(json, key, value) || !read(json, wished)) return false;
        wishes.roles.push_back(std::move(wished));
        return true;
    }

    bool addGeneral(const std::string& key, const std::string& value, project::Wishes& wishes) {
        Json json = Json::object();
        bool sound = true;
        if (key == "aim" || key == "grid")
            json[key] = value;
        else if (key == "reserve" || key == "slack")
            sound = putShare(json, key.c_str(), value);
        else if (key == "narrow-slack")
            sound = putShare(json, "narrowSlack", value);
        else if (key == "without")
            sound = putCards(json, value);
        else
            return wrong("there is no wish named " + project::inQuotes(key),
                         std::string(roleExamples) +
                             "; aim, grid, reserve, slack, narrow-slack and without apply to all roles");
        project::Wishes wished;
        if (!sound || !read(json, wished)) return false;
        wishes = project::overlaid(wishes, wished);
        return true;
    }

    bool putCards(Json& json, const std::string& value) {
        json["without"] = Json::array();
        for (std::size_t at = 0; at <= value.size();) {
            const std::size_t end = std::min(value.find(',', at), value.size());
            const auto card = number(value.substr(at, end - at));
            if (!card || *card != std::floor(*card) || *card < 1 || *card > double(project_.cards.size()))
                return wrong(project::inQuotes(value.substr(at, end - at)) + " is not a card",
                             "write a number from 1 to " + std::to_string(project_.cards.size()));
            json["without"].push_back(*card - 1);
            at = end + 1;
        }
        return true;
    }

    /// Reads the value as in a project file, with the same checks. Problems name the argument, not a file.
    bool read(const Json& json, project::RoleWishes& out) {
        project::ReadContext reading(text_, {}, problems_);
        const project::ReadContext::Step wishes = reading.at("wishes");
        const project::ReadContext::Step roles = reading.at("roles");
        const project::ReadContext::Step one = reading.at(std::size_t{0});
        return isRead(readValue(reading, json, out) && project::validate(reading, out), out.fileKeys);
    }
    bool read(const Json& json, project::Wishes& out) {
        project::ReadContext reading(text_, {}, problems_);
        const project::ReadContext::Step wishes = reading.at("wishes");
        return isRead(readValue(reading, json, out), out.fileKeys);
    }
    bool isRead(bool sound, project::FileKeys& fileKeys) {
        for (project::Problem& problem : problems_)
            if (problem.file == text_) problem.place.clear();
        fileKeys = {};
        return sound;
    }

    const std::string& text_;
    const project::Project& project_;
    project::Problems& problems_;
};

}  // namespace

bool addWish(const std::string& text, const project::Project& project, project::Wishes& wishes,
             project::Problems& problems) {
    return Notation(text, project, problems).addTo(wishes);
}

}  // namespace tenter::solve
