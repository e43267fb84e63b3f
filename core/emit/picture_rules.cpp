// Pictures: as wide as the content of the card and cropped to a ratio, full-bleed, or beside the text.
#include <algorithm>
#include <array>
#include <string_view>

#include "emit/card_box.h"
#include "emit/rules.h"
#include "emit/values.h"

namespace tenter::emit {

namespace {

/// The declarations that depend on the position of a picture in its card. They are in one rule only, so that
/// a media query for one class does not override another class.
constexpr std::array<std::string_view, 7> standing{"position", "inset-block", "inset-inline-start", "width",
                                                   "height",   "margin",      "border-radius"};

bool isStanding(const Declaration& declaration) {
    return std::ranges::find(standing, declaration.property) != standing.end();
}

std::string negative(const LengthSum& sum) {
    return LengthSum().add(sum, -1).css();
}

class PictureRule {
public:
    PictureRule(const BandScope& scope, PicturePosition stand)
        : scope_(scope),
          card_(scope.settings.card),
          picture_(scope.settings.picture),
          stand_(stand),
          beside_(card_.direction == project::Direction::Beside),
          absolute_(beside_ && stand.leading),
          bleeds_(card_.bleed.value_or(false) && (!beside_ || stand.leading)) {}

    [[nodiscard]] Rule make() const {
        const bool levelled = scope_.settings.row.level == project::Level::Subgrid;
        Rule rule;
        rule.always("box-sizing", "border-box");
        rule.always("display", "block");
        rule.unless("static", "position", absolute_ ? "absolute" : "static");
        rule.unless("auto", "inset-block", absolute_ ? insetBlock() : "auto");
        rule.unless("auto", "inset-inline-start", absolute_ ? insetStart() : "auto");
        rule.always("align-self", levelled ? "start" : "stretch");
        rule.unless("auto", "justify-self", levelled ? "stretch" : "auto");
        rule.always("width", width());
        rule.always("max-width", "none");
        rule.always("height", absolute_ ? filledHeight() : "auto");
        rule.always("aspect-ratio", ratio(picture_.ratio.value_or(project::Ratio{})));
        rule.always("object-fit", "cover");
        rule.always("margin", margin());
        rule.always("padding", "0");
        rule.always("border", "0");
        rule.unless("0", "border-radius", radius());
        return rule;
    }

private:
    [[nodiscard]] std::string insetBlock() const {
        if (bleeds_) return "0";
        const CardSides padding = cardSides(card_);
        const std::string top = padding.top.css();
        const std::string bottom = padding.bottom.css();
        return top == bottom ? top : top + " " + bottom;
    }
    [[nodiscard]] std::string insetStart() const {
        if (bleeds_) return "0";
        const CardSides padding = cardSides(card_);
        return withinPaddingBox(card_, scope_.project.rightToLeft ? padding.right : padding.left).css();
    }
    /// The height of the card without its padding. A replaced element does not stretch between its insets.
    [[nodiscard]] std::string filledHeight() const {
        if (bleeds_) return "100%";
        const CardSides padding = cardSides(card_);
        const LengthSum both = LengthSum(padding.top).add(padding.bottom);
        return both.isZero() ? "100%" : "calc(100% - " + both.term() + ")";
    }
    [[nodiscard]] std::string width() const {
        if (absolute_) return withinPaddingBox(card_, sumOf(card_.pictureShare)).css();
        if (rowIsContainer(scope_)) return widthInRow();
        LengthSum whole(units::Length::percent(100));
        if (bleeds_) {
            const CardSides padding = cardSidesWithin(card_);
            return whole.add(padding.left).add(padding.right).css();
        }
        return whole.add(sumOf(picture_.margin.left), -1).add(sumOf(picture_.margin.right), -1).css();
    }
    /// The same without percentages. Percentages of margins refer to the content width of the card.
    [[nodiscard]] std::string widthInRow() const {
        LengthSum width = contentInRow(scope_, bleeds_);
        if (bleeds_) return width.css();
        LengthSum margins = LengthSum(sumOf(picture_.margin.left)).add(sumOf(picture_.margin.right));
        const double share = margins.of(units::Unit::Percent) / 100;
        margins.add(units::Length::percent(1), -100 * share);
        return width.add(LengthSum(width), -share).add(margins, -1).css();
    }
    [[nodiscard]] std::string margin() const {
        if (absolute_) return "0";
        const std::string above = down(picture_.margin.top);
        const std::string below = down(picture_.margin.bottom);
        if (!bleeds_)
            return sides(above, sumOf(picture_.margin.right).css(), below, sumOf(picture_.margin.left).css());
        const CardSides padding = cardSidesWithin(card_);
        return sides(stand_.first ? negative(padding.top) : above, negative(padding.right),
                     stand_.last ? negative(padding.bottom) : below, negative(padding.left));
    }
    /// A vertical margin without percentages in a subgrid, where Firefox 153 computes the height of the row
    /// as if they were 0.
    [[nodiscard]] std::string down(const std::optional<units::Length>& margin) const {
        LengthSum sum = sumOf(margin);
        const double share = sum.of(units::Unit::Percent) / 100;
        if (share == 0 || !rowIsContainer(scope_)) return sum.css();
        return sum.add(units::Length::percent(1), -100 * share).add(contentInRow(scope_, false), share).css();
    }
    /// The corner radii of the picture; those of the card where the picture touches its corners.
    [[nodiscard]] std::string radius() const {
        std::string own = sumOf(picture_.radius).css();
        if (!bleeds_) return own;
        const std::string inner = innerRadius(card_).css();
        const bool start = absolute_ ? !scope_.project.rightToLeft : true;
        const bool end = absolute_ ? scope_.project.rightToLeft : true;
        const bool top = absolute_ || stand_.first;
        const bool bottom = absolute_ || stand_.last;
        const auto corner = [&](bool touches) { return touches ? inner : own; };
        return sides(corner(top && start), corner(top && end), corner(bottom && end),
                     corner(bottom && start));
    }

    const BandScope& scope_;
    const project::CardSettings& card_;
    const project::PictureSettings& picture_;
    PicturePosition stand_;
    bool beside_;
    bool absolute_;
    bool bleeds_;
};

}  // namespace

void addPictureRules(const BandScope& scope, Rules& rules) {
    const std::vector<PicturePosition> stands = picturePositions(scope.project);
    if (stands.empty()) return;
    Rule all = PictureRule(scope, stands.front()).make();
    all.selector = partSelector(scope, "picture");
    if (scope.given != nullptr || !positionsNeedClasses(scope.project)) {
        rules.push_back(std::move(all));
        if (scope.given == nullptr) return;
        for (const OwnPicture& own : scope.given->ownPictures()) {
            Rule rule;
            rule.selector = own.selector;
            if (!own.ratio.empty()) rule.always("aspect-ratio", own.ratio);
            if (!own.objectPosition.empty()) rule.always("object-position", own.objectPosition);
            for (Declaration& declaration : rule.declarations)
                declaration.remark = "only for this picture";
            rules.push_back(std::move(rule));
        }
        return;
    }
    std::erase_if(all.declarations, isStanding);
    rules.push_back(std::move(all));
    for (const PicturePosition& stand : stands) {
        Rule own = PictureRule(scope, stand).make();
        own.selector = partSelector(scope, "picture-" + stand.word());
        std::erase_if(own.declarations, [](const Declaration& d) { return !isStanding(d); });
        rules.push_back(std::move(own));
    }
}

}  // namespace tenter::emit
