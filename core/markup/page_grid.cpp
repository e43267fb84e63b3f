#include "markup/page_grid.h"

#include <algorithm>

#include "css/ascii.h"
#include "css/longhands.h"
#include "css/math.h"

namespace tenter::markup {

namespace {

using css::Line;

constexpr int mostTracks = 200;

Line sum(const Line& one, const Line& other) {
    return {one.atZero + other.atZero, one.perPx + other.perPx};
}
Line scaled(double factor, const Line& line) {
    return {factor * line.atZero, factor * line.perPx};
}

std::string inside(const std::string& word) {
    const std::size_t open = word.find('(');
    return word.substr(open + 1, word.rfind(')') - open - 1);
}

std::optional<double> numberIn(std::string_view text) {
    css::Problems ignored;
    const auto value = css::calculate(text, {}, ignored);
    return value && value->isNumber ? std::optional(value->number) : std::nullopt;
}

double shareIn(const std::string& word) {
    const bool isShare = word.size() > 2 && word.ends_with("fr");
    return isShare ? numberIn(std::string_view(word).substr(0, word.size() - 2)).value_or(0) : 0;
}

bool isByContent(const std::string& word) {
    return word == "auto" || word == "min-content" || word == "max-content" ||
           word.starts_with("fit-content(");
}

class TemplateReader {
public:
    TemplateReader(const Line& whole, const GridLength& length, const GridRepetitions& repetitions)
        : whole_(whole), length_(length), repetitions_(repetitions) {}

    bool read(std::string_view columns) {
        for (const std::string& word : css::valueParts(columns)) {
            if (word == "none") continue;
            if (word == "subgrid" || word == "masonry") return false;
            if (!(word.starts_with("repeat(") ? repeat(word) : add(word))) return false;
        }
        return true;
    }

    /// Each cell of the first row that names an area names the lines around it. CSS Grid 2 § 8.1.
    void readAreas(std::string_view areas) {
        for (const std::string& row : css::valueParts(areas)) {
            if (row.size() < 2) continue;
            const std::vector<std::string> cells =
                css::valueParts(std::string_view(row).substr(1, row.size() - 2));
            for (std::size_t i = 0; i < cells.size(); ++i) {
                if (cells[i].find_first_not_of('.') == std::string::npos) continue;
                if (i == 0 || cells[i - 1] != cells[i]) name(cells[i] + "-start", static_cast<int>(i) + 1);
                if (i + 1 == cells.size() || cells[i + 1] != cells[i])
                    name(cells[i] + "-end", static_cast<int>(i) + 2);
            }
            // Columns that only the areas have are automatic.
            while (grid.tracks.size() < cells.size())
                grid.tracks.push_back({{}, whole_, 0, true, true});
        }
    }

    GridTemplate grid;

private:
    void name(const std::string& word, int line) { grid.lines.emplace_back(word, line); }

    bool repeat(const std::string& word) {
        const std::string both = inside(word);
        const std::size_t comma = both.find(',');
        if (comma == std::string::npos) return false;
        const std::string_view times = css::trimmed(std::string_view(both).substr(0, comma));
        if (times == "auto-fill" || times == "auto-fit")
            return repeatToFill(std::string_view(both).substr(comma + 1), times == "auto-fit");
        const std::optional<double> count = numberIn(times);
        if (!count || *count < 1 || *count > mostTracks) return false;
        for (int i = 0; i < static_cast<int>(*count); ++i)
            for (const std::string& one : css::valueParts(std::string_view(both).substr(comma + 1)))
                if (!add(one)) return false;
        return true;
    }

    /// One column as often as it fits. § 7.2.3.2.
    bool repeatToFill(std::string_view column, bool collapses) {
        const std::vector<std::string> words = css::valueParts(column);
        if (words.size() != 1 || !grid.tracks.empty() || !add(words.front())) return false;
        const GridTrack track = grid.tracks.front();
        const bool isFixed = !track.dependsOnContent && !(track.least == Line{});
        if (!isFixed) return false;
        grid.tracks.assign(static_cast<std::size_t>(repetitions_(track.least, collapses)), track);
        isFilled_ = true;
        return true;
    }

    bool add(const std::string& word) {
        if (isFilled_) return false;
        if (word.starts_with("[")) {
            for (const std::string& one : css::valueParts(std::string_view(word).substr(1, word.size() - 2)))
                name(one, static_cast<int>(grid.tracks.size()) + 1);
            return true;
        }
        GridTrack track;
        if (word.starts_with("minmax(")) {
            const std::vector<std::string> both = css::listItems(inside(word));
            if (both.size() != 2) return false;
            const std::string least(css::trimmed(both.front()));
            const std::string most(css::trimmed(both.back()));
            // Content is assumed to be narrower than the maximum.
            const auto from = isByContent(least) ? std::optional(Line{}) : length_(least);
            if (!from) return false;
            track.least = *from;
            track.share = shareIn(most);
            track.stretches = most == "auto";
            const bool isOpen = track.share > 0 || isByContent(most);
            track.dependsOnContent = isOpen && track.share == 0;
            const auto to = isOpen ? std::optional(whole_) : length_(most);
            if (!to) return false;
            track.most = *to;
        } else if (const double share = shareIn(word); share > 0) {
            track.share = share;
        } else if (isByContent(word)) {
            track.most = whole_;
            track.dependsOnContent = true;
            track.stretches = word == "auto";
        } else if (const auto length = length_(word)) {
            track.least = track.most = *length;
        } else {
            return false;
        }
        grid.tracks.push_back(track);
        return grid.tracks.size() <= mostTracks;
    }

