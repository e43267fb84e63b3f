// Cards and pictures of a page.
#include <algorithm>
#include <cmath>
#include <set>

#include "css/longhands.h"
#include "start/page_colours.h"
#include "start/page_gaps.h"
#include "start/page_piece.h"
#include "units/scan.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using css::Line;
using markup::GivenPart;
using markup::NodeId;
using markup::PageBox;
using project::Place;
using project::Ratio;
using units::Colour;
using units::Length;

/// The distances of a part from the inner edges of the card's border, and its width without them.
struct Inset {
    Line left, right, width;
    std::vector<std::string> writtenLeft, writtenRight;
};

class CardReader {
public:
    CardReader(const PieceContext& context, const PageBox& box, PieceReading& reading)
        : context_(context),
          reading_(reading),
          card_(context.row.cards.front().node),
          box_(box),
          inner_(hasEvenBorder(context, card_) ? less(box.width, sum(borderAt(context, card_, "left"),
                                                                     borderAt(context, card_, "right")))
                                               : box.width),
          lengths_(context, context.root, box.width) {}

    void read() {
        readBox();
        sayUnknown("card", card_);
        readShadow();
        readParts();
    }

private:
    [[nodiscard]] std::string value(NodeId node, const std::string& property) const {
        return context_.styles.value(node, property);
    }
    /// Adds the sentence `meaning`, in which %1 is the declaration of the property.
    void note(const std::string& key, NodeId node, const std::string& property, std::string_view meaning) {
        context_.notes.add(key,
                           wording::say(meaning, {context_.notes.written(context_.styles, node, property)}));
    }
    /// The same for a role.
    void noteOf(const std::string& role, const std::string& key, NodeId node, const std::string& property,
                std::string_view meaning) {
        context_.notes.add(
            role + key,
            wording::say(meaning, {context_.notes.writtenOf(role, context_.styles, node, property)}));
    }
    [[nodiscard]] bool isInline(NodeId node) const {
        const std::string display = value(node, "display");
        return display.empty() || display == "inline";
    }

    void readBox() {
        project::CardSettings& card = reading_.settings.card;
        const std::string background = value(card_, "background-color");
        card.background = colourAmong(background).value_or(Colour{0, 0, 0, 0});
        if (background.find("gradient") != std::string::npos || background.find("url(") != std::string::npos)
            note("card-background", card_, "background-color",
                 wording::noted("%1: the picture or gradient behind the card is not in the project."));
        card.border.width = Length();
        card.border.colour = Colour{0, 0, 0, 0};
        // A border on some sides only is room inside the card: see borderBeside.
        const bool isEven = hasEvenBorder(context_, card_);
        const Line top = isEven ? borderAt(context_, card_, "top") : Line{};
        if (!isEven)
            note("card-border", card_, unevenBorder(),
                 wording::noted(
                     "%1: the borders of the card's sides differ. The project has no border there; its "
                     "width is in the padding."));
        if (!context_.isSame(top, {})) {
            card.border.width =
                lengths_.nearest(top, {value(card_, "border-top-width")}, card_, "border-top-width", false);
            const std::string colour = value(card_, "border-top-color");
            auto found = colourAmong(colour);
            if (!found && colour.find("currentcolor") != std::string::npos)
                found = colourAmong(value(card_, "color")).value_or(Colour{0, 0, 0, 255});
            if (!found)
                note("card-border-colour", card_, "border-top-color",
                     wording::noted("%1 is a colour that cannot be read."));
            card.border.colour = found.value_or(Colour{0, 0, 0, 255});
            const std::string style = value(card_, "border-top-style");
            if (style != "solid")
                note("card-border-style", card_, "border-top-style",
                     wording::noted("%1: Tenter draws a solid border."));
        }
        card.radius = radiusAt(context_, card_, lengths_);
        card.direction = project::Direction::Stacked;
        card.linked = false;
        for (const char* property : {"background-color", "border-top-color", "box-shadow", "transform"})
            if (context_.hovered.value(card_, property) != value(card_, property))
                context_.notes.add(
                    std::string("card-hover-") + property,
                    wording::say(
                        "%1 under the pointer is not in the project.",
                        {context_.notes.writtenOf(wording::say("card"), context_.hovered, card_, property)}));
    }

