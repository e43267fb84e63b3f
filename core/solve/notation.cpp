#include "solve/notation.h"

#include <algorithm>
#include <cmath>

#include "project/project_json.h"
#include "project/wording.h"
#include "units/scan.h"

namespace tenter::solve {

namespace {

using project::Json;

const char* const mendRole = "write such as heading.lines=2, body.measure=35-75 or button.size=15-";
const char* const mendWidths = "write such as @981-, @-980 or @600-980";

class Notation {
public:
    Notation(const std::string& text, const project::Project& project, project::Problems& problems)
        : text_(text), project_(project), problems_(problems) {}

    bool addTo(project::Wishes& wishes) {
        const std::size_t equals = text_.find('=');
        if (equals == std::string::npos)
            return wrong("this is no wish", std::string(mendRole) + ", or reserve=20%");
        const std::string name = text_.substr(0, equals);
        const std::string value = text_.substr(equals + 1);
        const std::size_t dot = name.find('.');
        return dot == std::string::npos ? addGeneral(name, value, wishes)
                                        : addOfRole(name.substr(0, dot), name.substr(dot + 1), value, wishes);
    }

private:
    bool wrong(const std::string& what, const std::string& mend) {
        problems_.push_back({text_, "", what, mend});
        return false;
    }

    std::optional<double> number(const std::string& text) const {
        const auto scanned = units::scanNumber(text);
        if (!scanned || !scanned->rest.empty()) return std::nullopt;
        return scanned->value;
    }
    bool putNumber(Json& json, const char* key, const std::string& text, const char* mend) {
        const auto value = number(text);
        if (!value) return wrong(project::inQuotes(text) + " is no number", mend);
        json[key] = *value;
        return true;
    }
    /// `20%` or `0.2` as 0.2.
    bool putShare(Json& json, const char* key, const std::string& text) {
        const bool percent = text.ends_with('%');
        const auto value = number(percent ? text.substr(0, text.size() - 1) : text);
        if (!value) return wrong(project::inQuotes(text) + " is no share", "write such as 20%");
        json[key] = percent ? *value / 100 : *value;
        return true;
    }
    /// `15-20`, `15-`, `-20`.
    bool putRange(Json& json, const char* least, const char* most, const std::string& text,
                  const char* mend) {
        const std::size_t dash = text.find('-');
        if (dash == std::string::npos || text == "-")
            return wrong(project::inQuotes(text) + " is no range", mend);
        const std::string low = text.substr(0, dash);
        const std::string high = text.substr(dash + 1);
        return (low.empty() || putNumber(json, least, low, mend)) &&
               (high.empty() || putNumber(json, most, high, mend));
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
        return wrong(project::inQuotes(text) + " is not known here", "write " + project::either(known));
    }

    bool putOfRole(Json& json, const std::string& key, const std::string& value) {
        if (key == "lines") return putNumber(json, "lines", value, "write a number of lines");
        if (key == "measure")
            return putRange(json, "leastMeasure", "mostMeasure", value, "write such as 35-75, 35- or -75");
        if (key == "size" && value == "locked") return putWord(json, "locked", value, {{"locked", true}});
        if (key == "size")
            return putRange(json, "leastSize", "mostSize", value, "write such as 15-20, 15-, -20 or locked");
        if (key == "ratio") return putRatio(json, value);
        if (key == "growth") return putNumber(json, "growth", value, "write px for 100 px of width");
        if (key == "column") return putWord(json, "withColumn", value, {{"with", true}, {"free", false}});
        if (key == "zoom") return putShare(json, "zoom", value);
        if (key == "breakpoints")
            return putWord(json, "breakpoints", value,
                           {{"same", "same"}, {"proportional", "proportional"}, {"free", "free"}});
        if (key == "variants")
            return putWord(json, "sameInVariants", value, {{"same", true}, {"free", false}});
        const std::vector<std::string> known{"lines",  "measure", "size",        "ratio",   "growth",
                                             "column", "zoom",    "breakpoints", "variants"};
        return wrong("there is no wish " + project::inQuotes(key), "write " + project::either(known));
    }

    bool putRatio(Json& json, const std::string& value) {
        const std::size_t star = value.find('*');
        const char* const mend = "write such as body*1.25, or body*1.25- for at least that";
        if (star == std::string::npos) return wrong(project::inQuotes(value) + " is no ratio", mend);
        if (!isRole(value.substr(0, star))) return false;
        json["ratioTo"] = value.substr(0, star);
        std::string times = value.substr(star + 1);
        const bool least = times.ends_with('-');
        if (least) times.pop_back();
        return putNumber(json, least ? "leastRatio" : "ratio", times, mend);
    }

    bool isRole(const std::string& name) {
        const std::vector<std::string> known = project::roles(project_);
        if (std::ranges::find(known, name) != known.end()) return true;
        const std::string near = project::nearest(name, known);
        return wrong("the project has no role " + project::inQuotes(name),
                     near.empty() ? "write " + project::either(known)
                                  : "did you mean " + project::inQuotes(near) + "?");
    }

    bool addOfRole(const std::string& role, const std::string& key, std::string value,
                   project::Wishes& wishes) {
        if (!isRole(role)) return false;
        Json json = {{"role", role}};
        const std::size_t at = value.find('@');
        if (at != std::string::npos) {
            if (!putRange(json, "from", "upTo", value.substr(at + 1), mendWidths)) return false;
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
            return wrong("there is no wish " + project::inQuotes(key),
                         std::string(mendRole) +
                             "; aim, grid, reserve, slack, narrow-slack and without hold for all roles");
        project::Wishes wished;
        if (!sound || !read(json, wished)) return false;
        wishes = project::laidOn(wishes, wished);
        return true;
    }

    bool putCards(Json& json, const std::string& value) {
        json["without"] = Json::array();
        for (std::size_t at = 0; at <= value.size();) {
            const std::size_t end = std::min(value.find(',', at), value.size());
            const auto card = number(value.substr(at, end - at));
            if (!card || *card != std::floor(*card) || *card < 1 || *card > double(project_.cards.size()))
                return wrong(project::inQuotes(value.substr(at, end - at)) + " is none of the cards",
                             "count them from 1 to " + std::to_string(project_.cards.size()));
            json["without"].push_back(*card - 1);
            at = end + 1;
        }
        return true;
    }

    /// Reads as from a project file, whose ranges hold; problems are the argument's.
    bool read(const Json& json, project::RoleWishes& out) {
        project::Reading reading(text_, {}, problems_);
        const project::Reading::Step wishes = reading.at("wishes");
        const project::Reading::Step roles = reading.at("roles");
        const project::Reading::Step one = reading.at(std::size_t{0});
        return isRead(readValue(reading, json, out), out.remembered);
    }
    bool read(const Json& json, project::Wishes& out) {
        project::Reading reading(text_, {}, problems_);
        const project::Reading::Step wishes = reading.at("wishes");
        return isRead(readValue(reading, json, out), out.remembered);
    }
    bool isRead(bool sound, project::Remembered& remembered) {
        for (project::Problem& problem : problems_)
            if (problem.file == text_) problem.place.clear();
        remembered = {};
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
