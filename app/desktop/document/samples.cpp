#include "document/samples.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <system_error>

#include "project/file.h"

namespace tenter::desktop {

namespace fs = std::filesystem;

namespace {

/// The folder of the samples; the build folder has the same tree as an installation.
fs::path samplesFolder() {
    const fs::path program = QCoreApplication::applicationDirPath().toStdString();
    const fs::path folder = (program / TENTER_DATA / "sample-projects").lexically_normal();
    std::error_code error;
    return fs::is_directory(folder, error) ? folder : fs::path();
}

std::size_t sizeOf(const nlohmann::json& json, const char* key) {
    const auto at = json.find(key);
    return at == json.end() || !at->is_array() ? 0 : at->size();
}

std::string textOf(const nlohmann::json& json, const char* key) {
    const auto at = json.find(key);
    return at == json.end() || !at->is_string() ? std::string() : at->get<std::string>();
}

/// The description in the file, or a count of cards and variants if it has none. Reads only these keys; the
/// file is checked when it is opened.
QString describe(const nlohmann::json& json) {
    if (const std::string own = textOf(json, "x-description"); !own.empty())
        return QString::fromStdString(own);
    QStringList names;
    bool onlyNumbers = true;  // every variant is named by its column count
    if (sizeOf(json, "variants") > 0)
        for (const auto& variant : json["variants"]) {
            if (!variant.is_object()) continue;
            names << QString::fromStdString(textOf(variant, "name"));
            bool number = false;
            names.back().toInt(&number);
            onlyNumbers = onlyNumbers && number;
        }
    const QString variants = onlyNumbers
                                 ? QObject::tr("%1 columns", "list of column counts").arg(names.join(", "))
                                 : names.join(", ");
    return QObject::tr("%n card(s); variants: %1", nullptr, static_cast<int>(sizeOf(json, "cards")))
        .arg(variants);
}

}  // namespace

std::vector<Sample> findSamples() {
    std::vector<Sample> samples;
    const fs::path folder = samplesFolder();
    if (folder.empty()) return samples;
    std::error_code error;
    for (fs::recursive_directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
        const std::string file = at->path().filename().string();
        if (!file.ends_with(project::fileEnding)) continue;
        std::ifstream stream(at->path());
        const auto json = nlohmann::json::parse(stream, nullptr, false);
        if (!json.is_object()) continue;
        samples.push_back({at->path(), QString::fromStdString(textOf(json, "name")), describe(json)});
    }
    std::sort(samples.begin(), samples.end(),
              [](const Sample& a, const Sample& b) { return a.file.string() < b.file.string(); });
    return samples;
}

}  // namespace tenter::desktop