    /// The property of the first side that has a border.
    [[nodiscard]] std::string unevenBorder() const {
        for (const char* side : {"top", "left", "right", "bottom"})
            if (!context_.isSame(borderAt(context_, card_, side), {}))
                return "border-" + std::string(side) + "-width";
        return "border-top-width";
    }

    /// The shadows of a list that are seen: without those that are transparent or have only zero lengths.
    [[nodiscard]] std::vector<std::string> visibleShadows(const std::string& list) const {
        std::vector<std::string> all = css::listItems(list);
        std::erase_if(all, [&](const std::string& shadow) {
            bool isThere = false;
            for (const std::string& word : css::valueParts(shadow)) {
                const auto colour = colourIn(word);
                if (colour && colour->isTransparent()) return true;
                const auto length =
                    colour ? std::nullopt : context_.styles.lengthOf(card_, word, std::nullopt);
                isThere = isThere || (length && !context_.isSame(*length, {}));
            }
            return !isThere;
        });
        return all;
    }

    /// CSS Backgrounds 3 § 6. The first outer shadow.
    void readShadow() {
        project::Shadow& shadow = reading_.settings.card.shadow;
        shadow.x = shadow.y = shadow.blur = shadow.spread = Length();
        shadow.colour = Colour{0, 0, 0, 0};
        const std::string text = value(card_, "box-shadow");
        if (text.empty() || text == "none") return;
        const std::vector<std::string> visible = visibleShadows(text);
        if (visible.empty()) return;
        const std::string& first = visible.front();
        if (visible.size() > 1)
            note("card-shadows", card_, "box-shadow",
                 wording::noted("%1: the project has the first shadow only."));
        std::vector<Length> lengths;
        bool isInner = false;
        for (const std::string& word : css::valueParts(first)) {
            isInner = isInner || word == "inset";
            if (const auto colour = colourIn(word)) {
                shadow.colour = *colour;
            } else if (const auto line = context_.styles.lengthOf(card_, word, std::nullopt)) {
                lengths.push_back(Length::px(std::round(context_.at(*line) * 1000) / 1000));
            }
        }
        if (isInner || lengths.size() < 2) {
            note("card-shadow", card_, "box-shadow",
                 wording::noted("%1: this shadow is not in the project."));
            shadow.colour = Colour{0, 0, 0, 0};
            return;
        }
        if (shadow.colour->isTransparent() && first.find("transparent") == std::string::npos)
            shadow.colour = colourAmong(value(card_, "color")).value_or(Colour{0, 0, 0, 255});
        shadow.x = lengths[0];
        shadow.y = lengths[1];
        if (lengths.size() > 2) shadow.blur = lengths[2];
        if (lengths.size() > 3) shadow.spread = lengths[3];
    }

    [[nodiscard]] Inset insetOf(const GivenPart& part) const {
        Inset inset;
        inset.width = inner_;
        const auto add = [&](NodeId node, const std::string& property, bool isLeft, const Line& percentage) {
            const Line size = property.starts_with("border")
                                  ? borderAt(context_, node, isLeft ? "left" : "right")
                                  : lengthAt(context_, node, property, percentage);
            (isLeft ? inset.left : inset.right) = sum(isLeft ? inset.left : inset.right, size);
            inset.width = less(inset.width, size);
            if (std::string text = value(node, property); !text.empty())
                (isLeft ? inset.writtenLeft : inset.writtenRight).push_back(std::move(text));
        };
        std::vector<NodeId> around{card_};
        around.insert(around.end(), part.wrappers.begin(), part.wrappers.end());
        for (std::size_t i = 0; i < around.size(); ++i) {
            if (value(around[i], "display") == "contents" || (i > 0 && isInline(around[i]))) continue;
            const Line percentage = inset.width;
            if (i > 0) {
                add(around[i], "margin-left", true, percentage);
                add(around[i], "margin-right", false, percentage);
                add(around[i], "border-left-width", true, percentage);
                add(around[i], "border-right-width", false, percentage);
            }
            add(around[i], "padding-left", true, i > 0 ? percentage : box_.width);
            add(around[i], "padding-right", false, i > 0 ? percentage : box_.width);
            // Without a border in the project its width is room inside the card.
            if (i == 0 && !hasEvenBorder(context_, card_)) {
                add(card_, "border-left-width", true, percentage);
                add(card_, "border-right-width", false, percentage);
            }
        }
        const Line percentage = inset.width;
        add(part.node, "margin-left", true, percentage);
        add(part.node, "margin-right", false, percentage);
        return inset;
    }

