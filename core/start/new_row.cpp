#include "start/new_row.h"

#include <unicode/translit.h>
#include <unicode/unistr.h>

#include <algorithm>
#include <memory>

#include "project/cascade.h"
#include "project/utf8.h"
#include "solve/answer_table.h"
#include "solve/columns.h"
#include "solve/solve.h"
#include "start/example_text.h"
#include "start/language.h"
#include "start/looks.h"
#include "units/ascii.h"
#include "units/number.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

constexpr std::size_t longestName = 60;     // letters of a project's name
constexpr std::size_t longestRowName = 24;  // letters
constexpr int mostRelaxations = 24;         // wishes that are relaxed before giving up
constexpr double oneColumnWidth = 640;      // CSS px: a wider card with one column has too long lines

/// The first words of a text, at most `most` code points.
std::string shortened(const std::string& text, std::size_t most) {
    std::size_t letters = 0;
    std::size_t space = 0;
    for (std::size_t at = 0; at < text.size(); ++letters) {
        if (letters == most) return text.substr(0, space > at / 2 ? space : at);
        if (text[at] == ' ') space = at;
        at += project::decode(text, at).length;
    }
    return text;
}

std::string nameOf(const NewRow& row, const PastedText& text) {
    if (!row.name.empty()) return row.name;
    std::string name = text.title;
    for (const PastedCard& card : text.cards)
        for (const project::TextPart& part : card.parts)
            if (name.empty() && part.role == "heading") name = project::plainText(part.copy);
    std::ranges::replace(name, '\n', ' ');
    return name.empty() ? wording::say("New row") : shortened(name, longestName);
}

/// Makes the style fit the script: families with its letters, line height, size.
void fitScript(project::Settings& style, const std::string& language) {
    const ScriptSetting script = scriptSettingOf(language);
    if (script.serif.empty()) return;
    for (auto& [role, text] : style.text.roles) {
        auto& family = *text.family;
        const std::string& own = family.back() == "serif" ? script.serif : script.sans;
        family.insert(script.comesFirst ? family.begin() : family.end() - 1, own);
        if (script.isCursive) text.letterSpacing.reset();
        // The lines of headings are few and short, so they may be closer.
        const double least = script.leastLineHeight - (role == "heading" ? 0.2 : 0);
        if (text.lineHeight && text.lineHeight->isNumber() && text.lineHeight->number() < least)
            text.lineHeight = units::LineHeight::times(least);
        if (text.size) {
            const auto larger = [&](units::RampPoint point) {
                return units::RampPoint{point.width, units::rounded(point.size * script.enlargement, 2)};
            };
            text.size = units::Ramp::between(larger(text.size->from()), larger(text.size->to()));
        }
    }
}

/// Roles that the look does not know get a style of their own, so that their size is not that of the body.
void addOtherRoles(project::Project& project) {
    for (const std::string& role : project::roles(project)) {
        if (project.row().style.text.find(role) != nullptr) continue;
        project::TextStyle own = *project.row().style.text.find("body");
        own.margin.bottom = units::Length::em(0.6);
        project.row().style.text.of(role) = std::move(own);
    }
}

std::vector<project::Card> cardsFrom(const PastedText& text,
                                     const std::vector<project::PicturePart>& pictures) {
    std::vector<project::Card> cards;
    for (std::size_t i = 0; i < text.cards.size(); ++i) {
        project::Card& card = cards.emplace_back();
        if (i < pictures.size()) {
            project::PicturePart picture = pictures[i];
            if (picture.alt.empty()) picture.alt = text.cards[i].alt;
            card.parts.emplace_back(std::move(picture));
        }
        for (const project::TextPart& part : text.cards[i].parts)
            card.parts.emplace_back(part);
    }
    return cards;
}

/// The maximum width of a row with so many columns.
units::Length mostRowWidth(const Look& look, int columns) {
    if (columns == 1) return units::Length::px(oneColumnWidth);
    return units::Length::px(std::min(look.mostCardWidth * columns + 24.0 * (columns - 1), 1840.0));
}

