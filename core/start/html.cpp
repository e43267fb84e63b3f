// HTML as pieces: headings, paragraphs, list items and links in their order.
#include <algorithm>
#include <array>
#include <map>

#include "markup/class_words.h"
#include "markup/copy.h"
#include "markup/features.h"
#include "markup/guess.h"
#include "markup/headings.h"
#include "markup/keep.h"
#include "markup/tree.h"
#include "project/rules.h"
#include "start/pieces.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using markup::NodeId;
using markup::noNode;
using markup::Tree;

/// The text of elements nested deeper is one paragraph.
constexpr int deepestElement = 200;

bool isBlankPart(const project::TextPart& part) {
    return project::plainText(part.copy).find_first_not_of(" \n") == std::string::npos;
}

/// The text of an element without breaks at its end, which are spaces between paragraphs in pasted text.
project::TextPart pastedPart(const Tree& tree, NodeId node, const std::string& role = {}) {
    project::TextPart part = markup::textPartOf(tree, node, role);
    while (!part.copy.empty() && part.copy.back().kind == project::Run::Kind::Break)
        part.copy.pop_back();
    return part;
}

/// The pieces below an element in document order.
class HtmlReader {
public:
    explicit HtmlReader(const Tree& tree) : tree_(tree), features_(markup::featuresOf(tree)) {}

    std::vector<Piece> pieces(NodeId top) {
        level_ = mostFrequentLevel(top);
        readChildren(top);
        return std::move(pieces_);
    }
    [[nodiscard]] std::string title() const { return title_; }

private:
    /// The level of the headings that start cards; of two equally frequent levels the deeper. 0: none.
    [[nodiscard]] int mostFrequentLevel(NodeId top) const {
        std::map<int, int> counts;
        for (NodeId at = tree_.following(top, top); at != noNode; at = tree_.following(at, top))
            if (markup::isHeading(tree_[at]) && features_[at].letters > 0)
                ++counts[markup::headingLevelOf(tree_[at])];
        int level = 0;
        for (const auto& [one, count] : counts)
            if (level == 0 || count >= counts[level]) level = one;
        return level;
    }

    void readChildren(NodeId parent) {
        if (depth_ > deepestElement) {
            addText(parent);
            return;
        }
        ++depth_;
        readNodesIn(parent);
        --depth_;
    }
    void readNodesIn(NodeId parent) {
        for (NodeId at = tree_[parent].firstChild; at != noNode;) {
            const markup::Node& node = tree_[at];
            const bool isLoose = node.isText() || (markup::isPhrasing(node) && !features_[at].block &&
                                                   !node.isHtml("img") && !node.isHtml("button"));
            if (isLoose) {
                at = readLine(at);
                continue;
            }
            if (node.space == markup::Space::Html && !markup::isHidden(node)) read(at);
            at = node.next;
        }
    }

    void read(NodeId at) {
        const markup::Node& node = tree_[at];
        if (node.isHtml("img")) {
            addPicture(at);
        } else if (node.isHtml("hr")) {
            ruled_ = true;
        } else if (markup::isHeading(node)) {
            addHeading(at);
        } else if (node.isHtml("li") || node.isHtml("tr") || node.isHtml("dt")) {
            const bool before = std::exchange(inItem_, true);
            itemStarts_ = itemStarts_ || level_ == 0;
            isLeaf(at) ? addText(at) : readChildren(at);
            inItem_ = before;
        } else if (isLeaf(at)) {
            addText(at);
        } else {
            readChildren(at);
        }
    }

    /// True for an element that is one paragraph of text.
    [[nodiscard]] bool isLeaf(NodeId at) const {
        const markup::Node& node = tree_[at];
        if (features_[at].letters == 0 || features_[at].pictures > 0) return false;
        return node.isHtml("p") || node.isHtml("button") || !hasBlockInside(at);
    }
    [[nodiscard]] bool hasBlockInside(NodeId at) const {
        for (NodeId child = tree_[at].firstChild; child != noNode; child = tree_[child].next)
            if (!tree_[child].isText() && (features_[child].block || !markup::isPhrasing(tree_[child])))
                return true;
        return false;
    }

