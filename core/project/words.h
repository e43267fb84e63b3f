// The keywords of enumerations in a project file: those of CSS where CSS has them.
#pragma once

#include <array>
#include <string_view>
#include <utility>

#include "project/settings.h"
#include "project/wishes.h"

namespace tenter::project {

template <class E, std::size_t N>
using WordTable = std::array<std::pair<std::string_view, E>, N>;

template <class E>
struct Words;

template <>
struct Words<Slant> {
    static constexpr WordTable<Slant, 2> table{{{"normal", Slant::Normal}, {"italic", Slant::Italic}}};
};
template <>
struct Words<Follow> {
    static constexpr WordTable<Follow, 2> table{{{"viewport", Follow::Viewport}, {"card", Follow::Card}}};
};
template <>
struct Words<LetterCase> {
    static constexpr WordTable<LetterCase, 3> table{{{"none", LetterCase::None},
                                                     {"uppercase", LetterCase::Uppercase},
                                                     {"capitalize", LetterCase::Capitalize}}};
};
template <>
struct Words<Align> {
    static constexpr WordTable<Align, 3> table{
        {{"start", Align::Start}, {"center", Align::Center}, {"end", Align::End}}};
};
template <>
struct Words<Wrap> {
    static constexpr WordTable<Wrap, 2> table{{{"wrap", Wrap::Wrap}, {"balance", Wrap::Balance}}};
};
template <>
struct Words<OverflowWrap> {
    static constexpr WordTable<OverflowWrap, 3> table{{{"normal", OverflowWrap::Normal},
                                                       {"break-word", OverflowWrap::BreakWord},
                                                       {"anywhere", OverflowWrap::Anywhere}}};
};
template <>
struct Words<Hyphens> {
    static constexpr WordTable<Hyphens, 2> table{{{"none", Hyphens::None}, {"manual", Hyphens::Manual}}};
};
template <>
struct Words<Place> {
    static constexpr WordTable<Place, 4> table{{{"stretch", Place::Stretch},
                                                {"start", Place::Start},
                                                {"center", Place::Center},
                                                {"end", Place::End}}};
};
template <>
struct Words<LastLine> {
    static constexpr WordTable<LastLine, 2> table{{{"start", LastLine::Start}, {"center", LastLine::Center}}};
};
template <>
struct Words<ContainerPlace> {
    static constexpr WordTable<ContainerPlace, 3> table{
        {{"start", ContainerPlace::Start}, {"center", ContainerPlace::Center}, {"end", ContainerPlace::End}}};
};
template <>
struct Words<Level> {
    static constexpr WordTable<Level, 2> table{{{"none", Level::None}, {"subgrid", Level::Subgrid}}};
};
template <>
struct Words<Direction> {
    static constexpr WordTable<Direction, 2> table{
        {{"stacked", Direction::Stacked}, {"beside", Direction::Beside}}};
};
template <>
struct Words<Aim> {
    static constexpr WordTable<Aim, 3> table{
        {{"nearest", Aim::Nearest}, {"largest", Aim::Largest}, {"calmest", Aim::Calmest}}};
};
template <>
struct Words<AtBreakpoints> {
    static constexpr WordTable<AtBreakpoints, 3> table{{{"free", AtBreakpoints::Free},
                                                        {"same", AtBreakpoints::Same},
                                                        {"proportional", AtBreakpoints::Proportional}}};
};

}  // namespace tenter::project
