#include "sample.h"

#include <gtest/gtest.h>

#include <array>

#include "project/cascade.h"
#include "project/file.h"

namespace tenter::tests {

using project::Band;
using project::Card;
using project::PicturePart;
using project::Project;
using project::Settings;
using project::TextPart;
using project::Variant;
using units::Length;
using units::Ramp;

namespace {

Settings columns(int count) {
    Settings set;
    set.row.columns = count;
    return set;
}

TextPart text(const std::string& role, const std::string& copy) {
    TextPart part;
    part.role = role;
    part.copy = {{project::Run::Kind::Plain, copy, {}}};
    return part;
}

Card walk(const std::string& heading) {
    PicturePart picture;
    picture.file = "pictures/shore.png";
    picture.width = 1200;
    picture.height = 800;
    picture.alt = "The shore at low tide";
    TextPart button = text("button", "Book");
    button.link = "#book";
    Card card;
    card.parts = {picture, text("heading", heading), text("body", "Two miles over sand and weed."), button};
    return card;
}

class Draw {
public:
    explicit Draw(std::mt19937& random) : random_(random) {}

    bool chance() { return number(0, 1) == 1; }
    int number(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }
    double size() { return number(1000, 4000) / 100.0; }

    std::string nasty() {
        static constexpr std::array<const char*, 12> pieces{
            "</style><script>", "*/", "&amp;", "\"",      "\\", "\n", "a", "'",
            "\xED\xA0\x80",     "/*", "-->",   "\xC3\xA9"};
        std::string out;
        for (int i = number(1, 6); i > 0; --i)
            out += pieces[static_cast<std::size_t>(number(0, 11))];
        if (chance()) out += '\0';
        return out;
    }

    Length length(int most) {
        const double value = number(0, most * 10) / 10.0;
        switch (number(0, 4)) {
            case 0:
                return Length::px(value);
            case 1:
                return Length::rem(value / 16);
            case 2:
                return Length::em(value / 16);
            case 3:
                return Length::vw(value / 16);
            default:
                return Length::percent(value / 8);
        }
    }

    units::Colour colour() {
        const auto channel = [&] { return static_cast<std::uint8_t>(number(0, 255)); };
        return {channel(), channel(), channel(), static_cast<std::uint8_t>(chance() ? 255 : number(0, 254))};
    }

    project::Sides sides() { return {length(30), length(30), length(30), length(30)}; }

    void type(project::TextStyle& style) {
        if (chance()) style.family = std::vector<std::string>{nasty(), "serif"};
        if (chance()) style.size = Ramp::between({360, size()}, {1500, size()}).value_or(Ramp());
        if (chance()) style.follow = project::Follow::Card;
        if (chance()) style.letterSpacing = Length::em(number(-2, 2) / 100.0);
        if (chance()) style.lineHeight = units::LineHeight::times(1 + number(0, 9) / 10.0);
        if (chance()) style.keepLines = number(0, 3);
    }

    void look(project::TextStyle& style) {
        if (chance()) style.margin = sides();
        if (chance()) style.margin.top = Length::ofAuto();
        if (chance()) style.padding = sides();
        if (chance()) style.background = colour();
        if (chance()) style.hover.background = colour();
        if (chance()) style.border.width = Length::px(number(0, 4));
        if (chance()) style.wrap = project::Wrap::Balance;
        if (chance()) style.place = project::Place::Center;
    }

    Settings settings() {
        Settings set;
        set.row.columns = number(1, 5);
        if (chance()) set.row.columnGap = length(40);
        if (chance()) set.row.lastLine = project::LastLine::Center;
        if (chance()) set.card.padding = sides();
        if (chance()) set.card.border.width = Length::px(number(0, 5));
        if (chance()) set.card.bleed = chance();
        if (chance()) set.card.linked = chance();
        if (chance()) set.card.direction = project::Direction::Beside;
        if (chance()) set.card.shadow = {Length(), Length::px(2), Length::px(8), Length(), colour()};
        if (chance()) set.picture.ratio = project::Ratio{4, 3};
        if (chance()) set.picture.radius = Length::px(number(0, 9));
        for (const char* role : {"heading", "body", "button"}) {
            type(set.text.of(role));
            look(set.text.of(role));
        }
        return set;
    }

private:
    std::mt19937& random_;
};

}  // namespace

Card saying(const std::string& copy) {
    Card card;
    card.parts = {text("body", copy)};
    return card;
}

Project walks() {
    Project project;
    project.name = "Walks";
    project.row().name = "walks";
    project.row().style.row.columnGap = Length::rem(2);
    project.row().style.text.of("heading").family = std::vector<std::string>{"Vollkorn", "serif"};
    project.row().style.text.of("heading").size = Ramp::between({400, 18}, {1500, 26}).value();
    project.row().style.text.of("body").size = Ramp::flat(16.5);
    project.row().cards = {walk("Low tide"), walk("The long way round the saltmarsh")};
    Variant pair;
    pair.className = "walks-pair";
    pair.bands = {Band{640, columns(1), {}}, Band{std::nullopt, columns(2), {}}};
    Variant trio;
    trio.className = "walks-trio";
    trio.bands = {Band{640, columns(1), {}}, Band{980.5, columns(2), {}}, Band{std::nullopt, columns(3), {}}};
    project.row().variants = {pair, trio};
    return project;
}

std::size_t count(const std::string& text, const std::string& what) {
    std::size_t found = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1))
        ++found;
    return found;
}

Project randomProject(std::mt19937& random) {
    Draw draw(random);
    Project project = walks();
    project.name = draw.nasty();
    project.language = "en";
    project.rightToLeft = draw.chance();
    project.row().style = draw.settings();
    project.row().cards[0].parts.push_back(text("note", draw.nasty()));
    if (draw.chance()) project.row().cards[1].parts.push_back(project.row().cards[1].parts.front());
    for (Variant& variant : project.row().variants) {
        variant.name = draw.nasty();
        variant.set = draw.settings();
        for (Band& band : variant.bands)
            band.set = draw.settings();
    }
    return project;
}

project::Project shipped(const std::string& name) {
    project::Problems problems;
    auto read = project::read(TENTER_SOURCE_DIR "/sample-projects/" + name + ".tenter.json", problems);
    EXPECT_TRUE(read.has_value()) << name;
    return read.value_or(project::Project{});
}

}  // namespace tenter::tests