    const Line& whole_;
    const GridLength& length_;
    const GridRepetitions& repetitions_;
    bool isFilled_ = false;  ///< by automatic repetitions
};

}  // namespace

int GridTemplate::find(std::string_view name) const {
    int line = 0;
    for (const auto& [known, number] : lines)
        if (known == name) line = line == 0 ? number : std::min(line, number);
    return line;
}

std::optional<GridTemplate> gridTemplateOf(std::string_view columns, std::string_view areas,
                                           const Line& whole, const GridLength& length,
                                           const GridRepetitions& repetitions) {
    TemplateReader reader(whole, length, repetitions);
    if (!reader.read(columns)) return std::nullopt;
    if (areas != "none") reader.readAreas(areas);
    if (reader.grid.tracks.empty()) reader.grid.tracks.push_back({{}, whole, 0, true, true});
    return std::move(reader.grid);
}

std::optional<GridPlace> gridPlaceOf(const std::string& start, const std::string& end,
                                     const GridTemplate& grid) {
    const auto count = static_cast<int>(grid.tracks.size());
    const auto isAuto = [](const std::string& word) { return word.empty() || word == "auto"; };
    const auto spanOf = [](const std::string& word) {
        return word.starts_with("span ")
                   ? static_cast<int>(numberIn(css::trimmed(std::string_view(word).substr(5))).value_or(0))
                   : 0;
    };
    const auto lineOf = [&](const std::string& word, const char* side) {
        if (isAuto(word) || word.starts_with("span ")) return 0;
        if (const auto number = numberIn(word)) {
            const int line = static_cast<int>(*number);
            return line >= 0 ? line : count + 2 + line;
        }
        const int area = grid.find(word + side);
        return area != 0 ? area : grid.find(word);
    };
    GridPlace place;
    place.from = lineOf(start, "-start");
    place.to = lineOf(end, "-end");
    if (place.from == 0 && place.to == 0) return std::nullopt;
    if (place.from == 0) place.from = place.to - std::max(1, spanOf(start));
    if (place.to == 0) place.to = place.from + std::max(1, spanOf(end));
    if (place.to < place.from) std::swap(place.from, place.to);
    if (place.to == place.from) ++place.to;
    if (place.from < 1 || place.to > count + 1) return std::nullopt;
    return place;
}

std::optional<std::vector<Line>> gridColumns(const GridTemplate& grid, const Line& whole, const Line& gap,
                                             const std::vector<bool>& isEmpty, css::Styles& styles) {
    const std::vector<GridTrack>& tracks = grid.tracks;
    Line free = sum(whole, scaled(-static_cast<double>(tracks.size() - 1), gap));
    double shares = 0;
    std::size_t growing = 0;
    std::size_t stretching = 0;
    for (const GridTrack& track : tracks) {
        shares += track.share;
        stretching += track.stretches ? 1U : 0U;
        growing +=
            track.share == 0 && !track.dependsOnContent && !track.stretches && !(track.least == track.most)
                ? 1U
                : 0U;
    }
    for (std::size_t i = 0; i < tracks.size(); ++i)
        // One automatic column alone takes all that is left.
        if (tracks[i].dependsOnContent && !isEmpty[i] &&
            (shares > 0 || growing > 0 || stretching != 1 || !tracks[i].stretches))
            return std::nullopt;
    for (const GridTrack& track : tracks)
        free = sum(free, scaled(-1, track.least));
    // § 12.6: tracks grow to their maxima before fr columns do. Several that differ share in steps.
    std::vector<Line> columns;
    columns.reserve(tracks.size());
    if (growing > 1) {
        const auto first = std::ranges::find_if(
            tracks, [](const GridTrack& one) { return one.share == 0 && !(one.least == one.most); });
        for (const GridTrack& track : tracks)
            if (track.share == 0 && !(track.least == track.most) &&
                !(track.most == first->most && track.least == first->least))
                return std::nullopt;
    }
    Line left = free;
    for (const GridTrack& track : tracks) {
        Line width = track.least;
        const bool grows =
            track.share == 0 && !track.dependsOnContent && !track.stretches && !(track.least == track.most);
        if (grows) {
            width = styles.larger(
                track.least,
                styles.smaller(track.most, sum(track.least, scaled(1.0 / static_cast<double>(growing),
                                                                   styles.larger(free, {})))));
            left = sum(left, sum(track.least, scaled(-1, width)));
        }
        columns.push_back(width);
    }
    // § 12.7: what is left, and the minima of fr columns, are theirs in the ratio of their shares.
    if (shares > 0) {
        Line room = left;
        for (const GridTrack& track : tracks)
            if (track.share > 0) room = sum(room, track.least);
        room = styles.larger(room, {});
        for (std::size_t i = 0; i < tracks.size(); ++i)
            if (tracks[i].share > 0)
                columns[i] =
                    styles.larger(tracks[i].least, scaled(tracks[i].share / std::max(1.0, shares), room));
    } else if (stretching > 0) {
        // § 12.8: automatic columns stretch equally; those with content are alone here.
        for (std::size_t i = 0; i < tracks.size(); ++i)
            if (tracks[i].stretches)
                columns[i] =
                    sum(columns[i], scaled(1.0 / static_cast<double>(stretching), styles.larger(left, {})));
    }
    return columns;
}

}  // namespace tenter::markup
