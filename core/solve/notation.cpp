#include "solve/notation.h"

#include <algorithm>
#include <cmath>

#include "project/project_json.h"
#include "project/validate.h"
#include "project/wording.h"
#include "solve/registry.h"
#include "solve/wish_key.h"

namespace tenter::solve {

namespace {

using project::Json;

const char* const roleExamples = "write for example heading.lines=2, body.measure=35-75 or button.size=15-";
const char* const widthExamples = "write for example @981-, @-980 or @600-980";

class Notation {
public:
    Notation(const std::string& text, const project::Project& project, project::Problems& problems)
        : text_(text), project_(project), problems_(problems), reader_(text, project, problems) {}

    bool addTo(project::Wishes& wishes) {
        const std::size_t equals = text_.find('=');
        if (equals == std::string::npos)
            return reader_.wrong("this is not a wish", std::string(roleExamples) + ", or reserve=20%");
        const std::string name = text_.substr(0, equals);
        const std::string value = text_.substr(equals + 1);
        const std::size_t dot = name.find('.');
        return dot == std::string::npos ? addGeneral(name, value, wishes)
                                        : addOfRole(name.substr(0, dot), name.substr(dot + 1), value, wishes);
    }

private:
    bool addOfRole(const std::string& role, const std::string& key, std::string value,
                   project::Wishes& wishes) {
        if (!reader_.isRole(role)) return false;
        Json json = {{"role", role}};
        const std::size_t at = value.find('@');
        if (at != std::string::npos) {
            if (!reader_.putRange(json, "from", "upTo", value.substr(at + 1), widthExamples)) return false;
            value.resize(at);
        }
        project::RoleWishes wished;
        if (!readKey(json, key, value) || !read(json, wished)) return false;
        wishes.roles.push_back(std::move(wished));
        return true;
    }

    bool readKey(Json& json, const std::string& name, const std::string& value) {
        std::vector<std::string> known;
        for (const WishKey* key : wishKeys()) {
            if (key->name == name) return key->read(reader_, value, json);
            known.emplace_back(key->name);
        }
        return reader_.wrong("there is no wish named " + project::inQuotes(name),
                             "write " + project::either(known));
    }

    bool addGeneral(const std::string& key, const std::string& value, project::Wishes& wishes) {
        Json json = Json::object();
        bool sound = true;
        if (key == "aim" || key == "grid")
            json[key] = value;
        else if (key == "reserve" || key == "slack")
            sound = reader_.putShare(json, key.c_str(), value);
        else if (key == "narrow-slack")
            sound = reader_.putShare(json, "narrowSlack", value);
        else if (key == "without")
            sound = putCards(json, value);
        else
            return reader_.wrong(
                "there is no wish named " + project::inQuotes(key),
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
            const auto card = NotationReader::number(value.substr(at, end - at));
            if (!card || *card != std::floor(*card) || *card < 1 ||
                *card > double(project_.row().cards.size()))
                return reader_.wrong(
                    project::inQuotes(value.substr(at, end - at)) + " is not a card",
                    "write a number from 1 to " + std::to_string(project_.row().cards.size()));
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
    NotationReader reader_;
};

}  // namespace

bool addWish(const std::string& text, const project::Project& project, project::Wishes& wishes,
             project::Problems& problems) {
    return Notation(text, project, problems).addTo(wishes);
}

}  // namespace tenter::solve