    /// Text and phrases next to each other, without an element of their own, are one paragraph. Returns the
    /// node after them.
    NodeId readLine(NodeId first) {
        Tree line;
        const NodeId top = line.addElement(noNode, "p", markup::Space::Html, {});
        NodeId at = first;
        for (; at != noNode; at = tree_[at].next) {
            const markup::Node& node = tree_[at];
            if (!node.isText() && (!markup::isPhrasing(node) || features_[at].block || node.isHtml("img") ||
                                   node.isHtml("button")))
                break;
            copyInto(line, top, at, 0);
        }
        add(pastedPart(line, top));
        return at;
    }
    // NOLINTNEXTLINE(misc-no-recursion): not deeper than `deepestElement`.
    void copyInto(Tree& line, NodeId parent, NodeId at, int depth) const {
        const markup::Node& node = tree_[at];
        if (node.isText() || depth > deepestElement) {
            line.addText(parent, tree_.textOf(at));
            return;
        }
        const NodeId own = line.addElement(parent, node.name, node.space, node.attributes);
        for (NodeId child = node.firstChild; child != noNode; child = tree_[child].next)
            copyInto(line, own, child, depth + 1);
    }

    void addPicture(NodeId at) {
        std::string address;
        Piece piece;
        piece.isPicture = true;
        piece.alt = markup::picturePartOf(tree_, at, address).alt;
        push(std::move(piece));
    }

    void addHeading(NodeId at) {
        project::TextPart part = pastedPart(tree_, at);
        if (isBlankPart(part)) return;
        const int level = tree_[at].name[1] - '0';
        if (level < level_ && !anyCard_ && title_.empty()) {
            title_ = project::plainText(part.copy);
            std::ranges::replace(title_, '\n', ' ');
            return;
        }
        part.role = level == level_ ? "heading" : "body";
        part.link.clear();
        Piece piece;
        piece.part = std::move(part);
        anyCard_ = anyCard_ || piece.part.role == "heading";
        push(std::move(piece));
    }

    void addText(NodeId at) { add(pastedPart(tree_, at), tree_[at].isHtml("button")); }

    void add(project::TextPart part, bool isButton = false) {
        if (isBlankPart(part)) return;
        Piece piece;
        const bool isLink = !part.link.empty();
        const bool isStrong = part.copy.size() == 1 && part.copy[0].kind == project::Run::Kind::Strong;
        if (isButton || (isLink && letterCount(project::plainText(part.copy)) <= 60)) {
            part.role = "button";
        } else if (level_ == 0 && isStrong && isShort(part.copy[0].text.str())) {
            part.role = "heading";
            part.copy[0].kind = project::Run::Kind::Plain;
        } else if (level_ == 0 && inItem_ && itemStarts_ && takeLead(part)) {
            return;
        }
        piece.part = std::move(part);
        push(std::move(piece));
    }

    /// `**Low tide** Two slow miles`: strong text at the start of a list item is its heading.
    bool takeLead(project::TextPart& part) {
        if (part.copy.size() < 2 || part.copy[0].kind != project::Run::Kind::Strong ||
            !isShort(part.copy[0].text.str()))
            return false;
        Piece heading = pieceOf(part.copy[0].text.str(), "heading");
        part.copy.erase(part.copy.begin());
        project::SharedText& text = part.copy.front().text;
        const std::size_t from = text.str().find_first_not_of(" :.–—-");
        text = from == std::string::npos ? std::string() : text.str().substr(from);
        if (part.copy.front().text.empty()) part.copy.erase(part.copy.begin());
        push(std::move(heading));
        // A link at the end of the item is its button.
        Piece button;
        if (!part.copy.empty() && part.copy.back().kind == project::Run::Kind::Link &&
            isLabel(part.copy.back().text.str())) {
            button = pieceOf(part.copy.back().text.str(), "button");
            button.part.link = part.copy.back().to;
            part.copy.pop_back();
        }
        if (!part.copy.empty()) {
            project::SharedText& end = part.copy.back().text;
            end = end.str().substr(0, end.str().find_last_not_of(' ') + 1);
        }
        Piece body;
        body.part = std::move(part);
        if (!isBlankPart(body.part)) push(std::move(body));
        if (!button.part.copy.empty()) push(std::move(button));
        return true;
    }

    void push(Piece piece) {
        piece.afterGap = true;
        // A rule right below a heading is a decoration.
        const bool isDivided = std::exchange(ruled_, false) && sinceHeading_ != 1;
        piece.startsCard = std::exchange(itemStarts_, false) || isDivided;
        // Where rules divide cards without headings, the first piece starts a card, too.
        if (isDivided && level_ == 0 && !inItem_ && !pieces_.empty()) pieces_.front().startsCard = true;
        sinceHeading_ = piece.part.role == "heading" ? 1 : sinceHeading_ > 0 ? sinceHeading_ + 1 : 0;
        pieces_.push_back(std::move(piece));
    }