    void readParts() {
        const std::vector<GivenPart>& parts = context_.row.cards.front().parts;
        // The padding of the card is the inset that most texts have.
        std::vector<std::pair<Inset, int>> insets;
        for (const GivenPart& part : parts) {
            if (part.role == "picture" && parts.size() > 1) continue;
            Inset inset = insetOf(part);
            const auto known = std::ranges::find_if(insets, [&](const auto& other) {
                return context_.isSame(other.first.left, inset.left) &&
                       context_.isSame(other.first.right, inset.right);
            });
            if (known != insets.end())
                ++known->second;
            else
                insets.emplace_back(std::move(inset), 1);
        }
        if (insets.empty()) return;
        const Inset common =
            std::ranges::max_element(insets, {}, [](const auto& one) { return one.second; })->first;
        project::CardSettings& card = reading_.settings.card;
        card.padding.left = lengths_.nearest(common.left, common.writtenLeft, card_, "padding-left");
        card.padding.right = lengths_.nearest(common.right, common.writtenRight, card_, "padding-right");
        content_ = less(inner_, sum(common.left, common.right));
        card.bleed = false;
        readBeside(common);
        for (const markup::RoleNodes& role : context_.row.roles)
            if (role.role != "row" && role.role != "card" && !role.nodes.empty()) readRole(role.role, common);
        readGaps(context_, content_, *card.bleed, reading_);
        if (*card.bleed && !isBeside() && isFirst("picture")) {
            // Hidden under the picture; as wide as at the sides.
            const bool alwaysFirst =
                std::ranges::all_of(context_.row.cards, [](const markup::GivenCard& one) {
                    return !one.parts.empty() && one.parts.front().role == "picture";
                });
            if (alwaysFirst) card.padding.top = card.padding.left;
        }
    }

    [[nodiscard]] bool isBeside() const {
        return reading_.settings.card.direction == project::Direction::Beside;
    }

    /// The picture beside the other parts, if a flex line or two columns of a grid put it there.
    void readBeside(const Inset& common) {
        const auto& parts = context_.row.cards.front().parts;
        if (parts.size() < 2 || parts.front().role != "picture") return;
        const auto chainOf = [](const GivenPart& part) {
            std::vector<NodeId> chain = part.wrappers;
            chain.push_back(part.node);
            return chain;
        };
        const std::vector<NodeId> picture = chainOf(parts[0]);
        const std::vector<NodeId> text = chainOf(parts[1]);
        std::size_t shared = 0;
        while (shared < std::min(picture.size(), text.size()) - 1 && picture[shared] == text[shared])
            ++shared;
        const NodeId parent = shared == 0 ? card_ : picture[shared - 1];
        const bool together = std::ranges::all_of(parts.begin() + 1, parts.end(), [&](const GivenPart& part) {
            const std::vector<NodeId> chain = chainOf(part);
            return chain.size() > shared + 1 && chain[shared] == text[shared];
        });
        if (!together) return;
        markup::Cautions cautions;
        const std::vector<markup::SheetPlace> noSheets;
        markup::PageBoxes boxes(context_.row.tree, context_.styles, context_.middle(), cautions, noSheets);
        const Line padding = lengthAt(context_, card_, "padding-left", box_.width);
        const PageBox content{
            padding, less(inner_, sum(padding, lengthAt(context_, card_, "padding-right", box_.width)))};
        const std::string display = value(parent, "display");
        const bool isLine = display.find("flex") != std::string::npos &&
                            !value(parent, "flex-direction").starts_with("column");
        const bool isGrid = display.find("grid") != std::string::npos &&
                            boxes.columnsOf(parent, content.width).value_or(1) == 2;
        if (!isLine && !isGrid) return;
        const auto boxOf = [&](const std::vector<NodeId>& chain, std::size_t count) {
            return boxes.boxesOf(content, card_,
                                 {chain.begin(), chain.begin() + static_cast<std::ptrdiff_t>(count)});
        };
        // A picture that is positioned fills the element around it.
        const bool isPositioned = value(picture.back(), "position") == "absolute";
        const PageBox slot = boxOf(picture, isPositioned ? shared + 1 : picture.size()).border;
        const PageBox column = boxOf(text, shared + 1).border;
        if (context_.at(column.left) < context_.at(sum(slot.left, slot.width)) - 0.1) {
            note("beside", parent, "flex-direction",
                 wording::noted("%1: Tenter places a picture beside the text at its start only."));
            return;
        }
        for (const wording::Sentence& caution : cautions) {
            const std::string sentence = caution.worded();
            context_.notes.add("beside-" + sentence, sentence);
        }
        if (value(parent, "align-items").find("center") != std::string::npos)
            note("beside-middle", parent, "align-items",
                 wording::noted("%1: the text is in the middle of the card on the page. In the project it "
                                "starts at the top."));
        setBeside(common, slot, column, parts[1], shared, picture.back());
    }

