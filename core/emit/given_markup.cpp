#include "emit/given_markup.h"

#include <algorithm>
#include <utility>

#include "markup/copy.h"
#include "markup/print.h"

namespace tenter::emit {

namespace {

using markup::NodeId;
using markup::Tree;

void setAttribute(markup::Node& node, const std::string& name, const std::string& value) {
    const auto known = std::ranges::find(node.attributes, name, &markup::Attribute::name);
    if (known == node.attributes.end())
        node.attributes.push_back({name, value});
    else
        known->value = value;
}

void dropAttribute(markup::Node& node, const std::string& name) {
    std::erase_if(node.attributes, [&](const markup::Attribute& each) { return each.name == name; });
}

/// True if both are shown alike. A break at the end of a text shows nothing; projects that were imported by
/// versions before 0.2.0 do not have those of their pages.
bool isSameText(project::Copy page, const project::Copy& own) {
    const auto endsInBreak = [&] { return !page.empty() && page.back().kind == project::Run::Kind::Break; };
    if (page == own || !endsInBreak()) return page == own;
    page.pop_back();
    return page == own && !endsInBreak();
}

class GivenWriter {
public:
    GivenWriter(const project::Project& project, const markup::GivenRow& row, const MarkupOptions& options,
                project::Problems& problems)
        : project_(project), row_(row), options_(options), problems_(problems), tree_(row.tree) {}

    std::string written(std::size_t variant) {
        if (project_.rightToLeft) setAttribute(tree_[row_.classElement], "dir", "rtl");
        write(variant);
        return markup::printed(tree_, row_.classElement) + "\n";
    }

    /// The whole tree with its own text and pictures.
    Tree marked(std::size_t variant) {
        keepsText_ = true;
        write(variant);
        return std::move(tree_);
    }

private:
    void write(std::size_t variant) {
        replaceClass(tree_[row_.classElement], project_.row().variants[row_.variant].className,
                     project_.row().variants[variant].className);
        if (options_.marked) setAttribute(tree_[row_.row], "data-tenter-row", "");
        if (row_.cards.size() != project_.row().cards.size())
            differs("/cards", "The project has " + std::to_string(project_.row().cards.size()) +
                                  " cards, but the imported markup has " + std::to_string(row_.cards.size()) +
                                  ".");
        for (std::size_t c = 0; c < std::min(row_.cards.size(), project_.row().cards.size()); ++c)
            writeCard(c);
    }

    void differs(const std::string& place, const std::string& what) {
        problems_.push_back({"", place, what, "Import the row again, or change the cards back."});
    }

    static void replaceClass(markup::Node& node, const std::string& from, const std::string& to) {
        std::string classes;
        for (const std::string_view name : node.classes())
            classes += (classes.empty() ? "" : " ") + (name == from ? to : std::string(name));
        setAttribute(node, "class", classes);
    }

    void writeCard(std::size_t c) {
        const markup::GivenCard& given = row_.cards[c];
        const project::Card& card = project_.row().cards[c];
        const std::string place = "/cards/" + std::to_string(c);
        if (options_.marked) setAttribute(tree_[given.node], "data-tenter-card", std::to_string(c));
        if (given.parts.size() != card.parts.size())
            differs(place + "/parts", "The card has " + std::to_string(card.parts.size()) +
                                          " parts, but the one in the imported markup has " +
                                          std::to_string(given.parts.size()) + ".");
        for (std::size_t p = 0; p < std::min(given.parts.size(), card.parts.size()); ++p) {
            const NodeId node = given.parts[p].node;
            const std::string at = place + "/parts/" + std::to_string(p);
            if (options_.marked)
                setAttribute(tree_[node], "data-tenter-part", std::to_string(c) + "." + std::to_string(p));
            const auto* picture = std::get_if<project::PicturePart>(&card.parts[p]);
            const auto* text = std::get_if<project::TextPart>(&card.parts[p]);
            if (picture != nullptr && given.parts[p].role == "picture") {
                if (!keepsText_)
                    writePicture(node, *picture, at,
                                 options_.sources ? options_.sources(c, p) : std::nullopt);
            } else if (text != nullptr && given.parts[p].role == text->role) {
                if (!keepsText_)
                    writeText(node, *text);
                else if (!isSameText(markup::textPartOf(row_.tree, node, text->role).copy, text->copy))
                    differs(at, "The text on the page differs from the text in the project.");
            } else
                differs(at, "The part is a " + (text != nullptr ? text->role : std::string("picture")) +
                                " in the project, but a " + given.parts[p].role + " in the imported markup.");
        }
    }

    void writePicture(NodeId node, const project::PicturePart& picture, const std::string& place,
                      const std::optional<PictureSources>& sources) {
        for (const char* name : {"srcset", "sizes", "loading"})
            dropAttribute(tree_[node], name);
        if (sources) {
            setAttribute(tree_[node], "srcset", sources->srcset);
            setAttribute(tree_[node], "sizes", sources->sizes);
            setAttribute(tree_[node], "src", sources->src);
        } else {
            setAttribute(tree_[node], "src", options_.address(picture, place));
        }
        setAttribute(tree_[node], "alt", picture.alt);
    }

    void writeText(NodeId node, const project::TextPart& part) {
        const project::TextPart was = markup::textPartOf(row_.tree, node, part.role);
        if (isSameText(was.copy, part.copy) && was.link == part.link) return;
        NodeId target = node;
        if (!part.link.empty() && !was.link.empty()) {
            while (!tree_[target].isHtml("a") && target != markup::noNode)
                target = tree_.following(target, node);
            if (target == markup::noNode) target = node;
            if (tree_[target].isHtml("a")) setAttribute(tree_[target], "href", part.link);
        }
        tree_[target].firstChild = tree_[target].lastChild = markup::noNode;
        for (const project::Run& run : part.copy)
            writeRun(target, run);
    }

    void writeRun(NodeId parent, const project::Run& run) {
        using Kind = project::Run::Kind;
        switch (run.kind) {
            case Kind::Plain:
                tree_.addText(parent, run.text);
                return;
            case Kind::Break:
                tree_.addElement(parent, "br", markup::Space::Html, {});
                return;
            case Kind::Strong:
                tree_.addText(tree_.addElement(parent, "strong", markup::Space::Html, {}), run.text);
                return;
            case Kind::Emphasis:
                tree_.addText(tree_.addElement(parent, "em", markup::Space::Html, {}), run.text);
                return;
            case Kind::Link:
                tree_.addText(tree_.addElement(parent, "a", markup::Space::Html, {{"href", run.to}}),
                              run.text);
        }
    }

    const project::Project& project_;
    const markup::GivenRow& row_;
    const MarkupOptions& options_;
    project::Problems& problems_;
    Tree tree_;
    bool keepsText_ = false;
};

}  // namespace

std::string writeGivenMarkup(const project::Project& project, std::size_t variant,
                             const markup::GivenRow& row, const MarkupOptions& options,
                             project::Problems& problems) {
    return GivenWriter(project, row, options, problems).written(variant);
}

markup::Tree markedPage(const project::Project& project, std::size_t variant, const markup::GivenRow& row,
                        project::Problems& problems) {
    MarkupOptions options;
    options.marked = true;
    return GivenWriter(project, row, options, problems).marked(variant);
}

}  // namespace tenter::emit