    const Tree& tree_;
    std::vector<markup::Features> features_;
    std::vector<Piece> pieces_;
    std::string title_;
    int level_ = 0;
    int depth_ = 0;
    bool anyCard_ = false;
    bool inItem_ = false;
    bool itemStarts_ = false;
    bool ruled_ = false;
    std::size_t sinceHeading_ = 0;  // pieces since the last heading, with it; 0: there was none
};

/// The table that has most of the page's text.
NodeId mainTable(const Tree& tree, const std::vector<markup::Features>& features) {
    for (NodeId at = 0; at < tree.size(); ++at)
        if (tree[at].isHtml("table") && features[at].letters * 5 > features[tree.body()].letters * 4)
            return at;
    return noNode;
}

TableRows rowsOf(const Tree& tree, NodeId table) {
    TableRows rows;
    for (NodeId at = tree.following(table, table); at != noNode; at = tree.following(at, table)) {
        if (tree[at].isHtml("tr")) rows.emplace_back();
        if (rows.empty() || !(tree[at].isHtml("td") || tree[at].isHtml("th"))) continue;
        std::string cell = project::plainText(pastedPart(tree, at).copy);
        rows.back().push_back(std::move(cell));
    }
    std::erase_if(rows, [](const auto& row) { return row.empty(); });
    return rows;
}

/// True if two headings are next to each other, as in a text, and not each in a card of its own.
bool hasFlow(const Tree& tree) {
    std::map<NodeId, int> parents;
    for (NodeId at = 0; at < tree.size(); ++at)
        if (markup::isHeading(tree[at]) && ++parents[tree[at].parent] > 1) return true;
    return false;
}

/// Cards of a row that the page has as elements. False if there is none with most of the text.
bool addRow(const Tree& tree, const std::vector<markup::Features>& features, PastedText& out) {
    if (hasFlow(tree)) return false;
    const auto row = markup::guessRow(tree);
    if (!row || row->cards.size() < 2) return false;
    int letters = 0;
    int headings = 0;
    for (const NodeId card : row->cards) {
        letters += features[card].letters;
        headings += features[card].headings > 0 ? 1 : 0;
    }
    if (letters * 2 < features[tree.body()].letters && headings == 0) return false;
    int loose = 0;
    for (const NodeId node : row->cards) {
        PastedCard card;
        for (const markup::GuessedPart& part : markup::guessParts(tree, node, loose)) {
            if (part.role == "picture") {
                std::string address;
                if (card.alt.empty()) card.alt = markup::picturePartOf(tree, part.node, address).alt;
                continue;
            }
            project::TextPart text = pastedPart(tree, part.node, part.role);
            if (isBlankPart(text) || card.parts.size() >= project::mostParts - 2) continue;
            if (part.role == "button" && text.link.empty()) text.link = "#";
            if (part.role == "heading") text.link.clear();
            card.parts.push_back(std::move(text));
        }
        out.cards.push_back(std::move(card));
    }
    if (loose > 0)
        out.notes.push_back(
            wording::say("Some text in the cards is not in an element of its own and was left out."));
    return true;
}

}  // namespace

void readHtml(std::string_view text, PastedText& out) {
    project::Problems problems;
    const std::optional<Tree> parsed = markup::parse(text, {}, problems);
    if (!parsed || parsed->body() == noNode) {
        out.notes.push_back(wording::say("The HTML is nested too deeply to be read. Paste only the text."));
        return;
    }
    for (NodeId at = 0; at < parsed->size() && out.language.empty(); ++at)
        if (const std::string* language = (*parsed)[at].find("lang");
            language != nullptr && project::isLanguage(*language))
            out.language = *language;
    const Tree tree = markup::cleaned(*parsed);
    const std::vector<markup::Features> features = markup::featuresOf(tree);
    if (const NodeId table = mainTable(tree, features); table != noNode) {
        addTable(rowsOf(tree, table), out);
        return;
    }
    if (out.format == TextFormat::Html && addRow(tree, features, out)) return;
    HtmlReader reader(tree);
    std::vector<Piece> pieces = reader.pieces(tree.body());
    out.title = reader.title();
    addCards(std::move(pieces), out);
}

}  // namespace tenter::start