    void setBeside(const Inset& common, const PageBox& slot, const PageBox& column, const GivenPart& text,
                   std::size_t shared, NodeId picture) {
        project::CardSettings& card = reading_.settings.card;
        card.direction = project::Direction::Beside;
        card.bleed = context_.isSame(slot.left, {});
        const double share = context_.at(slot.width) / std::max(1.0, context_.at(inner_));
        card.pictureShare = Length::percent(share * 100);
        if (!context_.isSame(slot.width, {inner_.atZero * share, inner_.perPx * share}))
            note("share", picture, "width",
                 wording::noted("%1: Tenter gives a picture beside the text a share of the card's width. The "
                                "share is exact at one viewport width of each band."));
        // From the picture to the text: the distance in the line, and what is inside the element of the text.
        Inset before;
        before.width = column.width;
        for (std::size_t i = shared; i < text.wrappers.size(); ++i) {
            if (i > shared) addSide(before, text.wrappers[i], "margin-left");
            before.left = sum(before.left, borderAt(context_, text.wrappers[i], "left"));
            addSide(before, text.wrappers[i], "padding-left");
        }
        addSide(before, text.node, "margin-left");
        const Line start = sum(column.left, before.left);
        const Line distance = less(start, sum(slot.left, slot.width));
        std::vector<std::string> written = common.writtenLeft;
        card.padding.left = lengths_.nearest(distance, written, card_, "padding-left");
        if (!*card.bleed && !context_.isSame(slot.left, distance))
            note("beside-distance", card_, "padding-left",
                 wording::noted("%1: Tenter uses one distance on both sides of the picture: that from the "
                                "edge of the card."));
        content_ = less(inner_, sum(start, common.right));
    }

    void addSide(Inset& inset, NodeId node, const std::string& property) const {
        inset.left = sum(inset.left, lengthAt(context_, node, property, inset.width));
    }

    [[nodiscard]] bool isFirst(const std::string& role) const {
        const auto& parts = context_.row.cards.front().parts;
        return !parts.empty() && parts.front().role == role;
    }

    /// The first part of a role, in any card.
    [[nodiscard]] const GivenPart* partOf(const std::string& role) const {
        for (const markup::GivenCard& card : context_.row.cards)
            for (const GivenPart& part : card.parts)
                if (part.role == role) return &part;
        return nullptr;
    }

    /// Reports what the page does to an element and a project has no setting for.
    void sayUnknown(const std::string& role, NodeId node) {
        for (const char* property : {"opacity", "transform", "rotate", "scale", "translate", "filter",
                                     "backdrop-filter", "clip-path", "mask-image", "mix-blend-mode",
                                     "text-shadow", "text-indent", "animation-name", "writing-mode"}) {
            const std::string set = value(node, property);
            if (set.empty() || set == "none" || set == "normal" || set == "1" || set == "0") continue;
            noteOf(role, std::string("-") + property, node, property,
                   wording::noted("%1: this is not in the project, which has no such setting."));
        }
    }

