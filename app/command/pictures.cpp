#include <algorithm>
#include <memory>
#include <nlohmann/json.hpp>
#include <sstream>

#include "audience.h"
#include "emit/page.h"
#include "help.h"
#include "opened.h"
#include "outcome.h"
#include "picture_address.h"
#include "pictures/listing.h"
#include "units/quantities.h"
#include "verbs.h"

namespace tenter::command {

namespace {

using nlohmann::ordered_json;

struct PictureArguments : Arguments {
    std::string into;
    std::string formats = "jpeg";
    int quality = 0;  // 0: not given
    int candidates = pictures::usualCandidates;
    std::string ratios;
    std::string audience;
    std::string address;
    bool allVariants = false;
    bool json = false;
};

/// The parts of `text` between commas.
std::vector<std::string> listItems(const std::string& text) {
    std::vector<std::string> items;
    std::istringstream stream(text);
    for (std::string item; std::getline(stream, item, ',');)
        items.push_back(item);
    return items;
}

/// Reads --format. If it is wrong, a message has been printed.
bool readFormats(const std::string& text, pictures::CutOptions& options) {
    options.formats.clear();
    for (const std::string& name : listItems(text)) {
        const std::optional<pictures::Format> format = pictures::formatNamed(name);
        if (!format) {
            refuse("--format", "A format must be jpeg, png, webp or avif; it is \"" + name + "\".", "");
            return false;
        }
        if (std::ranges::find(options.formats, *format) == options.formats.end())
            options.formats.push_back(*format);
    }
    if (!options.formats.empty()) return true;
    refuse("--format", "A format is missing.", "Use a list such as jpeg,webp.");
    return false;
}

/// Reads --ratios. If it is wrong, a message has been printed.
bool readRatios(const std::string& text, pictures::CutOptions& options) {
    const std::vector<std::string> items = listItems(text);
    for (const std::string& item : items) {
        std::istringstream stream(item);
        stream.imbue(std::locale::classic());
        double ratio = 0;
        if (!(stream >> ratio) || !stream.eof() || !(ratio >= 0.5 && ratio <= 5)) {
            refuse("--ratios", "A pixel ratio must be a number from 0.5 to 5; it is \"" + item + "\".", "");
            return false;
        }
        options.ratios.push_back({ratio, 1.0 / static_cast<double>(items.size())});
    }
    return true;
}

/// The elements of all pictures of the variants.
std::string elementsOf(const Opened& opened, const pictures::CutOptions& options,
                       const pictures::Listing& listing, const std::string& address) {
    std::string out;
    for (const std::size_t variant : options.variants)
        out += emit::pictureElements(opened.project, variant, {&listing, address});
    return out;
}

ordered_json jsonOf(const pictures::CutResult& result, const pictures::Listing& listing) {
    ordered_json json = ordered_json::parse(pictures::listingJson(listing));
    json["files"] = ordered_json::array();
    for (const pictures::WrittenFile& file : result.files)
        json["files"].push_back({{"name", file.name},
                                 {"size", {file.size.width, file.size.height}},
                                 {"bytes", file.bytes},
                                 {"kept", file.isKept}});
    return json;
}

/// `12 files written to cut (1.4 MB), 4 kept`, on standard error.
void printSummary(const pictures::CutResult& result, const std::string& folder) {
    std::size_t kept = 0;
    double bytes = 0;
    for (const pictures::WrittenFile& file : result.files) {
        kept += file.isKept ? 1 : 0;
        bytes += file.isKept ? 0 : static_cast<double>(file.bytes);
    }
    const std::size_t written = result.files.size() - kept;
    std::string line =
        std::to_string(written) + (written == 1 ? " file" : " files") + " written to " + folder;
    if (written > 0) line += " (" + units::figure(bytes / 1e6, 2) + " MB)";
    if (kept > 0) line += ", " + std::to_string(kept) + " up to date";
    printNote(line);
}

/// Prints how unusual files are handled and which are too small, on standard error.
void printNotes(const pictures::CutPlan& plan) {
    for (const pictures::CutPicture& picture : plan.pictures) {
        for (const std::string& note : picture.notes)
            printNote(picture.source + ": " + note);
        if (picture.isTooSmall)
            printNote(picture.source +
                      ": It has too few pixels for screens with 2 device pixels per CSS px: it should be at "
                      "least " +
                      std::to_string(picture.upload.width) + " × " + std::to_string(picture.upload.height) +
                      " px.");
    }
}

int runPictures(const PictureArguments& arguments) {
    pictures::CutOptions options;
    if (!readFormats(arguments.formats, options) || !readRatios(arguments.ratios, options)) return wrongInput;
    if (arguments.quality > 0) options.quality = arguments.quality;
    options.candidates = arguments.candidates;
    checks::Audience audience;
    if (!readVisits(arguments.audience, audience)) return wrongInput;
    options.visits = audience.visits;
    const std::unique_ptr<Opened> opened = openProject(arguments);
    if (!opened) return wrongInput;
    options.variants = {opened->variant};
    if (arguments.allVariants) options.variants = project::everyVariant(opened->project);

    pictures::CutPlan plan =
        pictures::planCuts(opened->project, opened->folder, opened->store, *opened->profile, options);
    for (project::Problem& problem : plan.problems)
        problem.file = arguments.project;
    printProblems(plan.problems);
    printNotes(plan);
    const pictures::CutResult result = pictures::writeCuts(plan, opened->project, arguments.into);
    printProblems(result.problems);
    if (!result.isComplete && result.files.empty()) return wrongInput;
    printSummary(result, arguments.into);
    pictures::Listing listing;
    listing.pictures = pictures::listed(plan, opened->project);
    if (!result.isComplete) listing = pictures::listingIn(arguments.into).value_or(pictures::Listing{});
    const std::string address = pictureAddress(arguments, arguments.into, arguments.address);
    const int delivered = deliver(arguments, arguments.json ? jsonOf(result, listing).dump(2) + "\n"
                                                            : elementsOf(*opened, options, listing, address));
    return result.isComplete && delivered == done ? done : wrongInput;
}

}  // namespace

void addPictures(CLI::App& app, Action& action) {
    auto arguments = std::make_shared<PictureArguments>();
    CLI::App* verb =
        app.add_subcommand("pictures", "Cut the pictures to the sizes the row needs, with srcset and sizes");
    addFiles(*verb, *arguments);
    verb->add_option("--into", arguments->into,
                     "Folder for the files; it is made if it does not exist. Files that are there and up to "
                     "date are kept. Default: none; it must be given.")
        ->required()
        ->type_name("FOLDER");
    CLI::Option* one = addVariant(*verb, *arguments);
    verb->add_flag("--all-variants", arguments->allVariants,
                   "Cut files that serve all variants. Cannot be used with --variant.")
        ->excludes(one);
    verb->add_option("--format", arguments->formats,
                     "Formats of the files, separated by commas: jpeg, png, webp, avif. A picture with "
                     "transparent parts gets png in place of jpeg. Default: jpeg.")
        ->type_name("LIST");
    verb->add_option(
            "--quality", arguments->quality,
            "Quality of the files, 1 to 100; not used for png. Default: 80 for jpeg, 78 for webp, 58 "
            "for avif.")
        ->type_name("N")
        ->check(wholeNumberFrom(1, 100));
    verb->add_option("--candidates", arguments->candidates,
                     "Number of files for each picture and format, 1 to 12. Default: 4.")
        ->type_name("K")
        ->check(wholeNumberFrom(1, pictures::mostCandidates));
    verb->add_option("--ratios", arguments->ratios,
                     "Device pixel ratios of screens in equal shares, such as 1,2,3. Default: 2 and 3 for "
                     "viewports below 768 px, 1 and 2 for wider ones.")
        ->type_name("LIST");
    verb->add_option("--audience", arguments->audience,
                     "Choose the widths for this audience: a CSV file of visits per viewport width, with the "
                     "columns width and visits. Default: every width counts the same.")
        ->type_name("FILE.csv");
    addPictureAddress(*verb, arguments->address);
    verb->add_flag("--json", arguments->json,
                   "Print the files and pictures as JSON. Without it: the HTML element of each picture.");
    setHelpEnd(*verb,
               "Widths are chosen so that visits load the fewest surplus pixels. Nothing is enlarged, and no "
               "picture of the project is overwritten. The folder gets a listing, pictures.json, for "
               "tenter-cli markup --pictures.",
               {"pictures row.tenter.json --into cut --format jpeg,webp",
                "pictures row.tenter.json --into cut --candidates 3 --audience visits.csv --json"},
               {exitDone(),
                {2, "The input is wrong or a picture cannot be cut. Standard error says where and why."}});
    verb->callback([&action, arguments] { action = [arguments] { return runPictures(*arguments); }; });
}

}  // namespace tenter::command
