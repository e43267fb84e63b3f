// Any bytes as a font file of a project: text is shaped with it and broken into lines, or the file is
// refused.
#include <unistd.h>

#include <cmath>
#include <filesystem>
#include <fstream>

#include "lines.h"
#include "text/paragraph.h"

namespace {

using namespace tenter;

/// A folder for the font file, removed at the end.
struct Folder {
    std::filesystem::path path =
        std::filesystem::temp_directory_path() / ("tenter-fuzz-font-" + std::to_string(getpid()));
    Folder() { std::filesystem::create_directories(path); }
    ~Folder() {
        std::error_code error;
        std::filesystem::remove_all(path, error);
    }
};

}  // namespace

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    static const Folder folder;
    std::ofstream(folder.path / "font", std::ios::binary) << fuzz::textOf(data, size);
    // Opening the fonts of the system for each input would take most of the time.
    static text::Fonts fonts;
    fonts.use({}, folder.path);
    // It is the last family of every list, too, so that no font of the system is opened.
    std::vector<project::FontEntry> entries(2);
    entries[0].family = "Hostile";
    entries[1].family = "serif";
    for (project::FontEntry& entry : entries) {
        entry.file = "font";
        entry.leastWeight = 100;
        entry.mostWeight = 900;
    }
    fonts.use(entries, folder.path);
    text::ShapingStyle style;
    style.family = {"Hostile"};
    // Every sixteenth input shapes other scripts, too, for which fonts of the system are searched.
    const bool other = size % 16 == 0;
    const project::Copy copy{
        {project::Run::Kind::Plain, "Low tide at 7.40: fi\u00adne.", ""},
        {project::Run::Kind::Strong, other ? "\u05d0\u05d1 \u0645\u062f" : "Wa-ter AV", ""}};
    for (const text::BreakProfile* profile : text::profiles()) {
        const auto paragraph = text::Paragraph::prepare(copy, style, fonts, *profile);
        for (const text::Cluster& cluster : paragraph->clusters())
            fuzz::require(std::isfinite(cluster.advance), "an advance is finite");
        for (const double available : {0.0, 30.0, 200.0, 5000.0}) {
            for (const auto wrap : {project::OverflowWrap::Normal, project::OverflowWrap::Anywhere}) {
                text::LineQuery query;
                query.available = available;
                query.overflowWrap = wrap;
                std::vector<text::Line> lines;
                text::breakLines(*paragraph, query, *profile, lines);
                fuzz::requireCovered(*paragraph, lines);
            }
        }
    }
}
