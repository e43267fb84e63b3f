#include <fstream>
#include <span>

#include "project/file.h"
#include "project/json_text.h"
#include "project/project_json.h"
#include "project/rules.h"
#include "project/validate.h"

namespace tenter::project {

namespace {

const char* const formatName = "tenter-project";

// Whether the file is a project that this version can read. If not, its other problems do not matter.
bool checkFormat(ReadContext& context, const Json& json) {
    if (!json.is_object() || !json.contains("format") || json["format"] != formatName) {
        return context.wrong("This is not a Tenter project.",
                             R"(A project file starts with {"format": "tenter-project", "version": 1.)");
    }
    if (!json.contains("version")) {
        return context.wrong(R"(The key "version" is missing.)", R"(Add "version": 1.)");
    }
    const ReadContext::Step step = context.at("version");
    int version = 0;
    if (!readValue(context, json["version"], version)) return false;
    if (version > formatVersion) {
        return context.wrong("The file was made by a newer version of Tenter.",
                             "Open it with that version; this one reads file format version " +
                                 std::to_string(formatVersion) + ".");
    }
    return true;
}

template <class T>
void readListAt(ReadContext& context, const ObjectReader& object, const char* key, std::size_t most,
                std::vector<T>& out) {
    const Json* list = object.find(key);
    if (list == nullptr) return;
    const ReadContext::Step step = context.at(key);
    readList(context, *list, most, out);
}

void readRange(ReadContext& context, const Json& json, Project& out) {
    ObjectReader object(context, json, out.rangeFileKeys, {"from", "to"});
    object.read("from", out.leastWidth);
    object.read("to", out.mostWidth);
}

void readHead(ReadContext& context, ObjectReader& object, Project& out) {
    object.require("name", out.name, "Add the name of the project.");
    object.read("row", out.row().name);
    object.read("language", out.language);
    const auto readChoice = [&](const char* key, const std::vector<std::string>& words, std::size_t& index) {
        const Json* value = object.find(key);
        if (value == nullptr) return false;
        const ReadContext::Step step = context.at(key);
        return readWord(context, *value, words, index);
    };
    std::size_t index = 0;
    if (readChoice("direction", {"ltr", "rtl"}, index)) out.rightToLeft = index == 1;
    if (readChoice("unit", {"rem", "px"}, index)) out.unit = index == 1 ? units::Unit::Px : units::Unit::Rem;
    object.read("headingLevel", out.row().headingLevel);
    if (const Json* range = object.find("range")) {
        const ReadContext::Step step = context.at("range");
        readRange(context, *range, out);
    }
}

}  // namespace

bool readValue(ReadContext& context, const Json& json, Project& out) {
    ObjectReader object(
        context, json, out.fileKeys,
        {"format", "version", "name", "row", "language", "direction", "headingLevel", "unit", "range", "page",
         "fonts", "style", "cards", "variants", "wishes", "checks", "given"});
    // The pictures of an imported row are on its site; only those saved with the page are files here.
    if (object.find("given") != nullptr) context.allowMissingPictures();
    readHead(context, object, out);
    object.read("page", out.page);
    readListAt(context, object, "fonts", mostFonts, out.fonts);
    object.read("style", out.row().style);
    if (object.find("cards") == nullptr) object.missing("cards", R"(Add "cards": [] or some cards.)");
    readListAt(context, object, "cards", mostCards, out.row().cards);
    if (object.find("variants") == nullptr) {
        return object.missing("variants", R"(Add "variants": [{"class": "…", "bands": [{}]}].)");
    }
    readListAt(context, object, "variants", mostVariants, out.row().variants);
    if (object.find("wishes") != nullptr) object.read("wishes", out.row().wishes.emplace());
    object.read("checks", out.checking);
    if (object.find("given") != nullptr) object.read("given", out.row().given.emplace());
    // A project that could not be read whole would break rules that its file does not break.
    return context.isSound() && validate(context, out);
}

/// Fills in the line and column of each problem, whose places are JSON pointers into `text`.
void addPositions(const std::string& text, std::span<Problem> problems) {
    std::vector<std::string> pointers;
    for (const Problem& problem : problems)
        pointers.push_back(problem.place == "/" ? "" : problem.place);
    const std::vector<std::string> positions = positionsOf(text, pointers);
    for (std::size_t i = 0; i < problems.size(); ++i)
        problems[i].position = positions[i];
}

std::optional<Project> parse(const std::string& text, const std::string& name,
                             const std::filesystem::path& folder, Problems& problems,
                             CheckNameTest isCheckName) {
    try {
        const std::optional<Json> json = parseJson(text, name, problems);
        if (!json) return std::nullopt;
        const std::size_t before = problems.size();
        ReadContext context(name, folder, problems, isCheckName);
        Project project;
        if (checkFormat(context, *json) && readValue(context, *json, project)) return project;
        addPositions(text, std::span(problems).subspan(before));
        return std::nullopt;
    } catch (const std::exception& error) {
        // No input is expected to cause this, but memory can run out.
        problems.push_back(
            {name, "", std::string("The file cannot be read: ") + error.what() + ".", "Try again."});
        return std::nullopt;
    }
}

std::optional<Project> read(const std::filesystem::path& file, Problems& problems,
                            CheckNameTest isCheckName) {
    const std::string name = file.string();
    std::error_code error;
    if (std::filesystem::is_directory(file, error)) {
        problems.push_back({name, "", "This is a folder.", "Name a project file in it."});
        return std::nullopt;
    }
    std::ifstream stream(file, std::ios::binary);
    if (!stream) {
        const bool exists = std::filesystem::exists(file, error);
        problems.push_back(
            {name, "", exists ? "You do not have permission to read the file." : "The file does not exist.",
             exists ? "Change its permissions." : "Check its name and folder."});
        return std::nullopt;
    }
    const std::uintmax_t size = std::filesystem::file_size(file, error);
    // One byte more than expected: a longer text shows that the file is too large or has grown.
    std::string text((error || size > largestFile ? largestFile : static_cast<std::size_t>(size)) + 1, '\0');
    stream.read(text.data(), static_cast<std::streamsize>(text.size()));
    text.resize(static_cast<std::size_t>(stream.gcount()));
    if (stream.bad()) {
        problems.push_back(
            {name, "", "The file could not be read to its end.", "Check the disk that it is on."});
        return std::nullopt;
    }
    const std::filesystem::path folder = file.parent_path();
    return parse(text, name, folder.empty() ? "." : folder, problems, isCheckName);
}

}  // namespace tenter::project
