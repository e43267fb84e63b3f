#include "panels/setting_help.h"

#include <algorithm>
#include <iterator>
#include <string_view>

namespace tenter::desktop::panels {

namespace {

struct Help {
    std::string_view key;
    const char* text;
};

constexpr Help settings[] = {
    {"row/columns", "The number of columns. More columns make every card narrower."},
    {"row/width", "The width of the row inside its container."},
    {"row/maxWidth", "The largest width of the row. On wider pages the row does not grow any more."},
    {"row/columnGap", "The space between columns. A wider gap makes every card narrower."},
    {"row/rowGap", "The space between lines of cards."},
    {"row/lastLine", "The position of the cards in a last line that is not full."},
    {"row/level", "Starts the same part of neighbouring cards at the same height."},
    {"row/padding", "The space inside the edges of the row. Padding at the sides makes every card narrower."},
    {"row/background", "The colour behind the cards."},
    {"card/direction", "Places the picture above the text or beside it. Beside it, the text is narrower."},
    {"card/pictureShare",
     "The width of a picture beside the text, as a share of the card. The text has the rest."},
    {"card/bleed", "The picture covers the padding of the card."},
    {"card/linked", "A click anywhere on the card follows the link of its button."},
    {"card/padding", "The space inside the edges of a card. Padding at the sides makes its text narrower."},
    {"card/background", "The colour of the card behind its text. Contrast is computed with it."},
    {"card/border/colour", "The colour of the line around a card."},
    {"card/border/width", "The width of the line around a card. It takes room from the text."},
    {"card/radius", "How far the corners of a card are rounded."},
    {"card/shadow/colour", "The colour of the shadow under a card, with its opacity."},
    {"card/shadow/x", "How far the shadow is moved to the right; negative: to the left."},
    {"card/shadow/y", "How far the shadow is moved down; negative: up."},
    {"card/shadow/blur", "How soft the edge of the shadow is."},
    {"card/shadow/spread", "How much larger than the card the shadow is; negative: smaller."},
    {"picture/ratio",
     "Width to height of the slots of all pictures. Pictures of other ratios are cropped around their focal "
     "point."},
    {"picture/radius", "How far the corners of pictures are rounded."},
    {"picture/margin", "The space around a picture. Space at the sides makes its slot narrower."},
    {"text/family", "The font families. The first one that is available is used."},
    {"text/weight", "The weight of the font: 400 is regular, 700 is bold. Bold text is wider."},
    {"text/slant", "Upright or italic letters."},
    {"text/case", "Shows the text in capitals without changing it. Capitals are wider."},
    {"text/size",
     "The font size: the same at every width, or a ramp, which changes in a straight line between two widths "
     "and is constant outside them."},
    {"text/follow", "Whether the font size follows the viewport width or the width of the card."},
    {"text/lineHeight", "The distance between lines, as a multiple of the font size or as a length."},
    {"text/letterSpacing", "Space added after every letter. It makes lines hold fewer characters."},
    {"text/wordSpacing", "Space added to every space between words."},
    {"text/align", "The side at which lines start."},
    {"text/wrap", "Balanced: lines of similar length, in as many lines as without."},
    {"text/overflowWrap", "What happens to a word that is wider than its line."},
    {"text/hyphens", "Whether words may break at the soft hyphens in the text."},
    {"text/keepLines",
     "Reserves the height of this number of lines, so that shorter texts take as much space."},
    {"text/place", "Where the box of the text is across the card. Full width: it has the width of the card."},
    {"text/colour", "The colour of the letters. Contrast is computed with it."},
    {"text/background", "The colour behind the text. A role with a background is drawn as a button."},
    {"text/border/colour", "The colour of the line around the text."},
    {"text/border/width", "The width of the line around the text."},
    {"text/radius", "How far the corners of the background are rounded."},
    {"text/hover/colour", "The colour of the letters under the pointer."},
    {"text/hover/background", "The colour of the background under the pointer."},
    {"text/hover/borderColour", "The colour of the border under the pointer."},
    {"text/focus/colour", "The colour of the ring around a link or button that has the keyboard focus."},
    {"text/focus/width", "The width of the focus ring."},
    {"text/focus/offset", "The space between the part and its focus ring; negative: inside the part."},
    {"text/margin", "The space around the text. Space at the sides makes its lines shorter."},
    {"text/padding", "The space inside the background and border of the text."},
};

constexpr Help properties[] = {
    {"Variant name",
     "The purpose of the variant, such as Home page. Tenter shows it instead of the class. A column count "
     "alone is not shown, because the bands have column counts, too."},
    {"Variant class", "The class of the row in this variant. The stylesheet applies to the element with it."},
    {"Container width", "The width of the container: the element of the page that contains the row."},
    {"Container maximum width", "The largest width of the container."},
    {"Container side padding", "The left and right padding of the container."},
    {"Container background", "The colour of the page behind the row. Contrast is computed with it."},
    {"Scrollbar width", "The part of the viewport width that the scrollbar covers."},
    {"Scrollbar always visible", "The scrollbar takes its room on short pages, too."},
    {"Theme root size", "The font size that the theme gives to the root element: 1\u00A0rem."},
    {"Reader text size",
     "The text size that the reader has set in the browser; 16\u00A0px unless changed. It is for the preview "
     "only."},
    {"Smallest viewport width", "The smallest viewport width that Tenter shows, checks and solves."},
    {"Largest viewport width", "The largest viewport width that Tenter shows, checks and solves."},
    {"Project name", "The name of the project, shown on the start page and in the spec sheet."},
    {"Class prefix", "The class names of the parts start with it, such as season in .season-card."},
    {"Language", "The language of the text. It decides about line breaks and quotation marks."},
    {"Writing direction", "The direction of the text. Right to left also mirrors the order of the cards."},
    {"Heading level", "The level of the headings of the cards in the outline of the page: h1 to h6."},
    {"Size unit", "The unit of font sizes in the stylesheet. Sizes in rem grow with the reader’s text size."},
    {"Wishes: widths", "The viewport widths that the wishes below are for."},
    {"Wishes: above", "The wishes hold above this viewport width."},
    {"Wishes: up to", "The wishes hold up to this viewport width."},
    {"Wish: lines at most", "The largest number of lines that a text of this role may have."},
    {"Wish: measure at least",
     "The smallest number of characters on a line, in texts of three lines or more."},
    {"Wish: measure at most", "The largest number of characters on a line, in texts of three lines or more."},
    {"Wish: size at least", "The smallest font size of this role."},
    {"Wish: size at most", "The largest font size of this role."},
    {"Wish: ratio to role", "The role whose size the ratio multiplies."},
    {"Wish: ratio", "The size of this role as a multiple of the size of the other role."},
    {"Wish: ratio is", "Whether the ratio is the smallest one or exactly the one."},
    {"Wish: sizes", "Locked: Solve sizes does not change the sizes of this role."},
    {"Wish: growth at most", "The largest growth per 100\u00A0px of viewport width."},
    {"Wish: narrower column", "No growth: the text does not grow where its column narrows."},
    {"Wish: double at zoom", "The browser zoom at which the text is twice as large."},
    {"Wish: breakpoints", "How the sizes on both sides of a breakpoint are related."},
    {"Wish: variants",
     "Same size: at each width every variant has the same size. All variants are solved together."},
    {"Solver: aim", "Which of all sizes that satisfy the wishes are chosen."},
    {"Solver: size grid", "The end sizes of ramps are multiples of this length."},
    {"Solver: reserve", "Space for longer text, such as a translation, without another line."},
    {"Solver: slack",
     "This share of each line stays free, so that another browser does not add a line. Slack is the smallest "
     "change of the text width that moves a line break."},
    {"Solver: slack < 500\u00A0px", "The same at viewport widths below 500\u00A0px."},
    // What is no single setting; the key is what Find setting shows.
    {"Breakpoints",
     "A breakpoint is a viewport width at which the columns change. Between two breakpoints is a band: a "
     "range of widths with its own columns, spacing and sizes."},
    {"Leeway of a breakpoint, gap, padding or width",
     "Leeway: the range in which a value can change while all wishes stay satisfied."},
    {"Padding", "The space inside the edges. Padding at the sides makes what is inside narrower."},
    {"Margin", "The space around a part. Margins do not collapse."},
    {"Class names of the elements",
     "The class that each element of your page needs, so that the stylesheet applies to it."},
    {"Add a variant",
     "A variant has the same cards with another column count, its own class and its own sizes."},
    {"Use card width for all sizes",
     "Makes the font sizes of all roles follow the width of the card, or the viewport width, and keeps the "
     "sizes that they have now."},
    {"Solve sizes",
     "Computes font sizes that satisfy every wish at every width, as near to the current sizes as possible. "
     "The sizes are shown as a preview first."},
    {"Text of a card",
     "The texts, pictures and buttons of the selected card. The layout follows each letter."},
    {"Link address", "The address that the button leads to."},
    {"Accessible name",
     "What screen readers read in place of the text of the button. It must contain that text."},
    {"Longer text, longest heading, no pictures, one more card",
     "Shows the row with other texts, pictures or cards. The project is not changed."},
    {"Picture file", "The file of the picture. It stays where it is; the project has its place."},
    {"Alternative text", "What screen readers read in place of the picture; empty for a decorative picture."},
    {"Focal point", "The point of the picture that stays visible when its slot has another ratio."},
    {"Files to upload",
     "For every picture the file that fills its slot at all viewport widths, in all variants, on screens "
     "with "
     "2 device pixels per CSS px."},
    {"Solver: ignored cards", "The numbers of the cards that the wishes do not apply to."},
};

template <std::size_t Count>
QString helpIn(const Help (&list)[Count], std::string_view key) {
    const auto found = std::ranges::find(list, key, &Help::key);
    return found == std::end(list) ? QString() : QString::fromUtf8(found->text);
}

}  // namespace

QString settingHelp(const std::string& path) {
    // The four sides of a margin or a padding share their help.
    for (const std::string_view sides : {"/margin/", "/padding/"})
        if (const auto at = path.find(sides); at != std::string::npos)
            return helpIn(settings, std::string_view(path).substr(0, at + sides.size() - 1));
    return helpIn(settings, path);
}

QString propertyHelp(const QString& name) {
    return helpIn(properties, name.toStdString());
}

QString helpOf(const QWidget* widget) {
    for (; widget != nullptr; widget = widget->parentWidget())
        if (!widget->whatsThis().isEmpty()) return widget->whatsThis();
    return {};
}

QString whatsThisText(const QString& title, const QString& help, const QString& accepts) {
    QString text = "<p><b>" + title.toHtmlEscaped() + "</b></p><p>" + help.toHtmlEscaped() + "</p>";
    if (!accepts.isEmpty()) text += "<p>" + accepts.toHtmlEscaped() + "</p>";
    return text;
}

}  // namespace tenter::desktop::panels
