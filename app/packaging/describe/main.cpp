// Writes manual pages and completions of tenter-cli, and of the window from its help. Runs at build time.
// usage: describe-programs FOLDER DATE [HELP.txt]
// Writes FOLDER/man1/*.1, FOLDER/bash/NAME, FOLDER/zsh/_NAME and FOLDER/fish/NAME.fish.
#include <array>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

#include "program.h"
#include "writers.h"

namespace {

using namespace tenter::describe;

/// `November 25, 2026` for `2026-11-25`: mdoc(7) § Dd.
std::string mdocDate(const std::string& iso) {
    constexpr std::array months{"January", "February", "March",     "April",   "May",      "June",
                                "July",    "August",   "September", "October", "November", "December"};
    const std::size_t month = std::stoul(iso.substr(5, 2));
    return std::string(months.at(month - 1)) + " " + std::to_string(std::stoul(iso.substr(8, 2))) + ", " +
           iso.substr(0, 4);
}

void write(const std::filesystem::path& file, const std::string& content) {
    std::filesystem::create_directories(file.parent_path());
    std::ofstream stream(file, std::ios::binary);
    stream << content;
    if (!stream.flush()) throw std::runtime_error(file.string() + " cannot be written");
}

void writeCompletions(const std::filesystem::path& folder, const Program& program) {
    const std::string& name = program.words[0];
    write(folder / "bash" / name, bashCompletion(program));
    write(folder / "zsh" / ("_" + name), zshCompletion(program));
    write(folder / "fish" / (name + ".fish"), fishCompletion(program));
}

void writePage(const std::filesystem::path& folder, const Program& program, const std::string& date,
               const std::vector<std::string>& seeAlso) {
    write(folder / "man1" / (program.page() + ".1"), manualPage(program, date, seeAlso));
}

}  // namespace

int main(int argc, char** argv) {
    try {
        if (argc < 3) throw std::runtime_error("usage: describe-programs FOLDER DATE [HELP.txt]");
        const std::filesystem::path folder = argv[1];
        const std::string date = mdocDate(argv[2]);
        tenter::command::Action action;
        const Program cli = fromParser(*tenter::command::makeProgram(action));
        writeCompletions(folder, cli);
        writePage(folder, cli, date, {});
        for (const Program& verb : cli.verbs)
            writePage(folder, verb, date, {cli.page()});
        if (argc > 3) {
            std::ifstream stream(argv[3], std::ios::binary);
            const Program window = fromHelp(std::string{std::istreambuf_iterator<char>(stream), {}});
            writeCompletions(folder, window);
            writePage(folder, window, date, {cli.page()});
        }
    } catch (const std::exception& error) {
        std::fprintf(stderr, "describe-programs: %s\n", error.what());
        return 2;
    }
    return 0;
}