    void readRole(const std::string& role, const Inset& common) {
        const GivenPart* part = partOf(role);
        if (part == nullptr) return;
        sayUnknown(role, part->node);
        Inset inset = insetOf(*part);
        const Line left = less(inset.left, common.left);
        const Line right = less(inset.right, common.right);
        if (role == "picture" && isBeside()) {
            reading_.settings.picture.radius = pictureRadius(*part);
            return;
        }
        if (role == "picture") {
            const bool touches = context_.isSame(inset.left, {}) && context_.isSame(inset.right, {});
            const bool isInset = !context_.isSame(common.left, {}) || !context_.isSame(common.right, {});
            project::CardSettings& card = reading_.settings.card;
            card.bleed = touches && isInset;
            readPicture(*part, inset.width);
            if (*card.bleed) return;
        }
        reading_.sizes[role] = context_.styles.fontSize(part->node);
        if (role == "picture") reading_.sizes.erase(role);
        const Line size = role == "picture" ? context_.root : reading_.sizes[role];
        const LengthFinder lengths(context_, size, content_);
        if (role != "picture") {
            reading_.settings.text.of(role) = textStyleAt(context_, part->node, role, content_);
            reading_.settings.text.of(role).place = placeOf(*part);
            checkAlike(role);
            sayNarrow(*part, role, inset);
        }
        project::Sides& margin =
            role == "picture" ? reading_.settings.picture.margin : reading_.settings.text.of(role).margin;
        margin.left = lengths.nearest(left, inset.writtenLeft, part->node, "margin-left", true, true);
        margin.right = lengths.nearest(right, inset.writtenRight, part->node, "margin-right", true, true);
    }

    /// Where the box of a part is across the card.
    [[nodiscard]] Place placeOf(const GivenPart& part) const {
        const NodeId parent = context_.row.tree[part.node].parent;
        const std::string width = value(part.node, "width");
        if (width == "100%" || value(part.node, "flex-grow") == "1") return Place::Stretch;
        const auto named = [](const std::string& word) {
            if (word.find("center") != std::string::npos) return Place::Center;
            if (word.find("end") != std::string::npos || word == "right") return Place::End;
            if (word.find("start") != std::string::npos || word == "left") return Place::Start;
            return Place::Stretch;
        };
        const std::string around = value(parent, "display");
        const bool isColumn = value(parent, "flex-direction").starts_with("column");
        // Automatic margins come before alignment. CSS Flexbox 1 § 8.1, CSS Grid 2 § 10.2.
        const bool autoLeft = value(part.node, "margin-left") == "auto";
        const bool autoRight = value(part.node, "margin-right") == "auto";
        if ((autoLeft || autoRight) &&
            (around.find("flex") != std::string::npos || around.find("grid") != std::string::npos))
            return autoLeft && autoRight ? Place::Center : autoLeft ? Place::End : Place::Start;
        if (around.find("flex") != std::string::npos) {
            if (!isColumn) {
                const Place place = named(value(parent, "justify-content"));
                return place == Place::Stretch ? Place::Start : place;
            }
            const std::string own = value(part.node, "align-self");
            return named(own.empty() || own == "auto" ? value(parent, "align-items") : own);
        }
        if (around.find("grid") != std::string::npos) {
            const std::string own = value(part.node, "justify-self");
            return named(own.empty() || own == "auto" ? value(parent, "justify-items") : own);
        }
        const std::string display = value(part.node, "display");
        const bool isInLine = display.empty() || display.starts_with("inline");
        const bool shrinks = width.ends_with("-content");
        if (!isInLine && !shrinks) return Place::Stretch;
        if (shrinks)
            return value(part.node, "margin-left") == "auto" && value(part.node, "margin-right") == "auto"
                       ? Place::Center
                       : Place::Start;
        const std::string align = value(parent, "text-align");
        const Place place = named(align);
        return place == Place::Stretch ? Place::Start : place;
    }