/// Solves the sizes of every variant. A wish that the text makes impossible is relaxed by the least change.
void solveSizes(MadeRow& made, text::ParagraphStore& store, const solve::Options& options) {
    project::Project& project = made.project;
    for (int i = 0; i < mostRelaxations; ++i) {
        solve::Answer answer = solve::solve(project, project::everyVariant(project), store, options);
        made.isCancelled = answer.isCancelled;
        if (answer.isCancelled) return;
        if (answer.solved) {
            project = std::move(*answer.solved);
            return;
        }
        const solve::AnswerTable table = solve::answerTable(project, answer, store);
        if (!table.conflict) break;
        const auto& all = table.conflict->resolutions;
        const auto first = std::ranges::find_if(all, &solve::Resolution::isApplicable);
        if (first == all.end()) break;
        made.notes.push_back(wording::say("The text needs this: %1.", {first->text}));
        project = solve::relaxed(project, first->relaxation);
    }
    made.notes.push_back(wording::say(
        "No sizes satisfy all wishes with this text. Shorten the longest words, or use fewer columns."));
}

}  // namespace

std::string rowNameOf(const std::string& projectName) {
    UErrorCode error = U_ZERO_ERROR;
    icu::UnicodeString text = icu::UnicodeString::fromUTF8(projectName);
    const std::unique_ptr<icu::Transliterator> plain(
        icu::Transliterator::createInstance("Latin-ASCII; Lower", UTRANS_FORWARD, error));
    if (U_SUCCESS(error) && plain) plain->transliterate(text);
    std::string letters;
    text.toUTF8String(letters);
    std::string name;
    for (const char c : letters) {
        if (units::isLowerLetter(c) || (units::isDigit(c) && !name.empty()))
            name += c;
        else if (!name.empty() && name.back() != '-' && (c == ' ' || c == '-' || c == '_'))
            name += '-';
    }
    if (name.size() > longestRowName) {
        const std::size_t cut = name.rfind('-', longestRowName);
        name.resize(cut == std::string::npos || cut < 3 ? longestRowName : cut);
    }
    while (!name.empty() && name.back() == '-')
        name.pop_back();
    return name.size() < 2 ? "cards" : name;
}

MadeRow newRow(const NewRow& row, text::ParagraphStore& store, const std::stop_token& cancellation) {
    MadeRow made;
    const Look* look = lookNamed(row.look);
    if (look == nullptr) look = &looks().front();
    const int columns = std::clamp(row.columns, 1, mostNewColumns);
    PastedText text = row.text;
    const bool isExample = text.cards.empty();
    if (isExample)
        text = exampleText(
            std::max<std::size_t>(row.pictures.size(), columns == 1 ? 3 : static_cast<std::size_t>(columns)),
            row.language.empty() ? "en" : row.language);

    project::Project& project = made.project;
    project.language = row.language.empty() ? languageOf(text) : row.language;
    project.rightToLeft = row.rightToLeft.value_or(runsRightToLeft(project.language));
    project.name = nameOf(row, text);
    project.row().name = rowNameOf(project.name);
    project.row().style = look->style;
    fitScript(project.row().style, project.language);
    project.row().style.row.width = units::Length::percent(100);
    project.row().style.row.maxWidth = mostRowWidth(*look, columns);
    project.page.container.padding.left = project.page.container.padding.right = units::Length::px(20);
    project.row().cards = cardsFrom(text, row.pictures);
    addOtherRoles(project);

    project::Variant one;
    one.className = solve::classFor(project.row().name, 1);
    one.bands.emplace_back();
    one.bands.front().set.row.columns = 1;
    project.row().variants.push_back(std::move(one));
    if (columns > 1) {
        project.row().variants.front() =
            solve::withColumns(project, 0, columns, solve::classFor(project.row().name, columns), store);
        // Neighbouring cards are aligned part by part.
        for (project::Band& band : project.row().variants.front().bands)
            if (band.set.row.columns.value_or(1) > 1) band.set.row.level = project::Level::Subgrid;
    }
    made.notes = text.notes;
    solve::Options options;
    options.cancellation = cancellation;
    solveSizes(made, store, options);
    if (isExample)
        made.notes.insert(made.notes.begin(),
                          wording::say("The text is an example. Replace it in the Words panel."));
    if (row.pictures.size() > text.cards.size())
        made.notes.push_back(wording::say(
            "%1 of the pictures were not used, because there are only %2 cards.",
            {std::to_string(row.pictures.size() - text.cards.size()), std::to_string(text.cards.size())}));
    return made;
}

}  // namespace tenter::start
