// Solved rows for check_wishes.js: every sample, with type made far too large before, and the random rows
// that tests/solve proves. Writes their projects into a folder, and prints their wishes, including usual
// ones, as JSON on standard output.
#include <cstdlib>
#include <fstream>
#include <iostream>

#include "solve/random_row.h"
#include "solve/solving.h"

namespace {

using namespace tenter;
using project::Json;
using project::RoleWishes;

constexpr double tooLarge = 1.7;

/// [[from, to, value]], viewport widths in CSS px.
template <class T>
void put(Json& into, const char* key, const project::Project& row, const std::string& role,
         std::optional<T> RoleWishes::*member) {
    for (const auto& one : project::wishRanges(project::effectiveWishes(row), role, member)) {
        const double to = std::min(one.to, row.mostWidth);
        if (one.from < to) into[key].push_back({one.from, to, one.value});
    }
}

Json askedOf(const project::Project& row) {
    Json roles = Json::object();
    for (const std::string& role : project::roles(row)) {
        Json& asked = roles[role] = Json::object();
        put(asked, "lines", row, role, &RoleWishes::lines);
        put(asked, "leastSize", row, role, &RoleWishes::leastSize);
        put(asked, "mostSize", row, role, &RoleWishes::mostSize);
        put(asked, "leastMeasure", row, role, &RoleWishes::leastMeasure);
        put(asked, "mostMeasure", row, role, &RoleWishes::mostMeasure);
    }
    const project::Wishes wishes = project::effectiveWishes(row);
    return {{"roles", roles},
            {"without", wishes.without},
            {"slack", std::min(*wishes.slack, *wishes.narrowSlack)}};
}

/// Removes the pictures, whose files are elsewhere and do not affect sizes.
void dropPictures(project::Project& row) {
    for (project::Card& card : row.row().cards)
        std::erase_if(card.parts, [](const project::Part& part) {
            return std::holds_alternative<project::PicturePart>(part);
        });
}

}  // namespace

int main(int count, char** words) {
    if (count != 4) {
        std::cerr << "usage: wished-rows SAMPLES FOLDER GENERATED\n";
        return EXIT_FAILURE;
    }
    const std::filesystem::path folder = words[2];
    Json all = Json::object();
    const auto add = [&](const std::string& name, project::Project row) {
        const solve::Answer answer = test::solveRelaxing(row);
        if (!answer.solved) {
            std::cerr << name << ": not solved\n" << test::answerText(row, answer);
            return false;
        }
        std::ofstream(folder / (name + ".tenter.json")) << project::write(*answer.solved);
        all[name] = askedOf(*answer.solved);
        return true;
    };
    for (auto& [file, sample] : test::samplesIn(words[1])) {
        project::Project row = sample;
        test::spoil(row, tooLarge, tooLarge);
        dropPictures(row);
        if (!add(file.substr(0, file.find('.')), std::move(row))) return EXIT_FAILURE;
    }
    test::RandomRow rows(test::randomRows);
    for (int i = 0; i < std::atoi(words[3]); ++i)
        if (!add("generated-" + std::to_string(i), rows.next())) return EXIT_FAILURE;
    std::cout << all.dump();
    return EXIT_SUCCESS;
}
