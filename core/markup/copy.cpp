#include "markup/copy.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "markup/class_words.h"
#include "project/address.h"

namespace tenter::markup {

namespace {

using project::Run;

// The kind of the text in `node`, inside `top`. A link takes precedence over strong and emphasis.
Run mannerOf(const Tree& tree, NodeId node, NodeId top) {
    Run run;
    for (NodeId at = node; at != noNode; at = tree[at].parent) {
        const Node& element = tree[at];
        if (element.isHtml("a") && element.find("href") != nullptr)
            return {Run::Kind::Link, {}, *element.find("href")};
        if (run.kind == Run::Kind::Plain) {
            if (element.isHtml("strong") || element.isHtml("b")) run.kind = Run::Kind::Strong;
            if (element.isHtml("em") || element.isHtml("i")) run.kind = Run::Kind::Emphasis;
        }
        if (at == top) break;
    }
    return run;
}

// Joins runs and collapses white space across them: of white space in a row, the first stays, where it
// stands. CSS Text 3 § 4.1.1.
class CopyWriter {
public:
    void text(const Run& manner, std::string_view text) {
        for (const char c : text) {
            if (isSpace(c)) {
                if (!space_) space_ = manner;
                continue;
            }
            if (space_ && !atLineStart_) append(*space_, ' ');
            space_.reset();
            atLineStart_ = false;
            append(manner, c);
        }
    }
    void lineBreak() {
        copy_.push_back({Run::Kind::Break, {}, {}});
        space_.reset();
        atLineStart_ = true;
    }
    project::Copy take() { return std::move(copy_); }

private:
    static bool isSame(const Run& left, const Run& right) {
        return left.kind == right.kind && left.to == right.to;
    }

    void append(const Run& manner, char c) {
        if (copy_.empty() || !isSame(copy_.back(), manner)) copy_.push_back({manner.kind, {}, manner.to});
        copy_.back().text += c;
    }

    project::Copy copy_;
    std::optional<Run> space_;  ///< manner of the first of the white space since the last character
    bool atLineStart_ = true;
};

project::Copy copyOf(const Tree& tree, NodeId top) {
    CopyWriter writer;
    for (NodeId at = top; at != noNode;) {
        const Node& node = tree[at];
        const bool isShown = node.isText() || (node.space == Space::Html && (at == top || !isHidden(node)));
        if (node.isText()) writer.text(mannerOf(tree, node.parent, top), node.text);
        if (node.isHtml("br")) writer.lineBreak();
        at = isShown ? tree.following(at, top) : tree.past(at, top);
    }
    return writer.take();
}

// The link or button that is the part: the element, or the one that contains all its text.
NodeId wholeLink(const Tree& tree, NodeId top) {
    NodeId at = top;
    while (!tree[at].isHtml("a") && !tree[at].isHtml("button")) {
        NodeId only = noNode;
        for (NodeId child = tree[at].firstChild; child != noNode; child = tree[child].next) {
            if (tree[child].isText() && isBlank(tree[child].text)) continue;
            if (only != noNode || tree[child].isText()) return noNode;
            only = child;
        }
        if (only == noNode) return noNode;
        at = only;
    }
    return at;
}

double sizeIn(const Node& node, std::string_view attribute) {
    const std::string* value = node.find(attribute);
    if (value == nullptr) return 0;
    int size = 0;
    const char* end = value->data() + value->size();
    const auto [rest, error] = std::from_chars(value->data(), end, size);
    const bool isWhole = error == std::errc() && (rest == end || std::string_view(rest, end) == "px");
    return isWhole && size >= 1 && size <= 100000 ? size : 0;
}

}  // namespace

project::TextPart textPartOf(const Tree& tree, NodeId node, const std::string& role) {
    project::TextPart part;
    part.role = role;
    part.copy = copyOf(tree, node);
    const NodeId link = wholeLink(tree, node);
    if (link == noNode) return part;
    if (const std::string* address = tree[link].find("href"); address != nullptr) {
        part.link = *address;
        const auto ofLink = [](const Run& run) { return run.kind == Run::Kind::Link; };
        if (std::ranges::all_of(
                part.copy, [&](const Run& run) { return ofLink(run) || run.kind == Run::Kind::Break; })) {
            for (Run& run : part.copy)
                if (ofLink(run)) run = {Run::Kind::Plain, std::move(run.text), {}};
        }
    }
    if (const std::string* name = tree[link].find("aria-label"); name != nullptr && !isBlank(*name))
        part.name = *name;
    return part;
}

project::PicturePart picturePartOf(const Tree& tree, NodeId node, std::string& address) {
    const Node& image = tree[node];
    project::PicturePart part;
    if (const std::string* alt = image.find("alt"); alt != nullptr) part.alt = *alt;
    part.width = sizeIn(image, "width");
    part.height = sizeIn(image, "height");
    if (part.width == 0 || part.height == 0) part.width = part.height = 0;
    // Pages that load pictures lazily keep the address in another attribute. Common practice, no source.
    address.clear();
    for (const char* attribute : {"src", "data-src", "data-lazy-src", "srcset", "data-srcset"}) {
        const std::string* value = image.find(attribute);
        if (value == nullptr || isBlank(*value) || project::addressScheme(*value) == "data") continue;
        const std::size_t start = value->find_first_not_of(" \t\r\n\f");
        const bool isList = std::string_view(attribute).ends_with("srcset");
        address =
            value->substr(start, isList ? value->find_first_of(" ,", start) - start : std::string::npos);
        break;
    }
    return part;
}

}  // namespace tenter::markup
