#include "start/page_piece.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "css/ascii.h"
#include "markup/theme.h"
#include "project/titles.h"
#include "project/wording.h"
#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::start {

using css::Line;
using units::Length;
using units::Unit;

void PageNotes::add(const std::string& key, const std::string& sentence) {
    if (std::ranges::find(keys_, key) != keys_.end()) return;
    keys_.push_back(key);
    PageNote note{project::warning(sentence), std::nullopt};
    for (const auto& [text, at] : texts_)
        if (sentence.find(text) != std::string::npos) note.at = at;
    notes_.push_back(std::move(note));
}

std::string PageNotes::writtenOf(const std::string& role, css::Styles& styles, markup::NodeId node,
                                 const std::string& property) const {
    return wording::say("%1: %2", {project::roleName(role), written(styles, node, property)});
}

std::string PageNotes::written(css::Styles& styles, markup::NodeId node, const std::string& property) const {
    const std::string value = styles.value(node, property);
    std::string text = property + (value.empty() ? "" : ": " + value.substr(0, 80));
    const css::Applying* winner = styles.winner(node, property);
    if (winner == nullptr || winner->origin == css::Origin::Browser) return text;
    WrittenAt at{property, value, {}, {}};
    if (winner->rule == nullptr) {
        text = wording::say("%1 (style attribute)", {text});
    } else {
        at.place = markup::originOfRule(theme_, winner->rule->line);
        at.selector = winner->rule->selectorText;
        text =
            wording::say("%1 (%2)", {text, at.place.empty() ? at.selector : markup::placeInWords(at.place)});
    }
    texts_.try_emplace(text, std::move(at));
    return text;
}

std::string PageNotes::spelled(const std::string& family) const {
    const std::size_t at = css::lowered(theme_).find(family);
    return at == std::string::npos ? family : theme_.substr(at, family.size());
}

bool PieceContext::isSame(const Line& one, const Line& other) const {
    constexpr double most = 0.02;
    const Line apart = less(one, other);
    return std::abs(apart.atZero + apart.perPx * from) <= most &&
           std::abs(apart.atZero + apart.perPx * upTo) <= most;
}

Line LengthFinder::lineOf(const Length& length) const {
    const auto times = [](const Line& line, double factor) {
        return Line{line.atZero * factor, line.perPx * factor};
    };
    switch (length.unit()) {
        case Unit::Px:
            return {length.value(), 0};
        case Unit::Rem:
            return times(context_.root, length.value());
        case Unit::Em:
            return times(em_, length.value());
        case Unit::Percent:
            return times(percentage_, length.value() / 100);
        case Unit::Vw:
            return {0, length.value() / 100};
        default:
            return {};
    }
}

std::optional<Length> LengthFinder::find(const Line& line, const std::vector<std::string>& written,
                                         bool percent) const {
    if (context_.isSame(line, {})) return Length();
    const auto fits = [&](const Length& length) {
        return !length.isKeyword() && length.unit() != Unit::Cqi &&
               (percent || length.unit() != Unit::Percent) && context_.isSame(lineOf(length), line);
    };
    for (const std::string& text : written)
        if (const auto length = Length::parse(text); length && fits(*length)) return length;
    const double width = context_.middle();
    const double size = context_.at(line);
    const auto share = [&](const Line& whole) {
        const double at = whole.atZero + whole.perPx * width;
        return at == 0 ? 0 : size / at;
    };
    std::vector<Length> candidates{Length::px(std::round(size * 1000) / 1000)};
    if (std::abs(context_.root.perPx) > 1e-9) candidates.push_back(Length::rem(share(context_.root)));
    candidates.push_back(Length::vw(size / width * 100));
    candidates.push_back(Length::percent(share(percentage_) * 100));
    candidates.push_back(Length::em(share(em_)));
    const auto found = std::ranges::find_if(candidates, fits);
    return found == candidates.end() ? std::nullopt : std::optional(*found);
}

Length LengthFinder::nearest(const Line& line, const std::vector<std::string>& written, markup::NodeId node,
                             const std::string& property, bool percent, bool negative) const {
    const auto found = find(line, written, percent);
    if (found && (negative || found->value() >= 0)) return *found;
    const Length near = nearestAtMiddle(line, percent, negative);
    const std::string inWords = near.unit() == Unit::Px ? units::px(near.value()) : near.css();
    context_.notes.add(
        property + std::to_string(node),
        wording::say("%1 is a length that Tenter does not have. It uses %2, which is the length at "
                     "%3.",
                     {context_.notes.written(context_.styles, node, property), inWords,
                      units::px(std::round(context_.middle()))}));
    return near;
}

Length LengthFinder::nearestAtMiddle(const Line& line, bool percent, bool negative) const {
    const double size = context_.at(line);
    if (size <= 0 && !negative) return {};
    const double width = context_.middle();
    const double whole = context_.at(percentage_);
    std::vector<Length> candidates{Length::px(std::round(size * 100) / 100),
                                   Length::vw(std::round(size / width * 1e4) / 100)};
    if (percent && whole > 0) candidates.push_back(Length::percent(std::round(size / whole * 1e4) / 100));
    const auto error = [&](const Length& length) {
        const Line apart = less(lineOf(length), line);
        return std::max(std::abs(apart.atZero + apart.perPx * context_.from),
                        std::abs(apart.atZero + apart.perPx * context_.upTo));
    };
    return *std::ranges::min_element(candidates, {}, error);
}

Line lengthAt(const PieceContext& context, markup::NodeId node, const std::string& property,
              const Line& percentage) {
    const std::size_t problems = context.styles.problems.size();
    const auto length = context.styles.length(node, property, percentage, "0");
    if (!length && context.styles.problems.size() > problems)
        context.notes.add(property + std::to_string(node),
                          wording::say("%1 cannot be read. The project has 0.",
                                       {context.notes.written(context.styles, node, property)}));
    return length.value_or(Line{});
}

Line borderAt(const PieceContext& context, markup::NodeId node, const std::string& side) {
    const std::string style = context.styles.value(node, "border-" + side + "-style");
    if (style.empty() || style == "none" || style == "hidden") return {};
    const std::string property = "border-" + side + "-width";
    const std::string width = context.styles.value(node, property);
    if (width == "thin") return {1, 0};
    if (width == "thick") return {5, 0};
    if (width.empty() || width == "medium") return {3, 0};
    Line line = lengthAt(context, node, property, {});
    if (line.perPx == 0 && line.atZero > 0) line.atZero = std::max(1.0, std::floor(line.atZero + 1e-9));
    return line;
}

bool hasEvenBorder(const PieceContext& context, markup::NodeId node) {
    const Line top = borderAt(context, node, "top");
    return std::ranges::all_of(std::array{"right", "bottom", "left"}, [&](const char* side) {
        return context.isSame(borderAt(context, node, side), top);
    });
}

}  // namespace tenter::start
