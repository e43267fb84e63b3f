// Any bytes as a page to import: a valid project or problems; nothing in its markup runs or fetches.
#include <cctype>

#include "fuzz.h"
#include "markup/given.h"
#include "project/address.h"
#include "project/file.h"
#include "start/page_project.h"

namespace {

using namespace tenter;

void requireHarmless(const std::string& html) {
    project::Problems problems;
    const auto tree = markup::parse(html, "markup", problems);
    fuzz::require(tree.has_value(), "kept markup can be parsed");
    for (markup::NodeId at = 0; at < tree->size(); ++at) {
        const markup::Node& node = (*tree)[at];
        for (const char* tag :
             {"script", "style", "iframe", "object", "embed", "link", "meta", "base", "template"})
            fuzz::require(node.name != tag, "nothing that runs or fetches is kept");
        for (const markup::Attribute& attribute : node.attributes) {
            fuzz::require(!attribute.name.starts_with("on"), "no event handler is kept");
            if (attribute.name == "href")
                fuzz::require(project::isSafeAddress(attribute.value), "no unsafe address is kept");
        }
    }
}

}  // namespace

void tenter::fuzz::test(const std::uint8_t* data, std::size_t size) {
    static text::Fonts fonts;
    static text::ParagraphStore store(fonts);
    const markup::PageToAdopt page{fuzz::textOf(data, size), "/nowhere/page.html", "/nowhere", {}};
    project::Problems problems;
    const auto adopted = start::newProjectFrom(page, store, problems);
    fuzz::requireReadable(problems);
    if (!adopted) {
        fuzz::require(!problems.empty(), "there is a project, or there are problems");
        return;
    }
    project::Problems again;
    const std::string written = project::write(adopted->project);
    const auto read = project::parse(written, "written", {}, again);
    fuzz::require(read && again.empty(), "an imported project is valid");
    fuzz::require(project::write(*read) == written, "an imported project is written in the same way again");
    if (adopted->project.row().given) requireHarmless(adopted->project.row().given->markup);
}
