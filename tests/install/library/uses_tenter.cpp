// Prints the height of a project's row at 800 px, and how many findings it has.
#include <tenter/tenter.h>

#include <cstdio>

int main(int, char** argv) {
    tenter::project::Problems problems;
    const auto project = tenter::project::read(argv[1], problems);
    for (const auto& problem : problems)
        std::fprintf(stderr, "%s\n", problem.line().c_str());
    if (!project) return 2;
    tenter::text::Fonts fonts;
    tenter::text::ParagraphStore store(fonts);
    const tenter::layout::PreparedRow row(*project, 0, store, tenter::text::defaultProfile());
    const auto checked = tenter::checks::checkAll(*project, 0, store, {});
    std::printf("%.2f %zu\n", tenter::layout::layOut(row, 800).row.height, checked.findings.size());
}