    /// Reports elements of a role that have another style than the first.
    void checkAlike(const std::string& role) {
        const markup::RoleNodes* nodes = context_.row.find(role);
        if (nodes == nullptr) return;
        for (const char* property :
             {"color", "font-weight", "font-family", "text-transform", "background-color"})
            for (const NodeId node : nodes->nodes)
                if (value(node, property) != value(nodes->nodes.front(), property))
                    noteOf(
                        role, std::string(property) + "-alike", node, property,
                        wording::noted("%1: some elements of this role differ. Tenter uses the value of the "
                                       "first."));
        for (const NodeId node : nodes->nodes)
            if (!context_.isSame(context_.styles.fontSize(node),
                                 context_.styles.fontSize(nodes->nodes.front())))
                noteOf(role, "-sizes", node, "font-size",
                       wording::noted(
                           "%1: some elements of this role have another size. Tenter uses the size of "
                           "the first."));
    }

    void sayNarrow(const GivenPart& part, const std::string& role, const Inset& inset) {
        const std::string written = value(part.node, "max-width");
        const auto most = context_.styles.length(part.node, "max-width", inset.width, "none");
        // A maximum that cannot be read may be reached.
        const bool isReached = most ? context_.at(*most) < context_.at(inset.width) - 0.02
                                    : !written.empty() && written != "none";
        if (isReached)
            noteOf(role, "max-width", part.node, "max-width",
                   wording::noted("%1: Tenter has no maximum width for text. The text fills the card."));
        const std::string wrap = value(part.node, "white-space");
        if (wrap == "nowrap")
            noteOf(role, "white-space", part.node, "white-space",
                   wording::noted("%1: Tenter breaks this text into lines."));
        const std::string clamp = value(part.node, "-webkit-line-clamp");
        if (!clamp.empty() && clamp != "none")
            noteOf(role, "clamp", part.node, "-webkit-line-clamp",
                   wording::noted("%1: Tenter shows the whole text."));
    }

    static std::optional<Ratio> ratioIn(std::string text) {
        if (const std::size_t at = text.find("auto"); at != std::string::npos) text.erase(at, 4);
        std::ranges::replace(text, '/', ' ');
        const std::vector<std::string> parts = css::valueParts(text);
        if (parts.empty() || parts.size() > 2) return std::nullopt;
        const auto one = units::scanNumber(parts.front());
        const auto other =
            parts.size() == 2 ? units::scanNumber(parts.back()) : std::optional(units::Scanned{1, {}});
        if (!one || !other || one->value <= 0 || other->value <= 0) return std::nullopt;
        return Ratio{one->value, other->value};
    }

    /// A ratio from a height. It is exact where both sides change alike.
    Ratio ratioOf(const Line& width, const Line& height, NodeId node, const std::string& property) {
        const double ratio = context_.at(width) / std::max(0.001, context_.at(height));
        if (!context_.isSame(width, {height.atZero * ratio, height.perPx * ratio}))
            note("picture-height", node, property,
                 wording::noted("%1: Tenter gives a picture an aspect ratio instead of a height. The ratio "
                                "is exact at one viewport width of each band."));
        return {std::round(ratio * 1000) / 1000, 1};
    }

    /// The height of a box, with vertical padding in place of a height.
    [[nodiscard]] std::optional<std::pair<Line, std::string>> heightOf(NodeId node, const Line& width) const {
        const std::string height = value(node, "height");
        const bool hasHeight = !height.empty() && height != "auto" && height.find('%') == std::string::npos;
        if (hasHeight) {
            const Line line = lengthAt(context_, node, "height", {});
            if (context_.at(line) > 0) return std::pair{line, std::string("height")};
        }
        // The attribute of the markup holds where no rule sets a height. HTML § 15.4.3.
        const markup::Node& element = context_.row.tree[node];
        const css::Applying* set = context_.styles.winner(node, "height");
        const bool isSet = set != nullptr && set->origin != css::Origin::Browser;
        const std::string* attribute = element.isHtml("img") ? element.find("height") : nullptr;
        if (const auto px = attribute == nullptr || isSet ? std::nullopt : units::scanNumber(*attribute))
            if (px->value > 0 && px->rest.empty())
                return std::pair{Line{px->value, 0}, std::string("height")};
        for (const char* property : {"padding-top", "padding-bottom"}) {
            if (value(node, property).find('%') == std::string::npos) continue;
            const Line line = lengthAt(context_, node, property, width);
            if (context_.at(line) > 0) return std::pair{line, std::string(property)};
        }
        return std::nullopt;
    }

