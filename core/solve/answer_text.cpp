#include <algorithm>
#include <array>

#include "project/titles.h"
#include "project/wording.h"
#include "solve/answer_table.h"
#include "wording/say.h"

namespace tenter::solve {

namespace {

/// Number of code points: the columns that a text takes on a terminal, wide characters aside.
std::size_t columnsOf(const std::string& text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

struct Cell {
    std::string text;
    bool alignRight = false;
};

/// Lines of cells, padded so that the columns align.
std::string aligned(const std::vector<std::vector<Cell>>& lines) {
    std::vector<std::size_t> widths;
    for (const std::vector<Cell>& line : lines) {
        widths.resize(std::max(widths.size(), line.size()), 0);
        for (std::size_t i = 0; i < line.size(); ++i)
            widths[i] = std::max(widths[i], columnsOf(line[i].text));
    }
    std::string out;
    for (const std::vector<Cell>& line : lines) {
        std::string text;
        for (std::size_t i = 0; i < line.size(); ++i) {
            const std::string padding(widths[i] - columnsOf(line[i].text), ' ');
            if (i > 0) text += "  ";
            text += line[i].alignRight ? padding + line[i].text : line[i].text + padding;
        }
        text.erase(text.find_last_not_of(' ') + 1);
        out += text + "\n";
    }
    return out;
}

std::string sizeTable(const project::Project& project, const AnswerTable& table, bool isConverted) {
    const bool manyVariants = table.variants.size() > 1;
    std::vector<std::vector<Cell>> lines;
    const auto addLine = [&](const std::string& variant, std::vector<Cell> cells) {
        if (manyVariants) cells.insert(cells.begin(), Cell{variant});
        lines.push_back(std::move(cells));
    };
    const std::string before = wording::say("before");
    const std::string after = wording::say("after");
    addLine("", {{""}, {""}, {wording::say("narrow end")}, {""}, {wording::say("wide end")}, {""}});
    addLine(wording::say("variant"), {{wording::say("role")},
                                      {wording::say("band")},
                                      {before, true},
                                      {after, true},
                                      {before, true},
                                      {after, true}});
    for (const SizeRow& row : table.rows) {
        std::vector<Cell> cells{{roleLabel(row.role)}, {bandLabel(row)}};
        for (const EndSize& end : {row.narrow, row.wide}) {
            const std::string now = sizeLabel(end.before);
            const std::string then = sizeLabel(end.after);
            cells.push_back({now, true});
            cells.push_back({then == now ? wording::say("same") : then, true});
        }
        addLine(project::titleOf(project.row().variants[row.variant]), std::move(cells));
    }
    return (isConverted ? wording::say("Sizes in px at the two ends of each band (before: converted, not yet "
                                       "solved):")
                        : wording::say("Sizes in px at the two ends of each band:")) +
           "\n" + aligned(lines);
}

std::string toText(const ConflictTable& conflict) {
    std::string text = wording::say("No sizes satisfy these wishes together:") + "\n";
    for (const std::string& wish : conflict.wishes)
        text += "  " + wording::say("“%1”", {wish}) + "\n";
    for (const Limit& place : conflict.places)
        text += place.fullText + "\n";
    for (const std::string& note : conflict.notes)
        text += note + "\n";
    text += conflict.advice + "\n";
    for (const Resolution& one : conflict.resolutions)
        text += "  " + one.text + "\n";
    return text;
}

}  // namespace

std::string toText(const project::Project& project, const AnswerTable& table, bool isConverted) {
    std::string text;
    const auto addSection = [&](const std::string& section) {
        if (!section.empty()) text += (text.empty() ? "" : "\n") + section;
    };
    if (table.isUnchanged) addSection(wording::say("The current sizes satisfy every wish.") + "\n");
    if (!table.rows.empty()) addSection(sizeTable(project, table, isConverted));
    std::string limits;
    for (const SizeRow& row : table.rows)
        for (const Limit& limit : row.limits)
            limits += limit.fullText + "\n";
    if (!limits.empty()) addSection(wording::say("Limits:") + "\n" + limits);
    std::string notes;
    for (const std::string& note : table.notes)
        notes += note + "\n";
    addSection(notes);
    if (table.conflict) addSection(toText(*table.conflict));
    return text;
}

std::string summary(const ConflictTable& conflict) {
    std::vector<std::string> quoted;
    quoted.reserve(conflict.wishes.size());
    for (const std::string& wish : conflict.wishes)
        quoted.push_back(wording::say("“%1”", {wish}));
    return quoted.size() == 1
               ? wording::say("No sizes satisfy this wish: %1.", {quoted.front()})
               : wording::say("No sizes satisfy these wishes together: %1.", {project::listed(quoted)});
}

}  // namespace tenter::solve
