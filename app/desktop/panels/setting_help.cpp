#include "panels/setting_help.h"

#include <algorithm>
#include <iterator>
#include <string_view>

namespace tenter::desktop::panels {

namespace {

struct Help {
    const char* key;
    const char* text;
};

constexpr Help settings[] = {
    {"row/columns",
     QT_TRANSLATE_NOOP("QObject", "The number of columns. More columns make every card narrower.")},
    {"row/width", QT_TRANSLATE_NOOP("QObject", "The width of the row inside its container.")},
    {"row/maxWidth",
     QT_TRANSLATE_NOOP("QObject",
                       "The largest width of the row. On wider pages the row does not grow any more.")},
    {"row/columnGap",
     QT_TRANSLATE_NOOP("QObject", "The space between columns. A wider gap makes every card narrower.")},
    {"row/rowGap", QT_TRANSLATE_NOOP("QObject", "The space between lines of cards.")},
    {"row/lastLine",
     QT_TRANSLATE_NOOP("QObject", "The position of the cards in a last line that is not full.")},
    {"row/level",
     QT_TRANSLATE_NOOP("QObject", "Starts the same part of neighbouring cards at the same height.")},
    {"row/padding",
     QT_TRANSLATE_NOOP(
         "QObject",
         "The space inside the edges of the row. Padding at the sides makes every card narrower.")},
    {"row/background", QT_TRANSLATE_NOOP("QObject", "The colour behind the cards.")},
    {"card/direction",
     QT_TRANSLATE_NOOP("QObject",
                       "Places the picture above the text or beside it. Beside it, the text is narrower.")},
    {"card/pictureShare",
     QT_TRANSLATE_NOOP(
         "QObject",
         "The width of a picture beside the text, as a share of the card. The text has the rest.")},
    {"card/bleed", QT_TRANSLATE_NOOP("QObject", "The picture covers the padding of the card.")},
    {"card/linked",
     QT_TRANSLATE_NOOP("QObject", "A click anywhere on the card follows the link of its button.")},
    {"card/padding",
     QT_TRANSLATE_NOOP(
         "QObject", "The space inside the edges of a card. Padding at the sides makes its text narrower.")},
    {"card/background",
     QT_TRANSLATE_NOOP("QObject", "The colour of the card behind its text. Contrast is computed with it.")},
    {"card/border/colour", QT_TRANSLATE_NOOP("QObject", "The colour of the line around a card.")},
    {"card/border/width",
     QT_TRANSLATE_NOOP("QObject", "The width of the line around a card. It takes room from the text.")},
    {"card/radius", QT_TRANSLATE_NOOP("QObject", "How far the corners of a card are rounded.")},
    {"card/shadow/colour",
     QT_TRANSLATE_NOOP("QObject", "The colour of the shadow under a card, with its opacity.")},
    {"card/shadow/x",
     QT_TRANSLATE_NOOP("QObject", "How far the shadow is moved to the right; negative: to the left.")},
    {"card/shadow/y", QT_TRANSLATE_NOOP("QObject", "How far the shadow is moved down; negative: up.")},
    {"card/shadow/blur", QT_TRANSLATE_NOOP("QObject", "How soft the edge of the shadow is.")},
    {"card/shadow/spread",
     QT_TRANSLATE_NOOP("QObject", "How much larger than the card the shadow is; negative: smaller.")},
    {"picture/ratio", QT_TRANSLATE_NOOP("QObject",
                                        "Width to height of the slots of all pictures. Pictures of other "
                                        "ratios are cropped around their focal "
                                        "point.")},
    {"picture/radius", QT_TRANSLATE_NOOP("QObject", "How far the corners of pictures are rounded.")},
    {"picture/margin",
     QT_TRANSLATE_NOOP("QObject", "The space around a picture. Space at the sides makes its slot narrower.")},
    {"text/family",
     QT_TRANSLATE_NOOP("QObject", "The font families. The first one that is available is used.")},
    {"text/weight",
     QT_TRANSLATE_NOOP("QObject",
                       "The weight of the font: 400 is regular, 700 is bold. Bold text is wider.")},
    {"text/slant", QT_TRANSLATE_NOOP("QObject", "Upright or italic letters.")},
    {"text/case",
     QT_TRANSLATE_NOOP("QObject", "Shows the text in capitals without changing it. Capitals are wider.")},
    {"text/size", QT_TRANSLATE_NOOP("QObject",
                                    "The font size: the same at every width, or a ramp, which changes in a "
                                    "straight line between two widths "
                                    "and is constant outside them.")},
    {"text/follow",
     QT_TRANSLATE_NOOP("QObject",
                       "Whether the font size follows the viewport width or the width of the card.")},
    {"text/lineHeight",
     QT_TRANSLATE_NOOP("QObject",
                       "The distance between lines, as a multiple of the font size or as a length.")},
    {"text/letterSpacing",
     QT_TRANSLATE_NOOP("QObject", "Space added after every letter. It makes lines hold fewer characters.")},
    {"text/wordSpacing", QT_TRANSLATE_NOOP("QObject", "Space added to every space between words.")},
    {"text/align", QT_TRANSLATE_NOOP("QObject", "The side at which lines start.")},
    {"text/wrap",
     QT_TRANSLATE_NOOP("QObject", "Balanced: lines of similar length, in as many lines as without.")},
    {"text/overflowWrap",
     QT_TRANSLATE_NOOP("QObject", "What happens to a word that is wider than its line.")},
    {"text/hyphens",
     QT_TRANSLATE_NOOP("QObject", "Whether words may break at the soft hyphens in the text.")},
    {"text/keepLines",
     QT_TRANSLATE_NOOP(
         "QObject",
         "Reserves the height of this number of lines, so that shorter texts take as much space.")},
    {"text/place",
     QT_TRANSLATE_NOOP(
         "QObject",
         "Where the box of the text is across the card. Full width: it has the width of the card.")},
    {"text/colour", QT_TRANSLATE_NOOP("QObject", "The colour of the letters. Contrast is computed with it.")},
    {"text/background",
     QT_TRANSLATE_NOOP("QObject",
                       "The colour behind the text. A role with a background is drawn as a button.")},
    {"text/border/colour", QT_TRANSLATE_NOOP("QObject", "The colour of the line around the text.")},
    {"text/border/width", QT_TRANSLATE_NOOP("QObject", "The width of the line around the text.")},
    {"text/radius", QT_TRANSLATE_NOOP("QObject", "How far the corners of the background are rounded.")},
    {"text/hover/colour", QT_TRANSLATE_NOOP("QObject", "The colour of the letters under the pointer.")},
    {"text/hover/background",
     QT_TRANSLATE_NOOP("QObject", "The colour of the background under the pointer.")},
    {"text/hover/borderColour", QT_TRANSLATE_NOOP("QObject", "The colour of the border under the pointer.")},
    {"text/focus/colour",
     QT_TRANSLATE_NOOP("QObject",
                       "The colour of the ring around a link or button that has the keyboard focus.")},
    {"text/focus/width", QT_TRANSLATE_NOOP("QObject", "The width of the focus ring.")},
    {"text/focus/offset",
     QT_TRANSLATE_NOOP("QObject",
                       "The space between the part and its focus ring; negative: inside the part.")},
    {"text/margin",
     QT_TRANSLATE_NOOP("QObject", "The space around the text. Space at the sides makes its lines shorter.")},
    {"text/padding", QT_TRANSLATE_NOOP("QObject", "The space inside the background and border of the text.")},
};

constexpr Help properties[] = {
    {QT_TRANSLATE_NOOP("QObject", "Variant name"),
     QT_TRANSLATE_NOOP("QObject",
                       "The purpose of the variant, such as Home page. Tenter shows it instead of the class. "
                       "A column count "
                       "alone is not shown, because the bands have column counts, too.")},
    {QT_TRANSLATE_NOOP("QObject", "Variant class"),
     QT_TRANSLATE_NOOP(
         "QObject", "The class of the row in this variant. The stylesheet applies to the element with it.")},
    {QT_TRANSLATE_NOOP("QObject", "Container width"),
     QT_TRANSLATE_NOOP("QObject",
                       "The width of the container: the element of the page that contains the row.")},
    {QT_TRANSLATE_NOOP("QObject", "Container maximum width"),
     QT_TRANSLATE_NOOP("QObject", "The largest width of the container.")},
    {QT_TRANSLATE_NOOP("QObject", "Container side padding"),
     QT_TRANSLATE_NOOP("QObject", "The left and right padding of the container.")},
    {QT_TRANSLATE_NOOP("QObject", "Container background"),
     QT_TRANSLATE_NOOP("QObject", "The colour of the page behind the row. Contrast is computed with it.")},
    {QT_TRANSLATE_NOOP("QObject", "Scrollbar width"),
     QT_TRANSLATE_NOOP("QObject", "The part of the viewport width that the scrollbar covers.")},
    {QT_TRANSLATE_NOOP("QObject", "Scrollbar always visible"),
     QT_TRANSLATE_NOOP("QObject", "The scrollbar takes its room on short pages, too.")},
    {QT_TRANSLATE_NOOP("QObject", "Theme root size"),
     QT_TRANSLATE_NOOP("QObject", "The font size that the theme gives to the root element: 1\u00A0rem.")},
    {QT_TRANSLATE_NOOP("QObject", "Reader text size"),
     QT_TRANSLATE_NOOP("QObject",
                       "The text size that the reader has set in the browser; 16\u00A0px unless changed. It "
                       "is for the preview "
                       "only.")},
    {QT_TRANSLATE_NOOP("QObject", "Smallest viewport width"),
     QT_TRANSLATE_NOOP("QObject", "The smallest viewport width that Tenter shows, checks and solves.")},
    {QT_TRANSLATE_NOOP("QObject", "Largest viewport width"),
     QT_TRANSLATE_NOOP("QObject", "The largest viewport width that Tenter shows, checks and solves.")},
    {QT_TRANSLATE_NOOP("QObject", "Project name"),
     QT_TRANSLATE_NOOP("QObject", "The name of the project, shown on the start page and in the spec sheet.")},
    {QT_TRANSLATE_NOOP("QObject", "Class prefix"),
     QT_TRANSLATE_NOOP("QObject",
                       "The class names of the parts start with it, such as season in .season-card.")},
    {QT_TRANSLATE_NOOP("QObject", "Language"),
     QT_TRANSLATE_NOOP("QObject",
                       "The language of the text. It decides about line breaks and quotation marks.")},
    {QT_TRANSLATE_NOOP("QObject", "Writing direction"),
     QT_TRANSLATE_NOOP("QObject",
                       "The direction of the text. Right to left also mirrors the order of the cards.")},
    {QT_TRANSLATE_NOOP("QObject", "Heading level"),
     QT_TRANSLATE_NOOP("QObject",
                       "The level of the headings of the cards in the outline of the page: h1 to h6.")},
    {QT_TRANSLATE_NOOP("QObject", "Size unit"),
     QT_TRANSLATE_NOOP(
         "QObject",
         "The unit of font sizes in the stylesheet. Sizes in rem grow with the reader’s text size.")},
    {QT_TRANSLATE_NOOP("QObject", "Wishes: widths"),
     QT_TRANSLATE_NOOP("QObject", "The viewport widths that the wishes below are for.")},
    {QT_TRANSLATE_NOOP("QObject", "Wishes: above"),
     QT_TRANSLATE_NOOP("QObject", "The wishes hold above this viewport width.")},
    {QT_TRANSLATE_NOOP("QObject", "Wishes: up to"),
     QT_TRANSLATE_NOOP("QObject", "The wishes hold up to this viewport width.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: lines at most"),
     QT_TRANSLATE_NOOP("QObject", "The largest number of lines that a text of this role may have.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: measure at least"),
     QT_TRANSLATE_NOOP("QObject",
                       "The smallest number of characters on a line, in texts of three lines or more.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: measure at most"),
     QT_TRANSLATE_NOOP("QObject",
                       "The largest number of characters on a line, in texts of three lines or more.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: size at least"),
     QT_TRANSLATE_NOOP("QObject", "The smallest font size of this role.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: size at most"),
     QT_TRANSLATE_NOOP("QObject", "The largest font size of this role.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: ratio to role"),
     QT_TRANSLATE_NOOP("QObject", "The role whose size the ratio multiplies.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: ratio"),
     QT_TRANSLATE_NOOP("QObject", "The size of this role as a multiple of the size of the other role.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: ratio is"),
     QT_TRANSLATE_NOOP("QObject", "Whether the ratio is the smallest one or exactly the one.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: sizes"),
     QT_TRANSLATE_NOOP("QObject", "Locked: Solve sizes does not change the sizes of this role.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: growth at most"),
     QT_TRANSLATE_NOOP("QObject", "The largest growth per 100\u00A0px of viewport width.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: narrower column"),
     QT_TRANSLATE_NOOP("QObject", "No growth: the text does not grow where its column narrows.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: double at zoom"),
     QT_TRANSLATE_NOOP("QObject", "The browser zoom at which the text is twice as large.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: breakpoints"),
     QT_TRANSLATE_NOOP("QObject", "How the sizes on both sides of a breakpoint are related.")},
    {QT_TRANSLATE_NOOP("QObject", "Wish: variants"),
     QT_TRANSLATE_NOOP(
         "QObject",
         "Same size: at each width every variant has the same size. All variants are solved together.")},
    {QT_TRANSLATE_NOOP("QObject", "Solver: aim"),
     QT_TRANSLATE_NOOP("QObject", "Which of all sizes that satisfy the wishes are chosen.")},
    {QT_TRANSLATE_NOOP("QObject", "Solver: size grid"),
     QT_TRANSLATE_NOOP("QObject", "The end sizes of ramps are multiples of this length.")},
    {QT_TRANSLATE_NOOP("QObject", "Solver: reserve"),
     QT_TRANSLATE_NOOP("QObject", "Space for longer text, such as a translation, without another line.")},
    {QT_TRANSLATE_NOOP("QObject", "Solver: slack"),
     QT_TRANSLATE_NOOP("QObject",
                       "This share of each line stays free, so that another browser does not add a line. "
                       "Slack is the smallest "
                       "change of the text width that moves a line break.")},
    {QT_TRANSLATE_NOOP("QObject", "Solver: slack < 500\u00A0px"),
     QT_TRANSLATE_NOOP("QObject", "The same at viewport widths below 500\u00A0px.")},
    // What is no single setting; the key is what Find setting shows.
    {QT_TRANSLATE_NOOP("QObject", "Breakpoints"),
     QT_TRANSLATE_NOOP(
         "QObject",
         "A breakpoint is a viewport width at which the columns change. Between two breakpoints is a band: a "
         "range of widths with its own columns, spacing and sizes.")},
    {QT_TRANSLATE_NOOP("QObject", "Leeway of a breakpoint, gap, padding or width"),
     QT_TRANSLATE_NOOP("QObject",
                       "Leeway: the range in which a value can change while all wishes stay satisfied.")},
    {QT_TRANSLATE_NOOP("QObject", "Padding"),
     QT_TRANSLATE_NOOP("QObject",
                       "The space inside the edges. Padding at the sides makes what is inside narrower.")},
    {QT_TRANSLATE_NOOP("QObject", "Margin"),
     QT_TRANSLATE_NOOP("QObject", "The space around a part. Margins do not collapse.")},
    {QT_TRANSLATE_NOOP("QObject", "Class names of the elements"),
     QT_TRANSLATE_NOOP(
         "QObject", "The class that each element of your page needs, so that the stylesheet applies to it.")},
    {QT_TRANSLATE_NOOP("QObject", "Add a variant"),
     QT_TRANSLATE_NOOP(
         "QObject",
         "A variant has the same cards with another column count, its own class and its own sizes.")},
    {QT_TRANSLATE_NOOP("QObject", "Use card width for all sizes"),
     QT_TRANSLATE_NOOP("QObject",
                       "Makes the font sizes of all roles follow the width of the card, or the viewport "
                       "width, and keeps the "
                       "sizes that they have now.")},
    {QT_TRANSLATE_NOOP("QObject", "Solve sizes"),
     QT_TRANSLATE_NOOP("QObject",
                       "Computes font sizes that satisfy every wish at every width, as near to the current "
                       "sizes as possible. "
                       "The sizes are shown as a preview first.")},
    {QT_TRANSLATE_NOOP("QObject", "Text of a card"),
     QT_TRANSLATE_NOOP(
         "QObject", "The texts, pictures and buttons of the selected card. The layout follows each letter.")},
    {QT_TRANSLATE_NOOP("QObject", "Link address"),
     QT_TRANSLATE_NOOP("QObject", "The address that the button leads to.")},
    {QT_TRANSLATE_NOOP("QObject", "Accessible name"),
     QT_TRANSLATE_NOOP(
         "QObject",
         "What screen readers read in place of the text of the button. It must contain that text.")},
    {QT_TRANSLATE_NOOP("QObject", "Longer text, longest heading, no pictures, one more card"),
     QT_TRANSLATE_NOOP("QObject",
                       "Shows the row with other texts, pictures or cards. The project is not changed.")},
    {QT_TRANSLATE_NOOP("QObject", "Picture file"),
     QT_TRANSLATE_NOOP("QObject",
                       "The file of the picture. It stays where it is; the project has its place.")},
    {QT_TRANSLATE_NOOP("QObject", "Alternative text"),
     QT_TRANSLATE_NOOP("QObject",
                       "What screen readers read in place of the picture; empty for a decorative picture.")},
    {QT_TRANSLATE_NOOP("QObject", "Focal point"),
     QT_TRANSLATE_NOOP("QObject",
                       "The point of the picture that stays visible when its slot has another ratio.")},
    {QT_TRANSLATE_NOOP("QObject", "Files to upload"),
     QT_TRANSLATE_NOOP(
         "QObject",
         "For every picture the file that fills its slot at all viewport widths, in all variants, on screens "
         "with "
         "2 device pixels per CSS px.")},
    {QT_TRANSLATE_NOOP("QObject", "Solver: ignored cards"),
     QT_TRANSLATE_NOOP("QObject", "The numbers of the cards that the wishes do not apply to.")},
};

QString settingHelpAt(std::string_view path) {
    const auto found =
        std::ranges::find_if(settings, [&](const Help& one) { return std::string_view(one.key) == path; });
    return found == std::end(settings) ? QString() : QObject::tr(found->text);
}

}  // namespace

QString settingHelp(const std::string& path) {
    // The four sides of a margin or a padding share their help.
    for (const std::string_view sides : {"/margin/", "/padding/"})
        if (const auto at = path.find(sides); at != std::string::npos)
            return settingHelpAt(std::string_view(path).substr(0, at + sides.size() - 1));
    return settingHelpAt(path);
}

QString propertyHelp(const QString& name) {
    // The name is in the window's language.
    const auto found =
        std::ranges::find_if(properties, [&](const Help& one) { return QObject::tr(one.key) == name; });
    return found == std::end(properties) ? QString() : QObject::tr(found->text);
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
