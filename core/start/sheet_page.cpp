#include "start/sheet_page.h"

#include <algorithm>
#include <array>
#include <functional>
#include <set>

#include "css/rules.h"
#include "start/sheet_elements.h"
#include "units/scan.h"
#include "wording/say.h"

namespace tenter::start {

namespace {

using Words = std::vector<std::string_view>;

const Words rowWords{"row",   "grid", "cards", "list",     "columns",  "cols",   "items",
                     "tiles", "deck", "boxes", "features", "services", "teasers"};
const Words otherWords{"nav",  "menu",  "navbar", "header", "footer",     "form", "breadcrumb", "breadcrumbs",
                       "tabs", "modal", "social", "hero",   "pagination", "logo", "table",      "toolbar"};
const Words cardWords{"card",  "tile",   "item",    "box",   "col",     "column", "cell",
                      "panel", "teaser", "feature", "entry", "service", "block",  "article"};
const Words pictureWords{"img",   "image",     "picture", "pic",   "photo", "media",
                         "thumb", "thumbnail", "figure",  "cover", "visual"};
const Words headingWords{"heading", "title", "headline", "name"};
const Words bodyWords{"text",    "body", "desc", "description", "excerpt", "copy",
                      "summary", "lead", "para", "paragraph",   "content", "intro"};
const Words buttonWords{"btn", "button", "cta", "link", "more", "action", "go"};
const Words wrapperWords{"inner", "content", "body", "wrap", "wrapper", "caption",
                         "info",  "details", "main", "text", "holder",  "copy"};
const Words containerWords{"container", "wrap", "wrapper", "shell", "inner", "holder"};
/// Words that say which of several elements this is, not what it is.
const Words modifierWords{"primary", "secondary", "outline", "large", "small", "lg",   "md",     "sm",
                          "xs",      "xl",        "dark",    "light", "alt",   "wide", "active", "default"};
const std::array<const char*, 4> partRoles{"picture", "heading", "body", "button"};

bool isAmong(const Words& words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

double leadingNumber(const std::string& text) {
    const auto number = units::scanNumber(text);
    return number ? number->value : 0;
}

/// An element with what it can be.
struct Candidate {
    const SheetElement* element = nullptr;
    double score = 0;
};

class Recogniser {
public:
    Recogniser(std::vector<SheetElement> elements, bool hasBodyMargin)
        : elements_(std::move(elements)), hasBodyMargin_(hasBodyMargin) {
        for (const SheetElement& element : elements_) {
            const bool isPart = !roleOf(element).empty();
            const bool isFloat =
                (element.declares("float") || element.has("display", "inline-block")) && isColumn(element);
            for (const ElementKey& key : element.around) {
                if (isPart) aroundParts_.insert(key);
                if (isFloat) aroundFloats_.insert(key);
            }
        }
    }

    std::optional<SheetPage> page(std::string& missing) {
        if (!findRow()) {
            missing = wording::say(
                "No rule of the stylesheet lays out a row of columns: none has a grid with columns, a flex "
                "container "
                "or floats with a width for elements with a class of their own.");
            return std::nullopt;
        }
        findParts();
        if (parts_.empty()) {
            missing = wording::say(
                "The stylesheet lays out a row (%1), but no rule is for a heading, a text, a button or a "
                "picture in "
                "it.",
                {row_->key.selector()});
            return std::nullopt;
        }
        return built();
    }

private:
    /// The last word of the class names that says what an element is.
    [[nodiscard]] static std::string kindOf(const SheetElement& element) {
        for (std::size_t i = element.words.size(); i-- > 0;)
            if (!isAmong(modifierWords, element.words[i])) return element.words[i];
        return {};
    }
    [[nodiscard]] static bool hasWord(const SheetElement& element, const Words& words) {
        return std::ranges::any_of(element.words,
                                   [&](const std::string& word) { return isAmong(words, word); });
    }
    [[nodiscard]] static bool isVariation(const SheetElement& element) {
        return std::ranges::any_of(element.key.classes, [](const std::string& name) {
            return name.find("--") != std::string::npos;
        });
    }

    [[nodiscard]] static bool isHeadingTag(const std::string& tag) {
        return tag.size() == 2 && tag[0] == 'h' && tag[1] >= '1' && tag[1] <= '6';
    }
    /// The role of a part that an element can have; empty for none.
    [[nodiscard]] static std::string roleOf(const SheetElement& element) {
        const std::string& tag = element.key.tag;
        const std::string kind = kindOf(element);
        if (tag == "img" || isAmong(pictureWords, kind)) return "picture";
        if (isHeadingTag(tag) || isAmong(headingWords, kind)) return "heading";
        if (tag == "button" || isAmong(buttonWords, kind)) return "button";
        if (tag == "p" || (isAmong(bodyWords, kind) && !isBox(element))) return "body";
        return tag == "a" && element.key.classes.empty() ? "button" : "";
    }
    /// True for an element that can be around others: with padding, or a flex or grid container.
    [[nodiscard]] static bool isBox(const SheetElement& element) {
        const bool isFluid = element.has("display", "flex") || element.has("display", "grid");
        return isFluid || std::ranges::any_of(element.values, [](const auto& one) {
                   return one.first.starts_with("padding");
               });
    }

    /// How many columns a grid can have by its templates: 2 for several, 1 for none.
    [[nodiscard]] static bool hasColumns(const SheetElement& element) {
        for (const char* property : {"grid-template-columns", "grid-template", "grid"}) {
            const auto found = element.values.find(property);
            if (found == element.values.end()) continue;
            for (const std::string& value : found->second) {
                if (value.find("repeat(1,") != std::string::npos && value.find(' ') == std::string::npos)
                    continue;
                if (value.find("repeat(") != std::string::npos || value.find("var(") != std::string::npos ||
                    value.find("fr ") != std::string::npos)
                    return true;
            }
        }
        return false;
    }
    [[nodiscard]] static bool isFlexLine(const SheetElement& element) {
        // At some width: a column can become a line, and a line a column, where a condition holds.
        const bool isColumn =
            element.alwaysHas("flex-direction", "column") || element.alwaysHas("flex-flow", "column");
        const bool isLine = element.has("flex-direction", "row") || element.has("flex-flow", "row");
        return element.has("display", "flex") && (!isColumn || isLine);
    }
    [[nodiscard]] static bool isColumn(const SheetElement& element) {
        const auto share = [&](const char* property) {
            const auto found = element.values.find(property);
            return found != element.values.end() &&
                   std::ranges::any_of(found->second, [](const std::string& value) {
                       if (value.starts_with("calc(")) return value.find('%') != std::string::npos;
                       const double percent = leadingNumber(value);
                       return value.ends_with("%") && percent > 5 && percent < 60;
                   });
        };
        const bool grows = element.declares("flex") && !element.has("flex", "none");
        return share("width") || share("flex-basis") || share("max-width") || grows ||
               element.declares("flex-grow") || element.declares("flex-basis");
    }
    [[nodiscard]] static bool hasSurface(const SheetElement& element) {
        return std::ranges::any_of(element.values, [](const auto& one) {
            return one.first.starts_with("background") || one.first.starts_with("border") ||
                   one.first == "box-shadow";
        });
    }

    /// True if class names say that one is part of the other: `.card__title` and `.card-title` of `.card`.
    [[nodiscard]] static bool isNamedAfter(const SheetElement& inner, const SheetElement& outer) {
        for (const std::string& name : inner.key.classes)
            for (const std::string& base : outer.key.classes)
                if (name.size() > base.size() && name.starts_with(base) &&
                    (name[base.size()] == '-' || name[base.size()] == '_'))
                    return true;
        return false;
    }
    /// True if their class names start with the same word.
    [[nodiscard]] static bool isOfOneBlock(const SheetElement& one, const SheetElement& other) {
        return !one.words.empty() && !other.words.empty() && one.words.front() == other.words.front();
    }

    [[nodiscard]] double rowScore(const SheetElement& element) const {
        if (element.key.classes.empty() && element.around.empty()) return 0;
        const std::string kind = kindOf(element);
        double score = 0;
        if (hasColumns(element))
            score = 6;
        else if (isFlexLine(element))
            score = element.has("flex-wrap", "wrap") || element.has("flex-flow", "wrap") ? 4 : 2;
        if (score == 0 && aroundFloats_.contains(element.key)) score = 4;
        if (score == 0) return 0;
        if (isAmong(rowWords, kind)) score += 2;
        if (hasWord(element, otherWords) || isVariation(element)) score -= 4;
        if (!roleOf(element).empty() && !isAmong(rowWords, kind)) score -= 3;
        return std::max(0.0, score);
    }

    [[nodiscard]] double cardScore(const SheetElement& element, const SheetElement& row) const {
        const std::string kind = kindOf(element);
        const bool isPart = !roleOf(element).empty() && !isAmong(cardWords, kind);
        if (element.key == row.key || isPart || row.isWithin(element.key)) return 0;
        double score = 0;
        const bool isInside = element.isWithin(row.key);
        if (isInside) score += element.around.back() == row.key ? 4 : 2;
        if (isNamedAfter(element, row) || (!isInside && isOfOneBlock(element, row))) score += 3;
        const std::string& tag = element.key.tag;
        if (isAmong(cardWords, kind) || tag == "article" || tag == "li") score += 3;
        if (isColumn(element)) score += 2;
        if (score == 0) return 0;
        if (hasSurface(element)) score += 2;
        if (isBox(element)) score += 1;
        if (hasWord(element, otherWords) || isVariation(element)) score -= 3;
        if (aroundParts_.contains(element.key)) score += 2;
        return score;
    }

    bool findRow() {
        std::vector<Candidate> rows;
        for (const SheetElement& element : elements_)
            if (const double score = rowScore(element); score > 0) rows.push_back({&element, score});
        std::ranges::stable_sort(rows, std::greater{}, &Candidate::score);
        // Each is compared with all elements.
        constexpr std::size_t mostRows = 40;
        rows.resize(std::min(rows.size(), mostRows));
        double best = 0;
        for (const Candidate& candidate : rows) {
            const SheetElement& row = *candidate.element;
            Candidate card;
            for (const SheetElement& element : elements_)
                if (const double score = cardScore(element, row); score > card.score)
                    card = {&element, score};
            const double score = candidate.score + card.score;
            if (score <= best || (card.element == nullptr && !aroundParts_.contains(row.key))) continue;
            best = score;
            row_ = &row;
            card_ = card.element;
        }
        if (row_ == nullptr) return false;
        findSurface();
        return true;
    }

    /// A card inside a column of the row.
    void findSurface() {
        if (card_ == nullptr || hasSurface(*card_)) return;
        double best = 0;
        for (const SheetElement& element : elements_) {
            const std::string kind = kindOf(element);
            const bool isOther = element.key == card_->key || element.key == row_->key ||
                                 isVariation(element) || card_->isWithin(element.key);
            if (isOther || !hasSurface(element) || !isBox(element) || isColumn(element)) continue;
            double score = element.isWithin(card_->key) ? 3 : 0;
            if (isAmong(cardWords, kind)) score += 3;
            if (!roleOf(element).empty()) score = 0;
            if (score > best) {
                best = score;
                surface_ = &element;
            }
        }
    }

    [[nodiscard]] std::vector<const SheetElement*> outer() const {
        std::vector<const SheetElement*> all{row_};
        for (const SheetElement* element : {card_, surface_})
            if (element != nullptr) all.push_back(element);
        return all;
    }

    [[nodiscard]] bool isOuter(const ElementKey& key) const {
        return std::ranges::any_of(outer(), [&](const SheetElement* element) { return element->key == key; });
    }

    /// How likely it is that an element is in the cards.
    [[nodiscard]] double nearness(const SheetElement& element) const {
        double score = 0;
        for (const SheetElement* around : outer()) {
            if (element.isWithin(around->key)) score = std::max(score, 5.0);
            if (isNamedAfter(element, *around)) score = std::max(score, 4.0);
            if (isOfOneBlock(element, *around)) score = std::max(score, 3.0);
        }
        if (score > 0) return score;
        if (!element.around.empty()) return 0;
        return element.key.classes.empty() || element.words.size() == 1 ? 1 : 0;
    }

    void findParts() {
        for (const char* role : partRoles) {
            Candidate best;
            for (const SheetElement& element : elements_) {
                if (roleOf(element) != role || isOuter(element.key) || isVariation(element)) continue;
                double score = nearness(element);
                if (score <= 0) continue;
                if (hasWord(element, otherWords)) score -= 3;
                // Of several the one with its own class, and with more declarations.
                score += (element.key.classes.empty() ? 0 : 0.5) +
                         0.01 * static_cast<double>(std::min<std::size_t>(element.values.size(), 20));
                if (std::string_view(role) == "picture" && element.key.tag == "img") score += 0.6;
                if (score > best.score) best = {&element, score};
            }
            if (best.element != nullptr) parts_.emplace_back(role, best.element);
        }
        const bool hasNear =
            std::ranges::any_of(parts_, [&](const auto& part) { return nearness(*part.second) > 1; });
        if (!hasNear && card_ == nullptr) parts_.clear();
    }

    /// The element around the texts of a card, by its name.
    [[nodiscard]] const SheetElement* textBox() const {
        Candidate best;
        for (const SheetElement& element : elements_) {
            const bool isPart = std::ranges::any_of(
                parts_, [&](const auto& part) { return part.second->key == element.key; });
            if (isPart || isOuter(element.key) || !isBox(element) || isVariation(element)) continue;
            if (!isAmong(wrapperWords, kindOf(element))) continue;
            if (const double score = nearness(element); score > 1 && score > best.score)
                best = {&element, score};
        }
        return best.element;
    }
    /// The element around the picture: with a name of pictures, but not the picture.
    [[nodiscard]] const SheetElement* pictureBox(const SheetElement& picture) const {
        Candidate best;
        for (const SheetElement& element : elements_) {
            const bool isOther = element.key == picture.key || element.key.tag == "img" ||
                                 isVariation(element) || isOuter(element.key) ||
                                 element.isWithin(picture.key);
            if (isOther || !isAmong(pictureWords, kindOf(element))) continue;
            if (const double score = nearness(element); score > 1 && score > best.score)
                best = {&element, score};
        }
        return best.element;
    }

    /// The elements between the card and a part.
    [[nodiscard]] std::vector<ElementKey> wrappersOf(const std::string& role,
                                                     const SheetElement& part) const {
        std::vector<ElementKey> inside;
        for (const ElementKey& key : part.around) {
            if (isOuter(key))
                inside.clear();
            else if (std::ranges::find(aroundRow_, key) == aroundRow_.end())
                inside.push_back(key);
        }
        const SheetElement* box = role == "picture" ? pictureBox(part) : textBox();
        if (box != nullptr && std::ranges::find(inside, box->key) == inside.end())
            inside.insert(inside.begin(), box->key);
        return inside;
    }

    /// An element with a width that centres the page, outside the elements that selectors name around the
    /// row.
    [[nodiscard]] const SheetElement* container() const {
        for (const SheetElement& element : elements_) {
            const bool isWide = element.declares("max-width") || element.declares("width") ||
                                element.declares("max-inline-size") || element.declares("inline-size");
            if (!isWide || element.key.classes.size() != 1 || !isAmong(containerWords, kindOf(element)))
                continue;
            const bool isKnown = std::ranges::find(aroundRow_, element.key) != aroundRow_.end();
            const bool isOfCard =
                card_ != nullptr && (isNamedAfter(element, *card_) || element.isWithin(card_->key));
            if (isKnown || isOfCard || element.isWithin(row_->key) || isOuter(element.key)) continue;
            return &element;
        }
        return nullptr;
    }

    static std::string opening(const ElementKey& key, const std::string& usual,
                               const std::string& role = {}) {
        std::string text = "<" + (key.tag.empty() ? usual : key.tag);
        if (!key.classes.empty()) {
            text += " class=\"";
            for (const std::string& name : key.classes)
                text.append(&name == &key.classes.front() ? "" : " ").append(name);
            text += "\"";
        }
        if (!role.empty()) text += " data-part=\"" + role + "\"";
        return text + ">";
    }
    static std::string closing(const ElementKey& key, const std::string& usual) {
        return "</" + (key.tag.empty() ? usual : key.tag) + ">";
    }

    [[nodiscard]] std::string partMarkup(const std::string& role, const ElementKey& key) const {
        if (role == "picture") {
            ElementKey image = key;
            image.tag = "img";
            std::string text = opening(image, "img", role);
            text.insert(text.size() - 1, " src=\"picture\" alt=\"\"");
            return text;
        }
        const std::string usual = role == "heading" ? "h3" : role == "body" ? "p" : "a";
        ElementKey own = key;
        if (role == "button" && own.tag == "a") own.tag.clear();
        std::string text = opening(own, usual, role);
        if (role == "button" && own.tag.empty()) text.insert(2, " href=\"#\"");
        return text + "Text" + closing(own, usual);
    }

    [[nodiscard]] std::string cardMarkup() const {
        std::string text;
        std::vector<ElementKey> open;
        const auto closeTo = [&](std::size_t count) {
            while (open.size() > count) {
                text += closing(open.back(), "div");
                open.pop_back();
            }
        };
        for (const char* role : partRoles) {
            const auto part =
                std::ranges::find(parts_, role, &std::pair<std::string, const SheetElement*>::first);
            const bool isThere = part != parts_.end();
            // A card without a rule for its heading or text has them, too.
            if (!isThere && std::string_view(role) != "heading" && std::string_view(role) != "body") continue;
            static const SheetElement none;
            const SheetElement& element = isThere ? *part->second : none;
            const std::vector<ElementKey> wrappers = wrappersOf(role, element);
            std::size_t shared = 0;
            while (shared < std::min(open.size(), wrappers.size()) && open[shared] == wrappers[shared])
                ++shared;
            closeTo(shared);
            for (std::size_t i = shared; i < wrappers.size(); ++i) {
                text += opening(wrappers[i], "div");
                open.push_back(wrappers[i]);
            }
            text += partMarkup(role, element.key);
        }
        closeTo(0);
        return text;
    }

    std::optional<SheetPage> built() {
        aroundRow_ = row_->around;
        SheetPage page;
        if (const SheetElement* around = container(); around != nullptr) {
            aroundRow_.insert(aroundRow_.begin(), around->key);
            page.found.emplace_back("container", around->key.selector());
        }
        ElementKey column = card_ == nullptr ? ElementKey{} : card_->key;
        const bool isList = row_->key.tag == "ul" || row_->key.tag == "ol" || column.tag == "li";
        const std::string usualCard = isList ? "li" : "div";
        // The columns between the row and the card that selectors name.
        std::vector<ElementKey> between;
        if (card_ != nullptr)
            for (const ElementKey& key : card_->around) {
                if (key == row_->key || std::ranges::find(aroundRow_, key) != aroundRow_.end())
                    between.clear();
                else
                    between.push_back(key);
            }
        std::string card;
        for (const ElementKey& key : between)
            card += opening(key, "div");
        card += opening(column, usualCard, surface_ == nullptr ? "card" : "");
        if (surface_ != nullptr) card += opening(surface_->key, "div", "card");
        card += cardMarkup();
        if (surface_ != nullptr) card += closing(surface_->key, "div");
        card += closing(column, usualCard);
        for (std::size_t i = between.size(); i-- > 0;)
            card += closing(between[i], "div");
        // Of columns that share a line by what they leave free, only markup says how many there are. 12 cards
        // fill whole lines of 1, 2, 3, 4, 6 or 12 columns.
        const bool wraps = hasColumns(*row_) || row_->has("flex-wrap", "wrap") ||
                           row_->has("flex-flow", "wrap") || !isFlexLine(*row_);
        page.countIsKnown = wraps;
        const int cards = wraps ? 12 : 3;
        std::string& html = page.html;
        // Sites reset the margin of the body, often in another stylesheet.
        const char* const body = hasBodyMargin_ ? "<body>" : "<body style=\"margin: 0\">";
        html = std::string("<!doctype html><html><head></head>") + body;
        for (const ElementKey& key : aroundRow_)
            html += opening(key, "div");
        const std::string usualRow = isList ? "ul" : "div";
        html += opening(row_->key, usualRow, "row");
        for (int i = 0; i < cards; ++i)
            html += card;
        html += closing(row_->key, usualRow);
        for (std::size_t i = aroundRow_.size(); i-- > 0;)
            html += closing(aroundRow_[i], "div");
        html += "</body></html>";
        if (!row_->key.classes.empty()) page.rowClass = row_->key.classes.front();
        page.found.emplace_back("row", row_->key.selector());
        page.choices.push_back({"row", "[data-part=row]"});
        page.choices.push_back({"card", "[data-part=card]"});
        const SheetElement* shown = surface_ != nullptr ? surface_ : card_;
        if (shown != nullptr) page.found.emplace_back("card", shown->key.selector());
        for (const char* role : partRoles) {
            const auto part =
                std::ranges::find(parts_, role, &std::pair<std::string, const SheetElement*>::first);
            if (part != parts_.end()) page.found.emplace_back(role, part->second->key.selector());
            const bool isAlways = std::string_view(role) == "heading" || std::string_view(role) == "body";
            if (part != parts_.end() || isAlways)
                page.choices.push_back({role, "[data-part=" + std::string(role) + "]"});
        }
        return page;
    }

    std::vector<SheetElement> elements_;
    bool hasBodyMargin_;
    std::set<ElementKey> aroundParts_;   ///< elements that selectors name around a part
    std::set<ElementKey> aroundFloats_;  ///< the same around columns that float or are boxes in lines
    const SheetElement* row_ = nullptr;
    const SheetElement* card_ = nullptr;     ///< the child of the row; null if no rule is for it
    const SheetElement* surface_ = nullptr;  ///< the card in a column, if that is another element
    std::vector<std::pair<std::string, const SheetElement*>> parts_;
    std::vector<ElementKey> aroundRow_;
};

/// True if a rule sets the margin of the body, or of every element.
bool setsBodyMargin(const css::Sheet& sheet) {
    return std::ranges::any_of(sheet.rules, [](const css::StyleRule& rule) {
        const bool isForBody = std::ranges::any_of(rule.selectors, [](const css::Complex& selector) {
            const auto& simples = selector.compounds.back().simples;
            return selector.pseudoElements().empty() &&
                   std::ranges::any_of(simples, [](const css::Simple& simple) {
                       return simple.kind == css::SimpleKind::Universal ||
                              (simple.kind == css::SimpleKind::Type && simple.name == "body");
                   });
        });
        return isForBody && std::ranges::any_of(rule.declarations, [](const css::Declaration& declaration) {
                   return declaration.property.starts_with("margin");
               });
    });
}

}  // namespace

std::optional<SheetPage> pageForSheet(std::string_view css, std::string& missing) {
    const css::Sheet sheet = css::readSheet(css);
    return Recogniser(elementsOf(sheet), setsBodyMargin(sheet)).page(missing);
}

}  // namespace tenter::start
