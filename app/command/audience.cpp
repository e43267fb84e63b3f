#include "audience.h"

#include "opened.h"
#include "outcome.h"

namespace tenter::command {

void addAudience(CLI::App& verb, std::string& file) {
    verb.add_option(
            "--audience", file,
            "Weight findings by audience: a CSV file of visits per viewport width, with the columns width "
            "and visits. Default: every width counts the same.")
        ->type_name("FILE.csv");
}

bool readVisits(const std::string& file, checks::Audience& audience) {
    if (file.empty()) return true;
    const std::optional<std::string> text = fileText(file);
    if (!text) {
        refuse(file, "The audience file cannot be read.",
               "Check its name and folder; it must be a CSV file with the columns width and visits.");
        return false;
    }
    project::Problems problems;
    const auto read = checks::readAudience(*text, file, problems);
    printProblems(problems);
    if (read) audience = *read;
    return read.has_value();
}

}  // namespace tenter::command
