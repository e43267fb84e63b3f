#include "emit/table.h"

#include <algorithm>

#include "emit/escape.h"

namespace tenter::emit {

namespace {

/// The number of code points, an estimate of terminal columns.
std::size_t columnsOf(const std::string& text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

}  // namespace

std::string table(const std::vector<Cells>& lines) {
    std::vector<std::size_t> widths(lines.front().size(), 0);
    for (const Cells& line : lines)
        for (std::size_t i = 0; i < line.size(); ++i)
            widths[i] = std::max(widths[i], columnsOf(line[i]));
    std::string out;
    for (const Cells& line : lines) {
        for (std::size_t i = 0; i < line.size(); ++i)
            out += "  " + std::string(widths[i] - columnsOf(line[i]), ' ') + line[i];
        out += '\n';
    }
    return out;
}

std::string oneLine(const std::string& text) {
    std::string out = repaired(text);
    std::ranges::replace_if(
        out, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }, ' ');
    return out;
}

}  // namespace tenter::emit
