#include <fstream>
#include <sstream>

#include "parsing.h"

namespace tenter::markup {
namespace {

struct PublishedTree {
    std::string html;
    std::string outline;
};

// Each case: `#data`, the HTML, `#document`, the tree; an empty line between cases.
std::vector<PublishedTree> publishedTrees() {
    std::ifstream file(TENTER_SOURCE_DIR "/tests/markup/parse5_trees.txt", std::ios::binary);
    std::stringstream content;
    content << file.rdbuf();
    const std::string text = "\n" + content.str();
    std::vector<PublishedTree> cases;
    for (std::size_t at = text.find("\n#data\n"); at != std::string::npos;) {
        const std::size_t document = text.find("\n#document\n", at);
        const std::size_t next = text.find("\n#data\n", document);
        PublishedTree one{
            text.substr(at + 7, document - at - 7),
            text.substr(document + 11, next == std::string::npos ? next : next - document - 11)};
        while (one.outline.ends_with("\n\n"))
            one.outline.pop_back();
        if (!one.outline.ends_with('\n')) one.outline += '\n';
        cases.push_back(std::move(one));
        at = next;
    }
    return cases;
}

// The trees are those that parse5 8.1.1 gives, comments and document types left out; the HTML is ours.
TEST(Tree, is_that_of_a_published_parser) {
    const std::vector<PublishedTree> cases = publishedTrees();
    EXPECT_GT(cases.size(), 30U);
    for (const PublishedTree& one : cases)
        EXPECT_EQ(outline(treeOf(one.html)), one.outline) << one.html;
}

}  // namespace
}  // namespace tenter::markup
