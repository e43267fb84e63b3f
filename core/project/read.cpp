#include <fstream>
#include <set>

#include "project/cascade.h"
#include "project/conflicts.h"
#include "project/file.h"
#include "project/json_text.h"
#include "project/project_json.h"
#include "project/rules.h"

namespace tenter::project {

namespace {

constexpr std::size_t mostCards = 500;
constexpr std::size_t mostVariants = 50;
constexpr std::size_t mostFonts = 100;

const char* const formatName = "tenter-project";

// Whether this is a project, and one this program can read. If not, nothing else is worth telling.
bool checkFormat(Reading& reading, const Json& json) {
    if (!json.is_object() || !json.contains("format") || json["format"] != formatName) {
        return reading.wrong("this is no Tenter project",
                             R"(a project file starts with {"format": "tenter-project", "version": 1)");
    }
    if (!json.contains("version")) {
        return reading.wrong(R"(the key "version" is missing)", R"(add "version": 1)");
    }
    const Reading::Step step = reading.at("version");
    int version = 0;
    if (!readValue(reading, json["version"], version)) return false;
    if (version > formatVersion) {
        return reading.wrong("made by a newer Tenter", "open it with that one; this one reads version " +
                                                           std::to_string(formatVersion));
    }
    return true;
}

template <class T>
void readListAt(Reading& reading, const ObjectReader& object, const char* key, std::size_t most,
                std::vector<T>& out) {
    const Json* list = object.find(key);
    if (list == nullptr) return;
    const Reading::Step step = reading.at(key);
    readList(reading, *list, most, out);
}

void readRange(Reading& reading, const Json& json, Project& out) {
    ObjectReader object(reading, json, out.rangeRemembered, {"from", "to"});
    object.read("from", out.leastWidth);
    object.read("to", out.mostWidth);
    if (reading.isSound() && out.leastWidth >= out.mostWidth) {
        reading.wrong("the range ends before it starts", R"(make "from" less than "to")");
    }
}

void readHead(Reading& reading, ObjectReader& object, Project& out) {
    object.require("name", out.name, "add the project's name");
    if (object.read("row", out.row) && !isClassName(out.row)) {
        const Reading::Step step = reading.at("row");
        reading.wrong(inQuotes(out.row) + " is no name for a row",
                      "use letters, digits, hyphens and underscores, a letter first");
    }
    if (object.read("language", out.language) && !isLanguage(out.language)) {
        const Reading::Step step = reading.at("language");
        reading.wrong(inQuotes(out.language) + " is no language tag", R"(write one such as "en" or "pt-BR")");
    }
    const auto readChoice = [&](const char* key, const std::vector<std::string>& words, std::size_t& index) {
        const Json* value = object.find(key);
        if (value == nullptr) return false;
        const Reading::Step step = reading.at(key);
        return readWord(reading, *value, words, index);
    };
    std::size_t index = 0;
    if (readChoice("direction", {"ltr", "rtl"}, index)) out.rightToLeft = index == 1;
    if (readChoice("unit", {"rem", "px"}, index)) out.unit = index == 1 ? units::Unit::Px : units::Unit::Rem;
    object.read("headingLevel", out.headingLevel);
    if (const Json* range = object.find("range")) {
        const Reading::Step step = reading.at("range");
        readRange(reading, *range, out);
    }
}

void checkClasses(Reading& reading, const Project& project) {
    const Reading::Step variants = reading.at("variants");
    if (project.variants.empty()) {
        reading.wrong("a project has at least one variant", R"(add {"class": "…", "bands": [{}]})");
    }
    std::set<std::string> seen;
    for (std::size_t i = 0; i < project.variants.size(); ++i) {
        const Reading::Step variant = reading.at(i);
        const Reading::Step name = reading.at("class");
        if (!seen.insert(project.variants[i].className).second) {
            reading.wrong("two variants have the class " + inQuotes(project.variants[i].className),
                          "give each its own class");
        }
    }
}

bool holdsOwnRatio(const Project& project) {
    for (const Variant& variant : project.variants) {
        for (std::size_t band = 0; band < variant.bands.size(); ++band) {
            if (resolve(project, variant, band).picture.ratio->isOwn()) return true;
        }
    }
    return false;
}

// A picture shown at its own ratio needs its size.
void checkPictures(Reading& reading, const Project& project) {
    const bool ownByStyle = holdsOwnRatio(project);
    const Reading::Step cards = reading.at("cards");
    for (std::size_t c = 0; c < project.cards.size(); ++c) {
        const Reading::Step card = reading.at(c);
        const Reading::Step parts = reading.at("parts");
        for (std::size_t p = 0; p < project.cards[c].parts.size(); ++p) {
            const auto* picture = std::get_if<PicturePart>(&project.cards[c].parts[p]);
            if (picture == nullptr || picture->width > 0) continue;
            if (picture->ratio ? !picture->ratio->isOwn() : !ownByStyle) continue;
            const Reading::Step part = reading.at(p);
            reading.wrong("the picture is to have its own ratio, but its size is not said",
                          R"(add "size": [width, height] in pixels)");
        }
    }
}

}  // namespace

bool readValue(Reading& reading, const Json& json, Project& out) {
    ObjectReader object(
        reading, json, out.remembered,
        {"format", "version", "name", "row", "language", "direction", "headingLevel", "unit", "range", "page",
         "fonts", "style", "cards", "variants", "wishes", "checks", "given"});
    // What a page prints has its pictures there; here are only those that were saved with it.
    if (object.find("given") != nullptr) reading.letPicturesBeElsewhere();
    readHead(reading, object, out);
    object.read("page", out.page);
    readListAt(reading, object, "fonts", mostFonts, out.fonts);
    object.read("style", out.style);
    if (object.find("cards") == nullptr) object.missing("cards", R"(add "cards": [] or some cards)");
    readListAt(reading, object, "cards", mostCards, out.cards);
    if (object.find("variants") == nullptr) {
        return object.missing("variants", R"(add "variants": [{"class": "…", "bands": [{}]}])");
    }
    readListAt(reading, object, "variants", mostVariants, out.variants);
    if (object.find("wishes") != nullptr) object.read("wishes", out.wishes.emplace());
    object.read("checks", out.checking);
    if (object.find("given") != nullptr) object.read("given", out.given.emplace());
    if (!reading.isSound()) return false;
    if (roles(out).size() > mostRoles) {
        return reading.wrong("more than " + std::to_string(mostRoles) + " roles",
                             "use the same role for like parts");
    }
    checkClasses(reading, out);
    checkPictures(reading, out);
    for (Problem& problem : conflicts(out))
        reading.wrongAt(problem.place, std::move(problem.what), std::move(problem.mend));
    return reading.isSound();
}

std::optional<Project> parse(const std::string& text, const std::string& name,
                             const std::filesystem::path& folder, Problems& problems) {
    try {
        const std::optional<Json> json = parseJson(text, name, problems);
        if (!json) return std::nullopt;
        Reading reading(name, folder, problems);
        Project project;
        if (!checkFormat(reading, *json) || !readValue(reading, *json, project)) return std::nullopt;
        return project;
    } catch (const std::exception& error) {
        // Not expected of any input; memory may still run out.
        problems.push_back(
            {name, "", std::string("the file could not be read: ") + error.what(), "try again"});
        return std::nullopt;
    }
}

std::optional<Project> read(const std::filesystem::path& file, Problems& problems) {
    const std::string name = file.string();
    std::error_code error;
    if (std::filesystem::is_directory(file, error)) {
        problems.push_back({name, "", "this is a folder", "name a project file in it"});
        return std::nullopt;
    }
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        const bool exists = std::filesystem::exists(file, error);
        problems.push_back({name, "", exists ? "the file may not be read" : "there is no such file",
                            exists ? "ask for leave to read it" : "check its name and folder"});
        return std::nullopt;
    }
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    // One byte more than there should be tells a file that is too large, or has grown.
    std::string text((error || size > largestFile ? largestFile : static_cast<std::size_t>(size)) + 1, '\0');
    stream.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(stream.gcount()));
    if (stream.bad()) {
        problems.push_back({name, "", "the file could not be read to its end", "check the disk it is on"});
        return std::nullopt;
    }
    const std::filesystem::path folder = file.parent_path();
    return parse(text, name, folder.empty() ? "." : folder, problems);
}

}  // namespace tenter::project