    void readPicture(const GivenPart& part, const Line& width) {
        project::PictureSettings& picture = reading_.settings.picture;
        picture.ratio = Ratio{};
        picture.radius = pictureRadius(part);
        const std::string fit = value(part.node, "object-fit");
        bool isFixed = false;
        std::vector<NodeId> nodes{part.node};
        // Elements around the picture alone.
        for (auto wrapper = part.wrappers.rbegin(); wrapper != part.wrappers.rend(); ++wrapper)
            if (holdsOnly(*wrapper, part.node)) nodes.push_back(*wrapper);
        for (const NodeId node : nodes) {
            const auto ratio = ratioIn(value(node, "aspect-ratio"));
            const auto height = heightOf(node, width);
            if (ratio && !height) {
                picture.ratio = *ratio;
                isFixed = true;
                break;
            }
            if (height) {
                picture.ratio = ratioOf(width, height->first, node, height->second);
                isFixed = true;
                break;
            }
            // Without a height of its own a picture has that of its file, unless it fills its wrapper.
            if (node == part.node && value(node, "height").find('%') == std::string::npos &&
                value(node, "position") != "absolute")
                break;
        }
        if (isFixed && fit != "cover" && !fit.empty())
            note("picture-fit", part.node, "object-fit",
                 wording::noted("%1: Tenter crops the picture so that it covers its box."));
        sayNarrowPicture(part, width);
    }

    void sayNarrowPicture(const GivenPart& part, const Line& width) {
        const std::string own = value(part.node, "width");
        const auto size = context_.styles.length(part.node, "width", width, "auto");
        const bool isNarrower = size && context_.at(*size) < context_.at(width) - 0.5;
        if (isNarrower)
            note("picture-width", part.node, "width",
                 wording::noted("%1: Tenter makes pictures as wide as their card."));
        if (!own.empty() && own != "auto") return;
        const std::string* attribute = context_.row.tree[part.node].find("width");
        const auto natural = attribute == nullptr ? std::nullopt : units::scanNumber(*attribute);
        const double widest =
            std::max(width.atZero + width.perPx * context_.from, width.atZero + width.perPx * context_.upTo);
        if (natural && natural->value < widest - 0.5)
            note("picture-width", part.node, "max-width",
                 wording::noted("%1: some pictures are narrower than their card on the page. In the project "
                                "they are as wide."));
    }

    [[nodiscard]] bool holdsOnly(NodeId wrapper, NodeId picture) const {
        for (const GivenPart& part : context_.row.cards.front().parts)
            if (part.node != picture && std::ranges::find(part.wrappers, wrapper) != part.wrappers.end())
                return false;
        for (const markup::GivenCard& card : context_.row.cards)
            for (const GivenPart& part : card.parts)
                if (part.node != picture && std::ranges::find(part.wrappers, wrapper) != part.wrappers.end())
                    return false;
        return true;
    }

    /// The radius of a picture, or of an element around it that cuts it off.
    [[nodiscard]] Length pictureRadius(const GivenPart& part) const {
        const Length own = radiusAt(context_, part.node, lengths_);
        if (!own.isZero()) return own;
        for (const NodeId wrapper : part.wrappers)
            if (holdsOnly(wrapper, part.node))
                if (const Length length = radiusAt(context_, wrapper, lengths_); !length.isZero())
                    return length;
        return {};
    }

    const PieceContext& context_;
    PieceReading& reading_;
    NodeId card_;
    PageBox box_;
    Line inner_;
    Line content_;
    LengthFinder lengths_;
};

}  // namespace

void readCards(const PieceContext& context, const PageBox& card, PieceReading& reading) {
    if (context.row.cards.empty()) return;
    CardReader(context, card, reading).read();
    noteOthers(context);
}

}  // namespace tenter::start
